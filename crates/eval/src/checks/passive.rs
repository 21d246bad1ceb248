//! Figures that no part without a supply can have: what it reflects and what it lets through come to
//! more than what goes in.

use downlead_base::{Diagnostic, Loc, codes};
use downlead_physics::mismatch::{gamma_from_swr, mismatch_loss};
use downlead_quantity::{db, from_db, number};
use downlead_station::Env;
use downlead_station::model::{Device, Name, Part, PartData, PartKind, Role};

use crate::point::{Picked, Point, pick};

/// The part at the point.
pub(super) fn passive(
    env: &Env,
    part: &Part,
    port: Option<&str>,
    loc: Loc,
    point: &Point,
    out: &mut Vec<Diagnostic>,
) {
    let who = || {
        let tag = part.tag.as_ref().map_or(part.kind.word(), |t| &t.text);
        match port {
            Some(p) => format!("`{tag}.{p}`"),
            None => format!("`{tag}`"),
        }
    };
    match &part.data {
        PartData::Connector(_, name) => pair(env, name, loc, point, out),
        PartData::Line(l) => {
            let figures = pick(&l.loss, point, env).zip(pick(&l.swr, point, env));
            if let Some((loss, swr)) = figures {
                out.extend(finding(&who(), &loss, &swr));
            }
        }
        PartData::Device(d) if !amplifies(part.kind) => {
            let class = d.class.as_ref().and_then(|n| env.device(&n.text));
            if let Some((loss, swr)) = stated(env, d, class.map(|c| &c.device), port, point) {
                out.extend(finding(&who(), &loss, &swr));
            }
        }
        _ => {}
    }
}

fn amplifies(kind: PartKind) -> bool {
    kind.role() == Role::Active
}

/// Loss and SWR of a device at the point, its own or its definition's.
fn stated<'m>(
    env: &Env,
    d: &'m Device,
    class: Option<&'m Device>,
    port: Option<&str>,
    point: &Point,
) -> Option<(Picked<'m>, Picked<'m>)> {
    let ports = if d.ports.is_empty() {
        &class?.ports
    } else {
        &d.ports
    };
    let path = match port {
        Some(n) => ports.iter().find(|p| &*p.name.text == n),
        None => ports.iter().find(|p| p.name.text.is_empty()),
    }?;
    let loss = pick(&path.loss, point, env)?;
    let swr = pick(&d.swr, point, env).or_else(|| class.and_then(|c| pick(&c.swr, point, env)))?;
    Some((loss, swr))
}

/// A pair of connectors.
pub(super) fn pair(env: &Env, name: &Name, loc: Loc, point: &Point, out: &mut Vec<Diagnostic>) {
    let Some(c) = env.connector(&name.text) else {
        return;
    };
    if let (Some(swr), Some(law)) = (c.swr, c.loss) {
        let who = format!("`{}`", name.text);
        let words = words(&who, law.at(point.hz).value, swr.value);
        out.extend(words.map(|(message, help)| {
            Diagnostic::new(&codes::NOT_PASSIVE, loc, message)
                .at("more comes out than goes in")
                .help(help)
        }));
    }
}

fn finding(who: &str, loss: &Picked<'_>, swr: &Picked<'_>) -> Option<Diagnostic> {
    let (message, help) = words(who, loss.value.value, swr.value.value)?;
    Some(
        Diagnostic::new(&codes::NOT_PASSIVE, swr.figure.loc, message)
            .at("more comes out than goes in")
            .also(loss.figure.loc, "the loss")
            .help(help),
    )
}

/// What is wrong with a loss in dB and an SWR, if anything is, and what would be right.
fn words(who: &str, loss_db: f64, swr: f64) -> Option<(String, String)> {
    let gamma = gamma_from_swr(swr);
    let (back, through) = (gamma * gamma, from_db(-loss_db));
    // rounded figures of a part that loses next to nothing
    if back + through <= 1.0 + 1e-6 {
        return None;
    }
    let percent = |x: f64| number(100.0 * x, 2);
    Some((
        format!(
            "{who} would give out more than it gets: an SWR of {} sends {} % back, and {} let {} % through.",
            number(swr, 3),
            percent(back),
            db(loss_db),
            percent(through)
        ),
        format!(
            "With this SWR at least {} dB are lost, for what comes back does not go through. Check which of the two figures is the part's.",
            number(mismatch_loss(gamma), 3)
        ),
    ))
}
