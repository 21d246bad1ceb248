//! Lengths beside the state before: a length that was mistyped looks like one that was changed,
//! and only the state before tells.

use std::sync::Arc;

use downlead_base::{Diagnostic, Loc, Span, codes};
use downlead_quantity::number;
use downlead_station::evidence::CORRECTED;
use downlead_station::lengths::{StatedLength, item_lengths};
use downlead_syntax::{File, Item};

use super::Recording;
use super::states::{Stated, States};

/// The lengths of one file through the revisions.
#[derive(Clone, Debug, Default)]
pub(super) struct Lengths(States<StatedLength>);

impl Stated for StatedLength {
    fn key(&self) -> &str {
        &self.key
    }

    fn same(&self, other: &Self) -> bool {
        StatedLength::same(self, other)
    }
}

/// How a length looks mistyped.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Slip {
    /// Two neighbouring digits changed places.
    Swapped,
    /// The number stayed and the unit is another.
    Unit,
    /// The point moved: so many times as much, or as little.
    Point(f64),
}

impl Lengths {
    pub(super) fn is_empty(&self) -> bool {
        self.0.is_empty()
    }

    /// Follows each into the next revision.
    pub(super) fn add(&mut self, tree: &File, revision: &Arc<Recording>) {
        let all = tree.items().iter().flat_map(|p| item_lengths(&p.item));
        self.0.add(all, revision);
    }

    /// What looks mistyped in an item.
    pub(super) fn compare(&self, item: &Item) -> Vec<Diagnostic> {
        let changed = self.0.changed(item_lengths(item)).into_iter();
        changed
            .filter_map(|c| {
                let slip = slip(c.was, &c.now).filter(|_| !c.now.corrected)?;
                Some(finding(c.was, &c.now, slip, c.by))
            })
            .collect()
    }
}

/// Whether the change looks like a slip of the hand.
fn slip(was: &StatedLength, now: &StatedLength) -> Option<Slip> {
    let (a, b) = aligned(&was.digits, &now.digits);
    if was.unit != now.unit {
        return (a == b).then_some(Slip::Unit);
    }
    let point = [10.0, 100.0, 1000.0].into_iter().find_map(|k| {
        let is = |x: f64| (x / k - 1.0).abs() < 1e-9;
        let ratio = now.metres / was.metres;
        (is(ratio) || is(1.0 / ratio)).then_some(Slip::Point(k))
    });
    // 1 and 10 are no digits exchanged
    point.or(swapped(&a, &b).then_some(Slip::Swapped))
}

/// The digits of both numbers with the point at one place: `22.6` beside `22.06` is 2260 and 2206.
pub(super) fn aligned(a: &str, b: &str) -> (Vec<u8>, Vec<u8>) {
    let parts = |t: &str| {
        let (whole, rest) = t.split_once('.').unwrap_or((t, ""));
        (whole.trim_start_matches('0').to_owned(), rest.to_owned())
    };
    let ((aw, ar), (bw, br)) = (parts(a), parts(b));
    let (whole, rest) = (aw.len().max(bw.len()), ar.len().max(br.len()));
    let join = |w: &str, r: &str| format!("{w:0>whole$}{r:0<rest$}").into_bytes();
    (join(&aw, &ar), join(&bw, &br))
}

/// Whether one is the other with two neighbouring digits exchanged.
pub(super) fn swapped(a: &[u8], b: &[u8]) -> bool {
    let differ: Vec<usize> = (0..a.len().min(b.len()))
        .filter(|i| a[*i] != b[*i])
        .collect();
    match *differ {
        [i, j] => j == i + 1 && a[i] == b[j] && a[j] == b[i],
        _ => false,
    }
}

fn finding(was: &StatedLength, now: &StatedLength, slip: Slip, by: &Recording) -> Diagnostic {
    let looks = match slip {
        Slip::Swapped => "two digits changed places".to_owned(),
        Slip::Unit => "the number stayed and the unit changed".to_owned(),
        Slip::Point(k) => format!(
            "it is exactly {k} times {}",
            if now.metres > was.metres {
                "as long"
            } else {
                "shorter"
            }
        ),
    };
    let ratio = now.metres / was.metres;
    let ratio = if ratio < 0.1 {
        number(ratio, 3)
    } else {
        number(ratio, 2)
    };
    // on the bench the loss is read: what is expected of it goes with the length
    let ends = match now.keyword() {
        "piece" => format!("its cable promises {ratio} times the loss"),
        "let" => format!("it is {ratio} times what it was"),
        _ => format!("its loss is {ratio} times what it was"),
    };
    let d = Diagnostic::new(
        &codes::LENGTH_MISTYPED,
        now.loc,
        format!(
            "`{}` was {} when {} recorded it on {} ({}); now it is {}: {looks}, and {ends}.",
            now.name, was.text, by.author, by.date, by.revision, now.text
        ),
    )
    .at("looks mistyped")
    .fix(
        format!("write `{}` as before", was.text),
        now.loc,
        was.text.to_string(),
    );
    if now.keyword() == "let" {
        return d.help("Write it as it was. If it is meant, it is quiet from the commit after the one that brings it.");
    }
    let end = now.statement.span.end;
    d.help(format!(
        "Write it as it was. If the line really has another length now, say so: `{CORRECTED} \"…\"`, or `since` when."
    ))
    .fix(
        "keep the new length and say what it was",
        Loc::new(now.statement.item, Span::new(end, end)),
        format!(", {CORRECTED} \"was {}\"", was.text.replace('"', "'")),
    )
}

#[cfg(test)]
mod tests {
    use super::{Lengths, Recording};
    use downlead_syntax::File;
    use std::sync::Arc;

    fn text(line: &str) -> String {
        format!(
            "chain c on 145 MHz {{\n    transmitter 5 W\n    {line}\n    antenna 2.15 dBi\n}}\n"
        )
    }

    /// The messages about the last text, when the others were committed in that order.
    fn said(states: &[&str], now: &str) -> Vec<String> {
        let mut all = Lengths::default();
        for (i, line) in states.iter().enumerate() {
            let by = Recording {
                revision: format!("r{i}").into(),
                date: "2026-07-19".into(),
                seconds: i as i64,
                author: "QY5BEN".into(),
            };
            all.add(&File::parse(text(line)), &Arc::new(by));
        }
        let tree = File::parse(text(now));
        let items = tree.items().iter();
        items
            .flat_map(|p| all.compare(&p.item))
            .map(|d| d.message)
            .collect()
    }

    #[test]
    fn slips_are_told_and_changes_are_not() {
        for (was, now, told) in [
            (
                "46 m",
                "64 m",
                "two digits changed places, and its loss is 1.39 times",
            ),
            (
                "22.60 m",
                "22.06 m",
                "two digits changed places, and its loss is 0.98 times",
            ),
            ("22.6 m", "22.06 m", "two digits"),
            ("46.5 m", "45.6 m", "two digits"),
            (
                "15 ft",
                "15 m",
                "the unit changed, and its loss is 3.28 times",
            ),
            ("15.0 ft", "15 m", "the unit changed"),
            (
                "28 m",
                "280 m",
                "it is exactly 10 times as long, and its loss is 10 times",
            ),
            ("28 m", "2.8 m", "it is exactly 10 times shorter"),
            (
                "12.5 m",
                "0.125 m",
                "it is exactly 100 times shorter, and its loss is 0.01",
            ),
            ("1.5 m", "1500 m", "it is exactly 1000 times as long"),
            ("46 m ± 0.5 m", "64 m ± 0.5 m", "was 46 m ± 0.5 m when"),
            // another length, another unit for the same, three digits, no neighbours
            ("46 m", "48 m", ""),
            ("46 m", "92 m", ""),
            ("150 ft", "45.7 m", ""),
            ("15 ft", "16 m", ""),
            ("123 m", "321 m", ""),
            ("123 m", "231 m", ""),
            ("20 m", "20.0 m", ""),
            ("46 m", "46 m ± 1 m", ""),
        ] {
            let [a, b] = [was, now].map(|l| format!("run M1 {l} of rg-213"));
            let got = said(&[&a], &b);
            assert_eq!(
                got.len(),
                usize::from(!told.is_empty()),
                "{was}, {now}: {got:?}"
            );
            assert!(
                got.iter().all(|g| g.contains(told)),
                "{was}, {now}: {got:?}"
            );
        }
    }

    #[test]
    fn pieces_and_named_lengths_are_compared_too() {
        let told = |was: &str, now: &str| {
            let mut all = Lengths::default();
            let by = Recording {
                revision: "r0".into(),
                date: "2026-07-19".into(),
                seconds: 0,
                author: "x".into(),
            };
            all.add(&File::parse(was), &Arc::new(by));
            let tree = File::parse(now);
            let items = tree.items().iter();
            let found: Vec<_> = items.flat_map(|p| all.compare(&p.item)).collect();
            assert_eq!(found.len(), 1, "{now}");
            (found[0].message.clone(), found[0].fixes.len())
        };
        let (said, fixes) = told("let tower = 46 m\n", "let tower = 64 m\n");
        assert!(
            said.starts_with("`let tower` was 46 m")
                && said.ends_with("and it is 1.39 times what it was."),
            "{said}"
        );
        assert_eq!(fixes, 1);
        let piece = |l: &str| {
            format!("session s {{\n    piece 2A {l} of rg-213, connector 2 of n-pair\n}}\n")
        };
        let (said, fixes) = told(&piece("22.60 m"), &piece("26.20 m"));
        assert!(
            said.starts_with("`piece 2A` was 22.60 m")
                && said.ends_with("and its cable promises 1.16 times the loss."),
            "{said}"
        );
        assert_eq!(fixes, 2);
    }

    #[test]
    fn another_cable_a_date_or_a_reason_is_no_slip() {
        let was = "run M1 46 m of rg-213, since 2019";
        for now in [
            "run M1 64 m of half-inch-foam, since 2019",
            "run M1 64 m of rg-213, since 2026-11",
            "run M1 64 m of rg-213, since 2019, corrected \"measured again\"",
            "run M2 64 m of rg-213, since 2019",
            "run M1 64 m of rg-213, since 2019; run M1 64 m of rg-213, since 2019",
        ] {
            assert_eq!(said(&[was], now), [""; 0], "{now}");
        }
        let got = said(&[was], "run M1 64 m of rg-213, since 2019, corrected \" \"");
        assert_eq!(got.len(), 1);
    }

    #[test]
    fn the_newest_commit_is_told_until_the_next_and_mending_is_not() {
        let [a, b, c] = ["46 m", "64 m", "66 m"].map(|l| format!("run {l} of rg-213"));
        let (a, b, c): (&str, &str, &str) = (&a, &b, &c);
        for (states, now, told) in [
            (&[a, b][..], b, 1),
            (&[a, b, b], b, 0),
            (&[a, b], a, 0),
            (&[a, b, a], a, 0),
            (&[a, a], b, 1),
            (&[a, b], c, 0),
            (&[a], a, 0),
            (&[], b, 0),
        ] {
            assert_eq!(said(states, now).len(), told, "{states:?} {now}");
        }
    }

    #[test]
    fn of_several_lines_alike_the_changed_one_is_meant() {
        let three =
            |b: &str| format!("jumper 1.2 m of rg-58c; jumper {b} of rg-58c; jumper 3 m of rg-58c");
        let got = said(&[&three("0.35 m")], &three("0.53 m"));
        assert_eq!(got.len(), 1);
        assert!(got[0].starts_with("`jumper` was 0.35 m"), "{got:?}");
    }
}
