//! Network files in a chain: what a file gives at one frequency, and what is wrong with it.

use downlead_base::{Diagnostic, Loc, Severity, codes};
use downlead_physics::cx;
use downlead_physics::network::SMatrix;
use downlead_quantity::{frequency, number};
use downlead_station::attach::is_network;
use downlead_station::model::{CableLoss, Name, NetworkFile, Part, PartData, PartKind, Port};
use downlead_station::{Attachment, Content, Env, Lowered, NameKind, RestsOn, capital};
use downlead_touchstone::{Kind, Network, Note, Severity as Bad, Touchstone, ports_from_name};
use num_complex::Complex64;

use crate::point::{Point, band_named, pick_by};
use crate::result::ItemResult;
use downlead_physics::net::R0;

/// Between two points of a file whose phase turns further than this, only sizes are taken.
const TURN_KNOWN_DEG: f64 = 30.0;

/// Between two points of a one-port whose reflections are this close, its path is its chord.
const STEP_KNOWN: f64 = 0.15;

/// More power out than in that a good analyser may show (common practice).
const ACTIVE: f64 = 0.02;

/// Frequencies closer than this are one: a unit's factor must not push a band out of a file.
const SAME_HZ: f64 = 1e-9;

/// Less than this passes nothing: -300 dB.
const NOTHING: f64 = 1e-15;

/// A matrix in 50 ohm at one frequency.
struct Matrix {
    s: Vec<Complex64>,
    /// Whether its phases mean something.
    phase_known: bool,
}

/// The two-port of a file in 50 ohm.
pub(crate) struct TwoPort {
    pub(crate) s: SMatrix,
    /// Whether its phases mean something.
    pub(crate) phase_known: bool,
}

/// Where a file's finding stands and for whom.
pub(crate) struct Asked<'o> {
    /// The file.
    pub(crate) file: &'o NetworkFile,
    /// The chain's line.
    pub(crate) chain: Loc,
    /// The point.
    pub(crate) point: &'o Point,
}

impl Asked<'_> {
    fn finding(&self, message: String, label: &str) -> Diagnostic {
        Diagnostic::new(&codes::NETWORK_FILE, self.file.path.loc, message)
            .at(label)
            .also(self.chain, "the chain that needs it")
    }
}

/// The network of a file, if it has so many ports; says why not.
fn network<'e>(
    ports: usize,
    asked: &Asked<'_>,
    env: &'e Env,
    out: &mut Vec<Diagnostic>,
) -> Option<(&'e Attachment, &'e Touchstone, &'e Network)> {
    let a = env.attachments.at(asked.file.path.loc)?;
    // a file that cannot be read is said to be so where its path stands
    let Ok(content) = &a.content else { return None };
    let Content::Network(t) = content else {
        out.push(
            asked
                .finding(
                    format!("`{}` is no network file by its name.", asked.file.path.text),
                    "a network?",
                )
                .help("A network file is named `.s1p`, `.s2p` and so on, by its number of ports."),
        );
        return None;
    };
    // the notes say why there is none
    let n = t.network.as_ref()?;
    if n.ports() != ports {
        let (need, what) = if ports == 1 {
            ("one port is", "a load or antenna is one port, `.s1p`")
        } else {
            ("two ports are", "a part of the line has two, `.s2p`")
        };
        out.push(
            asked
                .finding(
                    format!(
                        "`{}` has {} port{}; {need} needed here.",
                        asked.file.path.text,
                        n.ports(),
                        if n.ports() == 1 { "" } else { "s" },
                    ),
                    "wrong number of ports",
                )
                .help(format!("{}.", capital(what))),
        );
        return None;
    }
    Some((a, t, n))
}

/// The matrix of a file at the point; says why there is none.
fn matrix(ports: usize, asked: &Asked<'_>, env: &Env, out: &mut Vec<Diagnostic>) -> Option<Matrix> {
    let (_, t, n) = network(ports, asked, env, out)?;
    let (lo, hi) = n.range_hz()?;
    let hz = asked.point.hz;
    let inside = (lo * (1.0 - SAME_HZ)..=hi * (1.0 + SAME_HZ)).contains(&hz);
    if !inside {
        out.push(outside(asked, t, lo, hi));
        return None;
    }
    let near = n.between_hz(hz.clamp(lo, hi)).ok()?;
    let one = Network::new(vec![hz], near.matrix, n.z0().to_vec());
    let s = match one.and_then(|one| one.re_referenced(&vec![R0; ports])) {
        Ok(r) => r.s().to_vec(),
        Err(_) => {
            out.push(asked.finding(
                format!(
                    "`{}` cannot be brought to 50 ohm at {}.",
                    asked.file.path.text,
                    frequency(hz)
                ),
                "no figure from it",
            ));
            return None;
        }
    };
    Some(Matrix {
        s,
        phase_known: near.turn_deg <= TURN_KNOWN_DEG || ports == 1 && near.step <= STEP_KNOWN,
    })
}

fn outside(asked: &Asked<'_>, t: &Touchstone, lo: f64, hi: f64) -> Diagnostic {
    let hz = asked.point.hz;
    let mut d = asked.finding(
        format!(
            "`{}` reaches from {} to {}; {} lies outside, and nothing is extrapolated.",
            asked.file.path.text,
            frequency(lo),
            frequency(hi),
            frequency(hz)
        ),
        "outside the file",
    );
    if t.header.unit_defaulted {
        d = d.help("The file's option line names no unit, and so GHz was taken; if MHz is meant, write `# MHz` there.");
    }
    let why = if t.header.unit_defaulted {
        "Or read it over a span that covers the band."
    } else {
        "Read it over a span that covers the band."
    };
    d.help(why)
}

/// The two-port of a file at the point, as it lies in the chain on transmit, in 50 ohm; none, and
/// said why, if the file does not give it.
pub(crate) fn two_port(
    asked: &Asked<'_>,
    kind: PartKind,
    env: &Env,
    out: &mut Vec<Diagnostic>,
) -> Option<TwoPort> {
    let m = matrix(2, asked, env, out)?;
    let [s11, s12, s21, s22] = m.s[..] else {
        return None;
    };
    let mut s = SMatrix { s11, s12, s21, s22 };
    if asked.file.reversed {
        s = s.reversed();
    }
    if amplifies(kind) {
        s = stable(s, asked, out)?;
    } else {
        out.extend(active(asked, kind, env));
        s = passive(s, asked, kind, out)?;
    }
    if cx::abs(s.s21) < NOTHING {
        out.push(nothing_passes(asked, asked.file.reversed).help("Port 1 is on the side of the transmitter or receiver, of an amplifier its input; a part that was measured the other way round is `reversed`."));
        return None;
    }
    if !m.phase_known {
        let taken = "its loss and the size of its reflections are";
        out.push(sparse(asked, taken, env));
    }
    Some(TwoPort {
        s,
        phase_known: m.phase_known,
    })
}

/// The finding that nothing passes a part, from the file's port 2 to its port 1 if `backward`.
fn nothing_passes(asked: &Asked<'_>, backward: bool) -> Diagnostic {
    asked.finding(
        format!(
            "By `{}` nothing passes from port {} at {}.",
            asked.file.path.text,
            if backward {
                "2 to port 1"
            } else {
                "1 to port 2"
            },
            frequency(asked.point.hz)
        ),
        "nothing passes",
    )
}

/// What is wrong with a part in a receive chain whose two-port, as it lies on transmit, lets
/// nothing through from the antenna.
pub(crate) fn blocked(asked: &Asked<'_>, s: &SMatrix) -> Option<Diagnostic> {
    if cx::abs(s.s12) >= NOTHING {
        return None;
    }
    Some(nothing_passes(asked, !asked.file.reversed).help(
        "A receive chain needs the direction from the antenna. An analyser that measures in one direction only writes 0 for the other; measure the part in both.",
    ))
}

pub(crate) fn amplifies(kind: PartKind) -> bool {
    matches!(kind, PartKind::Amplifier | PartKind::Preamplifier)
}

/// A part without a supply, brought down to what it gets where noise or calibration show more:
/// waves that grow on every way through it have no sum. None where it is no matter of noise.
fn passive(
    s: SMatrix,
    asked: &Asked<'_>,
    kind: PartKind,
    out: &mut Vec<Diagnostic>,
) -> Option<SMatrix> {
    let power = s.max_power_out();
    if power < 1.0 {
        return Some(s);
    }
    if power > 2.0 {
        out.push(
            asked
                .finding(
                    format!(
                        "By `{}`, {} gives out {} times what it gets at {}; no figure is taken from it.",
                        asked.file.path.text,
                        kind.with_article(),
                        number(power, 2),
                        frequency(asked.point.hz)
                    ),
                    "more out than in",
                )
                .help("Look at the format of its option line (MA, DB or RI)."),
        );
        return None;
    }
    let factor = (1.0 - 1e-9) / libm::sqrt(power);
    Some(SMatrix {
        s11: s.s11 * factor,
        s12: s.s12 * factor,
        s21: s.s21 * factor,
        s22: s.s22 * factor,
    })
}

/// An amplifier whose figures have a meaning with any passive load. What comes back through one
/// that has not is left out, which is said.
///
/// Source: Rollett's stability factor (IRE Trans. Circuit Theory 9 (1962) 29, from memory).
fn stable(s: SMatrix, asked: &Asked<'_>, out: &mut Vec<Diagnostic>) -> Option<SMatrix> {
    let (a, b) = (s.s11.norm_sqr(), s.s22.norm_sqr());
    if a >= 1.0 || b >= 1.0 {
        out.push(asked.finding(
            format!(
                "By `{}` more comes back from the amplifier's {} than goes in at {}: it oscillates.",
                asked.file.path.text,
                if a >= 1.0 { "input" } else { "output" },
                frequency(asked.point.hz)
            ),
            "not stable",
        ));
        return None;
    }
    let back = cx::abs(s.s12 * s.s21);
    let delta = (s.s11 * s.s22 - s.s12 * s.s21).norm_sqr();
    if back == 0.0 || delta < 1.0 && 1.0 - a - b + delta > 2.0 * back {
        return Some(s);
    }
    let mut d = asked.finding(
        format!(
            "By `{}` the amplifier is not stable with every load at {} (Rollett's factor below 1): what comes back through it is left out.",
            asked.file.path.text,
            frequency(asked.point.hz)
        ),
        "not stable with every load",
    );
    d.severity = Severity::Info;
    out.push(d);
    Some(SMatrix {
        s12: Complex64::new(0.0, 0.0),
        ..s
    })
}

/// The points of a file lie so far apart that phases between them mean nothing.
fn sparse(asked: &Asked<'_>, taken: &str, env: &Env) -> Diagnostic {
    let step = env
        .attachments
        .at(asked.file.path.loc)
        .and_then(|a| a.network())
        .and_then(|n| {
            let f = n.frequencies_hz();
            let k = f.partition_point(|x| *x <= asked.point.hz);
            Some(f.get(k)? - f.get(k.checked_sub(1)?)?)
        })
        .unwrap_or(0.0);
    let mut d = asked
        .finding(
            format!(
                "At {} the points of `{}` are {} apart and its phase turns by more than {}° between them: only {taken} taken.",
                frequency(asked.point.hz),
                asked.file.path.text,
                frequency(step),
                number(TURN_KNOWN_DEG, 0)
            ),
            "points far apart",
        )
        .help("Read it with more points, or with one at this very frequency.");
    d.severity = Severity::Info;
    d
}

/// The file whose two-port a part is at a point.
pub(crate) fn file_of<'m>(
    part: &'m Part,
    port: Option<&str>,
    point: &Point,
    env: &'m Env,
) -> Option<&'m NetworkFile> {
    let files: &'m [NetworkFile] = match &part.data {
        PartData::Line(l) => &l.network,
        PartData::Device(d) => {
            let class = || Some(&env.device(&d.class.as_ref()?.text)?.device);
            let ports = if d.ports.is_empty() {
                class().map_or(&[][..], |c| &c.ports)
            } else {
                &d.ports
            };
            let of = |p: &&Port| *p.name.text == *port.unwrap_or("");
            &ports.iter().find(of)?.network
        }
        _ => return None,
    };
    picked(files, point, env)
}

/// The file that holds at a point.
pub(crate) fn picked<'m>(
    files: &'m [NetworkFile],
    point: &Point,
    env: &Env,
) -> Option<&'m NetworkFile> {
    let p = pick_by(files, |n| &n.figure, point, env)?;
    files.iter().find(|n| n.path.loc == p.figure.loc)
}

/// The reflection of a one-port file at the point, in 50 ohm; its phase is known or not.
pub(crate) fn one_port(
    asked: &Asked<'_>,
    kind: PartKind,
    env: &Env,
    out: &mut Vec<Diagnostic>,
) -> Option<(Complex64, bool)> {
    let m = matrix(1, asked, env, out)?;
    let s11 = *m.s.first()?;
    out.extend(active(asked, kind, env));
    if cx::abs(s11) >= 1.0 {
        out.push(
            asked
                .finding(
                    format!(
                        "By `{}` everything comes back at {}: |S11| is {}.",
                        asked.file.path.text,
                        frequency(asked.point.hz),
                        number(cx::abs(s11), 3)
                    ),
                    "no load",
                )
                .help("Was an open or short left on the cable?"),
        );
        return None;
    }
    if !m.phase_known {
        out.push(sparse(asked, "the size of its reflection is", env));
    }
    Some((s11, m.phase_known))
}

/// A part without a supply that gives out more power than it gets.
fn active(asked: &Asked<'_>, kind: PartKind, env: &Env) -> Option<Diagnostic> {
    let a = env.attachments.at(asked.file.path.loc)?;
    let Ok(Content::Network(t)) = &a.content else {
        return None;
    };
    // the notes report numbers in another format than the file states
    if t.notes.iter().any(|n| n.kind == Kind::WrongFormat) {
        return None;
    }
    let n = t.network.as_ref()?;
    let points = n.active_points(ACTIVE);
    let gain = |k: &usize| n.largest_gain(*k);
    let worst = *points.iter().max_by(|a, b| gain(a).total_cmp(&gain(b)))?;
    let g = gain(&worst);
    let mut d = asked
        .finding(
            format!(
                "By `{}`, {} gives out more power than it gets at {} of {} points, most at {}: {} times as much.",
                asked.file.path.text,
                kind.with_article(),
                points.len(),
                n.points(),
                frequency(n.frequencies_hz()[worst]),
                number(g * g, 2)
            ),
            "more out than in",
        )
        .help("Look at the format of its option line (MA, DB or RI) and at the calibration.");
    d.severity = Severity::Warning;
    d.related.clear();
    Some(d)
}

/// Why a cable that is known by a file has no loss at the point.
pub(crate) fn why_no_rate(asked: &Asked<'_>, env: &Env, out: &mut Vec<Diagnostic>) {
    let Some((_, t, n)) = network(2, asked, env, out) else {
        return;
    };
    let list = crate::cable::matched_loss(n);
    match (list.first(), list.last()) {
        (Some(a), Some(b)) => out.push(outside(asked, t, a.0, b.0)),
        _ => out.push(asked.finding(
            format!(
                "`{}` holds no loss of a piece of cable.",
                asked.file.path.text
            ),
            "no figure from it",
        )),
    }
}

/// A `use` of a file that holds no definitions.
pub(crate) fn used(name: &Name) -> Option<Diagnostic> {
    let path = &name.text;
    let csv = path
        .rsplit_once('.')
        .is_some_and(|(_, e)| e.eq_ignore_ascii_case("csv"));
    let (what, how) = if is_network(path) {
        let how = if ports_from_name(path) == Some(1) {
            format!("load DL1 from \"{path}\"")
        } else {
            format!("filter F1 from \"{path}\"")
        };
        ("a network file", how)
    } else if csv {
        ("a table", format!("readings from \"{path}\""))
    } else {
        return None;
    };
    Some(
        Diagnostic::new(
            &codes::USE_NOT_FOUND,
            name.loc,
            format!("`{path}` is {what}; `use` brings in definitions only."),
        )
        .at("no definitions in it")
        .help(format!("Name it where it takes part, for example `{how}`.")),
    )
}

/// What the reader found in the network files that an item names.
pub(crate) fn notes(low: &Lowered, env: &Env, out: &mut Vec<Diagnostic>) {
    for name in &low.files {
        let Some(a) = env.attachments.at(name.loc) else {
            continue;
        };
        let Ok(Content::Network(t)) = &a.content else {
            continue;
        };
        out.extend(
            t.notes
                .iter()
                .filter(|n| n.severity != Bad::Info)
                .map(|n| note(name, n)),
        );
    }
}

fn note(name: &Name, n: &Note) -> Diagnostic {
    let mut message = format!(
        "In `{}`, line {}, column {}: {}",
        name.text, n.line, n.column, n.message
    );
    if let Some(u) = &n.understood {
        message = format!("{message}; {u}");
    }
    if n.more > 0 {
        message = format!("{message}; {} more like it", n.more);
    }
    if !message.ends_with(['.', '?']) {
        message.push('.');
    }
    let mut d = Diagnostic::new(&codes::NETWORK_FILE, name.loc, message).at(match n.severity {
        Bad::Error => "an error in the file",
        _ => "in the file",
    });
    if n.severity != Bad::Error {
        d.severity = Severity::Warning;
    }
    if let Some(h) = &n.hint {
        let mut h = capital(h);
        if !h.ends_with(['.', '?', '`']) {
            h.push('.');
        }
        d = d.help(h);
    }
    d
}

/// Adds the files that an item's result rests on: its own, and those of the cables and devices it
/// names.
pub(crate) fn depends(low: &Lowered, env: &Env, r: &mut ItemResult) {
    let mut places: Vec<Loc> = low.files.iter().map(|f| f.loc).collect();
    for (kind, name, _) in &r.depends {
        match kind {
            RestsOn::Name(NameKind::Cable) => {
                if let Some(CableLoss::Network { file, .. }) =
                    env.cable(name).and_then(|c| c.loss.as_ref())
                {
                    places.push(file.path.loc);
                }
            }
            RestsOn::Name(NameKind::Instrument) => {
                let files = env.instrument(name).map_or(&[][..], |i| &i.certificates);
                places.extend(files.iter().map(|f| f.loc));
            }
            RestsOn::Name(NameKind::Station) => {
                places.extend(env.station_files(name).iter().map(|f| f.loc));
            }
            RestsOn::Name(NameKind::Device) => {
                let ports = env.device(name).map_or(&[][..], |c| &c.device.ports);
                places.extend(ports.iter().flat_map(|p| &p.network).map(|n| n.path.loc));
            }
            _ => {}
        }
    }
    let before = r.depends.len();
    for a in places.into_iter().filter_map(|p| env.attachments.at(p)) {
        // the rows of a table name bands and instruments, which may come to mean something else
        for row in a.readings().map_or(&[][..], |t| &t.rows) {
            let named = [
                (NameKind::Band, &row.band),
                (NameKind::Instrument, &row.instrument),
            ];
            for (kind, name) in named {
                let kind = RestsOn::Name(kind);
                // as it is defined, however the table writes it
                let defined = name.as_deref().and_then(|n| band_named(n, env));
                let defined = defined.filter(|_| kind == RestsOn::Name(NameKind::Band));
                if let Some(n) = defined.map(Box::from).or_else(|| name.clone())
                    && !r.depends.iter().any(|d| d.0 == kind && d.1 == n)
                {
                    let id = env.identity(kind, &n);
                    r.depends.push((kind, n, id));
                }
            }
        }
        if !r
            .depends
            .iter()
            .any(|d| d.0 == RestsOn::File && d.1 == a.path)
        {
            let id = env.identity(RestsOn::File, &a.path);
            r.depends.push((RestsOn::File, a.path.clone(), id));
        }
    }
    if r.depends.len() > before {
        r.depends.sort();
    }
}
