using EightOhm.Circuits;
using EightOhm.Published.Machine;
using EightOhm.Quantities;
using UnitsNet;
using Check = EightOhm.Published.Machine.Published;

namespace EightOhm.Published.Checks;

/// <summary>Circuits against programs that work in another way: chain matrices, state space, quadrature, nested roots.</summary>
[Checks]
public class CircuitReferenceChecks
{
    [Fact]
    public void Ladders_by_chain_matrices()
    {
        var rows = Reference.Read("circuit-ladder.csv");
        Check.Solved("Circuit.Response", rows, r => Ladder(r).Response("n0", $"n{(int)r["sections"]}").MagnitudeAt(Hz(r)).Ratio, "gain", 1e-8);
        Check.Solved("Circuit.Impedance", rows, r => Ladder(r).Impedance("n0").MagnitudeAt(Hz(r)).Ohms, "z_in", 1e-8);
        foreach (var r in rows.Rows)
        {
            var turns = (Ladder(r).Response("n0", $"n{(int)r["sections"]}").At(Hz(r)).Phase * 180 / Math.PI) - r["phase_deg"];
            Assert.Equal(0, turns - (360 * Math.Round(turns / 360)), 1e-6);
        }
    }

    [Fact]
    public void Poles_by_eigenvalues() =>
        Check.Solved("Circuit.Poles", Reference.Read("circuit-poles.csv"), r => Ladder(r).Poles()[(int)r["k"]].Frequency.Hertz, "f", 1e-7);

    [Fact]
    public void Steps_by_state_space() => Check.Solved("Circuit.StepResponse", Reference.Read("circuit-step.csv"), r =>
    {
        var c = new Circuit();
        c.VoltageSource("V1", "in");
        c.Resistor("R1", "in", "a", ElectricResistance.FromOhms(r["R"]));
        c.Inductor("L1", "a", "out", ElectricInductance.FromHenries(r["L"]));
        c.Capacitor("C1", "out", "0", ElectricCapacitance.FromFarads(r["C"]));
        c.Resistor("R2", "out", "0", ElectricResistance.FromOhms(r["R_p"]));
        return c.StepResponse("in", "out", Duration.FromSeconds(r["t"]), 101).Y[^1];
    }, "v", 1e-6);

    [Fact]
    public void Noise_by_quadrature() => Check.Solved("Circuit.Noise", Reference.Read("circuit-noise.csv"), r =>
    {
        var c = new Circuit();
        c.Resistor("R1", "a", "0", ElectricResistance.FromOhms(r["R_1"]));
        c.Capacitor("C1", "a", "0", ElectricCapacitance.FromFarads(r["C_1"]));
        c.Resistor("R2", "a", "b", ElectricResistance.FromOhms(r["R_2"]));
        c.Capacitor("C2", "b", "0", ElectricCapacitance.FromFarads(r["C_2"]));
        return c.Noise("b", T: Temperature.FromKelvins(300)).Total(Frequency.FromHertz(r["f_L"]), Frequency.FromHertz(r["f_H"])).Volts;
    }, "E_n", 1e-6);

    [Fact]
    public void Operating_points_by_nested_roots()
    {
        var rows = Reference.Read("operating-point.csv");
        Check.Solved("Circuit.OperatingPoint", rows, r => Stages(r).Voltage("c").Volts, "V_C1", 1e-9);
        Check.Solved("Circuit.OperatingPoint", rows, r => Stages(r).Voltage("c2").Volts, "V_C2", 1e-9);
    }

    private static Frequency Hz(ReferenceRow r) => Frequency.FromHertz(r["f"]);

    private static OperatingPoint Stages(ReferenceRow r)
    {
        ElectricResistance R(string name) => ElectricResistance.FromOhms(r[name]);
        BipolarModel q = new() { CurrentGain = r["h_FE"], SaturationCurrent = ElectricCurrent.FromAmperes(r["I_S"]) };
        var c = new Circuit();
        c.Rail("V+", ElectricPotential.FromVolts(r["V"]));
        c.Resistor("R1", "V+", "b", R("R_1"));
        c.Resistor("R2", "b", "0", R("R_2"));
        c.Npn("Q1", "c", "b", "e", q);
        c.Resistor("RE", "e", "0", R("R_E"));
        c.Resistor("RC", "V+", "c", R("R_C"));
        c.Pnp("Q2", "c2", "c", "e2", q);
        c.Resistor("RE2", "V+", "e2", R("R_E2"));
        c.Resistor("RC2", "c2", "0", R("R_C2"));
        return c.OperatingPoint();
    }

    // The same parts that the program makes from the same seed.
    private static Circuit Ladder(ReferenceRow row)
    {
        var state = (ulong)row["seed"];
        double U()
        {
            state = (state * 6364136223846793005UL) + 1442695040888963407UL;
            return (state >> 11) * Math.Pow(2, -53);
        }

        var c = new Circuit();
        c.VoltageSource("V1", "n0");
        for (var k = 1; k <= (int)row["sections"]; k++)
        {
            double r = Math.Pow(10, 1 + (3 * U())), l = Math.Pow(10, -6 + (3 * U())), cap = Math.Pow(10, -10 + (3 * U())), shunt = Math.Pow(10, 3 + (3 * U())), g = 0.02 * (U() - 0.5);
            c.Resistor($"R{k}", $"n{k - 1}", $"m{k}", ElectricResistance.FromOhms(r));
            c.Inductor($"L{k}", $"m{k}", $"n{k}", ElectricInductance.FromHenries(l));
            c.Capacitor($"C{k}", $"n{k}", "0", ElectricCapacitance.FromFarads(cap));
            c.Resistor($"S{k}", $"n{k}", "0", ElectricResistance.FromOhms(shunt));
            c.VoltageControlledCurrent($"G{k}", $"n{k}", "0", $"n{k - 1}", "0", ElectricConductance.FromSiemens(g));
        }

        return c;
    }
}
