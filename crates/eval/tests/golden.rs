//! Determinism: the report of every example, as JSON, equals the committed text byte for byte on
//! every platform. `UPDATE=1 cargo test -p downlead-eval --test golden` rewrites the texts; the
//! numbers in them are checked by the other tests, not here.

use downlead_eval::Snapshot;
use downlead_report::Reports as _;
use downlead_testkit::{example_files, examples, project};

fn json(file: &str) -> String {
    let s = Snapshot::load(&[file.to_owned()], &examples());
    serde_json::to_string_pretty(&s.report()).expect("a report is JSON") + "\n"
}

#[test]
fn reports_are_the_same_to_the_last_byte() {
    let folder = project("crates/eval/tests/golden");
    let update = std::env::var_os("UPDATE").is_some();
    if update {
        std::fs::create_dir_all(&folder).expect("the folder");
    }
    let mut wrong = Vec::new();
    let files: Vec<String> = example_files()
        .into_iter()
        .filter(|f| !f.starts_with("thrennock/"))
        .collect();
    assert!(files.len() >= 9, "{files:?}");
    for file in files {
        let path = folder.join(file.replace('/', "-").replace(".downlead", ".json"));
        let have = json(&file);
        if update {
            std::fs::write(&path, &have).expect("written");
        }
        let want = std::fs::read_to_string(&path).unwrap_or_default();
        if have != want {
            let n = have
                .lines()
                .zip(want.lines())
                .take_while(|(a, b)| a == b)
                .count();
            wrong.push(format!(
                "{file}: line {} is now `{}`, was `{}`",
                n + 1,
                have.lines().nth(n).unwrap_or("the end"),
                want.lines().nth(n).unwrap_or("the end")
            ));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn twice_is_the_same() {
    for file in example_files() {
        assert_eq!(json(&file), json(&file), "{file}");
    }
}
