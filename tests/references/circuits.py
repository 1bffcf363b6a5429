"""Independent values for the circuits of tests/EightOhm.Published:

    /usr/bin/python3 tests/references/circuits.py

Ladders by a recursion of impedances and chain matrices, steps by state space, noise by quadrature of chain matrices, operating
points by nested root finding; no node equation of the product is copied.
"""

import cmath
import math

import numpy
from scipy import constants, integrate, optimize, signal

from values import write

SCRIPT = "circuits.py"


class Lcg:
    def __init__(self, seed):
        self.state = seed

    def __call__(self):
        self.state = (self.state * 6364136223846793005 + 1442695040888963407) & 0xFFFFFFFFFFFFFFFF
        return (self.state >> 11) * 2.0**-53


def sections(seed, count):
    u = Lcg(seed)
    for _ in range(count):
        yield (10 ** (1 + 3 * u()), 10 ** (-6 + 3 * u()), 10 ** (-10 + 3 * u()), 10 ** (3 + 3 * u()), 0.02 * (u() - 0.5))


def ladder(seed, count, f):
    """Gain and input impedance by chain matrices: [v1, i1] = M [v2, i2] for each section, the last loaded by nothing.

    A section: r and l in series, c and shunt across its end, and a current g*v1 that leaves the end."""
    s = 2j * math.pi * f
    total = numpy.eye(2, dtype=complex)
    for r, l, c, shunt, g in sections(seed, count):
        z, y = r + s * l, s * c + 1 / shunt
        # i1 = i2 + y*v2 + g*v1 and v1 = v2 + z*i1, solved for v1 and i1
        v1 = numpy.array([1 + z * y, z]) / (1 - z * g)
        i1 = numpy.array([y, 1]) + g * v1
        total = total @ numpy.array([v1, i1])
    return 1 / total[0, 0], total[0, 0] / total[1, 0]


def ladders():
    rows = []
    for seed, count in [(11, 1), (12, 2), (13, 4), (14, 7), (15, 8)]:
        for f in (3.0, 1e3, 2.2e4, 4.7e5, 3.3e6):
            h, z = ladder(seed, count, f)
            rows.append([seed, count, f, abs(h), math.degrees(cmath.phase(h)), abs(z)])
    write("circuit-ladder.csv", ["seed", "sections", "f", "gain", "phase_deg", "z_in"], rows,
          "Ladders of random parts with a controlled source a section: gain and input impedance by chain matrices", SCRIPT)


def step():
    """R, L in series, C and R_p across the output, by state space and an ODE solver of another kind."""
    rows = []
    for r, l, c, rp, times in [(20, 1e-3, 1e-6, 1e3, (1e-5, 1e-4, 5e-4, 2e-3)), (5e3, 1e-3, 1e-9, 2e4, (1e-7, 1e-6, 1e-5)), (0.1, 1e-6, 2.2e-6, 8, (1e-6, 4e-6, 2e-5))]:
        system = signal.StateSpace([[-r / l, -1 / l], [1 / c, -1 / (rp * c)]], [[1 / l], [0]], [[0, 1]], [[0]])
        for t in times:
            grid = numpy.linspace(0, t, 4001)
            v = signal.step(system, T=grid)[1][-1]
            rows.append([r, l, c, rp, t, v])
    write("circuit-step.csv", ["R", "L", "C", "R_p", "t", "v"], rows, "A step into a damped resonance, by state space", SCRIPT)


def noise():
    """Two RC sections in cascade: the resistances' noise at the output over a band, by quadrature."""
    rows = []
    four_kt = 4 * constants.k * 300
    for r1, c1, r2, c2, low, high in [(1e3, 1e-9, 1e4, 1e-10, 20, 2e4), (1e3, 1e-9, 1e4, 1e-10, 1, 1e9), (47, 1e-6, 1e5, 1e-11, 10, 1e8), (600, 1e-8, 2.2e3, 1e-9, 100, 1e6)]:

        def square(x):
            f = math.exp(x)
            s = 2j * math.pi * f
            z1 = r1 / (1 + s * r1 * c1)
            through = (1 / (s * c2)) / (z1 + r2 + 1 / (s * c2))
            first = four_kt * r1 * abs(through / (1 + s * r1 * c1)) ** 2
            second = four_kt * r2 * abs(through) ** 2
            return (first + second) * f

        total = sum(integrate.quad(square, a, b, epsrel=1e-12, limit=400)[0] for a, b in zip(numpy.linspace(math.log(low), math.log(high), 21)[:-1], numpy.linspace(math.log(low), math.log(high), 21)[1:]))
        rows.append([r1, c1, r2, c2, low, high, math.sqrt(total)])
    write("circuit-noise.csv", ["R_1", "C_1", "R_2", "C_2", "f_L", "f_H", "E_n"], rows, "Noise of two RC sections over a band at 300 K, by adaptive quadrature", SCRIPT)


def points():
    """Two stages, npn and then pnp, as in a textbook: nested roots by Brent's method, outside in."""
    v_t = constants.k * 298.15 / constants.e
    rows = []
    for v, r1, r2, re, rc, re2, rc2, i_s, beta in [
        (15, 1e5, 5e4, 3e3, 5e3, 2e3, 2.7e3, 1.9e-15, 100),
        (15, 1e5, 5e4, 3e3, 5e3, 2e3, 2e3, 1e-14, 250),
        (24, 47e3, 22e3, 2.2e3, 3.3e3, 1e3, 1e3, 1e-13, 80),
        (40, 2.2e5, 33e3, 1e3, 3.3e3, 5.6e3, 4.7e3, 5e-16, 400),
    ]:
        g = r1 * r2 / (r1 + r2)
        thevenin = v * r2 / (r1 + r2)

        def first(v_be):
            i_b = i_s / beta * math.expm1(v_be / v_t)
            return thevenin - g * i_b - v_be - re * (beta + 1) * i_b

        v_be = optimize.brentq(first, 0.3, 0.9, xtol=1e-15)
        i_c = i_s * math.exp(v_be / v_t)

        def second(v_eb):
            i_b = i_s / beta * math.expm1(v_eb / v_t)
            # the collector resistor carries the collector current less the second base's
            return (i_c - i_b) * rc - v_eb - re2 * (beta + 1) * i_b

        v_eb = optimize.brentq(second, 0.3, 0.9, xtol=1e-15)
        i_b2 = i_s / beta * math.expm1(v_eb / v_t)
        assert beta * i_b2 * rc2 < v - (beta + 1) * i_b2 * re2 - 1, "the second stage is saturated"
        rows.append([v, r1, r2, re, rc, re2, rc2, i_s, beta, v - (i_c - i_b2) * rc, beta * i_b2 * rc2])
    write("operating-point.csv", ["V", "R_1", "R_2", "R_E", "R_C", "R_E2", "R_C2", "I_S", "h_FE", "V_C1", "V_C2"], rows,
          "Two common-emitter stages, npn and pnp: V_BE of each by Brent's method, junctions exponential at 25 degC", SCRIPT)


def roots():
    """Poles of such ladders: eigenvalues of the state matrix of coil currents and capacitor voltages."""
    rows = []
    for seed, count in [(21, 1), (22, 2), (23, 3), (24, 5)]:
        parts = list(sections(seed, count))
        a = numpy.zeros((2 * count, 2 * count))
        for k, (r, l, c, shunt, g) in enumerate(parts):
            i, v = 2 * k, 2 * k + 1
            a[i, i], a[i, v] = -r / l, -1 / l
            a[v, i], a[v, v] = 1 / c, -1 / (shunt * c)
            if k > 0:
                a[i, v - 2] = 1 / l
                a[v, v - 2] -= g / c
            if k + 1 < count:
                a[v, i + 2] = -1 / c
        found = sorted(numpy.linalg.eigvals(a), key=lambda s: (abs(s), s.real))
        upper = [s for s in found if s.imag >= 0]
        rows.extend([seed, count, k, abs(s) / (2 * math.pi)] for k, s in enumerate(upper))
    write("circuit-poles.csv", ["seed", "sections", "k", "f"], rows, "Poles of random ladders: eigenvalues of the state matrix", SCRIPT)


if __name__ == "__main__":
    ladders()
    step()
    noise()
    points()
    roots()
