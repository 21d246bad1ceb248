//! Carrier, peak envelope and mean power: from what is stated to what is counted.

use downlead_base::{Diagnostic, Loc, Span, codes};
use downlead_physics::power::{PowerKind as P, convert, from_pep};
use downlead_quantity::power;
use downlead_station::model::{Mode, PowerKind};

use crate::assume::Assumed;
use crate::chain::{Feed, Run, physics_mode};

/// Mean power while keyed over the stated power.
pub(crate) fn mean_factor(f: &Feed<'_>) -> Option<f64> {
    if f.data.broken_duty {
        return None;
    }
    if f.kind == Some(PowerKind::Mean) {
        return Some(1.0);
    }
    if let Some(d) = f.data.duty {
        return Some(d);
    }
    let mode = physics_mode(f.data.mode?);
    convert(1.0, mode, kind(f.kind.unwrap_or(PowerKind::Pep)), P::Mean)
}

/// Mean power while keyed over a power of another kind.
pub(crate) fn mean_over(of: PowerKind, mode: Mode) -> Option<f64> {
    convert(1.0, physics_mode(mode), kind(of), P::Mean)
}

/// Peak envelope power over a power of another kind.
pub(crate) fn peak_over(of: PowerKind, mode: Mode) -> Option<f64> {
    convert(1.0, physics_mode(mode), kind(of), P::Pep)
}

/// Peak envelope power over the stated power.
pub(crate) fn pep_factor(f: &Feed<'_>) -> Option<f64> {
    match (f.kind, f.data.mode) {
        (Some(PowerKind::Pep) | None, _) => Some(1.0),
        (Some(k), Some(m)) => convert(1.0, physics_mode(m), kind(k), P::Pep),
        (Some(_), None) => None,
    }
}

fn kind(k: PowerKind) -> P {
    match k {
        PowerKind::Carrier => P::Carrier,
        PowerKind::Pep => P::Pep,
        PowerKind::Mean => P::Mean,
    }
}

/// That a mode has no power of the kind that is stated or counted.
fn no_carrier(
    f: &Feed<'_>,
    (have, mode, want): (PowerKind, Mode, PowerKind),
    loc: Loc,
) -> Diagnostic {
    let mode = mode.word();
    let (message, help) = match have {
        PowerKind::Carrier => (
            format!(
                "`{mode}` has no carrier, so {} carrier says no {} power.",
                power(f.watts),
                want.word()
            ),
            format!(
                "Write what the transmitter gives in this mode: `{} pep, {mode}`; or the mode in which it sends a carrier.",
                power(f.watts)
            ),
        ),
        _ => (
            format!(
                "The limit counts {} power, and `{mode}` has no carrier: {} {} cannot be turned into it.",
                want.word(),
                power(f.watts),
                have.word()
            ),
            "Judge by a limit on `pep` power; a limit on the carrier does not hold for this mode."
                .to_owned(),
        ),
    };
    Diagnostic::new(&codes::POWER_KIND_MISSING, f.figure.loc, message)
        .at("no carrier in this mode")
        .also(loc, "the limit")
        .help(help)
}

/// Factor from the stated power to the kind a limit counts; none with a diagnostic if unknown.
pub(crate) fn kind_factor<'m>(
    run: &mut Run<'m, '_>,
    f: &Feed<'m>,
    want: Option<PowerKind>,
    loc: Loc,
) -> Option<f64> {
    // the mode or duty is there but could not be read, which is a finding already
    let by_mode = match f.kind {
        Some(k) => k != want.unwrap_or(PowerKind::Pep),
        None => want.is_some(),
    };
    if f.data.broken_duty && by_mode {
        return None;
    }
    let Some(want) = want else {
        // a limit that says no kind counts what licences usually do: the peak envelope
        let factor = pep_factor(f);
        let who = f.part.tag.as_ref().map_or(f.part.loc, |t| t.loc);
        if f.kind.is_none() {
            run.assumed.add(Assumed::PowerKind, who);
        }
        if factor != Some(1.0) {
            run.assumed.add(Assumed::LimitPep, loc);
        }
        return factor.or(Some(1.0));
    };
    if f.kind == Some(want) {
        return Some(1.0);
    }
    if want == PowerKind::Mean
        && let Some(m) = mean_factor(f)
    {
        return Some(m);
    }
    let mode = f.data.mode.map(physics_mode);
    if let (Some(have), Some(m)) = (f.kind, mode)
        && let Some(x) = convert(1.0, m, kind(have), kind(want))
    {
        return Some(x);
    }
    if f.kind.is_none()
        && let Some(m) = mode
    {
        // one envelope: all kinds are equal
        if from_pep(m, P::Carrier) == Some(1.0) && from_pep(m, P::Mean) == Some(1.0) {
            run.assumed.add(
                Assumed::PowerKind,
                f.part.tag.as_ref().map_or(f.part.loc, |t| t.loc),
            );
            return Some(1.0);
        }
    }
    let end = Loc::new(
        f.figure.loc.item,
        Span::new(f.figure.loc.span.end, f.figure.loc.span.end),
    );
    if let (Some(have), Some(m)) = (f.kind, f.data.mode) {
        run.diags.push(no_carrier(f, (have, m, want), loc));
        return None;
    }
    if let Some(have) = f.kind {
        run.diags.push(
            Diagnostic::new(
                &codes::POWER_KIND_MISSING,
                f.figure.loc,
                format!("The limit counts {} power; {} {} cannot be turned into it without the mode.", want.word(), power(f.watts), have.word()),
            )
            .at("which mode?")
            .also(loc, "the limit")
            .help("Add the mode, `fm`, `data`, `cw`, `ssb`, `ssb-processed` or `am`, or the share as `duty 35 %`."),
        );
        return None;
    }
    let mut d =
        Diagnostic::new(
            &codes::POWER_KIND_MISSING,
            f.figure.loc,
            format!("The limit counts {} power; {} does not say what it is.", want.word(), power(f.watts)),
        )
        .at("carrier, pep or mean?")
        .also(loc, "the limit")
        .help("Write which kind it is; where it is another one than the limit counts, write the mode too, for example `100 W pep, ssb`: of speech on single sideband the mean is about a fifth of the peak.");
    for k in [PowerKind::Carrier, PowerKind::Pep, PowerKind::Mean] {
        // another kind than the limit's needs the mode
        if k == want || mode.is_some_and(|m| convert(1.0, m, kind(k), kind(want)).is_some()) {
            let w = k.word();
            d = d.fix(format!("write `{w}`"), end, format!(" {w}"));
        }
    }
    run.diags.push(d);
    None
}
