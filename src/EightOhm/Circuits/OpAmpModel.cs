using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Circuits;

/// <summary>What a circuit needs of an operational amplifier: its gain falls from one pole, GBW/A₀, so that it is one at its gain-bandwidth product.</summary>
/// <remarks>The output is against ground. Source: Franco, Design with Operational Amplifiers and Analog Integrated Circuits, 3rd ed., ch. 6 (gain) and 7 (noise).</remarks>
[Called("operational amplifier model")]
public sealed record OpAmpModel
{
    /// <summary>Makes a model.</summary>
    /// <param name="gain">Open-loop gain at dc; 1 or more.</param>
    /// <param name="gbw">Gain-bandwidth product; greater than 0 Hz.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range.</exception>
    public OpAmpModel(Gain gain, Frequency gbw) =>
        (Gain, GainBandwidth) = (Guard.AtLeast(gain, Quantities.Gain.FromRatio(1)), Guard.Positive(gbw));

    /// <summary>Open-loop gain at dc.</summary>
    [Symbol("A_0")]
    public Gain Gain { get; }

    /// <summary>Gain-bandwidth product.</summary>
    [Symbol("GBW")]
    public Frequency GainBandwidth { get; }

    /// <summary>Differential input resistance; greater than 0 Ω. Not given: infinite.</summary>
    [Symbol("R_id")]
    public ElectricResistance? InputResistance { get; init => field = value is { } r ? Guard.Positive(r) : null; }

    /// <summary>Output resistance; 0 Ω or more.</summary>
    [Symbol("R_o")]
    public ElectricResistance OutputResistance { get; init => field = Guard.NotNegative(value); }

    /// <summary>Voltage noise density at the input; 0 V/√Hz or more.</summary>
    [Symbol("e_n")]
    public VoltageNoiseDensity VoltageNoise { get; init => field = Guard.NotNegative(value); }

    /// <summary>Current noise density of each input; 0 A/√Hz or more.</summary>
    [Symbol("i_n")]
    public CurrentNoiseDensity CurrentNoise { get; init => field = Guard.NotNegative(value); }

    /// <summary>The frequency below which the 1/f noise of the input voltage exceeds the white; greater than 0 Hz. Not given: none.</summary>
    [Symbol("f_c")]
    public Frequency? FlickerCorner { get; init => field = value is { } f ? Guard.Positive(f) : null; }

    /// <summary>The highest output voltage, at which it saturates. Not given: without bound.</summary>
    [Symbol("V_OH")]
    public ElectricPotential? HighestOutput { get; init => field = value is { } v ? Guard.InReach(v) : null; }

    /// <summary>The lowest output voltage, at which it saturates. Not given: without bound.</summary>
    [Symbol("V_OL")]
    public ElectricPotential? LowestOutput { get; init => field = value is { } v ? Guard.InReach(v) : null; }

    /// <summary>The voltage that its input needs for an output of 0 V, plus against minus.</summary>
    [Symbol("V_OS")]
    public ElectricPotential Offset { get; init => field = Guard.InReach(value); }
}
