"""Reference values for feed chains with uncertain figures: chain matrices and plain Monte Carlo.

    python3 tests/reference/net.py           writes net.json beside this file
    python3 tests/reference/net.py --check   recomputes and compares with the committed file

Written from textbook formulas, independently of the program: voltages and currents are followed from the
end towards the source with chain matrices (the program follows reflections inwards and powers
outwards), a divider is solved as a set of linear equations of its scattering matrix, a junction as
admittances in parallel. All uncertain figures and all unknown phases are drawn together, 100,000
pseudo-random draws of a fixed seed (JCGM 101:2008). Single points of lines and cascades are also
compared with scikit-rf.

What both sides share is the meaning of a figure: a plain half-width is rectangular, `k 1` is normal;
an SWR without a phase has any phase; of a device with return loss only |S11| = |S22| = g and
|S21|^2 = t are known, so its two outer phases are free and S22 = -g e^(j psi) with
sin(psi/2) = min(1, (1 - g^2 - t)/(2 g sqrt t)) sin(phi/2), phi free (passive for every psi). A line
has the propagation constant and complex impedance of `network.py`.

Losses are in dB from the transmitter's stated power to all ends together; where antennas of several
branches add in phase, to the field of one antenna. `u` is the standard deviation times two, `low`
and `high` are the quantiles of 2.275 % and 97.725 %, `p` the probability that the loss lies below a
level (that a limit is exceeded).
"""

import json
import pathlib
import sys
import zlib

import numpy as np
import skrf

HERE = pathlib.Path(__file__).parent
C0 = 299_792_458.0
R0 = 50.0
NEPER = 20.0 / np.log(10.0)
DRAWS = 100_000
TAIL = 0.022750131948179


# --- draws

class Draw:
    """Pseudo-random figures; each case has its own stream."""

    def __init__(self, name):
        self.rng = np.random.default_rng([2026, zlib.crc32(name.encode())])

    def flat(self, middle, half):
        return middle + half * self.rng.uniform(-1.0, 1.0, DRAWS)

    def normal(self, mean, u):
        return mean + u * self.rng.standard_normal(DRAWS)

    def angle(self):
        return self.rng.uniform(-np.pi, np.pi, DRAWS)


# --- two-ports as chain matrices (A, B, C, D)

def times(m, n):
    return (
        m[0] * n[0] + m[1] * n[2],
        m[0] * n[1] + m[1] * n[3],
        m[2] * n[0] + m[3] * n[2],
        m[2] * n[1] + m[3] * n[3],
    )


def constants(cable, hz, velocity=None, impedance=None, scale=1.0):
    """Propagation constant per metre and characteristic impedance."""
    k1, k2, vf, z0 = cable
    vf = vf if velocity is None else velocity
    z0 = z0 if impedance is None else impedance
    mhz = hz / 1e6
    conductor = k1 / 100 * np.sqrt(mhz) * scale / NEPER
    dielectric = k2 / 100 * mhz * scale / NEPER
    beta = 2 * np.pi * hz / (C0 * vf)
    return conductor + dielectric + 1j * beta, z0 * (1 - 1j * (conductor - dielectric) / beta)


def line(cable, metres, hz, velocity=None, impedance=None, scale=1.0):
    gamma, zc = constants(cable, hz, velocity, impedance, scale)
    gl = gamma * metres
    return np.cosh(gl), zc * np.sinh(gl), np.sinh(gl) / zc, np.cosh(gl)


def scattering(s11, s12, s21, s22):
    """Chain matrix of scattering parameters in 50 ohm (Pozar, table 4.2, from memory)."""
    return (
        ((1 + s11) * (1 - s22) + s12 * s21) / (2 * s21),
        R0 * ((1 + s11) * (1 + s22) - s12 * s21) / (2 * s21),
        ((1 - s11) * (1 - s22) - s12 * s21) / (2 * s21) / R0,
        ((1 - s11) * (1 + s22) + s12 * s21) / (2 * s21),
    )


def turned(angle):
    """A lossless 50-ohm line of this electrical length."""
    return np.cos(angle), 1j * R0 * np.sin(angle), 1j * np.sin(angle) / R0, np.cos(angle)


def pad(db):
    t = 10 ** (-db / 20)
    return scattering(0.0, t, t, 0.0)


def isolator(db, isolation, draw):
    """Passes `db` forward, `isolation` back; its electrical length is not known."""
    middle = scattering(0.0, 10 ** (-isolation / 20), 10 ** (-db / 20), 0.0)
    return times(times(turned(draw.angle()), middle), turned(draw.angle()))


def device(db, size, draw):
    """A reciprocal device by its loss and the size of its reflection."""
    t = 10 ** (-db / 10)
    most = np.minimum(1.0, (1 - size**2 - t) / (2 * size * np.sqrt(t)))
    half = most * np.sin(draw.angle() / 2)
    psi = 2 * np.arcsin(half)
    middle = scattering(size, np.sqrt(t), np.sqrt(t), -size * np.exp(1j * psi))
    # each way of an outer phase turns by half of it
    return times(times(turned(draw.angle() / 2), middle), turned(draw.angle() / 2))


# --- ends

def of_swr(swr, draw):
    return (swr - 1) / (swr + 1) * np.exp(1j * draw.angle())


def of_impedance(r, x):
    z = r + 1j * x
    return (z - R0) / (z + R0)


# --- solving

class Solved:
    """Forward and net power at each node, per watt of the source's forward power."""

    def __init__(self, forward, net):
        self.forward = forward
        self.net = net

    def loss(self):
        return -10 * np.log10(self.net[-1])


def waves(v, i):
    return (v + R0 * i) / (2 * np.sqrt(R0)), (v - R0 * i) / (2 * np.sqrt(R0))


def inward(parts, gamma):
    """Voltage and current at every node for a forward wave of 1 at the end."""
    v, i = np.sqrt(R0) * (1 + gamma), (1 - gamma) / np.sqrt(R0)
    out = [(v, i)]
    for a, b, c, d in reversed(parts):
        v, i = a * v + b * i, c * v + d * i
        out.append((v, i))
    return out[::-1]


def follow(parts, gamma, tuner=None):
    """The chain from a matched source; `tuner` is the number of parts before a lossless tuner."""
    if tuner is not None:
        before = follow(parts[:tuner], 0 * gamma)
        after = follow(parts[tuner:], gamma)
        scale = before.net[-1] / after.net[0]
        return Solved(
            before.forward + [f * scale for f in after.forward],
            before.net + [n * scale for n in after.net],
        )
    nodes = [waves(v, i) for v, i in inward(parts, gamma)]
    source = abs(nodes[0][0]) ** 2
    return Solved(
        [abs(a) ** 2 / source for a, _ in nodes],
        [(abs(a) ** 2 - abs(b) ** 2) / source for a, b in nodes],
    )


def seen(parts, gamma):
    v, i = inward(parts, gamma)[0]
    a, b = waves(v, i)
    return b / a


def divided(shares, excess, gammas):
    """Waves out of a divider's ports (input, arms) for a wave of 1 into it.

    Matched ports, isolated arms: b = S a with a_i = gamma_i b_i.
    """
    n = len(shares)
    amplitude = np.sqrt(np.array(shares) * 10 ** (-excess / 10))
    s = np.zeros((n + 1, n + 1), complex)
    s[0, 1:] = s[1:, 0] = amplitude
    g = np.stack([np.zeros(DRAWS, complex)] + [x + np.zeros(DRAWS) for x in gammas], axis=-1)
    left = np.eye(n + 1) - s[None] * g[:, None, :]
    right = np.broadcast_to(s[:, 0], (DRAWS, n + 1))[..., None]
    b = np.linalg.solve(left, right)[..., 0]
    return b[:, 0], [b[:, k + 1] for k in range(n)]


def branches(arms, shares, excess, trunk=(), tuner=False):
    """Reflection at the source, net power of each arm's nodes; arms are (parts, gamma)."""
    trunk = list(trunk)
    inputs = [seen(p, g) for p, g in arms]
    back, into = divided(shares, excess, inputs)
    first = follow(trunk, back, 0 if tuner else None)
    forward = first.forward[-1]
    each = []
    for (p, g), b in zip(arms, into):
        s = follow(p, g)
        f = forward * abs(b) ** 2
        each.append(Solved([f * x for x in s.forward], [f * x for x in s.net]))
    return seen(trunk, back), first, each


# --- results of a case

def spread(loss, limits=(), **more):
    out = dict(
        mean=loss.mean(),
        u=2 * loss.std(),
        low=np.quantile(loss, TAIL),
        high=np.quantile(loss, 1 - TAIL),
        least=loss.min(),
        most=loss.max(),
    )
    if limits:
        out["p"] = [[db, float((loss < db).mean())] for db in limits]
    out.update(more)
    return {k: (v if isinstance(v, (list, str)) else float(v)) for k, v in out.items()}


def powers(watts, nodes):
    """Mean levels as powers."""
    return [float(watts * 10 ** np.log10(x + np.zeros(DRAWS)).mean()) for x in nodes]


def swr_rms(gamma):
    g = np.sqrt((abs(gamma + np.zeros(DRAWS)) ** 2).mean())
    return float((1 + g) / (1 - g))


# --- cables: k1, k2 per 100 m, velocity factor, impedance

RG6 = (0.8679, 0.00428, 0.659, 75.0)
RG11 = (0.6416, 0.00428, 0.659, 75.0)
RG213 = (0.5674, 0.009661, 0.659, 50.0)
C75 = (0.64, 0.0043, 0.66, 75.0)
C52 = (0.6, 0.004, 0.66, 52.0)
A50 = (1.42, 0.0046, 0.659, 50.0)
WINDOW = (0.1761, 0.0, 0.905, 400.0)
FLEX = (1.2, 0.006, 0.66, 50.0)
MAIN = (0.4, 0.0016, 0.85, 50.0)
FOAM10 = (0.392, 0.00165, 0.85, 50.0)
HALF = (0.2195, 0.00078, 0.88, 50.0)
OWN = (0.6, 0.004, 0.66, 50.0)
OPEN600 = (0.06, 0.0, 0.99, 600.0)

CASES = {}


def case(f):
    CASES[f.__name__] = f
    return f


def erp_loss(watts, limit, dbi):
    """The loss below which a limit on ERP is exceeded."""
    return 10 * np.log10(watts / limit) + dbi - 2.15


# --- lines whose phase is known in part

@case
def line_75_ohm_30_m(d):
    """30 m of a 75-ohm cable between 50 ohm: loss 5 % k 1, velocity ± 0.007."""
    parts = [line(RG6, 30.0, 146.9e6, d.flat(0.659, 0.007), scale=d.normal(1, 0.05))]
    return spread(follow(parts, 0.0).loss())


@case
def line_75_ohm_20_m_uhf(d):
    parts = [line(RG6, 20.0, 434.5e6, d.flat(0.659, 0.007), scale=d.normal(1, 0.05))]
    return spread(follow(parts, 0.0).loss())


def short_75(metres, mhz):
    def f(d):
        parts = [line(RG6, metres, mhz * 1e6, d.flat(0.659, 0.007), scale=d.normal(1, 0.05))]
        return spread(follow(parts, 0.0).loss())

    f.__name__ = f"line_75_ohm_{metres:g}_m_{mhz:g}_mhz"
    return f


for _metres in (5.0, 10.0, 18.0, 25.0):
    for _mhz in (144, 145, 146):
        case(short_75(_metres, _mhz))


@case
def line_52_ohm_30_m_uhf(d):
    """A 52-ohm cable as old sheets print it: loss 5 % k 1, velocity ± 0.007."""
    parts = [line(C52, 30.0, 434.5e6, d.flat(0.66, 0.007), scale=d.normal(1, 0.05))]
    return spread(follow(parts, 0.0).loss())


@case
def line_75_ohm_swr_1_2(d):
    parts = [line(RG11, 30.0, 146.9e6, d.flat(0.659, 0.007), scale=d.normal(1, 0.05))]
    return spread(follow(parts, of_swr(1.2, d)).loss())


@case
def line_75_ohm_5_m_swr_2(d):
    parts = [line(RG6, d.flat(5.0, 0.5), 146.9e6, d.flat(0.659, 0.007), scale=d.normal(1, 0.05))]
    return spread(follow(parts, of_swr(2.0, d)).loss())


@case
def line_50_ohm_swr_2(d):
    """What a 50-ohm cable does in the same place."""
    parts = [line(RG213, d.flat(5.0, 0.5), 146.9e6, d.flat(0.659, 0.007), scale=d.normal(1, 0.05))]
    return spread(follow(parts, of_swr(2.0, d)).loss())


@case
def window_line_vhf_swr_3(d):
    v, s = d.flat(0.905, 0.02), d.normal(1, 0.2)
    parts = [line(WINDOW, d.flat(25.0, 0.2), 146.9e6, v, scale=s)]
    g = of_swr(3.0, d)
    return spread(follow(parts, g).loss(), swr=swr_rms(seen(parts, g)))


def window_end():
    return of_impedance(120.0, -60.0)


@case
def window_length(d):
    """18.0 m ± 0.5 m of 400-ohm line; ERP limit 38 W of 100 W."""
    parts = [line(WINDOW, d.flat(18.0, 0.5), 14.2e6)]
    return spread(follow(parts, window_end()).loss(), [erp_loss(100, 38, 2.15)])


@case
def window_velocity(d):
    parts = [line(WINDOW, 18.0, 14.2e6, d.flat(0.905, 0.02))]
    return spread(follow(parts, window_end()).loss(), [erp_loss(100, 38, 2.15)])


@case
def window_all(d):
    parts = [line(WINDOW, d.flat(18.0, 0.5), 14.2e6, d.flat(0.905, 0.02), scale=d.normal(1, 0.2))]
    return spread(follow(parts, window_end()).loss(), [erp_loss(100, 38, 2.15)])


@case
def window_tuner_50_mhz(d):
    """24 m on 50 MHz with a tuner: the loss was negative."""
    parts = [line(WINDOW, 24.0, 50e6, d.flat(0.905, 0.02), scale=d.normal(1, 0.2))]
    return spread(0.2 + follow(parts, window_end(), 0).loss())


@case
def window_tuner_length(d):
    parts = [line(WINDOW, d.flat(18.0, 1.0), 14.2e6, d.flat(0.905, 0.02), scale=d.normal(1, 0.2))]
    return spread(0.2 + follow(parts, window_end(), 0).loss())


@case
def c75_length(d):
    """12.1 m ± 0.05 m of 75 ohm; ERP limit 33 W of 50 W."""
    parts = [line(C75, d.flat(12.1, 0.05), 145.3e6)]
    return spread(follow(parts, of_impedance(38.0, -12.0)).loss(), [erp_loss(50, 33, 2.15)])


@case
def c75_velocity(d):
    parts = [line(C75, 12.1, 145.3e6, d.flat(0.66, 0.002))]
    return spread(follow(parts, of_impedance(38.0, -12.0)).loss(), [erp_loss(50, 33, 2.15)])


@case
def c75_length_18_m(d):
    """The newcomer's 75-ohm line: 18.0 m ± 0.05 m between 50 ohm."""
    parts = [line(C75, d.flat(18.0, 0.05), 145.3e6)]
    return spread(follow(parts, 0.0).loss())


def after_jumper(percent):
    def f(d):
        parts = [
            line(A50, 1.2, 146.9e6),
            line(C75, 17.35, 146.9e6, d.flat(0.66, 0.66 * percent / 100)),
        ]
        g = of_impedance(38.0, -12.0)
        return spread(follow(parts, g).loss(), swr=swr_rms(seen(parts, g)))

    f.__name__ = f"velocity_{percent:g}_percent"
    return f


for _percent in (0.1, 0.2, 0.3, 0.35, 0.4, 0.5, 0.6, 0.8, 1, 2, 4, 10):
    case(after_jumper(_percent))


@case
def load_angle_unknown(d):
    parts = [line(A50, 1.2, 146.9e6), line(C75, 17.35, 146.9e6)]
    g = of_swr(1.6, d)
    return spread(follow(parts, g).loss(), swr=swr_rms(seen(parts, g)))


# --- what a stated ± does

@case
def antenna_swr(d):
    return spread(follow([], of_swr(d.flat(2.0, 0.5), d)).loss())


@case
def antenna_swr_interval(d):
    return spread(follow([], of_swr(d.flat(1.5, 0.2), d)).loss())


@case
def antenna_return_loss(d):
    """9.5 dB ± 3 dB, rectangular in the decibels of return loss."""
    g = 10 ** (-d.flat(9.5, 3.0) / 20) * np.exp(1j * d.angle())
    return spread(follow([], g).loss())


@case
def antenna_resistance(d):
    return spread(follow([], of_impedance(d.flat(80.0, 30.0), 0.0)).loss())


@case
def antenna_reactance(d):
    return spread(follow([], of_impedance(50.0, d.flat(30.0, 50.0))).loss())


@case
def cable_impedance(d):
    """20 m of 50 ohm ± 2 ohm at 145.3 MHz, load 100 ohm."""
    parts = [line(OWN, 20.0, 145.3e6, impedance=d.flat(50.0, 2.0))]
    return spread(follow(parts, of_impedance(100.0, 0.0)).loss())


@case
def antenna_efficiency(d):
    return spread(-10 * np.log10(d.flat(0.9, 0.09)))


@case
def coupler_coupling(d):
    return spread(-10 * np.log10(1 - 10 ** (-d.flat(10.0, 1.0) / 10)))


@case
def pad_return_loss(d):
    """A pad of 1 dB with return loss 20 dB ± 5 dB before an antenna of SWR 2."""
    size = 10 ** (-d.flat(20.0, 5.0) / 20)
    parts = [device(1.0, size, d)]
    g = of_swr(2.0, d)
    return spread(follow(parts, g).loss(), swr=swr_rms(seen(parts, g)))


# --- nodes

@case
def forward_at_nodes(d):
    parts = [line(FLEX, 3.0, 435e6), line(MAIN, 25.0, 435e6), line(FLEX, 2.0, 435e6)]
    s = follow(parts, of_swr(3.0, d))
    return spread(s.loss(), forward=powers(50, s.forward), net=powers(50, s.net))


def forward_of(swr):
    def f(d):
        parts = [line(FLEX, 3.0, 434.5e6), line(MAIN, 40.0, 434.5e6), line(FLEX, 3.0, 434.5e6)]
        s = follow(parts, of_swr(swr, d))
        return spread(s.loss(), forward=powers(50, s.forward), net=powers(50, s.net))

    f.__name__ = f"forward_swr_{swr:g}"
    return f


for _swr in (1.5, 2, 3, 5):
    case(forward_of(_swr))


@case
def isolator_then_line(d):
    parts = [isolator(0.5, 25.0, d), line(FOAM10, 25.0, 434.5e6)]
    g = of_swr(3.0, d)
    s = follow(parts, g)
    return spread(
        s.loss(),
        forward=powers(35, s.forward),
        net=powers(35, s.net),
        swr=swr_rms(seen(parts, g)),
    )


@case
def isolator_backwards(d):
    parts = [isolator(25.0, 0.5, d), line(FOAM10, 25.0, 434.5e6)]
    return spread(follow(parts, 0.0).loss())


@case
def isolator_alone(d):
    """SWR at the source through 0.5 dB forward and 25 dB back, antenna SWR 3."""
    parts = [isolator(0.5, 25.0, d)]
    g = of_swr(3.0, d)
    return spread(follow(parts, g).loss(), swr=swr_rms(seen(parts, g)))


# --- three devices by their return loss

def three(d):
    return [device(0.35, 10**-1.5, d), device(1.5, 10**-0.9, d), device(2.4, 10**-1.3, d)]


def worst_of_three():
    """Largest SWR at the source over all phases: what comes back from each place fills a circle
    about a centre, and the largest of all combinations has all turned alike (closed form of a
    free phase between two reflections: (a + b)/(1 + a b) of lossless ones, here by search)."""
    best = 0.0
    rng = np.random.default_rng(7)
    sizes = [(0.35, 10**-1.5), (1.5, 10**-0.9), (2.4, 10**-1.3)]

    def reflection(angles):
        g = 0.2 * np.ones(angles.shape[0], complex)
        for k, (db, size) in reversed(list(enumerate(sizes))):
            t = 10 ** (-db / 10)
            outer, inner, psi = angles[:, 3 * k], angles[:, 3 * k + 1], angles[:, 3 * k + 2]
            g = g * np.exp(1j * inner)
            s22 = -size * np.exp(1j * psi)
            g = (size + t * g / (1 - s22 * g)) * np.exp(1j * outer)
        return abs(g)

    angles = rng.uniform(-np.pi, np.pi, (4000, 9))
    step = 1.0
    for _ in range(400):
        now = reflection(angles)
        order = np.argsort(now)[::-1]
        angles = angles[order[:1000]]
        best = max(best, float(reflection(angles[:1])[0]))
        moved = np.concatenate([angles + step * rng.standard_normal(angles.shape) for _ in range(3)])
        angles = np.concatenate([angles, moved])
        step *= 0.97
    return (1 + best) / (1 - best)


@case
def three_devices(d):
    parts = three(d)
    g = of_swr(1.5, d)
    return spread(
        follow(parts, g).loss(), swr=swr_rms(seen(parts, g)), swr_worst=worst_of_three()
    )


@case
def three_devices_tuner(d):
    return spread(follow(three(d), of_swr(1.5, d), 0).loss())


@case
def hf_swr_5_tuner(d):
    return spread(follow([line(A50, 30.0, 3.6e6)], of_swr(5.0, d), 0).loss())


@case
def c75_swr_3_tuner(d):
    return spread(follow([line(C75, 17.35, 146.9e6)], of_swr(3.0, d), 0).loss())


# --- dividers

def field(each):
    """Loss to one antenna of the same field, all adding in phase."""
    return -20 * np.log10(sum(np.sqrt(s.net[-1]) for s in each))


def two_arms(d, alike):
    parts = [line(OWN, 2.0, 145e6)]
    a = of_swr(3.0, d)
    b = a if alike else of_swr(3.0, d)
    return [(parts, a), (parts, b)]


def divider(alike, tuner):
    def f(d):
        g, first, each = branches(two_arms(d, alike), [0.5, 0.5], 0.1, tuner=tuner)
        delivered = sum(s.net[-1] for s in each)
        into = sum(s.net[0] for s in each)
        net = first.net[-1]
        return spread(
            field(each),
            swr=swr_rms(0.0 * g if tuner else g),
            delivered=float(-10 * np.log10(delivered + np.zeros(DRAWS)).mean()),
            heat=float((net - into + np.zeros(DRAWS)).mean()),
        )

    f.__name__ = f"divider_{'alike' if alike else 'apart'}{'_tuner' if tuner else ''}"
    return f


for _alike in (True, False):
    for _tuner in (False, True):
        case(divider(_alike, _tuner))


@case
def divider_matched(d):
    """100 W through 30 m, a 2-way divider of 0.25 dB excess and two arms of 3.2 m, matched ends."""
    arm = [line(FOAM10, 3.2, 145.3e6)]
    g, first, each = branches(
        [(arm, np.zeros(DRAWS)), (arm, np.zeros(DRAWS))],
        [0.5, 0.5],
        0.25,
        [line(HALF, 30.0, 145.3e6)],
    )
    into = sum(s.net[0] for s in each)
    return spread(field(each), heat=float(100 * (first.net[-1] - into).mean()))


@case
def divider_three_ways_lossless(d):
    zero = np.zeros(DRAWS)
    g, first, each = branches([([], zero)] * 3, [1 / 3] * 3, 0.0)
    into = sum(s.net[0] for s in each)
    return spread(field(each), heat=float(90 * (first.net[-1] - into).mean()))


def one_or_two(both):
    def f(d):
        v, s = d.flat(0.659, 0.007), d.normal(1, 0.05)
        parts = [line(RG6, 10.0, 146.9e6, v, scale=s)]
        a = of_swr(1.5, d)
        if not both:
            return spread(follow(parts, a).loss())
        g, first, each = branches([(parts, a), (parts, a)], [0.5, 0.5], 0.2)
        return spread(field(each), swr=swr_rms(g))

    f.__name__ = "one_arm" if not both else "two_arms"
    return f


case(one_or_two(False))
case(one_or_two(True))


@case
def two_arms_of_uncertain_length(d):
    """Fields add with the phases that two jumpers of 2 m ± 0.3 m give them; matched antennas."""
    fields = 0.0
    for _ in range(2):
        metres = d.flat(2.0, 0.3)
        gamma, _ = constants(OWN, 145e6)
        fields = fields + np.sqrt(0.5) * np.exp(-gamma * metres)
    return spread(-20 * np.log10(abs(fields)))


@case
def two_arms_a_quarter_turn_apart(d):
    """The same with 2 m and 2.3 m, both ± 0.1 m: about 80 degrees apart."""
    fields = 0.0
    for metres in (2.0, 2.3):
        gamma, _ = constants(OWN, 145e6)
        fields = fields + np.sqrt(0.5) * np.exp(-gamma * d.flat(metres, 0.1))
    return spread(-20 * np.log10(abs(fields)))


# --- junctions

def joined(arms, trunk=()):
    """Lines joined in parallel: one voltage, currents add. Net power of each arm's end."""
    ends = []
    total = 0.0
    for parts, gamma in arms:
        nodes = inward(parts, gamma)
        v, i = nodes[0]
        last = waves(*nodes[-1])
        ends.append((abs(last[0]) ** 2 - abs(last[1]) ** 2) / abs(v) ** 2)
        total = total + i / v
    g = (1 / R0 - total) / (1 / R0 + total)
    nodes = inward(list(trunk), g)
    source = abs(waves(*nodes[0])[0]) ** 2
    at = abs(nodes[-1][0]) ** 2
    return [e * at / source for e in ends], seen(list(trunk), g)


@case
def junction_of_two_lines(d):
    """5 m of 50 ohm, a plain junction, two 75-ohm quarter-wave sections ± 2 cm to 100 + j20 and
    50 ohm (in-phase sum)."""
    section = 0.25 * C0 / 145e6 * 0.66
    arms = [
        ([line(C75, d.flat(section, 0.02), 145e6)], of_impedance(100.0, 20.0)),
        ([line(C75, d.flat(section, 0.02), 145e6)], of_impedance(50.0, 0.0)),
    ]
    ends, g = joined(arms, [line(OWN, 5.0, 145e6)])
    return spread(
        -20 * np.log10(sum(np.sqrt(e) for e in ends)),
        swr=swr_rms(g),
        delivered=float(-10 * np.log10(sum(ends)).mean()),
    )


# --- baluns

def transformer(ratio):
    """Impedance of the far side over that of the near side."""
    n = np.sqrt(ratio)
    return 1 / n, 0.0, 0.0, n


def balun(db, across, ratio):
    """A loss between its design impedances: the share `across` by a conductance over the line, the
    rest by a resistance in it; then the ratio."""
    series = 2 * (10 ** (db * (1 - across) / 20) - 1) * R0
    shunt = 2 * (10 ** (db * across / 20) - 1) / R0
    m = times((1.0, 0.0, shunt, 1.0), (1.0, series, 0.0, 1.0))
    return times(m, transformer(ratio))


def balun_case(across, name):
    def f(d):
        share = d.rng.uniform(0, 1, DRAWS) if across is None else across
        parts = [balun(d.flat(0.3, 0.1), share, 4.0), line(OPEN600, 11.0, 7.1e6)]
        return spread(follow(parts, of_impedance(1500.0, 400.0), 0).loss())

    f.__name__ = name
    return f


case(balun_case(0.0, "balun_in_series"))
case(balun_case(1.0, "balun_across"))
case(balun_case(None, "balun_anywhere"))


@case
def balun_with_an_swr(d):
    """0.3 dB and SWR 1.3 between its design impedances, then 1:4; cables on both sides."""
    parts = [
        line(OWN, 3.0, 50.1e6),
        device(0.3, 0.3 / 2.3, d),
        transformer(4.0),
        line(RG6, 2.0, 50.1e6),
    ]
    g = of_impedance(150.0, 30.0)
    return spread(follow(parts, g).loss(), swr=swr_rms(seen(parts, g)))


# --- unequal division

@case
def unequal_divider(d):
    """70 % and 30 % to arms of SWR 2 and 1.5 after 2 m each; angles independent."""
    parts = [line(OWN, 2.0, 145e6)]
    arms = [(parts, of_swr(2.0, d)), (parts, of_swr(1.5, d))]
    g, first, each = branches(arms, [0.7, 0.3], 0.0)
    return spread(
        field(each),
        swr=swr_rms(g),
        delivered=float(-10 * np.log10(sum(s.net[-1] for s in each)).mean()),
    )


# --- checks of the script itself

def against_skrf():
    """Lines and cascades at single points by scikit-rf."""
    f = np.array([146.9e6])
    frequency = skrf.Frequency.from_f(f, unit="hz")

    def of(cable, metres):
        gamma, zc = constants(cable, f)
        media = skrf.media.DefinedGammaZ0(frequency, z0_port=R0, z0=zc, gamma=gamma)
        return media.line(metres, "m")

    for gamma in (0.0, of_impedance(38.0, -12.0), 0.6 * np.exp(2j)):
        network = of(A50, 1.2) ** of(C75, 17.35)
        s = network.s[0]
        there = abs(s[1, 0] / (1 - s[1, 1] * gamma)) ** 2 * (1 - abs(gamma) ** 2)
        back = s[0, 0] + s[0, 1] * s[1, 0] * gamma / (1 - s[1, 1] * gamma)
        parts = [line(A50, 1.2, 146.9e6), line(C75, 17.35, 146.9e6)]
        assert abs(-10 * np.log10(there) - follow(parts, gamma).loss()) < 1e-9
        assert abs(back - seen(parts, gamma)) < 1e-9


def build():
    against_skrf()
    return dict(
        comment=f"written by net.py; numpy {np.__version__}; {DRAWS} draws each",
        cases={name: f(Draw(name)) for name, f in CASES.items()},
    )


def differences(a, b, where=""):
    if isinstance(a, dict) and isinstance(b, dict):
        for key in sorted(a.keys() | b.keys()):
            if key not in a or key not in b:
                yield f"{where}.{key}: only on one side"
            else:
                yield from differences(a[key], b[key], f"{where}.{key}")
    elif isinstance(a, list) and isinstance(b, list) and len(a) == len(b):
        for k, (x, y) in enumerate(zip(a, b)):
            yield from differences(x, y, f"{where}[{k}]")
    elif isinstance(a, (int, float)) and isinstance(b, (int, float)):
        if not abs(a - b) <= 1e-6 * max(1.0, abs(a), abs(b)):
            yield f"{where}: {a} and {b}"
    elif a != b and not where.endswith(".comment"):
        yield f"{where}: {a} and {b}"


def rounded(x):
    """Eight significant digits: more would differ between mathematics libraries."""
    if isinstance(x, dict):
        return {k: rounded(v) for k, v in x.items()}
    if isinstance(x, list):
        return [rounded(v) for v in x]
    return float(f"{x:.8g}") if isinstance(x, float) else x


def main():
    path = HERE / "net.json"
    new = rounded(build())
    if "--check" in sys.argv[1:]:
        wrong = list(differences(json.loads(path.read_text()), new))
        print("\n".join(wrong) or f"net.json: {len(new['cases'])} cases agree")
        sys.exit(1 if wrong else 0)
    path.write_text(json.dumps(new, indent=1) + "\n")


if __name__ == "__main__":
    main()
