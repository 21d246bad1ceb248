//! Why a clause cannot be judged, and what to write so that it can.

use downlead_base::Severity;
use downlead_station::model::{Name, RuleSet, Variable};

/// What keeps a clause from being judged.
#[derive(Clone, Copy)]
pub(super) enum Missing<'m> {
    /// The paper ended on this day.
    Expired(&'m str),
    /// It goes by something that is not stated.
    Variable(Variable),
    /// It goes by a question without an answer.
    Question(&'m Name),
    /// It is of some classes, and the station states none.
    Class,
    /// It counts DC input; whether another clause of the set is judged in its place.
    DcInput { instead: bool },
    /// It counts all transmitters together, and there are several.
    Total,
    /// None of its steps covers the station.
    Step,
    /// What it counts is not known.
    Value(&'static str),
}

impl Missing<'_> {
    /// In words, as the rest of a sentence.
    pub(super) fn words(self, set: &RuleSet) -> String {
        match self {
            Missing::Expired(date) => format!("the paper ended on {date}"),
            Missing::Variable(v) => format!("it goes by {}, which is not stated", v.noun()),
            Missing::Question(q) => {
                let asked = set.asks.iter().find(|a| a.name.text == q.text);
                let text = asked.map_or("", |a| &*a.text);
                format!("the question `{}` is open: {text}", q.text)
            }
            Missing::Class => {
                let names: Vec<String> =
                    set.classes.iter().map(|n| format!("`{}`", n.text)).collect();
                format!(
                    "it goes by the class of the station, which `under` does not state ({})",
                    names.join(", ")
                )
            }
            Missing::DcInput { instead: false } => {
                "it counts DC input, which no line states".to_owned()
            }
            Missing::DcInput { instead: true } => {
                "it counts DC input, which no line states; the set's other clause is judged instead"
                    .to_owned()
            }
            Missing::Total => {
                "it counts all transmitters of the station together, and the sum of several is not computed"
                    .to_owned()
            }
            Missing::Step => "no step of it covers this station".to_owned(),
            Missing::Value(why) => why.to_owned(),
        }
    }

    /// What to write.
    pub(super) fn help(self, set: &RuleSet) -> Option<String> {
        let name = &set.name.text;
        Some(match self {
            Missing::Variable(Variable::Haat) => {
                "Say it in the antenna's block, with its source: `height 312 m ± 15 m haat`."
                    .to_owned()
            }
            Missing::Variable(Variable::Height) => {
                "Say it in the antenna's block: `height 26 m agl`.".to_owned()
            }
            Missing::Variable(Variable::Radius) => {
                format!("Say it: `under {name} {{ radius 16 km }}`.")
            }
            Missing::Variable(Variable::Distance) => {
                format!("Say it: `under {name} {{ distance 2 km }}`.")
            }
            Missing::Variable(Variable::Bandwidth) => {
                format!("Say it: `under {name} {{ bandwidth 16 kHz }}`.")
            }
            Missing::Question(q) => format!(
                "Answer it: `under {name} {{ {} no, \"who says so, and when\" }}`.",
                q.text
            ),
            Missing::Class => {
                let class = set.classes.first()?;
                format!("Say it: `under {name}, class {}`.", class.text)
            }
            Missing::Expired(_) => {
                "If it was renewed, write the new date: `until 2029-03-01`.".to_owned()
            }
            Missing::Total => {
                "Add the powers of the report's rows, and compare the sum with the clause."
                    .to_owned()
            }
            Missing::Variable(Variable::Frequency)
            | Missing::DcInput { .. }
            | Missing::Step
            | Missing::Value(_) => return None,
        })
    }

    pub(super) fn severity(self) -> Severity {
        match self {
            Missing::DcInput { instead: true } => Severity::Info,
            _ => Severity::Warning,
        }
    }
}
