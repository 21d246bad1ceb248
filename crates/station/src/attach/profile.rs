//! Ground along a path from a text table: distance and height, the units in the names of the columns.

use super::columns::plain_name;
use super::readings::delimiter;
use super::records::Records;

/// What is wrong with a profile.
#[derive(Clone, Debug, PartialEq)]
pub enum ProfileTrouble {
    /// A column has no unit in its name.
    NoUnit(Box<str>),
    /// A column is none that a profile has.
    UnknownColumn(Box<str>),
    /// A column is missing.
    MissingColumn(&'static str),
    /// A figure cannot be read.
    NoNumber(Box<str>),
    /// The distance does not rise from the row before, m.
    Backwards {
        /// Distance of the row before.
        before: f64,
        /// Distance of this one.
        here: f64,
    },
}

/// What is wrong, and where.
#[derive(Clone, Debug, PartialEq)]
pub struct ProfileProblem {
    /// Line in the file, from 1.
    pub line: u64,
    /// What.
    pub what: ProfileTrouble,
}

/// A profile as read.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct ProfileFile {
    /// Distance and height of the ground above sea level, m, as far as they could be read.
    pub points: Vec<(f64, f64)>,
    /// What stands on the ground at each point, m; empty without such a column.
    pub clutter: Vec<f64>,
    /// What is wrong: a profile with problems is not computed with.
    pub problems: Vec<ProfileProblem>,
}

/// Names of the columns and what one of each unit is, m.
const DISTANCE: &[(&str, f64)] = &[("m", 1.0), ("km", 1000.0), ("ft", 0.3048), ("mi", 1609.344)];
const HEIGHT: &[(&str, f64)] = &[("m", 1.0), ("ft", 0.3048)];

/// The columns: their word, units, whether they must be there.
const COLUMNS: [(&str, &[(&str, f64)]); 3] = [
    ("distance", DISTANCE),
    ("ground", HEIGHT),
    ("clutter", HEIGHT),
];

/// Index of a column and what one of its unit is, m.
type At = (usize, f64);

impl ProfileFile {
    /// Reads a profile; none where the first line names no column `distance`, as readings never do.
    #[must_use]
    pub fn parse(text: &str) -> Option<ProfileFile> {
        let text = text.strip_prefix('\u{feff}').unwrap_or(text);
        let delimiter = delimiter(text);
        let mut records = Records::new(text, delimiter);
        let head = records.find(|r| r.fields.iter().any(|f| !f.is_empty()))?;
        let names: Vec<String> = head.fields.iter().map(|f| plain_name(f)).collect();
        if !names.iter().any(|n| n.starts_with("distance")) {
            return None;
        }
        let mut out = ProfileFile::default();
        let mut at: [Option<(usize, f64)>; 3] = [None; 3];
        for (i, name) in names.iter().enumerate() {
            let shown = || head.fields[i].as_ref().into();
            let known = COLUMNS.iter().position(|(w, _)| {
                name.strip_prefix(w)
                    .is_some_and(|r| r.is_empty() || r.starts_with('_'))
            });
            let Some(c) = known else {
                out.problem(head.line, ProfileTrouble::UnknownColumn(shown()));
                continue;
            };
            let unit = name[COLUMNS[c].0.len()..].trim_start_matches('_');
            match COLUMNS[c].1.iter().find(|u| u.0 == unit) {
                Some(u) => at[c] = Some((i, u.1)),
                None => out.problem(head.line, ProfileTrouble::NoUnit(shown())),
            }
        }
        for (c, word) in [(0, "distance_km"), (1, "ground_m")] {
            let named = names.iter().any(|n| n.starts_with(COLUMNS[c].0));
            if !named {
                out.problem(head.line, ProfileTrouble::MissingColumn(word));
            }
        }
        if let [Some(d), Some(h), clutter] = at {
            for r in records {
                out.row(r.line, &r.fields, (d, h, clutter), delimiter);
            }
        }
        Some(out)
    }

    fn problem(&mut self, line: u64, what: ProfileTrouble) {
        self.problems.push(ProfileProblem { line, what });
    }

    fn row(
        &mut self,
        line: u64,
        fields: &[std::borrow::Cow<'_, str>],
        (d, h, clutter): (At, At, Option<At>),
        delimiter: u8,
    ) {
        if fields.iter().all(|f| f.is_empty()) {
            return;
        }
        let mut read = |(i, scale): At| {
            let text = fields.get(i).map_or("", |f| f.as_ref());
            let plain = match delimiter {
                b',' => text.to_owned(),
                _ => text.replace(',', "."),
            };
            match plain.parse::<f64>() {
                Ok(x) if x.is_finite() => Some(x * scale),
                _ => {
                    self.problem(line, ProfileTrouble::NoNumber(text.into()));
                    None
                }
            }
        };
        let (Some(here), Some(height)) = (read(d), read(h)) else {
            return;
        };
        let on_it = clutter.map(|c| read(c).unwrap_or(0.0));
        if let Some(&(before, _)) = self.points.last()
            && here <= before
        {
            self.problem(line, ProfileTrouble::Backwards { before, here });
            return;
        }
        self.points.push((here, height));
        self.clutter.extend(on_it);
    }
}

#[cfg(test)]
mod tests {
    use super::{ProfileFile, ProfileTrouble};

    #[test]
    fn units_are_those_of_the_columns() {
        let p =
            ProfileFile::parse("# a path\ndistance_mi,ground_ft,clutter_m\n0,2000,0\n1,100,5\n");
        let p = p.expect("a profile");
        assert_eq!(p.points, [(0.0, 609.6), (1609.344, 30.48)]);
        assert_eq!(p.clutter, [0.0, 5.0]);
        assert!(p.problems.is_empty());
        let p =
            ProfileFile::parse("distance (km);ground (m)\n0;612,5\n2;431\n").expect("a profile");
        assert_eq!(p.points, [(0.0, 612.5), (2000.0, 431.0)]);
    }

    #[test]
    fn what_is_wrong_is_found_and_the_rest_is_read() {
        let of = |text: &str| {
            let p = ProfileFile::parse(text).expect("a profile");
            let what: Vec<_> = p.problems.into_iter().map(|p| (p.line, p.what)).collect();
            (what, p.points.len())
        };
        let (what, _) = of("distance_km,ground\n0,612\n");
        assert_eq!(what, [(1, ProfileTrouble::NoUnit("ground".into()))]);
        let (what, _) = of("distance_km,height_m\n0,612\n");
        assert_eq!(
            what[0],
            (1, ProfileTrouble::UnknownColumn("height_m".into()))
        );
        assert_eq!(what[1], (1, ProfileTrouble::MissingColumn("ground_m")));
        let (what, n) = of("distance_km,ground_m\n0,612\n5,x\n4,1\n3,2\n6,nan\n");
        assert_eq!(n, 2);
        assert_eq!(what[0], (3, ProfileTrouble::NoNumber("x".into())));
        let back = ProfileTrouble::Backwards {
            before: 4000.0,
            here: 3000.0,
        };
        assert_eq!(what[1], (5, back));
        assert_eq!(what[2], (6, ProfileTrouble::NoNumber("nan".into())));
        assert_eq!(ProfileFile::parse("frequency_mhz,piece\n1,A\n"), None);
        assert_eq!(ProfileFile::parse(""), None);
    }
}
