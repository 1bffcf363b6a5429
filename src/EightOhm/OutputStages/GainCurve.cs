using UnitsNet;

namespace EightOhm.OutputStages;

/// <summary>Transfer and incremental gain of a follower stage at one bias, in plain numbers for a chart.</summary>
public sealed class GainCurve
{
    internal GainCurve(ElectricCurrent idle, double[] input, double[] output, double[] gain) =>
        (IdleCurrent, Input, Output, Gain) = (idle, input, output, gain);

    /// <summary>The idle current of each output device.</summary>
    public ElectricCurrent IdleCurrent { get; }

    /// <summary>Input voltages, V.</summary>
    public IReadOnlyList<double> Input { get; }

    /// <summary>Output voltages, V.</summary>
    public IReadOnlyList<double> Output { get; }

    /// <summary>Incremental gain dv_out/dv_in at each, from the slopes of the solved equations.</summary>
    public IReadOnlyList<double> Gain { get; }

    /// <summary>How far the gain ripples over the range: (greatest − least)/greatest.</summary>
    public Ratio Ripple => Ratio.FromDecimalFractions((Gain.Max() - Gain.Min()) / Gain.Max());
}
