"""Independent values for tests/EightOhm.Published, by scipy. Run with Debian's python3-scipy:

    /usr/bin/python3 tests/references/values.py

It rewrites the CSV files beside it. No formula of the product is copied: each value comes from its definition
(an integral, a maximum, a root) or from a special function.
"""

import csv
import pathlib
import platform

import numpy
import scipy
from scipy import constants, integrate, optimize, signal, special

HERE = pathlib.Path(__file__).parent


def write(name, columns, rows, says, script="values.py"):
    with open(HERE / name, "w", newline="\n", encoding="utf-8") as file:
        file.write(f"# {says}\n")
        file.write(
            f"# tests/references/{script}, scipy {scipy.__version__}, numpy {numpy.__version__}, Python {platform.python_version()}\n"
        )
        writer = csv.writer(file, lineterminator="\n")
        writer.writerow(columns)
        writer.writerows([[repr(float(value)) for value in row] for row in rows])


def mean(f, *breaks):
    """The mean of f over one period of 2 pi, integrated piece by piece between the corners of f."""
    corners = sorted({0.0, 2 * numpy.pi, *(b % (2 * numpy.pi) for b in breaks)})
    pieces = (integrate.quad(f, a, b, epsabs=1e-14, epsrel=1e-13)[0] for a, b in zip(corners, corners[1:]))
    return sum(pieces) / (2 * numpy.pi)


def class_b():
    """Heat of a class-B pair on rails of +-1 V with |Z| = 1 Ohm: the conducting device drops the rail less the output."""

    def heat(level, phase):
        def moment(angle):
            current = level * numpy.sin(angle - phase)
            output = level * numpy.sin(angle)
            return (numpy.sign(current) - output) * current

        return mean(moment, phase, phase + numpy.pi)

    def worst(phase):
        found = optimize.minimize_scalar(lambda a: -heat(a, phase), bounds=(0, 1), method="bounded", options={"xatol": 1e-9})
        return max((heat(found.x, phase), found.x), (heat(1.0, phase), 1.0))

    degrees = [0, 15, 30, 40, 45, 50, 51, 60, 75, 90]
    rows = [(d, *worst(numpy.radians(d))) for d in degrees]
    write("class-b.csv", ["phase_deg", "heat_over_V2_per_Z", "at_level"], rows,
          "Worst heat of an ideal class-B pair over all sine levels, times |Z|/V^2: instantaneous heat integrated over a period, maximised over the level")


def junction():
    """V = V_T ln(I/I_s) + I R, so I R/V_T = W(R I_s/V_T exp(V/V_T)); W(exp z) is the Wright omega function, which does not overflow."""
    cases = [
        # V, R, I_s, V_T
        (0.02, 1e3, 1e-14, 0.025),       # a junction that hardly conducts
        (0.1, 1e3, 1e-14, 0.025),
        (0.3, 0.22, 1e-14, 0.0258),
        (0.45, 10, 1e-12, 0.0258),
        (0.6, 0.22, 1e-13, 0.025),
        (0.62, 0.1, 1e-13, 0.025),       # the bias of an output device
        (0.65, 0.47, 2e-14, 0.0297),
        (0.75, 0.22, 1e-13, 0.0258),
        (1, 1e3, 1e-15, 0.025),
        (5, 1e3, 6.9e-16, 0.025),
        (5, 0.22, 1e-12, 0.031),         # a fault: tens of amperes
        (15, 10e3, 1e-14, 0.02585),
        (30, 4.7e3, 1e-15, 0.02585),     # exp(V/V_T) is beyond any double
        (70, 100, 1e-14, 0.02),
        (1e3, 1e6, 1e-14, 0.02),
    ]

    def current(v, r, saturation, vt):
        z = numpy.log(r * saturation / vt) + v / vt
        by_omega = vt / r * special.wrightomega(z).real
        if z < 600:
            by_lambert = vt / r * special.lambertw(r * saturation / vt * numpy.exp(v / vt)).real
            assert abs(by_lambert / by_omega - 1) < 1e-12
        # A third way: the root of the balance itself in the logarithm of the current.
        top = numpy.log(min(v / r, 1e300) / saturation)
        if v < 600 * vt:
            top = min(top, v / vt)
        u = optimize.brentq(lambda x: vt * x + saturation * numpy.exp(x) * r - v, 0, top + 1e-9, xtol=1e-15, rtol=1e-15)
        assert abs(saturation * numpy.exp(u) / by_omega - 1) < 1e-10, (v, r, saturation, vt)
        return by_omega

    write("junction.csv", ["V", "R", "I_s", "V_T", "I"], [(*c, current(*c)) for c in cases],
          "Current of an exponential junction with a resistor in series, by the Wright omega function, checked against lambertw and brentq")


def thermal_noise():
    """Nyquist with Planck's law: the power a resistance makes available per hertz is h f/(exp(h f/kT) - 1)."""
    # Up to 20 kHz Planck and kT differ by less than 1e-9 of the voltage.
    cases = [(50, 290, 1e4), (1e3, 300, 20e3), (10e3, 298.15, 19980), (22, 330, 1e3), (100e3, 250, 100)]  # R, T, B

    def available(f, t):
        x = constants.h * f / (constants.k * t)
        return constants.k * t * (x / numpy.expm1(x) if x > 0 else 1.0)

    rows = []
    for r, t, b in cases:
        power = integrate.quad(available, 0, b, args=(t,), epsrel=1e-13, epsabs=0)[0]
        rows.append((r, t, b, 2 * numpy.sqrt(r * power), 2 * numpy.sqrt(r * available(1.0, t)), 2 * numpy.sqrt(available(1.0, t) / r)))
    write("thermal-noise.csv", ["R", "T", "B", "E", "e", "i"], rows,
          "Thermal noise from Planck's law (h f, not kT), integrated from 0 Hz to B; densities at 1 Hz")


def ratings():
    """The sine that makes the power: its peak by root finding on the mean of the instantaneous power, its rms by integration."""
    rows = []
    for power, load in [(100, 8), (40, 8), (1, 8), (50, 4), (0.1, 16), (250, 2.7)]:
        def made(peak):
            return mean(lambda angle: (peak * numpy.sin(angle)) ** 2 / load)

        peak = optimize.brentq(lambda p: made(p) / power - 1, 1e-3, 1e3, xtol=1e-14, rtol=1e-14)
        rms = numpy.sqrt(mean(lambda angle: (peak * numpy.sin(angle)) ** 2))
        rms_current = numpy.sqrt(mean(lambda angle: (peak * numpy.sin(angle) / load) ** 2))
        slope = optimize.minimize_scalar(lambda t: -2e4 * numpy.pi * peak * numpy.cos(2e4 * numpy.pi * t), bounds=(-2e-5, 2e-5), method="bounded", options={"xatol": 1e-14})
        rows.append((power, load, rms, peak, rms_current, peak / load, -slope.fun))
    write("ratings.csv", ["P", "R_L", "V_rms", "V_pk", "I_rms", "I_pk", "slope_at_10_kHz"], rows,
          "The sine that makes a power in a load: peak by root finding on the integral of the instantaneous power; steepest slope at 10 kHz by maximisation")


def levels():
    """Each decibel figure by root finding on its definition; crest factors by integration of a sine to a power; the sound of a sphere by its area."""

    def root(f, low, high):
        return optimize.brentq(f, low, high, xtol=1e-300, rtol=1e-14)

    rows = []
    for rated, headroom, gain, load, distance, exponent in [(100, 2, 23.6, 8, 1, 1), (50, 0.5, 20, 4, 2, 3), (1, 3, 40, 2, 3.5, 1), (250, 1.25, 31.6, 6, 10, 5)]:
        burst = root(lambda p: 10 * numpy.log10(p / rated) - headroom, rated / 10, rated * 10)
        v_rated, v_burst = numpy.sqrt(rated * load), numpy.sqrt(burst * load)
        noise = 1e-4
        snr_1, snr_rated = numpy.sqrt(load) / noise, v_rated / noise
        rms = numpy.sqrt(mean(lambda a: (gain * numpy.sin(a) ** exponent) ** 2))
        # What must be put on the input to make the same output as 1 V of disturbance that leaves 1/1000 of itself there.
        at_input = root(lambda v: v * gain - 1e-3, 1e-9, 1)
        # Sound: intensity from the power through a sphere, 90 dB for 1 W at 1 m; 96 dB wanted.
        sphere = 4 * numpy.pi * distance**2
        one_watt = 1e-12 * 10**9 * 4 * numpy.pi
        average = root(lambda w: 10 * numpy.log10(w * one_watt / sphere / 1e-12) - 96, 1e-3, 1e4)
        peak = average * (gain / rms) ** 2
        sine = root(lambda w: w / mean(lambda a: numpy.sin(a) ** 2) - peak, 1e-3, 1e5)
        rows.append((rated, headroom, v_burst / v_rated, burst, v_burst / v_rated - 1, burst / rated - 1, snr_1, snr_rated, 1 / noise, 1.2 / noise,
                     gain, rms, 1e3, 1 / at_input, 1e-3, distance, average, sine))
    write("levels.csv", ["P_rated", "H_dB", "H", "P_burst", "rise_V", "rise_P", "snr_1W", "snr_rated", "snr_1V", "snr_1_2V",
                         "V_pk", "V_rms", "R_out", "R_in", "left", "d", "P_avg", "P_sine"], rows,
          "Levels from their definitions: decibels by root finding, rms by integration, sound as power through a sphere (90 dB at 1 m for 1 W, 96 dB wanted)")


def thermal_voltage():
    rows = [(t, constants.convert_temperature(t, "Celsius", "Kelvin") * constants.physical_constants["Boltzmann constant in eV/K"][0]) for t in (-40, 0, 20, 25, 27, 60, 100, 150)]
    write("thermal-voltage.csv", ["t_C", "V_T"], rows, "Thermal voltage from the CODATA Boltzmann constant in eV/K (scipy.constants)")


def band(square, corner):
    """The integral of a squared response from 0 Hz to infinity, in pieces around its corner; the last piece by 1/f."""
    below = sum(integrate.quad(square, a * corner, b * corner, epsabs=0, epsrel=1e-13)[0] for a, b in [(0, 0.5), (0.5, 1), (1, 2), (2, 10)])
    return below + integrate.quad(lambda u: square(1 / u) / u**2 if u else 0.0, 0, 1 / (10 * corner), epsabs=0, epsrel=1e-13)[0]


def noise_bandwidth():
    """Each order: identical poles at 1 Hz, the same scaled by the root of |H|^2 = 1/2, and a Butterworth by its poles in the s plane."""
    rows = []
    for n in range(1, 11):
        def cascade(f):
            return abs(1 / (1 + 1j * f)) ** (2 * n)

        corner = optimize.brentq(lambda f: cascade(f) - 0.5, 1e-3, 1.5, xtol=1e-15, rtol=1e-15)
        poles = signal.buttap(n)[1]
        whole = band(cascade, 1)
        rows.append((n, whole, whole / corner, band(lambda f: abs(1 / numpy.prod(1j * f - poles)) ** 2, 1)))
    write("noise-bandwidth.csv", ["n", "by_pole", "by_corner", "butterworth"], rows,
          "Noise bandwidth per hertz by integration of the squared response: n identical poles (of one pole's corner, of the whole's), Butterworth of order n")
    pairs = [(482.3e3, 1.111e6), (1e3, 1e3), (20, 20e3), (1e6, 3e5)]
    write("unequal-poles.csv", ["f_1", "f_2", "B"], [(a, b, band(lambda f: abs(1 / ((1 + 1j * f / a) * (1 + 1j * f / b))) ** 2, min(a, b))) for a, b in pairs],
          "Noise bandwidth of two real poles by integration of the squared response")


def snr():
    """The noise of a density through one pole by integration; the ratio in decibels and, for a given ratio, the corner by root finding."""

    def noise(density, corner):
        return numpy.sqrt(band(lambda f: abs(density / (1 + 1j * f / corner)) ** 2, corner))

    rows = []
    for reference, density, decibels in [(1, 3.3e-9, 110), (1.2, 2.7e-9, 115), (0.775, 10e-9, 100), (28.28, 80e-9, 118)]:
        allowed = reference / 10 ** (decibels / 20)
        corner = optimize.brentq(lambda f: noise(density, f) / allowed - 1, 1e2, 1e8, xtol=1e-6, rtol=1e-14)
        rows.append((reference, density, decibels, allowed, corner, reference / noise(density, corner)))
    write("snr.csv", ["V_s", "e_n", "decibels", "V_n", "f_c", "SNR"], rows,
          "White noise through one pole by integration; the corner by root finding on the ratio")


def flicker():
    rows = []
    for density, corner, low, high in [(20e-9, 200, 0.1, 100), (20e-9, 200, 20, 20e3), (3.3e-9, 30, 20, 20e3), (5e-9, 0, 1, 1e6), (1e-9, 1e4, 0.01, 10)]:
        square = integrate.quad(lambda x: density**2 * (1 + corner / numpy.exp(x)) * numpy.exp(x), numpy.log(low), numpy.log(high), epsabs=0, epsrel=1e-13)[0]
        rows.append((density, corner, low, high, numpy.sqrt(square)))
    write("flicker-noise.csv", ["e_w", "f_c", "f_L", "f_H", "E"], rows, "White noise with a 1/f corner by integration of its squared density over the band")


def shot():
    """Its power law from the definition: 2 e I, with the charge from CODATA 2018."""
    charge = constants.physical_constants["elementary charge"][0]
    rows = [(i, numpy.sqrt(2 * charge * i)) for i in (1e-3, 2e-3 / 300, 1e-9, 0.5)]
    write("shot-noise.csv", ["I", "i"], rows, "Shot noise density with the CODATA elementary charge (scipy.constants)")


def a_weighting():
    """The poles from what they do: two of two each put the ends of weighting C at half power; two equal RC links, coupled, are the high pass."""

    def half(f, low, high):
        def c(x):
            return abs((1j * x) ** 2 / ((1j * x + low) ** 2 * (1j * x + high) ** 2)) ** 2

        return c(f) / c(1000.0) - 0.5

    ends = optimize.fsolve(lambda p: [half(10**1.5, *p), half(10**3.9, *p)], [20.0, 12e3], xtol=1e-12)
    poles = [ends[0], ends[0], *-numpy.roots([1, 3 * 10**2.45, 10**4.9]), ends[1], ends[1]]

    def response(f):
        return abs((1j * f) ** 4 / numpy.prod([1j * f + p for p in poles]))

    def square(f):
        return (response(f) / response(1000.0)) ** 2

    rows = [(f, response(f) * poles[4] ** 2, response(f) / response(1000.0)) for f in (1, 10, 31.5, 100, 1000, 2500, 10e3, 20e3, 200e3)]
    write("a-weighting.csv", ["f", "R_A", "A"], rows, "A-weighting as the product of its zeros and poles in the s plane; poles by root finding on the half-power points of weighting C and of a polynomial")

    rows = []
    for low, high in [(20, 20e3), (1e-3, 2e5), (1e-6, 1e9), (10, 1e3), (400, 8e3), (1e3, 1e9)]:
        edges = numpy.geomspace(low, high, 60)
        whole = sum(integrate.quad(square, a, b, epsabs=0, epsrel=1e-12)[0] for a, b in zip(edges, edges[1:]))
        rows.append((low, high, 1e-9 * numpy.sqrt(whole)))
    write("a-weighted-noise.csv", ["f_L", "f_H", "E_per_nV"], rows, "White noise of 1 nV/rtHz through A-weighting over a band, by integration")


if __name__ == "__main__":
    class_b()
    junction()
    thermal_noise()
    ratings()
    levels()
    thermal_voltage()
    noise_bandwidth()
    snr()
    flicker()
    shot()
    a_weighting()
