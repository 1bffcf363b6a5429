using EightOhm.Explaining;
using EightOhm.Json;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Devices.CardMembers;

namespace EightOhm.Devices;

/// <summary>A reservoir capacitor, electrolytic, by its card.</summary>
/// <remarks>Figures of one capacitor: a rail may have several in parallel.</remarks>
/// <example><code>var reservoir = design.Part&lt;ReservoirCapacitor&gt;("reservoir", "cards/reservoir.json"); reservoir.RippleCurrent</code></example>
[RecordName("reservoir-capacitor")]
public sealed class ReservoirCapacitor : DeviceCard
{
    // Makers rate the ripple current for 5 to 10 K inside, large cans for some more (common practice, no source).
    private const double GreatestRise = 30;

    internal ReservoirCapacitor(JsonPart card)
        : base(card.With("C", "tolerance", "V_R", "I_ripple", "f_ripple", "ESR", "T_life", "life", "theta"))
    {
        Capacitance = card["C"].Positive<ElectricCapacitance>();
        Tolerance = card["tolerance"].Share();
        RatedVoltage = card["V_R"].Positive<ElectricPotential>();
        RippleCurrent = card["I_ripple"].Positive<ElectricCurrent>();
        RippleFrequency = card["f_ripple"].Positive<Frequency>();
        SeriesResistance = card["ESR"].Positive<ElectricResistance>();
        LifeTemperature = card["T_life"].Positive<Temperature>();
        Life = card["life"].Positive<Duration>();
        ToAir = card["theta"].Positive<ThermalResistance>();
        Refuse(card);
    }

    /// <summary>Nominal capacitance.</summary>
    [Symbol("C")]
    [RecordName("reservoir-capacitor.capacitance")]
    public ElectricCapacitance Capacitance { get; }

    /// <summary>How far it may be from nominal, either way.</summary>
    [Symbol("m_C")]
    [RecordName("reservoir-capacitor.tolerance")]
    public Ratio Tolerance { get; }

    /// <summary>Rated dc voltage.</summary>
    [Symbol("V_R")]
    [RecordName("reservoir-capacitor.rated-voltage")]
    public ElectricPotential RatedVoltage { get; }

    /// <summary>Rated ripple current, rms, in air of <see cref="LifeTemperature"/> at <see cref="RippleFrequency"/>.</summary>
    [Symbol("I_ripple")]
    [RecordName("reservoir-capacitor.ripple-current")]
    public ElectricCurrent RippleCurrent { get; }

    /// <summary>The frequency of that ripple current and of <see cref="SeriesResistance"/>.</summary>
    [Symbol("f_ripple")]
    [RecordName("reservoir-capacitor.ripple-frequency")]
    public Frequency RippleFrequency { get; }

    /// <summary>Equivalent series resistance, the greatest when new.</summary>
    [Symbol("ESR")]
    [RecordName("reservoir-capacitor.series-resistance")]
    public ElectricResistance SeriesResistance { get; }

    /// <summary>The air temperature of the rated life.</summary>
    [Symbol("T_life")]
    [RecordName("reservoir-capacitor.life-temperature")]
    public Temperature LifeTemperature { get; }

    /// <summary>Rated life at that temperature with that ripple current.</summary>
    [Symbol("t_life")]
    [RecordName("reservoir-capacitor.life")]
    public Duration Life { get; }

    /// <summary>Inside to air.</summary>
    [Symbol("theta_CA")]
    [RecordName("reservoir-capacitor.to-air")]
    public ThermalResistance ToAir { get; }

    /// <summary>Heat of the rated ripple current: I_ripple²·ESR.</summary>
    [Symbol("P_ripple")]
    [RecordName("reservoir-capacitor.ripple-heat")]
    public Power RippleHeat => Power.FromWatts(RippleCurrent.Amperes * RippleCurrent.Amperes * SeriesResistance.Ohms);

    /// <inheritdoc/>
    public override string ToString() => $"{Name}{(Invented ? " (invented)" : "")}, reservoir capacitor, {Text(Capacitance)}, {Text(RatedVoltage)}, {Text(RippleCurrent)}: {Source}";

    private void Refuse(JsonPart card)
    {
        var loss = 2 * Math.PI * RippleFrequency.Hertz * SeriesResistance.Ohms * Capacitance.Farads;
        if (loss > 1)
            throw card["ESR"].Fault($"must be at most the reactance of C at f_ripple, {Text(SeriesResistance / loss)} (was {Text(SeriesResistance)}): beyond, it is a resistor. Look for milliohms written as ohms.");
        var rise = (double)RippleHeat.Watts * ToAir.Si;
        if (rise > GreatestRise)
            throw card["I_ripple"].Fault($"must heat the inside by {Text(TemperatureDelta.FromKelvins(GreatestRise))} at most: {Text(RippleHeat)} over {Text(ToAir)} is {Text(TemperatureDelta.FromKelvins(rise))} (was {Text(RippleCurrent)}). Look for a misread one of I_ripple, ESR and theta.");
    }
}
