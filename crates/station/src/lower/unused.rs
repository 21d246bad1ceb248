//! Figures of a device that enter no result, because no part of its kind has them or because
//! another of its figures takes their place: each is pointed out, none is dropped.

use downlead_base::{Diagnostic, Loc, codes};

use crate::cx::Cx;
use crate::model::{Device, PartKind, Role, When};

/// Says which figures of a device of this kind no result uses. `at` is where the device stands.
pub(super) fn unused(cx: &mut Cx<'_>, d: &Device, kind: PartKind, at: Loc) {
    let of = Of {
        d,
        kind,
        at,
        through: d
            .ports
            .iter()
            .find(|p| p.name.text.is_empty())
            .and_then(|p| p.loss.first())
            .map(|f| f.loc),
        // a file for some bands leaves the others to the figures
        measured: d
            .ports
            .iter()
            .any(|p| p.network.iter().any(|n| n.figure.when == When::Always)),
    };
    tuner(cx, &of);
    gain(cx, &of);
    division(cx, &of);
    coupling(cx, &of);
    balun(cx, &of);
    legs(cx, &of);
}

/// A device under its kind.
struct Of<'d> {
    d: &'d Device,
    kind: PartKind,
    /// Where it stands.
    at: Loc,
    /// Where a loss of no leg or port is stated.
    through: Option<Loc>,
    /// Whether a network file holds everywhere.
    measured: bool,
}

fn tuner(cx: &mut Cx<'_>, of: &Of<'_>) {
    if of.kind == PartKind::Tuner
        && let Some(f) = of.d.swr.first()
    {
        say(
            cx,
            f.loc,
            "A tuner makes the match that the transmitter sees; an SWR of its own enters no result.",
            "State what it loses, `tuner 0.2 dB ± 0.1 dB`, and the SWR of what it is to match.",
        );
    }
}

/// Gain and noise are those of an active device, whose loss is in its gain.
fn gain(cx: &mut Cx<'_>, of: &Of<'_>) {
    let a = of.kind.with_article();
    if of.kind.role() == Role::Active {
        if let Some(loc) = of.through {
            say(
                cx,
                loc,
                &format!("What {a} does is stated as a gain; a loss beside it enters no result."),
                "Take the loss off the gain.",
            );
        }
        return;
    }
    if let Some(f) = of.d.gain.first() {
        say(
            cx,
            f.loc,
            &format!("A gain is stated of an amplifier or preamplifier, and this is {a}."),
            "Written for example `amplifier PA1 13 dB gain`.",
        );
    }
    if of.d.noise_figure.is_some() {
        say(
            cx,
            of.at,
            &format!(
                "A noise figure is stated of a preamplifier, an amplifier or a receiver, and this is {a}: its noise follows from its loss and temperature."
            ),
            "Remove it.",
        );
    }
}

/// Excess loss, split and number of ways are those of a divider, which has no loss through it.
fn division(cx: &mut Cx<'_>, of: &Of<'_>) {
    let (d, a) = (of.d, of.kind.with_article());
    if of.kind != PartKind::Divider {
        if let Some(x) = d.excess.first() {
            say(
                cx,
                x.loc,
                &format!("An excess loss is stated of a divider, and this is {a}."),
                "Write its loss alone: `loss 0.3 dB`.",
            );
        }
        if d.ways.is_some() {
            say(
                cx,
                of.at,
                &format!("A number of ways is stated of a divider, and this is {a}."),
                "Written for example `divider DV1 2 way`.",
            );
        }
        return;
    }
    let Some(loc) = of.through else { return };
    if d.tee {
        say(
            cx,
            loc,
            "How a plain junction divides follows from what its branches are; its loss is not taken.",
            "State what is lost in it as `excess 0.1 dB`.",
        );
    } else if !d.excess.is_empty() || !d.split.is_empty() {
        say(
            cx,
            d.excess.first().map_or(of.at, |x| x.loc),
            "The loss to each branch is stated as a whole, so neither an excess loss nor a split enters a result.",
            "State either the loss to each branch, or how the divider divides and its excess loss.",
        );
    }
}

fn coupling(cx: &mut Cx<'_>, of: &Of<'_>) {
    let (kind, a) = (of.kind, of.kind.with_article());
    if of.d.coupling.is_some() && kind != PartKind::Coupler {
        say(
            cx,
            of.at,
            &format!("A coupling is stated of a coupler, and this is {a}."),
            "Written for example `coupler CP1 20 dB coupled`.",
        );
    }
    let one_way = matches!(kind, PartKind::Isolator | PartKind::Circulator);
    if of.d.isolation.is_some() && (!one_way && !kind.has_legs() || one_way && of.measured) {
        say(
            cx,
            of.at,
            &if one_way {
                "What passes backwards stands in the network file; the isolation enters no result."
                    .to_owned()
            } else {
                format!("An isolation is stated of an isolator or circulator, and this is {a}.")
            },
            "Remove it.",
        );
    }
}

fn balun(cx: &mut Cx<'_>, of: &Of<'_>) {
    let d = of.d;
    if of.kind != PartKind::Balun {
        return;
    }
    if of.measured && (d.ratio.is_some() || d.sits.is_some()) {
        say(
            cx,
            of.at,
            "What the balun does to impedances stands in its network file; a ratio, `series` or `shunt` enters no result.",
            "Remove it.",
        );
    } else if d.sits.is_some()
        && let Some(f) = d.swr.first()
    {
        say(
            cx,
            f.loc,
            "An SWR or return loss of a balun is measured with all that it reflects; where its loss sits, in `series` or `shunt`, then enters no result.",
            "State one of the two.",
        );
    }
}

fn legs(cx: &mut Cx<'_>, of: &Of<'_>) {
    if of.kind.has_legs()
        && of.d.ports.len() > 1
        && let Some(loc) = of.through
    {
        say(
            cx,
            loc,
            &format!(
                "A chain passes {} through one of its legs or ports; a loss of no leg enters no result.",
                of.kind.with_article()
            ),
            "Add it to the loss of each leg or port.",
        );
    }
}

fn say(cx: &mut Cx<'_>, loc: Loc, message: &str, help: &str) {
    cx.push(
        Diagnostic::new(&codes::UNEXPECTED_WORD, loc, message)
            .at("not used")
            .help(help),
    );
}
