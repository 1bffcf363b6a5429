using System.Numerics;
using EightOhm.Circuits;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Tests.Circuits;

/// <summary>One circuit has another return ratio at each place; none of them may be taken for another.</summary>
public class ReturnRatioTests
{
    [Fact]
    public void The_outer_loop_at_the_first_stage_and_the_inner_at_the_second()
    {
        var c = Networks.TwoStages();
        var outer = c.ReturnRatio();
        var inner = c.ReturnRatio("G2");
        Assert.Equal("at the source G1", outer.At);
        Assert.True(outer.IsFirstStage);
        Assert.False(inner.IsFirstStage);
        // The Miller loop alone by its formula, g_m2·[Cd/(Cd + C1)]/2π[C2 + Cd·C1/(Cd + C1)].
        double cd = 100e-12, c1 = 40e-12, c2 = 30e-12;
        var alone = 0.04 * (cd / (cd + c1)) / (Math.Tau * (c2 + (cd * c1 / (cd + c1))));
        Assert.Equal(77.6e6, alone, 0.05e6);
        Assert.Equal(77.6, inner.Crossover!.Value.Megahertz, 1.5);
        Assert.Equal(77.6, c.With("G1", ElectricConductance.FromSiemens(1e-12)).ReturnRatio("G2").Crossover!.Value.Megahertz, 0.1);
        Assert.Equal(35.0, outer.MagnitudeAt(20.kHz).Decibels, 0.3);
        Assert.InRange(outer.Crossover!.Value.Megahertz, 1.05, 1.15);
        Assert.True(outer.IsStable);
        Assert.Equal(outer.IsStable, inner.IsStable);
    }

    [Fact]
    public void One_plus_T_is_the_ratio_of_the_determinants_wherever_it_is_opened()
    {
        var system = SmallSignalSystem.Of(Networks.TwoStages(), 300);
        var s = new Complex(0, Math.Tau * 3e5);
        foreach (var opening in system.Openings)
        {
            var open = system.Opened(opening);
            var ratio = Determinant(system, s) / Determinant(open, s);
            var (x, _) = SingleSolver.At(open, s, opening.Drives, null);
            var back = opening.Control.Aggregate(Complex.Zero, (sum, c) => sum + (c.Sign * x[c.Col]));
            Assert.True((1 + back - ratio).Magnitude < 1e-9 * ratio.Magnitude, $"{opening.Words}: {1 + back}, {ratio}");
        }

        static Complex Determinant(LinearSystem of, Complex at) => MathNet.Numerics.LinearAlgebra.Matrix<Complex>.Build.Dense(of.Count, of.Count, of.At(at)).Determinant();
    }

    [Fact]
    public void Pole_and_delay_leave_the_margins_that_were_computed_by_hand()
    {
        // T = 1.5 MHz/jf, a pole at 8 MHz, 12 ns.
        var t = Delayed(1.5e6).ReturnRatio("G1", Sweep.Log(1e-3, 1e9, 40).Select(f => Frequency.FromHertz(f)).ToArray());
        Assert.True(t.IsStable);
        Assert.Equal(1.4751, t.Crossover!.Value.Megahertz, 5e-5);
        Assert.Equal(73.18, t.PhaseMargin!.Value.Degrees, 5e-3);
        Assert.Equal(19.67, t.GainMargin!.Value.Decibels, 5e-3);
        // Errors after the gain are raised by 1.244 at 4.27 MHz: a loop gain below one does not only fail to help.
        Assert.Equal(1 / 1.244, t.ErrorReduction(4.27.MHz).Ratio, 5e-4);
        Assert.NotEqual(72.90, t.PhaseMargin.Value.Degrees, 0.1); // at the asymptote's 1.5 MHz
    }

    [Fact]
    public void A_delay_too_long_is_unstable_though_no_pole_can_be_told()
    {
        var t = Delayed(30e6).ReturnRatio("G1", Sweep.Log(1e-3, 1e10, 40).Select(f => Frequency.FromHertz(f)).ToArray());
        Assert.False(t.IsStable);
        Assert.Null(t.PhaseMargin);
        Assert.Null(t.GainMargin);
        Assert.Contains("UNSTABLE", t.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void An_unstable_loop_has_poles_and_no_margins()
    {
        var c = Networks.TwoStages().With("G1", ElectricConductance.FromSiemens(-1 / 60.7));
        var t = c.ReturnRatio("G1");
        Assert.False(t.IsStable);
        Assert.NotEmpty(t.Unstable);
        Assert.All(t.Unstable, p => Assert.False(p.IsLeft));
        Assert.Null(t.PhaseMargin);
        Assert.Null(t.GainMargin);
        Assert.All(t.Crossovers, x => Assert.Null(x.PhaseMargin));
        Assert.Contains("UNSTABLE", t.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_phase_that_touches_180_degrees_at_zero_frequency_is_no_instability()
    {
        // L = (10s + 1)/(s²(s + 10)): closed, s³ + 10s² + 10s + 1, all roots left.
        var c = new Circuit();
        c.VoltageControlledCurrent("G1", "0", "a", "0", "y", 1.S);
        c.Capacitor("C1", "a", "0", Networks.Farads(1));
        c.VoltageControlledCurrent("G2", "0", "b", "a", "0", 10.S);
        c.Capacitor("C2", "b", "0", Networks.Farads(1));
        c.VoltageControlledVoltage("E1", "p", "0", "b", "0", Gain.FromRatio(1));
        c.Capacitor("C3", "p", "y", Networks.Farads(1));
        c.Resistor("R3", "p", "y", 10.Ohm);
        c.Resistor("R4", "y", "0", Networks.Ohms(1 / 9.9));
        var poles = c.Poles().Select(p => p.S.Real).ToArray();
        Assert.Equal([-0.1125, -1, -8.887], poles.Select(p => Math.Round(p, p > -1 ? 4 : 3)));
        var t = c.ReturnRatio("G1", Sweep.Log(1e-5, 1e3, 40).Select(f => Frequency.FromHertz(f)).ToArray());
        Assert.True(t.IsStable);
        Assert.NotNull(t.PhaseMargin);
    }

    [Fact]
    public void The_amplifier_s_loop_is_the_one_at_the_feedback_base_of_the_pair()
    {
        var c = Networks.Amplifier();
        var t = c.ReturnRatio();
        Assert.Equal("at the base of Q2", t.At); // Q1's base is the input: nothing comes back to it
        Assert.True(t.IsStable);
        // crossover ≈ g_m/(2π·G·C): 1/(2·(12.9 + 47 + 30/300)) with the mirror's two halves = 1/(12.9 + 47)
        Assert.InRange(t.Crossover!.Value.Kilohertz, 400, 1200);
        var closed = c.Response("Vin", "out").MagnitudeAt(1.kHz).Ratio;
        Assert.InRange(closed, 23, 23.4);
        Assert.NotEqual(t.Crossover.Value.Hertz, c.ReturnRatio("Q6").Crossover!.Value.Hertz, 1e6);
    }

    [Fact]
    public void An_amplifier_s_loop_is_opened_at_its_input_with_a_node_of_it_on_ground()
    {
        // Two equal resistors around it halve what comes back: T = ½/(1/A_0 + jf/GBW), which is 1 at half the product.
        var c = new Circuit();
        c.VoltageSource("V1", "in");
        c.Resistor("R1", "in", "fb", 1.kOhm);
        c.Resistor("R2", "fb", "out", 1.kOhm);
        c.OpAmp("U1", plus: "0", minus: "fb", output: "out", gain: 100.dB, gbw: 8.MHz);
        var t = c.ReturnRatio("U1");
        Assert.Equal("at the input of U1", t.At);
        Assert.Equal(4, t.Crossover!.Value.Megahertz, 1e-3);
        // Half of 100 dB, far below the pole at 80 Hz; 1000 at a thousandth of the crossover.
        Assert.Equal(93.98, t.MagnitudeAt(1.Hz).Decibels, 0.01);
        Assert.Equal(60, t.MagnitudeAt(4.kHz).Decibels, 0.01);
    }

    [Fact]
    public void A_transistor_s_own_capacitance_brings_back_what_passes_it_forwards_too()
    {
        // Drain to gate: T = s·C_gd·(g_m − s·C_gd)/((1/R_L + s·C_gd)·(1/R_s + s·(C_gs + C_gd))). Asked for between the points of the sweep, and where as much passes by the capacitor as by the channel.
        var c = new Circuit();
        c.VoltageSource("V1", "in");
        c.Resistor("Rs", "in", "g", 1.kOhm);
        c.Resistor("RL", "d", "0", 1.kOhm);
        c.Nmos("M1", "d", "g", "0", new FetModel(10.mS) { GateDrainCapacitance = 10.pF, GateSourceCapacitance = 20.pF });
        var t = c.ReturnRatio("M1", Sweep.Log(1e6, 1e9, 7).Select(f => Frequency.FromHertz(f)).ToArray());
        foreach (var f in new[] { 1.3e7, 10e-3 / 10e-12 / Math.Tau, 4.7e8 })
        {
            var s = new Complex(0, Math.Tau * f);
            var exact = s * 10e-12 * (10e-3 - (s * 10e-12)) / ((1e-3 + (s * 10e-12)) * (1e-3 + (s * 30e-12)));
            Assert.True((t.Response.At(Frequency.FromHertz(f)) - exact).Magnitude < 1e-9 * exact.Magnitude, $"{f}: {t.Response.At(Frequency.FromHertz(f))}, {exact}");
        }
    }

    [Fact]
    public void No_loop_and_no_place_are_refused()
    {
        var c = Networks.LowPass();
        c.VoltageControlledCurrent("G1", "x", "0", "out", "0", 1.mS);
        c.Resistor("Rx", "x", "0", 1.kOhm);
        Assert.Contains("c.ReturnRatio(\"Q1\")", Assert.Throws<InvalidOperationException>(() => c.ReturnRatio()).Message, StringComparison.Ordinal);
        Assert.Contains("not opened at R1", Assert.Throws<ArgumentException>(() => c.ReturnRatio("R1")).Message, StringComparison.Ordinal);
        Assert.Contains("Did you mean", Assert.Throws<ArgumentException>(() => c.ReturnRatio("G2")).Message, StringComparison.Ordinal);
    }

    private static Circuit Delayed(double crossover)
    {
        var c = new Circuit();
        c.VoltageSource("V1", "in");
        c.VoltageControlledCurrent("G1", "0", "a", "in", "out", 1.mS);
        c.Capacitor("C1", "a", "0", Networks.Farads(1e-3 / (Math.Tau * crossover)));
        c.Resistor("R1", "a", "0", Networks.Ohms(1e12));
        c.VoltageControlledVoltage("E1", "b", "0", "a", "0", Gain.FromRatio(1));
        c.Resistor("R2", "b", "d", 1.kOhm);
        c.Capacitor("C2", "d", "0", Networks.Farads(1 / (Math.Tau * 8e6 * 1e3)));
        c.Delay("D1", "d", "out", 12.ns);
        c.Resistor("RL", "out", "0", 8.Ohm);
        return c;
    }
}
