using EightOhm.Quantities;
using EightOhm.Explaining;
using UnitsNet;

namespace EightOhm.Devices;

/// <summary>Which way a bipolar transistor conducts.</summary>
public enum Polarity
{
    /// <summary>Collector positive.</summary>
    Npn,

    /// <summary>Collector negative; the card's figures are magnitudes.</summary>
    Pnp,
}

/// <summary>A power transistor's figures, read from a JSON card with its source.</summary>
/// <remarks>Figures of one device, magnitudes for either polarity, at the reference case temperature unless said otherwise. A card is data: nothing in it is run.</remarks>
public sealed partial class PowerTransistorCard
{
    internal PowerTransistorCard()
    {
    }

    /// <summary>The device's name.</summary>
    public required string Name { get; init; }

    /// <summary>True for a device that does not exist and serves a demonstration.</summary>
    public required bool Invented { get; init; }

    /// <summary>Where the figures come from; for an invented card what it was invented for.</summary>
    public required string Source { get; init; }

    /// <summary>npn or pnp.</summary>
    public required Polarity Polarity { get; init; }

    /// <summary>The most that collector to emitter stands with the base open.</summary>
    [Symbol("V_CEO")]
    public required ElectricPotential MaxCollectorEmitterVoltage { get; init; }

    /// <summary>The most continuous collector current.</summary>
    [Symbol("I_C")]
    public required ElectricCurrent MaxCollectorCurrent { get; init; }

    /// <summary>The most heat, at the reference case temperature or below.</summary>
    [Symbol("P_max")]
    public required Power MaxPowerDissipation { get; init; }

    /// <summary>The case temperature up to which the ratings hold.</summary>
    [Symbol("T_ref")]
    public required Temperature ReferenceTemperature { get; init; }

    /// <summary>The hottest junction allowed.</summary>
    [Symbol("T_J")]
    public required Temperature MaxJunctionTemperature { get; init; }

    /// <summary>Junction to case.</summary>
    [Symbol("theta_JC")]
    public required ThermalResistance JunctionToCase { get; init; }

    /// <summary>Where the current gain has fallen to one.</summary>
    [Symbol("f_T")]
    public required Frequency TransitionFrequency { get; init; }

    /// <summary>Collector to base.</summary>
    [Symbol("C_ob")]
    public required ElectricCapacitance OutputCapacitance { get; init; }

    /// <summary>The resistance inside the device that acts in series with its emitter: the emitter's own, and the base's over the gain.</summary>
    [Symbol("r_int")]
    public required ElectricResistance InternalEmitterResistance { get; init; }

    /// <summary>The share of the second-breakdown current left when the case is as hot as the junction may be: 0 derates it as the heat, 1 not at all.</summary>
    /// <remarks>Makers differ. A sheet that says its second-breakdown limits are derated like its power means 0, and 0 is the cautious assumption where a sheet says nothing.</remarks>
    [Symbol("k_SB")]
    public required Ratio SecondBreakdownLeft { get; init; }

    /// <summary>Current gain over collector current, rising currents.</summary>
    public required IReadOnlyList<GainPoint> GainTable { get; init; }

    /// <summary>The safe operating area: the dc line first, then the pulse lines from the longest pulse to the shortest.</summary>
    public required IReadOnlyList<SafeAreaLine> SafeAreaLines { get; init; }

    /// <summary>The current gain at a current: straight between the table's points over the logarithm of the current.</summary>
    /// <param name="I_C">Collector current; within the table.</param>
    /// <exception cref="ArgumentOutOfRangeException">The table does not reach there.</exception>
    public double GainAt(ElectricCurrent I_C)
    {
        Guard.Between(I_C, GainTable[0].Current, GainTable[^1].Current, hint: "The card's table of h_FE does not reach there.");
        var i = Math.Max(1, GainTable.ToList().FindIndex(p => p.Current >= I_C));
        var (a, b) = (GainTable[i - 1], GainTable[i]);
        var x = Math.Log(I_C.Amperes / a.Current.Amperes) / Math.Log(b.Current.Amperes / a.Current.Amperes);
        return a.Gain + (x * (b.Gain - a.Gain));
    }

    /// <inheritdoc/>
    public override string ToString() =>
        $"{Name}{(Invented ? " (invented)" : "")}, {Polarity.ToString().ToLowerInvariant()}, {QuantityFormat.Short(MaxCollectorEmitterVoltage)}, {QuantityFormat.Short(MaxCollectorCurrent)}, {QuantityFormat.Short(MaxPowerDissipation)}: {Source}";
}
