//! Lengths of a path that contradict each other: by the positions of its stations, as stated, by its profile.

use downlead_base::{Diagnostic, Loc, codes};
use downlead_quantity::number;
use downlead_station::Env;
use downlead_station::model::{Hop, Link};

/// Lengths that differ by no more than this share of the longer one, or this many metres, agree: positions are
/// rounded, and a profile is read off a map (our choice).
const SHARE: f64 = 0.01;
const METRES: f64 = 200.0;

/// A length of the path.
struct Length {
    metres: f64,
    /// Half-width of what is stated about it, m.
    within: f64,
    /// How it is known, in words.
    by: &'static str,
    loc: Option<Loc>,
}

fn kilometres(m: f64) -> String {
    format!("{} km", number(m / 1e3, 2))
}

/// Whether two lengths of the path differ, which is then said.
pub(super) fn differ(
    l: &Link,
    first: &Hop,
    profile_m: Option<f64>,
    env: &Env,
    out: &mut Vec<Diagnostic>,
) -> bool {
    let known = |metres: f64, by: &'static str, loc: Option<Loc>| Length {
        metres,
        within: 0.0,
        by,
        loc,
    };
    let profile = profile_m
        .zip(l.profile.as_ref())
        .map(|(m, file)| known(m, "by the profile", Some(file.loc)));
    let stated = l.distance.as_ref().map(|(m, loc)| Length {
        within: 2.0 * m.u,
        ..known(m.value, "by `distance`", Some(*loc))
    });
    let positions =
        by_positions(first, env).map(|m| known(m, "by the positions of its stations", None));
    let all: Vec<Length> = [profile, stated, positions].into_iter().flatten().collect();
    for (i, a) in all.iter().enumerate() {
        for b in &all[i + 1..] {
            let allowed = METRES.max(SHARE * a.metres.max(b.metres)) + a.within + b.within;
            if (a.metres - b.metres).abs() <= allowed {
                continue;
            }
            let loc = a.loc.or(b.loc).unwrap_or(l.loc);
            let mut d = Diagnostic::new(
                &codes::PROFILE_DIFFERS,
                loc,
                format!(
                    "The path is {} long {}, and {} {}.",
                    kilometres(a.metres),
                    a.by,
                    kilometres(b.metres),
                    b.by
                ),
            )
            .at("nothing is judged")
            .help("Both ends of a profile are at the stations of the first hop. Correct the position, the distance or the table.");
            if let Some(other) = a.loc.and(b.loc) {
                d = d.also(other, "the other length");
            }
            out.push(d);
            return true;
        }
    }
    false
}

/// Along the ellipsoid, m; none where a position or a datum is not stated, or they are of different datums.
pub(super) fn by_positions(hop: &Hop, env: &Env) -> Option<f64> {
    let (a, b) = (
        env.station(&hop.from.station.text)?,
        env.station(&hop.to.station.text)?,
    );
    let same = a.datum.is_some() && a.datum == b.datum;
    let at = a.position.zip(b.position).filter(|_| same)?;
    Some(downlead_physics::position::distance_m(at.0, at.1))
}
