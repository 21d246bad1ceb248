//! What is wrong with the profile of a link.

use downlead_base::{Diagnostic, codes};
use downlead_quantity::{length, number};
use downlead_station::model::{Link, Name};
use downlead_station::{Content, Env, ProfileFile, ProfileTrouble};

/// The profile, if it can be computed with; what is wrong goes to `out`.
pub(super) fn usable<'e>(
    l: &Link,
    env: &'e Env,
    out: &mut Vec<Diagnostic>,
) -> Option<&'e ProfileFile> {
    let name = l.profile.as_ref()?;
    let file = env.attachments.at(name.loc)?;
    let p = match &file.content {
        Ok(Content::Profile(p)) => p,
        // which is said where files are read
        Err(_) => return None,
        Ok(_) => {
            out.push(unread(
                name,
                1,
                "it has no column `distance_km` in its first line".into(),
                WRITE,
            ));
            return None;
        }
    };
    // one wrong column or cell is enough to say what the table needs
    for problem in p.problems.iter().take(3) {
        out.push(found(name, problem.line, &problem.what));
    }
    if !p.problems.is_empty() {
        return None;
    }
    let short = match p.points.first() {
        Some(first) if first.0 != 0.0 => Some(format!(
            "it begins {} from the station: the first row is at distance 0",
            length(first.0)
        )),
        _ if p.points.len() < 3 => Some("it has fewer than three rows".to_owned()),
        _ => None,
    };
    if let Some(why) = short {
        out.push(unread(name, 2, why, WRITE));
        return None;
    }
    Some(p)
}

const WRITE: &str =
    "A profile begins with `distance_km,ground_m` and has a row for each point, from 0 on.";

fn unread(name: &Name, line: u64, why: String, help: &str) -> Diagnostic {
    Diagnostic::new(
        &codes::PROFILE_NOT_READ,
        name.loc,
        format!("`{}`, line {line}: {why}.", name.text),
    )
    .at("the profile is not used")
    .help(help)
}

fn found(name: &Name, line: u64, what: &ProfileTrouble) -> Diagnostic {
    let text = &name.text;
    match what {
        ProfileTrouble::NoUnit(column) => Diagnostic::new(
            &codes::PROFILE_IN_FEET,
            name.loc,
            format!("`{text}`, line {line}: the column `{column}` does not say its unit, and metres and feet differ by a factor of 3.3."),
        )
        .at("the profile is not used")
        .help("Write the unit in the name of the column: `distance_km`, `ground_m` or `ground_ft`."),
        ProfileTrouble::Backwards { before, here } => Diagnostic::new(
            &codes::PROFILE_BACKWARDS,
            name.loc,
            format!(
                "`{text}`, line {line}: {} stands after {}; the distance rises from row to row.",
                length(*here),
                length(*before)
            ),
        )
        .at("the profile is not used")
        .help("Sort the rows by distance, from the first station of the first hop on."),
        ProfileTrouble::UnknownColumn(column) => {
            let why = format!("`{column}` is no column of a profile");
            unread(name, line, why, "The columns are `distance_km`, `ground_m` and, if wanted, `clutter_m`; `_m` and `_ft` are units too.")
        }
        ProfileTrouble::MissingColumn(column) => {
            unread(name, line, format!("there is no column `{column}`"), WRITE)
        }
        ProfileTrouble::NoNumber(cell) => {
            unread(name, line, format!("`{cell}` is no number"), "Each row has a distance and a height, as plain numbers.")
        }
    }
}

/// A station whose ground is not that of its end of the profile, m.
pub(super) fn differs(name: &Name, station: &str, (said, there): (f64, f64)) -> Diagnostic {
    Diagnostic::new(
        &codes::PROFILE_DIFFERS,
        name.loc,
        format!(
            "The ground at `{station}` is {} m by its `ground` and {} m by the profile.",
            number(said, 4),
            number(there, 4)
        ),
    )
    .at("the profile is not used")
    .help("The profile runs from the first station of the first hop to the other one. Turn it round, or mend the height that is wrong.")
}
