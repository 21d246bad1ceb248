//! Assumptions: what takes part in a result because the text does not say it.

use downlead_base::Loc;

macro_rules! assumptions {
    ($($kind:ident => $sentence:literal,)+) => {
        /// Kind of assumption; the parts it concerns are listed with it.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
        #[allow(missing_docs, reason = "each has its sentence in the table")]
        pub enum Assumed {
            $($kind,)+
        }

        impl Assumed {
            /// The sentence; `who` lists the parts.
            #[must_use]
            pub fn words(self, who: &str) -> String {
                match self {
                    $(Assumed::$kind => format!($sentence, who = who),)+
                }
            }
        }
    };
}

assumptions! {
    Temperature20 => "20 °C for {who}: no place or temperature is stated",
    Impedance50 => "50 ohm for the cable of {who}: no impedance is stated",
    Velocity => "a velocity factor of 0.66 for the cable of {who}: none is stated",
    SheetAt20 => "the loss table of the cable of {who} holds at 20 °C: no temperature is stated",
    CableExact => "the loss of the cable of {who} is exact: no accuracy is stated",
    AntennaMatched => "{who} is matched, SWR 1:1: no SWR or impedance is stated",
    JoinsLossless => "the joins of {who} lose nothing: no connectors are stated",
    DeviceMatched => "the ports of {who} reflect nothing: no return loss is stated",
    DividerIdeal => "{who} is matched at all its ports and isolates its branches from each other: no return loss is stated",
    JunctionIdeal => "{who} joins its branches in parallel and adds no reflection of its own to theirs: no return loss is stated",
    PowerExact => "the power of {who} is exact: no tolerance or instrument is stated",
    GainExact => "the gain of {who} is exact: no tolerance is stated",
    LossExact => "the loss of {who} is exact: no tolerance is stated",
    PowerKind => "the power of {who} is of the kind the limit counts: it does not say carrier, pep or mean",
    LimitPep => "{who} counts peak envelope power: it does not say carrier, pep or mean",
    FullDuty => "full duty for {who}: no mode is stated",
    AlwaysKeyed => "{who} is keyed all the time: no share is stated",
    RatingTemperatures => "the rating of {who} holds at 40 °C around and 80 °C at the conductor: no temperatures are stated",
    BranchesInPhase => "the fields of the branches of {who} add in the main beam with the phases of their lengths: nothing is stated",
    BranchesAlike => "{who} reflects with the same phase as the antenna of the same SWR in the branch before: nothing is stated",
    VelocityExact => "the velocity factor of the cable of {who} is exact: no uncertainty is stated, and a standing wave makes it matter",
    ImpedanceExact => "the impedance of the cable of {who} is exact: no uncertainty is stated, and a standing wave makes it matter",
    BalunLossPlace => "the loss of {who} may lie in series with the line, across it or anywhere between: it is not stated",
    DryCable => "{who} is dry; wet, it loses more, as stated",
    MaximumTaken => "the figure of {who} is a maximum and taken as it is: the true loss may be lower and the radiated power higher",
    EfficiencyIncluded => "100 % efficiency for {who}: only a directivity is stated",
    SourceMatched => "{who} is a matched source of 50 ohm whose stated power is the forward power; there is no tuner",
    ReadingExact => "the reading with {who} is exact: no tolerance or accuracy is stated",
    IsolationComplete => "nothing reflected passes back through {who}",
    EqualSteps => "the readings of session {who} were taken at equal steps of time: no times are stated",
    DriftLine => "what drifts in session {who} between two baselines may do so in one step (half of it counts, common practice)",
    DriftUnknown => "the transmitter of session {who} drifts by less than 0.3 % a minute where the baseline was read once (common practice)",
    BenchMatched => "the ends of the bench of session {who} that state no match reflect nothing",
    PieceMatched => "the pieces of session {who} reflect nothing where they are of 50 ohm and their joins have no bump: no return loss is stated",
    DirectivityPerfect => "the reflection meter of session {who} parts the two waves perfectly: no directivity is stated",
    MeterScatter => "linearity 1 % and repeatability 0.6 % for {who}: neither is stated (common practice)",
    MeterLinearity => "linearity 1 % for {who}: none is stated (common practice)",
    MeterRepeatability => "repeatability 0.6 % for {who}: none is stated (common practice)",
    FullScaleLocal => "the accuracy of full scale of {who} is an error of each reading by itself: no linearity is stated",
    MeterNotNamed => "the readings of session {who} are of one meter, with linearity 1 % and repeatability 0.6 %: no instrument is named (common practice)",
    EqualisedElsewhere => "the two meters of session {who} differ on all bands as on the one where they were read in line",
    LogWithoutMeter => "the readings of {who} that name no instrument are exact, and scatter by 1.2 % against each other (common practice)",
    LoggedSwr => "an SWR logged at {who} is good to ± 0.1 (common practice)",
    FileExact => "the network file of {who} is exact: no accuracy is stated",
    CarrierAlone => "the carrier alone is in the range of a clause of {who}: no bandwidth is counted",
    PerTransmitter => "the clauses of {who} that do not say `total` count each transmitter by itself",
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
