"""Independent values for the stress of parts (tests/EightOhm.Published, StressChecks and others):

    /usr/bin/python3 tests/references/stress.py

Waveforms integrated, circuits as node equations, limits by root finding and dense scans, rules as differential equations; no formula of the product is copied.
"""

import json

import numpy
from scipy import constants, integrate, optimize

from rectifier import Circuit
from values import HERE, mean, write

SCRIPT = "stress.py"
TIGHT = {"rtol": 1e-12, "atol": 1e-14, "method": "DOP853"}
TURN = 2 * numpy.pi


def root(f, a, b):
    return optimize.brentq(f, a, b, xtol=1e-300, rtol=1e-14)


def integral(f, a, b):
    return integrate.quad(f, a, b, epsabs=0, epsrel=1e-13, limit=400)[0]


def diodes():
    rows = []
    for v0, rt, peak, width, n in [(0.8, 0.012, 24.0, 0.25, 1), (0.75, 0.02, 13.4, 0.337, 2), (0.9, 0.0, 8.0, 0.5, 2), (0.6, 0.1, 2.0, 0.1, 1)]:
        # A pulse of sin² in each half-cycle of length 1; diode A takes the even ones, B the odd ones.
        def pulse(x):
            return peak * numpy.sin(numpy.pi * x / width) ** 2

        def heat(x):
            return pulse(x) * (v0 + rt * pulse(x))

        charge, square, loss = (integral(f, 0, width) for f in (pulse, lambda x: pulse(x) ** 2, heat))
        one = loss / 2  # of two half-cycles a diode conducts in one
        rows.append((v0, rt, charge / 2, numpy.sqrt(square / 2), one, n, charge, numpy.sqrt(square), 2 * n * one))
    write("diode-loss.csv", ["V_0", "r_T", "I_av", "I_rms", "P_diode", "n", "I_dc", "I_rail", "P_rail"], rows,
          "Conduction loss of rectifier diodes: voltage times current of a pulse integrated over both half-cycles", SCRIPT)


def solved():
    def loss(circuit, period, k, corners, voltage):
        pieces = circuit.march(period, corners, 400)
        total = 0.0
        for a, b, sol in pieces:
            grid = numpy.linspace(a, b, 20001)
            i = numpy.array([circuit.outputs(t, sol(t))[0][k] for t in grid])
            total += integrate.simpson(i * voltage(i), x=grid)
        return total / period

    rows = []
    for emf, half, shared, drop, rd, c, idle_p, idle_n in [(37.1, 0.092, 0.046, 0.8, 0.02, 30e-3, 3.2, 3.2), (37.1, 0.092, 0.046, 0.9, 0.0, 30e-3, 5.0, 1.0)]:
        circuit = Circuit(emf, 50, half + rd, shared, drop, c, 0.0, [(idle_p, 0.0, 1.0, 1), (idle_n, 0.0, 1.0, -1)])
        p = [loss(circuit, 0.02, k, numpy.array([0.01]), lambda i: drop + rd * i) for k in (0, 1)]
        rows.append((emf, 50, half, shared, drop, rd, c, idle_p, idle_n, sum(p)))
    write("bridge-loss.csv", ["emf", "f", "half", "shared", "drop", "r_D", "C", "I_p", "I_n", "P"], rows,
          "Bridge loss of a dual-rail supply: voltage times current of the marched waveform", SCRIPT)

    rows = []
    for emf, rs, saturation, n, t, series, c, i in [(35, 0.5, 5e-9, 1.8, 75, 2, 10e-3, 3.0), (37.1, 0.2, 2e-8, 1.7, 60, 1, 30e-3, 3.2)]:
        slope = series * n * constants.k * (t + 273.15) / constants.e
        circuit = Circuit(emf, 50, rs, 0.0, 0.0, c, 0.0, [(i, 0.0, 1.0, 1)], law=(saturation, slope))
        p = loss(circuit, circuit.half, 0, numpy.array([]), lambda x: slope * numpy.log1p(numpy.maximum(x, 0) / saturation))
        rows.append((emf, 50, rs, saturation, n, t, series, c, i, p))
    write("exponential-loss.csv", ["emf", "f", "R_s", "I_s", "n", "t_C", "series", "C", "I", "P"], rows, "The same with diodes of the exponential law", SCRIPT)


def inverse():
    """Without load: the reservoir holds the peak less what conducts; the voltage on a diode that is off, scanned over the cycle."""
    rows = []
    for vfl, reg, x, vd in [(35, 0.06, 0.1, 0.6), (35, 0.06, 0.1, 0.0), (12, 0.2, 0.0, 0.7), (50, 0.05, -0.1, 0.9)]:
        emf = vfl + reg * vfl
        crest = -optimize.minimize_scalar(lambda a: -numpy.sqrt(2) * (emf + x * emf) * numpy.sin(a), bounds=(1, 2), method="bounded", options={"xatol": 1e-10}).fun

        def highest(f):
            grid = numpy.linspace(0, TURN, 2001)
            k = int(numpy.argmax([f(a) for a in grid]))
            fine = optimize.minimize_scalar(lambda a: -f(a), bounds=(grid[max(k - 1, 0)], grid[min(k + 1, 2000)]), method="bounded", options={"xatol": 1e-10})
            return max(-fine.fun, f(grid[k]))

        def e(a):
            return crest * numpy.sin(a)

        held = crest - vd
        bridge_held = crest - 2 * vd

        def bridge(a):
            # The lower end of the winding is clamped one drop below the return; the diode from the upper plate's other end blocks.
            low = -vd
            return bridge_held - (low if e(a) < 0 else low + e(a))

        rows.append((vfl, reg, x, vd, crest, highest(lambda a: held - e(a)), highest(lambda a: held - e(a + numpy.pi)), highest(bridge), highest(lambda a: e(a) + held)))
    write("peak-inverse.csv", ["V_FL", "r_T", "x", "V_D", "V_m", "half_wave", "centre_tap", "bridge", "dual"], rows,
          "Reverse voltage on a rectifier's diode without load, scanned over the cycle", SCRIPT)


def surge():
    rows = []
    for ifsm, t1, t2, ip, n, width in [(400, 8.3e-3, 10e-3, 81.0, 6.2, 4e-3), (200, 10e-3, 8.333e-3, 10.3, 6.2, 6e-3), (50, 8.3e-3, 2e-3, 30, 2.7, 5e-3)]:
        def pulse(peak, t):
            return integral(lambda u: (peak * numpy.sin(numpy.pi * u / t)) ** 2, 0, t)

        rated = pulse(ifsm, t1)
        other = root(lambda i: pulse(i, t2) - rated, 1, 1e4)
        # Both halves of a transformer of turns n : 1 : 1 in parallel: ampere turns n*ip = 2*is.
        each = numpy.linalg.solve(numpy.array([[1.0, 1.0], [1.0, -1.0]]), numpy.array([n * ip, 0.0]))[0]
        primary = pulse(ip, width)
        rows.append((ifsm, t1, rated, t2, other, ip, n, each, primary, pulse(each, width)))
    write("diode-surge.csv", ["I_FSM", "t_1", "rated", "t_2", "I_2", "I_p", "N_r", "I_s", "W_p", "W_s"], rows,
          "I2t of half-sines by integration, of equal I2t by root finding; both halves of a winding in parallel by its ampere-turns", SCRIPT)


def switch_on():
    """Explicit Runge-Kutta of fourth order in small steps, with the bypass and five periods after it; each half-cycle's I2t apart."""
    rows = []
    for line, f, half, c, rp, rh, vd, lim, idle, bypass in [(253, 50, 40.81, 30e-3, 2.25, 0.085, 0.9, 27, 0.7, 1.0), (230, 50, 37.1, 30e-3, 2.25, 0.085, 0.9, 27, 0.0, 1.0)]:
        n, w, crest = line / half, TURN * f, half * numpy.sqrt(2)
        step = 1 / f / 20000

        def resistance(t):
            return rh + 2 * (rp + (lim if t < bypass - step / 2 else 0)) / n**2

        def current(t, v, r):
            return max(crest * abs(numpy.cos(w * t)) - vd - v, 0.0) / r

        v, t, square, first, second, after, best, part, k0 = 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, None
        steps = round((bypass + 5 / f) / step)
        for j in range(steps):
            t = j * step
            r = resistance(t)

            def slope(u, x):
                return (current(u, x, r) - (idle if x > 0 else 0.0)) / c

            a = slope(t, v)
            b = slope(t + step / 2, v + step / 2 * a)
            d = slope(t + step / 2, v + step / 2 * b)
            e = slope(t + step, v + step * d)
            i0, i1 = 2 * current(t, v, r) / n, 2 * current(t + step / 2, v + step / 2 * b, r) / n
            v += step / 6 * (a + 2 * b + 2 * d + e)
            i2 = 2 * current(t + step, v, r) / n
            heat = step / 6 * (i0**2 + 4 * i1**2 + i2**2)
            k = int(numpy.floor((t + step / 2) * 2 * f + 0.5))
            part = part + heat if k == k0 else heat
            k0 = k
            best = max(best, part)
            if t < bypass - step / 2:
                first, square = max(first, i0), square + heat
            else:
                second, after = max(second, i0), after + heat
        rows.append((line, f, half, c, rp, rh, vd, lim, idle, bypass, first, second, square, after, best))
        print(rows[-1])
    write("bypass.csv", ["V_m", "f", "V_half", "C", "R_p", "R_h", "V_D", "R_lim", "I_idle", "bypass", "peak", "second", "I2t", "I2t_second", "half_cycle"], rows,
          "Switch-on through a limiter, its bypass and the second surge, by Runge-Kutta of fourth order in 1/20000 of a period", SCRIPT)


def reservoir():
    rows = []
    for i, n, rs, theta, ir, dt0, life, t0, t, v, vr in [(8.9, 3, 0.018, 4.0, 6.5, 5.0, 2000 * 3600, 90, 57, 57.1, 63), (4.77, 1, 0.05, 8.0, 5.0, 10.0, 5000 * 3600, 85, 60, 42, 50), (1.0, 2, 0.2, 15, 1.2, 5, 1000 * 3600, 105, 45, 30, 35)]:
        # n branches between two nodes; a triangle of current of that rms.
        share = numpy.linalg.solve(numpy.eye(n) * rs, numpy.full(n, rs * i / n))[0]
        peak = share * numpy.sqrt(3)
        power = integral(lambda u: (peak * (2 * u - 1)) ** 2 * rs, 0, 1)
        # The rise as a steady state of C dT/dt = P - T/theta.
        rise = integrate.solve_ivp(lambda _, y: power - y / theta, (0, 60 * theta), [0.0], **TIGHT).y[0, -1]
        # What makes dt0 at ir, in the same path: theta*R from one, the rise at the other.
        path = dt0 / integral(lambda a: (ir * numpy.sqrt(2) * numpy.sin(a)) ** 2, 0, TURN) * TURN
        rated = path * mean(lambda a: (share * numpy.sqrt(2) * numpy.sin(a)) ** 2)
        # The rate of ageing halves every 10 K downwards.
        rate = integrate.solve_ivp(lambda _, y: numpy.log(2) / 10 * y, (t0, t), [1.0], **TIGHT).y[0, -1]
        use = root(lambda k: k * vr - v, 0, 10)
        rows.append((i, n, rs, share, power, theta, rise, ir, dt0, rated, life, t0, t, life / rate, v, vr, use))
    write("reservoir-stress.csv", ["I", "n", "R_s", "I_1", "P", "theta", "rise", "I_R", "dT_0", "rise_rated", "L_0", "T_0", "T", "L", "V", "V_R", "use"], rows,
          "Ripple current in equal capacitors: Joule's heat integrated, its rise as a steady state, ageing as a differential equation", SCRIPT)


def winding():
    rows = []
    for i1, d, i2, v, ir in [(12.0, 0.2, 2.0, 35, 11.43), (14.5, 0.5, 1.5, 35, 11.43), (5.0, 0.9, 0.0, 50, 4.9)]:
        both = numpy.sqrt(integral(lambda u: i1**2, 0, d) + integral(lambda u: i2**2, d, 1))
        volt_amperes = 2 * numpy.sqrt(mean(lambda a: (v * numpy.sqrt(2) * numpy.sin(a)) ** 2)) * both
        allowed = root(lambda x: integral(lambda u: i1**2, 0, x) + integral(lambda u: i2**2, x, 1) - ir**2, 1e-9, 1)
        rows.append((i1, d, i2, both, v, volt_amperes, ir, allowed))
    write("winding-duty.csv", ["I_1", "d", "I_2", "I_eq", "V_FL", "S", "I_R", "allowed"], rows, "Rms current over a duty by integration, the duty allowed by root finding", SCRIPT)


def bridged():
    rows = []
    for v, vp, z, deg, re, n in [(46, 30, 8, 0, 0.0, 1), (46, 28, 8, 45, 0.22, 3), (24, 20, 4, -60, 0.1, 2)]:
        phi = numpy.radians(deg)

        def both(level, resistor):
            # One load current, two outputs in opposite phase.
            def heat(a):
                i = 2 * level / z * numpy.sin(a - phi)
                # One side of each half conducts; the emitter resistors' own heat is not the transistors'.
                return 2 * ((v - numpy.sign(i) * level * numpy.sin(a)) * abs(i) - i * i * resistor)
            return mean(heat, phi, phi + numpy.pi)

        power = mean(lambda a: 2 * vp * numpy.sin(a) * 2 * vp / z * numpy.sin(a - phi))
        swing = -optimize.minimize_scalar(lambda a: -(vp * numpy.sin(a) - vp * numpy.sin(a + numpy.pi)), bounds=(1, 2), method="bounded", options={"xatol": 1e-10}).fun
        seen = vp / (2 * vp / z)
        found = optimize.minimize_scalar(lambda x: -both(x, 0.0), bounds=(0, v), method="bounded", options={"xatol": 1e-11 * v})
        worst = max(-found.fun, both(v, 0.0))
        rows.append((v, vp, z, deg, re, n, seen, swing, power, both(vp, re / n), worst))
    write("bridged.csv", ["V", "V_p", "Z", "phi_deg", "R_E", "n", "seen", "swing", "P_L", "P_D", "worst"], rows,
          "Two class-B stages in bridge: instantaneous powers of one load and four sides integrated, the worst level by search", SCRIPT)


def sinks():
    rows = []
    for theta, d0, p, dt, tj, one, jc, cs in [(0.40, 75, 60, 40, 125, 18, 0.83, 0.35), (0.9, 50, 20, 30, 150, 20, 0.7, 0.5), (0.25, 60, 200, 75, 110, 33, 1.0, 0.3)]:
        # Heat leaves as k*dT^(5/4); k from the told point.
        k = numpy.exp(numpy.log(d0 / theta) - integrate.quad(lambda u: 1.25 / u, 1, d0, epsabs=0, epsrel=1e-13)[0])

        def gone(x):
            return k * x * numpy.sqrt(numpy.sqrt(x))

        rise = root(lambda x: gone(x) - p, 1e-3, 1e4)
        # Junction, case, sink as nodes; the sink's temperature that makes the junction's.
        def junction(sink):
            a = numpy.array([[1 / jc, -1 / jc], [-1 / jc, 1 / jc + 1 / cs]])
            return numpy.linalg.solve(a, numpy.array([one, sink / cs]))[0]

        sink = root(lambda s: junction(s) - tj, -300, 400)
        rows.append((theta, d0, dt, dt / gone(dt), p, rise, rise / p, tj, one, jc, cs, sink))
    write("rated-sink.csv", ["theta_0", "dT_0", "dT", "theta", "P", "rise", "theta_P", "T_J", "P_1", "theta_JC", "theta_CS", "T_s"], rows,
          "A sink that takes heat as the 5/4th power of its rise, by root finding; the sink below a junction by node equations", SCRIPT)


def bias():
    rows = []
    for m, dv, nj, tc, dtj, tcs, dts, ncb, icbo, idrv in [(5.7, 5e-3, 2, 2.1e-3, 60, 2.2e-3, 30, 3, 1e-3, 29.8e-3), (2.0, 3e-3, 2, 2.1e-3, 40, 2.0e-3, 35, 5, 0.2e-3, 20e-3), (4.0, 10e-3, 4, 2.0e-3, -10, 2.1e-3, 5, 1, 5e-6, 4e-3)]:
        # nj equal unknown changes of junction share, whose sum is what the multiplier's change leaves over.
        share = numpy.linalg.lstsq(numpy.vstack([numpy.ones(nj), numpy.eye(nj)[1:] - numpy.eye(nj)[:-1]]), numpy.r_[m * dv, numpy.zeros(nj - 1)], rcond=None)[0][0]
        over = numpy.linalg.lstsq(numpy.vstack([numpy.ones(nj), numpy.eye(nj)[1:] - numpy.eye(nj)[:-1]]), numpy.r_[nj * tc * dtj - m * tcs * dts, numpy.zeros(nj - 1)], rcond=None)[0][0]
        # n transistors each push their leakage into one node, which the driver would otherwise feed.
        left = root(lambda x: x + sum(icbo for _ in range(ncb)) - idrv, -1, 1)
        rows.append((m, dv, nj, share, tc, dtj, tcs, dts, over, ncb, icbo, idrv, (idrv - left) / idrv))
    write("bias-errors.csv", ["m", "dV", "n_j", "share", "tc", "dT_J", "tc_s", "dT_s", "tracking", "n", "I_CBO", "I_D", "leak"], rows,
          "Errors of a bias loop shared by its junctions, and leakage at a driver's node, as linear systems", SCRIPT)

    rows = []
    for h, rb, re, di, dv in [(100, 10e3, 1e3, 1e-6, -0.04), (50, 470, 47, 20e-9, -0.1), (200, 100e3, 0.0, 0.5e-6, -0.02)]:
        # Unknowns I_C, I_B: I_C = h I_B + (h+1) I_0; V = I_B R_B + V_BE + (I_B + I_C) R_E. All changes.
        def change(leak, vbe):
            a = numpy.array([[1.0, -h], [re, rb + re]])
            return numpy.linalg.solve(a, numpy.array([(h + 1) * leak, -vbe]))[0]

        rows.append((h, rb, re, di, dv, change(1.0, 0.0), change(0.0, 1.0), change(di, dv)))
    write("bias-shift.csv", ["h", "R_B", "R_E", "dI", "dV", "S", "S_V", "shift"], rows, "Change of a collector current with leakage and V_BE, the loop solved as a linear system", SCRIPT)


def signals():
    rows = []
    for e1, f1, e2, f2 in [(8e-9, 10, 3.3e-9, 1e3), (30e-9, 1, 9e-9, 1e3), (5e-9, 20, 4.6e-9, 200)]:
        white, pink = numpy.linalg.solve(numpy.array([[1.0, 1 / f1], [1.0, 1 / f2]]), numpy.array([e1**2, e2**2]))
        corner = root(lambda f: pink / f / white - 1, 1e-6, 1e9)
        rows.append((e1, f1, e2, f2, numpy.sqrt(white), corner))
    write("flicker-corner.csv", ["e_1", "f_1", "e_2", "f_2", "white", "corner"], rows, "White and 1/f part of two densities as a linear system; their meeting by root finding", SCRIPT)

    rows = []
    for a, da, b, db in [(1e5, 0, 23.6, 0), (1000, -90, 23.6, -1.35), (40, -100, 25, -38), (300, 0, 20, 0)]:
        opened, closed = a * numpy.exp(1j * numpy.radians(da)), b * numpy.exp(1j * numpy.radians(db))

        # closed*(1 + opened*B) = opened, real and imaginary part.
        p = closed * opened
        x = numpy.linalg.solve(numpy.array([[p.real, -p.imag], [p.imag, p.real]]), numpy.array([(opened - closed).real, (opened - closed).imag]))
        fraction = x[0] + 1j * x[1]
        loop = opened * fraction
        rows.append((a, da, b, db, abs(fraction), numpy.degrees(numpy.angle(fraction)), abs(loop), numpy.degrees(numpy.angle(loop)), abs(1 + loop)))
    write("complex-fraction.csv", ["A", "phi_A", "A_CL", "phi_CL", "B", "phi_B", "T", "phi_T", "F"], rows,
          "The fraction that makes one complex gain of another, by real and imaginary part as a linear system", SCRIPT)

    rows = [(a, b, root(lambda x: a / (1 + a * x) - b, 0, 1)) for a, b in [(1e5, 23.6), (300, 20), (50, 23.6), (2e3, 100)]]
    write("real-fraction.csv", ["A", "A_CL", "B"], rows, "The fraction that makes one gain of another, by root finding on the closed loop", SCRIPT)

    rows = []
    for r, p1, d2, d3, d4, d5 in [(8, 100.0, 4e-5, 2.5e-4, 0.0, 1.2e-4), (4, 2.0, 0.05, 0.1, 0.02, 0.3), (8, 25.0, 0.7, 0.2, 0.5, 0.1)]:
        peak = numpy.sqrt(2 * p1 * r)
        t = numpy.arange(4096) * TURN / 4096
        x = peak * (numpy.sin(t) + d2 * numpy.sin(2 * t) + d3 * numpy.cos(3 * t) + d4 * numpy.sin(4 * t + 1) + d5 * numpy.cos(5 * t))
        lines = abs(numpy.fft.rfft(x)) / 2048
        rest = x - peak * numpy.sin(t)
        powers = [lines[k] ** 2 / 2 / r for k in (2, 3, 4, 5)]
        thd = numpy.sqrt((rest**2).mean() / ((x - rest) ** 2).mean())
        levels = [20 * numpy.log10(max(lines[k] / lines[1], 1e-19)) for k in (2, 3, 4, 5)]
        rows.append((r, p1, d2, d3, d4, d5, thd, *powers, *levels, numpy.sqrt((rest**2).mean() / (x**2).mean()), (x**2).mean() / r))
    write("harmonics.csv", ["R", "P_1", "D_2", "D_3", "D_4", "D_5", "THD", "P_2", "P_3", "P_4", "P_5", "L_2", "L_3", "L_4", "L_5", "THD_R", "P"], rows,
          "A distorted sine synthesised; what is left without its fundamental, by mean squares and by a Fourier transform", SCRIPT)


def driver_area():
    """The drivers of the Tern's cards on a constant rail: current and voltage of one over the whole cycle, scanned densely over level and angle."""
    def card(name):
        return json.loads((HERE / f"../../notebooks/course/cards/{name}.json").read_text(encoding="utf-8"))

    def number(text):
        value, unit = text.split()
        return float(value) * {"mA": 1e-3, "A": 1, "V": 1, "ms": 1e-3, "mΩ": 1e-3, "Ω": 1, "K/W": 1, "mV/K": 1e-3, "W": 1, "°C": 1}[unit]

    def gain(cards, i):
        return min(float(numpy.interp(numpy.log(max(i, 1e-30)), [numpy.log(number(p["I_C"])) for p in c["h_FE"]], [float(p["h_FE"]) for p in c["h_FE"]])) for c in cards)

    out, drv = (card("output-npn"), card("output-pnp")), (card("driver-npn"), card("driver-pnp"))
    rows = []
    for rail, z, deg, pairs, re, idle, between, case in [(48.0, 4, 45, 3, 0.22, 0.1038, 47, 60), (44.0, 4, 0, 3, 0.22, 0.1038, 47, 70), (50.0, 8, -30, 2, 0.22, 0.08, 100, 40)]:
        vt = constants.k * (55 + 273.15) / constants.e

        def vbe(c):
            point = c["V_BE"]
            return number(point["V_BE"]) - number(point["tc"]) * (55 - number(c["T_ref"])) + vt * numpy.log(idle / number(point["I_C"]))

        inside = sum(number(c["r_int"]) for c in out) / 2
        standing = (sum(vbe(c) for c in out) + 2 * idle * (re + inside)) / between
        phi = numpy.radians(deg)
        full = rail * z / abs(z * numpy.exp(1j * phi) + re / pairs)

        def base(i):
            return i / gain(out, i / pairs) if i > 0 else 0.0

        angles = numpy.linspace(0, TURN, 4001)
        line = drv[0]["safeArea"]["lines"][0]
        vs, amps = [number(p["V_CE"]) for p in line["points"]], [number(p["I_C"]) for p in line["points"]]
        start = number(line["secondBreakdownFrom"])
        watts = start * amps[vs.index(start)]
        left = numpy.interp(case, [number(drv[0]["T_ref"]), number(drv[0]["T_J"])], [1, 0])

        def limit(v):
            broken = left * 10 ** numpy.interp(numpy.log10(v), numpy.log10(vs), numpy.log10(amps)) if v >= start else numpy.inf
            return min(amps[0], left * watts / v, broken)

        def use(level, a):
            return (base(level / z * numpy.sin(a)) + standing) / limit(max(rail - level * numpy.sin(a + phi), 1e-3))

        scan = [(max(use(level, a) for a in angles[::20]), level) for level in numpy.linspace(0.01 * full, full, 100)]
        level = max(scan)[1]
        a0 = angles[int(numpy.argmax([use(level, a) for a in angles]))]
        fine = optimize.minimize(lambda x: -use(min(max(x[0], 0.01 * full), full * (1 - 1e-9)), x[1]), [level, a0], method="Nelder-Mead",
                                 options={"xatol": 1e-9, "fatol": 1e-13, "maxiter": 4000, "initial_simplex": [[level, a0], [level * 0.99, a0], [level, a0 + 0.01]]})

        def heat(v):
            grid = numpy.linspace(0, numpy.pi, 2001)
            moment = [(rail - v * numpy.sin(a + phi)) * base(v / z * numpy.sin(a)) for a in grid]
            return rail * standing + integrate.simpson(moment, x=grid) / TURN

        warm = optimize.minimize_scalar(lambda v: -heat(v), bounds=(0.2 * full, full), method="bounded", options={"xatol": 1e-6})
        worst = max(-warm.fun, heat(full))
        top = base(full / z)
        rows.append((rail, z, deg, pairs, re, idle, between, case, standing, -fine.fun, worst, top, top + standing))
    write("driver-area.csv", ["V", "Z", "phi_deg", "n", "R_E", "I_q", "R", "T_C", "I_D", "use", "worst", "I_B", "I_pk"], rows,
          "Drivers of the Tern's cards on a constant rail: utilisation of the dc area over the whole cycle by a dense scan and a simplex search; worst mean heat by Simpson's rule over levels", SCRIPT)


def endurance():
    r, tau = numpy.array([0.08, 0.17, 0.33, 0.25]), numpy.array([0.0012, 0.011, 0.07, 0.5])
    rows = []
    for v, i, case, limit in [(50, 2.37, 80, 150), (46, 4.65, 60, 150), (30, 5.0, 40, 125)]:
        # The rise by integrating each term's own differential equation.
        def rise(t):
            return v * i * sum(integrate.solve_ivp(lambda _, y: (x - y) / k, (0, t), [0.0], **TIGHT).y[0, -1] for x, k in zip(r, tau))

        rows.append((v, i, case, limit, root(lambda u: rise(numpy.exp(u)) - (limit - case), numpy.log(1e-5), numpy.log(5)) if v * i * r.sum() > limit - case else 0))
    rows = [(*x[:4], numpy.exp(x[4]) if x[4] else 0.0) for x in rows]
    write("endurance.csv", ["V", "I", "T_C", "T_J", "t"], rows, "How long a power may last before a junction is at its limit: the terms' differential equations integrated, the time by root finding; 0 for ever", SCRIPT)


if __name__ == "__main__":
    diodes()
    solved()
    inverse()
    surge()
    reservoir()
    winding()
    bridged()
    sinks()
    bias()
    signals()
    driver_area()
    endurance()
    switch_on()
