using EightOhm.Circuits;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Tests.Circuits;

/// <summary>Poles, zeros and steps against what is known in closed form.</summary>
public class RootsAndStepsTests
{
    [Fact]
    public void Poles_eleven_decades_apart_are_each_found()
    {
        var c = new Circuit();
        c.VoltageSource("V1", "in");
        double[] taus = [1, 1e-3, 1e-6, 1e-9, 1e-11];
        for (var k = 0; k < taus.Length; k++)
        {
            c.VoltageControlledVoltage($"E{k}", $"a{k}", "0", k == 0 ? "in" : $"b{k - 1}", "0", Gain.FromRatio(1));
            c.Resistor($"R{k}", $"a{k}", $"b{k}", 1.kOhm);
            c.Capacitor($"C{k}", $"b{k}", "0", Networks.Farads(taus[k] / 1e3));
        }

        var poles = c.Poles();
        Assert.Equal(5, poles.Count);
        for (var k = 0; k < taus.Length; k++)
            Assert.Equal(-1 / taus[k], poles[k].S.Real, 1e-9 / taus[k]);
        Assert.Empty(c.Zeros("in", "b4"));
    }

    [Fact]
    public void A_double_pole_is_found_twice()
    {
        var c = new Circuit();
        c.VoltageSource("V1", "in");
        for (var k = 0; k < 2; k++)
        {
            c.VoltageControlledVoltage($"E{k}", $"a{k}", "0", k == 0 ? "in" : "b0", "0", Gain.FromRatio(1));
            c.Resistor($"R{k}", $"a{k}", $"b{k}", 1.kOhm);
            c.Capacitor($"C{k}", $"b{k}", "0", 1.nF);
        }

        var poles = c.Poles();
        Assert.InRange(poles.Sum(p => p.IsPair ? 2 : 1), 2, 2);
        Assert.All(poles, p => Assert.Equal(1e6, p.S.Magnitude, 100.0));
    }

    [Fact]
    public void A_blocked_dc_is_a_zero_at_the_origin_and_a_resonance_a_pair()
    {
        var c = new Circuit();
        c.VoltageSource("V1", "in");
        c.Capacitor("C1", "in", "a", 1.uF);
        c.Inductor("L1", "a", "out", 1.mH);
        c.Resistor("R1", "out", "0", 10.Ohm);
        var pole = Assert.Single(c.Poles());
        Assert.True(pole.IsPair);
        Assert.Equal(1 / Math.Sqrt(1e-9) / Math.Tau, pole.Frequency.Hertz, 1e-4);
        Assert.Equal(Math.Sqrt(1e-3 / 1e-6) / 10, pole.Quality!.Value, 1e-9);
        var zero = Assert.Single(c.Zeros("in", "out"));
        Assert.Equal(0, zero.S.Magnitude);
    }

    [Fact]
    public void A_capacitor_from_input_to_output_of_an_inverting_stage_makes_a_zero_on_the_right()
    {
        var c = new Circuit();
        c.VoltageSource("V1", "in");
        c.Resistor("Rs", "in", "a", 1.kOhm);
        c.VoltageControlledCurrent("G1", "b", "0", "a", "0", 10.mS);
        c.Resistor("RL", "b", "0", 1.kOhm);
        c.Capacitor("C1", "a", "b", 100.pF);
        var zero = Assert.Single(c.Zeros("in", "b"));
        Assert.Equal(0.01 / 100e-12, zero.S.Real, 1e-1);
        Assert.False(zero.IsLeft);
        Assert.Contains("right half plane", zero.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_delay_has_no_list_of_poles()
    {
        var c = Networks.LowPass();
        c.Delay("D1", "out", "late", 1.us);
        Assert.Contains("no finite number", Assert.Throws<InvalidOperationException>(() => c.Poles()).Message, StringComparison.Ordinal);
        Assert.Contains("delay", Assert.Throws<InvalidOperationException>(() => c.StepResponse("in", "late", 1.ms)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_resonant_step_rings_as_its_formula()
    {
        var c = new Circuit();
        c.VoltageSource("V1", "in");
        c.Resistor("R1", "in", "a", 20.Ohm);
        c.Inductor("L1", "a", "out", 1.mH);
        c.Capacitor("C1", "out", "0", 1.uF);
        var step = c.StepResponse("in", "out", 2.ms, 401);
        double alpha = 20 / 2e-3, omega = Math.Sqrt(1e9 - (alpha * alpha));
        for (var i = 0; i < step.Count; i++)
        {
            var t = step.X[i];
            var exact = 1 - (Math.Exp(-alpha * t) * (Math.Cos(omega * t) + (alpha / omega * Math.Sin(omega * t))));
            Assert.Equal(exact, step.Y[i], 2e-6);
        }
    }

    [Fact]
    public void Ringing_too_small_to_be_seen_beside_the_step_keeps_its_digits_by_the_coil_s_current()
    {
        // A picoampere into a tank of one ohm, beside the volt that drives it: I·√(L/C)·sin(t/√(LC)), damped by nothing that shows.
        var c = new Circuit();
        c.VoltageSource("V1", "in");
        c.Resistor("R1", "in", "out", 1e12.Ohm);
        c.Inductor("L1", "out", "0", 1.uH);
        c.Capacitor("C1", "out", "0", 1.uF);
        var step = c.StepResponse("in", "out", 100.us, 101);
        for (var i = 0; i < step.Count; i++)
            Assert.Equal(1e-12 * Math.Sin(step.X[i] / 1e-6), step.Y[i], 1e-17);
    }

    [Fact]
    public void What_jumps_has_jumped_at_once()
    {
        // A capacitive divider: 0.25 at once; then the resistors' half.
        var c = new Circuit();
        c.VoltageSource("V1", "in");
        c.Capacitor("C1", "in", "out", 1.nF);
        c.Capacitor("C2", "out", "0", 3.nF);
        c.Resistor("R1", "in", "out", 1.kOhm);
        c.Resistor("R2", "out", "0", 1.kOhm);
        var step = c.StepResponse("in", "out", 20.us, 101);
        for (var i = 0; i < step.Count; i++)
            Assert.Equal(0.5 - (0.25 * Math.Exp(-step.X[i] / (500 * 4e-9))), step.Y[i], 1e-6);
    }

    [Fact]
    public void Slow_and_fast_in_one_step()
    {
        var c = new Circuit();
        c.VoltageSource("V1", "in");
        c.Resistor("R1", "in", "a", 1.kOhm);
        c.Capacitor("C1", "a", "0", 1.pF);
        c.VoltageControlledVoltage("E1", "b", "0", "a", "0", Gain.FromRatio(1));
        c.Resistor("R2", "b", "out", 1.MOhm);
        c.Capacitor("C2", "out", "0", 1.uF);
        var step = c.StepResponse("in", "out", 5.s, 11);
        for (var i = 0; i < step.Count; i++)
            Assert.Equal(1 - Math.Exp(-step.X[i]), step.Y[i], 1e-7);
    }

    [Fact]
    public void The_amplifier_s_step_settles_at_its_gain()
    {
        var c = Networks.Amplifier();
        var step = c.StepResponse("Vin", "out", 5.us, 51);
        Assert.Equal(c.Response("Vin", "out").MagnitudeAt(1.kHz).Ratio, step.Y[^1], 0.05);
        Assert.True(step.Max.Volts < 24);
    }

    [Fact]
    public void Sensitivities_are_the_slopes_of_the_response()
    {
        var c = Networks.TwoStages();
        var f = 700.kHz;
        foreach (var s in c.Sensitivities("in", "out", f).Where(s => c.Elements.Any(e => e.Name == s.Name)))
        {
            object Moved(double by) => QuantityKinds.Of(c[s.Name].Value!.GetType()) is var kind ? kind.FromSi(kind.ToSi(c[s.Name].Value!) * by) : 0;
            const double h = 1e-4;
            var (up, down) = (c.With(s.Name, Moved(1 + h)).Response("in", "out").At(f), c.With(s.Name, Moved(1 - h)).Response("in", "out").At(f));
            Assert.Equal(Math.Log(up.Magnitude / down.Magnitude) / (2 * h), s.Magnitude, 1e-6);
            Assert.Equal((up / down).Phase / (2 * h) * 180 / Math.PI, s.Phase.Degrees, 1e-4);
        }
    }

    [Fact]
    public void Sensitivities_of_a_transistor_are_the_slopes_over_its_current()
    {
        Circuit At(double mA)
        {
            BipolarModel model = new() { CurrentGain = 150, EarlyVoltage = 80.V, BaseResistance = 50.Ohm, TransitionFrequency = 150.MHz, CollectorCapacitance = 3.pF };
            var c = new Circuit();
            c.VoltageSource("V1", "in");
            c.Resistor("Rs", "in", "b", 600.Ohm);
            c.Npn("Q1", "out", "b", "e", ElectricCurrent.FromMilliamperes(mA), model);
            c.Resistor("RE", "e", "0", 47.Ohm);
            c.Resistor("RC", "out", "0", 4.7.kOhm);
            return c;
        }

        const double h = 1e-4;
        var f = 300.kHz;
        var slope = Math.Log(At(2 * (1 + h)).Response("in", "out").At(f).Magnitude / At(2 * (1 - h)).Response("in", "out").At(f).Magnitude) / (2 * h);
        Assert.Equal(slope, At(2).Sensitivities("in", "out", f).Single(s => s.Name == "Q1 I_C").Magnitude, 1e-6);
    }

    [Fact]
    public void Impedances_of_coupled_coils_and_of_a_port_that_a_source_holds()
    {
        // Nahvi & Edminister, Electric Circuits, Ex 15.8: 20j + 100/(10 + 10j) = 5 + 15j Ω at 100 rad/s.
        var c = new Circuit();
        c.VoltageSource("V1", "in");
        c.Inductor("L1", "in", "0", ElectricInductance.FromHenries(0.2));
        c.Inductor("L2", "b", "0", ElectricInductance.FromHenries(0.1));
        c.Coupling("K1", "L1", "L2", 0.1 / Math.Sqrt(0.02));
        c.Resistor("R1", "b", "0", 10.Ohm);
        var z = c.Impedance("in", [Frequency.FromHertz(100 / Math.Tau)]).Values[0];
        Assert.Equal(5, z.Real, 1e-9);
        Assert.Equal(15, z.Imaginary, 1e-9);
        Assert.Contains("infinite", Assert.Throws<InvalidOperationException>(() => new Circuit().With("x")).Message, StringComparison.Ordinal);
    }
}

internal static class LoneSource
{
    public static object With(this Circuit c, string node)
    {
        c.VoltageSource("V1", node);
        return c.Impedance(node);
    }
}
