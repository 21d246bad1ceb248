//! The settings, from any of the ways in which editors send them.

use downlead_ide::Config;
use serde_json::Value;
use std::time::Duration;

/// The user's settings.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Settings {
    pub(crate) hints: bool,
    /// loss, power, radiated, limits, readings, cables
    pub(crate) kinds: [bool; 6],
    pub(crate) bands: Vec<String>,
    pub(crate) lenses: bool,
    pub(crate) swatches: bool,
    pub(crate) max_diagnostics: usize,
    /// Pause in typing after which findings about the line being typed are sent.
    pub(crate) pause: Duration,
    /// True if readings are compared with their committed versions.
    pub(crate) history: bool,
    /// Folder above which no file is read; none: the workspace folder.
    pub(crate) root: Option<String>,
}

/// Names of the kinds of hints, in the order of `Settings::kinds`.
const KINDS: [&str; 6] = ["loss", "power", "radiated", "limits", "readings", "cables"];

impl Default for Settings {
    fn default() -> Settings {
        Settings {
            hints: true,
            kinds: [true; 6],
            bands: Vec::new(),
            lenses: true,
            swatches: false,
            max_diagnostics: 100,
            pause: Duration::from_millis(1500),
            history: true,
            root: None,
        }
    }
}

/// Settings read, with complaints about invalid ones.
pub(crate) struct Read {
    /// None: they are wrong, and the old ones stay.
    pub(crate) settings: Option<Settings>,
    pub(crate) complaints: Vec<String>,
}

impl Settings {
    /// Reads settings, with or without the outer `downlead`. None if there are none in it.
    pub(crate) fn read(value: &Value) -> Option<Read> {
        let inner = match value.get("downlead") {
            Some(inner) => inner,
            None => value,
        };
        let map = match inner {
            Value::Null => return None,
            Value::Object(map) if map.is_empty() => return None,
            Value::Object(map) => map,
            other => {
                let said = format!(
                    "The settings `downlead` are {}, not an object; the old ones stay.",
                    kind(other)
                );
                return Some(Read {
                    settings: None,
                    complaints: vec![said],
                });
            }
        };
        let mut r = Reader {
            complaints: Vec::new(),
            bad: false,
        };
        let mut s = Settings::default();
        for (key, v) in map {
            match key.as_str() {
                "hints" => r.hints(v, &mut s),
                "bands" => s.bands = r.words("bands", v),
                "lenses" => match v {
                    Value::Object(o) => {
                        for (k, v) in o {
                            match k.as_str() {
                                "enabled" => s.lenses = r.flag("lenses.enabled", v),
                                _ => r.unknown(&format!("lenses.{k}")),
                            }
                        }
                    }
                    v => s.lenses = r.flag("lenses", v),
                },
                "swatches" => s.swatches = r.flag("swatches", v),
                "diagnostics" => match v {
                    Value::Object(o) => {
                        for (k, v) in o {
                            match k.as_str() {
                                "max" => s.max_diagnostics = r.count("diagnostics.max", v),
                                "delay" => s.pause = r.milliseconds("diagnostics.delay", v),
                                "history" => s.history = r.flag("diagnostics.history", v),
                                // read once, at the start
                                "pull" => _ = r.flag("diagnostics.pull", v),
                                _ => r.unknown(&format!("diagnostics.{k}")),
                            }
                        }
                    }
                    v => r.wrong("diagnostics", "an object", v),
                },
                "root" => match v {
                    Value::String(p) if !p.is_empty() => s.root = Some(p.clone()),
                    Value::String(_) | Value::Null => {}
                    v => r.wrong("root", "a path", v),
                },
                // the editors' own
                "server" | "trace" | "virtualDocuments" => {}
                _ => r.unknown(key),
            }
        }
        let settings = (!r.bad).then_some(s);
        if settings.is_none() {
            r.complaints
                .push("The settings as they were stay in force.".to_owned());
        }
        Some(Read {
            settings,
            complaints: r.complaints,
        })
    }

    /// As the features take them.
    pub(crate) fn config(&self, markdown: bool, snippets: bool) -> Config {
        let mut c = Config {
            markdown,
            snippets,
            lenses: self.lenses,
            swatches: self.swatches,
            max_diagnostics: self.max_diagnostics,
            bands: self.bands.clone(),
            ..Config::default()
        };
        let [loss, power, radiated, limits, readings, cables] = self.kinds;
        c.hints.enabled = self.hints;
        c.hints.loss = loss;
        c.hints.power = power;
        c.hints.radiated = radiated;
        c.hints.limits = limits;
        c.hints.readings = readings;
        c.hints.cables = cables;
        c
    }
}

struct Reader {
    complaints: Vec<String>,
    bad: bool,
}

impl Reader {
    fn hints(&mut self, v: &Value, s: &mut Settings) {
        let Value::Object(map) = v else {
            s.hints = self.flag("hints", v);
            return;
        };
        for (k, v) in map {
            if let Some(i) = KINDS.iter().position(|n| n == k) {
                s.kinds[i] = self.flag(&format!("hints.{k}"), v);
            } else if k == "enabled" {
                s.hints = self.flag("hints.enabled", v);
            } else if k == "bands" {
                s.bands = self.words("hints.bands", v);
            } else {
                self.unknown(&format!("hints.{k}"));
            }
        }
    }

    fn flag(&mut self, name: &str, v: &Value) -> bool {
        match v {
            Value::Bool(b) => *b,
            Value::Null => true,
            v => {
                self.wrong(name, "true or false", v);
                true
            }
        }
    }

    fn count(&mut self, name: &str, v: &Value) -> usize {
        match v.as_u64().and_then(|n| usize::try_from(n).ok()) {
            Some(n) => n,
            None => {
                self.wrong(name, "a whole number, 0 or more", v);
                0
            }
        }
    }

    fn milliseconds(&mut self, name: &str, v: &Value) -> Duration {
        Duration::from_millis(self.count(name, v) as u64)
    }

    fn words(&mut self, name: &str, v: &Value) -> Vec<String> {
        let all: Option<Vec<String>> = match v {
            Value::Null => Some(Vec::new()),
            Value::Array(a) => a.iter().map(|w| w.as_str().map(str::to_owned)).collect(),
            // an editor whose tables cannot tell an empty list from an empty map
            Value::Object(o) if o.is_empty() => Some(Vec::new()),
            _ => None,
        };
        all.unwrap_or_else(|| {
            self.wrong(name, "a list of names", v);
            Vec::new()
        })
    }

    fn wrong(&mut self, name: &str, wanted: &str, v: &Value) {
        self.bad = true;
        self.complaints.push(format!(
            "The setting `downlead.{name}` is {}, not {wanted}.",
            kind(v)
        ));
    }

    fn unknown(&mut self, name: &str) {
        self.complaints
            .push(format!("There is no setting `downlead.{name}`."));
    }
}

fn kind(v: &Value) -> &'static str {
    match v {
        Value::Null => "null",
        Value::Bool(_) => "true or false",
        Value::Number(_) => "a number",
        Value::String(_) => "a text",
        Value::Array(_) => "a list",
        Value::Object(_) => "an object",
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use serde_json::json;

    #[test]
    fn wrapped_or_not() {
        let inner = json!({ "hints": { "loss": false, "bands": ["2m"] } });
        let a = Settings::read(&inner).unwrap().settings.unwrap();
        let b = Settings::read(&json!({ "downlead": inner }))
            .unwrap()
            .settings
            .unwrap();
        assert_eq!(a, b);
        assert_eq!(a.kinds, [false, true, true, true, true, true]);
        assert_eq!(a.bands, ["2m"]);
        assert!(!a.swatches);
        let on = Settings::read(&json!({ "swatches": true })).unwrap();
        assert!(on.complaints.is_empty());
        assert!(on.settings.unwrap().config(true, true).swatches);
        assert!(Settings::read(&Value::Null).is_none());
        assert!(Settings::read(&json!({})).is_none());
    }

    #[test]
    fn unknown_is_warned_of_and_wrong_keeps_the_old() {
        let r = Settings::read(&json!({ "hint": true, "hints": { "los": true } })).unwrap();
        assert_eq!(
            r.complaints,
            [
                "There is no setting `downlead.hint`.",
                "There is no setting `downlead.hints.los`."
            ]
        );
        assert_eq!(r.settings, Some(Settings::default()));
        for bad in [
            json!({ "hints": { "loss": 1 } }),
            json!(3),
            json!({ "diagnostics": { "max": -1 } }),
            json!({ "diagnostics": { "delay": "long" } }),
            json!({ "bands": [1] }),
            json!({ "swatches": "red" }),
        ] {
            let r = Settings::read(&bad).unwrap();
            assert!(r.settings.is_none() && !r.complaints.is_empty(), "{bad}");
        }
    }

    #[test]
    fn the_editors_own_settings_are_none_of_ours() {
        let r = Settings::read(&json!({ "downlead": { "server": { "path": "x" }, "trace": { "server": "off" }, "hints": {} } })).unwrap();
        assert!(r.complaints.is_empty());
    }
}
