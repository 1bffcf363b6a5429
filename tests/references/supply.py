"""Independent values for the supply and protection checks of tests/EightOhm.Published:

    /usr/bin/python3 tests/references/supply.py

Differential equations integrated, node equations solved as linear systems, roots of definitions; no formula of the product is copied.
"""

import numpy
from scipy import integrate, optimize

from values import mean, write

SCRIPT = "supply.py"
TIGHT = {"rtol": 1e-12, "atol": 1e-14, "method": "DOP853"}


def root(f, a, b):
    return optimize.brentq(f, a, b, xtol=1e-300, rtol=1e-14)


def swing():
    rows = []
    for v0, vt, i, i0, r, ip, re, n, iq, h, rc, rail, loss, load in [
        (0.6775, 28.3e-3, 1.667, 0.1038, 0.0525, 5.0, 0.22, 3, 29.8e-3, 60, 0.1, 47.2, 4.4, 8),
        (0.6775, 28.3e-3, 3.162, 0.1038, 0.0525, 9.487, 0.22, 3, 29.8e-3, 60, 0.1, 44.8, 4.6, 4),
        (0.59, 25.7e-3, 0.01, 0.001, 0.0, 2.0, 0.47, 1, 5e-3, 40, 0.3, 30, 3, 16),
        (0.7, 25e-3, 0.001, 0.01, 0.5, 12.0, 0.1, 5, 0.1, 25, 0.05, 70, 6, 2),
    ]:
        saturation = i0 * numpy.exp(-(v0 - i0 * r) / vt)  # from the known point
        vbe = root(lambda v: numpy.log(i / saturation) - (v - i * r) / vt, 0.1, 3)
        # n equal branches from one node to another: the drop by a conductance.
        drop = numpy.linalg.solve(numpy.array([[n / re]]), numpy.array([ip]))[0]
        # A follower's node: what it gives is its own standing current and the base current, of which h times flow in the next collector.
        base = root(lambda b: b * h - ip, 1e-9, ip)
        inner = root(lambda vce: (vce - i * rc) - vbe, 0, 10)  # inner collector at the base's voltage
        peak = root(lambda v: rail - loss - v / load * (re / n) - v, 0, rail)
        power = mean(lambda a: (peak * numpy.sin(a)) ** 2 / load)
        rows.append((v0, vt, i, i0, r, vbe, ip, re, n, drop, iq, h, iq + base, rc, inner, rail, loss, load, peak, power))
    write("swing.csv", ["V_0", "V_T", "I", "I_0", "r", "V_BE", "I_p", "R_E", "n", "drop", "I_Q", "h", "driver", "R_C", "V_CE", "V", "V_loss", "R_L", "V_p", "P"], rows,
          "Losses of a swing by root finding on the exponential junction and by node equations; clip power by integration", SCRIPT)


def decay(v0, r, c, t):
    return integrate.solve_ivp(lambda _, v: -v / (r * c), (0, t), [v0], **TIGHT).y[0, -1]


def discharge():
    rows = []
    for v0, v, r, c in [(49, 10, 2.2e3, 30e-3), (340, 60, 1e6, 1e-6), (400, 50, 10e3, 470e-6), (63, 1, 330, 4.7e-3)]:
        def low(_, y):
            return y[0] - v

        low.terminal = True
        run = integrate.solve_ivp(lambda _, y: -y / (r * c), (0, 20 * r * c), [v0], events=low, dense_output=True, **TIGHT)
        time = root(lambda t: decay(v0, r, c, t) / v - 1, run.t_events[0][0] * 0.999, run.t_events[0][0] * 1.001)
        part = time / 3
        energy = integrate.quad(lambda u: c * u, 0, v0, epsrel=1e-13)[0]
        bleeder = root(lambda x: decay(v0, x, c, part) / v - 1, r / 30, r)
        rows.append((v0, v, r, c, time, part, decay(v0, r, c, part), bleeder, energy, integrate.quad(lambda u: c, 0, v0)[0], v0 * v0 / r))
    write("discharge.csv", ["V_0", "V", "R", "C", "t", "part", "V_part", "bleeder", "E", "Q", "P"], rows,
          "A capacitor into a resistor by integrating its equation; bleeder by root finding; energy as the integral of the charge's work", SCRIPT)


def ring(l, c):
    return numpy.abs(numpy.linalg.eigvals(numpy.array([[0, -1 / c], [1 / l, 0]])).imag).max() / (2 * numpy.pi)


def snubber():
    rows = []
    for l, c, cs, v, f in [(40e-6, 600e-12, 6e-9, 70, 100), (500e-9, 1e-12, 1e-9, 20, 1e6), (1e-3, 10e-9, 100e-9, 150, 120)]:
        def damping(r):
            e = numpy.linalg.eigvals(numpy.array([[-1 / (r * c), -1 / c], [1 / l, 0]]))
            return -e.real.mean() / numpy.sqrt(numpy.prod(e).real)

        z = numpy.sqrt(l / c)
        resistor = root(lambda r: damping(r) - 0.5, z / 1.5, z * 1.5)  # a parallel resistor of the characteristic impedance damps to one half
        added = 3.7 * c
        rings = root(lambda x: ring(l, x) / ring(l, x + added) - ring(l, c) / ring(l, c + added), c / 10, c * 10)
        # Each edge burns what the resistor takes while the capacitor charges.
        edge = integrate.quad(lambda t: (v * numpy.exp(-t)) ** 2 / resistor * resistor * cs, 0, numpy.inf, epsabs=0, epsrel=1e-12)[0]
        # State matrix with the snubber: voltage of C, current of L, voltage of C_s.
        state = numpy.array([[-1 / (resistor * c), -1 / c, 1 / (resistor * c)], [1 / l, 0, 0], [1 / (resistor * cs), 0, -1 / (resistor * cs)]])
        poles = numpy.linalg.eigvals(state)
        damped = (-poles.real / numpy.abs(poles)).min()
        rows.append((l, c, ring(l, c), resistor, added, ring(l, c + added), rings, cs, v, f, 2 * edge * f, damped))
    write("snubber.csv", ["L", "C", "f", "R", "C_a", "f_2", "C_found", "C_s", "V", "f_r", "P", "zeta"], rows,
          "A ringing winding by the eigenvalues of its state matrix; the resistor that damps it to one half by root finding; heat by integration", SCRIPT)


def fuse():
    rows = []
    for ip, t, share, derate in [(4.8, 7.7e-6, 0.22, 0.95), (10.3, 20e-3, 0.29, 0.9), (81, 6e-3, 0.48, 1.0), (144, 10e-3, 0.38, 0.85)]:
        sine = integrate.quad(lambda x: (ip * numpy.sin(numpy.pi * x / t)) ** 2, 0, t, epsabs=0, epsrel=1e-12)[0]
        triangle = integrate.quad(lambda x: (ip * (1 - x / t)) ** 2, 0, t, epsabs=0, epsrel=1e-12)[0]
        tail = integrate.quad(lambda x: (ip * numpy.exp(-x)) ** 2, 0, numpy.inf, epsabs=0, epsrel=1e-12)[0] * t
        rating = root(lambda f: f * 0.75 * derate - ip, ip / 10, ip * 10)
        rows.append((ip, t, sine, triangle, tail, share, root(lambda m: m * share - sine, sine, sine * 100), derate, rating))
    write("fuse.csv", ["I_p", "t", "sine", "triangle", "decay", "share", "melting", "k_T", "rating"], rows, "I2t of pulses by integration of the square of the current", SCRIPT)


def ripple():
    rows = []
    for vpp, h, r_in, gain, rated in [(2.05, 1, 1e5, 23.6, 28.28), (1.0, 2, 1e5, 23.6, 28.28), (0.5, 5, 3e4, 10, 20), (1.2, 9, 2e3, 40, 63)]:
        def saw(part):
            return abs(integrate.quad(lambda x: vpp * (x - 0.5), 0, 1, weight=part, wvar=2 * numpy.pi * h, epsabs=1e-15)[0] * 2)

        harmonic = numpy.hypot(saw("sin"), saw("cos"))
        # An input that would do the same as the disturbance, through the gain.
        left = root(lambda o: o / gain * r_in - harmonic, 1e-12, 10)
        rows.append((vpp, h, harmonic, r_in, gain, left, harmonic / left, rated, rated / left))
    write("ripple.csv", ["V_pp", "h", "V_h", "R_in", "G", "left", "R_out", "rated", "below"], rows, "Harmonics of a sawtooth by integration; what a rejection leaves of them by root finding on its definition", SCRIPT)
    rows = []
    for f, r, c, i, rx in [(100, 22, 1e-3, 15.9e-3, 2e3), (120, 500, 10e-6, 27.3e-3, 5e3), (1e3, 10, 470e-6, 0.02, 800)]:
        inside = numpy.linalg.solve(numpy.array([[1 / r + 2j * numpy.pi * f * c]]), numpy.array([1 / r]))[0]
        behind = numpy.linalg.solve(numpy.array([[1 / r + 1 / rx]]), numpy.array([50 / r]))[0]
        rows.append((f, r, c, 1 / abs(inside), i, root(lambda v: v / r - i, 0, 1e3), rx, behind))
    write("rail-filter.csv", ["f", "R", "C", "rejection", "I", "drop", "R_x", "behind_50V"], rows, "A rail's RC filter by its node equation", SCRIPT)


def transformer():
    rows = []
    for v, reg, m, vd, s, line, vod, x in [(35, 0.06, 1.1, 0.6, 526, 230, 4.8, 0.1), (35, 0.06, 0.9, 0.9, 800, 230, 5.0, 0.1), (12, 0.15, 1.0, 1.4, 50, 120, 3, 0.06)]:
        free = root(lambda u: (u - v) / v - reg, v, 2 * v)
        crest = -optimize.minimize_scalar(lambda a: -free * m * numpy.sqrt(2) * numpy.sin(a), bounds=(1, 2), method="bounded", options={"xatol": 1e-10}).fun
        primary = root(lambda i: i * line - s, 0, 1e3)
        sag = root(lambda u: u / (1 + reg) - (v + vod), v, 3 * v)  # a rail that sags by its regulation to what the amplifier needs
        rows.append((v, reg, free, m, vd, crest - vd, s, line, primary, vod, x, sag * (1 + x)))
    write("transformer.csv", ["V", "r_T", "V_NL", "m", "V_D", "rail", "S", "V_m", "I", "V_od", "x", "greatest"], rows, "A transformer's volts without load by root finding on its regulation; crest by maximisation", SCRIPT)


def inrush():
    rows = []
    for line, half, rp, rh, vd, lim, i in [(230, 37.1, 2.25, 0.085, 0.9, 27, 2.3), (230, 37.1, 2.25, 0.085, 0.9, 0, 3.9), (120, 45, 0.5, 0.12, 1.0, 10, 6)]:
        n = line / half
        crest = line * numpy.sqrt(2)
        # Unknowns: primary current, secondary current, primary EMF e: crest = ip*(rp + lim) + e; e/n = is*rh + vd; n*ip = 2*is.
        ip = numpy.linalg.solve(numpy.array([[rp + lim, 0, 1], [0, rh, -1 / n], [n, -2, 0]]), numpy.array([crest, -vd, 0]))[0]
        bare = numpy.linalg.solve(numpy.array([[0, 0, 1], [0, rh, -1 / n], [n, -2, 0.0]]), numpy.array([crest, 0, 0]))[0]
        core = -optimize.minimize_scalar(lambda a: -crest * numpy.sin(a) / (rp + lim), bounds=(1, 2), method="bounded", options={"xatol": 1e-10}).fun
        stays = lim or 33  # what is left in circuit when a bypass fails
        heat = mean(lambda a: (numpy.sqrt(2) * i * numpy.sin(a)) ** 2 * stays)
        rows.append((line, half, rp, rh, vd, lim, n, crest / bare, rp + lim + crest / bare, ip, core, root(lambda r: crest / r - ip, 0.1, 1e3), i, stays, heat))
    write("inrush.csv", ["V_m", "V_half", "R_p", "R_h", "V_D", "R_lim", "N_r", "reflected", "R", "I_cap", "I_core", "R_least", "I", "R_stays", "P"], rows,
          "Primary current into empty dual reservoirs by the equations of an ideal transformer; a saturated core by maximisation", SCRIPT)
    rows = []
    for r25, b, t in [(10e3, 3950, 297.10936358), (10, 3000, 420), (47, 3500, 350), (5, 2800, 260)]:
        fall = integrate.solve_ivp(lambda k, y: [-b / k**2], (298.15, t), [numpy.log(r25)], **TIGHT).y[0, -1]
        rows.append((r25, b, t, numpy.exp(fall)))
    write("thermistor.csv", ["R_25", "B", "T", "R"], rows, "A thermistor's resistance by integrating its temperature coefficient -B/T^2 from 25 degC", SCRIPT)


def soft_start():
    """Half-cycle by half-cycle with events where the diodes begin and stop, so no step crosses a corner."""
    rows = []
    for line, f, half, c, rp, rh, vd, lim, idle, bypass in [
        (230, 50, 37.1, 30e-3, 2.25, 0.085, 0.9, 27, 0, 1.0),
        (230, 50, 37.1, 30e-3, 2.25, 0.085, 0.9, 27, 0.26, 1.0),
        (230, 50, 37.1, 30e-3, 2.25, 0.085, 0.9, 0, 0, 0.2),
        (120, 60, 45, 15e-3, 0.5, 0.12, 1.0, 10, 0.1, 0.8),
    ]:
        n = line / half
        w, crest = 2 * numpy.pi * f, half * numpy.sqrt(2)
        goal = 0.9 * (crest - vd)
        r = rh + 2 * (rp + lim) / n**2

        def source(t):
            return crest * abs(numpy.cos(w * t))  # closed at the crest

        def over(t, v):
            return source(t) - vd - v

        def slope(t, y):
            current = max(over(t, y[0]), 0) / r
            return [(current - (idle if y[0] > 0 or current > 0 else 0)) / c, (2 * current / n) ** 2]

        y, t0, reached, peak = [0.0, 0.0], 0.0, None, 0.0
        # Pieces end where |cos| has its corner; inside a piece the diode's corner is an event.
        edges = [e for e in (1 / (4 * f) + numpy.arange(0, int(bypass * 2 * f) + 2) / (2 * f)) if e < bypass] + [bypass]
        for edge in edges:
            while t0 < edge:
                def corner(t, u):
                    return over(t, u[0])

                corner.terminal = True
                start = t0 + (1e-9 if t0 else 0)
                run = integrate.solve_ivp(slope, (start if start < edge else t0, edge), y, events=corner, max_step=(edge - t0) / 20, rtol=1e-10, atol=1e-12)
                times = numpy.linspace(run.t[0], run.t[-1], 200)
                peak = max(peak, 2 * max(0, max(over(t, v) for t, v in zip(run.t, run.y[0]))) / r / n)
                if reached is None and run.y[0].max() >= goal:
                    k = int(numpy.argmax(run.y[0] >= goal))
                    a, b, va, vb = run.t[k - 1], run.t[k], run.y[0][k - 1], run.y[0][k]
                    reached = a + (b - a) * (goal - va) / (vb - va)
                y, t0 = list(run.y[:, -1]), run.t[-1]
        rows.append((line, f, half, c, rp, rh, vd, lim, idle, bypass, peak, reached, y[1] * lim, y[1], y[0]))
    write("soft-start.csv", ["V_m", "f", "V_half", "C", "R_p", "R_h", "V_D", "R_lim", "I_idle", "bypass", "peak", "t90", "E", "I2t", "V_bypass"], rows,
          "Empty dual reservoirs charged through a limiter, solve_ivp piece by piece between the corners of the rectified sine and of the diodes", SCRIPT)


def detector():
    rows = []
    for v, vp, f, vth in [(46, 40, 10, 0.65), (2, 40, 10, 0.65), (60, 55, 20, 1.2), (5, 28, 5, 2.0)]:
        w = 2 * numpy.pi * f
        one = root(lambda t: abs(1 / (1 + 1j * w * t)) * vp / vth - 1, 1e-6, 1e3)
        two = root(lambda t: abs(1 / (1 + 1j * w * t)) ** 2 * vp / vth - 1, 1e-6, 1e3)

        def trip(taus):
            def rest(t):
                def chain(_, y):
                    before = [v, *y[:-1]]
                    return [(b - a) / k for a, b, k in zip(y, before, taus)]

                return integrate.solve_ivp(chain, (0, t), [0.0] * len(taus), **TIGHT).y[-1, -1] / vth - 1

            return root(rest, 1e-5 * taus[0], 30 * taus[0])

        rows.append((v, vp, f, vth, one, two, trip([one]), trip([two, two])))
    write("dc-detector.csv", ["V", "V_p", "f", "V_th", "tau_1", "tau_2", "trip_1", "trip_2"], rows,
          "A dc detector: time constants by root finding on its magnitude; trips by root finding on the integrated filter", SCRIPT)
    rows = []
    for poles, wt in [(1, 61.53), (1, 5.0), (2, 7.78), (2, 22.0)]:
        def peak(phase):
            def chain(x, y):
                drive = numpy.sin(x + phase)
                before = [drive, *y[:-1]]
                return [(b - a) / wt for a, b in zip(y, before)]

            run = integrate.solve_ivp(chain, (0, 12 + 3 * wt), [0.0] * poles, dense_output=True, rtol=1e-10, atol=1e-13)
            x = numpy.linspace(0, 12 + 3 * wt, 40000)
            return numpy.abs(run.sol(x)[-1]).max()

        scan = numpy.linspace(-numpy.pi / 2, numpy.pi / 2, 25)
        best = scan[int(numpy.argmax([peak(p) for p in scan]))]
        fine = optimize.minimize_scalar(lambda p: -peak(p), bounds=(best - 0.15, best + 0.15), method="bounded", options={"xatol": 1e-6})
        rows.append((poles, wt, -fine.fun))
    write("dc-detector-from-rest.csv", ["poles", "wt", "share"], rows, "The greatest output of one or two poles for a sine that begins, integrated from rest, over the phase of the beginning", SCRIPT)
    rows = []
    for v, vth, tau in [(50.0, 0.65, 4.0), (55.4, 0.5, 2.4), (46.0, 0.65, 0.5), (30.0, 12.0, 0.02), (1.0, 0.9, 1.0)]:
        def greatest(f):
            y = 0.0
            most = 0.0
            # Half-waves one after the other from rest, until nothing of the beginning is left.
            for k in range(int(min(400, 12 * f * tau)) + 4):
                sign = v if k % 2 == 0 else -v
                run = integrate.solve_ivp(lambda _, s: [(sign - s[0]) / tau], (0, 0.5 / f), [y], rtol=1e-11, atol=1e-14)
                y = run.y[0, -1]
                most = max(most, abs(run.y[0]).max())
            return most - vth

        rows.append((v, vth, tau, root(greatest, 0.05 / tau, 200 / tau * v / vth)))
    write("dc-detector-square.csv", ["V", "V_th", "tau", "f"], rows, "The frequency of a square that begins and just does not trip, one pole: the filter integrated half-wave by half-wave, a root search over the frequency", SCRIPT)


def fault():
    rows = []
    for v, r, t, c, vmin, i in [(46, 5.8, 22.1e-3, 30e-3, 20, 3.2), (60, 3.2, 50e-3, 10e-3, 30, 1.0), (30, 6, 0.1, 4.7e-3, 10, 0.5)]:
        current = numpy.linalg.solve(numpy.array([[r]]), numpy.array([v]))[0]
        heat = integrate.quad(lambda x: current**2 * r, 0, t, epsrel=1e-13)[0]
        hold = root(lambda x: integrate.quad(lambda u: i / c, 0, x)[0] - (v - vmin), 1e-6, 1e3)
        rows.append((v, r, t, current, heat, c, vmin, i, hold))
    write("dc-fault.csv", ["V", "R_vc", "t", "I", "E", "C", "V_min", "I_rail", "hold"], rows, "A stuck output's heat in a voice coil by integration; hold-up by root finding on the charge taken", SCRIPT)


def rail():
    rows = []
    for n, peak, besides in [(2, 9.487, 0.05), (1, 5.0, 0.7), (5, 1.25, 0.0)]:
        drawn = mean(lambda x: n * max(0.0, peak * numpy.sin(x)), 0.0, numpy.pi) + besides
        rows.append((n, peak, besides, drawn))
    write("rail-current.csv", ["n", "I_p", "besides", "mean"], rows, "The mean of the half-waves of n channels by integration over a period", SCRIPT)


def coils():
    rows = []
    for boxes, nominal, dc in [(1, 8, 5.8), (2, 8, 5.8), (3, 16, 12.1)]:
        # All boxes in parallel: the node equation of one volt at the terminals, for the nominal impedances and for the coils at rest.
        least, coil = (1 / numpy.sum(numpy.linalg.solve(numpy.eye(boxes) * r, numpy.ones(boxes))) for r in (nominal, dc))
        rows.append((least, dc / nominal, coil))
    write("voice-coils.csv", ["R_min", "k_vc", "R_vc"], rows, "The dc resistance of loudspeakers in parallel by their node equation", SCRIPT)


def available():
    rows = []
    for n, limit, base, gain in [(3, 4.651, 0.158, 60), (3, 3.792, 0.3, 60), (2, 5.0, 0.35, 40)]:
        command = numpy.linalg.solve(numpy.array([[1 / gain]]), numpy.array([base]))[0]
        # Both bounds at once: the largest current that breaks neither.
        give = optimize.linprog([-1], A_ub=[[1 / n], [1 / gain]], b_ub=[limit, base], method="highs").x[0]
        rows.append((n, limit, base, gain, command, give))
    write("available-current.csv", ["n", "I_lim", "I_B", "h_FE", "commanded", "available"], rows, "The peak current that breaks neither limiter nor drive, by linear programming", SCRIPT)


if __name__ == "__main__":
    swing()
    discharge()
    snubber()
    fuse()
    ripple()
    transformer()
    inrush()
    soft_start()
    detector()
    fault()
    rail()
    coils()
    available()
