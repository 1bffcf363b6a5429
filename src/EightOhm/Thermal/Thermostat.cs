using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Thermal;

/// <summary>A thermostat on the sink, between the duty that must not trip it and the fault that must.</summary>
/// <remarks>Both are sink temperatures at the thermostat's place: the first of the hardest rated duty (mains, load, ambient at their worst), the second of the duty at which a junction
/// would pass its limit, <see cref="SinkLimit"/>. A thermostat feels the sink minutes late: it ends a slow overload, never a short.</remarks>
public sealed partial record Thermostat
{
    private const string Source = "Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 14: the chain from the junction to the sink";

    private Thermostat(Temperature nominal, TemperatureDelta spread, Temperature hottestRated, Temperature mostAllowed) =>
        (Nominal, Spread, HottestRated, MostAllowed) = (nominal, spread, hottestRated, mostAllowed);

    /// <summary>Where it trips, nominally.</summary>
    [Symbol("T_th")]
    public Temperature Nominal { get; }

    /// <summary>How far from that it may trip, either way.</summary>
    [Symbol("dT_th")]
    public TemperatureDelta Spread { get; }

    /// <summary>The hottest sink of rated duty, which must not trip it.</summary>
    [Symbol("T_rated")]
    public Temperature HottestRated { get; }

    /// <summary>The sink at which it must have tripped.</summary>
    [Symbol("T_most")]
    public Temperature MostAllowed { get; }

    /// <summary>What is left between the hottest rated sink and the coolest trip; negative when rated duty trips it.</summary>
    [Symbol("m_low")]
    public TemperatureDelta MarginToRated => Nominal - Spread - HottestRated;

    /// <summary>What is left between the hottest trip and the sink at which it must have tripped; negative when it trips too late.</summary>
    [Symbol("m_high")]
    public TemperatureDelta MarginToLimit => MostAllowed - (Nominal + Spread);

    /// <summary>Whether it passes the rated duty and still trips in time, anywhere in its spread.</summary>
    public bool Fits => MarginToRated.Kelvins >= 0 && MarginToLimit.Kelvins >= 0;

    /// <summary>Judges a thermostat.</summary>
    /// <param name="nominal">Where it trips, nominally; above 0 K.</param>
    /// <param name="spread">How far from that it may trip, either way, such as 5.K; 0 K or more.</param>
    /// <param name="hottestRated">The hottest sink of rated duty.</param>
    /// <param name="mostAllowed">The sink at which it must have tripped.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Worked("the trip temperature with its spread held against the hottest rated sink and the most allowed one")]
    public static Thermostat Judge(Temperature nominal, TemperatureDelta spread, Temperature hottestRated, Temperature mostAllowed) =>
        new(Guard.Positive(nominal), Guard.NotNegative(spread), Guard.Positive(hottestRated), Guard.Positive(mostAllowed));

    /// <summary>The sink at which a junction reaches its limit: T_J − P·(θ_JC + θ_CS).</summary>
    /// <param name="T_J">Junction limit.</param>
    /// <param name="P">Heat of the one device in the duty to be ended; 0 W or more.</param>
    /// <param name="theta_JC">Junction to case; 0 K/W or more.</param>
    /// <param name="theta_CS">Case to sink, spreading included; 0 K/W or more.</param>
    /// <returns>The temperature of the sink, in °C.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range, or no sink above 0 K would do.</exception>
    /// <example><code>Thermostat.SinkLimit(150.degC, 30.W, 0.83.K_per_W, 0.5.K_per_W)   // 110.1 °C</code></example>
    [Formula(Source, Symbol = "T_s")]
    [RecordName("thermostat.sink-limit")]
    public static Temperature SinkLimit(Temperature T_J, Power P, ThermalResistance theta_JC, ThermalResistance theta_CS)
    {
        Guard.Positive(T_J);
        Guard.NotNegative(P);
        Guard.NotNegative(theta_JC);
        Guard.NotNegative(theta_CS);
        Guard.Between(P * (theta_JC + theta_CS), 0.K, 1000.K, "the rise from the sink to the junction");
        return T_J - P * (theta_JC + theta_CS);
    }

    /// <summary>The verdict in words.</summary>
    public override string ToString() => (MarginToRated.Kelvins >= 0, MarginToLimit.Kelvins >= 0) switch
    {
        (true, true) => $"fits: {QuantityFormat.Short(MarginToRated)} above rated duty, {QuantityFormat.Short(MarginToLimit)} below the limit",
        (false, true) => $"rated duty trips it: short by {QuantityFormat.Short(-MarginToRated)}; a larger sink, or a hotter thermostat",
        (true, false) => $"trips too late: short by {QuantityFormat.Short(-MarginToLimit)}; a cooler thermostat, or a tighter one",
        _ => $"cannot fit: short by {QuantityFormat.Short(-MarginToRated)} above rated duty and by {QuantityFormat.Short(-MarginToLimit)} below the limit; a larger sink",
    };
}
