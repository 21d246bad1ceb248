//! The carriers and receive channels of the stations of a site.

use downlead_station::Env;
use downlead_station::model::{Direction, PartData, Station};

use super::{Carrier, Channel, LeftOut};
use crate::point::points;
use crate::walk::{Stop, direction, walk};

/// What is gathered of the stations of a site.
#[derive(Default)]
pub(super) struct Gathered {
    pub(super) carriers: Vec<Carrier>,
    pub(super) channels: Vec<Channel>,
    pub(super) left_out: Vec<(Box<str>, LeftOut)>,
}

impl Gathered {
    /// The carriers and channels of a station, each once however many chains it is on. Of a
    /// neighbour (`other`) the carriers only: its receivers are judged where it is written. What is
    /// wrong in the chains is reported by their evaluation.
    pub(super) fn station(&mut self, st: &Station, other: bool, env: &Env) {
        for chain in &st.chains {
            let stops = walk(&chain.steps, Some(st), &mut Vec::new());
            let direction = direction(chain, &stops);
            let receive = direction == Direction::Receive;
            if other && receive {
                continue;
            }
            let points = points(chain, direction, env, &mut Vec::new());
            if points.len() < chain.bands.len() || chain.bands.is_empty() {
                self.leave_out(&chain.name.text, st, other, LeftOut::NoFrequency);
            }
            let end = stops.iter().find_map(|s| match s {
                Stop::Part { part, .. } => match &part.data {
                    PartData::Transmitter(t) if !receive => {
                        Some((part.tag.as_ref(), t.bandwidth_hz))
                    }
                    PartData::Receiver(r) if receive => Some((part.tag.as_ref(), r.bandwidth_hz)),
                    // it is at the one end of the chain it sends on, at the other of that it hears on
                    PartData::Transceiver(both) => Some((part.tag.as_ref(), both.0.bandwidth_hz)),
                    _ => None,
                },
                _ => None,
            });
            let (tag, width_hz) = end.unwrap_or_default();
            let name = &tag.unwrap_or(&chain.name).text;
            for point in points {
                if point.part.is_some() {
                    self.leave_out(&chain.name.text, st, other, LeftOut::Range);
                } else if receive {
                    self.channel(Channel {
                        name: name.clone(),
                        chain: chain.name.loc,
                        hz: point.hz,
                        width_hz,
                        found: 0,
                    });
                } else {
                    self.carrier(Carrier {
                        station: other.then(|| st.name.text.clone()),
                        name: name.clone(),
                        chain: chain.name.loc,
                        hz: point.hz,
                        width_hz,
                    });
                }
            }
        }
    }

    /// Notes what is not searched, once.
    fn leave_out(&mut self, chain: &str, st: &Station, other: bool, why: LeftOut) {
        let name: Box<str> = match other {
            true => format!("{chain} of {}", st.name.text).into(),
            false => chain.into(),
        };
        if !self.left_out.iter().any(|l| l.0 == name && l.1 == why) {
            self.left_out.push((name, why));
        }
    }

    fn carrier(&mut self, c: Carrier) {
        let same = |x: &Carrier| x.hz == c.hz && x.name == c.name && x.station == c.station;
        if !self.carriers.iter().any(same) {
            self.carriers.push(c);
        }
    }

    fn channel(&mut self, c: Channel) {
        if !self
            .channels
            .iter()
            .any(|x| x.hz == c.hz && x.name == c.name)
        {
            self.channels.push(c);
        }
    }
}
