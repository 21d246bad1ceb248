//! What a comparison came to, whatever was compared, and the colour that stands for it.

use downlead_eval::exposure::ExposureVerdict;
use downlead_eval::link::LinkVerdict;
use downlead_eval::result::{Verdict, measure};
use downlead_report::shape::word::ReadingVerdict;

/// What was found of a limit, a reading or a piece, best first: of several the largest counts.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Status {
    /// Met, or agrees, by more than the uncertainty.
    Good,
    /// The uncertainty is too large to tell.
    Unclear,
    /// Not met, or differs, by more than the uncertainty.
    Bad,
}

impl Status {
    /// Its colour: red, green and blue (sRGB), each from 0 to 255.
    ///
    /// Who cannot tell red from green, about one man in twelve, sees a green and a red swatch
    /// nearly alike. Blue and orange, as in the set of M. Okabe and K. Ito, "Color Universal
    /// Design" (2002; from memory), stay apart in every kind of colour blindness; their vermilion
    /// is made darker here, so that even without any red it is not taken for the orange.
    #[must_use]
    pub fn colour(self) -> [u8; 3] {
        match self {
            Status::Good => [0, 114, 178],
            Status::Unclear => [230, 159, 0],
            Status::Bad => [178, 60, 0],
        }
    }
}

impl Status {
    /// Of a hop; none where nothing says what is needed.
    pub(crate) fn of_link(v: LinkVerdict) -> Option<Status> {
        match v {
            LinkVerdict::NoNeed => None,
            LinkVerdict::Met => Some(Status::Good),
            LinkVerdict::NotMet => Some(Status::Bad),
            LinkVerdict::CannotJudge | LinkVerdict::CannotTell | LinkVerdict::AtLimit => {
                Some(Status::Unclear)
            }
        }
    }
}

impl From<ExposureVerdict> for Status {
    fn from(v: ExposureVerdict) -> Status {
        match v {
            ExposureVerdict::Met => Status::Good,
            ExposureVerdict::NotMet => Status::Bad,
            _ => Status::Unclear,
        }
    }
}

impl From<Verdict> for Status {
    fn from(v: Verdict) -> Status {
        match v {
            Verdict::Yes => Status::Good,
            Verdict::No => Status::Bad,
            Verdict::CannotTell => Status::Unclear,
        }
    }
}

impl From<ReadingVerdict> for Status {
    fn from(v: ReadingVerdict) -> Status {
        match v {
            ReadingVerdict::Agrees => Status::Good,
            ReadingVerdict::Differs => Status::Bad,
            ReadingVerdict::CannotTell => Status::Unclear,
        }
    }
}

impl From<measure::Verdict> for Status {
    fn from(v: measure::Verdict) -> Status {
        match v {
            measure::Verdict::Agrees => Status::Good,
            measure::Verdict::Differs => Status::Bad,
            measure::Verdict::CannotTell => Status::Unclear,
        }
    }
}
