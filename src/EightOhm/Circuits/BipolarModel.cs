using EightOhm.Devices;
using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Circuits;

/// <summary>What a circuit needs of a bipolar transistor: the exponential junction, its current gain, its resistances and capacitances.</summary>
/// <remarks>Magnitudes for either polarity. A card becomes a model by itself: <c>c.Npn("Q1", c: "out", b: "in", e: "e1", at: 2.mA, card)</c>. A card says
/// nothing of the Early effect, of the base spreading resistance (whose part in the emitter's series resistance is in r_int) or of 1/f noise: add them by
/// <c>BipolarModel.Of(card) with { EarlyVoltage = 100.V }</c>. Source: Sedra &amp; Smith, Microelectronic Circuits, 5th ed., ch. 5.</remarks>
[Called("bipolar transistor model")]
public sealed record BipolarModel
{
    /// <summary>Current gain; 1 or more. With a card the table of the card holds, and this is its greatest.</summary>
    [Symbol("h_FE")]
    public double CurrentGain { get; init => (field, Card) = (Guard.Between(value, 1, 1e9), null); } = 100;

    /// <summary>Saturation current of the junction at its temperature; greater than 0 A. It sets V_BE and nothing else.</summary>
    [Symbol("I_S")]
    public ElectricCurrent SaturationCurrent { get; init => field = Guard.Positive(value); } = ElectricCurrent.FromAmperes(1e-14);

    /// <summary>Early voltage; greater than 0 V. Not given: an infinite output resistance.</summary>
    [Symbol("V_A")]
    public ElectricPotential? EarlyVoltage { get; init => field = value is { } v ? Guard.Positive(v) : null; }

    /// <summary>Base spreading resistance; 0 Ω or more. It is a resistor and makes thermal noise.</summary>
    [Symbol("r_bb")]
    public ElectricResistance BaseResistance { get; init => field = Guard.NotNegative(value); }

    /// <summary>Resistance inside the device in series with its emitter; 0 Ω or more. It is a resistor and makes thermal noise; r_e, which is none, is not in it.</summary>
    [Symbol("r_int")]
    public ElectricResistance EmitterResistance { get; init => field = Guard.NotNegative(value); }

    /// <summary>Where the current gain has fallen to one; greater than 0 Hz. With the collector capacitance it sets C_π; not given: no C_π.</summary>
    [Symbol("f_T")]
    public Frequency? TransitionFrequency { get; init => field = value is { } f ? Guard.Positive(f) : null; }

    /// <summary>Capacitance from collector to base, C_μ; 0 F or more.</summary>
    [Symbol("C_mu")]
    public ElectricCapacitance CollectorCapacitance { get; init => field = Guard.NotNegative(value); }

    /// <summary>Junction temperature, which sets V_T and the noise of the resistances; 25 °C when not given.</summary>
    [Symbol("T_j")]
    public Temperature Junction { get; init => field = Guard.Positive(value); } = Temperature.FromDegreesCelsius(25);

    /// <summary>The frequency below which the 1/f noise of the base current exceeds its shot noise; greater than 0 Hz. Not given: none.</summary>
    [Symbol("f_c")]
    public Frequency? FlickerCorner { get; init => field = value is { } f ? Guard.Positive(f) : null; }

    /// <summary>npn or pnp where a card says it; null where both may be.</summary>
    public Polarity? Polarity { get; private init; }

    internal Transistor? Card { get; private init; }

    /// <summary>The model of a card.</summary>
    /// <param name="card">The transistor.</param>
    /// <param name="T_j">Junction temperature; 25 °C when not given.</param>
    /// <returns>Saturation current and current gain by the card at that temperature; its f_T, C_ob and internal resistance.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is impossible.</exception>
    public static BipolarModel Of(Transistor card, Temperature? T_j = null)
    {
        ArgumentNullException.ThrowIfNull(card);
        var junction = T_j ?? Temperature.FromDegreesCelsius(25);
        return new BipolarModel
        {
            CurrentGain = card.GainTable.Max(p => p.Gain),
            SaturationCurrent = card.SaturationCurrentAt(junction),
            EmitterResistance = card.InternalEmitterResistance,
            TransitionFrequency = card.TransitionFrequency,
            CollectorCapacitance = card.OutputCapacitance,
            Junction = junction,
            Polarity = card.Polarity,
            Card = card,
        };
    }

    /// <summary>A card where a model is asked for: at 25 °C.</summary>
    /// <param name="card">The transistor.</param>
    public static implicit operator BipolarModel(Transistor card) => Of(card);
}
