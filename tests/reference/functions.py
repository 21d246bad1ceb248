"""Reference values of special functions, from scipy and numpy's integration.

    python3 tests/reference/functions.py           writes functions.json beside this file
    python3 tests/reference/functions.py --check   recomputes and compares with the committed file
"""

import json
import pathlib
import sys

import numpy as np
import scipy
from scipy import integrate, optimize, special, stats

from network import differences

HERE = pathlib.Path(__file__).parent
C0 = 299_792_458.0


def bessel():
    """exp(-z) I_n(z) and exp(z) K_n(z) on the 45 degree ray."""
    out = []
    for size in (0.05, 0.3, 1, 2, 4, 6, 8, 10, 10.9, 11.1, 12, 15, 20, 40, 100, 500):
        z = size * np.exp(0.25j * np.pi)
        turn = np.exp(-1j * z.imag)  # scipy scales I by exp(-|Re z|) only
        values = [special.ive(0, z) * turn, special.ive(1, z) * turn, special.kve(0, z), special.kve(1, z)]
        out.append(dict(size=float(size), values=[[float(v.real), float(v.imag)] for v in values]))
    return out


def student():
    """Two-sided quantile of Student's t for two sigma."""
    p = 2 * stats.norm.cdf(2) - 1
    return [dict(dof=float(d), k=float(stats.t.ppf(0.5 + p / 2, d))) for d in (1, 2, 3, 4.5, 8, 20, 50, 300)]


def te11():
    out = []
    for inner, outer, er in ((0.0888, 0.285, 2.3), (0.0362, 0.1175, 2.07), (0.341, 0.785, 1.0), (0.02, 0.9, 1.2), (0.95, 1.0, 2.0)):
        a, b = inner * 0.0254 / 2, outer * 0.0254 / 2

        def f(k):
            return special.jvp(1, k * a) * special.yvp(1, k * b) - special.jvp(1, k * b) * special.yvp(1, k * a)

        guess = 2 / (a + b)
        grid = np.linspace(0.7 * guess, 1.2 * guess, 2001)
        values = f(grid)
        first = np.nonzero(values[:-1] * values[1:] < 0)[0][0]
        k = optimize.brentq(f, grid[first], grid[first + 1], xtol=1e-12)
        out.append(dict(inner_m=inner * 0.0254, outer_m=outer * 0.0254, er=er, hz=k * C0 / (2 * np.pi * np.sqrt(er))))
    return out


def cin():
    return [dict(x=float(x), value=float(np.euler_gamma + np.log(x) - special.sici(x)[1])) for x in (0.1, 1, 3, 2 * np.pi, 12, 18)]


def collinear():
    """Directivity by integration over the polar angle."""
    out = []
    for n in (1, 2, 3, 4, 8, 16):
        for spacing in (0.5, 0.65, 0.75, 0.9):

            def power(theta):
                c = np.cos(theta)
                element = np.cos(np.pi / 2 * c) / np.sin(theta)
                array = sum(np.exp(2j * np.pi * spacing * i * c) for i in range(n)) / n
                return (element * abs(array)) ** 2 * np.sin(theta)

            total = integrate.quad(power, 1e-9, np.pi - 1e-9, limit=500, epsabs=1e-12)[0]
            out.append(dict(count=n, spacing=spacing, dbi=float(10 * np.log10(2 / total))))
    return out


def classic_error():
    """Worst error of the classic loss formula: 720 load angles, 400 lengths up to a wavelength.

    50 ohm, velocity factor 0.659, 0.444 and 0.00126 dB/100 ft; |reflection| in 50 ohm.
    """
    out = []
    turn = np.exp(2j * np.pi * np.arange(720) / 720)
    for f in (3.6e6, 14e6, 50e6, 145e6):
        mhz, wavelength = f / 1e6, C0 * 0.659 / f
        ac, ad = 0.444 / 30.48 * np.sqrt(mhz), 0.00126 / 30.48 * mhz
        neper = np.log(10) / 20
        beta = 2 * np.pi / wavelength
        zc = 50 * (1 - 1j * (ac - ad) * neper / beta)
        for swr in (2, 5, 10):
            r = (swr - 1) / (swr + 1)
            load = 50 * (1 + r * turn) / (1 - r * turn)
            worst = 0.0
            for length in wavelength * np.arange(1, 401) / 400:
                gl = ((ac + ad) * neper + 1j * beta) * length
                v = load * np.cosh(gl) + zc * np.sinh(gl)
                i = np.cosh(gl) + load / zc * np.sinh(gl)
                exact = 10 * np.log10((v * i.conj()).real / load.real)
                a = 10 ** ((ac + ad) * length / 10)
                classic = 10 * np.log10((a * a - r * r) / (a * (1 - r * r)))
                worst = max(worst, float(np.abs(exact - classic).max()))
            out.append(dict(f_hz=f, swr=float(swr), db=worst))
    return out


def build():
    return dict(
        comment=f"written by functions.py; numpy {np.__version__}, scipy {scipy.__version__}",
        bessel=bessel(),
        student=student(),
        te11=te11(),
        cin=cin(),
        collinear=collinear(),
        classic_error=classic_error(),
    )


def main():
    path = HERE / "functions.json"
    new = build()
    if "--check" in sys.argv[1:]:
        wrong = list(differences(json.loads(path.read_text()), new))
        print("\n".join(wrong) or "functions.json agrees")
        sys.exit(1 if wrong else 0)
    path.write_text(json.dumps(new, indent=1) + "\n")


if __name__ == "__main__":
    main()
