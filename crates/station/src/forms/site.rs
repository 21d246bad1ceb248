//! What a station says of the site it shares with others.

use super::bundle::{ABOUT_ALWAYS, ABOUT_FIGURE, AT, ON, ORIGINS};
use super::quantity as q;
use super::types::Takes::{Antennas, Then, Value};
use super::types::{Exclusive, Form, NameKind, Need, Slot, Subject, Takes, need, slots};

/// That another station stands on the same site.
pub(super) static BESIDE: Form = Form {
    word: "beside",
    also: &["neighbour", "neighbor", "tenant"],
    noun: "`beside`",
    doc: "Another station of the same site: its transmitters count in what is judged of the site.",
    examples: &["beside harbour"],
    subject: Subject::Use(NameKind::Station),
    ..Form::EMPTY
};

slots! { enum AloneSlot { By } }
/// That no other station stands on the site.
pub(super) static ALONE: Form = Form {
    word: "alone",
    noun: "`alone`",
    doc: "No other station stands on the site, and who has looked, when.",
    examples: &["alone, \"QY4TRA 2026-07-04\""],
    slots: &[&[Slot::text(AloneSlot::By.id()).says(
        "who has looked, and when, in quotes",
        "\"QY4TRA 2026-07-04\"",
    )]],
    needs: &[need(1, "who has looked, and when, follows in quotes")],
    ..Form::EMPTY
};

slots! { enum IsolationSlot { Ends, Measured, Vertical, Horizontal } }
/// How much less of what one antenna radiates another one gets.
pub(crate) static ISOLATION: Form = Form {
    word: "isolation",
    also: &["coupling-loss"],
    noun: "an isolation",
    doc: "From the connector of one antenna of the site to that of another, dB: as measured, or by their distance, where the rule for it holds. What was measured counts first.",
    examples: &[
        "isolation A9 of harbour to A1 48 dB ± 1.5 dB on 2m, read 2026-07-04 with V1 by QY2TEC",
        "isolation A9 of harbour to A1, 10.35 m vertical",
        "isolation A1 to A2, 25 m horizontal",
    ],
    slots: &[
        &[
            Slot::bare(IsolationSlot::Ends.id(), &Antennas).first().says(
                "the two antennas, each with `of` and its station where that is another one",
                "A9 of harbour to A1",
            ),
            Slot::value(IsolationSlot::Measured.id(), &q::LOSS)
                .says("what was measured between their connectors", "48 dB ± 2 dB"),
            Slot::value_as(IsolationSlot::Vertical.id(), &q::METRES, "vertical").says(
                "distance of their centres, where one is exactly above the other: 28 + 40 log(S/λ), from one wavelength on",
                "10.35 m vertical",
            ),
            Slot::value_as(IsolationSlot::Horizontal.id(), &q::METRES, "horizontal").says(
                "distance of two antennas at one height: 22 + 20 log(d/λ) less their gains, from 10 wavelengths and 15 m on",
                "25 m horizontal",
            ),
        ],
        ABOUT_FIGURE,
    ],
    exclusive: &[
        Exclusive {
            slots: IsolationSlot::Measured.bit()
                | IsolationSlot::Vertical.bit()
                | IsolationSlot::Horizontal.bit(),
            rule: "An isolation was measured, or follows from one distance: exactly above each other, or at one height.",
            instead: "What was measured and what is computed are two lines. Of antennas that are neither above each other nor at one height it must be measured.",
        },
        super::bundle::ONE_ORIGIN,
    ],
    needs: &[
        need(
            IsolationSlot::Ends.bit(),
            "the two antennas follow: `A9 of harbour to A1`",
        ),
        need(
            IsolationSlot::Measured.bit()
                | IsolationSlot::Vertical.bit()
                | IsolationSlot::Horizontal.bit(),
            "what was measured follows, or a distance: `48 dB on 2m`, `10.35 m vertical`",
        ),
        Need {
            when: IsolationSlot::Measured.bit(),
            one_of: 1 << ON | 1 << AT,
            what: "a measured isolation says at which frequency: `at 146.9 MHz` or `on 2m`",
        },
    ],
    ..Form::EMPTY
};

slots! { enum Offset { Value, At, Beyond } }
const AT_OFFSET: Slot = Slot::word(Offset::At.id(), "at", &[Value(&q::OFFSET)]).says(
    "the distance from the carrier at which it holds",
    "at 600 kHz",
);
const BEYOND_OFFSET: Slot = Slot::word(Offset::Beyond.id(), "beyond", &[Value(&q::OFFSET)]).says(
    "it holds at this distance from the carrier and further off",
    "beyond 5 MHz",
);
/// What follows a figure in a line with others: its offset.
pub(super) static OFFSET_IN_LINE: [Takes; 2] = [
    Then("at", &Value(&q::OFFSET)),
    Then("beyond", &Value(&q::OFFSET)),
];
const ONE_OFFSET: Exclusive = Exclusive {
    slots: Offset::At.bit() | Offset::Beyond.bit(),
    rule: "A figure holds at an offset, or from one on.",
    instead: "Figures at two offsets are two lines.",
};
const NEEDS_OFFSET: Need = need(
    Offset::At.bit() | Offset::Beyond.bit(),
    "the offset at which it holds follows: `at 600 kHz`",
);

/// Noise of a transmitter beside its carrier.
pub(crate) static SIDEBAND_NOISE: Form = Form {
    word: "noise",
    also: &["sideband-noise", "phase-noise"],
    noun: "the noise of a transmitter",
    doc: "Noise of a transmitter beside its carrier, in 1 Hz, at an offset.",
    examples: &[
        "noise -145 dBc/Hz ± 3 dB at 600 kHz, sheet \"RT-2 p. 4\"",
        "noise -160 dBc/Hz beyond 5 MHz, sheet \"RT-2 p. 4\"",
    ],
    slots: &[
        &[
            Slot::value(Offset::Value.id(), &q::SIDEBAND)
                .first()
                .says("noise in 1 Hz over the carrier", "-145 dBc/Hz"),
            AT_OFFSET,
            BEYOND_OFFSET,
        ],
        ABOUT_ALWAYS,
    ],
    exclusive: &[ONE_OFFSET, super::bundle::ONE_ORIGIN],
    needs: &[
        need(Offset::Value.bit(), "the noise over the carrier follows"),
        NEEDS_OFFSET,
    ],
    ..Form::EMPTY
};

/// Level that blocks a receiver.
pub(crate) static BLOCKING: Form = Form {
    word: "blocking",
    also: &["overload"],
    noun: "a blocking level",
    doc: "Level of a carrier at an offset from its channel that a receiver just withstands.",
    examples: &[
        "blocking -25 dBm ± 3 dB at 600 kHz, sheet \"RR-1 p. 3\"",
        "blocking -10 dBm beyond 5 MHz",
    ],
    slots: &[
        &[
            Slot::value(Offset::Value.id(), &q::LEVEL)
                .first()
                .says("the level at the receiver", "-25 dBm"),
            AT_OFFSET,
            BEYOND_OFFSET,
        ],
        ABOUT_ALWAYS,
    ],
    exclusive: &[ONE_OFFSET, super::bundle::ONE_ORIGIN],
    needs: &[need(Offset::Value.bit(), "the level follows"), NEEDS_OFFSET],
    ..Form::EMPTY
};

/// Noise from outside at the antennas of a station.
pub(super) static SITE_NOISE: Form = Form {
    word: "site-noise",
    noun: "the noise of a site",
    doc: "Noise from outside at the receiving antennas of the station: by the surroundings (ITU-R P.372), or as read, in dB of degradation. A desense is counted over it.",
    examples: &["site-noise rural", "site-noise 3 dB, read 2026-05-02"],
    slots: &[
        &[
            Slot::value(0, &q::RATIO_DB)
                .first()
                .says("by how much it degrades the receiver, as read", "3 dB"),
            Slot::one_of(1, &super::link::AROUND).says("the surroundings", "rural"),
        ],
        ABOUT_ALWAYS,
    ],
    exclusive: ORIGINS,
    needs: &[need(0b11, "the surroundings or a figure in dB follow")],
    once: true,
    ..Form::EMPTY
};

slots! { enum Both { Figure, Value, At, Beyond } }
/// The two noises of a radio that sends and receives.
pub(crate) static NOISES: Form = Form {
    word: "noise",
    noun: "the noise of a transceiver",
    doc: "Noise figure of its receiver, or noise of its transmitter beside the carrier.",
    examples: &["noise figure 8 dB", "noise -140 dBc/Hz ± 3 dB at 600 kHz"],
    slots: &[
        &[
            Slot::word(Both::Figure.id(), "figure", &[Value(&q::NOISE)])
                .first()
                .says("a noise figure", "figure 8 dB"),
            Slot::value(Both::Value.id(), &q::SIDEBAND)
                .first()
                .says("noise in 1 Hz over the carrier", "-140 dBc/Hz"),
            Slot::word(Both::At.id(), "at", &[Value(&q::OFFSET)])
                .after(Both::Value.id(), "is said of a noise over the carrier")
                .says("the distance from the carrier", "at 600 kHz"),
            Slot::word(Both::Beyond.id(), "beyond", &[Value(&q::OFFSET)])
                .after(Both::Value.id(), "is said of a noise over the carrier")
                .says("that distance and further off", "beyond 5 MHz"),
        ],
        ABOUT_ALWAYS,
    ],
    exclusive: &[
        Exclusive {
            slots: Both::Figure.bit() | Both::Value.bit(),
            rule: "A noise is the receiver's figure or the transmitter's beside its carrier.",
            instead: "Two noises are two lines.",
        },
        Exclusive {
            slots: Both::At.bit() | Both::Beyond.bit(),
            rule: "A figure holds at an offset, or from one on.",
            instead: "Figures at two offsets are two lines.",
        },
        super::bundle::ONE_ORIGIN,
    ],
    needs: &[
        need(
            Both::Figure.bit() | Both::Value.bit(),
            "`figure` and a noise figure follow, or a noise over the carrier",
        ),
        Need {
            when: Both::Value.bit(),
            one_of: Both::At.bit() | Both::Beyond.bit(),
            what: "the offset at which it holds follows: `at 600 kHz`",
        },
    ],
    ..Form::EMPTY
};
