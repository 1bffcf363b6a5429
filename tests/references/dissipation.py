"""Independent values for the dissipation of output stages in tests/EightOhm.Published:

    /usr/bin/python3 tests/references/dissipation.py

Instantaneous power of each transistor integrated over the waveform; maxima by search, crossover currents by root finding on
the loop of the bias; no formula of the product is copied.
"""

import numpy
from scipy import integrate, optimize

from values import write

SCRIPT = "dissipation.py"
TURN = 2 * numpy.pi


def average(f, breaks):
    """The mean of f over a period, integrated in pieces between the angles where the current changes sides."""
    edges = sorted({0.0, TURN, *(b % TURN for b in breaks)})
    return sum(integrate.quad(f, a, b, epsabs=0, epsrel=1e-13, limit=200)[0] for a, b in zip(edges, edges[1:])) / TURN


def search(f, low, high, points=400):
    """The maximum of f: the best of a scan, refined about it."""
    xs = numpy.linspace(low, high, points)
    k = int(numpy.argmax([f(x) for x in xs]))
    a, b = xs[max(k - 1, 0)], xs[min(k + 1, points - 1)]
    found = optimize.minimize_scalar(lambda x: -f(x), bounds=(a, b), method="bounded", options={"xatol": 1e-10})
    return max((-found.fun, found.x), (f(low), low), (f(high), high))


def class_b_moment(v, vp, z, phi, re, n):
    """Heat of all transistors, of all emitter resistors, rail power and load power at an angle of the output."""
    def at(a):
        out, i = vp * numpy.sin(a), vp / z * numpy.sin(a - phi)
        each = abs(i) / n  # only one side conducts
        return n * each * (v - numpy.sign(i) * out - each * re), n * each**2 * re, v * abs(i), out * i
    return at


def class_b():
    rows = []
    for v, vp, z, deg, re, n, x in [(46, 28, 4, 0, 0.22, 3, 0.1), (46, 40, 4, 45, 0.22, 3, 0.1), (23, 17.9, 8, 0, 0, 1, 0.06), (30, 25, 16, -30, 0.47, 1, 0.15),
                                    (60, 20, 2, 60, 0.33, 5, 0.1), (55, 48, 8, -75, 0.1, 2, 0.2), (46, 13.4, 4, 0, 0, 1, 0.1), (24, 6, 4, 85, 0.22, 2, 0.1)]:
        phi = numpy.radians(deg)

        def part(k, rail=v, level=vp):
            m = class_b_moment(rail, level, z, phi, re, n)
            return average(lambda a: m(a)[k], [phi, phi + numpy.pi])

        # Full swing: the level at which the emitters' peak voltage is the rail.
        emitter = -optimize.minimize_scalar(lambda a: -abs(numpy.sin(a) + re / n / z * numpy.sin(a - phi)), bounds=(0, numpy.pi), method="bounded", options={"xatol": 1e-12}).fun
        full = v / emitter
        worst, level = search(lambda u: part(0, v, u), 1e-6 * full, full, 60)
        if level < full * (1 - 1e-6):  # a maximum itself gives only half the digits: the root of a symmetric difference gives all
            level = optimize.brentq(lambda u: part(0, v, u * 1.01) - part(0, v, u * 0.99), 0.9 * level, min(1.1 * level, full), xtol=1e-13, rtol=1e-13)
        high = search(lambda u: part(0, v * (1 + x), u), 1e-6 * full, full * (1 + x), 60)[0]
        supply, load = part(2), part(3)
        rows.append((v, vp, z, deg, re, n, supply, supply / v / 2, load, load + part(1), part(0), load / supply, full, worst, worst / (2 * n), level, x, high))
    write("class-b-stage.csv", ["V", "V_p", "Z", "phi_deg", "R_E", "n", "P_S", "I_rail", "P_L", "P_LR", "P_D", "eta", "V_full", "P_worst", "P_one", "V_worst", "x", "P_high"], rows,
          "Class B with emitter resistors into a load with a phase: powers at a level by integration over a period, the worst over the level by search", SCRIPT)


def peaks():
    rows = []
    for v, z, deg, re, n in [(1, 1, 0, 0, 1), (1, 1, 45, 0, 1), (1, 1, 60, 0, 1), (46, 4, 45, 0.22, 3), (46, 4, -60, 0.22, 3), (30, 8, 30, 0.47, 1), (55, 2, 90, 0.1, 4), (46, 8, -20, 0, 2)]:
        phi = numpy.radians(deg)
        seen = z * numpy.exp(1j * phi) + re / n

        def side(vp):
            def heat(a):
                out, i = vp * numpy.sin(a), vp / z * numpy.sin(a - phi)
                return (v - out - i * re / n) * i if i > 0 else 0.0
            return search(heat, 0, TURN, 2000)

        full = v * z / abs(seen)
        best = max(side(full * k)[0] for k in numpy.linspace(0.05, 1, 39))
        angle = side(full)[1]

        def slope(a):  # by a complex step
            c = a + 1e-30j
            out, i = full * numpy.sin(c), full / z * numpy.sin(c - phi)
            return ((v - out - i * re / n) * i).imag / 1e-30
        angle = optimize.brentq(slope, angle - 0.02, angle + 0.02, xtol=1e-15)
        out, i = full * numpy.sin(angle), full / z * numpy.sin(angle - phi)
        rows.append((v, z, deg, re, n, best, out, out + i * re / n, v - out - i * re / n))
    write("class-b-peak.csv", ["V", "Z", "phi_deg", "R_E", "n", "p_max", "out", "emitter", "across"], rows,
          "Greatest instantaneous heat of one side in class B: search over angle and level; where it happens by the root of the slope", SCRIPT)


def off_side(load, idle, r, vt):
    """Around the bias loop: two junctions and two resistors keep the voltage that they have at idle."""
    def loop(u):
        off = idle * numpy.exp(u)
        on = off + load
        return vt * (u + numpy.log(on / idle)) + r * (on + off - 2 * idle)
    low = -(numpy.log(1 + load / idle) + r * load / vt + 2)
    return idle * numpy.exp(optimize.brentq(loop, low, 1.0, xtol=1e-15, rtol=1e-15))


def crossover():
    rows = [(i, q, r, vt, off_side(i, q, r, vt), 1 + r * (2 * q - i - 2 * off_side(i, q, r, vt))) for i, q, r, vt in
            [(1.0, 0.3114, 0.0908, 0.02828), (0.05, 0.3114, 0.0908, 0.02828), (11.5, 0.3114, 0.0908, 0.02828), (0.5, 0.01, 0.0, 0.025), (2.0, 1.5, 0.2, 0.03), (3e-3, 1e-3, 0.5, 0.0257)]]
    write("side-currents.csv", ["I_o", "I_Q", "R", "V_T", "i_off", "one_and_drop"], rows, "Current of the side that lets go in class AB, by root finding on the loop of the bias", SCRIPT)


AB = [(46, 28.6, 4, 0, 0.22, 3, 0.1038, 0.0525, 0.02828), (46, 28.6, 4, 0, 0.22, 3, 0.1038, 0.0, 0.02828), (46, 40, 4, 45, 0.22, 3, 0.1038, 0.0525, 0.02828),
      (50, 0.5, 8, 0, 0.22, 3, 0.1038, 0.0525, 0.02828), (35, 20, 8, -60, 0.0, 1, 0.02, 0.0, 0.0257), (30, 12, 8, 30, 0.47, 1, 0.8, 0.05, 0.03), (46, 35, 4, 0, 0.22, 3, 1e-3, 0.0, 0.028)]


def ab_heat(v, vp, z, phi, re, n, iq, r_int, vt):
    idle = n * iq

    def heat(a):
        out, i = vp * numpy.sin(a), vp / z * numpy.sin(a - phi)
        off = off_side(abs(i), idle, (re + r_int) / n, vt)
        upper, lower = (off + i, off) if i > 0 else (off, off - i)
        return upper * (v - out - upper * re / n) + lower * (v + out - lower * re / n)

    turn = [0.0]
    for scale in (0.5, 2, 4, 10):
        turn += [numpy.arcsin(min(1, scale * idle * z / vp)), -numpy.arcsin(min(1, scale * idle * z / vp))] if vp > 0 else []
    return average(heat, [phi + t + h for t in turn for h in (0, numpy.pi)])


def class_ab():
    rows = []
    for v, vp, z, deg, re, n, iq, r_int, vt in AB:
        phi = numpy.radians(deg)
        full = v / abs(numpy.exp(1j * phi) + re / n / z)
        worst = search(lambda u: ab_heat(v, u, z, phi, re, n, iq, r_int, vt), 0, full, 24)[0]
        rows.append((v, vp, z, deg, re, n, iq, r_int, vt, ab_heat(v, vp, z, phi, re, n, iq, r_int, vt), worst))
    write("class-ab.csv", ["V", "V_p", "Z", "phi_deg", "R_E", "n", "I_q", "r_int", "V_T", "P_D", "P_worst"], rows,
          "Class AB: the heat of each transistor integrated over a period, its current by root finding on the loop of the bias; the worst over the level by search", SCRIPT)


def programme():
    rows = []
    for v, p, z, deg, re, n, iq, r_int, vt in [(46, 22.5, 4, 0, 0.22, 3, 0.1038, 0.0525, 0.02828), (46, 12.5, 8, 45, 0.22, 3, 0.1038, 0.0525, 0.02828), (30, 5, 8, -30, 0.33, 2, 0.05, 0.0, 0.0257), (55, 40, 4, 60, 0.1, 4, 0.3, 0.02, 0.03)]:
        phi = numpy.radians(deg)

        def power(i_rms):  # of a sine of that current in the load
            return average(lambda a: numpy.sqrt(2) * i_rms * z * numpy.sin(a) * numpy.sqrt(2) * i_rms * numpy.sin(a - phi), [])
        rms = optimize.brentq(lambda i: power(i) - p, 1e-3, 1e3, xtol=1e-14, rtol=1e-14)
        sine = average(lambda a: v * numpy.sqrt(2) * rms * abs(numpy.sin(a)), [0, numpy.pi]) - p

        def noise(f, marks):
            pdf = lambda i: numpy.exp(-i * i / (2 * rms * rms)) / (rms * numpy.sqrt(TURN))
            edges = [0.0, *sorted(m for m in marks if m < 10 * rms), *[k * rms for k in (1, 2, 4, 10)]]
            edges = sorted(set(edges))
            return 2 * sum(integrate.quad(lambda i: f(i) * pdf(i), a, b, epsabs=0, epsrel=1e-13)[0] for a, b in zip(edges, edges[1:]))
        ideal = v * noise(lambda i: i, []) - p

        def pair(i):
            off = off_side(i, n * iq, (re + r_int) / n, vt)
            return v * (2 * off + i) - re / n * (off**2 + (off + i) ** 2)
        biased = noise(pair, [k * n * iq for k in (0.5, 1, 2, 4, 8)]) - p
        crest = v / abs(z * numpy.exp(1j * phi) + re / n) / rms
        clipped = 2 * integrate.quad(lambda u: numpy.exp(-u * u / 2) / numpy.sqrt(TURN), crest, crest + 12, epsabs=0, epsrel=1e-13)[0]
        rows.append((v, p, z, deg, re, n, iq, r_int, vt, rms, sine, ideal, biased, crest, clipped))
    write("programme-heat.csv", ["V", "P", "Z", "phi_deg", "R_E", "n", "I_q", "r_int", "V_T", "I_rms", "sine", "noise", "noise_AB", "crest", "clipped"], rows,
          "Heat at a mean power of the load: a sine over its period, Gaussian noise over its density, class B and AB; the share of time beyond a crest factor", SCRIPT)

    rows = []
    for rated, c in [(180, 4.0), (100, 2 ** 0.5), (50, 3.2), (1, 10.0)]:
        # The sine of the rated power in 1 Ohm has this peak; the programme has that peak and an rms of peak/c.
        peak = optimize.brentq(lambda a: average(lambda t: (a * numpy.sin(t)) ** 2, []) - rated, 1e-3, 1e3, xtol=1e-15, rtol=1e-15)
        rows.append((rated, c, (peak / c) ** 2))
    write("programme-crest.csv", ["P_rated", "C_f", "P"], rows, "Power of a programme whose peak is that of the rated sine: by the sine's peak, found on the integral of its power", SCRIPT)


def sharing():
    rows = []
    for dv, i, r, vt in [(0.01, 0.1038, 0.2725, 0.02828), (0.01, 3.16, 0.2725, 0.02828), (0.05, 0.1, 0.0, 0.0257), (0.002, 1.0, 0.1, 0.03), (0.2, 0.5, 0.22, 0.028)]:
        def difference(mismatch):
            def loop(d):
                return vt * (numpy.log1p(d / (2 * i)) - numpy.log1p(-d / (2 * i))) + r * d - mismatch
            return optimize.brentq(loop, 0, 2 * i * (1 - 1e-13), xtol=1e-300, rtol=1e-15)
        tiny = 1e-6 * vt
        spread = difference(tiny) / tiny * dv
        rows.append((dv, i, r, vt, difference(dv), spread, r + 1))
    write("current-sharing.csv", ["dV", "I", "R", "V_T", "exact", "small", "R_and_one"], rows,
          "Difference of two transistors' currents at a mismatch, by root finding on the loop of two junctions and two resistors; the small one by the slope at zero", SCRIPT)


def drivers():
    rows = []
    for v, vp, z, deg, h, standing, n, knee in [(46, 29, 4, 0, 60, 0.0298, 3, 5.0), (46, 38, 4, 45, 60, 0.0298, 3, 5.0), (30, 25, 8, -60, 100, 0.02, 1, 3.0), (55, 10, 8, 20, 40, 0.05, 5, 10.0)]:
        phi = numpy.radians(deg)

        def heat(level, gain):
            def moment(a):
                i = max(level / z * numpy.sin(a - phi), 0.0)
                return (v - level * numpy.sin(a)) * (standing + (i / gain(i / n) if i > 0 else 0.0))
            return average(moment, [phi, phi + numpy.pi])
        flat, droop = (lambda i: h), (lambda i: h / (1 + i / knee))
        worst = search(lambda u: heat(u, flat), 0, v, 60)[0]
        base = vp / z / droop(vp / z / n)
        rows.append((v, vp, z, deg, h, standing, n, knee, heat(vp, flat), worst, base, heat(vp, droop), vp / z / h, 1.40, 47.0, optimize.brentq(lambda i: i * 47 - 1.40, 0, 1, xtol=1e-16)))
    write("drivers.csv", ["V", "V_p", "Z", "phi_deg", "h_FE", "I_D", "n", "knee", "heat", "worst", "base_droop", "heat_droop", "base", "V_bias", "R", "standing"], rows,
          "Mean heat of one driver by integration over a period, its worst over the level by search, and the same with a gain that droops with current", SCRIPT)


def charge():
    rows = []
    for ic, ft in [(9.49, 30e6), (3.0, 4e6), (15, 60e6)]:
        # f_T is where the base current that fills the charge q = tau i is as large as the collector current.
        tau = optimize.brentq(lambda t: abs(1j * TURN * ft * t) - 1, 1e-12, 1e-3, xtol=1e-25, rtol=1e-15)
        rows.append((ic, ft, tau * ic))
    write("stored-charge.csv", ["I_C", "f_T", "Q"], rows, "Charge stored with a current: the time at which its filling takes the whole current at f_T, by root finding", SCRIPT)


if __name__ == "__main__":
    class_b()
    peaks()
    crossover()
    class_ab()
    programme()
    sharing()
    drivers()
    charge()
