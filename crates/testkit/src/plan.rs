//! Random stations that mean something: a plan that can be changed before it is written.
//!
//! A plan checks without error (warnings are allowed), on the frequencies from 1.8 MHz to 1.3 GHz.

use std::fmt::Write;

use crate::Rng;

/// A length as written.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Length {
    /// Metres.
    Metres(f64),
    /// Feet.
    Feet(f64),
}

/// A band.
#[derive(Clone, Debug, PartialEq)]
pub struct BandPlan {
    /// Its name.
    pub name: String,
    /// Behind the name: `145.3 MHz`, `3.5 MHz to 3.8 MHz`, or a block.
    pub says: String,
}

/// A cable definition.
#[derive(Clone, Debug, PartialEq)]
pub struct CablePlan {
    /// Its name.
    pub name: String,
    /// Impedance, ohm.
    pub ohm: f64,
    /// Velocity factor.
    pub velocity: f64,
    /// dB/100 m/√MHz.
    pub k1: f64,
    /// dB/100 m/MHz.
    pub k2: f64,
    /// `k 2` accuracy in percent; none when not stated.
    pub accuracy: Option<f64>,
}

/// A part between the ends of a chain.
#[derive(Clone, Debug, PartialEq)]
pub enum PartPlan {
    /// A piece of cable.
    Line {
        /// `run`, `jumper` or `tail`.
        word: &'static str,
        /// Its length.
        length: Length,
        /// Name of the cable.
        cable: String,
        /// °C, if stated.
        celsius: Option<f64>,
    },
    /// `connector N of NAME`.
    Connector(u32, String),
    /// A device: keyword and what follows.
    Device(&'static str, String),
}

/// The end of a chain.
#[derive(Clone, Debug, PartialEq)]
pub struct AntennaPlan {
    /// Gain, dBi.
    pub dbi: f64,
    /// SWR, if stated.
    pub swr: Option<f64>,
    /// Impedance, ohm, if stated.
    pub ohm: Option<(f64, f64)>,
}

/// A chain of untagged parts.
#[derive(Clone, Debug, PartialEq)]
pub struct ChainPlan {
    /// Its name.
    pub name: String,
    /// Bands by name, or frequencies.
    pub bands: Vec<String>,
    /// The text after `transmitter`.
    pub transmitter: String,
    /// Parts in order.
    pub parts: Vec<PartPlan>,
    /// The end.
    pub antenna: AntennaPlan,
    /// Further lines before and after the end.
    pub nodes: Vec<String>,
}

/// A whole file.
#[derive(Clone, Debug, PartialEq)]
pub struct Plan {
    /// Bands.
    pub bands: Vec<BandPlan>,
    /// Named values: name and value.
    pub lets: Vec<(String, String)>,
    /// Cables.
    pub cables: Vec<CablePlan>,
    /// Join of the station; none: the chains are outside a station.
    pub station: Option<String>,
    /// Chains.
    pub chains: Vec<ChainPlan>,
}

impl std::fmt::Display for Length {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        match self {
            Length::Metres(m) => write!(f, "{m} m"),
            Length::Feet(ft) => write!(f, "{ft} ft"),
        }
    }
}

impl std::fmt::Display for PartPlan {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        match self {
            PartPlan::Line {
                word,
                length,
                cable,
                celsius,
            } => {
                write!(f, "{word} {length} of {cable}")?;
                celsius.map_or(Ok(()), |c| write!(f, ", at {c} °C"))
            }
            PartPlan::Connector(n, name) => write!(f, "connector {n} of {name}"),
            PartPlan::Device(word, says) => write!(f, "{word} {says}"),
        }
    }
}

impl AntennaPlan {
    fn write(&self, out: &mut String, indent: &str) {
        let _ = writeln!(
            out,
            "{indent}antenna {{\n{indent}    gain {} dBi ± 0.5 dB",
            self.dbi
        );
        if let Some(swr) = self.swr {
            let _ = writeln!(out, "{indent}    swr {swr}");
        }
        if let Some((r, x)) = self.ohm {
            let _ = writeln!(out, "{indent}    impedance {r} ohm with reactance {x} ohm");
        }
        let _ = writeln!(out, "{indent}}}");
    }
}

impl ChainPlan {
    fn write(&self, out: &mut String, indent: &str) {
        let _ = writeln!(
            out,
            "{indent}chain {} on {} transmit {{",
            self.name,
            self.bands.join(", ")
        );
        let inner = format!("{indent}    ");
        let _ = writeln!(out, "{inner}transmitter {}", self.transmitter);
        for part in &self.parts {
            let _ = writeln!(out, "{inner}{part}");
        }
        self.antenna.write(out, &inner);
        for node in &self.nodes {
            let _ = writeln!(out, "{inner}{node}");
        }
        let _ = writeln!(out, "{indent}}}");
    }
}

impl Plan {
    /// The file as text.
    #[must_use]
    pub fn text(&self) -> String {
        let mut out = String::from("// A generated station.\n");
        for (name, value) in &self.lets {
            let _ = writeln!(out, "let {name} = {value}");
        }
        for band in &self.bands {
            let _ = writeln!(out, "band {} {}", band.name, band.says);
        }
        for c in &self.cables {
            let _ = writeln!(
                out,
                "cable {} {{\n    impedance {} ohm\n    velocity {}\n    loss {} dB/100 m/sqrt(MHz) + {} dB/100 m/MHz, typical",
                c.name, c.ohm, c.velocity, c.k1, c.k2
            );
            if let Some(a) = c.accuracy {
                let _ = writeln!(out, "    accuracy {a} % k 2");
            }
            out.push_str("    source \"generated\"\n}\n");
        }
        match &self.station {
            Some(joins) => {
                let _ = writeln!(out, "station generated \"Generated\" {{\n    joins {joins}");
                for chain in &self.chains {
                    chain.write(&mut out, "    ");
                }
                out.push_str("}\n");
            }
            None => self.chains.iter().for_each(|c| c.write(&mut out, "")),
        }
        out
    }
}

/// A random plan from a seed.
#[must_use]
pub fn plan(seed: u64) -> Plan {
    let mut r = Rng::new(seed);
    let bands = bands(&mut r);
    let cables: Vec<CablePlan> = (0..1 + r.below(3)).map(|n| cable(&mut r, n)).collect();
    let lets = vec![
        ("tower".to_owned(), format!("{} m", r.number(5.0, 60.0, 1))),
        (
            "spare".to_owned(),
            format!("{} m ± 0.1 m", r.number(0.5, 3.0, 1)),
        ),
    ];
    let station = (!r.once_in(3)).then(|| r.word(&["n-pair", "bnc-pair", "7-16-pair"]).to_owned());
    let chains = (0..1 + r.below(3))
        .map(|n| chain(&mut r, n, &bands, &cables))
        .collect();
    Plan {
        bands,
        lets,
        cables,
        station,
        chains,
    }
}

fn bands(r: &mut Rng) -> Vec<BandPlan> {
    let all = [
        ("80m", 3.65),
        ("40m", 7.1),
        ("20m", 14.2),
        ("10m", 28.6),
        ("6m", 50.3),
        ("2m", 145.3),
        ("70cm", 434.5),
        ("23cm", 1296.2),
    ];
    let first = r.below(4);
    (0..1 + r.below(4))
        .map(|n| {
            let (name, mhz) = all[(first + n * (1 + first % 2)) % all.len()];
            let says = match r.below(4) {
                0 => format!("{:.3} MHz to {:.3} MHz", mhz * 0.99, mhz * 1.01),
                1 => format!("{{ transmit {mhz} MHz; receive {} MHz }}", mhz - 0.6),
                _ => format!("{mhz} MHz"),
            };
            BandPlan {
                name: format!("{name}-{n}"),
                says,
            }
        })
        .collect()
}

fn cable(r: &mut Rng, n: usize) -> CablePlan {
    CablePlan {
        name: format!("cable-{n}"),
        ohm: if r.once_in(4) {
            *r.pick(&[75.0, 93.0, 450.0])
        } else {
            50.0
        },
        velocity: r.number(0.66, 0.95, 2),
        k1: r.number(0.1, 1.6, 4),
        k2: r.number(0.0005, 0.0045, 5),
        accuracy: (!r.once_in(4)).then(|| r.number(2.0, 10.0, 0)),
    }
}

fn chain(r: &mut Rng, n: usize, bands: &[BandPlan], cables: &[CablePlan]) -> ChainPlan {
    let mut on: Vec<String> = bands.iter().map(|b| b.name.clone()).collect();
    if r.once_in(3) {
        on.truncate(1 + r.below(on.len()));
        on.push(format!("{} MHz", r.number(10.0, 900.0, 1)));
    }
    let mut parts = Vec::new();
    for _ in 0..1 + r.below(6) {
        let (low, wide) = (r.number(0.05, 1.5, 2), r.number(0.01, 0.2, 2));
        let part = match r.below(8) {
            0..=2 => PartPlan::Line {
                word: r.word(&["run", "jumper", "tail"]),
                length: Length::Metres(r.number(0.3, 60.0, 1)),
                cable: r.pick(cables).name.clone(),
                celsius: (!r.once_in(3)).then(|| r.number(-20.0, 40.0, 0)),
            },
            3 => PartPlan::Device(
                "run",
                format!("tower + {} * spare of {}", r.below(4), r.pick(cables).name),
            ),
            4 => PartPlan::Connector(1 + r.below(4) as u32, "n-pair".to_owned()),
            5 => PartPlan::Device("filter", format!("{low} dB ± {wide} dB")),
            6 => PartPlan::Device(
                "protector",
                format!(
                    "{{ loss {low} dB; return-loss {} dB }}",
                    r.number(14.0, 32.0, 0)
                ),
            ),
            _ => PartPlan::Device(
                r.word(&["isolator", "pad", "tuner"]),
                format!("{low} dB ± {wide} dB"),
            ),
        };
        parts.push(part);
    }
    let (swr, ohm) = match r.below(4) {
        0 => (None, None),
        1 => (
            None,
            Some((r.number(10.0, 300.0, 0), r.number(-200.0, 200.0, 0))),
        ),
        _ => (Some(r.number(1.0, 3.0, 1)), None),
    };
    ChainPlan {
        name: format!("chain-{n}"),
        bands: on,
        transmitter: format!(
            "{} W ± 5 % carrier, fm, keyed {} %",
            r.number(1.0, 400.0, 0),
            r.number(10.0, 100.0, 0)
        ),
        parts,
        antenna: AntennaPlan {
            dbi: r.number(-3.0, 14.0, 1),
            swr,
            ohm,
        },
        nodes: vec![format!(
            "limit {} W erp, \"invented\"",
            r.number(10.0, 500.0, 0)
        )],
    }
}
