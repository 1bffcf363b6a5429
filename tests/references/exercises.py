"""The exercises of the course by another hand: plain formulas and small simulations, for the book's own numbers.

Prints each answer; tests/EightOhm.Tests/Teaching/AnswersByHand.cs holds them, rounded, in another unit, with usual wrong answers.
Needs nothing but Python.
"""
from math import atan, cos, degrees, hypot, log, log10, pi, radians, sin, sqrt

k, q = 1.380649e-23, 1.602176634e-19


def thermal_voltage(celsius):
    return k * (celsius + 273.15) / q


def most(f, a, b, n=200000):
    return max(f(a + (b - a) * i / n) for i in range(n + 1))


def average_equivalent(z, phi):
    """The resistor whose worst dissipation, over all levels, is that of z at phi (rail 1 V, both sides)."""
    worst = most(lambda v: 2 * v / (pi * z) - v * v * cos(phi) / (2 * z), 0, 1)
    return most(lambda v: 2 * v / pi - v * v / 2, 0, 1) / worst


def peak_equivalent(z, phi):
    """The resistor whose greatest instant is that of z at phi, full swing on a rail of 1 V: V²/4R."""
    return 0.25 / most(lambda t: (1 - sin(t)) * sin(t + phi) / z, 0, 2 * pi)


def half_winding(emf, r_half, r_shared, drop, c, load, f):
    """Two equal rails on a centre tap, step by step until steady: rms of one half-winding."""
    dt, v = 1 / f / 20000, emf * sqrt(2) - drop - 2
    for cycle in range(60):
        squares = 0.0
        for step in range(10000):
            i = max(0.0, (emf * sqrt(2) * sin(pi * step / 10000) - drop - v) / (r_half + 2 * r_shared))
            v += (i - load) / c * dt
            squares += i * i
    return sqrt(squares / 10000)


def over_threshold(tc_dt, i_q, r, v_t):
    """The current at which a junction and a resistor take tc·dT more than at i_q."""
    low, high = i_q, 10 * i_q
    for _ in range(200):
        i = (low + high) / 2
        low, high = (i, high) if (i - i_q) * r + v_t * log(i / i_q) < tc_dt else (low, i)
    return low


def mean_of(f, n=4096):
    return -sum(f(2 * pi * i / n) for i in range(n)) / n


def margin(unity, pole, delay):
    """The phase left at the crossover of an integrator with a pole and a delay, by bisection."""
    low, high = unity / 10, unity
    for _ in range(200):
        f = (low + high) / 2
        low, high = (f, high) if abs(unity / (1j * f) / (1 + 1j * f / pole)) > 1 else (low, f)
    return 90 - degrees(atan(f / pole)) - 360 * f * delay


def worst_of_one(v, z, r_e, pairs):
    whole = z + r_e / pairs
    return most(lambda i: 2 * v * i / pi - i * i * whole / 2, 0, v / whole) / (2 * pairs)


def limit(v_be, v, r_1=220, r_2=390, r_3=22e3, r_e=0.22):
    """The emitter current at which the base of the sense transistor stands at v_be: the sum of the currents there is zero."""
    return (v_be / r_2 - (v - v_be) / r_3) * r_1 / r_e + v_be / r_e


def parallel(a, b):
    return a * b / (a + b)


def third_harmonic(v_t, u, n=4096):
    """Third harmonic of the input that a pair needs for a cosine of u times its tail current, by a sum over one period."""
    angles = [2 * pi * i / n for i in range(n)]
    return 2 / n * sum(v_t * log((1 + u * cos(a)) / (1 - u * cos(a))) * cos(3 * a) for a in angles)


room = 25 + 273.15
e_10k, e_1k = sqrt(4 * k * room * 10e3), sqrt(4 * k * room * 1e3)
cable = 2 * 0.010 * 7.98
r_all = 0.2725
r_e_2mA = thermal_voltage(25) / 2e-3
v_75, v_60 = thermal_voltage(75), thermal_voltage(60)

answers = {
    "00-peak-current, A": sqrt(2 * 25 / 4),
    "00-rms-voltage, V": sqrt(50 * 8),
    "00-decibels, dB": 20 * log10(23.62),
    "00-output-power, W": (0.775 * 10 ** (26 / 20)) ** 2 / 8,
    "01-peak-current, A": sqrt(2 * 180 / 4),
    "01-headroom-voltage": 10 ** (2 / 20) - 1,
    "01-burst-power, V": sqrt(2 * 120 * 10 ** 0.2 * 6),
    "01-noise-volts, V": sqrt(80 * 8) / 10 ** (108 / 20),
    "02-slew-rate, V/s": 2 * pi * 20e3 * 35,
    "02-full-power-bandwidth, Hz": 40e6 / (2 * pi * sqrt(2 * 180 * 4)),
    "02-third-harmonic": 1e-3 / hypot(1, 55.5 / 3),
    "02-hum-at-the-input, V": 1e-3 * 23.62,
    "03-noise-of-a-resistor, V": e_10k * sqrt(20e3),
    "03-one-pole, V": 3.3e-9 * sqrt(pi / 2 * 20e3),
    "03-two-sources, V/√Hz": hypot(3.3e-9, e_1k),
    "03-snr-at-one-watt, dB": 120 - 10 * log10(100),
    "04-cable-resistance, Ω": cable,
    "04-average-equivalent, Ω": average_equivalent(4, radians(60)),
    "04-peak-equivalent, Ω": peak_equivalent(6, radians(45)),
    "04-damping": 8 / (0.040 + cable),
    "05-ripple, V": 3 / (2 * 50 * 10e-3),
    "05-stored-energy, J": 15e-3 * 50 ** 2 / 2,
    "05-bleeder-time, s": 2200 * 30e-3 * log(49 / 10),
    "05-half-winding, A": half_winding(37.1, 0.102, 0.051, 0.9, 30e-3, 3.2, 50),
    "06-worst-level, W": (2 / pi) ** 2 * 200,
    "06-music-efficiency": pi / 4 / sqrt(8),
    "06-each-transistor, W": worst_of_one(50, 4, 0.33, 2),
    "06-current-at-zero, A": 40 / 8 * sin(radians(30)) / 3,
    "07-emitter-resistance, Ω": v_60 / 80e-3,
    "07-meter-reading, V": v_75 * 0.22 / r_all,
    "07-output-resistance, Ω": (28.3e-3 / 60e-3 + r_all) / 4,
    "07-larger-resistor, A": 28.3e-3 / (0.44 + 0.0525),
    "07-multiplier, Ω": (3.76 - 0.62) / 2e-3,
    "07-charge-limit, Hz": 30e-3 / 9.5 * 10e6,
    "08-sink-temperature, °C": 30 + 60 * 0.5,
    "08-junction-rise, K": 90 * 0.5 + 90 / 6 * (0.8 + 0.4),
    "08-sink-at-high-mains, K/W": (125 - 35 - 121 / 6 * (0.8 + 0.4)) / 121,
    "08-idle-shift, A": 2e-3 * 5 / (0.22 + 0.06 + 28e-3 / 0.1),
    "08-one-multiplier, V/K": 3.76 / 0.62 * 2.1e-3,
    "08-runaway-current, A": 28.3e-3 / (46 * 3.58 * 2.1e-3 - 0.2725),
    "08-idle-shift by the exponential (a slip), A": over_threshold(10e-3, 0.1, 0.28, 28e-3) - 0.1,
    "09-limit-at-zero, A": limit(0.65, 0),
    "09-limit-warm, A": 2 * 0.55 / 0.65,
    "09-limit-at-the-rail, A": limit(0.65, 46),
    "09-detector-tau, s": sqrt((40 / 0.65) ** 2 - 1) / (2 * pi * 10),
    "09-trip-time, s": -0.979 * log(1 - 0.65 / 46),
    "10-transconductance, S": 1 / (r_e_2mA + 47),
    "10-base-current, V": 2e-3 / 300 * (10e3 - 96),
    "10-slew-at-crossover, V/s": 4e-3 * 2 * pi * 24 * 1e6 * (r_e_2mA + 47),
    "10-third-harmonic": third_harmonic(thermal_voltage(25), 2 * pi * 20e3 * 40 * 100e-12 / 4e-3) * 24 / 40,
    "10-servo-authority, V": 12 * parallel(2200, 100) / (10e3 + parallel(2200, 100)),
    "13-base-current, A/√Hz": sqrt(2 * q * 2e-3 / 300),
    "13-bare-mirror, V/√Hz": sqrt(2) * sqrt(2 * q * 2e-3) * (r_e_2mA + 47),
    "13-best-current, A": thermal_voltage(25) * sqrt(600 / (1e6 + 200**2)),
    "13-low-end, V/√Hz": sqrt(4 * k * room * parallel(10e3, 100 + 1 / (2j * pi * 20 * 10e-6)).real),
    "11-standing-current, A": 40e6 * 120e-12 + 0.1e-3,
    "11-limited-fault, W": 56 * 0.65 / 22,
    "11-unlimited-fault, W": 0.4 * (56 - 0.4 * 22),
    "11-early-effect": 60 * 23.6 / 40 * 1e-4 * 2 * mean_of(lambda t: cos(2 * t) / (1.46 - 0.4 * sin(t))),
    "11-sticking, s": 1e-6 * log(10),
    "12-crossover, Hz": 1 / 60 / (2 * pi * 23.6 * 100e-12),
    "12-slew-of-crossover, V/s": 2 * pi * 1.1e6 * 23.6 * 4e-3 * 60,
    "12-phase-margin, deg": margin(1.5e6, 8e6, 12e-9),
    "12-inner-loop, Hz": 40e-3 * 100 / 140 / (2 * pi * (30e-12 + 100e-12 * 40 / 140)),
    "12-two-pole-zero, Hz": 1 / (2 * pi * 1e3 * 1.1e-9),
    "12-two-pole-gain": abs(1 + 144.686e3 / 20e3 / 1j),
    "14-zobel-heat, W": abs(28.28 / (10 + 1 / (2j * pi * 20e3 * 100e-9))) ** 2 * 10,
    "14-damping-of-a-coil": 8 / abs(1 / (1 / (2j * pi * 20e3 * 1e-6) + 1 / 10)),
    "14-output-inductance, H": 0.15 / (2 * pi * 1.1e6),
    "14-coil, H": 1e-6 * (11.5 / 25.4) ** 2 * 14 ** 2 / (18 * 11.5 / 25.4 + 40 * 19 / 25.4),
    "14-resonance, Hz": 1 / (2 * pi * sqrt(1e-6 * 2.2e-6)),
}

for name, value in answers.items():
    print(f"{name}: {value:.4g}")
