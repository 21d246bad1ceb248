//! Readings compared with their history in a real repository.

use std::fs;
use std::path::Path;
use std::process::Command;
use std::sync::Arc;

use downlead_eval::Snapshot;
use downlead_station::{LoadError, Loader, ReadingsFile};

struct Disk<'d>(&'d Path);

impl Loader for Disk<'_> {
    fn read(&self, path: &str) -> Result<Arc<str>, LoadError> {
        fs::read_to_string(self.0.join(path))
            .map(Arc::from)
            .map_err(|_| LoadError::NotFound)
    }
}

fn git(dir: &Path, args: &[&str], day: &str) {
    let done = Command::new("git")
        .args(["-c", "commit.gpgSign=false", "-c", "core.autocrlf=false"])
        .args(args)
        .current_dir(dir)
        .env("GIT_CONFIG_GLOBAL", "/dev/null")
        .env("GIT_AUTHOR_NAME", "QY2TEC")
        .env("GIT_AUTHOR_EMAIL", "qy2tec@example.org")
        .env("GIT_AUTHOR_DATE", format!("{day}T19:00:00+0000"))
        .env("GIT_COMMITTER_NAME", "QY2TEC")
        .env("GIT_COMMITTER_EMAIL", "qy2tec@example.org")
        .env("GIT_COMMITTER_DATE", "2026-10-01T00:00:00+0000")
        .output()
        .expect("git is there");
    assert!(done.status.success(), "{args:?}: {done:?}");
}

fn commit(dir: &Path, day: &str) {
    git(dir, &["add", "-A"], day);
    git(dir, &["commit", "-q", "-m", "x"], day);
}

const HILL: &str = "band 2m 145.3 MHz\n\ninstrument W3 \"meter\" {\n    accuracy 5 % of reading\n}\n\nstation hill {\n    transmitter TX1 30 W ± 5 % carrier, fm\n    run M1 28 m of half-inch-foam, at 15 °C\n    antenna A1 4.5 dBi ± 0.5 dB, swr 1.2\n    chain talk-out on 2m transmit {\n        TX1\n        M1\n        read 26.0 W forward, 2026-07-04 with W3 by QY2TEC\n        readings from \"site log.csv\" with W3\n        A1\n    }\n}\n";
const LOG: &str = "after,date,forward_w,person,corrected\nM1,2024-07-01,26.1,QY2TEC,\nM1,2025-07-02,26.2,QY2TEC,\n";

/// The changed readings of `isle/hill.downlead`: each with the text of its line.
fn found(root: &Path) -> Vec<(String, String)> {
    of_code(root, "reading-edited")
}

fn of_code(root: &Path, code: &str) -> Vec<(String, String)> {
    let path = "isle/hill.downlead".to_owned();
    let mut s = Snapshot::load(std::slice::from_ref(&path), &Disk(root));
    let files = s.files_to_recall();
    assert_eq!(files, [path.as_str(), "isle/site log.csv"]);
    for f in files {
        let text = fs::read_to_string(root.join(&f)).expect("a file");
        assert!(
            f.ends_with(".downlead") || !ReadingsFile::parse(&text).rows.is_empty(),
            "{text}"
        );
        if let Some(r) = downlead_git::recorded(&root.join(&f)).expect("a repository") {
            s.set_recorded(&f, Arc::new(r));
        }
    }
    let places = downlead_eval::Places::new(&s);
    let text = s.files()[0].text();
    s.diagnostics()
        .iter()
        .filter(|d| d.code.id == code)
        .map(|d| {
            let line = places.line(d.primary.loc) as usize;
            let line = text.lines().nth(line - 1).unwrap_or("").trim().to_owned();
            (line, d.message.clone())
        })
        .collect()
}

fn write(root: &Path, hill: &str, log: &str) {
    fs::create_dir_all(root.join("isle")).expect("a folder");
    fs::write(root.join("isle/hill.downlead"), hill).expect("a file");
    fs::write(root.join("isle/site log.csv"), log).expect("a file");
}

#[test]
fn a_reading_is_followed_through_commits_and_new_names() {
    let dir = tempfile::tempdir().expect("a folder");
    let root = dir.path();
    git(root, &["init", "-q"], "2026-07-01");
    // at first under other names, with a slip that is corrected on the same evening
    fs::create_dir_all(root.join("old")).expect("a folder");
    fs::write(
        root.join("old/hill.downlead"),
        HILL.replace("26.0 W", "62.0 W"),
    )
    .expect("a file");
    fs::write(root.join("old/site.csv"), LOG).expect("a file");
    commit(root, "2026-07-04");
    fs::write(root.join("old/hill.downlead"), HILL).expect("a file");
    commit(root, "2026-07-04");
    git(root, &["mv", "old", "isle"], "2026-07-20");
    git(
        root,
        &["mv", "isle/site.csv", "isle/site log.csv"],
        "2026-07-20",
    );
    commit(root, "2026-07-20");
    assert_eq!(found(root), []);

    // not committed yet
    write(
        root,
        &HILL.replace("26.0 W", "25.2 W"),
        &LOG.replace("26.2", "25.4"),
    );
    let both = found(root);
    let name = |m: &str| {
        let (a, b) = (m.find('(').expect("a name"), m.find(')').expect("an end"));
        m[a + 1..b].len() >= 7
    };
    assert_eq!(both.len(), 2, "{both:#?}");
    assert!(both[0].0.starts_with("read 25.2 W"));
    assert!(
        both[0]
            .1
            .starts_with("This reading was 26.0 W when QY2TEC recorded it on 2026-07-04 (")
            && both[0].1.ends_with("now it is 25.2 W."),
        "{both:#?}"
    );
    assert!(both[1].0.starts_with("readings from"));
    assert!(
        both[1].1.starts_with(
            "The reading in line 3 was 26.2 W when QY2TEC recorded it on 2026-07-04 ("
        ) && both[1].1.ends_with("now it is 25.4 W."),
        "{both:#?}"
    );
    assert!(both.iter().all(|b| name(&b.1)));

    // committed long after: still not what was recorded
    commit(root, "2026-09-01");
    assert_eq!(found(root), both);

    // with the reason it is
    write(
        root,
        &HILL.replace(
            "26.0 W forward, 2026-07-04 with W3 by QY2TEC",
            "25.2 W forward, 2026-07-04 with W3 by QY2TEC, corrected \"was 26.0 W: wrong element\"",
        ),
        &LOG.replace("26.2,QY2TEC,", "25.4,QY2TEC,wrong element"),
    );
    assert_eq!(found(root), []);
    commit(root, "2026-09-02");
    assert_eq!(found(root), []);
    // and stays the record from then on
    write(root, &HILL.replace("26.0 W", "25.9 W"), LOG);
    let again = found(root);
    assert!(
        again.len() == 2 && again[0].1.contains("was 25.2 W"),
        "{again:#?}"
    );
}

#[test]
fn what_is_no_change_of_a_reading_is_not_told() {
    let dir = tempfile::tempdir().expect("a folder");
    let root = dir.path();
    git(root, &["init", "-q"], "2026-07-01");
    write(root, HILL, LOG);
    commit(root, "2026-07-04");
    for (hill, log) in [
        // another unit, another line, another meter's name, a new reading before the old one
        (
            HILL.replace("26.0 W forward", "44.15 dBm forward"),
            LOG.to_owned(),
        ),
        (
            HILL.to_owned(),
            LOG.replace("forward_w", "forward_mw")
                .replace(",26.1,", ",26100,")
                .replace(",26.2,", ",26200,"),
        ),
        (HILL.replace("W3", "W9"), LOG.to_owned()),
        (
            HILL.replace(
                "        read 26.0",
                "        read 25.0 W forward, 2026-08-04 with W3 by QY2TEC\n        read 26.0",
            ),
            LOG.replace("2024", "2023-07-01,20.0,QY2TEC,\nM1,2024"),
        ),
        // the same day again, earlier and later
        (
            HILL.replace(
                "        read 26.0",
                "        read 25.9 W forward, 2026-07-04 with W3 by QY2TEC\n        read 26.0",
            ),
            LOG.replace(
                "2024-07-01,26.1",
                "2024-07-01,26.0,QY2TEC,\nM1,2024-07-01,26.1",
            ),
        ),
        // taken out
        (
            HILL.replace(
                "        read 26.0 W forward, 2026-07-04 with W3 by QY2TEC\n",
                "        read swr 1.2, 2026-07-04 with W3 by QY2TEC\n",
            ),
            "after,date,forward_w\nM1,2024-07-01,26.1\n".to_owned(),
        ),
        // what is no reading
        (
            HILL.replace("30 W ± 5 %", "31 W ± 5 %")
                .replace("28 m", "29 m"),
            LOG.to_owned(),
        ),
    ] {
        write(root, &hill, &log);
        assert_eq!(found(root), [], "{hill}\n{log}");
    }
}

/// Also without any reading in it a file has lengths, and in the commit after the slip they are reported.
#[test]
fn a_length_is_compared_with_the_state_before() {
    let dir = tempfile::tempdir().expect("a folder");
    let root = dir.path();
    git(root, &["init", "-q"], "2026-07-01");
    write(root, HILL, LOG);
    commit(root, "2026-07-04");
    let found = |root: &Path| of_code(root, "length-mistyped");
    assert_eq!(found(root), []);
    let slip = HILL.replace("28 m", "82 m");
    write(root, &slip, LOG);
    let told = found(root);
    assert_eq!(told.len(), 1);
    assert!(told[0].0.starts_with("run M1 82 m"));
    assert!(
        told[0]
            .1
            .starts_with("`run M1` was 28 m when QY2TEC recorded it on 2026-07-04 (")
            && told[0]
                .1
                .ends_with("and its loss is 2.93 times what it was."),
        "{told:#?}"
    );
    commit(root, "2026-07-05");
    assert_eq!(found(root), told);
    // while something else is typed
    write(root, &slip.replace("30 W", "31 W"), LOG);
    assert_eq!(found(root), told);
    // with the next commit it counts as meant; back again is no slip
    commit(root, "2026-07-06");
    assert_eq!(found(root), []);
    write(root, HILL, LOG);
    assert_eq!(found(root), []);
    commit(root, "2026-07-07");
    assert_eq!(found(root), []);
}

#[test]
fn without_a_repository_it_is_said_and_without_commits_nothing_is_known() {
    let dir = tempfile::tempdir().expect("a folder");
    let root = dir.path();
    write(root, HILL, LOG);
    let file = root.join("isle/hill.downlead");
    let said = downlead_git::recorded(&file).expect_err("no repository");
    assert!(said.contains("is in no git repository"), "{said}");
    git(root, &["init", "-q"], "2026-07-01");
    assert!(downlead_git::recorded(&file).expect("git").is_none());
    git(root, &["add", "isle/site log.csv"], "2026-07-01");
    git(root, &["commit", "-q", "-m", "x"], "2026-07-01");
    assert!(downlead_git::recorded(&file).expect("git").is_none());
}

/// The findings of `check` in a folder after `s.downlead` was committed as it was.
fn said_of(root: &Path, path: &str) -> Vec<String> {
    let mut s = Snapshot::load(&[path.to_owned()], &Disk(root));
    if let Some(r) = downlead_git::recorded(&root.join(path)).expect("a repository") {
        s.set_recorded(path, Arc::new(r));
    }
    s.diagnostics()
        .iter()
        .filter(|d| d.code.id == "reading-edited" || d.code.id == "length-mistyped")
        .map(|d| d.message.clone())
        .collect()
}

const REELS: &str = "session 7 {\n    read 2026-07-19 by x\n    piece A 22.60 m of rg-213\n    readings on 145.3 MHz {\n        through A 29.8 W at 2 min\n    }\n}\nsession 8 {\n    read 2026-07-19 by x\n    piece A 22.60 m of rg-213\n    readings on 145.3 MHz {\n        through A 30.8 W at 2 min\n    }\n}\n";

#[test]
fn readings_are_not_taken_for_each_other() {
    let dir = tempfile::tempdir().expect("a folder");
    let root = dir.path();
    git(root, &["init", "-q"], "2026-07-01");
    let file = root.join("s.downlead");
    fs::write(&file, REELS).expect("a file");
    commit(root, "2026-07-19");
    // names that begin with a digit are names
    fs::write(&file, REELS.replace("30.8 W", "28.0 W")).expect("a file");
    let said = said_of(root, "s.downlead");
    assert!(
        said.len() == 1 && said[0].starts_with("This reading was 30.8 W when"),
        "{said:#?}"
    );
    // read again a year later, over the old figures
    let again = REELS
        .replace("2026-07-19", "2027-07-20")
        .replace("30.8 W", "28.0 W");
    fs::write(&file, again).expect("a file");
    assert_eq!(said_of(root, "s.downlead"), [""; 0]);
    // another reading added to the table does not change it
    fs::write(&file, REELS.replace("30.8 W", "30.8 W, 0.1 W reflected")).expect("a file");
    assert_eq!(said_of(root, "s.downlead"), [""; 0]);
    fs::write(&file, REELS).expect("a file");
    // a copy as the beginning of another file is another file's record
    let copy = root.join("s27.downlead");
    fs::write(
        &copy,
        REELS.replace("30.8 W", "27.2 W").replace("22.60", "26.20"),
    )
    .expect("a file");
    commit(root, "2026-08-19");
    assert_eq!(said_of(root, "s27.downlead"), [""; 0]);
    // one reason is for one change
    let why = |w: &str| {
        REELS.replace(
            "30.8 W at 2 min",
            &format!("{w} W at 2 min, corrected \"was 30.8 W: misread\""),
        )
    };
    fs::write(&file, why("30.2")).expect("a file");
    assert_eq!(said_of(root, "s.downlead"), [""; 0]);
    commit(root, "2026-09-19");
    fs::write(&file, why("28.8")).expect("a file");
    let said = said_of(root, "s.downlead");
    assert!(
        said.len() == 1 && said[0].starts_with("This reading was 30.2 W when"),
        "{said:#?}"
    );
}

#[test]
fn a_day_is_given_to_bring_readings_into_order() {
    let dir = tempfile::tempdir().expect("a folder");
    let root = dir.path();
    git(root, &["init", "-q"], "2026-07-01");
    let file = root.join("s.downlead");
    fs::write(&file, REELS).expect("a file");
    let now = Command::new("date").arg("+%Y-%m-%dT%H:%M:%S%z").output();
    let now = String::from_utf8(now.expect("date").stdout).expect("text");
    git(root, &["add", "-A"], "2026-07-01");
    let done = Command::new("git")
        .args(["-c", "commit.gpgSign=false", "commit", "-q", "-m", "x"])
        .current_dir(root)
        .env("GIT_CONFIG_GLOBAL", "/dev/null")
        .env("GIT_AUTHOR_NAME", "a\u{1b}[31m\u{2}b")
        .env("GIT_AUTHOR_EMAIL", "x@example.org")
        .env("GIT_AUTHOR_DATE", now.trim())
        .env("GIT_COMMITTER_NAME", "x")
        .env("GIT_COMMITTER_EMAIL", "x@example.org")
        .status();
    assert!(done.expect("git").success());
    fs::write(&file, REELS.replace("30.8 W", "28.0 W")).expect("a file");
    assert_eq!(said_of(root, "s.downlead"), [""; 0]);
    // once it is older
    let old = downlead_git::recorded(&file)
        .expect("git")
        .expect("committed");
    let mut s = Snapshot::load(&["s.downlead".to_owned()], &Disk(root));
    s.set_recorded("s.downlead", Arc::new(old.seen_at(i64::MAX / 2)));
    let said = s.diagnostics();
    let said = said.iter().find(|d| d.code.id == "reading-edited");
    let said = &said.expect("told").message;
    assert!(said.contains("when a[31mb recorded it on"), "{said:?}");
}
