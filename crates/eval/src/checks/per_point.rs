//! Findings of one chain over its frequencies, each said once.

use downlead_base::{Diagnostic, codes};

use crate::point::Point;

/// Findings of one chain over its frequencies: what is the same of one place on several is one
/// finding. Verdicts stay apart: each is a result of its own.
#[derive(Default)]
pub(crate) struct PerPoint {
    list: Vec<(Diagnostic, Vec<String>)>,
}

impl PerPoint {
    pub(crate) fn add(&mut self, point: &Point, found: Vec<Diagnostic>) {
        let merges = [
            &codes::BEYOND_RANGE,
            &codes::UHF_CONNECTOR_HIGH,
            &codes::CONNECTOR_LOSS_HIGH,
            &codes::OUTSIDE_PASS_BAND,
            &codes::LEGS_SWAPPED,
            &codes::NO_FIGURE_FOR_BAND,
            &codes::RATING_EXCEEDED,
            &codes::VOLTAGE_EXCEEDED,
            &codes::FOLDBACK,
            &codes::NOT_PASSIVE,
        ];
        let words = match point.part {
            Some(p) => format!("{} ({p})", point.band),
            None => point.band.to_string(),
        };
        for d in found {
            let same = self.list.iter_mut().find(|(o, _)| {
                o.code.id == d.code.id
                    && o.primary.loc == d.primary.loc
                    && (o.message == d.message
                        || merges.contains(&o.code)
                        // of a file, one band after the other that it does not reach
                        || o.code.id == codes::NETWORK_FILE.id
                            && o.primary.message == d.primary.message)
            });
            match same {
                Some((o, _)) if o.message == d.message => {}
                Some((o, also)) => {
                    o.severity = o.severity.max(d.severity);
                    if also.last() != Some(&words) {
                        also.push(words.clone());
                    }
                }
                None => self.list.push((d, Vec::new())),
            }
        }
    }

    pub(crate) fn finish(self, out: &mut Vec<Diagnostic>) {
        out.extend(self.list.into_iter().map(|(d, also)| {
            if also.is_empty() {
                d
            } else {
                d.help(format!("The same on {}.", also.join(", ")))
            }
        }));
    }
}
