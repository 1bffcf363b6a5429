"""Safe area, load ellipses and limiter networks for tests/EightOhm.Published. Run with Debian's python3-scipy:

    /usr/bin/python3 tests/references/safe_area.py

The area is interpolated on its log-log chart by numpy, the ellipse is scanned densely over level and angle and finished by a simplex search;
the limiter is a network of node equations.
"""

import json

import numpy
from scipy import optimize

from values import HERE, write

SCRIPT = "safe_area.py"
CARD = json.loads((HERE / "../../notebooks/course/cards/output-npn.json").read_text(encoding="utf-8"))


def number(text):
    return float(text.split()[0])


class Area:
    """The dc line (pulse 0) or a pulse line of the card, derated."""

    def __init__(self, pulse, case, left):
        lines = {0.0 if l["pulse"] == "dc" else number(l["pulse"]) / 1e3: l for l in CARD["safeArea"]["lines"]}
        line = lines[pulse]
        self.v = numpy.array([number(p["V_CE"]) for p in line["points"]])
        self.i = numpy.array([number(p["I_C"]) for p in line["points"]])
        self.start = number(line["secondBreakdownFrom"])
        junction, reference = number(CARD["T_J"]), number(CARD["T_ref"])
        self.heat = numpy.interp(case, [reference, junction], [1, 0])
        self.broken = numpy.interp(case, [reference, junction], [1, left])
        self.watts = self.start * self.i[numpy.argwhere(self.v == self.start)[0, 0]]

    def limit(self, v):
        second = numpy.where(v >= self.start, self.broken * 10 ** numpy.interp(numpy.log10(v), numpy.log10(self.v), numpy.log10(self.i)), numpy.inf)
        return numpy.minimum(numpy.minimum(self.heat * self.watts / v, second), self.i[0])


def half_wave(rail, peak, z, phase, re, n, level, angle):
    """Voltage and current of one transistor by phasors: the load's current is the reference."""
    load = z * numpy.exp(1j * numpy.radians(phase))
    current = level * peak / abs(load)
    wave = numpy.exp(1j * angle)
    out = (current * load * wave).imag
    each = (current / n * wave).imag
    return rail - out - each * re, each, out


def worst(value):
    level, angle = numpy.meshgrid(numpy.linspace(0.01, 1, 397), numpy.linspace(0.001, numpy.pi - 0.001, 4001), indexing="ij")
    found = value(level, angle)
    order = numpy.argsort(found, axis=None)[-1]
    l0, a0 = level.flat[order], angle.flat[order]
    best = optimize.minimize(lambda x: -value(numpy.clip(x[0], 0.01, 1), x[1]), [l0, a0], method="Nelder-Mead",
                             options={"xatol": 1e-10, "fatol": 1e-14, "maxiter": 4000, "initial_simplex": [[l0, a0], [l0 - 0.003, a0], [l0, a0 + 0.001]]})
    return max(-best.fun, found.flat[order]), numpy.clip(best.x[0], 0.01, 1), best.x[1]


def uses():
    cases = [
        # rail, peak, Z, phase, R_E, n, case, pulse, left of second breakdown
        (46, 37.95, 4, 45, 0.22, 3, 80, 0.1, 0), (46, 37.95, 4, 45, 0.22, 3, 80, 0, 0), (46, 37.95, 4, 45, 0.22, 2, 80, 0.1, 0),
        (46, 37.95, 4, 60, 0.22, 3, 80, 0.1, 0), (46, 37.95, 4, -60, 0.22, 3, 80, 0, 0.5), (46, 37.95, 4, 0, 0.22, 3, 80, 0.1, 0),
        (46, 37.95, 4, 0, 0.22, 3, 80, 0, 0), (50.6, 40, 8, 45, 0.22, 3, 80, 0.1, 0), (57, 52, 4, 60, 0.22, 3, 80, 0.1, 0.3),
        (57, 52, 4, 90, 0, 4, 60, 0, 0.6), (46, 44.5, 4, 30, 0.1, 5, 25, 0, 0), (70, 60, 6, 75, 0.33, 3, 100, 0.1, 1),
    ]
    rows = []
    for rail, peak, z, phase, re, n, case, pulse, left in cases:
        area = Area(pulse, case, left)

        def use(level, angle):
            v, i, _ = half_wave(rail, peak, z, phase, re, n, level, angle)
            return i / area.limit(numpy.maximum(v, 1e-3))

        most, level, angle = worst(use)
        v, i, out = half_wave(rail, peak, z, phase, re, n, level, angle)
        rows.append((rail, peak, z, phase, re, n, case, pulse, left, most, v, i, level))
    write("safe-area-use.csv", ["V", "V_p", "Z", "phi", "R_E", "n", "T_C", "pulse", "left", "use", "V_CE", "I", "level"], rows,
          "Worst use of the invented card's safe area along load ellipses at every level: dense scan, then a simplex search; pulse 0 is dc", SCRIPT)


def pieces():
    rows = []
    for v1, i1, v2, i2, x, power, tj, tc, tref, left, f in [
        (50, 4.0, 100, 1.0, 0.3, 200, 150, 80, 25, 0.0, 20), (50, 5.0, 80, 2.0, 0.6, 250, 200, 125, 25, 0.4, 1e3),
        (10, 15, 50, 3.0, 0.9, 150, 150, 25, 25, 0.2, 33), (100, 0.9, 200, 0.2, 0.05, 40, 175, 170, 30, 1.0, 20e3), (5, 2, 7, 1.9, 0.5, 10, 150, 0, 25, 0.5, 47)]:
        v = 10 ** (numpy.log10(v1) * (1 - x) + numpy.log10(v2) * x)
        between = 10 ** numpy.interp(numpy.log10(v), numpy.log10([v1, v2]), numpy.log10([i1, i2]))
        by_heat = optimize.brentq(lambda i: i * v / power - 1, 1e-6, 1e6, xtol=1e-300, rtol=1e-15)
        half = optimize.brentq(lambda t: numpy.sin(2 * numpy.pi * f * t), 0.3 / f, 0.7 / f, xtol=1e-300, rtol=1e-15)
        heat = numpy.interp(tc, [tref, tj], [1, 0])
        rows.append((v1, i1, v2, i2, v, power, tj, tc, tref, left, f, between, by_heat, heat, numpy.interp(tc, [tref, tj], [1, left]), half))
    write("safe-area-pieces.csv", ["V_1", "I_1", "V_2", "I_2", "V", "P", "T_J", "T_C", "T_ref", "k_SB", "f", "between", "by_heat", "k_th", "k_2", "half"], rows,
          "Pieces of a safe area: log-log interpolation and derating by numpy's interp, heat and half period by root finding", SCRIPT)


def network(vbe, r1, r2, r3, re, v, r4=numpy.inf, span=0.0):
    """Nodes e and b against the output; b is held at vbe, no current into the sense transistor. The diode of r4 conducts or it does not."""

    def solve(conducts):
        g4 = 1 / r4 if conducts else 0.0
        far = v - span  # the far end, from the output
        # unknowns: e, b, and the current of R_E
        matrix = numpy.array([
            [1 / r1, -(1 / r1 + 1 / r2 + 1 / r3 + g4), 0.0],
            [0.0, 1.0, 0.0],
            [1.0, 0.0, -re],
        ])
        e, b, i = numpy.linalg.solve(matrix, numpy.array([-v / r3 - g4 * far, vbe, 0.0]))
        return i, b - far

    i, across = solve(True)
    return i if across > 0 and numpy.isfinite(r4) else solve(False)[0]


def limiters():
    rows = []
    for vbe, r1, r2, r3, r4, re, span, v in [
        (0.65, 220, 390, 22e3, 30e3, 0.22, 46, 0), (0.65, 220, 390, 22e3, 30e3, 0.22, 46, 46), (0.53, 220, 390, 22e3, 30e3, 0.22, 46, 20),
        (0.53, 220, 390, 22e3, 15e3, 0.22, 45.3, 46.5), (0.6, 1e3, 1e9, 91e3, 24e3, 0.22, 23, 5), (0.65, 470, 1e3, 47e3, 20e3, 0.1, 30, 12)]:
        single = network(vbe, r1, r2, r3, re, v)
        double = network(vbe, r1, r2, r3, re, v, r4, span)
        zero = optimize.brentq(lambda x: network(vbe, r1, r2, r3, re, x), 0, 1e5, xtol=1e-12, rtol=1e-15)
        # Back: two points of the single slope, their two equations solved for the conductances.
        va, vb = v, v + 17.0
        ia, ib = single, network(vbe, r1, r2, r3, re, vb)
        g2, g3 = numpy.linalg.solve(numpy.array([[vbe, vbe - va], [vbe, vbe - vb]]), numpy.array([(ia * re - vbe) / r1, (ib * re - vbe) / r1]))
        low = span * 0.4
        wanted = network(vbe, r1, r2, r3, re, low, r4, span)
        back4 = optimize.brentq(lambda lnr: network(vbe, r1, r2, r3, re, low, numpy.exp(lnr), span) / wanted - 1, numpy.log(1e3), numpy.log(1e6), xtol=1e-14, rtol=1e-15)
        rows.append((vbe, r1, r2, r3, r4, re, span, v, single, double, zero, va, ia, vb, ib, 1 / g3, g2, low, wanted, network(vbe, r1, r2, r3, re, low), numpy.exp(back4),
                     vbe / re, r1 * (zero / vbe) - r1, 25 + v, numpy.polyval([-2.1e-3, vbe + 25 * 2.1e-3], 25 + v)))
    write("limiter.csv", ["V_BE", "R_1", "R_2", "R_3", "R_4", "R_E", "V_S", "V", "single", "double", "zero", "V_a", "I_a", "V_b", "I_b", "back_3", "back_2", "low", "wanted", "at_low", "back_4",
                          "plain", "alone", "T", "sense"], rows,
          "Voltage-current limiter by its node equations (numpy.linalg.solve), the diode conducting or not; resistors back by solving the two points' equations", SCRIPT)


def verdicts():
    """The limiter against area and loads: margins over dense scans."""
    rows = []
    for r1, r2, r3, re, vbe, case, pulse, rail, peak, z, phase, n in [
        (220, 390, 22e3, 0.22, 0.65, 80, 0.1, 46, 37.95, 4, 45, 3), (220, 390, 22e3, 0.22, 0.53, 80, 0.1, 46, 37.95, 4, 45, 3),
        (220, 390, 22e3, 0.22, 0.65, 80, 0.1, 46, 37.95, 4, 60, 3), (220, 390, 22e3, 0.22, 0.65, 80, 0, 46, 37.95, 4, 0, 3), (330, 330, 33e3, 0.22, 0.6, 60, 0.1, 50, 42, 8, 45, 2)]:
        area = Area(pulse, case, 0)

        def at(v):
            return optimize.brentq(lambda i: network(vbe, r1, r2, r3, re, v + i * re) - i, -50, 50, xtol=1e-13)

        grid = numpy.linspace(0.1, 200, 5000)
        ratio = numpy.array([at(v) for v in grid]) / area.limit(grid)
        k = ratio.argmax()
        found = optimize.minimize_scalar(lambda v: -at(v) / area.limit(v), bounds=(max(grid[k] - 0.1, 0.1), grid[k] + 0.1), method="bounded", options={"xatol": 1e-10})
        line = [network(vbe, r1, r2, r3, re, 0.0), network(vbe, r1, r2, r3, re, 1.0)]

        def need(level, angle):
            _, i, out = half_wave(rail, peak, z, phase, re, n, level, angle)
            return i / numpy.maximum(line[0] + (line[1] - line[0]) * (rail - out), 1e-12)

        rows.append((r1, r2, r3, re, vbe, case, pulse, rail, peak, z, phase, n, 1 / max(-found.fun, ratio[k]), 1 / worst(need)[0]))
    write("limiter-verdict.csv", ["R_1", "R_2", "R_3", "R_E", "V_BE", "T_C", "pulse", "V", "V_p", "Z", "phi", "n", "area", "load"], rows,
          "Limiter against the invented card's safe area (over the transistor's own voltage) and against a load at every level, by dense scans", SCRIPT)


if __name__ == "__main__":
    uses()
    pieces()
    limiters()
    verdicts()
