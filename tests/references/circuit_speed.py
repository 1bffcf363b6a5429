"""The time of small-signal sweeps in numpy, for docs/speed.md:

    OPENBLAS_NUM_THREADS=1 /usr/bin/python3 tests/references/circuit_speed.py

(G + s C) x = b for full complex matrices of N unknowns at 1000 frequencies, all in one call; the matrices are given. The least of 40 runs.
"""

import time

import numpy

FREQUENCIES = 1000

for n in (7, 24, 25, 40):
    random = numpy.random.default_rng(n)
    g = (random.random((n, n)) - 0.5) * 1e-3 + n * 1e-3 * numpy.eye(n)
    c = (random.random((n, n)) - 0.5) * 1e-10 + n * 1e-10 * numpy.eye(n)
    b = numpy.zeros((n, 1), complex)
    b[0] = 1e-3
    s = 2j * numpy.pi * numpy.logspace(0, 8, FREQUENCIES)
    least = float("inf")
    for _ in range(40):
        start = time.perf_counter()
        x = numpy.linalg.solve(g[None] + s[:, None, None] * c[None], numpy.broadcast_to(b, (FREQUENCIES, n, 1)))
        least = min(least, time.perf_counter() - start)
    print(f"N = {n}: {1e3 * least:.2f} ms")
