//! Every row of `data/feedline.csv` and `data/radiated.csv` (published or independently
//! recomputed figures, their source in the last column) against this crate. A row without a
//! match arm fails.

use downlead_physics::construction::{self, Coax};
use downlead_physics::measure::{FitPoint, FitRules, LossFit, fit};
use downlead_physics::mismatch as mm;
use downlead_physics::noise::{self, Stage};
use downlead_physics::power::{self, Mode, PowerKind};
use downlead_physics::radiated::{self, DipoleConvention};
use downlead_physics::uncertainty::{self as un, Inserted};
use downlead_physics::{DB_PER_100FT, INCH_M, LineParams, RHO_COPPER, TwoTerm, connector, line};

/// Columns: id, what, inputs, expected, tolerance, source.
struct Row {
    id: String,
    expected: Vec<f64>,
    tolerance: Vec<String>,
}

fn rows(text: &str) -> Vec<Row> {
    csv::Reader::from_reader(text.as_bytes())
        .records()
        .map(|record| {
            let record = record.expect("a row of six columns");
            assert_eq!(record.len(), 6, "{record:?}");
            assert!(!record[5].is_empty(), "{} has no source", &record[0]);
            let numbers = record[3].split(';').map(|x| x.trim().parse().unwrap());
            Row {
                id: record[0].to_owned(),
                expected: numbers.collect(),
                tolerance: record[4].split(';').map(|t| t.trim().to_owned()).collect(),
            }
        })
        .collect()
}

/// Absolute tolerance of the `i`-th figure; `0.1 %` is relative.
fn tolerance(row: &Row, i: usize) -> f64 {
    let text = row.tolerance.get(i).unwrap_or(&row.tolerance[0]);
    match text.strip_suffix('%') {
        Some(percent) => percent.trim().parse::<f64>().unwrap() / 100.0 * row.expected[i].abs(),
        None => text.parse().unwrap(),
    }
}

fn check(text: &str, least: usize) {
    let rows = rows(text);
    assert!(rows.len() >= least, "only {} rows", rows.len());
    let mut failures = Vec::new();
    for row in &rows {
        let Some(got) = compute(&row.id) else {
            failures.push(format!("{}: no arm computes it", row.id));
            continue;
        };
        assert_eq!(got.len(), row.expected.len(), "{}", row.id);
        for (i, (got, want)) in got.iter().zip(&row.expected).enumerate() {
            let tolerance = tolerance(row, i);
            assert!(tolerance > 0.0, "{} needs a tolerance", row.id);
            if (got - want).abs() <= tolerance {
                continue;
            }
            failures.push(format!("{}: {got} is not {want} ± {tolerance}", row.id));
        }
    }
    assert!(failures.is_empty(), "{}", failures.join("\n"));
}

#[test]
fn feed_line_rows() {
    check(include_str!("data/feedline.csv"), 38);
}

#[test]
fn radiated_rows() {
    check(include_str!("data/radiated.csv"), 20);
}

const PER_100FT: f64 = DB_PER_100FT;

fn rg402() -> Coax {
    Coax {
        inner_m: 0.0362 * INCH_M,
        outer_m: 0.1175 * INCH_M,
        permittivity: 1.0 / (0.695 * 0.695),
        loss_tangent: 2e-4,
        strand: 1.0,
        braid: 1.0,
        resistivity: RHO_COPPER,
    }
}

/// Ten lines and their length.
fn case(number: u32) -> (LineParams, f64) {
    // k1, k2 in dB/100 ft; MHz; m
    let (k1, k2, vf, r0, mhz, length) = match number {
        1 => (0.19, 0.00139, 0.659, 50.0, 14.2, 30.0),
        2 => (0.19, 0.00139, 0.659, 50.0, 145.0, 30.0),
        3 => (0.444, 0.00126, 0.659, 50.0, 145.0, 30.0),
        4 => (0.444, 0.00126, 0.659, 50.0, 3.6, 3.0),
        5 => (0.444, 0.00126, 0.659, 50.0, 3.6, 3.0),
        6 => (0.444, 0.00126, 0.659, 50.0, 1.85, 10.0),
        7 => (0.826, 0.00125, 0.659, 50.0, 0.475, 20.0),
        8 => (0.19, 0.00139, 0.659, 50.0, 3.6, 30.0),
        9 => (0.053, 0.0, 0.902, 400.0, 3.6, 30.0),
        _ => (0.444, 0.00126, 0.659, 50.0, 432.0, 10.0),
    };
    let loss = TwoTerm {
        k1: k1 * PER_100FT,
        k2: k2 * PER_100FT,
    };
    let f = mhz * 1e6;
    (LineParams::two_term(r0, vf, loss, f), length)
}

fn matched(number: u32) -> f64 {
    let (line, length) = case(number);
    line.matched_loss(length)
}

/// The measured reel of rows E06 and E08: MHz, dB/100 m, expanded uncertainty (k = 2).
fn reel() -> LossFit {
    let points = [
        (14.2, 2.368, 0.210),
        (50.2, 4.678, 0.215),
        (145.0, 8.576, 0.252),
        (222.0, 11.004, 0.304),
        (435.0, 17.000, 0.442),
    ]
    .map(|p| FitPoint {
        f_hz: p.0 * 1e6,
        db_per_m: p.1 / 100.0,
        u_db_per_m: p.2 / 200.0,
    });
    fit(&points, &FitRules::default()).expect("five good points")
}

fn compute(id: &str) -> Option<Vec<f64>> {
    match id.as_bytes()[0] {
        b'C' => construction_row(id),
        b'M' => mismatch_row(id),
        b'K' | b'N' | b'P' => chain_row(id),
        b'D' if id.starts_with("DEF") => definition_row(id),
        b'D' | b'E' => device_row(id),
        b'A' => antenna_row(id),
        _ => None,
    }
}

fn construction_row(id: &str) -> Option<Vec<f64>> {
    let one = match id {
        "C02" => rg402().z0(),
        "C07" => construction::surface_resistance(RHO_COPPER, 1.0, 1e6) * 1e3,
        "C08" => {
            construction::conductor_k1(50.0, INCH_M, f64::INFINITY, 1.0, 1.0, RHO_COPPER)
                / PER_100FT
        }
        "C09" => construction::dielectric_k2(0.695, 2e-4) * 100.0 * 100.0,
        "C10" => rg402().loss(50.0).at(1e9) / PER_100FT,
        "C12" => line::attenuation(0.444 * PER_100FT, 0.00126 * PER_100FT, 30e6) / PER_100FT,
        "C13" => line::attenuation(0.444 * PER_100FT, 0.00126 * PER_100FT, 150e6) / PER_100FT,
        "C15" => 5.63 * PER_100FT * 100.0,
        "C18" => line::conductor_temperature_factor(60.0),
        "C19" => line::conductor_temperature_factor(-20.0),
        "C20" => {
            let cold = TwoTerm {
                k1: 0.190,
                k2: 0.00139,
            };
            cold.at_temperature(60.0).at(100e6)
        }
        "C25" => construction::open_wire_z0(2e-3, 150e-3, 1.0),
        "C26" => {
            let k1 = construction::open_wire_k1(405.0, 1.024e-3, RHO_COPPER);
            TwoTerm { k1, k2: 0.0 }.at(30e6) * 100.0
        }
        _ => return None,
    };
    Some(vec![one])
}

fn mismatch_row(id: &str) -> Option<Vec<f64>> {
    let one = match id {
        "M01a" => matched(1),
        "M03a" => matched(3),
        "M04a" => matched(4),
        "M05a" => matched(5),
        "M07a" => matched(7),
        "M08a" => matched(8),
        "M09a" => matched(9),
        "M10a" => matched(10),
        "M13" => mm::mismatch_loss(mm::gamma_from_swr(2.0)),
        _ => return None,
    };
    Some(vec![one])
}

fn chain_row(id: &str) -> Option<Vec<f64>> {
    let one = match id {
        "N01" => {
            let bump = connector::Bump {
                z_ohm: 33.3,
                electrical_m: 49.0e-3,
            };
            mm::return_loss(bump.gamma(144e6, 50.0))
        }
        "P01" => power::rating_by_attenuation(654.0, 2.015, 4.292),
        "P02" => power::ambient_factor(80.0, 40.0, 55.0),
        "P03" => power::mean_power(1500.0, power::duty(Mode::Ssb).factor, 2.0 / 3.0),
        "P04" => power::am_mean_over_carrier(1.0),
        _ => return None,
    };
    Some(vec![one])
}

fn device_row(id: &str) -> Option<Vec<f64>> {
    let one = match id {
        "D02" => noise::passive_noise_figure(2.0, 310.0),
        "D03" => {
            let stage = |gain_db, noise_figure_db| Stage {
                gain_db,
                noise_figure_db,
            };
            noise::cascade_noise_figure(&[
                Stage::passive(0.3, noise::T0_K),
                stage(20.0, 1.0),
                Stage::passive(2.5, noise::T0_K),
                Stage::passive(1.5, noise::T0_K),
                stage(0.0, 4.0),
            ])
        }
        "D07" => noise::noise_rise(-6.0),
        "E04" => {
            let through = Inserted {
                s11: 0.0,
                s22: 0.0,
                s21: 1.0,
            };
            let cable = Inserted {
                s11: 0.05,
                s22: 0.05,
                // 3 dB
                s21: libm::pow(10.0, -3.0 / 20.0),
            };
            un::mismatch_substitution(0.05, 0.05, through, cable)
        }
        "E06" => {
            let c = reel().coefficients;
            return Some(vec![c.k1 * 100.0, c.k2 * 100.0]);
        }
        "E08" => {
            let at = reel().predict(440e6);
            return Some(vec![at.db_per_m * 100.0, 2.0 * at.u_db_per_m * 100.0]);
        }
        _ => return None,
    };
    Some(vec![one])
}

fn antenna_row(id: &str) -> Option<Vec<f64>> {
    let one = match id {
        "A01" => radiated::half_wave_dipole(),
        "A02" => radiated::half_wave_dipole_dbi(),
        "A03" => 12.0 + radiated::half_wave_dipole_dbi(),
        "A04" => {
            let eirp = radiated::eirp(50.0, 3.0, 8.15);
            return Some(vec![eirp, eirp / radiated::half_wave_dipole()]);
        }
        "A05" => radiated::collinear_dbi(2, 0.9)?,
        _ => return None,
    };
    Some(vec![one])
}

fn definition_row(id: &str) -> Option<Vec<f64>> {
    let dbm = |v: f64| noise::dbm_from_pd(v, 50.0);
    let am = |kind| power::convert(1.0, Mode::Am, PowerKind::Carrier, kind);
    let one = match id {
        "DEF01" => downlead_quantity::w_to_dbm(100.0),
        "DEF02" => downlead_quantity::to_db(1500.0),
        "DEF03" => radiated::half_wave_dipole(),
        "DEF04" => radiated::half_wave_dipole_dbi(),
        "DEF05" => DipoleConvention::Ratio164.eirp(9.15),
        "DEF06" => DipoleConvention::Ratio164.erp(10.0),
        "DEF07" => downlead_quantity::w_to_dbm(DipoleConvention::Itu215.erp(10.0)),
        "DEF08" => DipoleConvention::Db214.eirp(611.0),
        "DEF09" => radiated::eirp_from_emrp(1000.0),
        "DEF11" => radiated::cymomotive_force(radiated::eirp_from_emrp(1000.0)),
        "DEF12" => radiated::field_strength(1000.0, 1000.0) * 1e3,
        "DEF13" => radiated::field_strength(DipoleConvention::Ratio164.eirp(1e3), 1e3) * 1e3,
        "DEF14" => {
            let eirp = DipoleConvention::Ratio164.eirp(1e3);
            radiated::dbuv_per_m(radiated::field_strength(eirp, 1e3))
        }
        "DEF15" => am(PowerKind::Pep)?,
        "DEF16" => am(PowerKind::Mean)?,
        "DEF20" => radiated::eirp(200.0, 2.0 + 2.8 + 1.2, 7.0),
        "DEF21" => noise::dbm_from_dbuv_pd(0.0, 50.0),
        "DEF22" => dbm(0.25e-6),
        "DEF23" => dbm(0.35e-6),
        "DEF24" => noise::dbm_from_emf(1e-6, 50.0) - dbm(1e-6),
        _ => return None,
    };
    Some(vec![one])
}
