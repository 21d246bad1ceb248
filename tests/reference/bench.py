"""Values of bench tests that need a matrix: chi squared with causes that several readings share.

    python3 tests/reference/bench.py     prints what crates/physics/tests/measure_shared.rs holds
"""

import numpy as np


def chi_squared(y, columns, u, common):
    """Generalised least squares with the full covariance (GUM, JCGM 100:2008, 5.2.2)."""
    y, x = np.array(y), np.column_stack(columns)
    shared = np.array(common)
    covariance = shared.T @ shared
    own = np.maximum(np.array(u) ** 2 - np.diag(covariance), 0.01 * np.array(u) ** 2)
    inverse = np.linalg.inv(covariance + np.diag(own))
    b = np.linalg.solve(x.T @ inverse @ x, x.T @ inverse @ y)
    left = y - x @ b
    return left @ inverse @ left


def bands():
    measured = np.array([0.9, 1.62, 2.75, 4.9])
    expected = np.array([1.0, 1.5, 2.5, 4.6])
    u = np.array([0.09, 0.10, 0.11, 0.14])
    alike, turning = np.full(4, 0.08), np.array([0.03, -0.02, 0.04, 0.01])
    print("mean over bands:", [
        round(chi_squared(np.log(measured / expected), [np.ones(4)], u / expected, rows), 9)
        for rows in (np.zeros((1, 4)), [alike / expected], [alike / expected, turning / expected])
    ])


def curve():
    mhz = np.array([14.2, 50.3, 145.3, 434.5])
    a = np.array([0.0165, 0.0302, 0.0541, 0.1007])
    u = np.array([0.0012, 0.0013, 0.0015, 0.0031])
    common = [np.full(4, 0.0009)]
    columns = [np.sqrt(mhz), mhz]
    print("fit:", [round(chi_squared(a, columns, u, rows), 9) for rows in (np.zeros((1, 4)), common)])


bands()
curve()
