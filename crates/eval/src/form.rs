//! Forms filled in: what an office wants of a station, chain by chain. What the text does not say is
//! named, and nothing stands in its place.

use downlead_base::{Diagnostic, Loc, codes};
use downlead_station::Env;
use downlead_station::model::{
    Antenna, BandKind, Chain, Direction, FieldKind, FieldWhat, FormField, LimitQuantity, Name,
    RuleSet, Station,
};

use crate::licence::antennas_at;
use crate::result::{BandResult, ChainResult, LimitResult};
use crate::walk::{Stop, walk};

/// Why a field has no entry.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Lacks {
    /// The station has no position.
    Position,
    /// The position has no datum.
    Datum,
    /// The ground's height is not stated.
    Ground,
    /// An antenna states no height above ground.
    Height,
    /// An antenna states no height above average terrain.
    Haat,
    /// The chain feeds antennas that differ in it.
    Differ,
    /// No antenna is in the chain.
    Antenna,
    /// The band has no receive frequency.
    ReceiveFrequency,
    /// No receive chain is on the band.
    ReceiveChain,
    /// Something in the chain could not be computed.
    NotComputed,
    /// The transmitter states no bandwidth.
    Bandwidth,
    /// The transmitter states no mode.
    Mode,
    /// The station has no title.
    Title,
    /// No licence of the station names a holder.
    Holder,
    /// The station is under no licence.
    Licence,
    /// The transmitter or antenna has no tag.
    Tag,
    /// The station's text has no date.
    Date,
}

impl Lacks {
    /// What is missing, as the end of a sentence.
    #[must_use]
    pub fn words(self) -> &'static str {
        match self {
            Lacks::Position => "the station states no `position`",
            Lacks::Datum => "the position states no datum",
            Lacks::Ground => "the station states no `ground`",
            Lacks::Height => "the antenna states no `height … agl`",
            Lacks::Haat => "the antenna states no `height … haat`",
            Lacks::Differ => "the chain feeds several antennas that differ in it",
            Lacks::Antenna => "the chain has no antenna",
            Lacks::ReceiveFrequency => "the band states no receive frequency",
            Lacks::ReceiveChain => "no receive chain is on the band",
            Lacks::NotComputed => "a part of the chain could not be computed",
            Lacks::Bandwidth => "the transmitter states no `bandwidth`",
            Lacks::Mode => "the transmitter states no mode",
            Lacks::Title => "the station has no title",
            Lacks::Holder => "no licence of the station names a holder",
            Lacks::Licence => "the station is under no licence",
            Lacks::Tag => "the part has no tag",
            Lacks::Date => "the station's text has no date",
        }
    }
}

/// What is entered in a field.
#[derive(Clone, Debug, PartialEq)]
pub enum Entry {
    /// A number.
    Number {
        /// In the unit of the form, not rounded.
        exact: f64,
        /// Rounded as the form wants it.
        rounded: f64,
        /// Expanded uncertainty (k = 2) of the value, dB, where it has one.
        uncertainty_db: Option<f64>,
        /// The limit that the rounded value exceeds and the value itself does not, W.
        over: Option<f64>,
    },
    /// Words.
    Words(Box<str>),
    /// To be filled in by hand.
    Blank,
    /// What is missing.
    Missing(Lacks),
}

/// A form filled in for a transmit chain at a frequency.
#[derive(Clone, Debug, PartialEq)]
pub struct Filled {
    /// Name of the chain.
    pub chain: Loc,
    /// Its head.
    pub head: Loc,
    /// Band as written.
    pub band: Box<str>,
    /// Point of a range.
    pub point: Option<&'static str>,
    /// Hz.
    pub hz: f64,
    /// Fields of the set by index, in its order, with what is entered.
    pub entries: Vec<(usize, Entry)>,
}

/// The form of a set, filled in for each transmit chain of a station on each band.
#[must_use]
pub fn filled(set: &RuleSet, st: &Station, chains: &[ChainResult], env: &Env) -> Vec<Filled> {
    let mut out = Vec::new();
    for (r, c) in chains.iter().zip(&st.chains) {
        if r.direction != Direction::Transmit {
            continue;
        }
        // edges of clauses inside a range are no points of the station
        let points = r
            .bands
            .iter()
            .filter(|b| !matches!(b.point, Some("edge" | "gap")));
        for b in points {
            let one = One::of(st, c, b, chains, env);
            let fields = set.fields.iter().enumerate();
            let here =
                fields.filter(|(_, f)| f.on.is_empty() || f.on.iter().any(|n| *n.text == *b.band));
            out.push(Filled {
                chain: r.name,
                head: r.loc,
                band: b.band.clone(),
                point: b.point,
                hz: b.hz,
                entries: here.map(|(i, f)| (i, one.entry(f))).collect(),
            });
        }
    }
    out
}

/// Points out what the forms of a station's licences and rules want and the text does not say.
pub(crate) fn check(st: &Station, chains: &[ChainResult], env: &Env, out: &mut Vec<Diagnostic>) {
    for under in &st.under {
        let set = env
            .rule_set(&under.name.text)
            .filter(|s| !s.fields.is_empty());
        let Some(set) = set else { continue };
        let mut said: Vec<(usize, Lacks)> = Vec::new();
        for block in filled(set, st, chains, env) {
            for (i, e) in block.entries {
                let Entry::Missing(why) = e else { continue };
                if said.contains(&(i, why)) {
                    continue;
                }
                said.push((i, why));
                let field = &set.fields[i];
                let mut d = Diagnostic::new(
                    &codes::FORM_LACKS,
                    under.name.loc,
                    format!(
                        "The form of {} wants \"{}\" ({}), and {}.",
                        set.name.text,
                        field.label,
                        field.what.doc(),
                        why.words()
                    ),
                )
                .at("its form wants more than the text says")
                .help("The field stays empty in `report --coordination`, and is named.");
                if !set.built_in {
                    d = d.also(field.loc, "the field");
                }
                out.push(d);
            }
        }
    }
}

/// What one chain at a frequency can say.
struct One<'m> {
    st: &'m Station,
    b: &'m BandResult,
    env: &'m Env,
    receive: Option<&'m BandResult>,
    transmitter: Option<&'m downlead_station::model::Part>,
    antennas: Vec<(Loc, Option<&'m Name>, &'m Antenna)>,
}

/// A value in its base unit, or why there is none.
type Value = Result<f64, Lacks>;

impl<'m> One<'m> {
    fn of(
        st: &'m Station,
        chain: &'m Chain,
        b: &'m BandResult,
        chains: &'m [ChainResult],
        env: &'m Env,
    ) -> One<'m> {
        let stops = walk(&chain.steps, Some(st), &mut Vec::new());
        let heard = chains.iter().filter(|c| c.direction == Direction::Receive);
        One {
            st,
            b,
            env,
            receive: heard
                .flat_map(|c| c.bands.iter())
                .find(|x| x.band == b.band && x.point == b.point),
            transmitter: stops.iter().find_map(|s| match s {
                Stop::Part { part, .. } if part.data.transmitter().is_some() => Some(*part),
                _ => None,
            }),
            antennas: antennas_at(&stops, st),
        }
    }

    fn entry(&self, f: &FormField) -> Entry {
        match f.what.kind() {
            FieldKind::Blank => Entry::Blank,
            FieldKind::Words => match self.words(f.what) {
                Ok(w) => Entry::Words(w),
                Err(why) => Entry::Missing(why),
            },
            _ => match self.value(f.what) {
                Ok(v) if v.is_finite() => self.number(f, v),
                Ok(_) => Entry::Missing(Lacks::NotComputed),
                Err(why) => Entry::Missing(why),
            },
        }
    }

    fn number(&self, f: &FormField, base: f64) -> Entry {
        let exact = f.in_unit(base);
        let rounded = f.rounded(exact);
        let of = |q: LimitQuantity| {
            let w = f.to_base(rounded);
            let clauses = self.b.rules.iter().filter_map(|r| r.judged.as_ref());
            let over = |l: &&LimitResult| {
                // within the last bits a value on its limit is on it
                l.quantity == q && w > l.limit_w * (1.0 + 1e-9) && l.value_w <= l.limit_w
            };
            let all = self.b.limits.iter().chain(clauses).filter(over);
            all.map(|l| l.limit_w).min_by(f64::total_cmp)
        };
        Entry::Number {
            exact,
            rounded,
            uncertainty_db: match f.what {
                FieldWhat::Erp | FieldWhat::Eirp => self.b.uncertainty_db,
                FieldWhat::ReceiveLoss => self.receive.and_then(|r| r.uncertainty_db),
                _ => None,
            },
            over: match f.what {
                FieldWhat::Erp => of(LimitQuantity::Erp),
                FieldWhat::Eirp => of(LimitQuantity::Eirp),
                FieldWhat::Output => of(LimitQuantity::Output),
                _ => None,
            },
        }
    }

    fn value(&self, what: FieldWhat) -> Value {
        let computed = |v: Option<f64>| v.ok_or(Lacks::NotComputed);
        let receive_hz = || {
            let kind = self.env.band(&self.b.band).map(|b| b.kind.clone());
            match kind {
                Some(BandKind::Pair {
                    receive: Some(f), ..
                }) => Ok(f),
                _ => self.receive.map(|r| r.hz).ok_or(Lacks::ReceiveFrequency),
            }
        };
        let height = || self.height(|a| a.height_agl, Lacks::Height);
        let ground = || self.st.ground_amsl.ok_or(Lacks::Ground);
        match what {
            FieldWhat::TransmitFrequency => Ok(self.b.hz),
            FieldWhat::ReceiveFrequency => receive_hz(),
            FieldWhat::Offset => Ok(receive_hz()? - self.b.hz),
            FieldWhat::Output => match self.b.nodes.first() {
                Some(n) if n.forward_known && n.kind.sends() => Ok(n.forward_w),
                _ => Err(Lacks::NotComputed),
            },
            FieldWhat::Delivered => computed(self.b.antenna_w),
            FieldWhat::Erp => computed(self.b.erp_w()),
            FieldWhat::Eirp => computed(self.b.eirp_w),
            FieldWhat::Loss => computed(self.b.total_db),
            FieldWhat::ReceiveLoss => computed(self.receive.ok_or(Lacks::ReceiveChain)?.total_db),
            FieldWhat::Gain => computed(self.b.gain_dbi),
            FieldWhat::Height => height(),
            FieldWhat::Haat => self.height(|a| a.height_haat, Lacks::Haat),
            FieldWhat::Ground => ground(),
            FieldWhat::HeightAmsl => Ok(ground()? + height()?),
            FieldWhat::Latitude => self.st.position.map(|p| p.0).ok_or(Lacks::Position),
            FieldWhat::Longitude => self.st.position.map(|p| p.1).ok_or(Lacks::Position),
            FieldWhat::Bandwidth => {
                let t = self.transmitter.and_then(|p| p.data.transmitter());
                t.and_then(|t| t.bandwidth_hz).ok_or(Lacks::Bandwidth)
            }
            _ => Err(Lacks::NotComputed),
        }
    }

    /// A height that all antennas of the chain have in common.
    fn height(
        &self,
        get: fn(&Antenna) -> Option<downlead_quantity::Measure>,
        missing: Lacks,
    ) -> Value {
        let mut all = self.antennas.iter().map(|a| get(a.2).map(|m| m.value));
        let first = all.next().ok_or(Lacks::Antenna)?.ok_or(missing)?;
        for other in all {
            if (other.ok_or(missing)? - first).abs() > 1e-9 {
                return Err(Lacks::Differ);
            }
        }
        Ok(first)
    }

    fn words(&self, what: FieldWhat) -> Result<Box<str>, Lacks> {
        let sets = || {
            let under = self.st.under.iter();
            under
                .filter_map(|u| self.env.rule_set(&u.name.text))
                .filter(|s| s.licence)
        };
        let tag = |t: Option<&Name>| t.map(|n| n.text.clone()).ok_or(Lacks::Tag);
        match what {
            FieldWhat::Datum => match self.st.position {
                None => Err(Lacks::Position),
                Some(_) => self.st.datum.clone().ok_or(Lacks::Datum),
            },
            FieldWhat::Mode => {
                let t = self.transmitter.and_then(|p| p.data.transmitter());
                t.and_then(|t| t.mode)
                    .map(|m| m.word().into())
                    .ok_or(Lacks::Mode)
            }
            FieldWhat::Station => Ok(self.st.name.text.clone()),
            FieldWhat::Title => self.st.title.clone().ok_or(Lacks::Title),
            FieldWhat::Holder => sets().find_map(|s| s.holder.clone()).ok_or(Lacks::Holder),
            FieldWhat::Licence => {
                let all: Vec<&str> = sets().map(|s| &*s.name.text).collect();
                match all.is_empty() {
                    true => Err(Lacks::Licence),
                    false => Ok(all.join(", ").into()),
                }
            }
            FieldWhat::Transmitter => tag(self.transmitter.and_then(|p| p.tag.as_ref())),
            FieldWhat::Antenna => {
                if self.antennas.is_empty() {
                    return Err(Lacks::Antenna);
                }
                let all: Result<Vec<Box<str>>, Lacks> =
                    self.antennas.iter().map(|a| tag(a.1)).collect();
                Ok(all?.join(", ").into())
            }
            FieldWhat::Date => self.st.newest.clone().ok_or(Lacks::Date),
            _ => Err(Lacks::NotComputed),
        }
    }
}
