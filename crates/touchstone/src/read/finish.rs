//! The end of the file: what is missing, and the network out of the rows.

use super::{
    Complex64, Format, Kind, Line, Network, Parameter, Part, Range, Reader, Touchstone, Version,
    Words,
};
use crate::rows::Rows;

/// Up to this share two measured ways through a passive two-port count as equal.
const SAME_BOTH_WAYS: f64 = 0.01;

impl Reader<'_> {
    pub(super) fn finish(mut self) -> Touchstone {
        let ended = self.part == Part::End;
        let text = self.text;
        self.rows.finish(
            &mut self.notes,
            text,
            &self.header,
            self.part == Part::Network,
        );
        self.line = Line {
            number: self.line.number.saturating_sub(1).max(1),
            start: self.line.start.min(text.len()),
        };
        let last = text.len()..text.len();
        if self.header.version == Version::V2 && self.began && !ended {
            self.note(Kind::EndMissing, last.clone(), || {
                "`[End]` is missing".to_owned()
            })
            .understood("all that is there was read");
        }
        self.header.ports = self.rows.ports().or(self.header.ports).or(self.named_ports);
        self.counts();
        self.looks();
        if self.rows.frequencies_hz.is_empty() && !self.meaningless {
            let seen = self.rows.seen;
            self.note(Kind::NoData, last, || match seen {
                0 => "the file holds no rows of data".to_owned(),
                n => format!("none of {n} row(s) could be used"),
            });
        }
        let z0 = self.references_of_ports();
        let seen = self.rows.seen;
        let network = match z0 {
            Some(z0) if !self.meaningless => self.network(z0),
            _ => None,
        };
        self.refused |= self.header.format_unknown;
        let network = network.filter(|n| self.order_known(n) && !self.refused);
        let kept = network.as_ref().map_or(0, Network::points);
        Touchstone {
            network,
            noise: self.noise,
            header: self.header,
            rows_left_out: seen.saturating_sub(kept),
            notes: self.notes.finish(),
        }
    }

    /// Rows that were announced and rows that are there.
    fn counts(&mut self) {
        let rows = self
            .announced
            .take()
            .map(|a| (a, self.rows.seen, "rows of network data"));
        let noise = self
            .announced_noise
            .take()
            .map(|a| (a, self.noise.len(), "rows of noise"));
        for ((said, line, place), there, what) in [rows, noise].into_iter().flatten() {
            if said != there {
                self.notes
                    .add(Kind::RowCount, self.text, line, place, || {
                        format!("{said} {what} are announced, {there} are there")
                    })
                    .understood("those that are there were read");
            }
        }
    }

    /// Numbers that another format would explain better.
    fn looks(&mut self) {
        let format = self.header.format.name();
        if let Some((line, place)) = self.rows.first_loud.take() {
            let count = self.rows.loud;
            let rows = if count == 1 { "row" } else { "rows" };
            let note = self
                .notes
                .add(Kind::WrongFormat, self.text, line, place, || {
                    format!("{count} {rows} of a one-port return more than they get")
                });
            note.understood(format!("read as {format}, as the option line says"))
                .hint(match self.header.format {
                    Format::DB => "dB of a passive load are negative; or are these MA or RI?",
                    Format::MA => "are these dB or RI?",
                    Format::RI => "are these MA or DB?",
                });
        }
        if let Some((line, place)) = self.rows.first_negative.take() {
            let count = self.rows.negative;
            let rows = if count == 1 { "row" } else { "rows" };
            self.notes
                .add(Kind::WrongFormat, self.text, line, place, || {
                    format!("{count} {rows} with a negative magnitude")
                })
                .understood(format!("read as {format}, as the option line says"))
                .hint("are these DB or RI?");
        }
    }

    /// One reference a port; `None`, with a note, if they do not fit.
    fn references_of_ports(&mut self) -> Option<Vec<f64>> {
        let n = self.rows.ports().filter(|_| !self.meaningless)?;
        if self.header.parameter.is_hybrid() && n != 2 {
            let letter = self.header.parameter.letter();
            let (line, place) = self.option_place();
            self.notes
                .add(Kind::HybridPorts, self.text, line, place, || {
                    format!("{letter}-parameters of {n} port(s): only two-ports have them")
                })
                .understood("nothing of the data was read");
            return None;
        }
        match self.header.reference.as_slice() {
            [] => None,
            [one] => Some(vec![*one; n]),
            list if list.len() == n => Some(list.to_vec()),
            list => {
                let count = list.len();
                let (line, place) = self.option_place();
                self.notes
                    .add(Kind::ReferenceCount, self.text, line, place, || {
                        format!("{count} reference resistances for {n} port(s)")
                    })
                    .understood("which port has which is not known")
                    .hint("write `R 50`, or one resistance for each port");
                None
            }
        }
    }

    /// Whether the order of a two-port's elements is stated or makes no difference: in the wrong one
    /// forward and backward transmission are exchanged.
    fn order_known(&mut self, n: &Network) -> bool {
        let Some((line, place)) = self.order_missing.take() else {
            return true;
        };
        let differs = |k: usize| {
            let (a, b) = (n.at(k, 0, 1), n.at(k, 1, 0));
            (a - b).norm() > SAME_BOTH_WAYS * a.norm().max(b.norm())
        };
        let Some(k) = (0..n.points()).find(|k| differs(*k)) else {
            return true;
        };
        let hz = n.frequencies_hz()[k];
        self.notes
            .add(Kind::OrderUnknown, self.text, line, place, || {
                format!(
                    "the two ways through the two-port differ (at {} MHz), and `[Two-Port Data Order]` does not say which is which",
                    hz * 1e-6
                )
            })
            .understood("nothing of the data was used")
            .hint("write `[Two-Port Data Order] 21_12` or `12_21`");
        false
    }

    fn option_place(&self) -> (Line, Range<usize>) {
        let line = self.option_line.unwrap_or(self.line);
        (line, line.start..self.line_end(line.start))
    }

    fn network(&mut self, z0: Vec<f64>) -> Option<Network> {
        if self.rows.frequencies_hz.is_empty() {
            return None;
        }
        let size = z0.len() * z0.len();
        let (f, s) = if self.rows.unsorted {
            self.sorted(size)
        } else {
            let rows: &mut Rows = &mut self.rows;
            (
                std::mem::take(&mut rows.frequencies_hz),
                std::mem::take(&mut rows.s),
            )
        };
        debug_assert!(self.header.parameter == Parameter::S || !s.is_empty());
        Network::new(f, s, z0).ok()
    }

    /// Rows by frequency; of those with the same frequency the first in the file.
    fn sorted(&mut self, size: usize) -> (Vec<f64>, Vec<Complex64>) {
        let f = &self.rows.frequencies_hz;
        let mut order: Vec<usize> = (0..f.len()).collect();
        order.sort_by(|a, b| f[*a].total_cmp(&f[*b]));
        let all = order.len();
        order.dedup_by(|b, a| f[*a] == f[*b]);
        let doubles = all - order.len();
        let frequencies = order.iter().map(|k| f[*k]).collect();
        let matrices = order
            .iter()
            .flat_map(|k| &self.rows.s[k * size..(k + 1) * size]);
        let s = matrices.copied().collect();
        if doubles > 0 {
            let last = self.text.len()..self.text.len();
            self.note(Kind::FrequencyRepeated, last, || {
                format!("{doubles} row(s) repeat a frequency that stands elsewhere in the file")
            })
            .understood("the first row in the file counts");
        }
        (frequencies, s)
    }
}
