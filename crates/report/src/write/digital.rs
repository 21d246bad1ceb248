//! A bench session as XML in the form of a digital calibration certificate, with quantities of D-SI.
//!
//! A session knows no laboratory, no customer and no country, which the schema asks of a certificate:
//! they are left out, and nothing stands in their place.

use std::fmt::Write as _;

use super::html::escape;
use crate::shape::bench::{PieceReport, ResultReport, SessionReport};

/// Coverage probability of what is given with k = 2.
const PROBABILITY: &str = "0.9545";

/// Elements with their indentation.
struct Xml {
    out: String,
    open: Vec<&'static str>,
}

impl Xml {
    fn line(&mut self, text: &str) {
        let depth = self.open.len();
        let _ = writeln!(self.out, "{:width$}{text}", "", width = 2 * depth);
    }

    fn within(&mut self, name: &'static str, attributes: &str, inner: impl FnOnce(&mut Self)) {
        self.line(&format!("<{name}{attributes}>"));
        self.open.push(name);
        inner(self);
        self.open.pop();
        self.line(&format!("</{name}>"));
    }

    fn value(&mut self, name: &str, text: &str) {
        self.line(&format!("<{name}>{}</{name}>", escape(text)));
    }

    fn named(&mut self, words: &str) {
        self.within("dcc:name", "", |x| x.value("dcc:content", words));
    }

    fn list(&mut self, name: &str, values: impl Iterator<Item = f64>) {
        let all: Vec<String> = values.map(|v| v.to_string()).collect();
        self.value(name, &all.join(" "));
    }
}

/// The session as a text of XML.
#[must_use]
pub fn digital(s: &SessionReport) -> String {
    let mut x = Xml {
        out: "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n".to_owned(),
        open: Vec::new(),
    };
    let names =
        " xmlns:dcc=\"https://ptb.de/dcc\" xmlns:si=\"https://ptb.de/si\" schemaVersion=\"3.3.0\"";
    x.within("dcc:digitalCalibrationCertificate", names, |x| {
        x.within("dcc:administrativeData", "", |x| administrative(x, s));
        x.within("dcc:measurementResults", "", |x| {
            for p in &s.pieces {
                let rows: Vec<&ResultReport> =
                    s.results.iter().filter(|r| r.piece == p.piece).collect();
                if !rows.is_empty() {
                    x.within("dcc:measurementResult", "", |x| piece(x, p, &rows));
                }
            }
        });
    });
    x.out
}

fn administrative(x: &mut Xml, s: &SessionReport) {
    x.within("dcc:dccSoftware", "", |x| {
        x.within("dcc:software", "", |x| {
            x.named("downlead");
            x.value("dcc:release", env!("CARGO_PKG_VERSION"));
        });
    });
    x.within("dcc:coreData", "", |x| {
        x.value("dcc:usedLangCodeISO639_1", "en");
        x.value("dcc:uniqueIdentifier", &s.name);
        if let Some(date) = s.date.as_ref().filter(|d| d.len() == 10) {
            x.value("dcc:beginPerformanceDate", date);
            x.value("dcc:endPerformanceDate", date);
        }
    });
    x.within("dcc:items", "", |x| {
        for p in &s.pieces {
            x.within("dcc:item", "", |x| {
                x.named(&p.piece);
                if !p.cable.is_empty() {
                    x.within("dcc:description", "", |x| x.value("dcc:content", &p.cable));
                }
            });
        }
    });
}

fn piece(x: &mut Xml, p: &PieceReport, rows: &[&ResultReport]) {
    x.named(&p.piece);
    let mut methods: Vec<&str> = rows.iter().map(|r| r.method).collect();
    methods.dedup();
    x.within("dcc:usedMethods", "", |x| {
        for m in methods {
            x.within("dcc:usedMethod", "", |x| x.named(m));
        }
    });
    x.within("dcc:influenceConditions", "", |x| {
        x.within(
            "dcc:influenceCondition",
            " refType=\"basic_temperature\"",
            |x| {
                x.named("temperature of the bench");
                x.within("dcc:data", "", |x| {
                    x.within("dcc:quantity", "", |x| {
                        x.within("si:real", "", |x| {
                            x.value("si:value", &p.temperature_c.to_string());
                            x.value("si:unit", "\\degreecelsius");
                        });
                    });
                });
            },
        );
    });
    x.within("dcc:results", "", |x| {
        x.within("dcc:result", "", |x| {
            x.named("loss");
            x.within("dcc:data", "", |x| {
                x.within("dcc:list", "", |x| lists(x, rows));
            });
        });
    });
}

fn lists(x: &mut Xml, rows: &[&ResultReport]) {
    x.within("dcc:quantity", " refType=\"basic_frequency\"", |x| {
        x.named("frequency");
        x.within("si:realListXMLList", "", |x| {
            x.list("si:valueXMLList", rows.iter().map(|r| r.frequency_hz));
            x.value("si:unitXMLList", "\\hertz");
        });
    });
    let measured = rows
        .iter()
        .map(|r| (r.loss_db, r.loss_uncertainty_db, r.loss_coverage));
    loss(x, "basic_measuredValue", "loss as measured", measured);
    let expected: Option<Vec<(f64, f64, f64)>> = rows
        .iter()
        .map(|r| Some((r.expected_db?, r.expected_uncertainty_db?, 2.0)))
        .collect();
    if let Some(all) = expected {
        let words = "loss as the cable's sheet says";
        loss(x, "basic_referenceValue", words, all.into_iter());
    }
}

/// A list of losses with their expanded uncertainty and coverage factor.
fn loss(
    x: &mut Xml,
    kind: &str,
    words: &str,
    values: impl Iterator<Item = (f64, f64, f64)> + Clone,
) {
    x.within("dcc:quantity", &format!(" refType=\"{kind}\""), |x| {
        x.named(words);
        x.within("si:realListXMLList", "", |x| {
            x.list("si:valueXMLList", values.clone().map(|v| v.0));
            x.value("si:unitXMLList", "\\decibel");
            x.within("si:measurementUncertaintyUnivariateXMLList", "", |x| {
                x.within("si:expandedMUXMLList", "", |x| {
                    x.list("si:valueExpandedMUXMLList", values.clone().map(|v| v.1));
                    x.list("si:coverageFactorXMLList", values.map(|v| v.2));
                    x.value("si:coverageProbabilityXMLList", PROBABILITY);
                });
            });
        });
    });
}
