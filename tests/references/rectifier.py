"""Independent values for the rectifier and reservoir checks of tests/EightOhm.Published:

    /usr/bin/python3 tests/references/rectifier.py

The circuit's differential equation, with the diodes as currents that never reverse, integrated by an adaptive explicit method
of order eight at tight tolerance, piece by piece between the corners of mains and signal, in steps of at most a hundredth of a half-cycle; marched from
above until it repeats itself (no shooting, no exact pieces, no formula of the product).
"""

import numpy
from scipy import integrate, optimize

from values import write

SCRIPT = "rectifier.py"
RTOL, ATOL = 1e-11, 1e-12


def diode_current(drive, r, shared):
    """Currents of one or two diodes that drive[k] = r*i[k] + shared*sum(i), i >= 0 (complementarity, by trying the sets)."""
    if len(drive) == 1:
        return numpy.array([max(0.0, drive[0] / (r + shared))])
    a, b = drive
    m = numpy.array([[r + shared, shared], [shared, r + shared]])
    both = numpy.linalg.solve(m, drive)
    if both.min() >= 0:
        return both
    one = max(0.0, a / (r + shared))
    if b - shared * one <= 0:
        return numpy.array([one, 0.0])
    return numpy.array([0.0, max(0.0, b / (r + shared))])


class Circuit:
    def __init__(self, emf, f, own, shared, drop, c, esr, loads, resistor=0.0, law=None):
        self.peak, self.w, self.own, self.shared, self.drop, self.c, self.esr = emf * numpy.sqrt(2), 2 * numpy.pi * f, own, shared, drop, c, esr
        self.loads, self.g, self.law = loads, (1 / resistor if resistor else 0.0), law
        self.half = 0.5 / f

    def outputs(self, t, u):
        e = self.peak * abs(numpy.sin(self.w * t))
        s = numpy.array([idle + peak * max(0.0, sign * numpy.sin(2 * numpy.pi * fs * t)) for idle, peak, fs, sign in self.loads])
        b = 1 / (1 + self.esr * self.g)
        drive = e - b * (u - self.esr * s)
        r = self.own + b * self.esr
        if self.law is None:
            i = diode_current(drive - self.drop, r, self.shared)
        else:
            i = numpy.array([exponential(drive[0], r + self.shared, *self.law)])
        v = b * (u + self.esr * (i - s))
        return i, v, s + self.g * v

    def march(self, period, corners, periods):
        """The last period, as solutions of pieces, after so many periods."""
        u = numpy.full(len(self.loads), 0.95 * self.peak)
        cuts = numpy.unique(numpy.round(numpy.concatenate([[0, period], corners[(corners > 0) & (corners < period)]]), 14))
        previous = u
        for n in range(periods):
            pieces = []
            for a, b in zip(cuts, cuts[1:]):
                solution = integrate.solve_ivp(self.slope, (a, b), u, method="DOP853", rtol=RTOL, atol=ATOL, max_step=self.half / 60, dense_output=True)
                pieces.append((a, b, solution.sol))
                u = solution.y[:, -1]
            if numpy.abs(u - previous).max() < 2e-9:
                return pieces
            previous = u
        raise RuntimeError(f"not settled after {periods} periods")

    def slope(self, t, u):
        i, _, load = self.outputs(t, u)
        return (i - load) / self.c


def exponential(drive, r, saturation, slope):
    """i r + slope ln(1 + i/I_s) = drive."""
    if drive <= 0:
        return saturation * numpy.expm1(drive / slope)
    top = min(drive / slope, numpy.log1p(drive / (r * saturation)))
    w = optimize.brentq(lambda x: r * saturation * numpy.expm1(x) + slope * x - drive, 0, top + 1e-12, xtol=1e-15, rtol=1e-14)
    return saturation * numpy.expm1(w)


def measure(circuit, pieces, period, k):
    """Simpson's rule between the edges of charging, where everything is smooth; extremes polished by a bounded search."""
    def at(x, sol):
        i, v, load = circuit.outputs(x, sol(x))
        return i, v[k], load[k]

    total, charging, tops = numpy.zeros(4), 0.0, []
    for a, b, sol in pieces:
        looks = numpy.linspace(a, b, max(20, int((b - a) / circuit.half * 400)) + 1)
        cuts = [a, b]
        if circuit.law is None:
            for rail in range(len(circuit.loads)):
                on = [circuit.outputs(x, sol(x))[0][rail] > 0 for x in looks]
                cuts += [bisect(lambda x: circuit.outputs(x, sol(x))[0][rail] > 0, x, y) for x, y, p, q in zip(looks, looks[1:], on, on[1:]) if p != q]
        cuts = numpy.unique(cuts)
        for x, y in zip(cuts, cuts[1:]):
            if y - x < 1e-13:
                continue
            grid = numpy.linspace(x, y, 2 * max(120, int((y - x) / circuit.half * 600)) + 1)
            out = [at(t, sol) for t in grid]
            i, v, load = numpy.array([o[0][k] for o in out]), numpy.array([o[1] for o in out]), numpy.array([o[2] for o in out])
            total += [integrate.simpson(f, x=grid) for f in (v, i * i, i, (i - load) ** 2)]
            if i[len(i) // 2] > 0:
                charging += y - x
            for n, f in enumerate((v, -v, -i)):
                place = f.argmin()
                lo, hi = grid[max(place - 1, 0)], grid[min(place + 1, len(grid) - 1)]
                sign, part = ((1, 1), (-1, 1), (-1, 0))[n]
                found = optimize.minimize_scalar(lambda t: sign * (at(t, sol)[1] if part else at(t, sol)[0][k]), bounds=(lo, hi), method="bounded", options={"xatol": 1e-10})
                tops.append((n, min(found.fun, f[place])))
    low, high, peak = (min(f for n, f in tops if n == which) for which in range(3))
    mean, square, current, capacitor = total / period
    return mean, low, -high, numpy.sqrt(square), -peak, numpy.sqrt(capacitor), 180 * charging / period, current


def bisect(holds, a, b):
    at_a = holds(a)
    for _ in range(60):
        m = (a + b) / 2
        if holds(m) == at_a:
            a = m
        else:
            b = m
    return (a + b) / 2


COLUMNS = ["mean", "trough", "crest", "rms", "peak", "capacitor", "angle", "dc"]


def single():
    rows = []
    for emf, f, rs, drop, c, esr, i, r in [
        (35, 50, 0.5, 1.6, 10e-3, 0.0, 3.0, 0),
        (37.1, 50, 0.2037, 0.9, 30e-3, 0.0, 3.233, 0),
        (35, 50, 0.204, 0.9, 30e-3, 0.010, 3.233, 0),
        (18, 60, 0.8, 1.4, 4.7e-3, 0.035, 0.8, 0),
        (35, 50, 0.5, 1.6, 10e-3, 0.02, 0.0, 14.0),
        (9, 60, 1.5, 1.4, 1e-3, 0.0, 0.0, 47.0),
        (48, 50, 0.12, 1.0, 68e-3, 0.004, 9.0, 0),
        (35, 50, 2.0, 1.6, 1e-3, 0.0, 5.0, 0),
    ]:
        circuit = Circuit(emf, f, rs, 0.0, drop, c, esr, [(i, 0.0, 1.0, 1)], r)
        pieces = circuit.march(circuit.half, numpy.array([]), 400)
        rows.append((emf, f, rs, drop, c, esr, i, r, *measure(circuit, pieces, circuit.half, 0)))
        print(rows[-1])
    write("rectifier.csv", ["emf", "f", "R_s", "drop", "C", "esr", "I", "R_L", *COLUMNS], rows,
          "Full-wave rectifier with reservoir: mean, trough, crest, winding rms and peak, capacitor ripple current, conduction angle in degrees; the differential equation integrated until it repeats", SCRIPT)


def dual():
    rows = []
    for emf, f, half, shared, drop, c, esr, fs, p, idle_p, n, idle_n in [
        (34.9, 50, 0.085, 0.0425, 0.9, 30e-3, 0.0, 20, 10, 0.7, 10, 0.7),
        (34.9, 50, 0.085, 0.0425, 0.9, 30e-3, 0.0, 1000, 10, 0.7, 10, 0.7),
        (37.1, 50, 0.092, 0.046, 0.9, 30e-3, 0.010, 25, 7, 0.5, 0, 2.0),
        (28.0, 60, 0.150, 0.090, 1.0, 15e-3, 0.020, 30, 4, 0.3, 4, 0.3),
        (37.1, 50, 0.092, 0.046, 0.9, 30e-3, 0.0, 0, 0, 3.0, 0, 1.0),
        # Nearly all of the resistance is shared: the lightly loaded rail is charged only at the end of the other's pulse.
        (35.0, 50, 0.05, 1.2, 0.9, 0.3e-3, 0.0, 0, 0, 0.0005, 0, 0.045),
    ]:
        loads = [(idle_p, p, fs or 1.0, 1), (idle_n, n, fs or 1.0, -1)]
        circuit = Circuit(emf, f, half, shared, drop, c, esr, loads)
        period = {20: 0.1, 1000: 0.02, 25: 0.04, 30: 1 / 30, 0: 1 / f}[fs]
        corners = [k * circuit.half for k in range(50)] + ([k * 0.5 / fs for k in range(200)] if fs else [])
        pieces = circuit.march(period, numpy.array(corners), 120)
        a, b = measure(circuit, pieces, period, 0), measure(circuit, pieces, period, 1)
        rows.append((emf, f, half, shared, drop, c, esr, fs, p, idle_p, n, idle_n, *a, *b))
        print(rows[-1])
    columns = ["emf", "f", "half", "shared", "drop", "C", "esr", "signal", "play_p", "idle_p", "play_n", "idle_n", *[x + "_p" for x in COLUMNS], *[x + "_n" for x in COLUMNS]]
    write("dual-rail.csv", columns, rows[:-1],
          "Two rails from a centre-tapped winding whose reflected primary they share, each with its own load, half-waves of one signal or a constant current", SCRIPT)
    # Its pulses of 0.1 ms are integrated less closely, as the mean of the charging current shows: it should be the load's.
    write("dual-rail-unequal.csv", columns, rows[-1:], "The same with nearly all of the resistance shared and very unequal loads, to about 3e-6", SCRIPT)


def exponential_law():
    rows = []
    for emf, f, rs, saturation, n, t, series, c, esr, i, r, p, fs in [
        (35, 50, 0.5, 5e-9, 1.8, 75, 2, 10e-3, 0.0, 3.0, 0, 0, 0),
        (37.1, 50, 0.2, 2e-8, 1.7, 60, 1, 30e-3, 0.0, 3.2, 0, 0, 0),
        (12, 60, 1.0, 1e-9, 1.9, 40, 2, 2.2e-3, 0.0, 0.4, 0, 0, 0),
        # An old capacitor, whose own resistance is as large as the winding's.
        (35, 50, 0.5, 5e-9, 1.8, 75, 2, 10e-3, 0.4, 3.0, 0, 0, 0),
        # Resistors, the second beside a reservoir that it nearly empties; half-waves of 20 Hz.
        (35, 50, 0.5, 5e-9, 1.8, 75, 2, 10e-3, 0.2, 0.0, 14.0, 0, 0),
        (9, 60, 1.5, 1e-9, 1.9, 40, 2, 0.2e-3, 1.0, 0.0, 47.0, 0, 0),
        (35, 50, 0.3, 5e-9, 1.8, 75, 2, 15e-3, 0.02, 0.5, 0, 8.0, 20),
    ]:
        slope = series * n * 1.380649e-23 * (t + 273.15) / 1.602176634e-19
        circuit = Circuit(emf, f, rs, 0.0, 0.0, c, esr, [(i, p, fs or 1.0, 1)], r, law=(saturation, slope))
        period = 2 / fs if fs else circuit.half
        corners = numpy.array([k * circuit.half for k in range(20)] + [k * 0.5 / fs for k in range(8)]) if fs else numpy.array([])
        pieces = circuit.march(period, corners, 400)
        rows.append((emf, f, rs, saturation, n, t, series, c, esr, i, r, p, fs, *measure(circuit, pieces, period, 0)[:6]))
        print(rows[-1])
    write("rectifier-exponential.csv", ["emf", "f", "R_s", "I_s", "n", "t_C", "series", "C", "esr", "I", "R_L", "play", "signal", *COLUMNS[:6]], rows,
          "The same with diodes of the exponential law", SCRIPT)


def transformer():
    """Primary and two secondaries by node equations, referred to one secondary: both halves loaded by resistors at rated current."""
    rows = []
    for v, reg, s in [(35, 0.06, 800), (25, 0.10, 160), (45, 0.045, 1200)]:
        rated = s / (2 * v)
        # Equal loss in primary and secondaries: (2 I)^2 x = 2 I^2 h, h = 2 x; find x such that the loaded voltage is v.
        def loaded(x):
            load = v / rated
            # unknowns: both half currents; emf = h*i + x*(i1+i2) + load*i
            m = numpy.array([[2 * x + x + load, x], [x, 2 * x + x + load]])
            i = numpy.linalg.solve(m, numpy.full(2, v * (1 + reg)))
            return i[0] * load
        x = optimize.brentq(lambda y: loaded(y) - v, 1e-6, 10, xtol=1e-15, rtol=1e-14)
        alone = optimize.brentq(lambda r: (v * (1 + reg)) * (v / (s / v)) / (r + v / (s / v)) - v, 1e-9, 100, xtol=1e-15, rtol=1e-14)
        rows.append((v, reg, s, v * (1 + reg), 4 * x, 2 * x, x, alone))
    write("source-resistance.csv", ["V", "reg", "S", "V_0", "R_s", "R_half", "R_shared", "R_alone"], rows,
          "Resistance behind each rail of a transformer with two equal windings at full load, by solving its network for the rated voltage; and of a single winding", SCRIPT)


def ripple():
    """The instantly charged reservoir: mean and rms of a sawtooth, integrated."""
    rows = []
    for vm, i, f, c in [(30, 0.05, 60, 100e-6), (47.9, 3, 50, 10e-3), (51.6, 3.233, 50, 30e-3)]:
        period = 0.5 / f
        def v(t):
            return vm - i * t / c
        mean = integrate.quad(v, 0, period)[0] / period
        rms = numpy.sqrt(integrate.quad(lambda t: (v(t) - mean) ** 2, 0, period, epsabs=0, epsrel=1e-12)[0] / period)
        rows.append((vm, i, f, c, v(0) - v(period), vm - (vm - i / (f * c)), mean, rms, rms / mean))
    write("reservoir-ripple.csv", ["V_m", "I", "f", "C", "full", "half_wave", "mean", "rms", "factor"], rows, "A reservoir charged in an instant and emptied by a constant current: its sawtooth, integrated", SCRIPT)


def peak_rectifier():
    """The capacitor follows the sine from where it meets it: its current there is the slope of the sine times C, for a vanishing ripple."""
    rows = []
    for vp, i, f in [(100.0, 0.01, 60), (47.9, 3.0, 50), (25.0, 0.8, 60)]:
        vr = vp * 1e-7
        c = i / (2 * f * vr)
        meets = optimize.brentq(lambda x: 2 * vp * numpy.sin(x / 2) ** 2 - vr, 0, 0.1, xtol=1e-18, rtol=1e-15)
        w = 2 * numpy.pi * f
        pulse = integrate.quad(lambda x: i + c * w * vp * numpy.sin(x), 0, meets, epsabs=0, epsrel=1e-13)[0] / meets
        rows.append((i, vp, vr, i + c * w * vp * numpy.sin(meets), pulse))
    write("peak-rectifier.csv", ["I", "V_p", "V_r", "peak", "mean"], rows, "An ideal full-wave peak rectifier with vanishing ripple: capacitor and load current at the instant of charging, from the slope of the sine", SCRIPT)


def rc_section():
    rows = []
    for vr, r, c, f in [(15.0, 500.0, 10e-6, 60), (0.8, 22.0, 1e-3, 50), (0.5, 10.0, 470e-6, 50)]:
        # Admittances into the one node; the ripple is at twice the mains.
        node = numpy.linalg.solve(numpy.array([[1 / r + 2j * numpy.pi * 2 * f * c]]), numpy.array([vr / r]))[0]
        rows.append((vr, r, c, f, abs(node)))
    write("rc-section.csv", ["V_r", "R", "C", "f", "ripple"], rows, "Ripple of twice the mains frequency after a resistor and a capacitor, by the complex node equation", SCRIPT)


if __name__ == "__main__":
    transformer()
    ripple()
    rc_section()
    peak_rectifier()
    single()
    exponential_law()
    dual()
