//! What is said of a desense, in words.

use downlead_quantity::frequency;

use super::{DesenseAssumed, Missing};

impl Missing {
    /// The sentence, without its full stop.
    #[must_use]
    pub fn words(&self) -> String {
        match self {
            Missing::Noise { of, offset_hz } => {
                format!("{of} states no noise at {}", frequency(*offset_hz))
            }
            Missing::Blocking { of, offset_hz } => {
                format!("{of} states no blocking at {}", frequency(*offset_hz))
            }
            Missing::NoiseFigure(of) => format!("{of} states no noise figure"),
            Missing::Power(of) => format!("the power of {of} is not known"),
            Missing::Part { name, hz } => format!("{name} states nothing at {}", frequency(*hz)),
            Missing::Line(chain) => format!("a line of {chain} could not be read"),
            Missing::Broken(part) => format!("the loss of {part} could not be computed"),
            Missing::Amplifier(of) => format!("the noise that {of} adds is not stated"),
            Missing::Isolation { from, to, hz } => format!(
                "no isolation from {from} to {to} is stated at {}",
                frequency(*hz)
            ),
            Missing::Antenna(chain) => format!("{chain} does not end in one antenna with a tag"),
            Missing::Together(part) => {
                format!("{part} carries both, and nothing in it keeps the transmitter off")
            }
            Missing::InChannel => "its carrier lies in the receive channel itself".to_owned(),
            Missing::Range(chain) => format!("{chain} is on a range of frequencies"),
            Missing::NoFrequency(chain) => format!("the frequency of {chain} is not known"),
            Missing::NotDefined(station) => format!("station `{station}` is not defined"),
        }
    }
}

impl DesenseAssumed {
    /// The sentence.
    #[must_use]
    pub fn words(self) -> &'static str {
        match self {
            DesenseAssumed::NoSiteNoise => {
                "no noise from outside, over which a desense would be smaller: no `site-noise` is stated"
            }
            DesenseAssumed::NoiseRange => {
                "no noise from outside, over which a desense would be smaller: that of the surroundings is not given at this frequency (ITU-R P.372)"
            }
            DesenseAssumed::NoOther => {
                "no other transmitter stands on the site: neither `beside` nor `alone` is stated"
            }
        }
    }
}
