"""Independent values for the complementary followers of tests/EightOhm.Published:

    /usr/bin/python3 tests/references/followers.py

Kirchhoff's equations of the circuit at its nodes, one unknown for each junction voltage and one for the output, solved by
scipy's hybrid method sample after sample; harmonics by numpy's FFT of a whole sampled period; gain by differences of the
fourth order. The product solves two unknowns by Newton's method and takes gain from slopes: nothing of that is used here.
"""

import numpy
from scipy import constants, optimize

from values import write

SCRIPT = "followers.py"


class Stage:
    """Devices from the outputs upstream, each a pair (upper, lower) of dicts; between[k] joins the emitters of stage k."""

    def __init__(self, load, pairs, emitter, devices, between=(), source=0.0):
        self.load, self.pairs, self.emitter, self.devices, self.between, self.source = load, pairs, emitter, devices, between, source

    def currents(self, device, v):
        vt = constants.k * (device["celsius"] + 273.15) / constants.e
        collector = device["saturation"] * numpy.exp(v / vt)
        base = collector / device["gain"] * (1 + collector / device["knee"])
        return base, collector + base

    def residues(self, x, bias, source):
        """x: upper and lower junction voltage of each stage, then the output."""
        output, balance = x[-1], []
        (base_p, i_p), (base_n, i_n) = (self.currents(self.devices[0][s], x[s]) for s in (0, 1))
        balance.append(output - self.load * self.pairs * (i_p - i_n))
        node_p = output + i_p * (self.emitter + self.devices[0][0]["inside"]) + x[0]
        node_n = output - i_n * (self.emitter + self.devices[0][1]["inside"]) - x[1]
        base_p, base_n = self.pairs * base_p, self.pairs * base_n
        for k in range(1, len(self.devices)):
            upper, lower = self.devices[k]
            bridge = (node_p - node_n) / self.between[k - 1]
            scale = self.between[k - 1]  # a current's residue as a voltage
            next_p, i_p = self.currents(upper, x[2 * k])
            next_n, i_n = self.currents(lower, x[2 * k + 1])
            balance += [scale * (i_p - base_p - bridge), scale * (i_n - base_n - bridge)]
            node_p = node_p + i_p * upper["inside"] + x[2 * k]
            node_n = node_n - i_n * lower["inside"] - x[2 * k + 1]
            base_p, base_n = next_p, next_n
        middle = source - self.source * (base_p - base_n)
        return numpy.array(balance + [node_p - node_n - bias, (node_p + node_n) / 2 - middle])

    def solve(self, start, bias, source):
        found = optimize.root(self.residues, start, args=(bias, source), method="hybr", options={"xtol": 1e-14, "maxfev": 4000})
        worst = numpy.abs(self.residues(found.x, bias, source)).max()
        return (found.x, worst) if worst < 1e-10 else (None, worst)

    def idle(self, current):
        """Bias voltage and state at no output current, each output emitter carrying a current: junction after junction, each by bracketing."""
        x, node, needs = [], [0.0, 0.0], [current, current]
        for k, pair in enumerate(self.devices):
            if k > 0:
                bridge = sum(node) / self.between[k - 1]
                needs = [(self.pairs if k == 1 else 1) * base + bridge for base in bases]
            bases = []
            for s, device in enumerate(pair):
                v = optimize.brentq(lambda u: self.currents(device, u)[1] - needs[s], 0, 1.5, xtol=1e-15, rtol=1e-15)
                x.append(v)
                bases.append(self.currents(device, v)[0])
                node[s] += v + needs[s] * (device["inside"] + (self.emitter if k == 0 else 0))
        return sum(node), numpy.array(x + [0.0])

    def follow(self, state, bias, frm, to):
        """From a solved state to another input in steps as small as the method needs."""
        at, step = frm, to - frm
        while at != to:
            target = to if abs(step) >= abs(to - at) else at + step
            x, _ = self.solve(state, bias, target)
            if x is None:
                step = (target - at) / 2
                if abs(step) < 1e-7:
                    raise RuntimeError(f"lost between {at} and {target} V")
                continue
            state, at, step = x, target, 2 * (target - at)
        return state

    def many(self, idle, inputs):
        """Outputs at inputs, walking outwards from zero both ways."""
        bias, x = self.idle(idle)
        outputs = numpy.empty(len(inputs))
        zero_input = self.residues(x, bias, 0.0)[-1]  # what the input must be for this state
        for side in (inputs >= 0, inputs < 0):
            state, at = self.follow(x, bias, zero_input, 0.0), 0.0
            for i in sorted(numpy.flatnonzero(side), key=lambda i: abs(inputs[i])):
                state = self.follow(state, bias, at, inputs[i])
                at, outputs[i] = inputs[i], state[-1]
        return bias, outputs


def device(saturation=1e-12, celsius=25.0, inside=0.0, gain=numpy.inf, knee=numpy.inf):
    return {"saturation": saturation, "celsius": celsius, "inside": inside, "gain": gain, "knee": knee}


OUT = device(celsius=55, inside=0.0525)
DROOP = device(celsius=55, inside=0.0525, gain=100, knee=5)
DRIVER = device(saturation=2e-13, celsius=50, inside=0.3, gain=100, knee=1)
PRE = device(saturation=5e-14, celsius=40, gain=150)
# Numbered as the checks build them.
STAGES = [
    lambda load: Stage(load, 3, 0.22, [(OUT, OUT)]),
    lambda load: Stage(load, 3, 0.22, [(DROOP, DROOP)], source=10.0),
    lambda load: Stage(load, 1, 0.22, [(device(saturation=1e-10), device(saturation=1.3e-10))]),
    lambda load: Stage(load, 3, 0.22, [(DROOP, DROOP), (DRIVER, DRIVER)], [47.0], 100.0),
    lambda load: Stage(load, 3, 0.22, [(DROOP, dict(DROOP, gain=70, saturation=3e-12)), (DRIVER, dict(DRIVER, gain=60)), (PRE, PRE)], [47.0, 150.0], 2000.0),
]


def transfer():
    rows = []
    for number, make in enumerate(STAGES):
        for load, idle in ((8.0, 0.1038), (4.0, 0.03), (8.0, 0.4)):
            stage = make(load)
            points = numpy.array([-38.0, -6.0, -1.0, -0.2, 0.05, 0.4, 1.5, 12.0, 39.0])
            h = 1e-3
            around = numpy.concatenate([points + k * h for k in (0, -2, -1, 1, 2)])
            bias, outputs = stage.many(idle, around)
            out, m2, m1, p1, p2 = numpy.split(outputs, 5)
            gain = (8 * (p1 - m1) - (p2 - m2)) / (12 * h)
            rows += [(number, load, idle, bias, i, o, g, load * (1 / g - 1)) for i, o, g in zip(points, out, gain)]
    write("followers.csv", ["stage", "R_L", "idle", "V_b", "v_in", "v_out", "gain", "R_out"], rows,
          "Complementary followers by Kirchhoff's equations at their nodes: bias voltage of an idle current, output of an input, incremental gain by differences", SCRIPT)


def harmonics():
    rows = []
    n = 1024
    for number, make in enumerate(STAGES):
        for load, idle, peak in ((8.0, 0.1038, 40.0), (8.0, 0.04, 10.0), (4.0, 0.2, 30.0)):
            bias, wave = make(load).many(idle, peak * numpy.sin(2 * numpy.pi * numpy.arange(n) / n))
            spectrum = numpy.abs(numpy.fft.rfft(wave)) * 2 / n
            ratios = spectrum[2:11] / spectrum[1]
            rows.append((number, load, idle, bias, peak, spectrum[1], numpy.sqrt((ratios**2).sum()), *ratios))
    write("follower-harmonics.csv", ["stage", "R_L", "idle", "V_b", "V_in", "V_1", "THD"] + [f"H{h}" for h in range(2, 11)], rows,
          "Harmonics of the same followers: a sine of 1024 samples a period solved sample by sample, then numpy's FFT", SCRIPT)


def least_thd():
    rows = []
    n = 1024
    for load, level in ((8.0, 20.0), (4.0, 20.0)):
        stage = STAGES[0](load)

        def thd(log_idle):
            bias, x = stage.idle(numpy.exp(log_idle))
            peak = optimize.brentq(lambda v: stage.follow(x, bias, 0.0, v)[-1] - level, level, 1.2 * level, xtol=1e-12)
            _, wave = stage.many(numpy.exp(log_idle), peak * numpy.sin(2 * numpy.pi * numpy.arange(n) / n))
            spectrum = numpy.abs(numpy.fft.rfft(wave))
            return numpy.sqrt((spectrum[2:11] ** 2).sum()) / spectrum[1]

        found = optimize.minimize_scalar(lambda u: thd(u), bounds=(numpy.log(0.05), numpy.log(0.3)), method="bounded", options={"xatol": 1e-5})
        rows.append((load, level, numpy.exp(found.x), found.fun))
    write("follower-least-thd.csv", ["R_L", "level", "idle", "THD"], rows,
          "The idle current of least static distortion of three output pairs between 50 and 300 mA, by scipy's bounded minimiser", SCRIPT)


def charge():
    """A sine current's charge I/(2 pi f_T), differenced: the peak of its rate of change."""
    rows = []
    for peak, f, transition, standing in ((9.49, 20e3, 30e6, 29.8e-3), (5.0, 20e3, 30e6, 29.8e-3), (12.0, 50e3, 4e6, 0.1)):
        rate = optimize.minimize_scalar(lambda t: -peak / (2 * numpy.pi * transition) * 2 * numpy.pi * f * numpy.cos(2 * numpy.pi * f * t),
                                        bounds=(-0.2 / f, 0.2 / f), method="bounded", options={"xatol": 1e-14})
        most = -rate.fun
        limit = optimize.brentq(lambda g: most * g / f - standing, 1.0, 1e9, xtol=1e-6, rtol=1e-14)
        rows.append((peak, f, transition, standing, most, limit))
    write("charge-control.csv", ["I_p", "f", "f_T", "I_dr", "I_Q", "f_Q"], rows,
          "Greatest rate of change of the base charge of a sine current, and the frequency at which it is the drivers' standing current", SCRIPT)


def droop():
    rows = []
    for h, i, knee in ((100, 3.16, 5), (60, 0.1038, 3), (150, 8, 4), (80, 1e-3, 6)):
        # The law as a limit on charge: base current is collector current by h, and a second path that grows with its square.
        base = optimize.brentq(lambda b: b - i / h - i * i / (h * knee), 0, i, xtol=1e-16, rtol=1e-14)
        rows.append((h, i, knee, base, i / base))
    write("beta-droop.csv", ["h_0", "I", "I_k", "I_B", "h_FE"], rows, "Base current as the sum of a linear and a squared path, and the gain it leaves", SCRIPT)


def gains():
    """Small-signal networks: conductances from the input to the output, one a device, solved as a linear equation; and the idle
    current at which the network at zero resists as much as the one far out."""
    rows = []
    for load, vt, idle, r, n in ((8, 28.28e-3, 0.1038, 0.2725, 3), (4, 26e-3, 0.02, 0.22, 1), (100, 25e-3, 2e-3, 0, 1), (8, 25.85e-3, 0.4, 0.47, 5)):
        saturation = 1e-12

        def network(resistances):
            g = sum(1 / x for x in resistances)
            return numpy.linalg.solve(numpy.array([[1 / load + g]]), numpy.array([g]))[0]

        v = vt * numpy.log(idle / saturation)
        step = 1e-20  # a derivative by a complex step
        r_e = step / (saturation * numpy.exp((v + 1j * step) / vt)).imag
        rows.append((load, vt, idle, r, n, r_e, network([r_e + r] * (2 * n)), network([r] * n) if r else 1.0))
    write("crossover-gains.csv", ["R_L", "V_T", "I_q", "R", "n", "r_e", "A_0", "A_far"], rows,
          "Gain of a follower stage at zero and far out as a network of conductances; r_e as the slope of the exponential", SCRIPT)
    rows = []
    for vt, emitter, inside, base, gain in ((28.28e-3, 0.22, 0.0525, 0, 100), (26e-3, 0.22, 0, 0, 50), (25e-3, 0.33, 0.05, 6, 60), (29e-3, 0.47, 0.1, 12, 150)):
        def difference(log_idle):
            r, r_e = emitter + inside + base / gain, vt / numpy.exp(log_idle)
            return 1 / (2 / (r_e + r)) - r
        idle = numpy.exp(optimize.brentq(difference, numpy.log(1e-4), numpy.log(100), xtol=1e-15, rtol=1e-14))
        rows.append((vt, emitter, inside, base, gain, idle, idle * emitter))
    write("equal-gain.csv", ["V_T", "R_E", "r_int", "r_b", "h_FE", "I_q", "V_RE"], rows,
          "The idle current at which both devices of a pair side by side resist as much as one alone at large current, by root finding", SCRIPT)


if __name__ == "__main__":
    gains()
    transfer()
    harmonics()
    least_thd()
    charge()
    droop()
