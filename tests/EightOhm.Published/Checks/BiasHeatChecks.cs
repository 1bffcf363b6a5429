using EightOhm.OutputStages;
using EightOhm.Published.Machine;
using EightOhm.Quantities;
using EightOhm.Thermal;
using UnitsNet;
using static EightOhm.Published.Checks.Books;
using Check = EightOhm.Published.Machine.Published;

namespace EightOhm.Published.Checks;

/// <summary>The bias spreader, what its errors do, and runaway.</summary>
[Checks]
public class BiasHeatChecks
{
    [Fact]
    public void A_multiplier_of_a_class_AB_stage()
    {
        var V_BE = 0.66.V;
        var V_BB = 1.19.V;
        var R_2 = 1.32.kOhm;
        var source = Sedra("Ex 14.3, p. 1248");
        Check.Check(() => (VbeMultiplier.Factor(V_BB, V_BE) - 1) * R_2, "1.06 kOhm", source, "the resistor from collector to base, by the factor");
    }

    [Fact]
    public void Spreaders_whole_and_split()
    {
        var rows = Reference.Read("spreader.csv");
        Check.Computed(rows, r => VbeMultiplier.Factor(Volts(r["V_BB"]), Volts(r["V_BE"])), "m");
        Check.Computed(rows, r => VbeMultiplier.Drift(r["m"], new VoltageDrift(r["tc"])), "whole");
        Check.Computed(rows, r => Split(r).Drift, "split");
        Check.Computed(rows, r => Split(r).DriftWithSingleMultiplier, "whole");
        Check.Computed(rows, r => Split(r).OnTheSink, "V_hot");
        Check.Computed(rows, r => Split(r).InTheCool, "V_cool");

        // A triple: six junctions, two of them on the sink. One multiplier on the sink takes three times too much.
        var triple = new SpreaderSplit(3.76.V, 0.62.V, 2.1.mV_per_K, 2);
        Assert.Equal(-4.2e-3, triple.Drift.Si, 1e-12);
        Assert.Equal(-12.7e-3, triple.DriftWithSingleMultiplier.Si, 0.05e-3);
        Assert.Equal(2.52, triple.InTheCool.Volts, 1e-12);
    }

    [Fact]
    public void Errors_of_the_bias_voltage()
    {
        Check.Computed(Reference.Read("bias-small.csv"), r => BiasDrift.IdleCurrentShiftLinear(new VoltageDrift(r["tc"]), TemperatureDelta.FromKelvins(r["dT"]), Ohms(r["R_E"]), Ohms(r["r_int"]), Volts(r["V_T"]), Amperes(r["I_q"])), "dI");
        var rows = Reference.Read("bias-drift.csv");
        Check.Computed(rows, r => BiasDrift.Current(Volts(r["V_d"]), Amperes(r["I_q"]), Ohms(r["R"]), Volts(r["V_T"])), "I");
        Check.Computed(rows, r => BiasDrift.Loop(Amperes(r["I"]), Volts(r["V_d"]), Amperes(r["I_q"]), Ohms(r["R"]), Volts(r["V_T"])).Right, "V_d");

        // Ten kelvin late on 103.8 mA: 38.5 mA by the slope, and more by the exponential junction.
        var small = BiasDrift.IdleCurrentShiftLinear(2.1.mV_per_K, 10.K, 0.22.Ohm, 0.0525.Ohm, 28.28.mV, 103.8.mA).Milliamperes;
        Assert.Equal(38.5, small, 0.05);
        Assert.Equal(77.1, 21 / 0.2725, 0.05); // r_e forgotten
        Assert.Equal(145.7, BiasDrift.Current(21.mV, 103.8.mA, 0.2725.Ohm, 28.28.mV).Milliamperes, 0.1);
    }

    [Fact]
    public void Runaway_small_and_large()
    {
        var rows = Reference.Read("runaway.csv");
        Check.Computed(rows, r => Runaway.LoopGain(Volts(r["V"]), Theta(r["theta"]), new VoltageDrift(r["tc"]), Ohms(r["R_E"]), Ohms(r["r_int"]), Volts(r["V_T"]), Amperes(r["I_q"])), "gain");
        Check.Computed(rows, r => Runaway.GreatestGain(Volts(r["V"]), Theta(r["theta"]), new VoltageDrift(r["tc"]), Ohms(r["R_E"]), Ohms(r["r_int"])), "greatest");
        Check.Computed(rows, r => Runaway.UnityLoopGainCurrent(Runaway.GreatestGain(Volts(r["V"]), Theta(r["theta"]), new VoltageDrift(r["tc"]), Ohms(r["R_E"]), Ohms(r["r_int"])), Ohms(r["R_E"]), Ohms(r["r_int"]), Volts(r["V_T"])), "I_1");
        Check.Computed(rows, r => Runaway.AllowedLag(Amperes(r["I_1"]), Amperes(r["I_q"]), Volts(r["V_T"]), new VoltageDrift(r["tc"])), "lag", 1e-7);
        Check.Computed(Reference.Read("runaway-resistance.csv"), r => Runaway.AllowedResistance(Volts(r["dP_dI"]), Amperes(r["dI"]), TemperatureDelta.FromKelvins(r["dT"])), "theta");
    }

    [Fact]
    public void Runaway_thresholds_with_the_junctions_own_V_T()
    {
        var rows = Reference.Read("runaway-threshold.csv");
        Check.Computed(rows, r => Runaway.RunawayThresholdCurrent(Volts(r["V"]), Theta(r["theta"]), new VoltageDrift(r["tc"]), Ohms(r["R"]), Celsius(r["T_q"]), Amperes(r["I_q"])), "I_2", 1e-6);
        Check.Computed(rows, r => Volts(r["V"]) * (Runaway.Resting(Amperes(r["I_2"]), Volts(r["V"]), Theta(r["theta"]), new VoltageDrift(r["tc"]), Ohms(r["R"]), Celsius(r["T_q"]), Amperes(r["I_q"])).Right / Runaway.Resting(Amperes(r["I_2"]), Volts(r["V"]), Theta(r["theta"]), new VoltageDrift(r["tc"]), Ohms(r["R"]), Celsius(r["T_q"]), Amperes(r["I_q"])).Left), "V", 1e-6);

        // The case of the trade, 46 V on 3.58 K/W: V_T frozen at the idle junction's gave 963 mA, a junction of 194 °C with the V_T of 55 °C in the sum.
        var found = Runaway.Threshold(46.V, 3.58.K_per_W, 2.1.mV_per_K, 0.2725.Ohm, 52.degC, 103.8.mA, 150.degC);
        Assert.Null(found.Current);
        Assert.Equal(0.70, found.CurrentAtLimit.Amperes, 0.005);
        for (var mA = 110; mA < 1600; mA += 10)
            Assert.True(Runaway.Resting(mA.mA, 46.V, 3.58.K_per_W, 2.1.mV_per_K, 0.2725.Ohm, 52.degC, 103.8.mA) is var balance && balance.Left < balance.Right);
    }

    [Fact]
    public void A_gain_below_one_is_not_safe()
    {
        var V_T = 28.278.mV;
        double Gain(double theta) => Runaway.LoopGain(46.V, theta.K_per_W, 2.1.mV_per_K, 0.22.Ohm, 0.0525.Ohm, V_T, 103.8.mA);
        Assert.Equal(0.209, Gain(1.18), 0.0005);
        Assert.Equal(0.635, Gain(3.58), 0.0005);
        var most = Runaway.GreatestGain(46.V, 3.58.K_per_W, 2.1.mV_per_K, 0.22.Ohm, 0.0525.Ohm);
        Assert.Equal(1.269, most, 0.0005);
        Assert.Equal(386, Runaway.UnityLoopGainCurrent(most, 0.22.Ohm, 0.0525.Ohm, V_T).Milliamperes, 0.5);

        Assert.Equal(0.518, 46 * 1.18 * 2.1e-3 / 0.22, 0.0005); // r_e and r_int forgotten: far from ours
        Assert.Contains("no current runs away", Assert.Throws<RefusedValueException>(() => Runaway.UnityLoopGainCurrent(0.9, 0.22.Ohm, 0.0525.Ohm, V_T)).Message, StringComparison.Ordinal);
    }

    private static Temperature Celsius(double t) => Temperature.FromDegreesCelsius(t);

    private static ThermalResistance Theta(double r) => r.K_per_W;

    private static SpreaderSplit Split(ReferenceRow r) => new(Volts(r["V_BB"]), Volts(r["V_BE"]), new VoltageDrift(r["tc"]), (int)r["n_hot"]);
}
