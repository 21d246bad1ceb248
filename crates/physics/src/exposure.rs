//! Radio-frequency exposure of people near antennas: power density and field in the main beam,
//! distances from limits, and where these formulas hold.
//!
//! `field_factor` is the factor on the field strength by reflection from the ground: 1 in free space,
//! 1.6 over realistic ground, 2 for total reflection; the power density goes with its square.
//! Source: FCC OET Bulletin 65 (1997), section 2 (equation numbers from memory), and definitions.

use core::f64::consts::PI;

use crate::{C0, ETA0};

/// Plane-wave power density, W/m², at `distance_m` in the main beam of an EIRP in W.
#[must_use]
pub fn power_density(eirp_w: f64, distance_m: f64, field_factor: f64) -> f64 {
    field_factor * field_factor * eirp_w / (4.0 * PI * distance_m * distance_m)
}

/// Distance, m, at which the plane-wave power density falls to `limit_w_m2`.
#[must_use]
pub fn distance_for_density(eirp_w: f64, limit_w_m2: f64, field_factor: f64) -> f64 {
    field_factor * libm::sqrt(eirp_w / (4.0 * PI * limit_w_m2))
}

/// Plane-wave power density, W/m², of an electric field strength in V/m rms.
#[must_use]
pub fn density_of_electric(v_per_m: f64) -> f64 {
    v_per_m * v_per_m / ETA0
}

/// Plane-wave power density, W/m², of a magnetic field strength in A/m rms.
#[must_use]
pub fn density_of_magnetic(a_per_m: f64) -> f64 {
    a_per_m * a_per_m * ETA0
}

/// λ/(2π), m: nearer than this, electric and magnetic field are not tied by the impedance of free
/// space, and no distance from a power density holds.
#[must_use]
pub fn reactive_distance(hz: f64) -> f64 {
    C0 / hz / (2.0 * PI)
}

/// 2 D²/λ, m, of an antenna of size `size_m`: from there on its pattern has formed.
#[must_use]
pub fn far_field_distance(size_m: f64, hz: f64) -> f64 {
    2.0 * size_m * size_m * hz / C0
}

/// Power density, W/m², averaged over the surface of a cylinder around a vertical antenna of height
/// `size_m` that radiates `radiated_w`: `P/(2π R h)`. Near a collinear antenna the far-field formula
/// overstates. Source: common practice; equation from memory.
#[must_use]
pub fn cylinder_density(radiated_w: f64, distance_m: f64, size_m: f64) -> f64 {
    radiated_w / (2.0 * PI * distance_m * size_m)
}

#[cfg(test)]
mod tests {
    use super::*;
    use downlead_quantity::from_db;

    const FT: f64 = 0.3048;

    fn near(a: f64, b: f64, within: f64) {
        assert!((a - b).abs() <= within, "{a} is not {b}");
    }

    /// A public station worksheet that uses the formulas of OET Bulletin 65: 1500 W mean, 2.2 dBi,
    /// 100 ft, with reflection: 0.0546 mW/cm².
    #[test]
    fn density_of_a_published_worksheet() {
        let s = power_density(1500.0 * from_db(2.2), 100.0 * FT, 1.6);
        near(s / 10.0, 0.0546, 5e-5);
    }

    /// A published main-beam table (factor 2.56): 24 dBi at 144 MHz, 1500 W: 287 ft at 1 mW/cm² and
    /// 642 ft at 0.2 mW/cm²; 500 W: 166 ft.
    #[test]
    fn distances_of_a_published_table() {
        let at =
            |w: f64, mw_cm2: f64| distance_for_density(w * from_db(24.0), 10.0 * mw_cm2, 1.6) / FT;
        near(at(1500.0, 1.0), 287.0, 0.6);
        near(at(1500.0, 0.2), 642.0, 1.0);
        near(at(500.0, 1.0), 166.0, 0.6);
    }

    /// OET Bulletin 65, eq. (8): S = 33.4 F² ERP/R² in µW/cm², W and m.
    #[test]
    fn the_short_form_of_the_bulletin() {
        // 1 W ERP at 1 m, in µW/cm²
        near(power_density(1.64, 1.0, 1.6) * 100.0, 33.4, 0.02);
    }

    /// The table of the exemption in 47 CFR 1.1307(b)(3)(i)(C) is the general-public density with
    /// the field doubled: its constants are π S/1.64.
    #[test]
    fn the_exemption_table_is_the_doubled_field() {
        let erp = |s: f64, r: f64| {
            // the ERP whose density at r, with the field doubled, is s
            4.0 * PI * r * r * s / 4.0 / 1.64
        };
        for (hz, r, s, w) in [
            (14.2e6, 10.0, 1800.0 / (14.2 * 14.2), 1710.97),
            (28.4e6, 10.0, 1800.0 / (28.4 * 28.4), 427.7425),
            (50.1e6, 5.0, 2.0, 95.75),
            (444e6, 1.0, 444.0 / 150.0, 5.6832),
            (2400e6, 3.0, 10.0, 172.8),
        ] {
            // the rule rounds its constants to three digits
            assert!((erp(s, r) / w - 1.0).abs() < 3e-3, "{hz}: {}", erp(s, r));
            near(power_density(1.64 * erp(s, r), r, 2.0), s, 1e-9 * s);
        }
    }

    /// λ/(2π) by its definition.
    #[test]
    fn the_reactive_field_by_definition() {
        near(reactive_distance(1.9e6), 25.1123, 1e-4);
        near(reactive_distance(3.5e6), 13.6324, 1e-4);
        near(reactive_distance(146.94e6), 0.324_714, 1e-6);
    }

    /// 50 W less 3.5 dB with 6 dBd at 146.94 MHz (145.87 W EIRP) against the densities of 47 CFR
    /// 1.1310 and Health Canada Safety Code 6 (2015): worked by hand from R = √(G EIRP/(4π S)).
    #[test]
    fn distances_from_densities() {
        let at = |s: f64, f: f64| distance_for_density(145.87, s, f);
        near(at(2.0, 1.0), 2.409_16, 1e-3);
        near(at(2.0, 1.6), 3.854_65, 1e-3);
        near(at(2.0, 2.0), 4.818_31, 1e-3);
        near(at(10.0, 1.6), 1.723_85, 1e-3);
        near(at(1.291, 1.0), 2.998_59, 1e-3);
    }

    /// 2 D²/λ of a collinear of 5.5 m at 146.94 MHz by definition.
    #[test]
    fn the_far_field_by_definition() {
        near(far_field_distance(5.5, 146.94e6), 29.6534, 1e-3);
    }

    /// Pairs of 1999/519/EC, Annex III, table 2: 28 V/m is 2.08 W/m² and 0.073 A/m is 2.01 W/m²,
    /// where the table prints 2 W/m².
    #[test]
    fn fields_as_densities() {
        near(density_of_electric(28.0), 2.081, 1e-3);
        near(density_of_magnetic(0.073), 2.0076, 1e-3);
    }

    /// The cylinder carries the same power as the sphere where G h = 2 R.
    #[test]
    fn the_cylinder_meets_the_main_beam() {
        let (g, h) = (from_db(5.2), 2.7);
        let r = 0.5 * g * h;
        near(
            cylinder_density(12.2, r, h),
            power_density(12.2 * g, r, 1.0),
            1e-12,
        );
    }
}
