"""Independent values for the load, cable and damping checks of tests/EightOhm.Published:

    /usr/bin/python3 tests/references/loads.py

Impedances by node equations, stresses by dense scans of the instantaneous power, admittances by state space and by an ODE
solver, inductance by the mean of a logarithm over two round wires; no formula of the product is copied.
"""

import numpy
from scipy import integrate, interpolate, linalg, optimize, signal

from values import mean, write

SCRIPT = "loads.py"

# R_vc, L, f_s, Q_ms, Q_es; the third has two real poles beside the coil's, the fourth almost no coil, the fifth a sharp resonance.
DRIVERS = [
    (5.8, 0.5e-3, 45, 3, 0.6),
    (3.2, 1.8e-3, 28, 7.5, 0.42),
    (6.4, 0.8e-3, 70, 0.6, 0.5),
    (5.5, 2e-6, 900, 2.2, 1.1),
    (6.0, 0.3e-3, 40, 18, 0.3),
    (3.5, 1.0e-3, 60, 1.2, 1.5),
]


def network(rvc, fs, qms, qes):
    """R_es, C_mes, L_ces from what resonance and Q mean, three equations that are linear in the logarithms:
    w sqrt(L C) = 1, w C R = Q_ms, w C R_vc = Q_es."""
    w = 2 * numpy.pi * fs
    equations = numpy.array([[0, 0.5, 0.5], [1, 1, 0], [0, 1, 0]])
    return numpy.exp(numpy.linalg.solve(equations, -numpy.log([w, w / qms, w * rvc / qes])))


def impedance(driver, f):
    """The voltage at the terminals for 1 A into them: two nodes, the coil's far end being the second."""
    rvc, coil, fs, qms, qes = driver
    r, c, l = network(rvc, fs, qms, qes)
    s = 2j * numpy.pi * f
    series = 1 / (rvc + s * coil)
    motional = 1 / r + s * c + 1 / (s * l)
    nodes = numpy.array([[series, -series], [-series, series + motional]])
    return numpy.linalg.solve(nodes, numpy.array([1.0, 0.0]))[0]


def one_side(phase, level=1.0, rail=1.0, points=400001):
    """The conducting device of a pair on a rail, load of 1 Ohm: voltage across, current and heat over its half cycle."""
    a = numpy.linspace(0, numpy.pi, points)
    i = level * numpy.sin(a)
    across = rail - level * numpy.sin(a + phase)
    return across, i, across * i


def peak_heat(phase, level=1.0, rail=1.0):
    """Dense scan, then a parabola through the highest three points."""
    p = one_side(phase, level, rail)[2]
    k = int(numpy.clip(numpy.argmax(p), 1, len(p) - 2))
    y0, y1, y2 = p[k - 1 : k + 2]
    bend = y0 - 2 * y1 + y2
    return y1 - (y2 - y0) ** 2 / (8 * bend) if bend < 0 else y1


def average_heat(phase):
    """The worst mean heat of the pair over the levels: integrated over a period, maximised."""

    def heat(level):
        return mean(lambda a: (numpy.sign(numpy.sin(a - phase)) - level * numpy.sin(a)) * level * numpy.sin(a - phase), phase, phase + numpy.pi)

    found = optimize.minimize_scalar(lambda m: -heat(m), bounds=(0, 1), method="bounded", options={"xatol": 1e-10})
    return max(-found.fun, heat(1.0))


def equivalents():
    resistor_average, resistor_peak = average_heat(0.0), peak_heat(0.0)
    rows = []
    for degrees in (-90, -60, -45, -20, 0, 15, 30, 45, 50, 51, 60, 75, 90):
        phase = numpy.radians(degrees)
        rows.append((degrees, resistor_average / average_heat(phase), resistor_peak / peak_heat(phase)))
    write("load-equivalents.csv", ["phase_deg", "average", "peak"], rows,
          "The resistor, in |Z|, that heats a class-B pair as much on average at its worst level, or one device as much at its hottest instant at full swing; by integration and dense scan", SCRIPT)


def equivalent_pair(z):
    phase = numpy.angle(z)
    return abs(z) * average_heat(0.0) / average_heat(phase), abs(z) * peak_heat(0.0) / peak_heat(phase)


def driver_impedance():
    rows = []
    for d in DRIVERS:
        r, c, l = network(d[0], *d[2:])
        for f in (d[2] / 3, d[2] * 0.9, d[2], d[2] * 1.4, 300.0, 2e3, 2e4):
            z = impedance(d, f)
            average, peak = equivalent_pair(z)
            rows.append((*d, r, c, l, f, abs(z), numpy.degrees(numpy.angle(z)), average, peak))
    write("driver-impedance.csv", ["R_vc", "L", "f_s", "Q_ms", "Q_es", "R_es", "C_mes", "L_ces", "f", "Z", "phase_deg", "average", "peak"], rows,
          "A driver in a closed box by node equations, its motional branch by root finding on the meanings of the Q factors; equivalents by dense scan", SCRIPT)


def least(function, low, high):
    """The least over a band: 20000 points, then a bounded search around the lowest."""
    x = numpy.linspace(numpy.log(low), numpy.log(high), 20001)
    y = [function(numpy.exp(v)) for v in x]
    k = int(numpy.clip(numpy.argmin(y), 1, len(x) - 2))
    found = optimize.minimize_scalar(lambda v: function(numpy.exp(v)), bounds=(x[k - 1], x[k + 1]), method="bounded", options={"xatol": 1e-12})
    return min((found.fun, numpy.exp(found.x)), (y[0], low), (y[-1], high))


def peak_table():
    """Peak heat over the phase, cubic between 2001 phases, so that a band can be scanned."""
    phases = numpy.linspace(0, numpy.pi / 2, 2001)
    return interpolate.CubicSpline(phases, [one_side_max(p) for p in phases])


def one_side_max(phase):
    """The hottest instant by a bounded search on either half of the conducting half cycle."""
    def p(a):
        return -(1 - numpy.sin(a + phase)) * numpy.sin(a)

    best = 0.0
    for a, b in ((0, numpy.pi / 2), (numpy.pi / 2, numpy.pi)):
        best = max(best, -optimize.minimize_scalar(p, bounds=(a, b), method="bounded", options={"xatol": 1e-12}).fun)
    return best


def minima():
    table = peak_table()
    rows = []
    for d in DRIVERS:
        r, c, l = network(d[0], *d[2:])

        def z(f, d=d, r=r, c=c, l=l):
            s = 2j * numpy.pi * f
            return d[0] + s * d[1] + 1 / (1 / r + s * c + 1 / (s * l))

        whole, at_whole = least(lambda f: abs(z(f)), 10, 2e4)
        peak, at_peak = least(lambda f: abs(z(f)) * 0.25 / float(table(abs(numpy.angle(z(f))))), 10, 2e4)
        # The mean heat costs an integral a point: two coarse scans, each refined.
        average, at_average = min((least_average(z, a, b) for a, b in ((10, 200), (200, 2e4))), key=lambda t: t[0])
        rows.append((*d, whole, at_whole, average, at_average, peak, at_peak))
    write("driver-minima.csv", ["R_vc", "L", "f_s", "Q_ms", "Q_es", "Z", "f_Z", "average", "f_average", "peak", "f_peak"], rows,
          "Least impedance, average- and peak-equivalent resistor from 10 Hz to 20 kHz by dense scan and bounded search", SCRIPT)


def least_average(z, low, high):
    reference = average_heat(0.0)

    def value(x):
        here = z(numpy.exp(x))
        return abs(here) * reference / average_heat(numpy.angle(here))

    x = numpy.linspace(numpy.log(low), numpy.log(high), 301)
    y = [value(v) for v in x]
    k = int(numpy.clip(numpy.argmin(y), 1, len(x) - 2))
    found = optimize.minimize_scalar(value, bounds=(x[k - 1], x[k + 1]), method="bounded", options={"xatol": 1e-9})
    return min((found.fun, numpy.exp(found.x)), (y[0], low), (y[-1], high))


def state_space(d):
    """Current for a voltage; states: coil current, motional voltage, current of the motional inductance."""
    rvc, coil, fs, qms, qes = d
    r, c, l = network(rvc, fs, qms, qes)
    a = numpy.array([[-rvc / coil, -1 / coil, 0], [1 / c, -1 / (r * c), -1 / c], [0, 1 / l, 0]])
    return a, numpy.array([1 / coil, 0, 0])


def absolute_area(a, b, c):
    """The integral of |c exp(at) b|: the response by eigenvectors, its zeros by root finding, areas by the modes' own integrals."""
    values, vectors = numpy.linalg.eig(a)
    weights = (c @ vectors) * numpy.linalg.solve(vectors, b.astype(complex))
    fast, slow = max(abs(values)), min(abs(values.real))
    times = numpy.unique(numpy.concatenate([[0], numpy.geomspace(1e-4 / fast, 40 / slow, 60000), numpy.linspace(0, 40 / slow, 60000)]))

    def y(t):
        return (weights * numpy.exp(values * t)).sum().real

    def area(t):
        return (weights / values * numpy.exp(values * t)).sum().real

    samples = (numpy.exp(numpy.outer(times, values)) @ weights).real
    cuts = [0.0] + [optimize.brentq(y, times[k], times[k + 1], xtol=1e-18, rtol=1e-14) for k in numpy.nonzero(samples[:-1] * samples[1:] < 0)[0]]
    ends = [area(t) for t in cuts] + [0.0]
    return sum(abs(q - p) for p, q in zip(ends, ends[1:]))


def programme():
    rows = []
    for d in DRIVERS:
        a, b = state_space(d)
        exact = absolute_area(a, b, numpy.array([1.0, 0, 0]))
        # A second way, stepping the impulse response over the whole of its life (trapezoid; good to three digits).
        t = numpy.linspace(0, 14 / min(abs(numpy.linalg.eigvals(a).real)), 2000001)
        if d[1] > 1e-5:
            y = signal.impulse((a, b[:, None], numpy.array([[1.0, 0, 0]]), 0), T=t)[1]
            assert abs(integrate.trapezoid(abs(y), t) / exact - 1) < 2e-3, (d, exact)
        rows.append((*d, exact))
    write("programme-current.csv", ["R_vc", "L", "f_s", "Q_ms", "Q_es", "per_volt"], rows,
          "The integral of the magnitude of a driver's admittance impulse response: state space by eigenvectors, its zeros by root finding; checked against scipy.signal.impulse", SCRIPT)
    rows = []
    for rvc, fs, qms, qes in [(5.8, 45, 3, 0.6), (6.4, 70, 0.6, 0.5), (3.5, 60, 1.2, 1.5)]:
        # No coil: the current is (v - v_motional)/R_vc, so its response begins with an impulse of 1/R_vc.
        r, c, l = network(rvc, fs, qms, qes)
        a = numpy.array([[-(1 / rvc + 1 / r) / c, -1 / c], [1 / l, 0]])
        rows.append((rvc, fs, qms, qes, 1 / rvc + absolute_area(a, numpy.array([1 / (rvc * c), 0]), numpy.array([-1 / rvc, 0]))))
    write("programme-current-no-coil.csv", ["R_vc", "f_s", "Q_ms", "Q_es", "per_volt"], rows,
          "The same for a driver without coil inductance: an impulse and the response of two states", SCRIPT)


def steps():
    """Current after a step of 1 V: the states and the step as one linear system, by the matrix exponential."""
    rows = []
    for d in DRIVERS:
        a, b = state_space(d)
        whole = numpy.zeros((4, 4))
        whole[:3, :3], whole[:3, 3] = a, b
        for turns in (0.001, 0.01, 0.3, 0.7, 2.0):
            t = turns / d[2]
            rows.append((*d, t, (linalg.expm(whole * t) @ numpy.array([0, 0, 0, 1.0]))[0]))
    write("step-current.csv", ["R_vc", "L", "f_s", "Q_ms", "Q_es", "t", "per_volt"], rows,
          "A driver's current after a step of 1 V: state space by the matrix exponential", SCRIPT)


def ellipses():
    rows = []
    for rail, level, z, degrees in [(46, 46, 4, 45), (46, 37.95, 4, 45), (48, 40, 8, 60), (48, 40, 8, -60), (46, 30, 4, 0), (46, 15, 4, 30), (60, 55, 2.5, 90)]:
        p = max(peak_heat(numpy.radians(degrees), level, rail), 0)
        rows.append((rail, level, z, degrees, p / z, level / z))
    write("load-ellipse.csv", ["V", "V_p", "Z", "phase_deg", "peak_heat", "peak_current"], rows,
          "The hottest instant of one side of a class-B pair at a level, by dense scan of its half cycle", SCRIPT)

    rows = []
    for rail, level, z, degrees, re, n in [(46, 37.95, 4, 45, 0.22, 3), (46, 37.95, 4, -45, 0.22, 3), (46, 40, 8, 0, 0.22, 2), (50, 36, 4, 60, 0.33, 4), (60, 55, 2.5, 90, 0.1, 5)]:
        a = numpy.linspace(0, numpy.pi, 2000001)
        i = level / z * numpy.sin(a) / n
        v = rail - level * numpy.sin(a + numpy.radians(degrees)) - i * re
        p = v * i
        k = numpy.argmax(p)
        rows.append((rail, level, z, degrees, re, n, p[k], v[k], i[k]))
    write("load-ellipse-of-one.csv", ["V", "V_p", "Z", "phase_deg", "R_E", "n", "peak_heat", "hottest_V", "hottest_I"], rows,
          "The hottest instant of one of n transistors with their emitter resistors, by dense scan of its half cycle", SCRIPT)


def two_wires():
    """Inductance of a go and return wire, current spread evenly: mean logarithms of distances by quadrature over the two discs."""
    rows = []
    for d, spacing in [(1.784e-3, 3.568e-3), (2.053e-3, 2.6e-3), (1e-3, 20e-3), (1.024e-3, 1.1e-3)]:
        a = d / 2

        def ring_log(rho):
            # The mean of ln|P - Q| over a uniform disc seen from radius rho inside it, by integration over rings.
            def inner(r):
                return 2 * r / a**2 * numpy.log(max(r, rho))
            return integrate.quad(inner, 0, a, points=[rho] if 0 < rho < a else None, epsabs=0, epsrel=1e-12)[0]

        own = integrate.quad(lambda rho: 2 * rho / a**2 * ring_log(rho), 0, a, epsabs=0, epsrel=1e-11)[0]

        # Between the discs: points of one against points of the other, Gauss over the radius, equal steps over the angle.
        def disc(radii, angles):
            x, w = numpy.polynomial.legendre.leggauss(radii)
            r = (x + 1) / 2 * a
            turn = numpy.exp(2j * numpy.pi * (numpy.arange(angles) + 0.5) / angles)
            return (r[:, None] * turn[None, :]).ravel(), numpy.repeat(w * r / a / angles, angles)

        near, near_weights = disc(40, 256)
        far, far_weights = disc(10, 48)
        mutual = sum(w * numpy.dot(near_weights, numpy.log(abs(near - spacing - p))) for p, w in zip(far, far_weights))
        rows.append((d, spacing, 4e-7 * (mutual - own)))
    write("two-wire-inductance.csv", ["d", "D", "L_per_m"], rows,
          "Inductance of a metre of go and return wire at low frequency: mean logarithms of the distances within and between two round wires, by quadrature", SCRIPT)


def cable_and_damping():
    """Dividers and damped systems from their equations."""
    rows = []
    for rvc, qes, ro, rc, rl in [(5.8, 0.6, 8 / 1000, 0.1, 8), (5.8, 0.6, 8 / 40, 0.05, 8), (3.4, 0.35, 0.02, 0.3, 4)]:
        node = numpy.linalg.solve(numpy.array([[1 / rc + 1 / rl]]), numpy.array([1 / rc]))[0]
        amplifier = (1 - node) / rc
        in_cable = (1 - node) ** 2 / rc
        rows.append((rvc, qes, ro, rc, rl, qes / (rvc / (rvc + ro)), node, in_cable / amplifier, rl / (ro + rc)))
    write("cable-and-damping.csv", ["R_vc", "Q_es", "R_o", "R_c", "R_L", "Q", "level", "share", "DF"], rows,
          "A cable and a load as a divider by its node equation, the power of each; the damping of a driver's resonance with resistance added", SCRIPT)


if __name__ == "__main__":
    equivalents()
    driver_impedance()
    minima()
    programme()
    steps()
    ellipses()
    two_wires()
    cable_and_damping()
