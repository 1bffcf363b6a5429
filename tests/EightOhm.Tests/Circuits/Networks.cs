using EightOhm.Circuits;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Tests.Circuits;

/// <summary>Circuits that several tests look at.</summary>
internal static class Networks
{
    public static ElectricCapacitance Farads(double c) => ElectricCapacitance.FromFarads(c);

    public static ElectricResistance Ohms(double r) => ElectricResistance.FromOhms(r);

    public static Circuit LowPass()
    {
        var c = new Circuit();
        c.VoltageSource("V1", "in");
        c.Resistor("R1", "in", "out", 1.kOhm);
        c.Capacitor("C1", "out", "0", 10.nF);
        return c;
    }

    /// <summary>The amplifier of the notes: a transconductance, a Miller capacitor over a second stage, a divider; crossovers as noted.</summary>
    public static Circuit TwoStages()
    {
        var c = new Circuit();
        c.VoltageSource("V1", "in");
        c.VoltageControlledCurrent("G1", "a", "0", "in", "fb", ElectricConductance.FromSiemens(1 / 60.7));
        c.Resistor("R1", "a", "0", 100.kOhm);
        c.Capacitor("Cd", "a", "0", 40.pF);
        c.VoltageControlledCurrent("G2", "b", "0", "a", "0", 40.mS);
        c.Resistor("R2", "b", "0", 100.kOhm);
        c.Capacitor("C2", "b", "0", 30.pF);
        c.Capacitor("C1", "a", "b", 100.pF);
        c.VoltageControlledVoltage("E1", "out", "0", "b", "0", Gain.FromRatio(1));
        c.Resistor("Rf", "out", "fb", 2.26.kOhm);
        c.Resistor("Rg", "fb", "0", 100.Ohm);
        return c;
    }

    /// <summary>A whole power amplifier with invented devices: pair with mirror, follower and second stage, multiplier, three followers.</summary>
    public static Circuit Amplifier(bool reversed = false)
    {
        BipolarModel small = new()
        {
            CurrentGain = 300,
            SaturationCurrent = ElectricCurrent.FromAmperes(1e-14),
            EarlyVoltage = 100.V,
            BaseResistance = 30.Ohm,
            TransitionFrequency = 150.MHz,
            CollectorCapacitance = 3.pF,
        };
        BipolarModel driver = new()
        {
            CurrentGain = 120,
            SaturationCurrent = ElectricCurrent.FromAmperes(1e-13),
            EarlyVoltage = 150.V,
            BaseResistance = 10.Ohm,
            TransitionFrequency = 100.MHz,
            CollectorCapacitance = 6.pF,
        };
        BipolarModel power = new()
        {
            CurrentGain = 70,
            SaturationCurrent = ElectricCurrent.FromAmperes(1e-11),
            EarlyVoltage = 150.V,
            BaseResistance = 2.Ohm,
            EmitterResistance = 0.03.Ohm,
            TransitionFrequency = 30.MHz,
            CollectorCapacitance = 200.pF,
        };
        var c = new Circuit();
        c.Rail("V+", 50.V);
        c.Rail("V-", -50.V);
        c.VoltageSource("Vin", "source");
        c.Resistor("Rs", "source", "in", 100.Ohm);
        c.Resistor("Rb", "in", "0", 10.kOhm);
        c.Npn("Q1", "m", reversed ? "fb" : "in", "e1", small);
        c.Npn("Q2", "d", reversed ? "in" : "fb", "e2", small);
        c.Resistor("Re1", "e1", "t", 47.Ohm);
        c.Resistor("Re2", "e2", "t", 47.Ohm);
        c.CurrentSource("It", "t", "V-", 4.mA);
        c.Resistor("Rm1", "V+", "ma", 220.Ohm);
        c.Resistor("Rm2", "V+", "mb", 220.Ohm);
        c.Pnp("Q3", "d", "d", "ma", small);
        c.Pnp("Q4", "m", "d", "mb", small);
        c.Pnp("Q5", "V-", "m", "f", small);
        c.Resistor("R5", "f", "V+", 2.2.kOhm);
        c.Pnp("Q6", "va", "f", "ve", driver);
        c.Resistor("R6", "V+", "ve", 22.Ohm);
        c.Capacitor("Cdom", "va", "m", 100.pF);
        c.Npn("Q7", "va", "vb", "vc", driver);
        c.Resistor("R7", "va", "vb", 2.65.kOhm);
        c.Resistor("R8", "vb", "vc", 680.Ohm);
        c.CurrentSource("I2", "vc", "V-", 10.mA);
        c.Npn("Q8", "V+", "va", "b1", driver);
        c.Pnp("Q9", "V-", "vc", "b2", driver);
        c.Resistor("Rd1", "b1", "b2", 150.Ohm);
        c.Npn("Q10", "V+", "b1", "c1", power);
        c.Pnp("Q11", "V-", "b2", "c2", power);
        c.Resistor("Rd2", "c1", "c2", 47.Ohm);
        c.Npn("Q12", "V+", "c1", "o1", power);
        c.Pnp("Q13", "V-", "c2", "o2", power);
        c.Resistor("RE1", "o1", "out", 0.22.Ohm);
        c.Resistor("RE2", "o2", "out", 0.22.Ohm);
        c.Resistor("Rf", "out", "fb", 2.24.kOhm);
        c.Resistor("Rg", "fb", "0", 100.Ohm);
        c.Resistor("Rz", "out", "z", 10.Ohm);
        c.Capacitor("Cz", "z", "0", 100.nF);
        c.Resistor("RL", "out", "0", 8.Ohm);
        return c;
    }

    /// <summary>A ladder of random parts; the same that tests/references/circuits.py makes from the same seed.</summary>
    public static Circuit Ladder(int seed, int sections)
    {
        var state = (ulong)seed;
        double U()
        {
            state = (state * 6364136223846793005UL) + 1442695040888963407UL;
            return (state >> 11) * Math.Pow(2, -53);
        }

        var c = new Circuit();
        c.VoltageSource("V1", "n0");
        for (var k = 1; k <= sections; k++)
        {
            double r = Math.Pow(10, 1 + (3 * U())), l = Math.Pow(10, -6 + (3 * U())), cap = Math.Pow(10, -10 + (3 * U())), shunt = Math.Pow(10, 3 + (3 * U())), g = 0.02 * (U() - 0.5);
            c.Resistor($"R{k}", $"n{k - 1}", $"m{k}", Ohms(r));
            c.Inductor($"L{k}", $"m{k}", $"n{k}", ElectricInductance.FromHenries(l));
            c.Capacitor($"C{k}", $"n{k}", "0", Farads(cap));
            c.Resistor($"S{k}", $"n{k}", "0", Ohms(shunt));
            c.VoltageControlledCurrent($"G{k}", $"n{k}", "0", $"n{k - 1}", "0", ElectricConductance.FromSiemens(g));
        }

        return c;
    }
}
