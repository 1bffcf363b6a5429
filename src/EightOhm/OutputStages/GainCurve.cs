using EightOhm.Samples;
using UnitsNet;

namespace EightOhm.OutputStages;

/// <summary>Transfer and incremental gain of a follower stage at one bias, for a chart.</summary>
public sealed class GainCurve
{
    internal GainCurve(ElectricCurrent idle, double[] input, double[] output, double[] gain) =>
        (IdleCurrent, Transfer, Gain) = (idle, new(input, output), new(output, gain));

    /// <summary>The idle current of each output device.</summary>
    public ElectricCurrent IdleCurrent { get; }

    /// <summary>Output voltage over input voltage.</summary>
    public Curve<ElectricPotential, ElectricPotential> Transfer { get; }

    /// <summary>Incremental gain dv_out/dv_in over output voltage, from the slopes of the solved equations.</summary>
    public Curve<ElectricPotential, EightOhm.Quantities.Gain> Gain { get; }

    /// <summary>How far the gain ripples over the range: (greatest − least)/greatest.</summary>
    public Ratio Ripple => Ratio.FromDecimalFractions(1 - (Gain.Min.Ratio / Gain.Max.Ratio));
}
