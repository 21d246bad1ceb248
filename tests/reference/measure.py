"""Reference values for bench measurement: distributions, fits, trends, lines from one end.

    python3 tests/reference/measure.py           writes ../../crates/physics/tests/data/measure.json
    python3 tests/reference/measure.py --check   recomputes and compares with the committed file
"""

import json
import pathlib
import sys

import numpy as np
import scipy
import skrf
from scipy import optimize, stats

from network import differences

OUT = pathlib.Path(__file__).parents[2] / "crates/physics/tests/data/measure.json"


def chi_square():
    grid = [(0.01, 1), (0.62, 3), (3.84, 1), (5, 5), (12.3, 4), (1, 8), (30, 8), (80, 100), (150, 100), (400, 20), (0.5, 2.5)]
    return [dict(x=float(x), dof=float(d), p=float(stats.chi2.sf(x, d))) for x, d in grid]


def normal():
    return [dict(p=float(p), z=float(stats.norm.ppf(p))) for p in (1e-12, 1e-4, 0.005, 0.025, 0.3, 0.5, 0.8, 0.975, 0.9995)]


def student():
    return [dict(outside=o, dof=float(d), t=float(stats.t.isf(o / 2, d))) for o in (0.05, 0.01, 1e-5) for d in (1, 2, 3.5, 8, 30, 400)]


def curve(mhz, k1, k2):
    return k1 * np.sqrt(mhz) + k2 * mhz


# name, MHz, k1 and k2 (dB/100 m) of the truth, relative uncertainty, what is wrong with which point
SETS = [
    ("three decades", [1, 10, 100, 1000], 0.58, 0.011, 0.03, {}),
    ("two bands", [145, 435], 0.58, 0.011, 0.03, {}),
    ("four bands", [14, 50, 145, 435], 0.58, 0.011, 0.03, {}),
    ("an outlier", [3.7, 7.1, 14.2, 28.6, 50.3, 145.3, 434.5], 0.41, 0.0041, 0.02, {4: 1.15}),
    ("no dielectric", [2, 10, 50, 200], 1.2, 0.0, 0.04, {3: 0.9}),
    ("no conductor", [20, 60, 200, 600], 0.0, 0.02, 0.04, {0: 0.8}),
    ("repeated frequencies", [14.2, 14.2, 145, 145, 434.5, 434.5], 0.3, 0.003, 0.05, {}),
    ("three alike", [144, 146, 148], 0.58, 0.011, 0.03, {}),
]


def fits():
    rng = np.random.default_rng(19)
    out = []
    for name, mhz, k1, k2, relative, wrong in SETS:
        f = np.array(mhz, float)
        u = relative * curve(f, k1, k2) * rng.uniform(0.7, 1.4, f.size)
        a = curve(f, k1, k2) + u * rng.normal(size=f.size)
        for i, factor in wrong.items():
            a[i] *= factor
        design = np.column_stack([np.sqrt(f), f])
        weighted = design / u[:, None]
        k, norm = optimize.nnls(weighted, a / u)
        free = k > 0
        # covariance of the free coefficients, from the general fitter
        model = lambda x, *c: design[:, free] @ np.array(c)
        _, cov = optimize.curve_fit(model, f, a, p0=k[free], sigma=u, absolute_sigma=True)
        full = np.zeros((2, 2))
        full[np.ix_(free, free)] = cov
        hat = np.diag(weighted @ full @ weighted.T)
        residuals = (a - design @ k) / u
        at = np.array([7.1, 100, 440, 1296])
        v = np.column_stack([np.sqrt(at), at])
        dof = f.size - int(free.sum())
        scaled = weighted / np.linalg.norm(weighted, axis=0)
        out.append(
            dict(
                name=name,
                mhz=f.tolist(),
                a=a.tolist(),
                u=u.tolist(),
                k1=float(k[0]),
                k2=float(k[1]),
                cov=full.tolist(),
                chi2=float(norm**2),
                p=float(stats.chi2.sf(norm**2, dof)) if dof else None,
                dof=dof,
                residuals=residuals.tolist(),
                studentised=(residuals / np.sqrt(1 - hat)).tolist() if dof else None,
                condition=float(np.linalg.cond(scaled) ** 2),
                at_mhz=at.tolist(),
                predicted=(v @ k).tolist(),
                u_predicted=np.sqrt(np.einsum("ij,jk,ik->i", v, full, v)).tolist(),
            )
        )
    return out


def trends():
    """Weighted straight lines by numpy.polyfit."""
    rng = np.random.default_rng(7)
    out = []
    for n, slope, scatter in ((2, 0.1, 1.0), (4, 0.02, 1.0), (6, 0.05, 1.0), (9, 0.0, 1.0), (5, 0.1, 6.0), (12, -0.03, 0.7)):
        days = np.sort(rng.integers(0, 4000, n)).astype(float)
        u = rng.uniform(0.02, 0.08, n)
        value = 1.5 + slope * days / 365.25 + scatter * u * rng.normal(size=n)
        years = days / 365.25
        (b, a), cov = np.polyfit(years, value, 1, w=1 / u, cov="unscaled")
        at = 2000 / 365.25
        chi2 = float((((value - a - b * years) / u) ** 2).sum())
        out.append(
            dict(
                points=np.column_stack([days, value, u]).tolist(),
                per_year=float(b),
                u_per_year=float(np.sqrt(cov[0, 0])),
                chi2=chi2,
                p=float(stats.chi2.sf(chi2, n - 2)) if n > 2 else None,
                at_2000=float(a + b * at),
                u_at_2000=float(np.sqrt(cov[1, 1] + 2 * cov[0, 1] * at + cov[0, 0] * at**2)),
            )
        )
    return out


def phases():
    rng = np.random.default_rng(3)
    out = []
    for n, span in ((5, 4e6), (40, 60e6)):
        f = 100e6 + np.linspace(0, span, n)
        phase = 30 - 91.1e-6 * f + rng.normal(size=n) * 0.8
        fit = stats.linregress(f, phase)
        wrapped = (phase + 180) % 360 - 180
        out.append(dict(points=np.column_stack([f, wrapped]).tolist(), slope=float(fit.slope), u=float(fit.stderr)))
    return out


def lines():
    """Input impedances of lossy lines with open and short ends, by scikit-rf."""
    out = []
    for mhz, db, z0, metres in ((1.9, 0.12, 51.0 - 1.5j, 20.0), (14.2, 0.6, 52.0 - 0.4j, 25.0), (145.0, 2.1, 48.5 - 0.1j, 25.3), (435.0, 7.7, 75.0 + 0.05j, 31.0)):
        f = skrf.Frequency(mhz, mhz, 1, "MHz")
        beta = 2 * np.pi * mhz * 1e6 / (299_792_458.0 * 0.66)
        gamma = db / metres * np.log(10) / 20 + 1j * beta
        medium = skrf.media.DefinedGammaZ0(f, gamma=gamma, z0=z0, z0_port=50)
        line = medium.line(metres, "m")
        half = []
        z = []
        for end in (medium.open(), medium.short()):
            net = line ** end
            net.renormalize(50)
            s = complex(net.s[0, 0, 0])
            half.append(-20 * np.log10(abs(s)))
            z.append(50 * (1 + s) / (1 - s))
        out.append(
            dict(
                loss_db=db,
                zc=[z0.real, z0.imag],
                phase=float((beta * metres) % np.pi),
                open=[z[0].real, z[0].imag],
                short=[z[1].real, z[1].imag],
                return_loss=[float(h) for h in half],
            )
        )
    return out


def build():
    return dict(
        comment=f"written by tests/reference/measure.py; numpy {np.__version__}, scipy {scipy.__version__}, scikit-rf {skrf.__version__}",
        chi_square=chi_square(),
        normal=normal(),
        student=student(),
        fits=fits(),
        trends=trends(),
        phases=phases(),
        lines=lines(),
    )


def main():
    new = build()
    if "--check" in sys.argv[1:]:
        wrong = list(differences(json.loads(OUT.read_text()), new))
        print("\n".join(wrong) or "measure.json agrees")
        sys.exit(1 if wrong else 0)
    OUT.write_text(json.dumps(new, indent=1) + "\n")


if __name__ == "__main__":
    main()
