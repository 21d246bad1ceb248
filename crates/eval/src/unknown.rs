//! Names that are not defined.

use downlead_base::{Diagnostic, codes};
use downlead_station::model::Name;
use downlead_station::{Env, NameKind, nearest};

/// Says that a name is not defined, unless its definition has a finding already.
pub(crate) fn unknown(kind: NameKind, name: &Name, env: &Env) -> Option<Diagnostic> {
    if env.is_broken(&name.text) {
        return None;
    }
    let text = &name.text;
    let of_library = "not in the library or the files";
    let (code, what, at, help) = match kind {
        NameKind::Band => (
            &codes::UNKNOWN_BAND,
            "Band",
            "not defined",
            vec![
                format!("Define it at the left margin: `band {text} 145.3 MHz`."),
                "A chain can have the frequency itself in its head: `on 145.3 MHz`.".to_owned(),
            ],
        ),
        NameKind::Cable => (
            &codes::UNKNOWN_CABLE,
            "Cable",
            of_library,
            vec![
                "`downlead catalogue --kind cable` lists the library; or define your own: `cable NAME { … }`."
                    .to_owned(),
            ],
        ),
        NameKind::Connector => (
            &codes::UNKNOWN_CONNECTOR,
            "Connector",
            of_library,
            vec!["`downlead catalogue --kind connector` lists the library.".to_owned()],
        ),
        NameKind::Device => (
            &codes::UNKNOWN_DEVICE,
            "Device",
            of_library,
            vec!["`downlead catalogue --kind device` lists the library.".to_owned()],
        ),
        NameKind::Instrument => (
            &codes::UNKNOWN_INSTRUMENT,
            "Instrument",
            "not defined",
            vec![format!(
                "Define it at the left margin: `instrument {text} {{ accuracy 5 % of reading }}`."
            )],
        ),
        NameKind::Station => (
            &codes::UNKNOWN_STATION,
            "Station",
            "not defined in the files",
            vec![format!(
                "Define it at the left margin, with what is known of it: `station {text} {{ … }}`; or bring in its file by `use`."
            )],
        ),
        NameKind::Rules => (
            &codes::UNKNOWN_RULES,
            "Licence or rules",
            of_library,
            vec![
                format!("The library has {}.", library_rules(env)),
                format!("A paper of your own is defined at the left margin: `licence {text} {{ … }}`, with the clauses that it has."),
            ],
        ),
        NameKind::Family => (
            &codes::UNKNOWN_CONNECTOR,
            "Connector family",
            "no connector of the library or the files is of it",
            vec!["`downlead catalogue --kind connector` lists the families.".to_owned()],
        ),
        _ => return None,
    };
    if kind == NameKind::Band && text.parse::<f64>().is_ok() {
        return Some(
            Diagnostic::new(
                code,
                name.loc,
                format!("No band `{text}` is defined, and a frequency has a unit: `{text} MHz`."),
            )
            .at("no unit")
            .fix(
                format!("write `{text} MHz`"),
                name.loc,
                format!("{text} MHz"),
            ),
        );
    }
    let d = Diagnostic::new(code, name.loc, format!("{what} `{text}` is not defined.")).at(at);
    let names = env.names_of(kind);
    let meant = by_designation(kind, text)
        .filter(|n| names.contains(n))
        .or_else(|| nearest(text, names.iter().copied()))
        .or_else(|| only_begun(text, &names));
    Some(match meant {
        Some(n) => d
            .help(format!("Did you mean `{n}`?"))
            .fix(format!("write `{n}`"), name.loc, n),
        None => help.into_iter().fold(d, |d, h| d.help(h)),
    })
}

/// The pair that a plug or socket of MIL-STD-348 or its older designation makes.
fn by_designation(kind: NameKind, text: &str) -> Option<&'static str> {
    const PAIRS: &[(&[&str], &str)] = &[
        (
            &["pl-259", "pl259", "so-239", "so239", "uhf", "uhf-plug"],
            "uhf-pair",
        ),
        (&["n", "type-n", "n-type", "n-plug"], "n-pair"),
        (&["bnc", "bnc-plug"], "bnc-pair"),
        (&["tnc", "tnc-plug"], "tnc-pair"),
    ];
    let lower = text.to_lowercase();
    let of = |p: &&(&[&str], &'static str)| p.0.contains(&lower.as_str());
    (kind == NameKind::Connector)
        .then(|| PAIRS.iter().find(of).map(|p| p.1))
        .flatten()
}

/// The only name that begins so, in at least three letters.
fn only_begun<'n>(text: &str, names: &[&'n str]) -> Option<&'n str> {
    let lower = text.to_lowercase();
    let mut begun = names.iter().filter(|n| n.starts_with(&*lower));
    match (begun.next(), begun.next()) {
        (Some(one), None) if lower.chars().count() >= 3 => Some(one),
        _ => None,
    }
}

/// The names of the rules of the library, in order.
fn library_rules(env: &Env) -> String {
    let built_in = |n: &&str| env.rule_set(n).is_some_and(|r| r.built_in);
    let mut names: Vec<&str> = env
        .names_of(NameKind::Rules)
        .into_iter()
        .filter(built_in)
        .collect();
    names.sort_unstable();
    let names: Vec<String> = names.iter().map(|n| format!("`{n}`")).collect();
    names.join(", ")
}
