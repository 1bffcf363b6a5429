using EightOhm.Explaining;
using EightOhm.Json;
using EightOhm.Quantities;
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

/// <summary>A bipolar transistor by its card: what every room needs of it is read or derived from here, and never typed again.</summary>
/// <remarks>Figures of one device, magnitudes for either polarity, at the reference temperature unless said otherwise. A card is data: nothing in it is run.
/// Power dissipation, safe area, static transfer, temperature tracking and stored charge all begin here.</remarks>
/// <example><code>var npn = Transistor.Load("cards/output-npn.json"); npn.AllowedPower(80.degC)</code></example>
[RecordName("transistor")]
public sealed partial class Transistor : DeviceCard
{
    private Transistor(JsonPart card)
        : base(card)
    {
    }

    /// <summary>npn or pnp.</summary>
    public required Polarity Polarity { get; init; }

    /// <summary>Maximum rated collector-emitter voltage, base open.</summary>
    [Symbol("V_CEO")]
    [RecordName("transistor.max-collector-emitter-voltage")]
    public required ElectricPotential MaxCollectorEmitterVoltage { get; init; }

    /// <summary>Maximum rated continuous collector current.</summary>
    [Symbol("I_C")]
    [RecordName("transistor.max-collector-current")]
    public required ElectricCurrent MaxCollectorCurrent { get; init; }

    /// <summary>Maximum rated peak collector current, for a pulse; the continuous one where the sheet tells no other.</summary>
    [Symbol("I_CM")]
    [RecordName("transistor.max-peak-collector-current")]
    public required ElectricCurrent MaxPeakCollectorCurrent { get; init; }

    /// <summary>Maximum rated power dissipation, at the reference case temperature or below.</summary>
    [Symbol("P_max")]
    [RecordName("transistor.max-power-dissipation")]
    public required Power MaxPowerDissipation { get; init; }

    /// <summary>The case temperature up to which the ratings hold.</summary>
    [Symbol("T_ref")]
    [RecordName("transistor.reference-temperature")]
    public required Temperature ReferenceTemperature { get; init; }

    /// <summary>Maximum rated junction temperature.</summary>
    [Symbol("T_J")]
    [RecordName("transistor.max-junction-temperature")]
    public required Temperature MaxJunctionTemperature { get; init; }

    /// <summary>Junction to case.</summary>
    [Symbol("theta_JC")]
    [RecordName("transistor.junction-to-case")]
    public required ThermalResistance JunctionToCase { get; init; }

    /// <summary>Where the current gain has fallen to one.</summary>
    [Symbol("f_T")]
    [RecordName("transistor.transition-frequency")]
    public required Frequency TransitionFrequency { get; init; }

    /// <summary>Collector to base.</summary>
    [Symbol("C_ob")]
    [RecordName("transistor.output-capacitance")]
    public required ElectricCapacitance OutputCapacitance { get; init; }

    /// <summary>The resistance inside the device that acts in series with its emitter: the emitter's own, and the base's over the gain.</summary>
    [Symbol("r_int")]
    [RecordName("transistor.internal-emitter-resistance")]
    public required ElectricResistance InternalEmitterResistance { get; init; }

    /// <summary>Base-emitter voltage at <see cref="BaseEmitterCurrent"/> with the junction at <see cref="ReferenceTemperature"/>, its series resistance's drop not in it.</summary>
    [Symbol("V_BE")]
    [RecordName("transistor.base-emitter-voltage")]
    public required ElectricPotential BaseEmitterVoltage { get; init; }

    /// <summary>The collector current of that base-emitter voltage.</summary>
    [Symbol("I_BE")]
    [RecordName("transistor.base-emitter-current")]
    public required ElectricCurrent BaseEmitterCurrent { get; init; }

    /// <summary>How much the base-emitter voltage falls for a kelvin at that current, as a positive value.</summary>
    [Symbol("tc")]
    public required VoltageDrift BaseEmitterDrift { get; init; }

    /// <summary>The share of the second-breakdown current left when the case is as hot as the junction may be: 0 derates it as the power, 1 not at all.</summary>
    /// <remarks>Makers differ. A sheet that says its second-breakdown limits are derated like its power means 0, and 0 is the cautious assumption where a sheet says nothing.</remarks>
    [Symbol("k_SB")]
    [RecordName("transistor.second-breakdown-left")]
    public required Ratio SecondBreakdownLeft { get; init; }

    /// <summary>Current gain over collector current, rising currents.</summary>
    public required IReadOnlyList<GainPoint> GainTable { get; init; }

    /// <summary>The safe operating area: the dc line first, then the pulse lines from the longest pulse to the shortest.</summary>
    public required IReadOnlyList<SafeAreaLine> SafeAreaLines { get; init; }

    /// <inheritdoc/>
    public override string ToString() =>
        $"{Name}{(Invented ? " (invented)" : "")}, {Polarity.ToString().ToLowerInvariant()}, {QuantityFormat.Short(MaxCollectorEmitterVoltage)}, {QuantityFormat.Short(MaxCollectorCurrent)}, {QuantityFormat.Short(MaxPowerDissipation)}: {Source}";
}
