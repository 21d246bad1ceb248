//! The pictures of a report: what was read at a point of a chain over the years.

use downlead_eval::Snapshot;
use downlead_eval::result::{LogTrend, Logged};

use crate::bench::plots::{Plot, file_name};
use crate::svg::trend::{Dated, picture};

/// A picture of every kind of reading of every log that has three dates or more.
pub(crate) fn of_logs(snapshot: &Snapshot) -> Vec<Plot> {
    let mut out = Vec::new();
    let items = snapshot.scopes().iter().flat_map(|s| s.items());
    for chain in items.flat_map(|x| &x.2.chains) {
        for band in &chain.bands {
            for log in &band.logs {
                let after = log.after.as_deref().unwrap_or("the beginning");
                out.extend(log.trends.iter().map(|t| one(t, after, &band.band)));
            }
        }
    }
    out
}

fn one(t: &LogTrend, after: &str, band: &str) -> Plot {
    let words = match t.what {
        Logged::Forward => "forward power, dB against the first",
        Logged::Reflected => "reflected power, dB against the first",
        Logged::Swr => "SWR",
    };
    let points: Vec<Dated> = t
        .points
        .iter()
        .map(|(date, p)| Dated {
            date: date.to_string(),
            days: p.days,
            value: p.value,
            u: 2.0 * p.u,
        })
        .collect();
    let title = match t.what {
        Logged::Forward => format!("Forward power after {after} on {band}"),
        Logged::Reflected => format!("Reflected power after {after} on {band}"),
        Logged::Swr => format!("SWR after {after} on {band}"),
    };
    Plot {
        name: format!(
            "log-{}-{}-{}",
            file_name(after),
            file_name(band),
            t.what.word()
        ),
        text: picture(
            &title,
            words,
            if t.what == Logged::Swr { "" } else { "dB" },
            "bars and hatching: uncertainty (k = 2) of one reading against another",
            &points,
            Some(&t.trend),
        ),
    }
}
