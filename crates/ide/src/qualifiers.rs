//! The words inside statements, in one sentence each.

/// Words with what they say.
pub(crate) static QUALIFIERS: &[(&str, &str)] = &[
    ("of", "names the cable, connector or device"),
    ("on", "holds on these bands only"),
    ("at", "at a temperature or frequency"),
    ("with", "the instrument it was read on"),
    ("by", "who read it"),
    ("for", "the criterion of a sensitivity, `12 dB sinad`"),
    (
        "k",
        "coverage factor of an uncertainty: 1 for a standard one, 2 for an expanded one",
    ),
    ("since", "in service since"),
    (
        "read",
        "read on an instrument, with date, instrument and person",
    ),
    (
        "corrected",
        "why a reading is not as it was first recorded, in quotes",
    ),
    ("sheet", "from a data sheet, with document and page"),
    ("rated", "the figure on the plate"),
    ("displayed", "the radio's own display"),
    ("guess", "a guess, said to be one"),
    ("typical", "what a sheet's figure promises: typical"),
    ("nominal", "what a sheet's figure promises: typical"),
    ("maximum", "what a sheet's figure promises: never more"),
    ("forward", "power of the wave towards the antenna"),
    ("reflected", "power of the wave coming back"),
    ("net", "forward less reflected power"),
    ("carrier", "power without modulation"),
    ("pep", "peak envelope power"),
    ("mean", "mean power while keyed"),
    ("erp", "radiated power over a half-wave dipole"),
    (
        "eirp",
        "radiated power over an isotropic radiator, 2.15 dB more than ERP",
    ),
    ("output", "the power at this place of the chain"),
    (
        "transmit",
        "the chain towards the antenna, and the band's transmit frequency",
    ),
    (
        "receive",
        "the chain from the antenna, and the band's receive frequency",
    ),
    ("agl", "above ground level"),
    ("amsl", "above mean sea level"),
    ("haat", "above average terrain"),
    ("added", "loss a cable has beyond its table: age, water"),
    ("wet", "further loss in rain, reported beside the result"),
    ("ends", "connector families of a part's two ends"),
    ("shared", "one cause for all cables that name it"),
    ("passes", "pass band"),
    ("realized", "the gain has the mismatch in it already"),
    ("coupled", "coupling of a coupler"),
    ("excess", "loss of a divider beyond the division"),
    ("gain", "gain of an amplifier"),
    ("noise", "`noise figure` of a receiver or amplifier"),
    ("reading", "the share is of the reading"),
    ("full", "`of full scale`: the share is of the scale"),
    ("ambient", "temperature around, for a rating"),
    (
        "conductor",
        "highest temperature of the conductor, for a rating",
    ),
    ("fm", "frequency modulation: mean equals peak"),
    ("data", "constant envelope: mean equals peak"),
    ("cw", "Morse: 0.4 of the peak while keyed"),
    ("ssb", "single sideband speech: 0.2 of the peak while keyed"),
    (
        "ssb-processed",
        "processed single sideband speech: 0.5 of the peak while keyed",
    ),
    (
        "am",
        "amplitude modulation: the mean is 1.5 times, the peak 4 times the carrier",
    ),
    (
        "duty",
        "mean over peak power while keyed, in place of the mode's",
    ),
    ("keyed", "share of the time the key is down"),
    (
        "foldback",
        "`foldback swr 2`: the SWR at which a transmitter turns itself down",
    ),
    ("swr", "standing wave ratio"),
    ("return-loss", "return loss"),
    ("rating", "mean power it may carry"),
    (
        "isolation",
        "what an isolator or circulator loses the wrong way round",
    ),
    (
        "rejects",
        "what a leg or port keeps off, at a frequency or on a band",
    ),
    (
        "reversed",
        "lies the other way round than it was measured, or than the power flows",
    ),
    (
        "ratio",
        "of a balun, impedance away from the transmitter over that on its side",
    ),
    (
        "series",
        "of a balun's loss: in series with the line, it grows with the current",
    ),
    (
        "shunt",
        "of a balun's loss: across the line, it grows with the voltage",
    ),
    (
        "split",
        "share of the power that each branch of a divider gets, in their order",
    ),
    (
        "tee",
        "a plain junction: its branches are just joined in parallel",
    ),
    ("loss", "loss so far, counted from the transmitter"),
    ("clad", "a copper-clad steel centre conductor"),
    ("wgs84", "datum of the position"),
    ("nad83", "datum of the position"),
    ("nad27", "datum of the position"),
    ("etrs89", "datum of the position"),
    (
        "sinad",
        "signal, noise and distortion over noise and distortion",
    ),
];

/// What a word says.
pub(crate) fn about(word: &str) -> Option<&'static str> {
    QUALIFIERS.iter().find(|q| q.0 == word).map(|q| q.1)
}
