"""A reading corrected by a calibration certificate: values for crates/eval/tests/certificate.rs.

    python3 tests/reference/certificate.py

The correction is interpolated along the logarithms of frequency and level (numpy.interp, first along the level of each frequency). The
points of the certificate are independent; what two readings share of them is in the derivative of the loss by each point. The loss and
its uncertainty are computed once more by drawing the points and the repeatability (100,000 times).
"""

import numpy as np

MHZ = np.array([50.0, 440.0])
LEVELS = np.array([10.0, 100.0])
PERCENT = np.array([[1.6, -0.8], [2.9, 2.2]])
U_PERCENT = np.array([[1.2, 1.0], [1.4, 1.2]])
K = 2.0
REPEATABILITY = 0.006
AT, BASE, PIECE = 145.3, 44.0, 18.3


def factor(points, mhz, watts):
    """Correction factor, from an array (frequency, level) of factors."""
    rows = [np.interp(np.log(watts), np.log(LEVELS), row) for row in points]
    return np.interp(np.log(mhz), np.log(MHZ), rows)


def loss(points, base=BASE, piece=PIECE):
    return 10.0 * np.log10(base * factor(points, AT, base) / (piece * factor(points, AT, piece)))


def main():
    f = 1.0 + PERCENT / 100.0
    u = U_PERCENT / 100.0 / K
    print("factors", factor(f, AT, BASE), factor(f, AT, PIECE))
    print("loss", loss(f))
    by_points = 0.0
    for i in range(2):
        for j in range(2):
            up, down = f.copy(), f.copy()
            up[i, j] += 1e-6
            down[i, j] -= 1e-6
            by_points += ((loss(up) - loss(down)) / 2e-6 * u[i, j]) ** 2
    # the two baselines are equal, and each has its own repeatability
    per = 10.0 / np.log(10.0)
    scatter = per * REPEATABILITY * np.sqrt(1.0 + 0.5)
    print("U of the certificate", 2.0 * np.sqrt(by_points), "U in all", 2.0 * np.hypot(np.sqrt(by_points), scatter))
    rng = np.random.default_rng(7)
    many = []
    for _ in range(100_000):
        points = f + u * rng.normal(size=f.shape)
        base = BASE * (1.0 + REPEATABILITY * rng.normal(size=2).mean())
        piece = PIECE * (1.0 + REPEATABILITY * rng.normal())
        many.append(10.0 * np.log10(base * factor(points, AT, BASE) / (piece * factor(points, AT, PIECE))))
    print("simulated", np.mean(many), 2.0 * np.std(many))
    one = factor(f, AT, PIECE)
    single = 0.0
    for i in range(2):
        for j in range(2):
            up = f.copy()
            up[i, j] += 1e-6
            single += ((factor(up, AT, PIECE) - one) / 1e-6 * u[i, j] / one) ** 2
    print("one reading: U dB", 2.0 * per * np.sqrt(single))


main()
