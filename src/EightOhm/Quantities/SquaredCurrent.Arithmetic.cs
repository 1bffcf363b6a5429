namespace EightOhm.Quantities;

/// <content>The arithmetic that all values of the algebra have: the build writes it for each of them from this one (Alike.targets).</content>
public readonly partial record struct SquaredCurrent
{
    /// <inheritdoc/>
    public static SquaredCurrent FromSi(double si) => new(si);

    /// <summary>Adds two values.</summary>
    public static SquaredCurrent operator +(SquaredCurrent a, SquaredCurrent b) => new(a.Si + b.Si);

    /// <summary>Subtracts two values.</summary>
    public static SquaredCurrent operator -(SquaredCurrent a, SquaredCurrent b) => new(a.Si - b.Si);

    /// <summary>Scales a value.</summary>
    public static SquaredCurrent operator *(double factor, SquaredCurrent a) => new(factor * a.Si);

    /// <summary>Scales a value.</summary>
    public static SquaredCurrent operator *(SquaredCurrent a, double factor) => new(a.Si * factor);

    /// <summary>Divides a value.</summary>
    public static SquaredCurrent operator /(SquaredCurrent a, double divisor) => new(a.Si / divisor);

    /// <summary>The ratio of two values.</summary>
    public static double operator /(SquaredCurrent a, SquaredCurrent b) => a.Si / b.Si;

    /// <summary>Whether one value is less than the other.</summary>
    public static bool operator <(SquaredCurrent a, SquaredCurrent b) => a.Si < b.Si;

    /// <summary>Whether one value is greater than the other.</summary>
    public static bool operator >(SquaredCurrent a, SquaredCurrent b) => a.Si > b.Si;

    /// <summary>Whether one value is at most the other.</summary>
    public static bool operator <=(SquaredCurrent a, SquaredCurrent b) => a.Si <= b.Si;

    /// <summary>Whether one value is at least the other.</summary>
    public static bool operator >=(SquaredCurrent a, SquaredCurrent b) => a.Si >= b.Si;

    /// <inheritdoc/>
    public int CompareTo(SquaredCurrent other) => Si.CompareTo(other.Si);

    /// <summary>The value in engineering notation with its unit.</summary>
    public override string ToString() => QuantityFormat.Short(this);
}
