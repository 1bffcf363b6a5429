"""Independent values for the rooms Noise, InputStages and SupplyPaths, by scipy. Run with Debian's python3-scipy:

    /usr/bin/python3 tests/references/input_stage.py

It rewrites the CSV files beside it. No formula of the product is copied: circuits are solved node by node with every noise source by itself,
harmonics come from the exponential devices by a Fourier transform, corners from root finding, totals from quadrature, steps from an integrator.
"""

import itertools

import numpy
from scipy import constants, fft, integrate, optimize

from values import write

K, Q = constants.k, constants.e
SCRIPT = "input_stage.py"


def thermal_voltage(kelvin):
    return K * kelvin / Q


class Network:
    """Nodes by number, 0 is ground. Conductances, capacitors, voltage-controlled currents; each noise source a current between two nodes."""

    def __init__(self, nodes):
        self.g = numpy.zeros((nodes + 1, nodes + 1), complex)
        self.c = numpy.zeros((nodes + 1, nodes + 1), complex)
        self.noise = []

    def conductance(self, a, b, value, matrix=None):
        m = self.g if matrix is None else matrix
        m[a, a] += value
        m[b, b] += value
        m[a, b] -= value
        m[b, a] -= value

    def resistor(self, a, b, ohms, kelvin=0.0):
        self.conductance(a, b, 1 / ohms)
        if kelvin > 0:
            self.noise.append((a, b, 4 * K * kelvin / ohms))

    def capacitor(self, a, b, farads):
        self.conductance(a, b, farads, self.c)

    def transconductance(self, out, back, plus, minus, siemens):
        """A current siemens*(v_plus - v_minus) flows from node out to node back."""
        self.g[out, plus] += siemens
        self.g[out, minus] -= siemens
        self.g[back, plus] -= siemens
        self.g[back, minus] += siemens

    def transfer(self, f, out, a, b):
        """Voltage of a node for a current of 1 A drawn out of node a and put into node b."""
        m = (self.g + 2j * numpy.pi * f * self.c)[1:, 1:]
        i = numpy.zeros(len(m) + 1, complex)
        i[a] -= 1
        i[b] += 1
        return numpy.concatenate([[0], numpy.linalg.solve(m, i[1:])])[out]

    def density(self, f, out):
        return numpy.sqrt(sum(s * abs(self.transfer(f, out, a, b)) ** 2 for a, b, s in self.noise))


# Nodes of the pair: 1, 2 bases outside; 3, 4 bases inside; 5, 6 emitters; 7 tail; 8 diode side of the mirror; 9 output; 10, 11 emitters of the mirror.
# A source drives base 1 through 1e-6 Ohm; collector currents by gm, no base current (its shot noise is put in as a source).
def pair(kelvin, i_c, r_bb, r_deg, r_m, r_bm, load=1e3, quiet=(), i_b=0.0, r_a=0.0, r_b=0.0, delta=0.0):
    n = Network(13)
    tiny = 1e-6
    n.resistor(1, 0, r_a + tiny)
    n.resistor(2, 0, r_b + tiny)

    def res(name, a, b, ohms):
        n.resistor(a, b, max(ohms, tiny), 0 if name in quiet or ohms == 0 else kelvin)

    res("bases", 1, 3, r_bb)
    res("bases", 2, 4, r_bb)
    res("degeneration", 5, 7, r_deg)
    res("degeneration", 6, 7, r_deg)
    vt = thermal_voltage(kelvin)
    for base, emitter, collector, sign in ((3, 5, 8, 1), (4, 6, 9, -1)):
        i = i_c * (1 + sign * delta)
        n.transconductance(collector, emitter, base, emitter, i / vt)
        if "collectors" not in quiet:
            n.noise.append((collector, emitter, 2 * Q * i))
        if i_b > 0:
            n.noise.append((base, emitter, i_b**2))
    # The mirror: its bases (12 through r_bm of the diode, 13 of the other) are driven by node 8.
    res("mirror", 10, 0, r_m)
    res("mirror", 11, 0, r_m)
    res("mirror", 8, 12, r_bm)
    res("mirror", 8, 13, r_bm)
    for base, emitter, collector in ((12, 10, 8), (13, 11, 9)):
        n.transconductance(collector, emitter, base, emitter, i_c / vt)
        if "mirror" not in quiet:
            n.noise.append((collector, emitter, 2 * Q * i_c))
    n.resistor(9, 0, load)
    return n


def at_input(n, r_a=0.0):
    """Density at the output over the gain from base 1: a voltage in series with base 1 is a current at node 1."""
    gain = abs(n.transfer(1.0, 9, 0, 1)) / (1e-6 + r_a)
    return n.density(1.0, 9) / gain


def pair_noise():
    rows = []
    for celsius, i_c, r_bb, r_deg, h_fe, r_a, r_b in itertools.product((25, 60), (0.5e-3, 2e-3), (10, 60), (10, 100), (100, 400), (50, 700), (90,)):
        t = celsius + 273.15
        i_b = numpy.sqrt(2 * Q * i_c / h_fe)
        whole = at_input(pair(t, i_c, r_bb, r_deg, 1.0, 0, quiet=("mirror",), i_b=i_b, r_a=r_a, r_b=r_b), r_a)
        shot = at_input(pair(t, i_c, r_bb, r_deg, 1.0, 0, quiet=("mirror", "bases", "degeneration")))
        rows.append((celsius, i_c, r_bb, r_deg, h_fe, r_a, r_b, thermal_voltage(t) / i_c, whole, shot))
    write("pair-noise.csv", ["celsius", "I_C", "r_bb", "R_deg", "h_FE", "R_a", "R_b", "r_e", "whole", "shot"], rows,
          "Noise of a bipolar pair at its input, every source by itself through the solved circuit: all of the pair, and the collectors' shot noise alone", SCRIPT)


def mirror_noise():
    rows = []
    for celsius, i_c, r_deg, r_m, r_bm in itertools.product((25, 60), (0.5e-3, 2e-3), (22, 100), (0, 22, 68, 220), (0, 40)):
        t = celsius + 273.15
        r_e = thermal_voltage(t) / i_c
        e = at_input(pair(t, i_c, 0, r_deg, r_m, r_bm, quiet=("bases", "degeneration", "collectors")))
        rows.append((celsius, r_m, r_bm, r_e, r_deg, e))
    write("mirror-noise.csv", ["celsius", "R_m", "r_bm", "r_e", "R_deg", "e"], rows,
          "Noise of a mirror at the input of its pair, every source by itself through the solved circuit", SCRIPT)


def tail_noise():
    rows = []
    for celsius, i_c, r_deg, delta in itertools.product((25, 60), (0.5e-3, 2e-3), (22, 100), (0.01, 0.1, 0.3)):
        t = celsius + 273.15
        n = pair(t, i_c, 0, r_deg, 100, 0, delta=delta, quiet=("mirror", "bases", "degeneration", "collectors"))
        i = abs(n.transfer(1.0, 9, 7, 0)) / 1e3  # the current of the output, into the load, for 1 A out of the tail
        rows.append((delta, thermal_voltage(t) / i_c, r_deg, 1e-12, 1e-12 * i * (thermal_voltage(t) / i_c + r_deg)))
    write("tail-noise.csv", ["delta", "r_e", "R_deg", "i_t", "e"], rows,
          "What a current in the tail of an unbalanced pair leaves behind an ideal mirror, over the balanced transconductance: the solved circuit", SCRIPT)


def fet_noise():
    rows = []
    for celsius, g_m, r_deg in itertools.product((25, 60), (3e-3, 20e-3), (0, 10, 100)):
        t = celsius + 273.15
        n = Network(5)  # gate 1, sources 2 and 3, tail 4, drain of the second 5
        n.resistor(1, 0, 1e-6)
        n.resistor(2, 4, max(r_deg, 1e-7), t if r_deg else 0)
        n.resistor(3, 4, max(r_deg, 1e-7), t if r_deg else 0)
        n.transconductance(0, 2, 1, 2, g_m)
        n.transconductance(5, 3, 0, 3, g_m)
        n.noise += [(0, 2, 4 * K * t * 2 / 3 * g_m), (5, 3, 4 * K * t * 2 / 3 * g_m)]
        n.resistor(5, 0, 1e3)
        rows.append((celsius, g_m, r_deg, n.density(1.0, 5) / (abs(n.transfer(1.0, 5, 0, 1)) / 1e-6)))
    write("fet-noise.csv", ["celsius", "g_m", "R_deg", "e"], rows, "Channel noise of a field-effect pair at its input: the solved circuit", SCRIPT)


def input_network():
    rows = []
    for r_1, c_in, c_c, r_b in ((150, 2.2e-9, 10e-6, 10e3), (700, 2.2e-9, 10e-6, 10e3), (2e3, 1e-9, 1e-6, 47e3), (10e3, 100e-9, 1e-6, 10e3), (5e3, 1e-6, 1e-6, 5e3)):
        def node(f):
            n = Network(2)
            n.resistor(1, 0, r_1)
            n.capacitor(1, 0, c_in)
            n.capacitor(1, 2, c_c)
            n.resistor(2, 0, r_b)
            return n

        def level(f):
            return abs(node(f).transfer(f, 2, 0, 1)) / r_1

        best = optimize.minimize_scalar(lambda x: -level(10**x), bounds=(-1, 8), method="bounded", options={"xatol": 1e-11})
        top, at = -best.fun, best.x
        low = 10 ** optimize.brentq(lambda x: level(10**x) - top / numpy.sqrt(2), -4, at, xtol=1e-13)
        high = 10 ** optimize.brentq(lambda x: level(10**x) - top / numpy.sqrt(2), at, 10, xtol=1e-13)
        for f in (1.0, 20.0, 1e3, 20e3, 1e6):
            z = node(f).transfer(f, 2, 0, 2)
            e = numpy.sqrt(4 * K * 298.15 * z.real + (1.5e-12 * abs(z)) ** 2)
            rows.append((r_1, c_in, c_c, r_b, f, top, low, high, level(f), z.real, abs(z), e))
    write("input-network.csv", ["R_1", "C_in", "C_c", "R_b", "f", "top", "low", "high", "level", "real", "magnitude", "e"], rows,
          "An input network solved by nodes: greatest level, -3 dB frequencies by root finding, level and impedance at the base, noise with 1.5 pA at 25 degC", SCRIPT)


def best_current():
    rows = []
    for vt, h_fe, r_a, r_b in itertools.product((0.0257, 0.03), (100, 500), (100, 2000), (50, 180)):
        def power(u):
            i = numpy.exp(u)
            return 4 * Q * vt**2 / i + 2 * Q * i / h_fe * (r_a**2 + r_b**2)
        u = optimize.minimize_scalar(lambda u: numpy.log(power(u)), bounds=(-20, 0), method="bounded", options={"xatol": 1e-12}).x
        rows.append((vt, h_fe, r_a, r_b, numpy.exp(u)))
    write("best-current.csv", ["V_T", "h_FE", "R_a", "R_b", "I"], rows, "Collector current of least shot noise: minimised numerically", SCRIPT)


def noise_over_band():
    def a_weight(f):
        f2 = f * f
        return 12194.217**2 * f2 * f2 / ((f2 + 20.598997**2) * numpy.sqrt((f2 + 107.65265**2) * (f2 + 737.86223**2)) * (f2 + 12194.217**2))

    rows = []
    for e_w, f_c, f_1, f_2, low, high, weighted in ((3e-9, 0, 482e3, 1.11e6, 1, 1e8, 0), (3e-9, 200, 482e3, 1.11e6, 0.01, 1e8, 0), (5e-9, 1e3, 20e3, 80e3, 20, 20e3, 0), (3e-9, 200, 482e3, 1.11e6, 20, 20e3, 1)):
        def power(u):
            f = numpy.exp(u)
            h2 = 1 / (1 + (f / f_1) ** 2) / (1 + (f / f_2) ** 2)
            return e_w**2 * (1 + f_c / f) * h2 * ((a_weight(f) / a_weight(1000.0)) ** 2 if weighted else 1) * f * 1e18
        edges = numpy.linspace(numpy.log(low), numpy.log(high), 60)
        total = sum(integrate.quad(power, a, b, epsabs=0, epsrel=1e-12)[0] for a, b in zip(edges, edges[1:])) * 1e-18
        rows.append((e_w, f_c, f_1, f_2, low, high, weighted, numpy.sqrt(total)))
    write("noise-over-band.csv", ["e_w", "f_c", "f_1", "f_2", "low", "high", "weighted", "E"], rows,
          "Noise with a 1/f corner behind two poles over a band, some of it A-weighted: piecewise quadrature", SCRIPT)


def pair_distortion():
    rows = []
    n = 4096
    theta = 2 * numpy.pi * numpy.arange(n) / n
    for celsius, i_tail, r_deg, u, delta, gain, v_p in itertools.product((25, 60), (4e-3,), (0, 47), (0.05, 0.1256637061435917, 0.6), (0.02, 0.2), (23.6,), (40.0,)):
        vt = thermal_voltage(celsius + 273.15)
        y = delta + u * numpy.cos(theta)
        i_1, i_2 = i_tail / 2 * (1 + y), i_tail / 2 * (1 - y)
        v = vt * numpy.log(i_1 / i_2) + r_deg * (i_1 - i_2)
        h = 2 * numpy.abs(fft.rfft(v)) / n * gain / v_p
        rows.append((celsius, u, delta, r_deg, gain, v_p, h[2], h[3]))
    write("pair-distortion.csv", ["celsius", "u", "delta", "R_deg", "G", "V_p", "H2", "H3"], rows,
          "Harmonics at the output of a pair that a loop makes deliver a sine of current: two exponential devices with their resistors, Fourier transform", SCRIPT)


def widlar():
    rows = []
    for vt, i_ref, r in itertools.product((0.025, 0.026, 0.03), (1e-4, 1e-3, 1e-2), (10, 1e3, 11.5e3)):
        x = optimize.brentq(lambda x: vt * x - i_ref * numpy.exp(-x) * r, 0, 60, xtol=1e-15, rtol=1e-15)
        rows.append((vt, i_ref, r, i_ref * numpy.exp(-x)))
    write("widlar.csv", ["V_T", "I_ref", "R", "I_O"], rows, "Current of a Widlar source: root of its balance", SCRIPT)


def output_resistance():
    rows = []
    for v_a, i_c, h_fe, r_e in itertools.product((80, 150), (1e-4, 2e-3), (80, 300), (22, 330, 4.7e3)):
        g_m = i_c / 0.02569
        n = Network(2)  # collector 1, emitter 2, base at ground
        n.resistor(1, 2, v_a / i_c)
        n.transconductance(1, 2, 0, 2, g_m)
        n.resistor(2, 0, h_fe / g_m)
        n.resistor(2, 0, r_e)
        rows.append((v_a / i_c, 1 / g_m, h_fe, r_e, abs(n.transfer(0.0, 1, 0, 1))))
    write("output-resistance.csv", ["r_o", "r_e", "h_FE", "R_E", "R_o"], rows, "Output resistance of a transistor with a resistor in its emitter: the solved circuit", SCRIPT)


def servo():
    rows = []
    for r_i, c_i, r_f, r_g, r_inj in ((1e6, 220e-9, 2260, 100, 10e3), (1e6, 220e-9, 2240, 100, 10e3), (470e3, 1e-6, 1e3, 47, 2.2e3)):
        # Ideal amplifier of non-inverting input; the servo's output is -integral of the output, into node x through r_inj (inverting integrator behind an inverter: its sign opposes).
        def level(f):
            s = 2j * numpy.pi * f
            # node x = v_in: (v_out - v_in)/r_f + (v_s - v_in)/r_inj = v_in/r_g with v_s = v_out/(s r_i c_i)
            return abs((1 / r_g + 1 / r_f + 1 / r_inj) / (1 / r_f + 1 / (r_inj * s * r_i * c_i)))
        top = level(1e6)
        corner = optimize.brentq(lambda x: level(10**x) - top / numpy.sqrt(2), -6, 3, xtol=1e-14)
        # The authority: the voltage at x for 12 V at the servo, output and ground held.
        n = Network(2)
        n.conductance(1, 0, 1 / r_f)
        n.conductance(1, 0, 1 / r_g)
        n.conductance(1, 2, 1 / r_inj)
        n.conductance(2, 0, 1e9)
        share = abs(n.transfer(0.0, 1, 0, 2) / n.transfer(0.0, 2, 0, 2))
        # The integrator's noise, its op-amp ideal but for a voltage noise of 10 nV in series with its grounded input.
        f = 20.0
        z_c = 1 / (2j * numpy.pi * f * c_i)
        parts = (1e-8 * abs(1 + z_c / r_i), numpy.sqrt(4 * K * 298.15 * r_i) * abs(z_c / r_i))
        rows.append((r_i, c_i, r_f, r_g, r_inj, top, 10**corner, 12 * share, 0.0667 / share, numpy.hypot(*parts) * share))
    write("servo.csv", ["R_i", "C_i", "R_f", "R_g", "R_inj", "gain", "corner", "authority", "output", "noise"], rows,
          "A servo around an ideal amplifier: gain above and corner of its solved response, authority of 12 V, its output for 66.7 mV, noise at 20 Hz with 10 nV at 25 degC", SCRIPT)


def feedback_capacitor():
    rows = []
    for f, v, r_f, r_g, c in ((20, 28.28, 2260, 100, 1e-3), (20, 28.28, 2260, 100, 2.2e-3), (10, 50, 1000, 22, 4.7e-3), (5, 20, 10e3, 470, 47e-6)):
        n = Network(3)  # output 1 (a stiff source), between 2, capacitor 3
        n.conductance(1, 0, 1e9)
        n.conductance(1, 2, 1 / r_f)
        n.conductance(2, 3, 1 / r_g)
        n.capacitor(3, 0, c)
        rows.append((f, v, r_f, r_g, c, abs(n.transfer(f, 3, 0, 1) / n.transfer(f, 1, 0, 1)) * v))
    write("feedback-capacitor.csv", ["f", "V_out", "R_f", "R_g", "C_g", "V_C"], rows, "Voltage across the capacitor of a feedback divider: the solved circuit", SCRIPT)


def half_waves():
    rows = []
    for h in range(9):
        def part(x, trig):
            return numpy.sin(x) * trig(h * x)
        c = integrate.quad(part, 0, numpy.pi, args=(numpy.cos,), epsabs=1e-13)[0] / numpy.pi
        s = integrate.quad(part, 0, numpy.pi, args=(numpy.sin,), epsabs=1e-13)[0] / numpy.pi
        amplitude = numpy.hypot(c, s) / (2 if h == 0 else 1)
        if amplitude > 1e-12:
            rows.append((h, 5.0, 5 * amplitude))
    write("half-waves.csv", ["h", "I_p", "I_h"], rows, "Harmonics of half-waves of 5 A peak: Fourier integrals", SCRIPT)


def rail_harmonics():
    rows = []
    for i, f, r, l, f_x, v_p in ((1.061, 40e3, 0.02, 0.25e-6, 1.11e6, 40), (0.2122, 80e3, 0.02, 0.25e-6, 1.11e6, 40), (2.5, 1e3, 0.05, 1e-6, 5e5, 28)):
        v = abs(i * (r + 2j * numpy.pi * f * l))
        rejection = abs(1 + f_x / (1j * f))
        rows.append((i, f, r, l, f_x, v_p, v, rejection, v / rejection / v_p))
    write("rail-harmonics.csv", ["I", "f", "R", "L", "f_x", "V_p", "V", "rejection", "share"], rows, "A harmonic current in a rail's impedance, through a loop of one pole: complex arithmetic", SCRIPT)


def decoupling():
    rows = []
    for l, c, esr, r in ((0.5e-6, 220e-6, 0.03, 0.01), (0.2e-6, 1e-6, 0.05, 0.02), (1e-6, 1000e-6, 0.02, 0.005)):
        def wire_and_capacitor(f):
            z_wire = r + 2j * numpy.pi * f * l
            z_cap = esr + 1 / (2j * numpy.pi * f * c)
            return abs(1 / (1 / z_wire + 1 / z_cap))
        # Undamped swing at a step of 1 A: the greatest fall of the rail's end.
        t = 2 * numpy.pi * numpy.sqrt(l * c)
        solved = integrate.solve_ivp(lambda _, y: [-y[1] / l, (y[0] - 1) / c], (0, t), [0, 0], rtol=1e-11, atol=1e-14, max_step=t / 2000)
        swing = -solved.y[1].min()
        crossing = optimize.brentq(lambda x: (2j * numpy.pi * 10**x * l + 1 / (2j * numpy.pi * 10**x * c)).imag, 2, 8, xtol=1e-14)
        for f in (1e3, 20e3, 1e6):
            rows.append((l, c, esr, r, f, wire_and_capacitor(f), swing, 10**crossing))
    write("decoupling.csv", ["L", "C", "ESR", "R", "f", "Z", "swing", "f_0"], rows,
          "A wire with a capacitor at its end: impedance in complex arithmetic, the undamped swing at a step of 1 A by an integrator, the resonance by root finding", SCRIPT)


def sawtooth_hum():
    rows = []
    for v_pp, mains, f_x in ((3.0, 50.0, 1.11e6), (1.0, 60.0, 5e5)):
        square = 0.0
        for h in range(1, 21):
            b = integrate.quad(lambda x: v_pp * (0.5 - x) * numpy.sin(2 * numpy.pi * h * x), 0, 1, epsabs=1e-15)[0] * 2
            f = 2 * mains * h
            square += (b / numpy.sqrt(2) / abs(1 + f_x / (1j * f))) ** 2
        rows.append((v_pp, mains, f_x, numpy.sqrt(square)))
    write("sawtooth-hum.csv", ["V_pp", "mains", "f_x", "hum"], rows, "Twenty harmonics of a sawtooth ripple through a loop of one pole, rms: Fourier integrals", SCRIPT)


if __name__ == "__main__":
    for make in (pair_noise, mirror_noise, tail_noise, fet_noise, input_network, best_current, noise_over_band, pair_distortion, widlar, output_resistance,
                 servo, feedback_capacitor, half_waves, rail_harmonics, decoupling, sawtooth_hum):
        make()
