//! The program from the outside: every command, its output and its exit code.

mod accept;
mod bad_input;
mod bad_papers;
mod bench;
mod bench_run;
mod card;
mod catalogue;
mod check;
mod compare;
mod diff;
mod explain;
mod fit;
mod fix;
mod fmt;
#[cfg(unix)]
mod hostile;
mod licence;
mod link;
mod many;
mod misc;
mod overview;
mod papers;
mod radiated;
mod recall;
mod recipes;
mod report;
mod root;
mod solve;
mod untrusted;

use std::path::{Path, PathBuf};

use assert_cmd::Command;

/// The program, in `folder`, with nothing of the tester's surroundings.
fn downlead(folder: &Path) -> Command {
    let mut command = assert_cmd::cargo::cargo_bin_cmd!("downlead");
    command
        .current_dir(folder)
        .env_remove("NO_COLOR")
        .env_remove("COLUMNS")
        .env_remove("LANG")
        .env_remove("LC_CTYPE")
        .env_remove("LC_ALL")
        .timeout(std::time::Duration::from_secs(120));
    command
}

/// A run's end in one value.
#[derive(Debug)]
struct Run {
    code: Option<i32>,
    out: String,
    err: String,
}

fn run(folder: &Path, args: &[&str]) -> Run {
    run_with(folder, args, &[])
}

/// The same with variables of the environment.
fn run_with(folder: &Path, args: &[&str], env: &[(&str, &str)]) -> Run {
    let output = downlead(folder)
        .envs(env.iter().copied())
        .args(args)
        .output()
        .expect("the program starts");
    Run {
        code: output.status.code(),
        out: String::from_utf8(output.stdout).expect("UTF-8 out"),
        err: String::from_utf8(output.stderr).expect("UTF-8 err"),
    }
}

/// A folder with these files.
fn folder(files: &[(&str, &str)]) -> tempfile::TempDir {
    let dir = tempfile::tempdir().expect("a temporary folder");
    for (name, text) in files {
        let path = dir.path().join(name);
        std::fs::create_dir_all(path.parent().expect("a parent")).expect("folders");
        std::fs::write(path, text).expect("a file");
    }
    dir
}

/// The project's examples.
fn examples() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR"))
        .join("../../examples")
        .canonicalize()
        .expect("the examples")
}

/// A chain without fault.
const GOOD: &str = "\
chain what-if on 145.3 MHz {
    transmitter 50 W carrier
    run 28 m of half-inch-foam
    connector 4 of n-pair
    antenna 4.5 dBi
}
";

/// A chain with one error, on line 3.
const BAD: &str = "\
chain what-if on 145.3 MHz {
    transmitter 50 W carrier
    run 28 m of no-such-cable
    antenna 4.5 dBi
}
";
