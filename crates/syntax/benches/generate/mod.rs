//! Texts for measuring: a realistic station file, and TOML of the same content and size.

use std::fmt::Write;

/// A station file of at least `lines` lines, with an error in one line of `broken_every` (0: none).
pub(crate) fn station_file(lines: usize, broken_every: usize) -> String {
    let mut out = String::from(
        "// Generated for measuring: invented stations.\nuse \"thrennock/cables.downlead\"\n\n",
    );
    let mut n = 0usize;
    while out.lines().count() < lines {
        n += 1;
        block(&mut out, n);
    }
    if broken_every == 0 {
        return out;
    }
    let faults = [
        " ± ± 3 m",
        ", ,",
        " (4 m",
        " * ",
        " \"open",
        " # remark",
        " 1e999 m",
    ];
    let mut broken = String::with_capacity(out.len() + out.len() / 100);
    for (i, line) in out.lines().enumerate() {
        broken.push_str(line);
        if i % broken_every == broken_every - 1 && !line.is_empty() && !line.ends_with(['{', '}']) {
            broken.push_str(faults[i / broken_every % faults.len()]);
        }
        broken.push('\n');
    }
    broken
}

fn block(out: &mut String, n: usize) {
    let mhz = 144.0 + (n % 40) as f64 * 0.0125;
    let _ = write!(
        out,
        "band b{n} {{
    transmit {mhz:.4} MHz
    receive {:.4} MHz
}}
let mast-{n} = {}.5 m // measured along the ladder
let arm-{n} = (mast-{n} + 2 m) / 2

cable foam-{n} \"seven-eighths foam, corrugated outer\" {{
    impedance 50 ohm
    velocity 0.88 ± 0.01
    loss 0.12{:02} dB/100 m/sqrt(MHz) + 0.001231 dB/100 m/MHz, typical
    valid 0.5 MHz to 3000 MHz
    accuracy 4 % k 2, shared thrennock-sheet
    rating 1.1 kW at 100 MHz, ambient 40 °C, conductor 80 °C
    source \"data sheet of 2024, page {n}\"
}}
connector pair-{n} \"N, mated pair\" {{ family n; loss 0.05 dB per sqrt(GHz) ± 50 %; limit 11 GHz }}

station hill-{n} \"Hill number {n}\" {{
    position 49.3{:03}° S 123.1667° W, wgs84
    ground {} m amsl
    place shelter {{ temperature 15 °C }}
    place mast {{ temperature -10 °C to 35 °C }}
    joins pair-{n}

    transmitter TX1 32 W ± 5 % carrier, fm, read 2026-07-04 with W1 by QY2TEC
    receiver RX1 -119 dBm for 12 dB sinad, noise figure 6 dB
    jumper J1 1.4 m of foam-{n}, shelter
    isolator IS1 0.55 dB ± 0.15 dB, sheet \"IS-2 p. 3\"
    duplexer DU1 {{
        high 1.45 dB ± 0.15 dB, rejects 85 dB at 146.3137 MHz, read 2026-06-14
        low 1.50 dB ± 0.15 dB, rejects 85 dB at 146.9137 MHz
    }}
    protector SP1 0.10 dB to 0.20 dB, guess
    run M1 {}.5 m ± 0.5 m of foam-{n}, mast, since 2026-06
    antenna A1 {{
        gain 5.20 dBi ± 0.5 dB on b{n}, sheet \"AN-7 p. 2\"
        swr 1.3
        height 26 m agl
    }}

    chain talk-out-{n} on b{n} transmit {{
        TX1
        J1
        IS1
        DU1.high
        SP1
        read 16.2 W forward, 2026-07-04 with W1 by QY2TEC
        M1
        A1
        limit 30 W erp, \"TSO 14-0093 clause {n}\"
    }}
    chain talk-in-{n} on b{n} receive {{
        A1
        M1
        SP1
        DU1.low
        RX1
    }}
}}
",
        mhz - 0.6,
        20 + n % 30,
        n % 100,
        n % 1000,
        300 + n % 500,
        30 + n % 40,
    );
}

/// TOML of the same content, cut to about the same size.
pub(crate) fn toml_file(bytes: usize) -> String {
    let mut out = String::from(
        "# Generated for measuring: invented stations.\nuse = [\"thrennock/cables\"]\n\n",
    );
    let mut n = 0usize;
    while out.len() < bytes {
        n += 1;
        let mhz = 144.0 + (n % 40) as f64 * 0.0125;
        let _ = write!(
            out,
            "[band.b{n}]
transmit = {mhz:.4}
receive = {:.4}

[cable.foam-{n}]
title = \"seven-eighths foam, corrugated outer\"
impedance = 50
velocity = 0.88
loss = [0.12{:02}, 0.001231]
valid = {{ from = 0.5, to = 3000 }}
accuracy = {{ percent = 4, k = 2, shared = \"thrennock-sheet\" }}
source = \"data sheet of 2024, page {n}\"

[station.hill-{n}]
title = \"Hill number {n}\"
position = {{ latitude = -49.3{:03}, longitude = -123.1667, datum = \"wgs84\" }}
ground = {} # above mean sea level
joins = \"pair-{n}\"

[station.hill-{n}.transmitter.TX1]
power = 32
tolerance = \"5 %\"
mode = \"fm\"
read = {{ date = 2026-07-04, with = \"W1\", by = \"QY2TEC\" }}

[station.hill-{n}.run.M1]
length = {}.5
tolerance = 0.5
cable = \"foam-{n}\"
place = \"mast\"
since = 2026-06-01

[station.hill-{n}.antenna.A1]
gain = 5.20
sheet = \"AN-7 p. 2\"
swr = 1.3
height = 26

[station.hill-{n}.chain.talk-out]
band = \"b{n}\"
direction = \"transmit\"
parts = [\"TX1\", \"J1\", \"IS1\", \"DU1.high\", \"SP1\", \"M1\", \"A1\"]
limit = {{ erp = 30, source = \"TSO 14-0093 clause {n}\" }}

",
            mhz - 0.6,
            n % 100,
            n % 1000,
            300 + n % 500,
            30 + n % 40,
        );
    }
    out
}
