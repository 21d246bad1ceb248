//! The program on many files, from the outside: time and the most memory it held.
//!
//! `cargo bench -p downlead --bench many` runs it on 10,000 stations with one library, on two
//! revisions of 1,000 files and on two stations of 1,000 lines; an argument takes another number of
//! stations. Without `--bench` (as `cargo test` starts it) it runs on 20, to see that it works.

#![allow(clippy::print_stdout, reason = "a measuring program")]

use std::fmt::Write as _;
use std::fs;
use std::path::Path;
use std::process::{Command, Stdio};
use std::time::{Duration, Instant};

/// What all stations use.
const CLUB: &str = "\
band 2m { transmit 146.9137 MHz; receive 146.3137 MHz }
band 70cm { transmit 438.9137 MHz; receive 431.3137 MHz }
instrument W1 \"club wattmeter\" { accuracy 5 % of reading }
cable club-foam \"the club's reel\" {
    impedance 50 ohm
    velocity 0.88 ± 0.01
    loss 0.1216 dB/100 m/sqrt(MHz) + 0.0004 dB/100 m/MHz
    valid 1 MHz to 2000 MHz
    accuracy 5 % k 2
    source \"sheet CF-1 p. 2\"
}
licence tso-14-0093 {
    dated 2014-03-02
    limit 30 W erp carrier on 2m, \"clause 4\"
    limit 20 W erp carrier on 70cm, \"clause 5\"
}
";

/// A station with two bands: figures differ from file to file, so that no result is found twice.
fn station(n: usize, watts: usize) -> String {
    let metres = 20 + n % 61;
    let gain = 3.0 + (n % 40) as f64 / 10.0;
    let year = 2016 + n % 10;
    let mut out = format!(
        "use \"club.downlead\"\n\nstation s{n} \"site {n}\" {{\n    under tso-14-0093\n    position {}.{:04}° S 123.1667° W, wgs84\n    joins n-pair\n",
        10 + n % 60,
        n % 10_000
    );
    for (band, share) in [("2m", 1.0), ("70cm", 0.6)] {
        let watts = watts as f64 * share;
        let _ = write!(
            out,
            "    transmitter TX-{band} {watts:.1} W ± 5 % carrier, fm, read {year}-07-04 with W1 by QY2TEC\n    jumper J-{band} 1.{} m of rg-214\n    isolator IS-{band} 0.55 dB ± 0.15 dB\n    run M-{band} {metres} m of club-foam\n    antenna A-{band} {gain:.1} dBi ± 0.5 dB, swr 1.3\n",
            n % 10
        );
    }
    for band in ["2m", "70cm"] {
        let _ = write!(
            out,
            "    chain out-{band} on {band} transmit {{\n        TX-{band}\n        J-{band}\n        IS-{band}\n        M-{band}\n        A-{band}\n    }}\n"
        );
    }
    out + "}\n"
}

fn write(folder: &Path, n: usize) {
    fs::create_dir_all(folder).expect("a folder");
    fs::write(folder.join("club.downlead"), CLUB).expect("a file");
    for i in 0..n {
        let text = station(i, 10 + i % 30);
        fs::write(folder.join(format!("s{i}.downlead")), text).expect("a file");
    }
}

/// Runs the program and says how long it took and how much memory it held at most, in MB.
fn run(folder: &Path, args: &[&str]) -> (Duration, Option<f64>) {
    let begun = Instant::now();
    let mut child = Command::new(env!("CARGO_BIN_EXE_downlead"))
        .args(args)
        .current_dir(folder)
        .env("GIT_CONFIG_GLOBAL", "/dev/null")
        .stdout(Stdio::null())
        .stderr(Stdio::null())
        .spawn()
        .expect("the program starts");
    let status = format!("/proc/{}/status", child.id());
    let mut most: Option<f64> = None;
    loop {
        // the system's own high-water mark, kilobytes
        let now = fs::read_to_string(&status).ok().and_then(|s| {
            let line = s.lines().find(|l| l.starts_with("VmHWM:"))?.to_owned();
            line.split_whitespace().nth(1)?.parse::<f64>().ok()
        });
        most = match (most, now) {
            (Some(a), Some(b)) => Some(a.max(b / 1024.0)),
            (a, b) => a.or(b.map(|b| b / 1024.0)),
        };
        if child.try_wait().expect("the child can be asked").is_some() {
            return (begun.elapsed(), most);
        }
        std::thread::sleep(Duration::from_millis(2));
    }
}

fn row(what: &str, (time, memory): (Duration, Option<f64>), files: usize) {
    let memory = memory.map_or_else(|| "not known".to_owned(), |m| format!("{m:.0} MB"));
    let rate = files as f64 / time.as_secs_f64();
    println!(
        "| {what} | {:.2} s | {rate:.0} | {memory} |",
        time.as_secs_f64()
    );
}

fn git(folder: &Path, args: &[&str]) {
    let done = Command::new("git")
        .args(["-c", "commit.gpgSign=false", "-c", "user.name=QY2TEC"])
        .args(["-c", "user.email=qy2tec@example.org"])
        .args(args)
        .current_dir(folder)
        .env("GIT_CONFIG_GLOBAL", "/dev/null")
        .stdout(Stdio::null())
        .status()
        .expect("git is there");
    assert!(done.success(), "{args:?}");
}

fn main() {
    let asked: Vec<String> = std::env::args().skip(1).collect();
    let measured = asked.iter().any(|a| a == "--bench");
    let number = asked.iter().find_map(|a| a.parse().ok());
    let most: usize = number.unwrap_or(if measured { 10_000 } else { 20 });
    let dir = tempfile::tempdir().expect("a temporary folder");
    println!("| what | time | files a second | most memory |\n|---|---:|---:|---:|");
    for n in [most / 10, most] {
        let folder = dir.path().join(n.to_string());
        write(&folder, n);
        row(
            &format!("`check` of {n} stations"),
            run(&folder, &["check", "."]),
            n,
        );
        row(
            &format!("`overview` of {n} stations"),
            run(&folder, &["overview", "."]),
            n,
        );
    }
    let revisions = dir.path().join("revisions");
    let n = most / 10;
    write(&revisions, n);
    git(&revisions, &["init", "-q"]);
    git(&revisions, &["add", "-A"]);
    git(&revisions, &["commit", "-q", "-m", "first"]);
    for i in (0..n).step_by(10) {
        let path = revisions.join(format!("s{i}.downlead"));
        fs::write(path, station(i, 45)).expect("a file");
    }
    git(&revisions, &["commit", "-q", "-a", "-m", "second"]);
    let args = ["diff", "--git", "HEAD~1..HEAD"];
    row(
        &format!("`diff` of two revisions of {n} files, a tenth changed"),
        run(&revisions, &args),
        n,
    );
    let cable = CLUB.replace("0.1216", "0.1316");
    fs::write(revisions.join("club.downlead"), cable).expect("a file");
    git(&revisions, &["commit", "-q", "-a", "-m", "third"]);
    row(
        &format!("the same, the cable of all {n} changed"),
        run(&revisions, &args),
        n,
    );
    let lines = if measured { 1_000 } else { 60 };
    let old = downlead_testkit::large_file(lines);
    fs::write(dir.path().join("old.downlead"), &old).expect("a file");
    let new = old.replacen("run M1 46", "run M1 86", 1);
    fs::write(dir.path().join("new.downlead"), new).expect("a file");
    let args = ["diff", "old.downlead", "new.downlead"];
    // the first run reads the program from the disk
    let best = (0..5).map(|_| run(dir.path(), &args)).min_by_key(|r| r.0);
    row(
        &format!("`diff` of two stations of {lines} lines"),
        best.expect("a run"),
        2,
    );
}
