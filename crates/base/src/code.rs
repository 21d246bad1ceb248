//! The diagnostics table: the only definition of codes, severities and titles.
//! Each code has a page in `codes/CODE.md`, whose examples are run by the tests.

use crate::Severity;

/// One entry of the diagnostics table.
#[derive(Debug, PartialEq, Eq)]
pub struct Code {
    /// Stable kebab-case name, as `downlead explain` takes it.
    pub id: &'static str,
    /// Severity, unless the finding has its own.
    pub severity: Severity,
    /// The rule in a few words.
    pub title: &'static str,
    /// The page in Markdown: its meaning, an example that triggers it, the corrected example.
    pub page: &'static str,
}

/// Former names of codes, each with the present one.
const RENAMED: &[(&str, &str)] = &[("finer-than-doubt", "excess-digits")];

/// The entry of that name, which may be a former one.
#[must_use]
pub fn code_named(id: &str) -> Option<&'static Code> {
    let renamed = RENAMED.iter().find(|(former, _)| *former == id);
    let id = renamed.map_or(id, |(_, present)| present);
    CODES.iter().copied().find(|c| c.id == id)
}

macro_rules! codes {
    ($($(#[$doc:meta])* $name:ident $severity:ident $id:literal $title:literal;)+) => {
        $(#[doc = $title] pub static $name: Code = Code {
            id: $id,
            severity: Severity::$severity,
            title: $title,
            page: include_str!(concat!("../codes/", $id, ".md")),
        };)+
        /// All codes, in the order of the table.
        pub static CODES: &[&Code] = &[$(&$name),+];
    };
}

/// The codes by name.
pub mod codes {
    use super::{Code, Severity};

    codes! {
        // the text itself
        INVALID_CHARACTER Error "invalid-character" "A character the language does not use";
        UNCLOSED_STRING Error "unclosed-string" "A text in quotes does not end on its line";
        UNCLOSED_BLOCK Error "unclosed-block" "A block is opened and not closed";
        UNMATCHED_BRACE Error "unmatched-brace" "A closing brace has no opening one";
        TOO_DEEP Error "too-deep" "Blocks or brackets are nested too deep";
        NOT_UNDERSTOOD Error "not-understood" "A statement cannot be read";
        MISPLACED_STATEMENT Error "misplaced-statement" "A statement stands where it has no meaning";
        UNKNOWN_STATEMENT Error "unknown-statement" "A statement begins with a word that is no statement";
        UNEXPECTED_WORD Error "unexpected-word" "A statement holds something it has no use for";
        MISSING_VALUE Error "missing-value" "A statement lacks a figure it cannot do without";
        WORDS_EXCLUDE Error "words-exclude" "Two words exclude each other";
        SAID_TWICE Error "said-twice" "A line or block says one thing twice";
        LINE_TWICE Warning "line-twice" "A line of a chain repeats the one above it";
        // files and names
        USE_NOT_FOUND Error "use-not-found" "A used file is not there or cannot be read";
        USE_CYCLE Error "use-cycle" "Files use each other in a circle";
        USE_OUTSIDE_ROOT Error "use-outside-root" "A used file lies outside the project's root";
        DUPLICATE_NAME Error "duplicate-name" "One name is given to two things";
        NAME_IS_KEYWORD Error "name-is-keyword" "A word of the language is used as a name";
        UNKNOWN_NAME Error "unknown-name" "A named value is not defined";
        UNKNOWN_CABLE Error "unknown-cable" "A cable is not in the catalogue or the files";
        UNKNOWN_CONNECTOR Error "unknown-connector" "A connector is not in the catalogue or the files";
        UNKNOWN_DEVICE Error "unknown-device" "A device is not in the catalogue or the files";
        UNKNOWN_BAND Error "unknown-band" "A band is not defined";
        UNKNOWN_PART Error "unknown-part" "A chain names a part the station does not have";
        UNKNOWN_PLACE Error "unknown-place" "A place is not defined in the station";
        UNKNOWN_INSTRUMENT Error "unknown-instrument" "An instrument is not defined";
        UNKNOWN_PIECE Error "unknown-piece" "A reading names a piece the session does not have";
        LIBRARY_REPLACED Info "library-replaced" "A definition takes the place of one in the library";
        // quantities
        MISSING_UNIT Error "missing-unit" "A number has no unit";
        UNKNOWN_UNIT Error "unknown-unit" "A unit is not known";
        WRONG_UNIT Error "wrong-unit" "A unit does not fit the place";
        UNCERTAINTY_NOT_USED Error "uncertainty-not-used" "An uncertainty stands where no result would use it";
        UNCERTAINTY_TOO_LARGE Warning "uncertainty-too-large" "An uncertainty is larger than its figure";
        WAVELENGTHS_NEED_FREQUENCY Error "wavelengths-need-frequency" "A length in wavelengths does not say at which frequency";
        ISOLATION_NOT_USED Info "isolation-not-used" "An isolation enters no number";
        LEVELS_ADDED Error "levels-added" "Two power levels in dBm are added";
        POWER_TIMES_DECIBEL Error "power-times-decibel" "A power is multiplied by decibels";
        NOT_A_NUMBER Error "not-a-number" "An expression has no finite value";
        GAIN_WITHOUT_REFERENCE Error "gain-without-reference" "An antenna gain does not say dBi or dBd";
        REFERENCE_ON_LOSS Error "reference-on-loss" "A loss is written with a reference";
        NEGATIVE_LOSS Error "negative-loss" "A loss is negative";
        SWR_BELOW_ONE Error "swr-below-one" "An SWR below 1 or a negative return loss";
        IMPOSSIBLE_VALUE Error "impossible-value" "A value lies outside what can be";
        HEIGHT_WITHOUT_DATUM Error "height-without-datum" "A height does not say above what";
        LONGITUDE_WITHOUT_LETTER Error "longitude-without-letter" "Coordinates do not say north or south, east or west";
        POSITION_WITHOUT_DATUM Warning "position-without-datum" "A position does not name its datum";
        FIGURE_TWICE Warning "figure-twice" "One thing has two figures that differ";
        POWER_KIND_MISSING Error "power-kind-missing" "A power does not say carrier, pep or mean where a check needs it";
        ACCURACY_KIND_MISSING Error "accuracy-kind-missing" "An accuracy does not say of reading or of full scale";
        LOSS_RATE_IMPLAUSIBLE Warning "loss-rate-implausible" "A cable loses far less or more than its size can";
        PERCENT_ADDED Warning "percent-added" "Losses in percent do not add along a chain";
        EXCESS_DIGITS Hint "excess-digits" "A value has more digits than its uncertainty supports";
        FREQUENCY_OFF_BAND Warning "frequency-off-band" "A frequency does not fit its band";
        TEMPERATURE_UNLIKELY Warning "temperature-unlikely" "A temperature is outside what stations see";
        MIXED_LENGTH_UNITS Info "mixed-length-units" "Feet and metres stand in one chain";
        MIXED_BASIS Warning "mixed-basis" "Typical and maximum figures stand in one chain";
        // chains
        CHAIN_WITHOUT_END Error "chain-without-end" "A chain ends in nothing";
        CHAIN_WITHOUT_START Error "chain-without-start" "A chain has nothing to begin with";
        PART_AFTER_END Error "part-after-end" "A chain goes on after its end";
        CHAIN_LOOP Error "chain-loop" "A chain passes the same part twice";
        PART_UNUSED Warning "part-unused" "A part is on no chain";
        PORT_NEEDED Error "port-needed" "A part with several ports needs the port named";
        UNKNOWN_PORT Error "unknown-port" "A part has no port of that name";
        SPOT_WITHOUT_TIER Error "spot-without-tier" "It is not said who can be at a place, or for whom a limit is";
        SPOT_WITHOUT_DISTANCE Error "spot-without-distance" "A spot does not say how far it is from an antenna";
        SPOT_IMPOSSIBLE Error "spot-impossible" "A spot is at distances from two antennas that cannot both be";
        PEP_AGAINST_MEAN Error "pep-against-mean" "A limit of a field states a peak and an averaging time";
        EXPOSURE_EXCEEDED Error "exposure-exceeded" "The fields at a spot exceed a limit of exposure";
        EXPOSURE_CANNOT_TELL Warning "exposure-cannot-tell" "The uncertainty decides whether a limit of exposure is met";
        EXPOSURE_CANNOT_JUDGE Warning "exposure-cannot-judge" "The exposure at a spot cannot be judged";
        SITE_CONTRADICTS Error "site-contradicts" "Two lines about the site contradict each other";
        UNKNOWN_CHAIN Error "unknown-chain" "A link names a chain that its station does not have";
        HOP_MISMATCH Error "hop-mismatch" "The two ends of a hop do not fit each other";
        PROFILE_NOT_READ Error "profile-not-read" "The profile of a link cannot be read";
        PROFILE_IN_FEET Error "profile-in-feet" "A column of a profile does not say its unit";
        PROFILE_BACKWARDS Error "profile-backwards" "The distance of a profile does not rise";
        PROFILE_DIFFERS Error "profile-differs" "The profile of a link does not fit its stations";
        NO_CRITERION Error "no-criterion" "A receiver states no sensitivity for what a link needs";
        NOISE_BEYOND_RANGE Error "noise-beyond-range" "Noise of a place is not given at this frequency";
        MODEL_REFUSED Error "model-refused" "A model of the path does not hold for this link";
        MODELS_APART Warning "models-apart" "Two models of the terrain differ by more than 3 dB";
        LINK_NOT_MET Error "link-not-met" "Too little of a signal arrives";
        FREQUENCY_PLAN Warning "frequency-plan" "A carrier, a harmonic or a product falls into a receive channel of the site";
        ISOLATION_BEYOND_RANGE Error "isolation-beyond-range" "Two antennas are too near for the rule of their isolation";
        ISOLATION_CONTRADICTS Warning "isolation-contradicts" "A measured isolation is not what the distance of the antennas gives";
        OFFSET_DIFFERS Error "offset-differs" "A figure at an offset is one of no transmitter and receiver of the site";
        DESENSE_NOT_MET Error "desense-not-met" "A receiver is desensitised by transmitters of its site";
        DESENSE_CANNOT_TELL Warning "desense-cannot-tell" "The uncertainty hides whether a limit of desense is kept";
        DESENSE_CANNOT_JUDGE Warning "desense-cannot-judge" "A limit of desense needs something that the text does not say";
        UNKNOWN_STATION Error "unknown-station" "A station is named that is not defined";
        PORT_USED_TWICE Error "port-used-twice" "Two parts feed one port";
        SHARED_PORT Error "shared-port" "A transmitter and a receiver share a line with nothing to part them";
        TWO_PATHS Warning "two-paths" "A transmitter reaches an antenna by two paths";
        CONNECTOR_GAP Error "connector-gap" "Two ends of different connector families meet";
        OUTSIDE_PASS_BAND Error "outside-pass-band" "The frequency is outside a device's pass band";
        LEGS_SWAPPED Error "legs-swapped" "The chain takes the wrong leg of a duplexer or diplexer";
        RATING_EXCEEDED Error "rating-exceeded" "A part gets more power than its rating";
        VOLTAGE_EXCEEDED Warning "voltage-exceeded" "The peak voltage is above a part's rating";
        AMPLIFIER_BACKWARDS Error "amplifier-backwards" "An amplifier is in a chain of the wrong direction";
        NO_FIGURE_FOR_BAND Error "no-figure-for-band" "A part has no figure for the chain's band";
        BAND_NOT_PAIRED Error "band-not-paired" "A chain's direction needs a frequency the band does not have";
        IMPEDANCE_JUMP Warning "impedance-jump" "A cable of another impedance is in the chain";
        BRANCH_COUNT Error "branch-count" "A divider's ways are not the branches of the chain";
        CHAIN_TOO_LONG Error "chain-too-long" "A chain has more parts than can be evaluated";
        PASSED_BACKWARDS Warning "passed-backwards" "An isolator or circulator is passed the wrong way";
        DUPLEXER_ACROSS_BANDS Warning "duplexer-across-bands" "A duplexer serves two bands";
        DIPLEXER_FOR_PAIR Warning "diplexer-for-pair" "A diplexer parts two frequencies of one band";
        ONE_LOSS_MANY_BANDS Warning "one-loss-many-bands" "One loss is given for frequencies far apart";
        BEYOND_RANGE Warning "beyond-range" "A frequency is outside the data of a part";
        SHEET_DOES_NOT_FIT Warning "sheet-does-not-fit" "A point of a loss table is out of line with the others";
        NO_SOURCE Info "no-source" "A cable definition names no source";
        UHF_CONNECTOR_HIGH Warning "uhf-connector-high" "UHF-series connectors far above their range";
        CONNECTOR_LOSS_HIGH Info "connector-loss-high" "A connector's loss is far above the usual";
        ADAPTERS_IN_SERIES Hint "adapters-in-series" "Three adapters or more follow each other";
        PROTECTOR_BEHIND Info "protector-behind" "A protector is after the part it should protect";
        SWR_NOT_ADDED Info "swr-not-added" "Reflected power is not simply lost";
        FOLDBACK Warning "foldback" "The transmitter sees an SWR at which it turns itself down";
        NOT_PASSIVE Warning "not-passive" "A part would give out more than it gets";
        LOSSLESS_PART Warning "lossless-part" "A device has no loss stated";
        // readings and limits
        READING_INCOMPLETE Warning "reading-incomplete" "A reading names no instrument, date or person";
        READING_CONTRADICTS Error "reading-contradicts" "A reading differs from the chain by more than the uncertainty";
        READING_EDITED Warning "reading-edited" "A reading was changed after it had been recorded";
        LENGTH_MISTYPED Warning "length-mistyped" "A length looks mistyped beside its earlier state";
        FIGURE_MISTYPED Warning "figure-mistyped" "A figure looks mistyped beside its earlier state";
        READING_CANNOT_TELL Info "reading-cannot-tell" "The meter could not have shown the difference";
        READING_LOW_ON_SCALE Warning "reading-low-on-scale" "A reading in the lowest quarter of the meter's range";
        READING_IMPOSSIBLE Warning "reading-impossible" "A reading that cannot be";
        INSTRUMENT_OUTSIDE_BAND Error "instrument-outside-band" "An instrument is used outside its frequency band";
        READING_NOT_USED Warning "reading-not-used" "A reading takes no part in any result";
        CALIBRATION_LAPSED Warning "calibration-lapsed" "An instrument's calibration had lapsed on the day of the reading";
        CERTIFICATE_FILE Error "certificate-file" "A calibration certificate cannot be read";
        CERTIFICATE_NOT_VALID Warning "certificate-not-valid" "A calibration certificate does not hold on the day of the reading";
        CERTIFICATE_RANGE Warning "certificate-range" "A reading lies outside the points of its instrument's certificate";
        SWR_BESIDE_WATTS Warning "swr-beside-watts" "An SWR is not what the watts read beside it say";
        SWR_AT_SHACK Warning "swr-at-shack" "A good SWR at the radio hides a poor one at the antenna";
        EXPECTATION_MISSED Error "expectation-missed" "An expected value is not what the chain gives";
        LIMIT_NOT_MET Error "limit-not-met" "A limit is exceeded by more than the uncertainty";
        LIMIT_CANNOT_TELL Warning "limit-cannot-tell" "A limit is within the uncertainty of the result";
        LIMIT_WITHOUT_KIND Error "limit-without-kind" "A limit does not say erp, eirp or output";
        LIMIT_WITHOUT_SOURCE Warning "limit-without-source" "A limit names no document";
        LIMIT_CONVERTED Info "limit-converted" "A limit's quantity was converted for the comparison";
        LOW_EDGE_USED Info "low-edge-used" "For an upper limit the lowest credible loss counts";
        LIMIT_IN_THE_COLD Info "limit-in-the-cold" "A limit is met only while the run is as warm as assumed";
        // licences and rules
        UNKNOWN_RULES Error "unknown-rules" "A licence or rules are not defined";
        UNKNOWN_IN_RULES Error "unknown-in-rules" "A class or question is not in the rules";
        UNKNOWN_CITATION Error "unknown-citation" "A replaced clause is not in the rules";
        RULE_WITHOUT_QUANTITY Error "rule-without-quantity" "A clause does not say which power it counts";
        RULE_WITHOUT_CONFIDENCE Error "rule-without-confidence" "A clause of rules does not say how sure its text is";
        RULE_LAW Error "rule-law" "A law of a clause cannot be read";
        RULE_STEPS Error "rule-steps" "Steps of a clause leave a gap or overlap";
        RULE_EXAMPLE Error "rule-example" "A worked example contradicts its clause";
        RULES_OVERLAP Info "rules-overlap" "Two clauses of one set hold at once and differ";
        CANNOT_JUDGE Warning "cannot-judge" "A clause needs something that the text does not say";
        NO_RULE Warning "no-rule" "Rules say nothing about a transmitter";
        CLAUSE_UNUSED Info "clause-unused" "A clause of a licence bears on nothing here";
        LIMIT_DISAGREES Error "limit-disagrees" "A limit in a chain and a clause of the licence differ";
        RULE_SUPERSEDED Warning "rule-superseded" "A clause has ended before the newest date of the station";
        RULE_DUTY Info "rule-duty" "A threshold is reached, and a duty follows";
        FIXED_MOVED Error "fixed-moved" "Something is not as the licence fixes it";
        FORM_UNIT Error "form-unit" "A field of a form has a unit or a step that does not fit";
        FORM_LACKS Warning "form-lacks" "A form wants something that the text does not say";
        // variants
        VARIANT_OF_NOTHING Error "variant-of-nothing" "A variant names a station that is not there";
        VARIANT_TWICE Error "variant-twice" "A variant changes one thing twice";
        VARIANT_NOT_A_FIGURE Error "variant-not-a-figure" "A variant changes something that is no figure of a part";
        VARIANT_CHANGES_NOTHING Warning "variant-changes-nothing" "A variant is the same as its station";
        VARIANT_DROPS_UNCERTAINTY Warning "variant-drops-uncertainty" "A new figure of a variant has no uncertainty and the old one has";
        // acceptances
        ACCEPT_REFUSED Error "accept-refused" "An acceptance names something that cannot be accepted";
        ACCEPT_ENDED Warning "accept-ended" "The last day of an acceptance has passed";
        ACCEPT_NOT_NEEDED Warning "accept-not-needed" "Nothing needs an acceptance";
        // what a limit rests on
        GUESS_IN_LIMIT Warning "guess-in-limit" "A guessed figure takes part in a limit check";
        DISPLAYED_POWER Warning "displayed-power" "A limit check rests on a radio's own display";
        LOSS_RISING Warning "loss-rising" "Power after a point falls from year to year by more than the uncertainty";
        SWR_FALLING Warning "swr-falling" "An SWR gets better from year to year";
        OLD_CABLE Info "old-cable" "A cable is old and was not measured for years";
        EVIDENCE_STALE Warning "evidence-stale" "A reading is older than a part it vouches for";
        // the bench, and files of readings and networks
        READINGS_NOT_READ Error "readings-not-read" "A row of a file of readings cannot be taken";
        READINGS_DISAGREE Error "readings-disagree" "A file of readings and the text disagree";
        NETWORK_FILE Error "network-file" "A network file does not give the figure that is needed";
        TIME_BACKWARDS Warning "time-backwards" "A reading is earlier than the one above it";
        NO_BASELINE Error "no-baseline" "Power after a piece has no baseline to compare with";
        NO_CLOSING_BASELINE Warning "no-closing-baseline" "A reading does not lie between two baselines";
        BASELINE_DRIFT Warning "baseline-drift" "The baseline drifted by more than 1 %";
        BASELINE_PATH Warning "baseline-path" "A piece went in with an adapter that no reading accounts for";
        ABOVE_BASELINE Warning "above-baseline" "More comes through than without the piece";
        READING_SLIP Warning "reading-slip" "A reading of a bench session looks like a slip";
        NOT_EQUALISED Warning "not-equalised" "Two meters are compared that were never read in series";
        ONE_END_ONLY Warning "one-end-only" "Return loss was read with the far end open or shorted only";
        LENGTH_DIFFERS Warning "length-differs" "A piece is longer or shorter by its waves than by the tape";
        CABLE_DIFFERS Warning "cable-differs" "A piece's loss differs from its cable's data by more than the uncertainty";
        LOSS_TOO_LOW Warning "loss-too-low" "A piece loses far less than any cable of its type";
    }
}

pub use codes::CODES;

#[cfg(test)]
mod tests {
    use super::{RENAMED, code_named, codes};

    #[test]
    fn a_former_name_of_a_code_still_finds_it() {
        assert_eq!(code_named("finer-than-doubt"), Some(&codes::EXCESS_DIGITS));
        for (former, present) in RENAMED {
            assert_eq!(code_named(former), code_named(present));
            assert!(code_named(present).is_some_and(|c| c.id == *present));
        }
    }
}
