"""Independent values for the feedback and heat checks of tests/EightOhm.Published:

    /usr/bin/python3 tests/references/feedback_and_heat.py

Node equations solved as a linear system, complex phasors;
no formula of the product is copied.
"""

import numpy
from scipy import optimize, signal

from values import write

SCRIPT = "feedback_and_heat.py"


def loop(a, b, x=0.0, e=0.0, d=0.0):
    """The output of: v = x + e - b*out; out = a*v + d."""
    return numpy.linalg.solve(numpy.array([[1, b], [-a, 1]]), numpy.array([x + e, d]))[1]


def feedback():
    rows = []
    for rg, rf, a in [(100, 3.9e3, 1e5), (100, 2260, 2e4), (1e3, 1e3, 50), (47, 1e3, 1e3), (220, 4.7e3, 12)]:
        # The divider by its node equation: (out - v)/rf = v/rg with out = 1.
        b = numpy.linalg.solve(numpy.array([[1 / rf + 1 / rg]]), numpy.array([1 / rf]))[0]
        loop_gain = a * b
        closed = loop(a, b, x=1.0)
        step = 1e-20  # a derivative by a complex step: no difference, so no digits lost
        slope = loop(a * (1 + 1j * step), b, x=1.0).imag / step / closed
        rows.append((rg, rf, a, b, loop_gain, closed, closed * b - 1, slope, loop(a, b, d=1.0), loop(a, b, e=1e-3)))
    write("feedback.csv", ["R_g", "R_f", "A", "B_fb", "T", "A_CL", "error", "sensitivity", "after_gain", "at_node_1mV"], rows,
          "A feedback amplifier by its two node equations, signal and errors injected as sources", SCRIPT)


def one_pole():
    rows = []
    for pole, t0 in [(1e4, 8.0), (160.0, 999.0), (500.0, 2.5), (14.0, 5e4)]:
        def level(lf):
            t = t0 / (1 + 1j * numpy.exp(lf) / pole)
            return abs(t / (1 + t)) / (t0 / (1 + t0)) - numpy.sqrt(0.5)
        corner = numpy.exp(optimize.brentq(level, numpy.log(pole / 2), numpy.log(pole * t0 * 10), xtol=1e-14, rtol=1e-14))
        rows.append((pole, t0, corner))
    write("one-pole-loop.csv", ["f_pole", "T_0", "bandwidth"], rows, "Bandwidth of a one-pole loop: the frequency at which the closed loop is 3 dB down, by root finding", SCRIPT)
    rows = []
    for pole, t0, f in [(130.0, 8.5e3, 0.0), (130.0, 8.5e3, 130.0), (130.0, 8.5e3, 2e4), (5.0, 2e4, 1e3), (1e4, 12.0, 3e4), (1e4, 12.0, 10.0)]:
        w = 2 * numpy.pi * numpy.array([pole, f])
        rows.append((pole, t0, f, abs(signal.freqs([t0 * w[0]], [1.0, w[0]], worN=[w[1]])[1][0])))
    write("one-pole-gain.csv", ["f_pole", "T_0", "f", "T"], rows, "Loop gain of one pole over frequency, by scipy.signal.freqs of its transfer function", SCRIPT)


def harmonics():
    """Crossover 1.11 MHz, fundamental 20 kHz: each harmonic d meets T = f_c/(j n f)."""
    rows = [(n, d * 1e-6, 1.11e6 / (n * 2e4), abs(loop(1.11e6 / (2j * 1e4 * n), 1.0, d=d * 1e-6))) for n, d in ((2, 40), (3, 250), (5, 120), (7, 70), (9, 45))]
    write("loop-harmonics.csv", ["n", "d", "T", "left"], rows, "Harmonics made after the gain of a one-pole loop, each by its own complex loop gain", SCRIPT)


def heat_network(ta, p, n, other, jc, cs, sa):
    """Conductances between n junctions, n cases and a sink; a tiny resistance stands for none."""
    size = 2 * n + 1
    g, q = numpy.zeros((size, size)), numpy.zeros(size)

    def join(i, j, r):
        for a, b in ((i, j), (j, i)):
            g[a, a] += 1 / r
            g[a, b] -= 1 / r

    for i in range(n):
        join(2 * i, 2 * i + 1, jc)
        join(2 * i + 1, size - 1, cs)
        q[2 * i] = p / n
    g[-1, -1] += 1 / sa
    q[-1] = other
    return ta + numpy.linalg.solve(g, q)[0]


def shared_sink():
    rows = []
    for ta, p, n, other, jc, cs, sa in [(40, 120, 6, 0, 0.83, 0.35, 0.40), (40, 120, 6, 20, 0.83, 0.35, 0.40), (25, 30, 1, 0, 1.5, 0.5, 2.0), (50, 80, 4, 35, 1.0, 0.2, 0.6), (30, 55, 3, 5.5, 1.17, 0.7, 0.9)]:
        limit = 125.0
        allowed = optimize.brentq(lambda r: heat_network(ta, p, n, other, jc, cs, r) - limit, 1e-3, 50, xtol=1e-14, rtol=1e-14)
        rows.append((ta, p, n, other, jc, cs, sa, heat_network(ta, p, n, other, jc, cs, sa), limit, allowed))
    write("shared-sink.csv", ["T_a", "P", "n", "P_other", "theta_JC", "theta_CS", "theta_SA", "T_J", "limit", "allowed"], rows,
          "Equal devices on a shared sink as a network of thermal conductances, solved as a linear system; the allowed sink by root finding", SCRIPT)


def parallel_paths():
    rows = []
    for a, b in [(1.0, 1.0), (0.5, 62.0), (13.0, 4.0), (2.2, 0.9)]:
        # One watt into a node with two ways to the air.
        rows.append((a, b, numpy.linalg.solve(numpy.array([[1 / a + 1 / b]]), numpy.array([1.0]))[0]))
    write("parallel-paths.csv", ["theta_1", "theta_2", "theta"], rows, "One watt into a node with two ways to the air: its rise", SCRIPT)


if __name__ == "__main__":
    feedback()
    one_pole()
    harmonics()
    shared_sink()
    parallel_paths()
