//! A licence, or rules for everybody, as data: clauses, what they fix and what they ask.

use downlead_base::Loc;
use downlead_quantity::Dim;

use super::Name;
use super::ends::PowerKind;
use super::node::LimitQuantity;

/// What a clause can go by beside the power.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
#[allow(missing_docs, reason = "see the words")]
pub enum Variable {
    Frequency,
    Haat,
    Height,
    Distance,
    Radius,
    Bandwidth,
}

impl Variable {
    /// All of them.
    pub const ALL: [Variable; 6] = [
        Variable::Frequency,
        Variable::Haat,
        Variable::Height,
        Variable::Distance,
        Variable::Radius,
        Variable::Bandwidth,
    ];

    /// Word of the language.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Variable::Frequency => "frequency",
            Variable::Haat => "haat",
            Variable::Height => "height",
            Variable::Distance => "distance",
            Variable::Radius => "radius",
            Variable::Bandwidth => "bandwidth",
        }
    }

    /// In words, with its article.
    #[must_use]
    pub fn noun(self) -> &'static str {
        match self {
            Variable::Frequency => "the frequency",
            Variable::Haat => "the height above average terrain (HAAT)",
            Variable::Height => "the height above ground",
            Variable::Distance => "the distance",
            Variable::Radius => "the service radius",
            Variable::Bandwidth => "the bandwidth",
        }
    }

    /// Its kind of value.
    #[must_use]
    pub fn dim(self) -> Dim {
        match self {
            Variable::Frequency | Variable::Bandwidth => Dim::Frequency,
            _ => Dim::Length,
        }
    }

    /// The variable of a word.
    #[must_use]
    pub fn from_word(word: &str) -> Option<Variable> {
        Variable::ALL.into_iter().find(|v| v.word() == word)
    }
}

/// `(A / B)^N` with a variable on one side.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Factor {
    /// What varies.
    pub variable: Variable,
    /// What it is divided by, Hz or m.
    pub reference: f64,
    /// Exponent of variable over reference.
    pub exponent: f64,
}

/// A power that may follow a law: `50 W * (7 m / haat)^2`.
#[derive(Clone, Debug, PartialEq)]
pub struct Law {
    /// Where every variable is at its reference, W.
    pub watts: f64,
    /// Its ratios.
    pub factors: Box<[Factor]>,
    /// Where it stands.
    pub loc: Loc,
}

/// What a clause's variables are: lower and upper end, Hz or m; none where it is not known.
pub type Known<'k> = &'k dyn Fn(Variable) -> Option<(f64, f64)>;

impl Law {
    /// The least and the largest power that it gives for what is known, W.
    ///
    /// # Errors
    /// The variable that is not known.
    pub fn between(&self, known: Known<'_>) -> Result<(f64, f64), Variable> {
        let (mut low, mut high) = (self.watts, self.watts);
        for f in &self.factors {
            let (a, b) = known(f.variable).ok_or(f.variable)?;
            let at = |x: f64| libm::pow(x / f.reference, f.exponent);
            let (a, b) = (at(a), at(b));
            low *= a.min(b);
            high *= a.max(b);
        }
        Ok((low, high))
    }
}

/// A row of steps.
#[derive(Clone, Debug, PartialEq)]
pub struct StepRow {
    /// Upper edge, which belongs to the row; infinite for the last row, `above`.
    pub to: f64,
    /// Its power.
    pub law: Law,
}

/// What a clause allows.
#[derive(Clone, Debug, PartialEq)]
pub enum Amount {
    /// One power, maybe by a law.
    Law(Law),
    /// Steps of a variable.
    Steps(Variable, Box<[StepRow]>),
}

impl Amount {
    /// All powers it may come to for what is known, W: of a law the least and the largest, of steps
    /// those of each row that is touched.
    ///
    /// # Errors
    /// The variable that is not known.
    pub fn candidates(&self, known: Known<'_>) -> Result<Vec<f64>, Variable> {
        let mut out = Vec::new();
        let mut add = |law: &Law| -> Result<(), Variable> {
            let (a, b) = law.between(known)?;
            out.push(a);
            if b > a {
                out.push(b);
            }
            Ok(())
        };
        match self {
            Amount::Law(law) => add(law)?,
            Amount::Steps(variable, rows) => {
                let (low, high) = known(*variable).ok_or(*variable)?;
                let mut from = f64::NEG_INFINITY;
                for r in rows {
                    if low <= r.to && high > from {
                        add(&r.law)?;
                    }
                    from = r.to;
                }
            }
        }
        Ok(out)
    }

    /// Whether it goes by more than the power.
    #[must_use]
    pub fn variables(&self) -> Vec<Variable> {
        let of = |law: &Law| law.factors.iter().map(|f| f.variable).collect::<Vec<_>>();
        match self {
            Amount::Law(law) => of(law),
            Amount::Steps(v, rows) => {
                let mut all = vec![*v];
                all.extend(rows.iter().flat_map(|r| of(&r.law)));
                all.dedup();
                all
            }
        }
    }
}

/// Which power a clause counts.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Counted {
    /// What this program computes.
    Power(LimitQuantity),
    /// Direct-current input of the last stage, which no line states.
    DcInput,
}

impl Counted {
    /// Word of the language.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Counted::Power(q) => q.word(),
            Counted::DcInput => "dc-input",
        }
    }
}

/// Where a clause holds.
#[derive(Clone, Debug, PartialEq)]
pub enum Frequencies {
    /// Everywhere.
    All,
    /// Between two frequencies, Hz, both included.
    Range(f64, f64),
    /// On bands.
    Bands(Box<[Name]>),
}

/// How sure the text of a clause is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
#[allow(missing_docs, reason = "see the words")]
pub enum Confidence {
    Low,
    Medium,
    High,
}

impl Confidence {
    /// Word of the language.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Confidence::Low => "low",
            Confidence::Medium => "medium",
            Confidence::High => "high",
        }
    }

    /// The confidence of a word.
    #[must_use]
    pub fn from_word(word: &str) -> Option<Confidence> {
        [Confidence::Low, Confidence::Medium, Confidence::High]
            .into_iter()
            .find(|c| c.word() == word)
    }
}

/// A worked example in a clause.
#[derive(Clone, Debug, PartialEq)]
pub struct Example {
    /// Whether the clause is met by it.
    pub passes: bool,
    /// The power of the clause's own quantity, W.
    pub watts: f64,
    /// Its frequency, Hz.
    pub hz: f64,
    /// What else it says.
    pub known: Box<[(Variable, f64)]>,
    /// Its line.
    pub loc: Loc,
}

/// A limit or a threshold of a licence or of rules.
#[derive(Clone, Debug, PartialEq)]
pub struct Clause {
    /// Its line.
    pub loc: Loc,
    /// What to do where it is reached; only thresholds have it. Such a clause gives no verdict.
    pub duty: Option<Box<str>>,
    /// Which power it counts.
    pub counted: Counted,
    /// Which kind of power.
    pub kind: Option<PowerKind>,
    /// Whether all transmitters of the station count together.
    pub total: bool,
    /// How much.
    pub amount: Amount,
    /// Where it holds.
    pub on: Frequencies,
    /// Classes it holds for; empty: all.
    pub classes: Box<[Name]>,
    /// Holds above (true) or up to a value of a variable.
    pub bound: Option<(Variable, bool, f64)>,
    /// Whether it holds only where the service is allocated, which the set does not list.
    pub allocated: bool,
    /// The question that must be answered with yes.
    pub asks: Option<Name>,
    /// From when it holds.
    pub since: Option<Box<str>>,
    /// Until when it holds.
    pub until: Option<Box<str>>,
    /// Citations of the clauses it replaces.
    pub instead: Box<[Name]>,
    /// Its citation.
    pub cite: Option<Name>,
    /// How sure its text is.
    pub confidence: Option<Confidence>,
    /// Worked examples.
    pub examples: Box<[Example]>,
}

impl Clause {
    /// Its citation, or what it is without one.
    #[must_use]
    pub fn citation(&self) -> &str {
        self.cite.as_ref().map_or("no citation", |c| &c.text)
    }

    /// Whether it judges, as opposed to a threshold that triggers a duty.
    #[must_use]
    pub fn is_limit(&self) -> bool {
        self.duty.is_none()
    }
}

/// What a paper fixes.
#[derive(Clone, Debug, PartialEq)]
pub enum FixedWhat {
    /// Degrees north and east.
    Position(f64, f64, Option<Box<str>>),
    /// m above ground, of an antenna (all antennas if none is named).
    Height(f64, Option<Name>),
    /// Hz.
    Frequency(f64),
}

impl FixedWhat {
    /// Word of the language.
    #[must_use]
    pub fn word(&self) -> &'static str {
        match self {
            FixedWhat::Position(..) => "position",
            FixedWhat::Height(..) => "height",
            FixedWhat::Frequency(_) => "frequency",
        }
    }
}

/// A line `fixed`.
#[derive(Clone, Debug, PartialEq)]
pub struct Fixed {
    /// What.
    pub what: FixedWhat,
    /// How far it may be off, m or Hz.
    pub within: f64,
    /// Citation.
    pub cite: Option<Name>,
    /// Its line.
    pub loc: Loc,
}

/// A condition that this program cannot judge.
#[derive(Clone, Debug, PartialEq)]
pub struct Condition {
    /// What must be done.
    pub text: Box<str>,
    /// Citation.
    pub cite: Option<Name>,
    /// Its line.
    pub loc: Loc,
}

/// A question that the text of a station cannot decide.
#[derive(Clone, Debug, PartialEq)]
pub struct Ask {
    /// Its name.
    pub name: Name,
    /// The question.
    pub text: Box<str>,
}

/// A licence, or rules for everybody.
#[derive(Clone, Debug, PartialEq)]
pub struct RuleSet {
    /// Whether it is a paper of one's own (`licence`).
    pub licence: bool,
    /// Name.
    pub name: Name,
    /// Title.
    pub title: Option<Box<str>>,
    /// Who issued it.
    pub authority: Option<Box<str>>,
    /// Where it holds.
    pub jurisdiction: Option<Box<str>>,
    /// For which service.
    pub service: Option<Box<str>>,
    /// Which edition.
    pub edition: Option<Box<str>>,
    /// Its date.
    pub dated: Option<Box<str>>,
    /// Until when it holds.
    pub until: Option<Box<str>>,
    /// Who holds it.
    pub holder: Option<Box<str>>,
    /// Its classes.
    pub classes: Box<[Name]>,
    /// Its questions.
    pub asks: Box<[Ask]>,
    /// Its limits and thresholds.
    pub clauses: Box<[Clause]>,
    /// What it fixes.
    pub fixed: Box<[Fixed]>,
    /// What it demands beyond that.
    pub conditions: Box<[Condition]>,
    /// Its limits of exposure.
    pub exposure: Box<[super::ExposureClause]>,
    /// Factor on the field by reflection.
    pub reflection: Option<f64>,
    /// Fields of its form.
    pub fields: Box<[super::FormField]>,
    /// Whether it is part of the built-in library.
    pub built_in: bool,
}

/// An answer to a question of rules.
#[derive(Clone, Debug, PartialEq)]
pub struct Answer {
    /// The question.
    pub name: Name,
    /// The answer.
    pub yes: bool,
    /// Who says so, and when.
    pub by: Option<Box<str>>,
}

/// That a station is under a licence or rules.
#[derive(Clone, Debug, PartialEq)]
pub struct Under {
    /// Which.
    pub name: Name,
    /// The station's classes in it.
    pub classes: Box<[Name]>,
    /// Answers.
    pub answers: Box<[Answer]>,
    /// What else the rules go by, Hz or m.
    pub known: Box<[(Variable, f64)]>,
    /// Factor on the field by reflection, in the place of that of the rules.
    pub reflection: Option<f64>,
    /// Where its service is allocated, as the station says.
    pub allocated: Box<[Frequencies]>,
    /// Its line.
    pub loc: Loc,
}
