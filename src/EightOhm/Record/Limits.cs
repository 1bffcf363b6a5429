using EightOhm.Quantities;

namespace EightOhm.Record;

/// <summary>The limits that a requirement can set. A value on the limit meets it.</summary>
public static class Limits
{
    /// <summary>The value must be this or more.</summary>
    /// <typeparam name="T">The quantity.</typeparam>
    /// <param name="least">The limit; finite.</param>
    public static EntryLimit AtLeast<T>(T least)
        where T : struct => new(LimitSense.AtLeast, QuantityKinds.Of(typeof(T)), least, null);

    /// <summary>The value must be this or less.</summary>
    /// <typeparam name="T">The quantity.</typeparam>
    /// <param name="most">The limit; finite.</param>
    public static EntryLimit AtMost<T>(T most)
        where T : struct => new(LimitSense.AtMost, QuantityKinds.Of(typeof(T)), null, most);

    /// <summary>The value must lie in a closed range.</summary>
    /// <typeparam name="T">The quantity.</typeparam>
    /// <param name="low">The least value allowed; finite.</param>
    /// <param name="high">The greatest value allowed; finite, not below <paramref name="low"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">The low limit is above the high one.</exception>
    public static EntryLimit Between<T>(T low, T high)
        where T : struct => new(LimitSense.Between, QuantityKinds.Of(typeof(T)), low, high);
}
