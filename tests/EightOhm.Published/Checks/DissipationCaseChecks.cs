using EightOhm.OutputStages;
using EightOhm.Published.Machine;
using EightOhm.Quantities;
using UnitsNet;
using Check = EightOhm.Published.Machine.Published;

namespace EightOhm.Published.Checks;

/// <summary>Cases that no source prints, computed by integration over the waveform, each with the plausible wrong answers it must not give.</summary>
/// <remarks>Three pairs with 0.22 Ω on ±46 V into 4 Ω, unless said otherwise.</remarks>
[Checks]
public class DissipationCaseChecks
{
    private static readonly ElectricPotential V = 46.V;
    private static readonly ElectricResistance R = 4.Ohm;
    private static readonly ElectricResistance R_E = 0.22.Ohm;
    private static readonly StageDissipation Stage = new(V, 3, R_E);

    [Fact]
    public void The_worst_heat_with_emitter_resistors()
    {
        Check.Computed(Reference.Read("class-b-stage.csv"), r => ClassB.Worst(Volts(r["V"]), Ohms(r["Z"]), Degrees(r["phi_deg"]), Ohms(r["R_E"]), (int)r["n"]), "P_worst");
        var worst = Stage.Maximum(R);
        Near(105.27, worst.Total);
        Near(17.54, worst.PerDevice);
        Assert.Equal(28.76, worst.Level.Volts, 0.005);
        IsNot(worst.Total, 107.20, "the emitter resistors forgotten");
        IsNot(worst.PerDevice, 53.6, "the heat of a side taken for one transistor's");
        IsNot(worst.PerDevice, 35.1, "n transistors instead of 2·n");
    }

    [Fact]
    public void The_peak_of_a_side_and_the_average_at_sixty_degrees()
    {
        Check.Computed(Reference.Read("class-b-peak.csv"), r => Volts(r["V"]) - ClassB.OutputAtPeak(Volts(r["V"]), LoadWithEmitterResistor.Phase(Ohms(r["Z"]), Degrees(r["phi_deg"]), Ohms(r["R_E"]), (int)r["n"])), "across");
        var ideal = new StageDissipation(1.V, 1, 0.Ohm);
        Assert.Equal(0.3536, 0.25 / (double)ideal.Peak(1.Ohm, 45.deg).Side.Watts, 0.00005);
        Assert.Equal(0.2781, 0.25 / (double)ideal.Peak(1.Ohm, 60.deg).Side.Watts, 0.00005);
        Assert.Equal(0, ideal.Peak(1.Ohm, 45.deg).Output.Volts, 1e-3);
        IsNot(ideal.Peak(1.Ohm, 45.deg).Side, 0.25 / 0.707, "the average-equivalent resistor taken for the peak's");
        Assert.Equal(0.38662, (double)ideal.Maximum(1.Ohm, 60.deg).Total.Watts, 0.000005);
        IsNot(ideal.Maximum(1.Ohm, 60.deg).Total, 0.40528, "2/(π²·cos φ) past 50.46°");
    }

    [Fact]
    public void The_worst_heat_in_class_AB()
    {
        Check.Computed(Reference.Read("class-ab.csv"), r => ClassAB.Heat(Volts(r["V"]), Volts(r["V_p"]), Ohms(r["Z"]), Degrees(r["phi_deg"]), Ohms(r["R_E"]), (int)r["n"], Amperes(r["I_q"]), Ohms(r["r_int"]), Volts(r["V_T"])), "P_D");
        // 0.0525 Ω of the transistor's own and junctions at 45 °C; at 55 °C it is 106.40 W, without the 0.0525 Ω 106.46 W.
        var biased = Stage with { IdleCurrent = 103.8.mA, InternalResistance = 52.5.mOhm, Junction = 45.degC };
        Near(106.39, biased.Maximum(R).Total);
        IsNot(biased.Maximum(R).Total, 133.9, "class B and the idle heat added");
    }

    [Fact]
    public void An_eighth_of_rated_power()
    {
        Check.Computed(Reference.Read("programme-heat.csv"), r => MusicDissipation.NoiseHeat(Volts(r["V"]), Power.FromWatts(r["P"]), Ohms(r["Z"]), Degrees(r["phi_deg"])), "noise");
        Near(75.72, MusicDissipation.SineHeat(V, 22.5.W, R, 0.deg));
        Near(64.55, MusicDissipation.NoiseHeat(V, 22.5.W, R, 0.deg));
        IsNot(MusicDissipation.NoiseHeat(V, 22.5.W, R, 0.deg), 75.72, "a sine taken for music");
    }

    private static void Near(double watts, Power ours) => Assert.Equal(watts, (double)ours.Watts, 0.0051);

    private static void IsNot(Power ours, double mistaken, string mistake) =>
        Assert.True(Math.Abs(((double)ours.Watts / mistaken) - 1) > 0.01, $"{ours} cannot be told from {mistake}.");
}
