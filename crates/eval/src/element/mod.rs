//! Elements: what a part is at one frequency, ready for the cascade.

mod cable;
mod connector;
mod device;
mod line;

pub(crate) use line::COLD_C;

use downlead_base::{Diagnostic, Loc, codes};
use downlead_quantity::{Measure, frequency};
use downlead_station::Env;
use downlead_station::model::{
    Basis, Bound, Cable, Connector, Direction, Meta, Name, NetworkFile, Part, PartData, PartKind,
    Station,
};

use crate::assume::{Assumed, Assumptions};
use crate::cable::CableAt;
use crate::cascade::Piece;
use crate::cause::Cause;
use crate::network;
use crate::point::{Picked, Point};
use crate::result::NodeKind;

/// A line as evaluated.
#[derive(Clone, Copy, Debug)]
pub(crate) struct LineAt<'m> {
    pub(crate) cable: &'m Cable,
    pub(crate) at: CableAt,
    pub(crate) length_m: f64,
    pub(crate) temperature: Measure,
}

/// A part at one frequency.
#[derive(Clone, Debug)]
pub(crate) struct Element<'m> {
    /// The part; none for a default join.
    pub(crate) part: Option<&'m Part>,
    /// What it is.
    pub(crate) kind: NodeKind,
    /// Where it is defined.
    pub(crate) def: Loc,
    /// Where its name stands, for lists.
    pub(crate) who: Loc,
    /// The line of the chain.
    pub(crate) chain: Loc,
    /// Port taken.
    pub(crate) port: Option<&'m Name>,
    /// Matched loss, dB (negative: gain).
    pub(crate) loss_db: f64,
    /// Basis of the loss.
    pub(crate) basis: Basis,
    /// What is said about the loss.
    pub(crate) meta: Option<&'m Meta>,
    /// Contributions to the doubt, dB (standard, signed).
    pub(crate) causes: Vec<(Cause<'m>, f64)>,
    /// Line data.
    pub(crate) line: Option<LineAt<'m>>,
    /// Connector data with its count.
    pub(crate) connector: Option<(&'m Connector, u32)>,
    /// Network file its figures are from; they lie as on transmit, see [`turned`].
    pub(crate) file: Option<&'m NetworkFile>,
    /// Physical temperature, °C.
    pub(crate) celsius: f64,
    /// Noise figure of an active part, dB.
    pub(crate) noise_figure: Option<f64>,
    /// Largest extra loss when wet, dB.
    pub(crate) wet_db: f64,
    /// By how much a run of which no temperature is stated loses less in the cold, dB.
    pub(crate) cold_db: f64,
    /// Whether its figures could all be had.
    pub(crate) complete: bool,
}

impl Element<'_> {
    /// What a sentence about it begins with: its tag, or `This pad`.
    pub(crate) fn subject(&self) -> String {
        match self.part.and_then(|p| p.tag.as_ref()) {
            Some(t) => t.text.to_string(),
            None => format!("This {}", self.kind),
        }
    }
}

/// What building elements needs.
pub(crate) struct Build<'m, 'o> {
    pub(crate) station: Option<&'m Station>,
    pub(crate) env: &'m Env,
    pub(crate) point: &'o Point,
    pub(crate) pieces: Vec<Piece>,
    pub(crate) assumed: Assumptions,
    pub(crate) diags: Vec<Diagnostic>,
}

impl<'m> Build<'m, '_> {
    fn element(&self, part: Option<&'m Part>, kind: NodeKind, def: Loc, chain: Loc) -> Element<'m> {
        let who = part.and_then(|p| p.tag.as_ref()).map_or(def, |t| t.loc);
        Element {
            part,
            kind,
            def,
            who,
            chain,
            port: None,
            loss_db: 0.0,
            basis: Basis::Stated,
            meta: part.map(|p| &*p.meta),
            causes: Vec::new(),
            line: None,
            connector: None,
            file: None,
            celsius: 20.0,
            noise_figure: None,
            wet_db: 0.0,
            cold_db: 0.0,
            complete: true,
        }
    }

    /// A default join between two neighbours.
    pub(crate) fn join(&mut self, name: &'m Name, chain: Loc, index: usize) -> Element<'m> {
        let mut e = self.element(None, NodeKind::Join, name.loc, chain);
        self.connector(&mut e, 1, name, index);
        e
    }

    /// Several pairs of one kind.
    pub(crate) fn joins(&mut self, count: u32, name: &'m Name, chain: Loc) -> Element<'m> {
        let mut e = self.element(None, NodeKind::Part(PartKind::Connector), name.loc, chain);
        self.connector(&mut e, count, name, 0);
        e
    }

    /// A part that is neither the beginning nor the end of the chain.
    pub(crate) fn part(
        &mut self,
        part: &'m Part,
        port: Option<&'m Name>,
        chain: Loc,
        index: usize,
    ) -> Element<'m> {
        let mut e = self.element(Some(part), NodeKind::Part(part.kind), part.loc, chain);
        e.port = port;
        match &part.data {
            PartData::Line(l) => self.line(&mut e, part, l, index),
            PartData::Connector(n, name) => self.connector(&mut e, *n, name, index),
            PartData::Device(d) => self.device(&mut e, part, d, port, index),
            _ => e.complete = false,
        }
        e
    }

    fn no_figure(&mut self, e: &mut Element<'m>, what: &str) {
        e.complete = false;
        let who = e.subject();
        self.diags.push(
            Diagnostic::new(
                &codes::NO_FIGURE_FOR_BAND,
                e.who,
                format!(
                    "{who} has no {what} for {} ({}).",
                    self.point.band,
                    frequency(self.point.hz)
                ),
            )
            .at("no figure for this band")
            .also(e.chain, "the chain that needs it")
            .help(format!(
                "Add a figure `on {}`, or one without `on` that holds everywhere.",
                self.point.band
            )),
        );
    }

    fn picked(&mut self, e: &mut Element<'m>, p: &Picked<'m>) {
        e.basis = p.figure.meta.basis;
        if *p.figure.meta != Meta::default() {
            e.meta = Some(&p.figure.meta);
        }
        if p.outside > 1.000_001 {
            let who = e.subject();
            self.diags.push(
                Diagnostic::new(
                    &codes::BEYOND_RANGE,
                    p.figure.loc,
                    format!(
                        "{} lies outside the table of {who}; the nearest row is taken.",
                        frequency(self.point.hz)
                    ),
                )
                .at("nearest row"),
            );
        }
        if matches!(p.figure.meta.bound, Some((Bound::Maximum, _))) {
            self.assumed.add(Assumed::MaximumTaken, e.who);
        }
        if p.value.u == 0.0 && p.value.value != 0.0 {
            self.assumed.add(Assumed::LossExact, e.who);
        }
    }

    /// Temperature of a part: its own, its place's, else 20 °C.
    fn temperature(
        &mut self,
        own: Option<&Measure>,
        place: Option<&'m Name>,
    ) -> (Measure, Option<&'m str>, bool) {
        if let Some(t) = own {
            return (*t, None, true);
        }
        if let (Some(st), Some(p)) = (self.station, place)
            && let Some(t) = st
                .places
                .iter()
                .find(|q| q.name.text == p.text)
                .and_then(|q| q.temperature)
        {
            return (t, Some(&p.text), true);
        }
        (Measure::exact(20.0), None, false)
    }

    /// A part whose two-port stands in a file.
    fn measured(
        &mut self,
        e: &mut Element<'m>,
        kind: PartKind,
        file: &'m NetworkFile,
        index: usize,
    ) {
        e.file = Some(file);
        e.basis = file.figure.meta.basis;
        e.meta = Some(&file.figure.meta);
        let asked = network::Asked {
            file,
            chain: e.chain,
            point: self.point,
        };
        let Some(piece) = network::two_port(&asked, kind, self.env, index, &mut self.diags) else {
            e.complete = false;
            return;
        };
        e.loss_db = piece.loss_db;
        e.causes
            .push((Cause::Device(file.figure.loc), file.figure.value.u));
        if file.figure.value.u == 0.0 {
            self.assumed.add(Assumed::FileExact, e.who);
        }
        self.pieces.push(piece);
    }
}

/// Turns a part of a chain that is walked from the antenna: it was built as it lies on transmit, and
/// its pieces begin at `from`. If nothing passes it that way it has no figures, which is said.
pub(crate) fn turned(
    direction: Direction,
    kind: PartKind,
    e: &mut Element<'_>,
    b: &mut Build<'_, '_>,
    from: usize,
) {
    // an amplifier's port 1 is its input wherever it stands
    if direction != Direction::Receive || network::amplifies(kind) || !e.complete {
        return;
    }
    let (Some(file), Some(piece)) = (e.file, b.pieces.get_mut(from)) else {
        return;
    };
    let asked = network::Asked {
        file,
        chain: e.chain,
        point: b.point,
    };
    if let Some(d) = network::blocked(&asked, &piece.s) {
        // what is added to it in the text stays
        e.loss_db -= piece.loss_db;
        e.causes
            .retain(|(c, _)| *c != Cause::Device(file.figure.loc));
        let exact = (Assumed::FileExact, e.who);
        b.assumed.list.retain(|a| *a != exact);
        e.complete = false;
        b.pieces.remove(from);
        b.diags.push(d);
        return;
    }
    let turned = Piece {
        s: piece.s.reversed(),
        loss_db: -piece.s.reversed().gain(),
        s11: piece.s22,
        s22: piece.s11,
        ..*piece
    };
    e.loss_db += turned.loss_db - piece.loss_db;
    *piece = turned;
}
