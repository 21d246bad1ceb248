//! What licences and rules say, in words.

use downlead_eval::licence::RuleVerdict;
use downlead_quantity::{db, frequency, number, power};

use super::verdict::{Judged, text};
use crate::document::{Sign, Text};
use crate::shape::rules::{DutyReport, FixedReport, RuleReport};

impl Judged for RuleVerdict {
    fn sign(self) -> Sign {
        match self {
            RuleVerdict::Met => Sign::Good,
            RuleVerdict::NotMet => Sign::Bad,
            _ => Sign::Open,
        }
    }

    fn words(self) -> &'static str {
        match self {
            RuleVerdict::MetIfAllocated => "met, if allocated",
            RuleVerdict::Met => "met",
            RuleVerdict::NotMet => "not met",
            RuleVerdict::CannotTell => "cannot tell",
            RuleVerdict::AtLimit => "at the limit",
            RuleVerdict::CannotJudge => "cannot judge",
            RuleVerdict::NoRule => "no rule",
        }
    }
}

/// The verdict of a clause.
#[must_use]
pub fn verdict(r: &RuleReport) -> Text {
    text(*r.verdict)
}

/// `tso-14-0093 clause 4`.
#[must_use]
pub fn citation(r: &RuleReport) -> String {
    match &r.cite {
        Some(c) => format!("{} {c}", r.set),
        None => r.set.clone(),
    }
}

/// `ERP carrier`.
#[must_use]
pub fn quantity(r: &RuleReport) -> String {
    let what = match r.quantity.as_deref() {
        Some("output") => "output".to_owned(),
        Some("dc-input") => "DC input".to_owned(),
        Some(q) => q.to_uppercase(),
        None => String::new(),
    };
    match &r.kind {
        Some(k) => format!("{what} {k}"),
        None => what,
    }
}

/// `0.85 dB under`.
#[must_use]
pub fn margin(r: &RuleReport) -> String {
    r.margin_db.map_or(String::new(), |m| {
        let side = if m < 0.0 { "over" } else { "under" };
        format!("{} {side}", db(m.abs()))
    })
}

/// What is missing, and that a text is not sure.
#[must_use]
pub fn remarks(r: &RuleReport) -> String {
    let mut parts = r.missing.clone();
    if r.confidence.as_deref() == Some("low") {
        parts.push("the text is not sure (confidence low)".to_owned());
    }
    if *r.verdict == RuleVerdict::MetIfAllocated {
        parts.push(format!(
            "where it is allocated, write `under {} {{ allocated 144 MHz to 148 MHz, \"who says so\" }}` with its frequencies",
            r.set
        ));
    }
    if *r.verdict == RuleVerdict::NoRule {
        parts.push("no clause bears on this frequency: that is not \"met\"".to_owned());
    }
    parts.join("; ")
}

/// Something that is fixed.
#[must_use]
pub fn fixed(f: &FixedReport) -> Text {
    let show = |x: f64| match f.unit {
        "m" => format!("{} m", number(x, 1)),
        _ => frequency(x),
    };
    let off = match f.off {
        Some(off) if *f.verdict == RuleVerdict::Met && off == 0.0 => "as in the paper".to_owned(),
        Some(off) => format!("off by {}, {} is allowed", show(off), show(f.within)),
        None => "the station does not say it".to_owned(),
    };
    Text::from(format!("{}: ", f.what))
        .with(text(*f.verdict))
        .plus(&format!(", {off}; {} {}", f.set, f.cite))
}

/// A threshold that is reached.
#[must_use]
pub fn duty(d: &DutyReport) -> String {
    format!(
        "{}; {} {} {} the threshold of {}; {} {}",
        d.duty,
        power(d.value_w),
        d.quantity.to_uppercase(),
        if d.reached { "reaches" } else { "may reach" },
        power(d.threshold_w),
        d.set,
        d.cite
    )
}
