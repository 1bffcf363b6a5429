using System.Text.Json.Serialization;
using UnitsNet;

namespace EightOhm.Quantities;

/// <summary>A power level: decibels over 1 W, average power.</summary>
/// <param name="Decibels">Decibels over 1 W; finite.</param>
[JsonConverter(typeof(QuantityJsonConverter))]
public readonly partial record struct DbwLevel(double Decibels) : ILevel<DbwLevel>
{
    /// <inheritdoc/>
    public static string Symbol => "dBW";

    /// <summary>The reference, 1 W.</summary>
    public static Power Reference => Power.FromWatts(1);

    /// <summary>The power behind the level.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The level is outside −120 to 120 dB.</exception>
    public Power Power => Power.FromWatts(Decibel.Ratio(Decibels, 10, 120));

    /// <summary>The level of a power.</summary>
    /// <param name="P">Average power; greater than 0 W.</param>
    /// <returns>The level, in dBW.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The power is not positive.</exception>
    public static DbwLevel Of(Power P) => new(Decibel.Of((double)Guard.Positive(P, hint: "No power has no level in decibels.").Watts, 10));
}
