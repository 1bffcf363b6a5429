using EightOhm.Explaining;
using EightOhm.Quantities;
using EightOhm.Samples;
using UnitsNet;

namespace EightOhm.Thermal;

/// <summary>Idle current and temperatures over time.</summary>
public sealed class BiasOverTime
{
    internal BiasOverTime(BiasTracking of, ThermalTransient temperatures, double[] seconds, double[] amperes, double? ranAway)
    {
        (Of, Temperatures, IdleCurrent) = (of, temperatures, new(seconds, amperes));
        RanAwayAt = ranAway is { } t ? Duration.FromSeconds(t) : null;
        (Greatest, Least, Last) = (IdleCurrent.Max, IdleCurrent.Min, ElectricCurrent.FromAmperes(amperes[^1]));
    }

    /// <summary>What was followed.</summary>
    public BiasTracking Of { get; }

    /// <summary>The temperatures of the nodes.</summary>
    public ThermalTransient Temperatures { get; }

    /// <summary>Idle current of the first transistor over time: what it draws, or during the music would draw, without signal.</summary>
    public Waveform<ElectricCurrent> IdleCurrent { get; }

    /// <summary>When a junction passed 300 °C and the calculation ended; null when none did.</summary>
    public Duration? RanAwayAt { get; }

    /// <summary>The greatest idle current.</summary>
    [Symbol("I_max")]
    public ElectricCurrent Greatest { get; }

    /// <summary>The least idle current.</summary>
    [Symbol("I_min")]
    public ElectricCurrent Least { get; }

    /// <summary>The idle current at the end.</summary>
    [Symbol("I_end")]
    public ElectricCurrent Last { get; }

    /// <summary>The highest temperature of any node.</summary>
    [Symbol("T_max")]
    public Temperature Hottest => Temperatures.Hottest;

    /// <summary>The same in words.</summary>
    public override string ToString() => RanAwayAt is { } t
        ? $"Runs away: a junction passes 300 °C after {QuantityFormat.Short(t)}, with {QuantityFormat.Short(Last)} a transistor."
        : $"Idle current from {QuantityFormat.Short(Least)} to {QuantityFormat.Short(Greatest)} a transistor, {QuantityFormat.Short(Last)} after {QuantityFormat.Short(Temperatures.End)}.";
}
