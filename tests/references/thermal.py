"""Independent values for the thermal checks of tests/EightOhm.Published:

    /usr/bin/python3 tests/references/thermal.py

Differential equations integrated by solve_ivp, ladders by continued fractions in rational arithmetic, fins as boundary value problems,
currents by Lambert's W or the Wright omega function, limits by root finding and maximisation; no method of the product is copied.
"""

from fractions import Fraction

import numpy
from scipy import constants, integrate, optimize, signal, special

from values import write

SCRIPT = "thermal.py"

# Thyristor module of a maker's datasheet (IXYS M##501-12io1, sec. 8.3), and an invented transistor. K/W, s.
SETS = [
    ([1.37e-3, 4.86e-3, 0.0114, 0.0223, 0.0221], [7.6e-4, 8.6e-3, 0.101, 0.56, 3.12]),
    ([0.08, 0.17, 0.33, 0.25], [0.0012, 0.011, 0.07, 0.5]),
]


def poly_add(a, b):
    n = max(len(a), len(b))
    a, b = [0] * (n - len(a)) + a, [0] * (n - len(b)) + b
    return [x + y for x, y in zip(a, b)]


def poly_mul(a, b):
    out = [Fraction(0)] * (len(a) + len(b) - 1)
    for i, x in enumerate(a):
        for j, y in enumerate(b):
            out[i + j] += x * y
    return out


def trim(a):
    while len(a) > 1 and a[0] == 0:
        a = a[1:]
    return a


def ladder(r, tau):
    """Z(s) as a quotient of polynomials with rational coefficients, divided down to C, R, C, R ..."""
    num, den = [Fraction(0)], [Fraction(1)]
    for x, t in zip(r, tau):
        # num/den + x/(1 + s t)
        one = [Fraction(t), Fraction(1)]
        num, den = poly_add(poly_mul(num, one), poly_mul([Fraction(x)], den)), poly_mul(den, one)
    num, den = trim(num), trim(den)
    rungs = []
    while len(den) > 1:
        c = den[0] / num[0]
        den = trim(poly_add(den, [-y for y in poly_mul([c, Fraction(0)], num)]))  # 1/Z - s C
        r1 = num[0] / den[0]
        num = trim(poly_add(num, [-r1 * y for y in den]))  # Z - R
        rungs.append((float(c), float(r1)))
        if num == [0]:
            break
    return rungs


def ladder_matrix(rungs):
    """dT/dt = A T + b P for the ladder with its end held."""
    n = len(rungs)
    a, b = numpy.zeros((n, n)), numpy.zeros((n, 1))
    b[0, 0] = 1 / rungs[0][0]
    for i, (c, r) in enumerate(rungs):
        a[i, i] -= 1 / (r * c)
        if i + 1 < n:
            a[i, i + 1] += 1 / (r * c)
            a[i + 1, i] += 1 / (r * rungs[i + 1][0])
            a[i + 1, i + 1] -= 1 / (r * rungs[i + 1][0])
    return a, b


def solve(f, span, y0, at, rtol=1e-12):
    """The states at the instants of a list, each the end of an integration of its own: between steps a solver interpolates, with fewer digits."""
    told, now, y = [], span[0], numpy.asarray(y0, float)
    for t in at:
        if t > now:
            out = integrate.solve_ivp(f, (now, t), y, method="DOP853", rtol=rtol, atol=1e-13)
            assert out.success, out.message
            now, y = t, out.y[:, -1]
        told.append(y)
    return numpy.array(told).T


def foster():
    rows = [(k, i, c, r) for k, (rs, ts) in enumerate(SETS) for i, (c, r) in enumerate(ladder(rs, ts))]
    write("foster-ladder.csv", ["set", "rung", "C", "R"], rows,
          "Sums of exponentials as ladders, by continued fractions in rational arithmetic", SCRIPT)

    rows = []
    for k, (rs, ts) in enumerate(SETS):
        a, b = ladder_matrix(ladder(rs, ts))
        for t in (1e-3, 1e-2, 0.1, 1, 10):
            # One watt from 0 s on, the ladder integrated in time; steady after it.
            z = solve(lambda _, y: a @ y + b[:, 0], (0, t), numpy.zeros(len(rs)), [t])[0, -1]
            rows.append((k, t, z, numpy.linalg.solve(-a, b)[0, 0]))
    write("foster-impedance.csv", ["set", "t", "Z", "R"], rows, "Rise at the junction for 1 W, the ladder integrated in time", SCRIPT)

    rows = []
    for k, (rs, ts) in enumerate(SETS):
        a, b = ladder_matrix(ladder(rs, ts))
        c = numpy.zeros((1, len(rs)))
        c[0, 0] = 1
        frequencies = numpy.array([0.1, 1, 10, 20, 40, 1000.0])
        _, h = signal.freqresp(signal.StateSpace(a, b, c, [[0]]), 2 * numpy.pi * frequencies)
        rows += [(k, f, abs(z), -numpy.degrees(numpy.angle(z))) for f, z in zip(frequencies, h)]
    write("foster-sine.csv", ["set", "f", "swing", "lag_deg"], rows, "Answer of the ladders to a power that swings as a sine (scipy.signal.freqresp)", SCRIPT)


def periodic():
    """dy/dt = (r p - y)/tau from the start that comes back after a period; its maximum by a dense scan and bounded search."""
    rows = []

    def peak(k, period, power, corners):
        r, tau = (numpy.array(x) for x in SETS[k])
        edges = [0.0, *corners, period]

        def march(y, told=None):
            best = None
            for a, b in zip(edges, edges[1:]):
                mid = (a + b) / 2
                out = integrate.solve_ivp(lambda t, v: (r * power(t, mid) - v) / tau, (a, b), y, method="DOP853", rtol=1e-12, atol=1e-13, dense_output=True)
                assert out.success
                if told:
                    ts = numpy.linspace(a, b, 4001)
                    sums = out.sol(ts).sum(axis=0)
                    j = int(sums.argmax())
                    lo, hi = ts[max(j - 1, 0)], ts[min(j + 1, 4000)]
                    fine = optimize.minimize_scalar(lambda t: -out.sol(t).sum(), bounds=(lo, hi), method="bounded", options={"xatol": 1e-12})
                    best = max(best or -1.0, sums[j], -fine.fun)
                y = out.y[:, -1]
            return best if told else y

        one = march(numpy.zeros(len(r)))
        return march(one / -numpy.expm1(-period / tau), told=True)

    for k, v, vp, load, phi, re, n, f in [(1, 46, 2 * 46 / numpy.pi, 4, 0, 0, 3, 20), (1, 46, 30, 8, 0, 0, 2, 100), (0, 60, 20, 4, 0, 0, 1, 5), (1, 46, 2 * 46 / numpy.pi, 4, 0, 0, 3, 1000),
                                          (1, 46, 38, 4, 45, 0.22, 3, 20), (1, 46, 38, 4, 0, 0.22, 3, 20), (1, 46, 38, 4, -60, 0.22, 3, 20), (0, 50, 30, 6, 30, 0.33, 2, 50)]:
        half = 0.5 / f

        def power(t, mid):
            # From the current's zero: the side conducts for half a period, the voltage runs phi ahead.
            if mid > half:
                return 0.0
            w = 2 * numpy.pi * f * t
            i = vp / load * numpy.sin(w)
            return (v - vp * numpy.sin(w + numpy.radians(phi)) - i / n * re) * i / n

        rows.append((k, v, vp, load, phi, re, n, f, peak(k, 1 / f, power, [half])))
    write("periodic-sine.csv", ["set", "V", "V_p", "Z", "phi_deg", "R_E", "n", "f", "peak"], rows,
          "Peak rise of a transistor's junction above its case while a class-B stage plays a sine for ever: integrated in time from the start that repeats", SCRIPT)

    rows = [(k, p, on, off, rest, peak(k, on + off, lambda t, mid: p if mid < on else rest, [on]))
            for k, p, on, off, rest in [(1, 100, 0.02, 0.48, 0), (1, 60, 0.001, 0.009, 5), (0, 2000, 1, 9, 100)]]
    write("periodic-burst.csv", ["set", "P", "on", "off", "rest", "peak"], rows, "The same for a power that is on and off for ever", SCRIPT)


# Two transistors (junction, case) on a sink with a sensor: J/K, and links K/W; the last node is the ambient.
CAPACITY = [0.05, 6.0, 0.05, 6.0, 1250.0, 3.0]
LINKS = [(0, 1, 0.83), (1, 4, 0.35), (2, 3, 0.83), (3, 4, 0.35), (4, 6, 0.40), (5, 4, 2.0), (5, 6, 60.0)]


def network(rise, heat):
    flow = numpy.array([*heat, 0.0])
    t = numpy.array([*rise, 0.0])
    for a, b, r in LINKS:
        q = (t[a] - t[b]) / r
        flow[a] -= q
        flow[b] += q
    return flow[:-1] / CAPACITY


def transient():
    steps = [(0.0, 5.0), (60.0, 40.0), (180.0, 5.0)]
    at = [0.01, 0.1, 1, 10, 59, 61, 70, 120, 179, 181, 200, 300, 600.0]
    y, now, told = numpy.zeros(6), 0.0, {}
    for (start, p), end in zip(steps, [60.0, 180.0, 600.0]):
        inside = [t for t in at if start < t <= end]
        out = solve(lambda _, v: network(v, [p, 0, p / 2, 0, 0, 0]), (start, end), y, [*inside, end] if end not in inside else inside)
        told |= dict(zip(inside, out.T))
        y = out[:, -1]
    write("network-transient.csv", ["t", "junction_1", "case_1", "junction_2", "sink", "sensor"],
          [(t, v[0], v[1], v[2], v[4], v[5]) for t, v in told.items()],
          "Rises of a network of two transistors on a sink for 5 W, 40 W from 60 to 180 s, 5 W (half of that in the second), integrated in time", SCRIPT)
    # Steady: the same at rest, by a root of the rates of change.
    rest = numpy.linalg.solve(numpy.array([network(e, numpy.zeros(6)) for e in numpy.eye(6)]).T, -network(numpy.zeros(6), [20, 0, 10, 0, 0, 0]))
    write("network-steady.csv", ["junction_1", "case_1", "junction_2", "case_2", "sink", "sensor"], [rest], "Rises of that network for 20 W and 10 W, at rest", SCRIPT)


def current(d, i, r, vt):
    """vt ln(I/i) + r (I - i) = d: the Wright omega function."""
    return vt / r * special.wrightomega(numpy.log(r * i / vt) + (d + r * i) / vt).real


def drift():
    rows = []
    for d, i, r, t in [(0.021, 0.1038, 0.2725, 55), (-0.03, 0.1038, 0.2725, 55), (0.2, 0.05, 0.1, 80), (0.004, 0.02, 0.47, 25), (-0.1, 0.1, 0.33, 100)]:
        vt = constants.k * (t + 273.15) / constants.e
        rows.append((d, i, r, vt, current(d, i, r, vt)))
    write("bias-drift.csv", ["V_d", "I_q", "R", "V_T", "I"], rows, "Idle current with an error of its bias voltage, by the Wright omega function", SCRIPT)

    rows = []
    for tc, dt, re, ri, vt, i in [(2.1e-3, 10, 0.22, 0.0525, 0.0282785, 0.1038), (2e-3, 3, 0.1, 0, 0.0297, 0.05), (2.2e-3, 25, 0.47, 0.03, 0.0258, 0.02)]:
        step = 1e-20  # a derivative by a complex step
        z = numpy.log((re + ri) * i / vt) + (1j * step + (re + ri) * i) / vt
        slope = (vt / (re + ri) * special.wrightomega(z)).imag / step
        rows.append((tc, dt, re, ri, vt, i, slope * tc * dt))
    write("bias-small.csv", ["tc", "dT", "R_E", "r_int", "V_T", "I_q", "dI"], rows, "Slope of the idle current over its bias voltage by a complex step, times the error", SCRIPT)


def runaway():
    rows = []
    for v, theta, tc, re, ri, t, i in [(46, 3.58, 2.1e-3, 0.22, 0.0525, 55, 0.1038), (46, 3.58, 2.1e-3, 0.22, 0.0525, 55, 0.25), (60, 5, 2e-3, 0.1, 0.05, 80, 0.03), (35, 12, 2.2e-3, 0.33, 0, 40, 0.04)]:
        vt = constants.k * (t + 273.15) / constants.e
        r = re + ri

        def gain(at):
            # How much does a current grow with its drive (a derivative by a complex step), and what does its heat do to the drive?
            step = 1e-20
            z = numpy.log(r * at / vt) + (1j * step + r * at) / vt
            return v * theta * tc * (vt / r * special.wrightomega(z)).imag / step

        one = optimize.brentq(lambda u: gain(numpy.exp(u)) - 1, numpy.log(1e-3), numpy.log(1e3), xtol=1e-13, rtol=1e-13)
        one = numpy.exp(one)

        def spare(u):
            # What the junction and the resistance take more than the heat of the current gives: the drive that can still be taken up.
            x = i * numpy.exp(u)
            return vt * u + r * (x - i) - tc * theta * v * (x - i)

        top = optimize.minimize_scalar(lambda u: -spare(u), bounds=(0, 20), method="bounded", options={"xatol": 1e-10})
        rows.append((v, theta, tc, re, ri, vt, i, gain(i), gain(1e9), one, spare(top.x) / tc))
    write("runaway.csv", ["V", "theta", "tc", "R_E", "r_int", "V_T", "I_q", "gain", "greatest", "I_1", "lag"], rows,
          "Runaway: loop gain by differences, current of unity loop gain by root finding, greatest lag by maximisation", SCRIPT)
    # The threshold with V_T at the junction's own temperature: the transistor's current is followed in time from a little below and a little above, and bisected.
    rows = []
    for v, theta, tc, r, t, i in [(46, 4.0, 2.1e-3, 0.2725, 52, 0.1038), (46, 5.0, 2.1e-3, 0.2725, 60, 0.1038), (60, 5, 2e-3, 0.15, 80, 0.03), (35, 12, 2.2e-3, 0.33, 40, 0.04)]:
        def settled(warm):
            # The exponential law V_BE = V_g + (V_0 - V_g)*T/T_q + V_T*ln(I/I_q), whose V_g gives the fall tc at I_q; heat drives the junction until it is back or past 300 C.
            tq = t + 273.15

            def amps(temperature):
                vt = constants.k * temperature / constants.e
                return optimize.brentq(lambda u: vt * u + r * i * numpy.expm1(u) - tc * (temperature - tq), -5, 40, xtol=1e-14, rtol=1e-14)

            run = integrate.solve_ivp(lambda _, y: [theta * v * i * numpy.expm1(amps(y[0])) - (y[0] - tq)], (0, 400), [tq + warm], rtol=1e-10, atol=1e-10,
                                      events=[hot, cool(tq + 1e-3)], method="LSODA")
            return len(run.t_events[0]) == 0, i * numpy.exp(amps(tq + warm))

        def hot(_, y):
            return y[0] - 573.15

        def cool(limit):
            event = lambda _, y: y[0] - limit
            event.terminal = True
            return event

        hot.terminal = True
        low, high = 1.0, 573.0 - t - 273.15
        for _ in range(45):
            middle = (low + high) / 2
            low, high = (middle, high) if settled(middle)[0] else (low, middle)
        rows.append((v, theta, tc, r, t, i, settled((low + high) / 2)[1]))
    write("runaway-threshold.csv", ["V", "theta", "tc", "R", "T_q", "I_q", "I_2"], rows,
          "Runaway threshold, V_T at the junction's own temperature: bisection over the temperature from which the junction, followed in time, no longer comes back", SCRIPT)
    # The 'dI over dT' form: heat of a transistor with resistors, dP/dI by a complex step.
    rows = []
    for vcc, rc, re, ic, di, dt in [(30, 2e3, 4.7e3, 1.5e-3, 0.131e-3, 50), (30, 2e3, 4.7e3, 1.5e-3, 0.131e-3, 40), (24, 100, 10, 20e-3, 1e-3, 30)]:
        x = ic + 1e-30j
        slope = (x * (vcc - x * (rc + re))).imag / 1e-30
        rows.append((slope, di, dt, 1 / (slope * di / dt)))
    write("runaway-resistance.csv", ["dP_dI", "dI", "dT", "theta"], rows, "Thermal resistance at which the heat's growth just feeds itself", SCRIPT)


def spreader():
    rows = []
    for vbb, vbe, tc, hot in [(3.76, 0.62, 2.1e-3, 2), (2.5, 0.65, 2e-3, 2), (1.3, 0.6, 2.2e-3, 2)]:
        factor = optimize.brentq(lambda m: vbe * m - vbb, 1e-3, 100, xtol=1e-15)

        def voltage(rise, m):
            return m * (vbe - tc * rise)

        step = 1e-20
        whole = voltage(1j * step, factor).imag / step
        split = voltage(1j * step, hot).imag / step
        rows.append((vbb, vbe, tc, hot, factor, whole, split, voltage(0, hot), vbb - voltage(0, hot)))
    write("spreader.csv", ["V_BB", "V_BE", "tc", "n_hot", "m", "whole", "split", "V_hot", "V_cool"], rows,
          "Spreaders: factor by root finding, drifts by a complex step of their voltage over temperature", SCRIPT)


def spreading():
    """The base as a disc heated evenly over a smaller one, cooled evenly below: the series of Bessel functions, at the centre."""
    zeros = special.jn_zeros(1, 20000)
    rows = []
    for a_s, t, a_p, k, r0 in [(3.6e-4, 10e-3, 75e-4, 200, 2.4), (4e-4, 8e-3, 60e-4, 200, 3.0), (2e-4, 6e-3, 100e-4, 200, 2.0), (10e-4, 10e-3, 45e-4, 200, 1.5), (3.6e-4, 10e-3, 75e-4, 390, 2.4), (3e-4, 20e-3, 100e-4, 150, 0.2)]:
        a, b = numpy.sqrt(a_s / numpy.pi), numpy.sqrt(a_p / numpy.pi)
        h = 1 / (r0 * a_p)
        lam = zeros / b
        phi = (numpy.tanh(lam * t) + lam * k / h) / (1 + lam * k / h * numpy.tanh(lam * t))
        rows.append((a_s, t, a_p, k, r0, (2 * special.j1(lam * a) / (numpy.pi * a * k * b**2 * lam**2 * special.j0(zeros)**2) * phi).sum()))
    write("spreading.csv", ["A_s", "t", "A_p", "k", "R_0", "theta_sp"], rows, "Spreading resistance of a sink's base: the exact series on a disc, at the centre of the device", SCRIPT)


def stability():
    """Leakage by repeated doubling; a bias's loop of base and emitter solved, and its slopes by complex steps."""
    rows = []
    for h, rb, re, h2 in [(100, 240e3, 0, 120), (100, 240e3, 1e3, 50), (50, 47e3, 4.7e3, 300), (300, 0, 220, 100)]:
        def collector(beta, leak, vbe):
            # V = I_B R_B + V_BE + (I_B + I_C) R_E with I_C = beta I_B + (beta + 1) I_CBO, two unknowns.
            a = numpy.array([[rb + re, re], [-beta, 1]], dtype=complex)
            return numpy.linalg.solve(a, numpy.array([5 - vbe, (beta + 1) * leak], dtype=complex))[1]

        step = 1e-20
        rows.append((h, rb, re, h2, collector(h, 0, 0.65).real, collector(h, 1j * step, 0.65).imag / step, collector(h, 0, 0.65 + 1j * step).imag / step, collector(h2, 0, 0.65).real))
    write("bias-stability.csv", ["h_FE", "R_B", "R_E", "h_2", "I_C", "S", "S_V", "I_C2"], rows, "Stability factors of a bias: the loop of base and emitter solved, slopes by complex steps", SCRIPT)
    rows = []
    for i0, t0, doubling, times in [(1e-9, 25, 10, 5), (0.1e-6, 25, 8.5, 11), (1e-6, 100, 10, -3)]:
        rows.append((i0, t0, doubling, t0 + doubling * times, i0 * numpy.prod([2.0 if times > 0 else 0.5] * abs(times))))
    write("leakage.csv", ["I_0", "T_0", "dT_2", "T", "I"], rows, "Leakage that doubles for a rise: multiplied step by step", SCRIPT)
    rows = [(i1, t1, i2, t2, optimize.brentq(lambda d: i1 * 2 ** ((t2 - t1) / d) - i2, 1, 100, xtol=1e-13)) for i1, t1, i2, t2 in [(0.1e-6, 25, 2e-6, 70), (1e-6, 25, 1e-3, 150), (10e-9, 0, 15e-9, 6)]]
    write("leakage-two.csv", ["I_1", "T_1", "I_2", "T_2", "dT_2"], rows, "The rise that doubles a leakage, from two values, by root finding", SCRIPT)


def junctions():
    """V_BE at any current and temperature: the exponential law inverted by root finding, its saturation current carried in temperature by the band gap that the fall of V_BE implies."""
    rows = []
    for v0, i0, t0, tc, i, t in [(0.62, 0.1, 25, 2.1e-3, 0.1038, 55), (0.62, 0.1, 25, 2.1e-3, 3.0, 120), (0.66, 0.03, 25, 2.0e-3, 1e-3, 0), (0.7, 2e-3, 40, 1.9e-3, 10e-3, 100)]:
        t0k, tk = t0 + 273.15, t + 273.15
        gap = v0 + tc * t0k

        def saturation(temperature):
            return i0 * numpy.exp(-(gap - tc * temperature) * constants.e / (constants.k * temperature))

        def base(temperature, current):
            return optimize.brentq(lambda v: numpy.log(saturation(temperature)) + v * constants.e / (constants.k * temperature) - numpy.log(current), 0, 2, xtol=1e-15, rtol=1e-14)

        fall = -(base(tk + 0.5, i) - base(tk - 0.5, i))
        rows.append((v0, i0, t0, tc, i, t, base(tk, i), constants.k * tk / constants.e, saturation(tk), base(tk, i0), fall))
    write("base-emitter.csv", ["V_0", "I_0", "T_0", "tc", "I", "T", "V_BE", "V_T", "I_s", "V_I0", "fall"], rows, "Base-emitter voltage over current and temperature: the exponential law inverted by root finding", SCRIPT)
    rows = [(p, r, t_a, t_a + p * r) for p, r, t_a in [(20, 3.58, 35), (5.5, 62.5, 50), (90, 0.4, 25)]]
    rows = [(optimize.brentq(lambda p: t_a + p * r - t_j, 0, 1e4, xtol=1e-12), r, t_a, t_j) for _, r, t_a, t_j in rows]
    write("allowed-power.csv", ["P", "theta", "T_a", "T_J"], rows, "Watts at which a chain of resistances brings its junction to the limit, by root finding", SCRIPT)


def tracking():
    """The network above with the loop of current and heat closed: two transistors, the sensor's drift that of one junction."""
    v, i, r, tc = 46.0, 0.1038, 0.2725, 2.1e-3
    ambient = 35.0
    idle = v * i
    design = numpy.linalg.solve(numpy.array([network(e, numpy.zeros(6)) for e in numpy.eye(6)]).T, -network(numpy.zeros(6), [idle, 0, idle, 0, 0, 0]))

    def amps(y, j):
        vt = constants.k * (ambient + y[j] + 273.15) / constants.e
        return current(tc * (y[j] - design[j]) - tc * (y[5] - design[5]), i, r, vt)

    def rates(music):
        return lambda _, y: network(y, [max(music, v * amps(y, 0)), 0, max(music, v * amps(y, 2)), 0, 0, 0])

    at = [1, 59, 60.5, 65, 90, 120, 120.2, 121, 125, 150, 200, 300, 600.0]
    y, rows = design, []
    for start, end, music in [(0.0, 60.0, 0.0), (60.0, 120.0, 20.0), (120.0, 600.0, 0.0)]:
        inside = [t for t in at if start < t <= end]
        told = inside if end in inside else [*inside, end]
        out = solve(rates(music), (start, end), y, told, 1e-11)
        rows += [(t, x[0], x[4], x[5], amps(x, 0)) for t, x in zip(told, out.T) if t in inside]
        y = out[:, -1]
    write("bias-tracking.csv", ["t", "junction", "sink", "sensor", "I"], rows,
          "Idle current on the network of two transistors at 46 V and 103.8 mA, 20 W each from 60 to 120 s, the loop of current and heat closed, V_T with the junction: integrated in time", SCRIPT)


# Air at 1 atm: Cengel, table A-15.
AIR = numpy.array([
    (0, 0.02364, 1.338, 0.7362), (5, 0.02401, 1.382, 0.7350), (10, 0.02439, 1.426, 0.7336), (15, 0.02476, 1.470, 0.7323), (20, 0.02514, 1.516, 0.7309),
    (25, 0.02551, 1.562, 0.7296), (30, 0.02588, 1.608, 0.7282), (35, 0.02625, 1.655, 0.7268), (40, 0.02662, 1.702, 0.7255), (45, 0.02699, 1.750, 0.7241),
    (50, 0.02735, 1.798, 0.7228), (60, 0.02808, 1.896, 0.7202), (70, 0.02881, 1.995, 0.7177), (80, 0.02953, 2.097, 0.7154), (90, 0.03024, 2.201, 0.7132),
    (100, 0.03095, 2.306, 0.7111), (120, 0.03235, 2.522, 0.7073)])


def fin(h, k, t, length):
    """Efficiency of a fin with an insulated end: theta'' = 2 h/(k t) theta as a boundary value problem."""
    m2 = 2 * h / (k * t) * length**2
    out = integrate.solve_bvp(lambda x, y: numpy.vstack((y[1], m2 * y[0])), lambda a, b: numpy.array([a[0] - 1, b[1]]),
                              numpy.linspace(0, 1, 200), numpy.vstack((numpy.ones(200), numpy.zeros(200))), tol=1e-12, max_nodes=200000)
    assert out.success
    return -out.sol(0)[1] / m2


def sinks():
    rows = []
    for width, height, length, t, n, eps, k, back, p, air in [
        (0.3, 0.1, 0.04, 0.002, 24, 0.85, 200, 0, 80, 35),
        (0.3, 0.1, 0.04, 0.002, 24, 0.85, 200, 0, 10, 35),
        (0.2, 0.165, 0.05, 0.003, 16, 0.9, 180, 0, 60, 25),
        (0.12, 0.18, 0.024, 0.001, 14, 0.05, 200, 1, 29, 30),
        (0.1, 0.1, 0.025, 0.0015, 6, 0.0, 150, 0, 15, 40),
    ]:
        s = (width - n * t) / (n - 1)

        def loss(rise):
            film = air + rise / 2
            ka, nu, pr = (numpy.interp(film, AIR[:, 0], AIR[:, c]) for c in (1, 2, 3))
            nu *= 1e-5
            grashof = 9.81 / (film + 273.15) * rise / nu**2
            el = grashof * pr * s**4 / height
            h = ka / s / numpy.sqrt(576 / el**2 + 2.873 / numpy.sqrt(el))
            ra = grashof * pr * height**3
            plate = ka / height * (0.825 + 0.387 * ra ** (1 / 6) / (1 + (0.492 / pr) ** (9 / 16)) ** (8 / 27)) ** 2
            tip = length + t / 2
            channels = (n - 1) * (h * s * height + 2 * h * tip * height * fin(h, k, t, tip)) * rise
            faces = plate * (2 * tip * height * fin(plate, k, t, tip) + back * width * height) * rise
            box = width * height * (1 + back) + 2 * length * (width + height)
            radiated = eps * constants.sigma * box * ((air + rise + 273.15) ** 4 - (air + 273.15) ** 4)
            return channels, faces, radiated

        rise = optimize.brentq(lambda x: sum(loss(x)) - p, 0.5, 120, xtol=1e-12, rtol=1e-13)
        c, f, q = loss(rise)
        rows.append((width, height, length, t, n, eps, k, back, p, air, rise, c + f, q))
    write("plate-fin-sink.csv", ["W", "L", "H", "t", "n", "epsilon", "k", "back", "P", "T_air", "rise", "convected", "radiated"], rows,
          "Plate-fin sinks in still air: fins as boundary value problems, the rise by root finding on the heat balance", SCRIPT)


if __name__ == "__main__":
    foster()
    periodic()
    transient()
    drift()
    runaway()
    spreading()
    junctions()
    stability()
    spreader()
    tracking()
    sinks()
