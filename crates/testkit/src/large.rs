//! A large file for measuring: many hills of one club, sharing their cables.

use std::fmt::Write;

/// A line of [`large_file`] that one station alone uses: its main run.
pub const RUN_LINE: &str = "    run M1 46.5 m";

/// A line of [`large_file`] that every station depends on: the loss of the main cable.
pub const CABLE_LINE: &str = "    loss 0.1216 dB/100 m/sqrt(MHz)";

/// A file of at least `lines` lines without errors: shared definitions, then stations of two
/// transmit and two receive chains each.
#[must_use]
pub fn large_file(lines: usize) -> String {
    let mut out = String::from(HEAD);
    let mut have = out.lines().count();
    let mut n = 0;
    while have < lines {
        n += 1;
        let before = out.len();
        station(&mut out, n);
        have += out[before..].lines().count();
    }
    out
}

const HEAD: &str = "// Generated for measuring: invented stations of an invented club.
band 2m {
    transmit 146.9137 MHz
    receive 146.3137 MHz
}
band 70cm {
    transmit 438.9137 MHz
    receive 431.3137 MHz
}
let tower = 30 m ± 0.2 m

cable main-foam \"seven-eighths foam, corrugated\" {
    impedance 50 ohm
    velocity 0.88 ± 0.018
    loss 0.1216 dB/100 m/sqrt(MHz) + 0.001231 dB/100 m/MHz, typical
    valid 0.5 MHz to 1000 MHz
    accuracy 4 % k 2, shared club-sheet
    size 28 mm
    source \"club sheet 1, invented\"
}

cable jumper-5mm \"5.4 mm solid polyethylene, two braids\" {
    impedance 50 ohm
    velocity 0.66 ± 0.007
    loss typical at 20 °C {
        10 MHz 4.16 dB/100 m
        50 MHz 9.41 dB/100 m
        100 MHz 13.43 dB/100 m
        200 MHz 19.23 dB/100 m
        400 MHz 27.68 dB/100 m
        1000 MHz 45.28 dB/100 m
    }
    accuracy 4 % k 2, shared club-sheet
    size 5.4 mm
    source \"club sheet 2, invented\"
}

instrument W1 \"directional wattmeter\" {
    accuracy 5 % of reading
    scale 100 W
    resolution 0.1 W
}

";

fn station(out: &mut String, n: usize) {
    let _ = write!(
        out,
        "station hill-{n} \"Hill number {n}\" {{
    position 49.3{:03}° S 123.1667° W, wgs84
    ground {} m amsl
    place shelter {{ temperature 15 °C }}
    place mast {{ temperature -10 °C to 35 °C }}
    joins n-pair

    // the transmitters of both bands
    transmitter TX1 32 W ± 5 % carrier, fm, keyed 100 %, read 2026-07-04 with W1 by QY2TEC
    transmitter TX2 16 W ± 5 % carrier, fm, keyed 50 %
    receiver RX1 -119 dBm for 12 dB sinad, noise figure 6 dB
    receiver RX2 -119 dBm for 12 dB sinad, noise figure 6 dB
    jumper J1 1.4 m of jumper-5mm, shelter
    isolator IS1 0.55 dB ± 0.15 dB, sheet \"IS-2 p. 3\"
    duplexer DU1 {{
        high 1.45 dB ± 0.15 dB, passes 146.8 MHz to 147.0 MHz, rejects 85 dB at 146.3137 MHz, sheet \"DU-6 p. 2\"
        low 1.50 dB ± 0.15 dB, passes 146.2 MHz to 146.4 MHz, rejects 85 dB at 146.9137 MHz, sheet \"DU-6 p. 2\"
    }}
    duplexer DU2 {{
        high 1.10 dB ± 0.15 dB, rejects 80 dB at 431.3137 MHz
        low 1.15 dB ± 0.15 dB, rejects 80 dB at 438.9137 MHz
    }}
    diplexer DX1 {{
        low 0.20 dB ± 0.15 dB, passes 136 MHz to 174 MHz
        high 0.30 dB ± 0.15 dB, passes 400 MHz to 470 MHz
    }}
    protector SP1 {{
        loss 0.10 dB ± 0.15 dB on 2m, sheet \"SP-1 p. 1\"
        loss 0.15 dB ± 0.15 dB on 70cm, sheet \"SP-1 p. 1\"
        return-loss 22 dB
    }}
    run M1 {} m ± 0.5 m of main-foam, mast, since 2026-06
    tail T2 tower / 20 + {} * 0.1 m of jumper-5mm, mast
    antenna A1 {{
        gain 5.20 dBi ± 0.5 dB on 2m, sheet \"AN-7 p. 2\"
        gain 7.60 dBi ± 0.5 dB on 70cm, sheet \"AN-7 p. 2\"
        swr 1.3
        height 26 m agl
    }}

    chain out-2m on 2m transmit {{
        TX1
        J1
        IS1
        read 26.4 W forward, 2026-07-04 with W1 by QY2TEC
        DU1.high
        DX1.low
        SP1
        connector 3 of n-pair
        M1
        T2
        A1
        limit 30 W erp, \"club rule {n}\"
    }}
    chain out-70cm on 70cm transmit {{
        TX2
        DU2.high
        DX1.high
        SP1
        connector 3 of n-pair
        M1
        T2
        A1
        limit 20 W erp, \"club rule {n}\"
    }}
    chain in-2m on 2m receive {{
        A1
        T2
        M1
        connector 3 of n-pair
        SP1
        DX1.low
        DU1.low
        RX1
    }}
    chain in-70cm on 70cm receive {{
        A1
        T2
        M1
        connector 3 of n-pair
        SP1
        DX1.high
        DU2.low
        RX2
    }}
}}

",
        n % 1000,
        400 + n % 300,
        if n == 1 {
            46.5
        } else {
            20.25 + (n % 40) as f64
        },
        n % 9,
    );
}
