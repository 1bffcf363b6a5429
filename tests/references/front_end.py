"""Independent values for mirrors, current sources, pairs, servos and offsets, by scipy. Run with Debian's python3-scipy:

    /usr/bin/python3 tests/references/front_end.py

It rewrites the CSV files beside it. No formula of the product is copied: junctions are exponentials whose currents are found by root finding,
slopes are central differences of those currents, circuits are solved node by node, what needs time is integrated.
"""

import itertools

import numpy
from scipy import constants, integrate, optimize

from input_stage import Network, at_input, pair, thermal_voltage
from values import write

K, Q = constants.k, constants.e
SCRIPT = "front_end.py"


def root(f, low, high):
    return optimize.brentq(f, low, high, xtol=1e-300, rtol=1e-14, maxiter=500)


def slope(f, x, h):
    """Derivative by central differences of three steps, their errors of second and fourth order taken out (Richardson)."""
    d = [(f(x + s) - f(x - s)) / (2 * s) for s in (h, h / 2, h / 4)]
    e = [(4 * d[1] - d[0]) / 3, (4 * d[2] - d[1]) / 3]
    return (16 * e[1] - e[0]) / 15


def halves(v_d, v_t, i_tail, r_deg, ratio=1.0, more=0.0):
    """Collector currents of a pair for a differential input; `ratio` of the saturation currents, the first emitter's resistor larger by `more`."""
    def balance(y):  # the logarithm of the ratio of the currents
        i_1, i_2 = i_tail / (1 + numpy.exp(-y)), i_tail / (1 + numpy.exp(y))
        return v_t * (y - numpy.log(ratio)) + r_deg * ((1 + more) * i_1 - i_2) - v_d
    y = optimize.brentq(balance, -200, 200, xtol=1e-15, rtol=1e-15)
    return i_tail / (1 + numpy.exp(-y)), i_tail / (1 + numpy.exp(y))


def tail_resistance():
    rows = []
    for decibels, h_fe, i, v_t in ((90, 100, 0.8e-3, 0.026), (60, 200, 4e-3, 0.0257), (100, 400, 2e-3, 0.0257)):
        def rejection(r_ee):
            n = Network(3)  # bases 1 and 2 driven stiffly, emitters 3; the current of the second collector is watched
            g_m = i / 2 / v_t
            for base in (1, 2):
                n.conductance(base, 0, 1e9)
                n.resistor(base, 3, h_fe / g_m)
                n.transconductance(0, 3, base, 3, g_m)
            n.resistor(3, 0, r_ee)

            def current(*bases):
                v = [sum(sign * n.transfer(0.0, node, 0, b) * 1e9 for sign, b in bases).real for node in (2, 3)]
                return g_m * (v[0] - v[1])
            return abs(current((0.5, 1), (-0.5, 2)) / current((1, 1), (1, 2)))
        rows.append((decibels, h_fe, i, v_t, root(lambda r: rejection(r) / 10 ** (decibels / 20) - 1, 1e3, 1e9)))
    write("tail-resistance.csv", ["CMRR_dB", "h_FE", "I", "V_T", "R_EE"], rows, "Tail resistance for a rejection: root finding on the pair's solved circuit", SCRIPT)


def mirrors():
    rows = []
    for h_fe in (20, 100, 400):
        # Unknown: base current of each mirror device and of the follower; equations: the input node, the follower's emitter, in currents of 1 A in.
        i_b, _ = numpy.linalg.solve([[h_fe, 1], [2, -(h_fe + 1)]], [1, 0])
        rows.append((h_fe, h_fe * i_b))
    write("mirror-with-follower.csv", ["h_FE", "k"], rows, "Output over input current of a mirror with a follower for its base currents: currents as a linear system", SCRIPT)

    rows = []
    for v_t, x, i, r in ((0.0257, 0.05, 2e-3, 100), (0.0257, -0.05, 1e-3, 220), (0.03, 0.05, 2e-3, 220), (0.0257, 0.001, 2e-3, 0)):
        def drop(share, unlike, larger):
            # The bases are one: V_BE and drop of the input side (its resistor larger) against those of the output side.
            return v_t * numpy.log(share / (1 + unlike)) + share * i * r - i * r * (1 + larger)
        rows.append((v_t, x, i, r, root(lambda k: drop(k, x, 0), 0.5, 2) - 1, root(lambda k: drop(k, 0, abs(x) / 5), 0.5, 2) - 1 if r else 0.0, abs(x) / 5))
    write("mirror-mismatch.csv", ["V_T", "x", "I", "R_m", "junctions"], [row[:5] for row in rows],
          "Error of a mirror with emitter resistors by unlike junctions: root of the exponentials, not of their first order", SCRIPT)
    write("mirror-resistors.csv", ["V_T", "I", "R_m", "y", "resistors"], [(*row[:1], *row[2:4], row[6], row[5]) for row in rows if row[3]],
          "Error of a mirror by unlike emitter resistors: root of the exponentials, not of their first order", SCRIPT)


def sources():
    rows = []
    for v_ref, i_s, v_t, r_e in ((1.9, 1e-14, 0.0257, 312), (5.6, 3e-15, 0.0257, 2.2e3), (1.2, 1e-14, 0.03, 100)):
        i = root(lambda i: v_t * numpy.log(i / i_s) + i * r_e - v_ref, 1e-9, 1)
        rows.append((v_ref, v_t * numpy.log(i / i_s), r_e, i))
    write("source-from-reference.csv", ["V_ref", "V_BE", "R_E", "I_O"], rows, "Current of a reference behind an exponential junction: root finding, with the V_BE that it then has", SCRIPT)

    rows = []
    for r_o, i_c, h_fe in ((100e3, 1e-3, 200), (50e3, 2e-3, 300), (40e3, 2e-3, 400)):
        n = Network(2)  # collector 1, emitter 2 on a source of 1 GOhm, base at ground
        g_m = i_c / 0.0257
        n.resistor(1, 2, r_o)
        n.transconductance(1, 2, 0, 2, g_m)
        n.resistor(2, 0, h_fe / g_m)
        n.resistor(2, 0, 1e9)
        rows.append((r_o, h_fe, abs(n.transfer(0.0, 1, 0, 1))))
    write("cascode.csv", ["r_o", "h_FE", "R_o"], rows, "Output resistance of a cascode on a source of 1 gigaohm: the solved circuit, h_FE + 1 and r_pi in it", SCRIPT)

    rows = []
    for v_r, r_ref, r_feed, r_e, i in ((1.0, 20, 4.7e3, 312, 4e-3), (0.5, 5, 10e3, 150, 2e-3), (2.0, 60, 2.2e3, 0, 1e-3)):
        n = Network(3)  # supply 1 (stiff), base 2, emitter 3: no base current
        n.conductance(1, 0, 1e6)
        n.resistor(1, 2, r_feed)
        n.resistor(2, 0, r_ref)
        n.resistor(3, 0, max(r_e, 1e-9))
        n.transconductance(0, 3, 2, 3, i / 0.0257)
        base, emitter = (n.transfer(0.0, node, 0, 1).real / n.transfer(0.0, 1, 0, 1).real for node in (2, 3))
        rows.append((v_r, r_ref, r_feed, r_e, 0.0257 / i, v_r * i / 0.0257 * (base - emitter)))
    write("source-ripple.csv", ["V_r", "r_ref", "R_ref", "R_E", "r_e", "I_r"], rows, "Ripple of a source's current by that of what feeds its reference: the solved circuit", SCRIPT)


def pairs():
    rows = []
    for v_t, i_tail, r_deg, a in ((0.0257, 4e-3, 22, 0.9), (0.0257, 4e-3, 0, 0.9), (0.03, 2e-3, 100, 0.5), (0.026, 1e-3, 47, 0.99)):
        def both(v):
            i_1, i_2 = halves(v, v_t, i_tail, r_deg)
            return i_1 - i_2
        whole = slope(both, 0.0, 4e-3)
        half = slope(lambda v: halves(v, v_t, i_tail, r_deg)[0], 0.0, 4e-3)
        v = root(lambda v: both(v) / i_tail - a, 1e-6, 2)
        # Without a mirror: the starved half gives nothing, its load still takes half of the tail current out of 100 pF.
        slew = [-integrate.solve_ivp(lambda _, __: [(halves(-3.0, v_t, i_tail, r_deg)[0] - i_tail / 2) / 1e-10], (0, 1e-6), [0.0]).y[0][-1] / 1e-6]
        rows.append((v_t, i_tail, r_deg, a, v_t / (i_tail / 2), whole, half, v, 1e-10, *slew))
    write("pair-currents.csv", ["V_T", "I_tail", "R_deg", "a", "r_e", "whole", "half", "v_d", "C", "slew"], rows,
          "Exponential pair with emitter resistors: slopes by differences, the input for a share by root finding, its starved half integrated into a capacitor", SCRIPT)

    rows = []
    for celsius, i_c, r_deg, f_x, b in ((25, 2e-3, 47, 1.15e6, 1 / 23.6), (60, 1e-3, 100, 5e5, 1 / 20), (25, 2e-3, 22, 2e6, 1 / 30)):
        def loop(c):
            n = pair(celsius + 273.15, i_c, 0, r_deg, 100, 0, load=1e12)
            n.capacitor(9, 0, c)
            return b * abs(n.transfer(f_x, 9, 0, 1)) / 1e-6
        rows.append((f_x, b, thermal_voltage(celsius + 273.15) / i_c, r_deg, root(lambda c: loop(c) - 1, 1e-12, 1e-8)))
    write("pair-capacitor.csv", ["f_x", "B_fb", "r_e", "R_deg", "C"], rows, "Capacitor at a pair's output for a loop gain of one at a frequency: root finding on the solved circuit", SCRIPT)

    rows = []
    for f, v_p, c, i in ((20e3, 40, 100e-12, 4e-3), (10e3, 28.3, 220e-12, 2e-3), (20e3, 20, 47e-12, 1e-3)):
        def current(turn):
            return c * slope(lambda t: v_p * numpy.sin(2 * numpy.pi * f * t), turn / f, 1 / f / 200)
        best = optimize.minimize_scalar(lambda x: -current(x), bounds=(-0.2, 0.2), method="bounded", options={"xatol": 1e-9})
        rows.append((f, v_p, c, i, -best.fun / i))
    write("pair-share.csv", ["f", "V_p", "C", "I", "u"], rows, "Greatest current of a sine into a capacitor over the tail current: differences and a numerical maximum", SCRIPT)


def offsets():
    rows = []
    for celsius, i_c, r_deg, x in ((25, 2e-3, 22, 0.02), (25, 0.5e-3, 100, 0.01), (60, 2e-3, 47, 0.005)):
        v_t = thermal_voltage(celsius + 273.15)

        def balanced(goal, more):
            def difference(v):
                i_1, i_2 = halves(v, v_t, 2 * i_c, r_deg, more=more)
                return (i_1 - i_2) / i_c - goal
            return root(difference, -1, 1)
        rows.append((i_c, r_deg, x, v_t / i_c, balanced(0.0, x), balanced(x, 0.0)))
    write("pair-offsets.csv", ["I_C", "R_deg", "x", "r_e", "resistors", "mirror"], rows,
          "Input of an exponential pair for equal currents with unlike resistors, and for currents as unlike as a mirror's: root finding", SCRIPT)

    rows = []
    for celsius, ratio, k_h, i_c, h_fe, r_b in ((25, 1.04, 0.006, 2e-3, 300, 10e3), (60, 1.2, 0.005, 1e-3, 100, 2.2e3), (0, 0.9, 0.01, 0.5e-3, 200, 47e3)):
        t = celsius + 273.15

        def junctions(kelvin):  # without a resistor: the input for equal currents
            def difference(v):
                i_1, i_2 = halves(v, thermal_voltage(kelvin), 2 * i_c, 0, ratio=1 / ratio)
                return i_1 - i_2
            return root(difference, -0.5, 0.5)

        def base(kelvin):
            return r_b * i_c / (h_fe * (1 + k_h * (kelvin - t)))
        rows.append((celsius, junctions(t), slope(junctions, t, 4.0), base(t), k_h, -slope(base, t, 1.0)))
    write("offset-drifts.csv", ["celsius", "V_os", "drift", "V_IB", "k_h", "fall"], rows,
          "Offset of an exponential pair with unlike junctions, and of a base current whose current gain rises: their slopes over temperature by differences", SCRIPT)


def servos():
    rows = []
    for r_i, c_i, r_f, r_inj, v_os, i_b, v_m, t in ((1e6, 220e-9, 2240, 10e3, 2e-3, 5e-9, 1.0, 1e-3), (470e3, 1e-6, 1e3, 2.2e3, 0.5e-3, 50e-9, 5.0, 2e-3), (2.2e6, 470e-9, 10e3, 47e3, 1e-3, 1e-9, -2.0, 10e-3)):
        def step(disturbance, error, bias):
            # The integrator's input stands at its offset; its bias current comes through the resistor. What it has integrated is taken from the output.
            def rate(_, v):
                output = disturbance - r_f / r_inj * v[0]
                return [((output - error) / r_i - bias) / c_i]
            return rate
        tau = r_i * c_i * r_inj / r_f
        settled = integrate.solve_ivp(step(0.7, v_os, i_b), (0, 45 * tau), [0.0], rtol=1e-12, atol=1e-15, method="DOP853")
        left = 0.7 - r_f / r_inj * settled.y[0][-1]
        # A burst of 1 kHz, eight times its mean in peak, in whole periods.
        def burst(time, v):
            output = v_m * (1 + 8 * numpy.sin(2e3 * numpy.pi * time)) - r_f / r_inj * v[0]
            return [output / r_i / c_i]
        wound = integrate.solve_ivp(burst, (0, t), [0.0], rtol=1e-11, atol=1e-14, max_step=2e-5)
        rows.append((r_i, c_i, r_f, r_inj, v_os, i_b, left, v_m, t, r_f / r_inj * wound.y[0][-1]))
    write("servo-in-time.csv", ["R_i", "C_i", "R_f", "R_inj", "V_os", "I_b", "left", "V_m", "t", "wound"], rows,
          "A servo's loop integrated in time: what stays at the output with its offset and bias current, what a burst with a mean leaves", SCRIPT)


def corners():
    rows = []
    for r, c in ((100, 1e-3), (22, 4.7e-3), (470, 47e-6), (1e3, 1e-6)):
        n = Network(2)  # driven stiffly at 1, capacitor from 2 to ground
        n.conductance(1, 0, 1e6)
        n.resistor(1, 2, r)
        n.capacitor(2, 0, c)

        def share(f, node):
            v_1, v_2 = n.transfer(f, 1, 0, 1), n.transfer(f, 2, 0, 1)
            return abs((v_1 - v_2 if node == 1 else v_2) / v_1)
        across, behind = (10 ** optimize.brentq(lambda u: share(10**u, node) - numpy.sqrt(0.5), -3, 7, xtol=1e-14) for node in (1, 2))
        rows.append((r, c, across, behind))
    write("corners.csv", ["R", "C", "across", "behind"], rows, "Frequencies at which half the power is left across a resistor, and behind it across its capacitor: root finding on the solved circuit", SCRIPT)

    rows = []
    for f, r_in, c_in in ((100e3, 220, 1e-9), (200e3, 100, 470e-12), (50e3, 1e3, 1e-9)):
        def level(r_source):
            n = Network(2)
            n.resistor(1, 0, r_source)
            n.resistor(1, 2, r_in)
            n.capacitor(2, 0, c_in)
            return abs(n.transfer(f, 2, 0, 1)) / r_source  # a current into the source's resistor is a voltage in series with it
        rows.append((f, r_in, c_in, root(lambda r: level(r) - numpy.sqrt(0.5), 1e-3, 1e6)))
    write("highest-source.csv", ["f", "R_in", "C_in", "R_src"], rows, "Source resistance that leaves half the power at a frequency behind an input filter: root finding on the solved circuit", SCRIPT)


def noises():
    rows = []
    for i_dss, v_p, i_d in ((12e-3, 3.0, 2e-3), (5e-3, 1.0, 1e-3), (20e-3, 2.5, 10e-3)):
        def drain(v):
            return i_dss * (1 + v / v_p) ** 2
        bias = root(lambda v: drain(-v) - i_d, 0, v_p)
        rows.append((i_dss, v_p, i_d, slope(drain, -bias, 0.01)))
    write("fet-slope.csv", ["I_DSS", "V_P", "I_D", "g_m"], rows, "Slope of the square law of a junction field-effect transistor at a current: root finding and differences", SCRIPT)

    rows = []
    for celsius, e in ((25, 1.5e-9), (25, 3e-9), (60, 2e-9)):
        t = celsius + 273.15

        def made(g_m):
            n = Network(3)  # gate 1, sources 2, drain of the second 3; its gate at ground
            n.resistor(1, 0, 1e-6)
            n.transconductance(0, 2, 1, 2, g_m)
            n.transconductance(3, 2, 0, 2, g_m)
            n.noise += [(0, 2, 4 * K * t * 2 / 3 * g_m), (3, 2, 4 * K * t * 2 / 3 * g_m)]
            n.resistor(3, 0, 1e3)
            return n.density(1.0, 3) / (abs(n.transfer(1.0, 3, 0, 1)) / 1e-6)
        rows.append((celsius, e, root(lambda g: made(g) / e - 1, 1e-5, 1)))
    write("fet-transconductance.csv", ["celsius", "e", "g_m"], rows, "Transconductance for the channel noise of a field-effect pair: root finding on the solved circuit", SCRIPT)

    rows = []
    for e_f, e_b, i_b in ((3e-9, 1e-9, 1.5e-12), (5e-9, 2.5e-9, 0.8e-12), (1.5e-9, 0.9e-9, 3e-12)):
        def power(r, e, i):
            n = Network(2)  # the source's resistor, then the voltage noise as that of a small quiet resistor, and the current noise behind it
            n.resistor(1, 0, r, 298.15)
            n.resistor(1, 2, 1e-4)
            n.noise += [(1, 2, (e / 1e-4) ** 2), (2, 0, i**2)]
            return n.density(1.0, 2) ** 2
        rows.append((e_f, e_b, i_b, root(lambda r: power(r, e_f, 0.0) / power(r, e_b, i_b) - 1, 1.0, 1e6)))
    write("break-even.csv", ["e_F", "e_B", "i_B", "R"], rows, "Source resistance at which two amplifiers' noise is the same, that of the source in both: root finding on the solved circuit", SCRIPT)

    rows = []
    for white, at_one, f in ((3e-9, 40e-9, 20.0), (1e-9, 8e-9, 100.0), (5e-9, 20e-9, 3.0)):
        # The corner: where the 1/f part is the white one. The density: what is in a narrow band, over its width.
        corner = root(lambda x: at_one**2 / x - white**2, 1e-3, 1e6)
        total = integrate.quad(lambda x: (white**2 + at_one**2 / x) * 1e18, f * (1 - 1e-5), f * (1 + 1e-5), epsabs=0, epsrel=1e-13)[0] * 1e-18
        density = numpy.sqrt(total / (2e-5 * f))
        rows.append((white, corner, f, density, white * 1e-3, density * 1e-3))
    write("flicker-density.csv", ["e_w", "f_c", "f", "e", "i_w", "i"], rows, "White and 1/f noise in a narrow band, over its width, by quadrature; the corner by root finding; currents of the same shape", SCRIPT)

    rows = []
    for celsius, i_c, h_fe, r in ((25, 2e-3, 300, 22), (25, 0.5e-3, 100, 60), (60, 1e-3, 400, 100)):
        t = celsius + 273.15
        # Shot noise of a junction is that of a resistor of twice its slope's: 4kT/2 times the slope of the base current.
        base = slope(lambda v: i_c / h_fe * numpy.exp(v / thermal_voltage(t)), 0.0, 2e-3)
        both = at_input(pair(t, i_c, r, 50, 100, 0, quiet=("mirror", "degeneration", "collectors")))
        rows.append((celsius, i_c, h_fe, r, numpy.sqrt(2 * K * t * base), both))
    write("pair-parts.csv", ["celsius", "I_C", "h_FE", "R", "i_B", "both"], rows, "Noise of a base by the slope of its junction, of base resistances by the solved circuit", SCRIPT)

    rows = []
    for celsius, i_c, r_deg, r_bm, e in ((25, 2e-3, 22, 0, 0.4e-9), (25, 0.5e-3, 100, 40, 1e-9), (60, 1e-3, 47, 20, 0.7e-9)):
        t = celsius + 273.15

        def made(r_m):
            return at_input(pair(t, i_c, 0, r_deg, r_m, r_bm, quiet=("bases", "degeneration", "collectors")))
        top = optimize.minimize_scalar(lambda u: -made(10**u), bounds=(-3, 3), method="bounded").x  # the noise falls from here on
        rows.append((celsius, r_bm, thermal_voltage(t) / i_c, r_deg, e, root(lambda r: made(r) / e - 1, 10**top, 1e5)))
    write("mirror-resistor.csv", ["celsius", "r_bm", "r_e", "R_deg", "e", "R_m"], rows, "Emitter resistor of a mirror for its noise at the input of its pair: root finding on the solved circuit", SCRIPT)

    second_stage()


def voltage_behind(kelvin, i, h_fe, r_e, follower):
    """Noise of a transistor's collector current, into a short, over the slope of that current by the voltage at the first base; its follower, if any, has no base current of its own."""
    n = Network(4)  # first base 1, the transistor's own 2, its emitter 3, its collector 4
    g = i / thermal_voltage(kelvin)
    n.resistor(1, 0, 1e-6)
    if follower:
        i_f, r_b = follower
        n.transconductance(0, 2, 1, 2, i_f / thermal_voltage(kelvin))
        n.noise.append((0, 2, 2 * Q * i_f))
        n.resistor(2, 0, r_b, kelvin)
    else:
        n.resistor(1, 2, 1e-6)
    n.transconductance(4, 3, 2, 3, g)
    n.resistor(2, 3, h_fe / g)
    n.noise += [(4, 3, 2 * Q * i), (2, 3, 2 * Q * i / h_fe)]
    n.resistor(3, 0, r_e, kelvin)
    n.resistor(4, 0, 1.0)
    return n.density(1.0, 4) / (abs(n.transfer(1.0, 4, 0, 1)) / 1e-6)


def second_stage():
    rows = []
    for celsius, i, h_fe, r_e, i_f, r_b in ((45, 10e-3, 100, 22, 1.8e-3, 510), (25, 5e-3, 200, 47, 1e-3, 1e3), (60, 15e-3, 150, 10, 4e-3, 330)):
        t = celsius + 273.15
        rows.append((celsius, i, h_fe, r_e, i_f, r_b, voltage_behind(t, i, h_fe, r_e, (i_f, r_b)), voltage_behind(t, i, h_fe, r_e, None)))
    write("second-stage-voltage.csv", ["celsius", "I", "h_FE", "R_E", "I_f", "R_B", "behind", "alone"], rows,
          "Noise voltage of a transistor with a resistor in its emitter, with and without a follower before it: every source by itself through the solved circuit, its base taking current", SCRIPT)

    rows = []
    for celsius, i, h_fe, r_m in ((45, 2e-3, 1e4, 470), (25, 2e-3, 1e4, 0), (60, 0.5e-3, 1e4, 100)):
        v_t = thermal_voltage(celsius + 273.15)
        n = Network(4)  # input and bases 1, emitters 2 and 3, output 4 into a short
        for emitter, collector in ((2, 1), (3, 4)):
            n.transconductance(collector, emitter, 1, emitter, i / v_t)
            n.resistor(1, emitter, h_fe * v_t / i)
            n.resistor(emitter, 0, max(r_m, 1e-6))
            n.noise.append((1, emitter, 2 * Q * i / h_fe))
        n.resistor(4, 0, 1.0)
        rows.append((i, h_fe, r_m, v_t / i, n.density(1.0, 4)))
    write("mirror-bases.csv", ["I", "h_FE", "R_m", "r_m", "i"], rows, "Noise current of a mirror's bases at its output: every source by itself through the solved circuit", SCRIPT)

    rows = []
    for f, i, e_2, c, r_e, r_deg in ((1e6, 3e-12, 750e-12, 400e-12, 13.7, 47), (1e3, 2e-12, 1e-9, 500e-12, 12.8, 100), (20e6, 3e-12, 0.8e-9, 300e-12, 9.1, 39)):
        # Of the pair only its slope; behind it a capacitor around a stage of such gain that its input stands still: that of the noise voltage, in series with it as that of a small quiet resistor.
        n = Network(4)  # base 1, the pair's output 2, behind the noise voltage 3, the output 4
        n.resistor(1, 0, 1e-6)
        n.transconductance(2, 0, 1, 0, 1 / (r_e + r_deg))
        n.resistor(2, 3, 1e-3)
        n.resistor(3, 0, 1e12)
        n.capacitor(2, 4, c)
        n.resistor(4, 0, 1.0)
        n.transconductance(4, 0, 3, 0, 1e9)
        n.noise += [(2, 0, i**2), (2, 3, (e_2 / 1e-3) ** 2)]
        rows.append((f, i, e_2, c, r_e, r_deg, n.density(f, 4) / (abs(n.transfer(f, 4, 0, 1)) / 1e-6)))
    write("second-stage-input.csv", ["f", "i", "e_2", "C", "r_e", "R_deg", "e"], rows,
          "A current and a voltage of a second stage at the bases of the pair before it: the solved circuit, the compensation around a stage of high gain", SCRIPT)


def rails():
    rows = []
    for i_c, r_deg, r_o, gain in ((2e-3, 22, 200e3, 23.6), (0.5e-3, 100, 1e6, 20.0), (2e-3, 100, 47e3, 31.6)):
        n = pair(298.15, i_c, 0, r_deg, 100, 0)
        n.g, n.c = (numpy.pad(m, ((0, 2), (0, 2))) for m in (n.g, n.c))  # 14 the output, 15 the rail
        n.resistor(14, 0, 1.0)
        n.transconductance(14, 0, 9, 0, 1e7)  # the second stage, turning over
        n.transconductance(0, 2, 14, 0, 1e6 / gain)  # the share of the output at base 2, over its 1 uOhm
        n.conductance(15, 0, 1e6)
        n.resistor(15, 9, r_o)
        out, rail = (n.transfer(0.0, node, 0, 15).real for node in (14, 15))
        rows.append((r_o, thermal_voltage(298.15) / i_c, r_deg, gain, abs(rail / out)))
    write("rail-leak.csv", ["R_o", "r_e", "R_deg", "G", "rejection"], rows, "A rail's leak into the output of a pair inside its loop: the solved circuit with a second stage of high gain", SCRIPT)

    rows = []
    for i_c, r_deg, delta, m, gain, i_r in ((2e-3, 22, 0.1, 0, 23.6, 1e-6), (2e-3, 100, 0.02, 0, 20.0, 1e-7), (0.5e-3, 47, 0, 0.02, 31.6, 1e-6), (1e-3, 0, 0, 0.05, 23.6, 2e-6)):
        n = pair(298.15, i_c, 0, r_deg, 0, 0, delta=delta)
        n.transconductance(9, 11, 13, 11, m * i_c / thermal_voltage(298.15))  # the mirror's output side takes more
        balanced = abs(pair(298.15, i_c, 0, r_deg, 0, 0).transfer(1.0, 9, 0, 1)) / 1e-6
        g_1, g_2 = (1 / (thermal_voltage(298.15) / i_c / (1 + d) + r_deg) for d in (delta, -delta))
        left = i_r * abs(n.transfer(1.0, 9, 7, 0)) / balanced * gain
        rows.append((i_r, (g_1 - g_2) / (g_1 + g_2), m, thermal_voltage(298.15) / i_c, r_deg, gain, left))
    write("rail-tail.csv", ["I_r", "s", "m", "r_e", "R_deg", "G", "left"], rows,
          "A ripple of the tail current behind an unbalanced pair or an unlike mirror, over the balanced transconductance, times the gain: the solved circuit", SCRIPT)


def delays():
    rows = []
    for f_t, i, r_deg, f_m, c_m, r_m in ((100e6, 3e-3, 39, 100e6, 10e-12, 330), (150e6, 1e-3, 100, 80e6, 5e-12, 100), (60e6, 2e-3, 10, 200e6, 20e-12, 0)):
        def slope_of(delayed):
            """Phase over frequency, far below all of it; of pair, cascode and mirror one is slow at a time, or all."""
            n = Network(11)  # bases 1 and 2, emitters 3 and 4, tail 5, the cascodes' emitters 6 and 7, mirror's input 8, its emitters 9 and 10, the output 11 into a short
            v_t = thermal_voltage(298.15)
            g = i / v_t
            def transistor(collector, base, emitter, f):
                n.transconductance(collector, emitter, base, emitter, g)
                if f:
                    n.capacitor(base, emitter, g / (2 * numpy.pi * f))
            for base, emitter, above in ((1, 3, 6), (2, 4, 7)):
                n.resistor(base, 0, 1e-6)
                transistor(above, base, emitter, f_t if delayed in ("pair", "all") else 0)
                n.resistor(emitter, 5, max(r_deg, 1e-6))
            n.resistor(5, 0, 1e12)
            mirror = f_m if delayed in ("mirror", "all") else 0
            n.resistor(6, 8, 1e-6) if delayed in ("pair", "mirror") else transistor(8, 0, 6, f_t)
            n.resistor(7, 11, 1e-6) if delayed in ("pair", "mirror") else transistor(11, 0, 7, f_t)
            transistor(8, 8, 9, mirror)
            transistor(11, 8, 10, mirror)
            for emitter in (9, 10):
                n.resistor(emitter, 0, max(r_m, 1e-6))
            if mirror:
                n.capacitor(8, 0, c_m)
            n.resistor(11, 0, 1e-3)
            f = 1e-4 * f_t
            z = n.transfer(f, 11, 0, 1) / n.transfer(0.0, 11, 0, 1)
            return -float(numpy.angle(z)) / (2 * numpy.pi * f)

        rows.append((f_t, thermal_voltage(298.15) / i, r_deg, f_m, c_m, r_m, slope_of("pair"), slope_of("cascode"), slope_of("mirror"), slope_of("all")))
    write("input-delay.csv", ["f_T", "r_e", "R_deg", "f_m", "C_m", "R_m", "pair", "cascode", "mirror", "all"], rows,
          "Delay of a pair with a cascode and a mirror, each by itself and all together: the phase of the solved circuit far below its poles", SCRIPT)


if __name__ == "__main__":
    for make in (tail_resistance, mirrors, sources, pairs, offsets, servos, corners, noises, rails, delays):
        make()
