//! Assumptions: what takes part in a result because the text does not say it.

use downlead_base::Loc;

/// Kind of assumption; the parts it concerns are listed with it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
#[allow(missing_docs, reason = "each has its sentence below")]
pub enum Assumed {
    Temperature20,
    Impedance50,
    Velocity,
    SheetAt20,
    CableExact,
    AntennaMatched,
    JoinsLossless,
    DeviceMatched,
    DividerIdeal,
    JunctionIdeal,
    PowerExact,
    GainExact,
    LossExact,
    PowerKind,
    LimitPep,
    FullDuty,
    AlwaysKeyed,
    RatingTemperatures,
    BranchesInPhase,
    BranchesAlike,
    VelocityExact,
    ImpedanceExact,
    BalunLossPlace,
    DryCable,
    MaximumTaken,
    EfficiencyIncluded,
    SourceMatched,
    ReadingExact,
    IsolationComplete,
    EqualSteps,
    DriftLine,
    DriftUnknown,
    BenchMatched,
    PieceMatched,
    DirectivityPerfect,
    MeterScatter,
    MeterLinearity,
    MeterRepeatability,
    FullScaleLocal,
    MeterNotNamed,
    EqualisedElsewhere,
    LogWithoutMeter,
    LoggedSwr,
    FileExact,
    CarrierAlone,
    PerTransmitter,
}

impl Assumed {
    /// The sentence; `who` lists the parts.
    #[must_use]
    pub fn words(self, who: &str) -> String {
        match self {
            Assumed::Temperature20 => format!("20 °C for {who}: no place or temperature is stated"),
            Assumed::Impedance50 => {
                format!("50 ohm for the cable of {who}: no impedance is stated")
            }
            Assumed::Velocity => {
                format!("a velocity factor of 0.66 for the cable of {who}: none is stated")
            }
            Assumed::SheetAt20 => format!(
                "the loss table of the cable of {who} holds at 20 °C: no temperature is stated"
            ),
            Assumed::CableExact => {
                format!("the loss of the cable of {who} is exact: no accuracy is stated")
            }
            Assumed::AntennaMatched => {
                format!("{who} is matched, SWR 1:1: no SWR or impedance is stated")
            }
            Assumed::JoinsLossless => {
                format!("the joins of {who} lose nothing: no connectors are stated")
            }
            Assumed::DeviceMatched => {
                format!("the ports of {who} reflect nothing: no return loss is stated")
            }
            Assumed::DividerIdeal => format!(
                "{who} is matched at all its ports and isolates its branches from each other: no return loss is stated"
            ),
            Assumed::JunctionIdeal => format!(
                "{who} joins its branches in parallel and adds no reflection of its own to theirs: no return loss is stated"
            ),
            Assumed::PowerExact => {
                format!("the power of {who} is exact: no tolerance or instrument is stated")
            }
            Assumed::GainExact => format!("the gain of {who} is exact: no tolerance is stated"),
            Assumed::LossExact => format!("the loss of {who} is exact: no tolerance is stated"),
            Assumed::PowerKind => format!(
                "the power of {who} is of the kind the limit counts: it does not say carrier, pep or mean"
            ),
            Assumed::LimitPep => {
                format!("{who} counts peak envelope power: it does not say carrier, pep or mean")
            }
            Assumed::FullDuty => format!("full duty for {who}: no mode is stated"),
            Assumed::AlwaysKeyed => format!("{who} is keyed all the time: no share is stated"),
            Assumed::RatingTemperatures => {
                format!(
                    "the rating of {who} holds at 40 °C around and 80 °C at the conductor: no temperatures are stated"
                )
            }
            Assumed::BranchesInPhase => {
                format!(
                    "the fields of the branches of {who} add in the main beam with the phases of their lengths: nothing is stated"
                )
            }
            Assumed::BranchesAlike => {
                format!(
                    "{who} reflects with the same phase as the antenna of the same SWR in the branch before: nothing is stated"
                )
            }
            Assumed::VelocityExact => format!(
                "the velocity factor of the cable of {who} is exact: no uncertainty is stated, and a standing wave makes it matter"
            ),
            Assumed::ImpedanceExact => format!(
                "the impedance of the cable of {who} is exact: no uncertainty is stated, and a standing wave makes it matter"
            ),
            Assumed::BalunLossPlace => format!(
                "the loss of {who} may lie in series with the line, across it or anywhere between: it is not stated"
            ),
            Assumed::DryCable => format!("{who} is dry; wet, it loses more, as stated"),
            Assumed::MaximumTaken => {
                format!(
                    "the figure of {who} is a maximum and taken as it is: the true loss may be lower and the radiated power higher"
                )
            }
            Assumed::EfficiencyIncluded => {
                format!("100 % efficiency for {who}: only a directivity is stated")
            }
            Assumed::SourceMatched => {
                format!(
                    "{who} is a matched source of 50 ohm whose stated power is the forward power; there is no tuner"
                )
            }
            Assumed::ReadingExact => {
                format!("the reading with {who} is exact: no tolerance or accuracy is stated")
            }
            Assumed::EqualSteps => {
                format!(
                    "the readings of session {who} were taken at equal steps of time: no times are stated"
                )
            }
            Assumed::DriftLine => {
                format!(
                    "what drifts in session {who} between two baselines may do so in one step (half of it counts, common practice)"
                )
            }
            Assumed::DriftUnknown => format!(
                "the transmitter of session {who} drifts by less than 0.3 % a minute where the baseline was read once (common practice)"
            ),
            Assumed::BenchMatched => {
                format!(
                    "the ends of the bench of session {who} that state no match reflect nothing"
                )
            }
            Assumed::PieceMatched => format!(
                "the pieces of session {who} reflect nothing where they are of 50 ohm and their joins have no bump: no return loss is stated"
            ),
            Assumed::DirectivityPerfect => {
                format!(
                    "the reflection meter of session {who} parts the two waves perfectly: no directivity is stated"
                )
            }
            Assumed::LogWithoutMeter => format!(
                "the readings of {who} that name no instrument are exact, and scatter by 1.2 % against each other (common practice)"
            ),
            Assumed::LoggedSwr => {
                format!("an SWR logged at {who} is good to ± 0.1 (common practice)")
            }
            Assumed::MeterNotNamed => format!(
                "the readings of session {who} are of one meter, with linearity 1 % and repeatability 0.6 %: no instrument is named (common practice)"
            ),
            Assumed::EqualisedElsewhere => format!(
                "the two meters of session {who} differ on all bands as on the one where they were read in line"
            ),
            Assumed::MeterScatter => format!(
                "linearity 1 % and repeatability 0.6 % for {who}: neither is stated (common practice)"
            ),
            Assumed::MeterLinearity => {
                format!("linearity 1 % for {who}: none is stated (common practice)")
            }
            Assumed::MeterRepeatability => {
                format!("repeatability 0.6 % for {who}: none is stated (common practice)")
            }
            Assumed::FullScaleLocal => format!(
                "the accuracy of full scale of {who} is an error of each reading by itself: no linearity is stated"
            ),
            Assumed::FileExact => {
                format!("the network file of {who} is exact: no accuracy is stated")
            }
            Assumed::CarrierAlone => format!(
                "the carrier alone is in the range of a clause of {who}: no bandwidth is counted"
            ),
            Assumed::PerTransmitter => format!(
                "the clauses of {who} that do not say `total` count each transmitter by itself"
            ),
            Assumed::IsolationComplete => format!("nothing reflected passes back through {who}"),
        }
    }
}

/// The assumptions of one result, each with the parts it concerns.
#[derive(Clone, Debug, Default)]
pub(crate) struct Assumptions {
    pub(crate) list: Vec<(Assumed, Loc)>,
}

impl Assumptions {
    pub(crate) fn add(&mut self, what: Assumed, who: Loc) {
        if !self.list.contains(&(what, who)) {
            self.list.push((what, who));
        }
    }
}
