namespace EightOhm.Quantities;

/// <content>The decibels and the order that all levels have: the build writes them for each of them from this one (Alike.targets).</content>
public readonly partial record struct DbuLevel
{
    /// <inheritdoc/>
    public double Decibels { get; } = Guard.Finite(Decibels);

    /// <inheritdoc/>
    public static DbuLevel FromDecibels(double decibels) => new(decibels);

    /// <summary>Whether one level is lower than another.</summary>
    public static bool operator <(DbuLevel a, DbuLevel b) => a.Decibels < b.Decibels;

    /// <summary>Whether one level is higher than another.</summary>
    public static bool operator >(DbuLevel a, DbuLevel b) => a.Decibels > b.Decibels;

    /// <summary>Whether one level is at most another.</summary>
    public static bool operator <=(DbuLevel a, DbuLevel b) => a.Decibels <= b.Decibels;

    /// <summary>Whether one level is at least another.</summary>
    public static bool operator >=(DbuLevel a, DbuLevel b) => a.Decibels >= b.Decibels;

    /// <inheritdoc/>
    public int CompareTo(DbuLevel other) => Decibels.CompareTo(other.Decibels);

    /// <summary>The level with its reference, such as 4 dBu.</summary>
    public override string ToString() => QuantityFormat.Short(this);
}
