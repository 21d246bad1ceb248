"""Times reading of a two-port of 100,001 points beside scikit-rf, in one run.

    cargo build --release -p downlead-touchstone --example time_read
    python3 crates/touchstone/benches/beside_scikit_rf.py [target/release/examples/time_read]

Both are timed by turns on the same file (RI, MA and DB), with the reading from the disk's cache;
printed is the ratio of the best times and that of the middle ones. Needs scikit-rf (tests/reference/requirements.txt).
"""

import json
import pathlib
import subprocess
import sys
import tempfile
import time

import numpy as np
import skrf

POINTS = 100_001
ROUNDS = 5


def network():
    """A lossy, mismatched line from 1 to 1001 MHz, with the noise of an analyser."""
    rng = np.random.default_rng(1)
    f = np.linspace(1e6, 1001e6, POINTS)
    through = np.exp(-(1e-4 * np.sqrt(f / 1e6) + 1j * f / 27e6))
    s = np.empty((POINTS, 2, 2), complex)
    s[:, 0, 0] = s[:, 1, 1] = 0.1 * (1 - through**2)
    s[:, 0, 1] = s[:, 1, 0] = through
    s += 1e-4 * (rng.normal(size=s.shape) + 1j * rng.normal(size=s.shape))
    return skrf.Network(frequency=skrf.Frequency.from_f(f, unit="hz"), s=s, z0=50)


def main():
    default = pathlib.Path("target/release/examples/time_read")
    program = pathlib.Path(sys.argv[1]) if len(sys.argv) > 1 else default
    net = network()
    with tempfile.TemporaryDirectory() as folder:
        for form in ("ri", "ma", "db"):
            path = pathlib.Path(folder) / f"line_{form}.s2p"
            path.write_text(net.write_touchstone("x", form=form, return_string=True))
            theirs, best, middle = [], [], []
            for _ in range(ROUNDS):
                start = time.perf_counter()
                read = skrf.io.Touchstone(str(path))
                theirs.append(time.perf_counter() - start)
                assert read.s.shape == (POINTS, 2, 2)
                out = subprocess.run([program, path, "10"], capture_output=True, text=True, check=True)
                result = json.loads(out.stdout)
                assert result["points"] == POINTS
                best.append(result["best"])
                middle.append(result["middle"])
            mega = path.stat().st_size / 1e6
            print(
                "%s: %.1f MB; scikit-rf %s %.3f s, here %.4f s (%.0f MB/s): %.0f times as fast (middle %.0f)"
                % (
                    form.upper(),
                    mega,
                    skrf.__version__,
                    min(theirs),
                    min(best),
                    mega / min(best),
                    min(theirs) / min(best),
                    np.median(theirs) / np.median(middle),
                )
            )


if __name__ == "__main__":
    main()
