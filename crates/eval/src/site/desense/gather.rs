//! The chains of a site with what they begin and end with.

use downlead_base::Loc;
use downlead_station::Env;
use downlead_station::model::{
    Antenna, Chain, Direction, Name, Part, PartData, Receiver, Station, Transmitter,
};

use crate::point::{Point, points};
use crate::walk::{Stop, direction, walk};

/// A chain of the site.
pub(super) struct Line<'m> {
    pub(super) station: &'m Station,
    /// Whether it belongs to another station.
    pub(super) other: bool,
    pub(super) chain: &'m Chain,
    pub(super) stops: Vec<Stop<'m>>,
    pub(super) direction: Direction,
    /// Its single frequencies.
    pub(super) points: Vec<Point>,
    /// Whether it is also on a range, or on a frequency that is not known.
    pub(super) ranged: bool,
    pub(super) unknown: bool,
}

impl<'m> Line<'m> {
    /// All chains of a station.
    pub(super) fn of(st: &'m Station, other: bool, env: &Env) -> Vec<Line<'m>> {
        let one = |chain: &'m Chain| {
            let stops = walk(&chain.steps, Some(st), &mut Vec::new());
            let direction = direction(chain, &stops);
            let all = points(chain, direction, env, &mut Vec::new());
            let unknown = all.len() < chain.bands.len() || chain.bands.is_empty();
            let ranged = all.iter().any(|p| p.part.is_some());
            Line {
                station: st,
                other,
                chain,
                stops,
                direction,
                points: all.into_iter().filter(|p| p.part.is_none()).collect(),
                ranged,
                unknown,
            }
        };
        st.chains.iter().map(one).collect()
    }

    pub(super) fn parts(&self) -> impl Iterator<Item = (&'m Part, Option<&'m Name>)> + '_ {
        self.stops.iter().filter_map(|s| match s {
            Stop::Part { part, port, .. } => Some((*part, *port)),
            _ => None,
        })
    }

    /// The transmitter it begins with.
    pub(super) fn transmitter(&self) -> Option<(&'m Part, &'m Transmitter)> {
        let sends = self.direction == Direction::Transmit;
        self.parts()
            .find_map(|(p, _)| Some((p, p.data.transmitter()?)))
            .filter(|_| sends)
    }

    /// The receiver it ends with.
    pub(super) fn receiver(&self) -> Option<(&'m Part, &'m Receiver)> {
        let hears = self.direction == Direction::Receive;
        self.parts()
            .find_map(|(p, _)| Some((p, p.data.receiver()?)))
            .filter(|_| hears)
    }

    /// Its one antenna with a tag.
    pub(super) fn antenna(&self) -> Option<(&'m Part, &'m Antenna)> {
        let branched =
            |s: &Stop<'_>| matches!(s, Stop::Part { branches, .. } if !branches.is_empty());
        if self.stops.iter().any(branched) {
            return None;
        }
        let mut all = self.parts().filter_map(|(p, _)| match &p.data {
            PartData::Antenna(a) if p.kind == downlead_station::model::PartKind::Antenna => {
                Some((p, &**a))
            }
            _ => None,
        });
        let first = all.next()?;
        (all.next().is_none() && first.0.tag.is_some()).then_some(first)
    }

    /// Whether it ends in a load, which radiates nothing.
    pub(super) fn ends_in_load(&self) -> bool {
        self.parts()
            .any(|(p, _)| p.kind == downlead_station::model::PartKind::Load)
    }

    /// The name of its transmitter or receiver, else that of the chain.
    pub(super) fn end_name(&self) -> Box<str> {
        let end = self
            .transmitter()
            .map(|t| t.0)
            .or(self.receiver().map(|r| r.0));
        let tag = end.and_then(|p| p.tag.as_ref());
        tag.unwrap_or(&self.chain.name).text.clone()
    }

    /// `talk-out`, `data of harbour`.
    pub(super) fn words(&self) -> Box<str> {
        self.named(&self.chain.name.text)
    }

    /// A name with the station, where that is another one.
    pub(super) fn of_station(&self, name: &str) -> Box<str> {
        self.named(name)
    }

    fn named(&self, name: &str) -> Box<str> {
        match self.other {
            true => format!("{name} of {}", self.station.name.text).into(),
            false => name.into(),
        }
    }

    pub(super) fn loc(&self) -> Loc {
        self.chain.name.loc
    }
}
