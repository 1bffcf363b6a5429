using System.Text.Json.Serialization;
using UnitsNet;

namespace EightOhm.Quantities;

/// <summary>A power level: decibels over 1 mW, average power.</summary>
/// <param name="Decibels">Decibels over 1 mW; finite.</param>
[JsonConverter(typeof(QuantityJsonConverter))]
public readonly partial record struct DbmLevel(double Decibels) : ILevel<DbmLevel>
{
    /// <inheritdoc/>
    public static string Symbol => "dBm";

    /// <summary>The reference, 1 mW.</summary>
    public static Power Reference => Power.FromWatts(1e-3);

    /// <summary>The power behind the level.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The level is outside −120 to 120 dB.</exception>
    public Power Power => Power.FromWatts(1e-3 * Decibel.Ratio(Decibels, 10, 120));

    /// <summary>The level of a power.</summary>
    /// <param name="P">Average power; greater than 0 W.</param>
    /// <returns>The level, in dBm.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The power is not positive.</exception>
    public static DbmLevel Of(Power P) => new(Decibel.Of((double)Guard.Positive(P, hint: "No power has no level in decibels.").Watts / 1e-3, 10));
}
