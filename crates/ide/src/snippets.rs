//! Statements with places to fill in, for completion.

use downlead_station::keywords::Context;

/// The body for a keyword; `station` says that a tag is needed.
pub(crate) fn snippet(cx: Context, word: &str, station: bool) -> Option<&'static str> {
    Some(match (cx, word) {
        (Context::Top, "use") => "use \"${1}\"",
        (Context::Top, "band") => "band ${1:2m} ${2:145.3 MHz}",
        (Context::Top, "let") => "let ${1:mast} = ${2:30 m}",
        (Context::Top, "cable") => {
            "cable ${1:name} \"${2:title}\" {\n    impedance ${3:50} ohm\n    velocity ${4:0.66}\n    loss typical at 20 °C {\n        ${5:100 MHz 4.5 dB/100 m}\n    }\n    accuracy ${6:5 %} k 1\n    source \"${7:document, page}\"\n}$0"
        }
        (Context::Top, "connector") => {
            "connector ${1:name} \"${2:title}\" {\n    family ${3:n}\n    loss ${4:0.05 dB ± 50 %} at 1 GHz\n    source \"${5:document, page}\"\n}$0"
        }
        (Context::Top, "device") => {
            "device ${1:name} \"${2:title}\" {\n    kind ${3:isolator}\n    loss ${4:0.5 dB ± 0.1 dB}\n    source \"${5:document, page}\"\n}$0"
        }
        (Context::Top, "instrument") => {
            "instrument ${1:W1} \"${2:directional wattmeter}\" {\n    accuracy ${3:5 %} of ${4:reading}\n    scale ${5:100 W}\n}$0"
        }
        (Context::Top, "station") => "station ${1:hill} \"${2:title}\" {\n    $0\n}",
        (Context::Top | Context::Station, "chain") => {
            "chain ${1:talk-out} on ${2:145.3 MHz} {\n    $0\n}"
        }
        (Context::Top, "session") => {
            "session ${1:reel-7} \"${2:title}\" {\n    read ${3:2026-07-19} with ${4:W3} by ${5:QY5BEN}\n    temperature ${6:12 °C}\n    piece ${7:A} ${8:22.60 m ± 0.03 m} of ${9:cable}, connector 2 of n-pair\n    $0\n}"
        }
        (Context::Session, "piece") => {
            "piece ${1:A} ${2:22.60 m ± 0.03 m} of ${3:cable}, connector ${4:2} of ${5:n-pair}"
        }
        (Context::Session, "readings") => {
            "readings on ${1:145.3 MHz} {\n    baseline ${2:44.0 W} at ${3:0 min}\n    through ${4:A} ${5:28.9 W} at ${6:2 min}\n    baseline ${7:43.7 W} at ${8:4 min}\n}"
        }
        (Context::Session, "read") => "read ${1:2026-07-19} with ${2:W3} by ${3:QY5BEN}",
        (Context::Readings, "equalise") => {
            "equalise ${1:44.0 W} with ${2:W1}, against ${3:43.6 W} with ${4:W2}"
        }
        (Context::Station, "place") => "place ${1:mast} { temperature ${2:10 °C} }",
        (Context::Station | Context::Chain, "joins") => "joins ${1:n-pair}",
        (Context::Station, "position") => "position ${1:49.3333° S 123.1667° W}, wgs84",
        (Context::Station, "ground") => "ground ${1:612} m amsl",
        (_, "run") if station => "run ${1:M1} ${2:46 m} of ${3:cable}",
        (_, "jumper") if station => "jumper ${1:J1} ${2:1.4 m} of ${3:cable}",
        (_, "tail") if station => "tail ${1:T1} ${2:2 m} of ${3:cable}",
        (_, "transmitter") if station => {
            "transmitter ${1:TX1} ${2:50 W ± 5 %} ${3:carrier}, ${4:fm}"
        }
        (_, "antenna") if station => "antenna ${1:A1} ${2:4.5 dBi ± 0.5 dB}",
        (_, "load") if station => "load ${1:DL1}, return-loss ${2:30 dB}, rating ${3:300 W}",
        (_, "receiver") if station => {
            "receiver ${1:RX1} ${2:-119 dBm} for 12 dB sinad, noise figure ${3:6 dB}"
        }
        (_, "transceiver") if station => {
            "transceiver ${1:TR1} {\n    power ${2:25 W ± 10 %} carrier\n    mode ${3:fm}\n    sensitivity ${4:-117 dBm} for 12 dB sinad\n    noise figure ${5:8 dB}\n}"
        }
        (Context::Station, "duplexer") => {
            "duplexer ${1:DU1} {\n    high ${2:1.5 dB}, rejects ${3:85 dB}\n    low ${4:1.5 dB}, rejects ${5:85 dB}\n}"
        }
        (Context::Station, "diplexer") => {
            "diplexer ${1:DX1} {\n    high ${2:0.3 dB}\n    low ${3:0.2 dB}\n}"
        }
        (Context::Chain, "run") => "run ${1:28 m} of ${2:cable}",
        (Context::Chain, "jumper") => "jumper ${1:1.4 m} of ${2:cable}",
        (Context::Chain, "tail") => "tail ${1:2 m} of ${2:cable}",
        (Context::Chain, "connector") => "connector ${1:2} of ${2:n-pair}",
        (Context::Chain, "transmitter") => "transmitter ${1:50 W ± 5 %} ${2:carrier}",
        (Context::Chain, "antenna") => "antenna ${1:4.5 dBi ± 0.5 dB}",
        (Context::Chain, "read") => {
            "read ${1:16.2 W} ${2:forward}, ${3:2026-07-04} with ${4:W1} by ${5:QY2TEC}"
        }
        (Context::Chain, "expect") => "expect ${1:16.2 W} ± ${2:0.3 dB}",
        (Context::Chain, "limit") => "limit ${1:30 W} ${2:erp}, \"${3:document, clause}\"",
        (Context::Chain, "branch") => "branch { ${1:A1} }",
        (Context::Chain, "branches") => "branches ${1:in phase}",
        _ => return None,
    })
}
