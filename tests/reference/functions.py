"""Reference values of special functions, from scipy and numpy's integration.

    python3 tests/reference/functions.py           writes functions.json beside this file
    python3 tests/reference/functions.py --check   recomputes and compares with the committed file
"""

import json
import pathlib
import sys

import numpy as np
import scipy
from scipy import integrate, special, stats

from network import differences

HERE = pathlib.Path(__file__).parent


def student():
    """Two-sided quantile of Student's t for two sigma."""
    p = 2 * stats.norm.cdf(2) - 1
    return [dict(dof=float(d), k=float(stats.t.ppf(0.5 + p / 2, d))) for d in (1, 2, 3, 4.5, 8, 20, 50, 300)]


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


def build():
    return dict(
        comment=f"written by functions.py; numpy {np.__version__}, scipy {scipy.__version__}",
        student=student(),
        cin=cin(),
        collinear=collinear(),
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
