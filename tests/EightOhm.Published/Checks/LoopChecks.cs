using EightOhm.Feedback;
using EightOhm.Published.Machine;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Published.Checks.Books;
using Check = EightOhm.Published.Machine.Published;

namespace EightOhm.Published.Checks;

[Checks]
public class LoopChecks
{
    [Fact]
    public void An_amplifier_of_three_poles()
    {
        var a = 3600 * TransferFunction.Pole(1.MHz) * TransferFunction.Pole(4.MHz) * TransferFunction.Pole(40.MHz);
        Frequency at135 = 4.78.MHz, at180 = 14.3.MHz;
        var source = Franco("Ex 8.6, p. 367");
        Check.Check(() => a.Phase(at135), "-135 deg", source);
        Check.Check(() => a.Phase(at180), "-180 deg", source);
        Check.Check(() => a.Magnitude(at180), "63.7", source);
        Check.Disagrees(() => a.Magnitude(at135), "471", "469.8", source, "At the printed 4.78 MHz it is 469.8; 471 is the gain at the exact 4.772 MHz.");
    }

    [Fact]
    public void Three_equal_poles_at_the_edge_of_stability()
    {
        var pole = TransferFunction.Pole(100.kHz);
        TransferFunction high = 20 * pole * pole * pole, low = 2 * pole * pole * pole;
        var source = Neamen("Ex 12.19, p. 791");
        Check.Check(() => LoopStability.Of(low).PhaseCrossings[0].Frequency, "173.2 kHz", source);
        Check.Check(() => LoopStability.Of(high).PhaseCrossings[0].LoopGain, "2.5", source);
        Check.Check(() => LoopStability.Of(low).PhaseCrossings[0].LoopGain, "0.25", source);
        Assert.False(LoopStability.Of(high).IsStable);
        Assert.Null(LoopStability.Of(high).PhaseMargin);
        Assert.True(LoopStability.Of(low).IsStable);
    }

    [Fact]
    public void A_differentiator_and_a_stray_capacitance()
    {
        // R 159 kΩ and C 10 nF give a zero of 1/B at 100.1 Hz; an op-amp of 1 MHz.
        var differentiator = TransferFunction.Integrator(1.MHz) * TransferFunction.Pole(100.1.Hz);
        Check.Check(() => LoopStability.Of(differentiator).Crossover!.Value, "10 kHz", Franco("Ex 8.2, p. 358"));
        Check.Check(() => LoopStability.Of(differentiator).PhaseMargin!.Value, "0.6 deg", Franco("Ex 8.2, p. 358"));
        ElectricResistance R = 30.kOhm;
        ElectricCapacitance C_n = 16.pF, none = 0.pF, some = 9.pF;
        var amplifier = TransferFunction.Integrator(20.MHz);
        Check.Check(() => LoopStability.Of(amplifier * LeadNetwork.Divider(R, R, none, C_n)).PhaseMargin!.Value, "14.7 deg", Franco("Ex 8.3, p. 360"));
        Check.Check(() => LeadNetwork.AgainstStray(C_n, R, R), "16 pF", Franco("Ex 8.3, p. 360"));
        // With 9 pF the divider tends to 9/25 and the crossover to that part of 20 MHz.
        Check.Check(() => LoopStability.Of(amplifier * LeadNetwork.Divider(R, R, some, C_n)).Crossover!.Value, "7.2 MHz", Franco("Ex 8.4, p. 362"), "the asymptote f_t/(1 + C_n/C_f); exact to the printed digits");
    }

    [Fact]
    public void Lead_compensation_by_the_divider()
    {
        ElectricResistance R_f = 62.05.kOhm;
        var zero = 10.MHz;
        var source = Source.Companion("J. Millman & C. C. Halkias, Integrated Electronics", "Ex 15.4, p. 596");
        Check.Check(() => LeadNetwork.CapacitorFor(R_f, zero), "0.26 pF", source);
    }

    [Fact]
    public void Bandwidth_of_functions_with_several_poles()
    {
        var two = TransferFunction.Pole(31.62.kHz) * TransferFunction.Pole(31.62.kHz);
        Check.Check(() => two.Bandwidth(), "20.35 kHz", Franco("Ex 6.2, p. 265"), "each op-amp 1 MHz over √1000");
        var sedra = TransferFunction.OfPolynomials([1, -1e-5], [1, 1.25e-4, 2.5e-9]);
        Check.Disagrees(() => 2 * Math.PI * sedra.Bandwidth().Hertz, "9794", "9537", Sedra("Ex 6.5, p. 574"), "The book adds inverse squares of poles and zeros, a rule; the exact −3 dB point is 2.6 % lower.");
        var one = 1e6 * TransferFunction.Pole(10.Hz);
        var divider = TransferFunction.Constant(0.01);
        Check.Check(() => UnityFrequencies.Of(one, divider).ClosedLoopBandwidth!.Value, "100.01 kHz", Neamen("Ex 12.22, p. 798"));
        Check.Check(() => one.ClosedWith(divider).Magnitude(default), "99.99", Neamen("Ex 12.22, p. 798"));
        var follower = TransferFunction.Pole(100.kHz);
        Frequency one_percent = 14.2.kHz, five_degrees = 8.75.kHz;
        Check.Check(() => follower.Magnitude(one_percent), "0.99", Franco("Ex 6.1, p. 265"), "1 % at the printed 14.2 kHz");
        Check.Check(() => follower.Phase(five_degrees), "-5.0 deg", Franco("Ex 6.1, p. 265"));
    }

    [Fact]
    public void Overshoot_and_margin_of_two_poles()
    {
        var ti = Source.Datasheet("Texas Instruments, Op Amps for Everyone, SLOD006, ch. 5 (SLOA077)", "fig. 5-18, p. 5-16");
        var five = 5.percent;
        Check.Check(() => SecondOrder.Overshoot(0.4), "25 %", ti);
        Check.Disagrees(() => SecondOrder.PhaseMargin(0.4), "42 deg", "43.1 deg", ti, "Read from a curve, a degree off.");
        Check.Disagrees(() => SecondOrder.DampingOf(five), "0.78", "0.690", ti, "5 % of overshoot belongs to a damping of 0.690; 0.78 gives 2 %.");
        Check.Disagrees(() => SecondOrder.PhaseMargin(SecondOrder.DampingOf(five)), "62 deg", "64.6 deg", ti, "Follows from the damping.");
        var rows = Reference.Read("second-order.csv");
        Check.Computed(rows, r => SecondOrder.Overshoot(r["zeta"]), "overshoot", 1e-8);
        Check.Computed(rows, r => SecondOrder.PhaseMargin(r["zeta"]), "PM");
        Check.Computed(rows, r => SecondOrder.Peaking(r["zeta"]), "peaking");
        Check.Computed(rows, r => SecondOrder.DampingOf(Ratio.FromDecimalFractions(r["overshoot"])), "zeta", 1e-8);
    }

    [Fact]
    public void Margins_by_root_finding_on_the_complex_loop_gain()
    {
        var rows = Reference.Read("loop-margins.csv");
        static LoopStability Loop(ReferenceRow r) => LoopStability.Of(TransferFunction.Integrator(r["f_u"].Hz) * TransferFunction.Pole(r["f_p1"].Hz) * TransferFunction.Pole(r["f_p2"].Hz) * TransferFunction.Delayed(r["delay"].s));
        Check.Solved("LoopStability.Of", rows, r => Loop(r).Crossover!.Value.Hertz, "f_x", 1e-9);
        Check.Solved("LoopStability.Of", rows, r => Loop(r).PhaseMargin!.Value.Degrees, "PM", 1e-9);
        Check.Solved("LoopStability.Of", rows, r => Loop(r).PhaseCrossings[0].Frequency.Hertz, "f_180", 1e-8);
        Check.Solved("LoopStability.Of", rows, r => 1 / Loop(r).GainMargin!.Value.Ratio, "T_180", 1e-8);
        Check.Solved("LoopStability.Of", rows, r => Loop(r).SensitivityPeak!.Value, "M_s", 1e-9);
        Check.Solved("LoopStability.Of", rows, r => Loop(r).SensitivityPeakFrequency!.Value.Hertz, "f_Ms", 1e-5);
    }

    [Fact]
    public void Steps_by_partial_fractions()
    {
        static double Step(ReferenceRow r)
        {
            var n = (int)r["n"];
            var low = TransferFunction.Constant(1.0);
            // The poles of a Butterworth low pass at 1 rad/s stand on a circle, π/n apart.
            for (var k = 1; k <= n / 2; k++)
                low *= TransferFunction.Pair((1 / (2 * Math.PI)).Hz, 1 / (2 * Math.Sin(Math.PI * ((2 * k) - 1) / (2 * n))));
            low = n % 2 == 1 ? low * TransferFunction.Pole((1 / (2 * Math.PI)).Hz) : low;
            return low.Step(r["t"].s, 11).Y[^1];
        }

        Check.Solved("TransferFunction.Step", Reference.Read("butterworth-steps.csv"), Step, "step", 1e-9);
    }

    [Fact]
    public void Harmonics_over_a_loop()
    {
        var loop = TransferFunction.Integrator(1.11.MHz);
        Ratio[] harmonics = [.. new[] { 40.0, 250, 0, 120, 0, 70, 0, 45 }.Select(x => Ratio.FromPartsPerMillion(x))];
        Check.Solved("LoopHarmonics.Of", Reference.Read("loop-harmonics.csv"), r => LoopHarmonics.Of(loop, 20.kHz, harmonics).Harmonics[(int)r["n"] - 2].After.DecimalFractions, "left", 1e-9);
    }
}
