"""Independent values for the loop, second-stage and output-network checks of tests/EightOhm.Published:

    /usr/bin/python3 tests/references/loops.py

Node equations at complex frequencies solved as linear systems, roots by brentq on them, harmonics by adaptive
quadrature, steps by partial fractions, coils by Lorenz's elliptic integrals; no formula of the product is copied.
"""

import numpy
from numpy import pi
from scipy import constants, integrate, optimize, signal, special

from values import write

SCRIPT = "loops.py"


def crossing(function, low, high):
    """Where |function| is one, between two frequencies."""
    return numpy.exp(optimize.brentq(lambda u: numpy.log(abs(function(numpy.exp(u)))), numpy.log(low), numpy.log(high), xtol=1e-15, rtol=8.9e-16))


def margins(t, low, high):
    """Crossover, phase margin, the gain at -180 degrees, the highest 1/|1+T| and where."""
    f_x = crossing(t, low, high)
    margin = 180 + numpy.degrees(numpy.angle(t(f_x)))
    f = numpy.geomspace(f_x / 100, f_x * 1000, 400001)
    values = t(f)
    phase = numpy.unwrap(numpy.angle(values))
    i = numpy.argmax(phase < -pi)
    f180 = optimize.brentq(lambda x: (-t(x)).imag, f[i - 1], f[i], xtol=1e-9, rtol=1e-14)
    k = numpy.argmin(abs(1 + values))
    peak = optimize.minimize_scalar(lambda u: abs(1 + t(numpy.exp(u))), bounds=(numpy.log(f[k - 1]), numpy.log(f[k + 1])), method="bounded", options={"xatol": 1e-12})
    return f_x, margin, f180, abs(t(f180)), 1 / peak.fun, numpy.exp(peak.x)


def loops():
    rows = []
    for unity, p1, p2, delay in [(1.5e6, 8e6, 1e12, 12e-9), (1.1e6, 8e6, 40e6, 0.0), (1.0e6, 3e6, 5e6, 5e-9), (2.0e6, 10e6, 20e6, 20e-9), (0.4e6, 1e6, 2e6, 1e-9), (3e6, 8e6, 40e6, 0.0)]:
        def t(f):
            return unity / (1j * f) / (1 + 1j * f / p1) / (1 + 1j * f / p2) * numpy.exp(-2j * pi * f * delay)
        rows.append((unity, p1, p2, delay, *margins(t, unity / 100, unity * 2)))
    write("loop-margins.csv", ["f_u", "f_p1", "f_p2", "delay", "f_x", "PM", "f_180", "T_180", "M_s", "f_Ms"], rows,
          "An integrator with two poles and a delay: crossover and margins by root finding on the complex loop gain, the sensitivity's peak by minimisation", SCRIPT)


def steps():
    """Butterworth prototypes of orders 1 to 12 at 1 rad/s: the step by partial fractions, poles being distinct."""
    rows = []
    for n in range(1, 13):
        poles = signal.buttap(n)[1]
        for time in (0.5 * n, float(n), 3.0 * n):
            value = 1.0
            for i, p in enumerate(poles):
                rest = numpy.prod([p - q for j, q in enumerate(poles) if j != i])
                value += (numpy.exp(p * time) / (p * rest)).real * numpy.prod(-poles).real
            rows.append((n, time, value))
    write("butterworth-steps.csv", ["n", "t", "step"], rows, "Step responses of Butterworth low passes at 1 rad/s by partial fractions", SCRIPT)


def second_order():
    rows = []
    for zeta in (0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.9):
        # G = 1/(s(s + 2 zeta)) with unity feedback.
        f_x = optimize.brentq(lambda w: abs(1 / (1j * w * (1j * w + 2 * zeta))) - 1, 1e-3, 2, xtol=1e-15, rtol=8.9e-16)
        margin = 180 + numpy.degrees(numpy.angle(1 / (1j * f_x * (1j * f_x + 2 * zeta))))
        poles = numpy.roots([1, 2 * zeta, 1])

        def step(t):
            return 1 + sum((numpy.exp(p * t) / (p * (p - poles[1 - i]))).real for i, p in enumerate(poles))
        top = optimize.minimize_scalar(lambda t: -step(t), bounds=(0.5, pi / numpy.sqrt(1 - zeta**2) * 1.5), method="bounded", options={"xatol": 1e-12})
        peak = optimize.minimize_scalar(lambda w: -abs(1 / ((1j * w) ** 2 + 2j * zeta * w + 1)), bounds=(0, 1.5), method="bounded", options={"xatol": 1e-12})
        rows.append((zeta, -top.fun - 1, margin, max(1.0, -peak.fun)))
    write("second-order.csv", ["zeta", "overshoot", "PM", "peaking"], rows, "A loop of an integrator and a pole: the step's maximum, the margin at the crossover, the highest gain, each by its own search", SCRIPT)


class Amplifier:
    """Nodes 1 (second stage in), m (middle of two capacitors), 2 (second stage out); the follower is ideal in drive with a gain F."""

    def __init__(self, g1, g2, ca, cb, rb, r1, c1, r2, c2, p1, p2, b, inclusive):
        self.__dict__.update(locals())

    def follower(self, f):
        return 1 / (1 + 1j * f / self.p1) / (1 + 1j * f / self.p2)

    def matrix(self, f, with_second, with_outer):
        s = 2j * pi * f
        y = numpy.zeros((4, 4), dtype=complex)  # 1, m, 2, out

        def element(a, b, value):
            for i, j, sign in ((a, a, 1), (b, b, 1), (a, b, -1), (b, a, -1)):
                if i is not None and j is not None:
                    y[i, j] += sign * value
        element(0, None, 1 / self.r1 + s * self.c1)
        element(2, None, 1 / self.r2 + s * self.c2)
        end = 3 if self.inclusive else 2
        if self.cb:
            element(0, 1, s * self.cb)
            element(1, None, 1 / self.rb)
            element(1, end, s * self.ca)
        else:
            element(0, end, s * self.ca)
            y[1, 1] += 1
        y[3, :] = 0  # the output is what the follower makes it
        y[3, 3], y[3, 2] = 1, -self.follower(f)
        if with_second:
            y[2, 0] += self.g2
        if with_outer:
            y[0, 3] += -self.g1 * self.b
        return y

    def open_loop(self, f):
        return numpy.linalg.solve(self.matrix(f, True, False), numpy.array([-self.g1, 0, 0, 0]))[3]

    def outer(self, f):
        return self.b * self.open_loop(f)

    def inner(self, f):
        # A test current of g2 amperes out of node 2 stands for the source at 1 V; what comes back to node 1, with the other sign.
        return -numpy.linalg.solve(self.matrix(f, False, True), numpy.array([0, 0, -self.g2, 0]))[0]

    def closed(self, f):
        y = self.matrix(f, True, True)
        return numpy.linalg.solve(y, numpy.array([-self.g1, 0, 0, 0]))[3]


def amplifiers():
    rows = []
    for row in [
        (1 / 60, 40e-3, 100e-12, 0, 1e3, 200e3, 40e-12, 100e3, 30e-12, 8e6, 40e6, 1 / 23.6, 0),
        (1 / 60, 40e-3, 100e-12, 1e-9, 1e3, 200e3, 40e-12, 100e3, 30e-12, 8e6, 40e6, 1 / 23.6, 0),
        (1 / 60, 40e-3, 100e-12, 0, 1e3, 200e3, 40e-12, 100e3, 30e-12, 150e6, 800e6, 1 / 23.6, 1),
        (2e-3, 10e-3, 31.83e-12, 0, 1e3, 100e3, 15.92e-12, 50e3, 3.183e-12, 10e6, 1e15, 1.0, 0),
        (1 / 25, 60e-3, 220e-12, 2.2e-9, 470, 1e6, 25e-12, 300e3, 15e-12, 12e6, 90e6, 1 / 30, 0),
    ]:
        a = Amplifier(*row)
        f_x = crossing(a.outer, 1e4, 3e7)
        f_in = crossing(a.inner, 1e6, 3e9)
        low = abs(a.closed(1e-3))
        # The highest crossing of -3 dB.
        f_cl = 10 ** optimize.brentq(lambda u: abs(a.closed(10**u)) / low - numpy.sqrt(0.5), numpy.log10(f_x), numpy.log10(f_x) + 1.2, xtol=1e-14)
        rows.append((*row, abs(a.open_loop(2e4)), abs(a.outer(2e4)), abs(a.inner(2e4)), f_x, 180 + numpy.degrees(numpy.angle(a.outer(f_x))), f_in,
                     180 + numpy.degrees(numpy.angle(a.inner(f_in))), f_cl))
    write("miller-amplifier.csv", ["g_m1", "g_m2", "C", "C_b", "R_b", "R_1", "C_1", "R_2", "C_2", "f_p1", "f_p2", "B_fb", "inclusive",
                                   "A_20k", "T_20k", "inner_20k", "f_x", "PM", "f_in", "PM_in", "f_CL"], rows,
          "A three-stage amplifier by its node equations: open loop, return ratios at both transconductances, crossovers by root finding", SCRIPT)


def ideal_miller():
    """An ideal second stage of 1e9 S: what is left are the first stage, the capacitor and the divider."""
    rows = []
    for g1, c, gain, current in [(1 / 59.85, 100e-12, 23.6, 4e-3), (2e-3, 30e-12, 1.0, 1e-3), (40e-3, 470e-12, 30.0, 8e-3), (1 / 114, 47e-12, 20.0, 2e-3)]:
        a = Amplifier(g1, 1e9, c, 0, 1e3, 1e12, 1e-18, 1e12, 1e-18, 1e30, 1e30, 1 / gain, 0)
        f_ol, f_x = crossing(a.open_loop, 1e4, 1e9), crossing(a.outer, 1e3, 1e9)
        rows.append((g1, c, gain, current, f_ol, f_x, current / c, current / c / (2 * pi * f_x)))
    write("ideal-miller.csv", ["g_m1", "C", "G", "I", "f_ol", "f_x", "SR", "V_crit"], rows, "A second stage of 1 GS with its capacitor by node equations: where open loop and loop gain are one", SCRIPT)

    rows = []
    for g2, c, c1, c2 in [(40e-3, 100e-12, 40e-12, 30e-12), (10e-3, 31.83e-12, 15.92e-12, 3.183e-12), (60e-3, 220e-12, 25e-12, 15e-12), (25e-3, 47e-12, 0.0, 12e-12)]:
        a = Amplifier(1e-30, g2, c, 0, 1e3, 1e12, c1, 1e12, c2, 1e30, 1e30, 1e-30, 0)
        # The zero: where, at a real positive s, nothing arrives at the output.
        def forward(s, a=a):
            f = s / (2j * pi)
            return numpy.linalg.solve(a.matrix(f, True, False), numpy.array([1.0, 0, 0, 0]))[2].real
        zero = optimize.brentq(forward, g2 / c / 3, g2 / c * 3, rtol=1e-14) / (2 * pi)
        rows.append((g2, c, c1, c2, crossing(a.inner, 1e5, 1e10), zero))
    write("inner-loop.csv", ["g_m2", "C", "C_1", "C_2", "f_in", "f_z"], rows, "The loop through the capacitor alone by node equations: its crossover, and the zero at a real positive s by root finding", SCRIPT)


def two_pole():
    rows = []
    for r, c1, c2, f in [(1e3, 100e-12, 1e-9, 2e4), (470, 220e-12, 2.2e-9, 6e4), (2.2e3, 100e-12, 100e-12, 1e3), (1e3, 150e-12, 680e-12, 1e6)]:
        def admittance(x):
            s = 2j * pi * x
            # The middle node with 1 V at one end, the other at virtual ground.
            v = numpy.linalg.solve(numpy.array([[s * c1 + s * c2 + 1 / r]]), numpy.array([s * c1]))[0]
            return s * c2 * v
        far = 1e15
        series = abs(admittance(far)) / (2 * pi * far)
        # More loop gain than the one capacitor: less admittance.
        more = 2 * pi * f * series / abs(admittance(f))
        zero = optimize.brentq(lambda u: 2 * pi * numpy.exp(u) * series / abs(admittance(numpy.exp(u))) - numpy.sqrt(2), numpy.log(1e2), numpy.log(1e9), rtol=1e-14)
        rows.append((r, c1, c2, f, series, numpy.exp(zero), more, abs(90 - numpy.degrees(numpy.angle(admittance(f))))))
    write("two-pole.csv", ["R", "C_1", "C_2", "f", "C_s", "f_z", "more", "cost"], rows, "The T network of two-pole compensation by its node equation", SCRIPT)


def lead():
    rows = []
    for rf, rg, cf, cn in [(2260, 100, 10e-12, 16e-12), (62e3, 1e3, 0.25e-12, 2e-12), (1e3, 1e3, 30e-12, 30e-12), (22e3, 1e3, 4.7e-12, 8e-12)]:
        # The fraction is the admittance above over both together: a zero where the first, a pole where the second vanishes at a real negative s.
        zero = optimize.brentq(lambda s: 1 / rf + s * cf, -10 / rf / cf, 0, rtol=1e-14)
        pole = optimize.brentq(lambda s: 1 / rf + s * cf + 1 / rg + s * cn, -10 / min(rf, rg) / (cf + cn), 0, rtol=1e-14)
        # Flat: the capacitors alone divide as the resistors do.
        flat = optimize.brentq(lambda c: c / (c + cn) - rg / (rf + rg), 0, 1e-9, xtol=1e-28, rtol=1e-14)
        rows.append((rf, rg, cf, cn, -zero / 2 / pi, -pole / 2 / pi, flat))
    write("lead-network.csv", ["R_f", "R_g", "C_f", "C_n", "f_z", "f_p", "C_flat"], rows, "A divider with capacitors: its zero and pole as roots in s, and the capacitor that makes it flat", SCRIPT)


def resistances():
    rows = []
    for ro, fx, t in [(100, 1e5, 10), (0.2, 1.1e6, 50), (1400, 1e4, 7.632), (1535, 1e6, 51.11)]:
        # A source behind ro, driven by an integrator loop: the current that 1 V at the output draws, at fx/1e6.
        f = fx * 1e-6
        z = 1 / ((1 + fx / (1j * f)) / ro)
        # A shunt node: 1 A into ri with t times its voltage's current taken away by the feedback.
        node = numpy.linalg.solve(numpy.array([[1 / ro + t / ro]]), numpy.array([1.0]))[0]
        rows.append((ro, fx, t, z.imag / (2 * pi * f), node))
    write("loop-resistances.csv", ["r", "f_x", "T", "L", "shunt"], rows, "Output impedance of an integrator's loop far below crossover; the resistance of a node with shunt feedback", SCRIPT)


def stage():
    rows = []
    for rail, current, base, c, cs, vbe, re, first, h, follower, celsius in [(56, 10e-3, 0.1e-3, 100e-12, 20e-12, 0.65, 22, 4e-3, 100, 100, 60), (42, 6e-3, 0.0, 47e-12, 10e-12, 0.6, 47, 2e-3, 150, 0, 25), (70, 15e-3, 0.5e-3, 220e-12, 30e-12, 0.7, 10, 8e-3, 60, 40, 85)]:
        slope = optimize.brentq(lambda x: current - base - c * x - cs * x, 0, 1e12, rtol=1e-14)
        need = optimize.brentq(lambda i: (i - base) / (c + cs) - 40e6, base, 1.0, rtol=1e-14)
        limited = optimize.brentq(lambda i: vbe - i * re, 0, 10, rtol=1e-14)
        vt = constants.k * (celsius + 273.15) / constants.e
        # Derivative of the current of a junction behind re at its standing current, by a complex step.
        saturation = current * numpy.exp(-0.65 / vt)
        i = current
        drive = vt * numpy.log(i / saturation) + i * re
        slope_v = (vt * numpy.log((i + 1e-25j) / saturation) + (i + 1e-25j) * re).imag / 1e-25
        # The greatest heat on the way to what the pair drives, by search over the current: its slope changes sign, or does not.
        driven = (h + h * follower) * first
        slope_of_heat = lambda i: rail - 2 * i * re
        most = driven if slope_of_heat(driven) >= 0 else optimize.brentq(slope_of_heat, 0, driven, rtol=1e-14)
        rows.append((rail, current, base, c, cs, vbe, re, first, h, follower, celsius, slope, need, rail * current, limited, rail * limited, most, integrate.quad(slope_of_heat, 0, most, epsrel=1e-13)[0], 1 / slope_v, 2 / slope_v, drive))
    write("second-stage.csv", ["V", "I", "I_B", "C", "C_s", "V_BE", "R_E", "I_1", "h_FE", "h_f", "T_C", "SR", "I_need", "P_idle", "I_lim", "P_lim", "I_unl", "P_unl", "g_m2", "g_pp", "V_base"], rows,
          "A second stage: currents by root finding on their balances, transconductance as the derivative of junction and resistor", SCRIPT)


def whole_amplifier():
    """Pair, follower, second stage, cascode and followers as node matrices of their hybrid-pi circuits, solved at each frequency; crossover and margin by root finding on them."""
    f_t, c_ob, gain = 120e6, 3.5e-12, {10e-3: 100.0, 30e-3: 90.0}  # of notebooks/tern-100/cards/second-stage.json
    solve = numpy.linalg.solve
    rows = []
    for tail, deg, current, re, celsius, follower, h_f, cascode, c, c_in, r_2, c_2, f_p1, i_q, f_p2, fraction, x_c, x_p, pair, idle, delay in [
            (4e-3, 47, 10e-3, 22, 45, 1.78e-3, 100, 1, 100e-12, 280e-12, 200e3, 20e-12, 8e6, 0.074, 40e6, 0.042, 0, 0, 45, 0.074, 12e-9),
            (4e-3, 47, 10e-3, 22, 45, 1.78e-3, 100, 1, 100e-12, 280e-12, 200e3, 20e-12, 8e6, 0.074, 40e6, 0.042, -0.05, -0.3, 10, 0.0715, 20e-9),
            (4e-3, 27, 10e-3, 22, 45, 1.78e-3, 100, 1, 180e-12, 270e-12, 200e3, 20e-12, 8e6, 0.14, 40e6, 0.05, 0.05, 0.3, 45, 0.155, 0.0),
            (2e-3, 100, 30e-3, 10, 60, 3e-3, 50, 0, 68e-12, 100e-12, 100e3, 35e-12, 5e6, 0.1, 25e6, 0.03, 0, -0.2, 25, 0.08, 15e-9),
            (6e-3, 10, 30e-3, 15, 25, 0, 100, 1, 330e-12, 30e-12, 500e3, 10e-12, 12e6, 0.05, 60e6, 0.1, -0.1, 0.1, 60, 0.06, 8e-9),
            (3e-3, 68, 10e-3, 33, 45, 0, 100, 0, 47e-12, 20e-12, 150e3, 15e-12, 20e6, 0.1, 80e6, 0.08, 0, 0, 35, 0.1, 5e-9)]:
        vt = lambda t: constants.k * (t + 273.15) / constants.e
        w_t = 2 * pi * f_t * (1 + x_p)
        gm, h = current / vt(celsius), gain[current]
        c_pi = gm / w_t
        # Collector to base at 1 V where a cascode holds it.
        ob = c_ob * ((1 + 0.75) / (10 + 0.75)) ** -0.33
        at_base = c_pi / (1 + gm * re) + (ob * (1 + 1 / (1 + gm * re)) if cascode else 0)
        # Into its base at low frequencies: a node pair with r_pi between, 1 A in.
        r_pi = h / gm
        into = solve(numpy.array([[1 / r_pi, -1 / r_pi], [-1 / r_pi - gm, 1 / r_pi + gm + 1 / re]]), numpy.array([1.0, 0.0]))[0]
        gm_dc = solve(numpy.array([[gm + 1 / re]]), numpy.array([gm]))[0] / re

        def transistor(s):
            emitter = solve(numpy.array([[gm + s * c_pi + 1 / re]]), numpy.array([gm + s * c_pi]))[0]
            made = gm * (1 - emitter)
            if cascode:
                made *= gm * solve(numpy.array([[gm + s * c_pi]]), numpy.array([1.0]))[0]
            if follower:
                g = follower / vt(celsius)
                made *= solve(numpy.array([[g + s * (g / w_t + at_base)]]), numpy.array([g]))[0]
            return made

        def loop(f):
            s, cap = 2j * pi * f, c * (1 + x_c)
            at_input = c_in + (c_ob if follower else at_base)
            r_in = (1 + h_f) * into if follower else into
            # 1 A of the pair into the input, the second stage's current out of the output node.
            nodes = numpy.array([[1 / r_in + s * at_input + s * cap, -s * cap], [transistor(s) - s * cap, 1 / r_2 + s * c_2 + s * cap]])
            out = solve(nodes, numpy.array([-1.0, 0.0]))[1]
            first = 1 / (vt(pair) / (tail / 2) + deg)
            pole = f_p1 * (1 + x_p) * idle / i_q
            return fraction * first * out / (1 + 1j * f / pole) / (1 + 1j * f / f_p2) * numpy.exp(-s * delay)

        crossing = optimize.brentq(lambda x: numpy.log(abs(loop(numpy.exp(x)))), numpy.log(1e4), numpy.log(2e7), xtol=1e-14)
        unwrapped = numpy.unwrap(numpy.angle([loop(f) for f in numpy.geomspace(1.0, numpy.exp(crossing), 4000)]))[-1]
        rows.append((tail, deg, current, re, celsius, follower, h_f, cascode, c, c_in, r_2, c_2, f_p1, i_q, f_p2, fraction, x_c, x_p, pair, idle, delay, gm_dc, abs(loop(20e3)), numpy.exp(crossing), 180 + numpy.degrees(unwrapped)))
    write("whole-amplifier.csv", ["I_tail", "R_deg", "I", "R_E", "T", "I_f", "h_f", "cascode", "C", "C_in", "R_2", "C_2", "f_p1", "I_q0", "f_p2", "B", "x_C", "x_p", "T_pair", "I_q", "t_d", "g_m2", "T_20k", "f_x", "PM"], rows,
          "An amplifier's outer loop from the hybrid-pi circuits of its stages: node matrices at each frequency, crossover and phase margin by root finding", SCRIPT)


def harmonic(function, n):
    """The n-th harmonic's magnitude of a function of the angle, by adaptive quadrature."""
    edges = numpy.linspace(0, 2 * pi, 2 * n + 1)
    parts = [sum(integrate.quad(lambda x: function(x) * g(n * x), a, b, epsabs=0, epsrel=1e-13)[0] for a, b in zip(edges, edges[1:])) for g in (numpy.cos, numpy.sin)]
    return numpy.hypot(*parts) / pi


def summing_node():
    rows, single = [], []
    for c0, v0, rest, swing, f, current, h, va, g1, gain, follower, both, coc, hc, g2, cin in [
        (4e-12, 10, 46, 40, 2e4, 10e-3, 100, 100, 1 / 60, 23.6, 0, 0, 0, 0, 0, 0),
        (4e-12, 10, 56, 40, 1e3, 6e-3, 150, 60, 1 / 114, 20.0, 0, 0, 0, 0, 0, 0),
        (8e-12, 5, 70, 60, 2e4, 15e-3, 80, 150, 1 / 40, 30.0, 120, 0, 0, 0, 0, 0),
        (3e-12, 10, 46, 42, 2e4, 8e-3, 120, 100, 1 / 60, 23.6, 0, 1, 0, 0, 0, 0),
        # Cascoded: alone, with a follower (where the capacitance at the input decides), and slow (where the base current does).
        (4e-12, 10, 46, 40, 2e4, 10e-3, 100, 100, 1 / 60, 23.6, 0, 0, 3e-12, 150, 0.04, 140e-12),
        (3.5e-12, 10, 50, 40, 2e4, 10e-3, 100, 100, 1 / 60.7, 23.6, 100, 0, 3.5e-12, 100, 0.0404, 380e-12),
        (5e-12, 10, 50, 40, 1e2, 10e-3, 100, 80, 1 / 60, 23.6, 60, 0, 4e-12, 120, 0.03, 110e-12),
    ]:
        def cap(v):
            return (coc or c0) * ((v + 0.75) / (v0 + 0.75)) ** -0.33

        def base(v):
            return current / (hc or h) / (1 + v / va)

        def asked(current_in):
            """What the first stage gives for it: in time, the base of the transistor below moves by i/g2, into its conductance and capacitance."""
            if not g2:
                return lambda x: current_in(x) / (follower + 1)
            step = 1e-3

            def moving(x):
                slope = (8 * (current_in(x + step) - current_in(x - step)) - current_in(x + 2 * step) + current_in(x - 2 * step)) / (12 * step)
                return current_in(x) / (h * (follower + 1)) + slope * 2 * pi * f * cin / g2
            return moving

        def capacitive(x):
            v = rest - swing * numpy.sin(x)
            value = cap(v) + (cap(2 * rest - v) if both else 0)
            return value * 2 * pi * f * swing * numpy.cos(x)

        def early(x):
            v = rest - swing * numpy.sin(x)
            return base(v) - (base(2 * rest - v) if both else 0)
        scale = gain / g1 / swing
        causes = [asked(function) for function in (capacitive, early, lambda x: capacitive(x) + early(x))]
        third = [scale * harmonic(function, 3) for function in causes]
        second = [1.0, 1.0, 1.0] if both else [scale * harmonic(function, 2) for function in causes]
        rows.append((c0, v0, rest, swing, f, current, h, va, g1, gain, follower, both, coc, hc, g2, cin, *second, *third))
        if not both and not g2:
            for n in (1, 2, 3, 5):
                single.append((n, current, h, va, rest, swing, g1, gain, harmonic(early, n), cap(rest), c0, v0, harmonic(early, n) / g1 * gain / swing))
    write("summing-node.csv", ["C_0", "V_0", "V", "V_p", "f", "I", "h_FE", "V_A", "g_m1", "G", "h_f", "both", "C_obc", "h_FEc", "g_m2", "C_in", "C2", "A2", "d2", "C3", "A3", "d3"], rows,
          "Currents into the second stage's input over a sine of its output: harmonics by adaptive quadrature (1 stands where a push-pull stage has none)", SCRIPT)
    write("early-harmonics.csv", ["n", "I", "h_FE", "V_A", "V", "V_p", "g_m1", "G", "i_n", "C", "C_0", "V_0", "d"], single, "Harmonics of the base current by adaptive quadrature, the capacitance at rest", SCRIPT)


def recovery():
    rows = []
    for tau, forced, needed, f in [(1e-6, 1e-3, 0.1e-3, 2e4), (0.5e-6, 4e-3, 0.08e-3, 1e3), (2e-6, 0.3e-3, 0.1e-3, 5e4)]:
        # Charge by its differential equation after the drive is gone: dq/dt = -q/tau, from tau*forced down to tau*needed.
        def left(t, q):
            return q[0] - tau * needed
        left.terminal = True
        end = integrate.solve_ivp(lambda t, q: [-q[0] / tau], (0, 50 * tau), [tau * forced], events=left, rtol=1e-12, atol=1e-30).t_events[0][0]
        rows.append((tau, forced, needed, f, end, end * f))
    write("recovery.csv", ["tau_s", "I_f", "I_n", "f", "t", "share"], rows, "Stored charge by its differential equation until no more is left than the collector current needs", SCRIPT)


def lorenz(turns, diameter, length):
    """A current sheet's inductance by Lorenz's elliptic integrals."""
    m = diameter**2 / (diameter**2 + length**2)
    k, e = special.ellipk(m), special.ellipe(m)
    root = numpy.sqrt(diameter**2 + length**2)
    return constants.mu_0 * turns**2 / (3 * length**2) * ((root * (length**2 * (k - e) + diameter**2 * e)) - diameter**3) / 1.0


def coils():
    rows = []
    for turns, d, l in [(10, 25.4e-3, 25.4e-3), (20, 20e-3, 30e-3), (14, 11.3e-3, 18.4e-3), (12, 14e-3, 16e-3), (30, 10e-3, 40e-3)]:
        rows.append((turns, d, l, lorenz(turns, d, l)))
    write("air-coils.csv", ["n", "D", "l", "L"], rows, "Cylindrical current sheets by Lorenz's elliptic integrals", SCRIPT)
    rows = []
    for turns, d, wire, leads, celsius, amps in [(14, 11.3e-3, 1.25e-3, 60e-3, 20, 3.5), (10, 14e-3, 1.0e-3, 0.0, 60, 5.0), (20, 20e-3, 2.0e-3, 0.1, 85, 10.0)]:
        # The helix' wire as turns of circles, integrated; copper 58 MS/m at 20 degC, 1/254.5 of that a kelvin.
        length = integrate.quad(lambda angle: d / 2, 0, 2 * pi * turns, epsrel=1e-13)[0] + leads
        ohms = integrate.quad(lambda x: 1 / (58e6 * pi * wire**2 / 4), 0, length, epsrel=1e-13)[0] * (1 + (celsius - 20) / 254.5)
        heat = integrate.quad(lambda angle: 2 * (amps * numpy.sin(angle)) ** 2 * ohms, 0, 2 * pi, epsrel=1e-13)[0] / (2 * pi)
        rows.append((turns, d, wire, leads, celsius, amps, length, ohms, heat))
    write("coil-wire.csv", ["n", "D", "d_w", "leads", "T_C", "I_rms", "l_w", "R", "P"], rows, "Wire of a coil: length, resistance and heat by integration", SCRIPT)


def output():
    rows = []
    for f, load, l, r, z, c, volts in [(2e4, 4, 1e-6, 10, 10, 100e-9, 28.28), (2e4, 8, 1e-6, 10, 10, 100e-9, 28.28), (1e5, 4, 2e-6, 4.7, 4.7, 47e-9, 20), (1e3, 2, 6e-6, 2.2, 8.2, 220e-9, 40)]:
        s = 2j * pi * f
        coil = 1 / (1 / (s * l) + 1 / r)
        level = abs(numpy.linalg.solve(numpy.array([[1 / coil + 1 / load]]), numpy.array([1 / coil]))[0])
        current = volts / (z + 1 / (s * c))
        corner = optimize.brentq(lambda u: abs(1 / (2j * pi * u * c)) - z, 1.0, 1e9, rtol=1e-14)
        rows.append((f, load, l, r, z, c, volts, coil.real, coil.imag, level, load / abs(coil), abs(current) ** 2 * z, corner))
    write("output-network.csv", ["f", "R_L", "L", "R", "R_Z", "C_Z", "V", "R_s", "X_s", "level", "DF", "P_Z", "f_Z"], rows, "Coil, damping resistor and Zobel network by complex node equations", SCRIPT)


def output_impedance():
    rows = []
    for f, load in [(1e2, 8), (1e3, 8), (2e4, 8), (2e5, 4)]:
        s = 2j * pi * f
        t = 1.1e6 / (1j * f) / (1 + 1j * f / 8e6)
        # Nodes: before the coil, terminals, loudspeaker; 1 A into one with all sources dead.
        zobel, coil, cable = 1 / (10 + 1 / (s * 100e-9)), 1 / (1 / (s * 1e-6 + 7e-3) + 1 / 10), 0.07 + s * 3e-6
        y = numpy.array([[(1 + t) / 0.15 + zobel + 1 / coil, -1 / coil, 0], [-1 / coil, 1 / coil + 1 / cable, -1 / cable], [0, -1 / cable, 1 / cable]])
        at = [abs(numpy.linalg.solve(y, numpy.eye(3)[i])[i]) for i in range(3)]
        rows.append((f, load, at[1], at[2], load / at[1], load / at[2]))
    write("output-impedance.csv", ["f", "R_L", "terminals", "loudspeaker", "DF", "DF_sys"], rows, "Output impedance by node equations: r_o 0.15 Ohm in a loop crossing 1.1 MHz with a pole at 8 MHz, Zobel, coil, cable of 70 mOhm and 3 uH", SCRIPT)


def capacitive():
    rows = []
    for load, c in [(8, 2.2e-6), (8, 1e-6), (8, 100e-9), (4, 470e-9)]:
        def end(f):
            s = 2j * pi * f
            return 1 / (1 / load + s * c)

        def branch(f):
            return 1 / (1 / (2j * pi * f * 1e-6) + 1 / 10) + end(f)

        def highest(function):
            f = numpy.geomspace(1e3, 1e8, 200001)
            k = int(numpy.argmax(numpy.abs(function(f))))
            best = optimize.minimize_scalar(lambda u: -abs(function(numpy.exp(u))), bounds=(numpy.log(f[max(k - 1, 0)]), numpy.log(f[k + 1])), method="bounded", options={"xatol": 1e-12})
            return -best.fun, numpy.exp(best.x)
        ideal = highest(lambda f: end(f) / branch(f))

        def t(f):
            s = 2j * pi * f
            y = 1 / (10 + 1 / (s * 100e-9)) + 1 / branch(f)
            return 1.1e6 / (1j * f) / (1 + 1j * f / 8e6) / (1 + 1j * f / 40e6) / (1 + 0.15 * y)
        whole = highest(lambda f: t(f) / (1 + t(f)) * end(f) / branch(f))
        sensitivity = highest(lambda f: 1 / (1 + t(f)))
        rows.append((load, c, *ideal, *whole, sensitivity[0]))
    write("capacitive-loads.csv", ["R_L", "C", "ideal_peak", "ideal_f", "peak", "f", "M_s"], rows, "A coil of 1 uH with 10 Ohm into a load with a capacitor: the highest gain of a perfect amplifier and of a loop with r_o 0.15 Ohm, by maximisation", SCRIPT)


if __name__ == "__main__":
    loops()
    steps()
    second_order()
    amplifiers()
    ideal_miller()
    two_pole()
    lead()
    resistances()
    stage()
    whole_amplifier()
    summing_node()
    recovery()
    coils()
    output()
    output_impedance()
    capacitive()
