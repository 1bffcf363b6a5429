using System.Numerics;
using EightOhm.Circuits;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Tests.Circuits;

/// <summary>Noise comes from what makes it, and reaches the output as the circuit lets it.</summary>
public class CircuitNoiseTests
{
    private const double K = 1.380649e-23, Q = 1.602176634e-19;

    [Fact]
    public void A_resistor_and_a_capacitor_hold_kT_over_C_whatever_the_resistor()
    {
        foreach (var r in new[] { 100.Ohm, 1.kOhm, 1.MOhm })
        {
            var noise = Networks.LowPass().With("R1", r).Noise("out");
            Assert.Equal(Math.Sqrt(K * 298.15 / 1e-8), noise.Total(1e-3.Hz, 100.GHz_()).Volts, 1e-4 * Math.Sqrt(K * 298.15 / 1e-8));
        }
    }

    [Fact]
    public void Neither_r_pi_nor_r_o_makes_thermal_noise()
    {
        // A common-emitter stage: base current into the source resistance, collector current over g_m, and no more.
        BipolarModel model = new() { CurrentGain = 300, EarlyVoltage = 100.V };
        var c = new Circuit();
        c.VoltageSource("V1", "in");
        c.Npn("Q1", "out", "in", "0", 2.mA, model);
        c.Resistor("RL", "out", "0", 1.GOhm_());
        var noise = c.Noise("out", from: "in");
        double v_t = K * 298.15 / Q, g_m = 2e-3 / v_t;
        var shot = Math.Sqrt(2 * Q * 2e-3) / g_m;
        // √(2kT·r_e) = 0.3252 nV: 0.4599 for the two of a pair; with r_π or r_o as resistors it would be more.
        Assert.Equal(shot, noise.InputReferredAt(1.kHz).Si, 1e-6 * shot);
        Assert.Equal(0.45995e-9, Math.Sqrt(2) * shot, 5e-14);
        Assert.DoesNotContain(noise.Budget(1.kHz).Ranked, p => p.Name.Contains("r_", StringComparison.Ordinal));
    }

    [Fact]
    public void The_mirror_s_noise_at_the_input_with_and_without_its_resistors()
    {
        // √(8kT(R_m + r_e/2)/(R_m + r_e)²)·(r_e + R_e): not zero without resistors.
        foreach (var (r_m, nV) in new[] { (0.0, 1.2475), (22, 0.9675), (68, 0.6748), (220, 0.4087) })
        {
            BipolarModel model = new() { CurrentGain = 1e9 };
            var c = new Circuit();
            c.VoltageSource("V1", "in");
            c.Npn("Q1", "m", "in", "a", 2.mA, model);
            c.Resistor("Re1", "a", "t", 22.Ohm);
            c.Npn("Q2", "d", "0", "b", 2.mA, model);
            c.Resistor("Re2", "b", "t", 22.Ohm);
            c.Resistor("Rt", "t", "0", 1.GOhm_());
            var (left, right) = r_m > 0 ? ("ma", "mb") : ("0", "0");
            c.Pnp("Q3", "d", "d", left, 2.mA, model);
            c.Pnp("Q4", "m", "d", right, 2.mA, model);
            if (r_m > 0)
            {
                c.Resistor("Rm1", left, "0", Networks.Ohms(r_m));
                c.Resistor("Rm2", right, "0", Networks.Ohms(r_m));
            }

            c.Resistor("RL", "m", "0", 1.GOhm_());
            var mirror = c.Noise("m", from: "in").Budget(1.kHz).Ranked.Where(p => p.Name.StartsWith("Q3", StringComparison.Ordinal) || p.Name.StartsWith("Q4", StringComparison.Ordinal) || p.Name.StartsWith("Rm", StringComparison.Ordinal));
            Assert.Equal(nV, 1e9 * Math.Sqrt(mirror.Sum(p => p.Density.Si * p.Density.Si)), 5e-4 * nV + 5e-5);
        }
    }

    [Fact]
    public void The_adjoint_gives_what_each_noise_gives_when_put_in_by_itself()
    {
        var circuit = Networks.Amplifier().OperatingPoint().Circuit;
        var at = Excitation.At(circuit, "Vin", 298.15);
        var watch = at.Watch("out", "0");
        var f = 20.kHz;
        double sum = 0;
        foreach (var source in at.System.Noises)
        {
            (int, double, double)[] drive = [.. new[] { (source.Leaves, 1.0, 0.0), (source.Enters, -1.0, 0.0) }.Where(d => d.Item1 >= 0)];
            var (x, _) = SingleSolver.At(at.System, new Complex(0, Math.Tau * f.Hertz), drive, null);
            var transfer = x[watch[0].Col];
            sum += source.White * transfer.Magnitude * transfer.Magnitude;
        }

        var noise = circuit.Noise("out", from: "Vin");
        Assert.Equal(Math.Sqrt(sum), noise.OutputAt(f).Si, 1e-7 * Math.Sqrt(sum));
        // The swept density is the one computed alone.
        Assert.Equal(noise.OutputAt(1.kHz).Si, noise.Output.At(1.kHz).Si, 1e-6 * noise.OutputAt(1.kHz).Si);
        Assert.Equal(noise.InputReferredAt(1.kHz).Si, noise.Budget(1.kHz).Total.Si, 1e-12 * noise.InputReferredAt(1.kHz).Si);
    }

    [Fact]
    public void Flicker_noise_doubles_the_power_at_its_corner()
    {
        BipolarModel model = new() { CurrentGain = 100, FlickerCorner = 100.Hz };
        Circuit With(BipolarModel m)
        {
            var c = new Circuit();
            c.Resistor("Rs", "b", "0", 1.MOhm);
            c.Npn("Q1", "out", "b", "0", 1.mA, m);
            c.Resistor("RL", "out", "0", 1.kOhm);
            return c;
        }

        double Base(BipolarModel m, Frequency f) => With(m).Noise("out").Budget(f).Ranked.Single(p => p.Name == "Q1 base current").Density.Si;
        Assert.Equal(Math.Sqrt(2), Base(model, 100.Hz) / Base(model with { FlickerCorner = null }, 100.Hz), 1e-9);
        Assert.Equal(Math.Sqrt(1.001), Base(model, 100.kHz) / Base(model with { FlickerCorner = null }, 100.kHz), 1e-9);
    }

    [Fact]
    public void What_cannot_be_told_is_refused()
    {
        var noise = Networks.LowPass().Noise("out");
        Assert.Contains("from: \"in\"", Assert.Throws<InvalidOperationException>(() => noise.InputReferredAt(1.kHz)).Message, StringComparison.Ordinal);
        Assert.Throws<RefusedValueException>(() => noise.Total(2.kHz, 1.kHz));
        var silent = new Circuit();
        silent.VoltageSource("V1", "a");
        Assert.Contains("no resistor", Assert.Throws<InvalidOperationException>(() => silent.Noise("a")).Message, StringComparison.Ordinal);
    }
}

internal static class LargeLiterals
{
    public static Frequency GHz_(this int f) => Frequency.FromGigahertz(f);

    public static ElectricResistance GOhm_(this int r) => ElectricResistance.FromGigaohms(r);
}
