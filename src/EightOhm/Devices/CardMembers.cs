using EightOhm.Json;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Devices;

/// <summary>What the readers of all kinds of cards share.</summary>
internal static class CardMembers
{
    // Figures printed to two digits, read off a chart or off a nameplate: only what no reading explains is refused.
    public const double Rounded = 0.05;

    /// <summary>Refuses a member that the kind does not have, and a missing one.</summary>
    /// <exception cref="JsonFault">One is too many or missing.</exception>
    public static JsonPart With(this JsonPart card, params string[] names)
    {
        card.Exactly(["format", "version", "kind", "name", "invented", "source", .. names]);
        return card;
    }

    /// <summary>A figure that may be zero and no less.</summary>
    /// <exception cref="JsonFault">It is below zero.</exception>
    public static T NotNegative<T>(this JsonPart part, string name)
        where T : struct, System.Numerics.IComparisonOperators<T, T, bool> => part.Checked(() => Guard.NotNegative(part.Value<T>(), name));

    /// <summary>A share from 0 % to less than 100 %.</summary>
    /// <exception cref="JsonFault">It is none.</exception>
    public static Ratio Share(this JsonPart part)
    {
        var share = part.Value<Ratio>();
        return share.DecimalFractions is >= 0 and < 1 ? share : throw part.Fault($"must be from 0 % to less than 100 % (was {QuantityFormat.Short(share)}).");
    }

    /// <summary>A value as messages show it.</summary>
    public static string Text(object value) => QuantityFormat.Short(value);
}
