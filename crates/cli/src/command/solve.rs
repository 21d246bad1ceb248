//! `downlead solve`: the figure with which a goal is reached, and `downlead sweep`: results over a
//! figure.

mod beyond;

use std::io;

use downlead_eval::result::BandResult;
use downlead_eval::vary::Varied;
use downlead_eval::{Evaluated, Places, Scope};
use downlead_quantity::{db, to_db};
use downlead_report::write::csv::{Field, csv};
use downlead_station::model::{Meaning, Node};
use serde_json::json;

use crate::change::vary::{SolveArgs, SolveFormat, SweepArgs};
use crate::files::gather;
use crate::loader::in_words;
use crate::model::{Loader, Snapshot};
use crate::ui::{Outcome, Ui};

/// Points at which it is looked whether a result only rises or only falls.
const LOOKED_AT: u32 = 33;

/// A file with a figure of it.
struct Opened {
    snapshot: Snapshot,
    loader: Box<dyn Loader>,
    varied: Varied,
    shown: String,
}

impl Opened {
    fn of(
        file: &std::path::Path,
        root: Option<&std::path::Path>,
        path: &str,
        variant: Option<&str>,
    ) -> Result<Opened, Vec<String>> {
        let gathered = gather(&[file.to_owned()], root);
        if !gathered.trouble.is_empty() {
            return Err(gathered.trouble);
        }
        let (Some(group), true) = (gathered.groups.first(), file.is_file()) else {
            return Err(vec![format!("{}: name one file", file.display())]);
        };
        let loader = group.loader();
        let snapshot = Snapshot::load(&group.files, &loader);
        if let Some(e) = snapshot.files().first().and_then(|f| f.error.as_ref()) {
            return Err(vec![format!("{}: {}", file.display(), in_words(e))]);
        }
        let snapshot = super::varied::of_one(snapshot, variant).map_err(|e| vec![e])?;
        let varied = Varied::find(&snapshot, 0, path).map_err(|e| vec![e])?;
        Ok(Opened {
            shown: group
                .files
                .first()
                .map_or_else(String::new, |f| group.shown(f)),
            snapshot,
            loader: Box::new(loader),
            varied,
        })
    }

    fn set(&mut self, x: f64) {
        self.varied.set(&mut self.snapshot, x, &*self.loader);
    }
}

/// Calls `f` for each chain of the file on each band.
fn each_band(s: &Snapshot, mut f: impl FnMut(&str, &Evaluated, &BandResult)) {
    let places = Places::new(s);
    for item in s.scopes().iter().flat_map(Scope::items) {
        for c in &item.2.chains {
            let name = places.text(c.name);
            c.bands.iter().for_each(|b| f(name, item, b));
        }
    }
}

/// What is to be reached.
pub(super) enum Goal {
    Limits,
    /// ERP or EIRP (true) in W on a band, at least (true) or at most.
    Radiated(bool, bool, f64, String),
    /// The sum of the shares at a spot, or at all.
    Exposure(Option<String>),
    /// What is left of the margin in a link, in dB at least.
    Hops(String, f64),
}

impl Goal {
    fn of(text: &str) -> Result<Goal, String> {
        if text.trim() == "limits" {
            return Ok(Goal::Limits);
        }
        let words: Vec<&str> = text.split_whitespace().collect();
        let wrong = || {
            format!(
                "`{text}` is no goal; write `limits`, `exposure`, or for example \"erp >= 20 W on 2m\", \"eirp <= 10 W on 70cm\", \"exposure at gate\" or \"margin >= 0 dB in harbour-quay\"."
            )
        };
        match words[..] {
            ["exposure"] => return Ok(Goal::Exposure(None)),
            ["exposure", "at", spot] => return Ok(Goal::Exposure(Some(spot.to_owned()))),
            ["margin", ">=", number, "dB", "in", link] => {
                let least = number.parse::<f64>().ok().filter(|x| x.is_finite());
                return Ok(Goal::Hops(link.to_owned(), least.ok_or_else(wrong)?));
            }
            _ => {}
        }
        let [quantity, sign, number, "W", "on", band] = words[..] else {
            return Err(wrong());
        };
        let watts: f64 = number.parse().map_err(|_| wrong())?;
        let eirp = match quantity {
            "erp" => false,
            "eirp" => true,
            _ => return Err(wrong()),
        };
        let least = match sign {
            ">=" => true,
            "<=" => false,
            _ => return Err(wrong()),
        };
        if !(watts > 0.0 && watts.is_finite()) {
            return Err(wrong());
        }
        Ok(Goal::Radiated(eirp, least, watts, band.to_owned()))
    }

    /// What is judged: name, margin and its uncertainty, dB.
    fn judged(&self, s: &Snapshot) -> Vec<(String, f64, f64)> {
        let mut out = beyond::judged(self, s);
        each_band(s, |chain, item, b| match self {
            Goal::Exposure(_) | Goal::Hops(..) => {}
            Goal::Limits => {
                for l in &b.limits {
                    let source = match item.1.meaning.node(l.loc) {
                        Some(Node::Limit {
                            source: Some(s), ..
                        }) => format!("{s} ({chain} on {})", b.band),
                        _ => format!("{} limit of {chain} on {}", l.quantity.word(), b.band),
                    };
                    out.push((source, l.margin_db, l.uncertainty_db));
                }
                for (r, l) in b.rules.iter().filter_map(|r| Some((r, r.judged.as_ref()?))) {
                    let source = format!("{} ({chain} on {})", r.source(), b.band);
                    out.push((source, l.margin_db, l.uncertainty_db));
                }
            }
            Goal::Radiated(eirp, least, watts, band) => {
                let value = if *eirp { b.eirp_w } else { b.erp_w() };
                if let (true, Some(w)) = (*b.band == **band, value) {
                    let over = to_db(w / watts);
                    let margin = if *least { over } else { -over };
                    out.push((chain.to_owned(), margin, b.uncertainty_db.unwrap_or(0.0)));
                }
            }
        });
        out
    }
}

/// The question with what it turned out to rest on.
struct Question {
    opened: Opened,
    goal: Goal,
    /// What is judged and depends on the figure: its number and its name.
    moves: Vec<(usize, String)>,
}

impl Question {
    /// Least margin at a number, less its uncertainty if `surely`, and whose it is.
    fn margin(&mut self, x: f64, surely: bool) -> Option<(f64, String)> {
        self.opened.set(x);
        let all = self.goal.judged(&self.opened.snapshot);
        let mut least: Option<(f64, String)> = None;
        for (i, known) in &self.moves {
            let (name, margin, u) = all.get(*i)?;
            // another clause applies at this number: what is sought is not one function of it
            if name != known {
                return None;
            }
            let m = if surely { margin - u } else { *margin };
            if !m.is_finite() {
                return None;
            }
            if least.as_ref().is_none_or(|l| m < l.0) {
                least = Some((m, name.clone()));
            }
        }
        least
    }

    /// The numbers between which is searched.
    fn range(&self) -> (f64, f64) {
        let v = &self.opened.varied;
        match v.unit.as_str() {
            // what the text may say of a gain
            "dBi" | "dBd" => ((v.value - 60.0).max(-100.0), (v.value + 60.0).min(100.0)),
            "dB" => (0.0, v.value + 100.0),
            "dBm" | "dBW" => (v.value - 100.0, v.value + 60.0),
            _ => (v.value.abs() * 1e-3, v.value.abs().max(1e-3) * 1e3),
        }
    }

    fn at(&self, share: f64) -> f64 {
        let (lo, hi) = self.range();
        if lo > 0.0 && hi / lo > 1e3 {
            return libm::exp(libm::log(lo) + share * (libm::log(hi) - libm::log(lo)));
        }
        lo + share * (hi - lo)
    }

    /// Whether the margin rises with the number. It must do so everywhere, or nowhere.
    fn rises(&mut self) -> Result<bool, String> {
        let mut known: Vec<f64> = Vec::new();
        for k in 0..LOOKED_AT {
            let x = self.at(f64::from(k) / f64::from(LOOKED_AT - 1));
            known.extend(self.margin(x, false).map(|m| m.0));
        }
        let steps: Vec<f64> = known
            .windows(2)
            .map(|w| w[1] - w[0])
            .filter(|d| d.abs() > 1e-9)
            .collect();
        let rises = steps.first().is_some_and(|d| *d > 0.0);
        if steps.iter().any(|d| (*d > 0.0) != rises) {
            return Err("The margin rises and falls with this figure, so there is no one answer; `downlead sweep` shows it.".to_owned());
        }
        Ok(rises)
    }

    /// The number at which the margin is 0; what is short at the better end where it never is.
    fn zero(&mut self, surely: bool, rises: bool) -> Result<f64, String> {
        let ends = [0.0, 1.0].map(|s| self.at(s));
        let mut of = |x: f64| {
            let m = self.margin(x, surely).map(|m| m.0);
            m.ok_or_else(|| format!("At {x} the goal cannot be computed."))
        };
        let (mut bad, mut good) = if rises {
            (ends[0], ends[1])
        } else {
            (ends[1], ends[0])
        };
        let best = of(good)?;
        if best < 0.0 {
            return Err(format!("even at {} it is {} short", plain(good), db(-best)));
        }
        if of(bad)? > 0.0 {
            return Err(format!(
                "it is reached at any number, also at {}",
                plain(bad)
            ));
        }
        for _ in 0..200 {
            let middle = 0.5 * (bad + good);
            if middle == bad || middle == good {
                break;
            }
            if of(middle)? >= 0.0 {
                good = middle;
            } else {
                bad = middle;
            }
        }
        Ok(good)
    }
}

/// Not more digits than can be read.
fn plain(x: f64) -> String {
    downlead_quantity::sig(x, 4)
}

/// Rounded to the side on which the goal is still reached: to steps, else to three digits.
fn rounded(x: f64, rises: bool, step: Option<f64>) -> f64 {
    let step = step.unwrap_or_else(|| {
        let size = if x == 0.0 {
            0.0
        } else {
            libm::floor(libm::log10(x.abs()))
        };
        libm::pow(10.0, size - 2.0)
    });
    let n = x / step;
    // what is a whole number of steps stays one
    let whole = n.round();
    let n = if (n - whole).abs() < 1e-9 * n.abs().max(1.0) {
        whole
    } else if rises {
        n.ceil()
    } else {
        n.floor()
    };
    // the digits of the step, without those of the multiplication
    let digits = (-libm::floor(libm::log10(step))).clamp(0.0, 12.0);
    #[allow(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "0 to 12"
    )]
    let digits = digits as usize + 1;
    format!("{:.digits$}", n * step).parse().unwrap_or(x)
}

pub(crate) fn solve(args: &SolveArgs, ui: &mut Ui) -> io::Result<Outcome> {
    let variant = args.variant.as_deref();
    let opened = Opened::of(&args.file, args.within.root.as_deref(), &args.vary, variant);
    let step = args.step.as_deref().map(|s| {
        let number = s
            .split_whitespace()
            .next()
            .and_then(|n| n.parse::<f64>().ok());
        number
            .filter(|n| *n > 0.0)
            .ok_or_else(|| format!("--step {s}: it is no positive number"))
    });
    let found = opened.and_then(|o| {
        let goal = Goal::of(&args.goal).map_err(|e| vec![e])?;
        Ok((o, goal, step.transpose().map_err(|e| vec![e])?))
    });
    let (opened, goal, step) = match found {
        Ok(all) => all,
        Err(why) => {
            why.iter().for_each(|w| ui.complain(w));
            return Ok(Outcome::Trouble);
        }
    };
    let start = opened.varied.value;
    let mut q = Question {
        opened,
        goal,
        moves: Vec::new(),
    };
    let before = q.goal.judged(&q.opened.snapshot);
    q.opened.set(start * 1.01 + 0.01);
    let after = q.goal.judged(&q.opened.snapshot);
    let moved = before.iter().zip(&after).enumerate();
    q.moves = moved
        .filter(|(_, (a, b))| (a.1 - b.1).abs() > 1e-9)
        .map(|(i, (a, _))| (i, a.0.clone()))
        .collect();
    if q.moves.is_empty() {
        ui.complain(&format!(
            "Nothing of `{}` depends on {}.",
            args.goal, args.vary
        ));
        return Ok(Outcome::Findings);
    }
    let answer = q.rises().and_then(|rises| {
        let just = q.zero(false, rises)?;
        let sure = q.zero(true, rises);
        Ok((rises, just, sure))
    });
    let (rises, just, sure) = match answer {
        Ok(all) => all,
        Err(why) => {
            ui.complain(&format!("{}: {why}", args.vary));
            return Ok(Outcome::Findings);
        }
    };
    let unjudged = unjudged(&q);
    let binding = q.margin(just, false).map_or_else(String::new, |m| m.1);
    let safe = sure.as_ref().ok().map(|x| rounded(*x, rises, step));
    let unit = q.opened.varied.unit.clone();
    let out = match args.format {
        SolveFormat::Json => {
            let value = json!({
                "schema": "downlead-solve/1",
                "file": q.opened.shown,
                "vary": args.vary,
                "goal": args.goal,
                "unit": unit,
                "stated": start,
                "beyond_uncertainty": sure.as_ref().ok(),
                "just": just,
                "rounded": safe,
                "binding": binding,
                "not_judged": unjudged,
            });
            serde_json::to_string_pretty(&value)? + "\n"
        }
        SolveFormat::Text => {
            let side = if rises { "at least" } else { "at most" };
            let shown = |x: f64| format!("{side} {} {unit}", plain(rounded(x, rises, None)));
            let surely = match (&sure, safe) {
                (Ok(x), Some(r)) if step.is_some() => {
                    format!("{}; in steps {side} {} {unit}", shown(*x), plain(r))
                }
                (Ok(x), _) => shown(*x),
                (Err(why), _) => why.clone(),
            };
            let open: String = unjudged
                .iter()
                .map(|u| format!("  not judged              {u}\n"))
                .collect();
            format!(
                "{} (stated {start} {unit}), for {}\n  beyond the uncertainty  {surely}\n  just reached            {}\n  binding                 {binding}\n{open}",
                args.vary,
                args.goal,
                shown(just)
            )
        }
    };
    ui.print(&out)?;
    Ok(if sure.is_ok() {
        Outcome::Clean
    } else {
        Outcome::Findings
    })
}

/// Clauses that the answer says nothing about, because something is missing for them or none bears
/// on the frequency.
fn unjudged(q: &Question) -> Vec<String> {
    let mut out = beyond::unjudged(&q.goal, &q.opened.snapshot);
    if !matches!(q.goal, Goal::Limits) {
        return out;
    }
    each_band(&q.opened.snapshot, |chain, _, b| {
        for r in b.rules.iter().filter(|r| r.judged.is_none()) {
            out.push(format!("{} ({chain} on {})", r.source(), b.band));
        }
    });
    out
}

/// A row of a sweep.
struct Row {
    file: String,
    station: String,
    chain: String,
    band: String,
    hz: f64,
    x: f64,
    loss: Option<f64>,
    u: Option<f64>,
    erp: Option<f64>,
    swr: Option<f64>,
}

pub(crate) fn sweep(args: &SweepArgs, ui: &mut Ui) -> io::Result<Outcome> {
    let variant = args.variant.as_deref();
    let opened = Opened::of(&args.file, args.within.root.as_deref(), &args.over, variant);
    let found = opened.and_then(|o| {
        let end = |text: &str| {
            let text = text.trim();
            let bare = text
                .strip_suffix(o.varied.unit.as_str())
                .unwrap_or(text)
                .trim();
            let number = bare.parse::<f64>().ok().filter(|x| x.is_finite());
            number.ok_or_else(|| {
                vec![format!(
                    "`{text}` is no number in {}, the unit of {}",
                    o.varied.unit, args.over
                )]
            })
        };
        let ends = (end(&args.from)?, end(&args.to)?);
        Ok((o, ends))
    });
    let (mut o, (from, to)) = match found {
        Ok(all) => all,
        Err(why) => {
            why.iter().for_each(|w| ui.complain(w));
            return Ok(Outcome::Trouble);
        }
    };
    let mut rows: Vec<Row> = Vec::new();
    for k in 0..args.steps {
        let share = f64::from(k) / f64::from((args.steps - 1).max(1));
        let x = from + share * (to - from);
        o.set(x);
        each_band(&o.snapshot, |chain, item, b| {
            rows.push(Row {
                file: o.shown.clone(),
                station: match &item.1.meaning {
                    Meaning::Station(st) => st.name.text.to_string(),
                    _ => String::new(),
                },
                chain: chain.to_owned(),
                band: b.band.to_string(),
                hz: b.hz,
                x,
                loss: b.total_db,
                u: b.uncertainty_db,
                erp: b.erp_w(),
                swr: b.swr,
            });
        });
    }
    let fields: &[Field<Row>] = &[
        ("file", |r| (&r.file).into()),
        ("station", |r| (&r.station).into()),
        ("chain", |r| (&r.chain).into()),
        ("band", |r| (&r.band).into()),
        ("frequency_hz", |r| r.hz.into()),
        ("value", |r| r.x.into()),
        ("total_loss_db", |r| r.loss.into()),
        ("uncertainty_db", |r| r.u.into()),
        ("erp_w", |r| r.erp.into()),
        ("swr", |r| r.swr.into()),
    ];
    ui.print(&csv(fields, &rows).map_err(io::Error::other)?)?;
    Ok(Outcome::Clean)
}
