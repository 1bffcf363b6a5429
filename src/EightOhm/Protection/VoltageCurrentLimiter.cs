using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Protection;

/// <summary>A voltage-current limiter of one output transistor by its resistors: one slope, or two with R_sl. The network is drawn at <see cref="LimiterLocus"/>.</summary>
/// <remarks>Currents of one transistor. Hot and cold: the sense junction loses about 2 mV for each kelvin, so its limit falls as it warms.</remarks>
public sealed partial record VoltageCurrentLimiter
{
    // Loads are computed with the nominal emitter resistors; a spread of theirs is the limiter's own affair.
    private readonly ElectricResistance nominal;

    // What stands for no R_2: 1 TΩ, far above any leakage worth the name.
    private static readonly ElectricResistance None = ElectricResistance.FromOhms(1e12);

    /// <summary>A single-slope limiter.</summary>
    /// <param name="R_1">From the emitter resistor's upper end to the base; greater than 0 Ω.</param>
    /// <param name="R_2">From the base to the output; null where there is none.</param>
    /// <param name="R_3">From the base to the rail; greater than 0 Ω.</param>
    /// <param name="R_E">Emitter resistor of this one transistor; greater than 0 Ω.</param>
    /// <param name="V_BE">Sense voltage at 25 °C; 0.65 V when not given.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is not positive.</exception>
    public VoltageCurrentLimiter(ElectricResistance R_1, ElectricResistance? R_2, ElectricResistance R_3, ElectricResistance R_E, ElectricPotential? V_BE = null)
    {
        FromEmitter = Guard.Positive(R_1);
        ToOutput = Guard.Positive(R_2 ?? None, nameof(R_2));
        ToRail = Guard.Positive(R_3);
        EmitterResistor = nominal = Guard.Positive(R_E);
        SenseAtRoom = Guard.Positive(V_BE ?? ElectricPotential.FromVolts(0.65), nameof(V_BE));
    }

    /// <summary>From the emitter resistor's upper end to the base.</summary>
    [Symbol("R_1")]
    public ElectricResistance FromEmitter { get; private init; }

    /// <summary>From the base to the output; 1 TΩ stands for none.</summary>
    [Symbol("R_2")]
    public ElectricResistance ToOutput { get; private init; }

    /// <summary>From the base to the rail.</summary>
    [Symbol("R_3")]
    public ElectricResistance ToRail { get; private init; }

    /// <summary>From the base through a diode to the far end; null for one slope.</summary>
    [Symbol("R_sl")]
    public ElectricResistance? SecondSlope { get; private init; }

    /// <summary>From the far end of R_sl to the rail, less the diode's drop.</summary>
    [Symbol("V_S")]
    public ElectricPotential? FarEndToRail { get; private init; }

    /// <summary>Emitter resistor.</summary>
    [Symbol("R_E")]
    public ElectricResistance EmitterResistor { get; private init; }

    /// <summary>Sense voltage at 25 °C.</summary>
    [Symbol("V_BE")]
    public ElectricPotential SenseAtRoom { get; private init; }

    /// <summary>Change of the sense voltage with its junction's temperature; −2 mV/K when not given.</summary>
    [Symbol("tc")]
    public VoltageDrift Drift { get; init; } = new(-2e-3);

    /// <summary>The sense junction's temperature at which the sense voltage holds: 25 °C.</summary>
    [RecordName("voltage-current-limiter.room-temperature")]
    public static Temperature RoomTemperature => Temperature.FromKelvins(298.15);

    /// <summary>The same with a second slope: R_sl and a diode from the base to a far end, ground or a fixed voltage.</summary>
    /// <param name="R_sl">From the base through the diode; greater than 0 Ω.</param>
    /// <param name="V_S">From the far end to the rail, less the diode's drop; greater than 0 V. With the far end at ground it moves with the rail.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is not positive.</exception>
    public VoltageCurrentLimiter WithSecondSlope(ElectricResistance R_sl, ElectricPotential V_S) => this with { SecondSlope = Guard.Positive(R_sl), FarEndToRail = Guard.Positive(V_S) };

    /// <summary>The same limiter as its parts may come out: each resistor off by a share, the sense voltage by some millivolts.</summary>
    /// <remarks>For conditions: give each its range, and the sense junction's temperature where the margin is asked.</remarks>
    /// <param name="R_E">How far the emitter resistor is off, such as 5.percent; above −100 %.</param>
    /// <param name="V_BE">How far the sense voltage is off, such as (−20).mV.</param>
    /// <param name="R_1">How far R_1 is off; above −100 %.</param>
    /// <param name="R_2">How far R_2 is off; above −100 %.</param>
    /// <param name="R_3">How far R_3 is off; above −100 %.</param>
    /// <param name="R_sl">How far R_sl is off, where there is one; above −100 %.</param>
    /// <returns>A limiter whose loads may still be given with the nominal emitter resistor.</returns>
    /// <example><code>limiter.WithSpread(R_E: x_RE, V_BE: dV_BE).MarginTo(area, T_sense).Margin</code></example>
    /// <exception cref="ArgumentOutOfRangeException">Nothing is left of a resistor or of the sense voltage.</exception>
    public VoltageCurrentLimiter WithSpread(Ratio R_E = default, ElectricPotential V_BE = default, Ratio R_1 = default, Ratio R_2 = default, Ratio R_3 = default, Ratio R_sl = default) => this with
    {
        EmitterResistor = Off(EmitterResistor, R_E, nameof(R_E)),
        SenseAtRoom = Guard.Positive(SenseAtRoom + V_BE, nameof(V_BE), "Nothing is left of the sense voltage."),
        FromEmitter = Off(FromEmitter, R_1, nameof(R_1)),
        ToOutput = ToOutput < None ? Off(ToOutput, R_2, nameof(R_2)) : ToOutput,
        ToRail = Off(ToRail, R_3, nameof(R_3)),
        SecondSlope = SecondSlope is { } slope ? Off(slope, R_sl, nameof(R_sl)) : null,
    };

    /// <summary>The current at which limiting begins.</summary>
    /// <param name="V">From the output to the rail, V_CE + I·R_E; 0 V or more.</param>
    /// <param name="T">The sense junction's temperature; 25 °C when not given.</param>
    /// <returns>0 A where the limiter blocks altogether.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The voltage is negative, or the junction so hot that no sense voltage is left.</exception>
    [Worked("the locus of the sense network at that output voltage: LimiterLocus")]
    public ElectricCurrent CurrentAt(ElectricPotential V, Temperature? T = null)
    {
        var line = Locus(T ?? RoomTemperature);
        return ElectricCurrent.FromAmperes(line.ByRail(Guard.NotNegative(V).Volts));
    }

    /// <summary>The current at which limiting begins, over the transistor's own voltage: the drop of the emitter resistor is left out of V_CE.</summary>
    /// <param name="V_CE">Collector to emitter; 0 V or more.</param>
    /// <param name="T">The sense junction's temperature; 25 °C when not given.</param>
    /// <returns>0 A where the limiter blocks altogether.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The voltage is negative, or the junction so hot that no sense voltage is left.</exception>
    [Worked("the locus of the sense network at that transistor voltage: LimiterLocus")]
    public ElectricCurrent CurrentAtTransistor(ElectricPotential V_CE, Temperature? T = null)
    {
        var line = Locus(T ?? RoomTemperature);
        return ElectricCurrent.FromAmperes(line.ByTransistor(Guard.NotNegative(V_CE).Volts));
    }

    /// <inheritdoc/>
    public override string ToString() =>
        $"Limiter R_1 {QuantityFormat.Short(FromEmitter)}, {(ToOutput < None ? $"R_2 {QuantityFormat.Short(ToOutput)}, " : "")}R_3 {QuantityFormat.Short(ToRail)}{(SecondSlope is { } r ? $", R_sl {QuantityFormat.Short(r)}" : "")}, R_E {QuantityFormat.Short(EmitterResistor)}";

    private static ElectricResistance Off(ElectricResistance R, Ratio by, string name)
    {
        if (!(by > Ratio.FromPercent(-100)))
            Guard.Refuse(name, by, "above −100 %", "Nothing would be left of the resistor.");
        return (1 + by.DecimalFractions) * R;
    }

    internal LocusLine Locus(Temperature T)
    {
        var sense = LimiterLocus.SenseVoltage(SenseAtRoom, Drift, T, RoomTemperature);
        Guard.Positive(sense, nameof(T), "So hot a sense junction conducts by itself: keep it off the heat.");
        return new(sense.Volts, FromEmitter.Ohms, ToOutput.Ohms, ToRail.Ohms, SecondSlope?.Ohms ?? double.PositiveInfinity, EmitterResistor.Ohms, FarEndToRail?.Volts ?? 0);
    }
}
