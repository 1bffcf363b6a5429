using System.Text.Json.Serialization;

namespace EightOhm.Quantities;

/// <summary>A capacitance times a squared frequency: one over it is an inductance.</summary>
/// <remarks>An intermediate of the algebra: it has arithmetic and a face, no unit zoo. Equality and order are by value; <c>default</c> is 0 S/s.</remarks>
/// <param name="Si">The value in S/s.</param>
[JsonConverter(typeof(QuantityJsonConverter))]
public readonly record struct ConductanceRate(double Si) : IIntermediate<ConductanceRate>
{
    /// <inheritdoc/>
    public static string Symbol => "S/s";

    /// <inheritdoc/>
    public static ConductanceRate FromSi(double si) => new(si);

    /// <summary>Adds two values.</summary>
    public static ConductanceRate operator +(ConductanceRate a, ConductanceRate b) => new(a.Si + b.Si);

    /// <summary>Subtracts two values.</summary>
    public static ConductanceRate operator -(ConductanceRate a, ConductanceRate b) => new(a.Si - b.Si);

    /// <summary>Scales a value.</summary>
    public static ConductanceRate operator *(double factor, ConductanceRate a) => new(factor * a.Si);

    /// <summary>Scales a value.</summary>
    public static ConductanceRate operator *(ConductanceRate a, double factor) => new(a.Si * factor);

    /// <summary>Divides a value.</summary>
    public static ConductanceRate operator /(ConductanceRate a, double divisor) => new(a.Si / divisor);

    /// <summary>The ratio of two values.</summary>
    public static double operator /(ConductanceRate a, ConductanceRate b) => a.Si / b.Si;

    /// <summary>Whether one value is less than the other.</summary>
    public static bool operator <(ConductanceRate a, ConductanceRate b) => a.Si < b.Si;

    /// <summary>Whether one value is greater than the other.</summary>
    public static bool operator >(ConductanceRate a, ConductanceRate b) => a.Si > b.Si;

    /// <summary>Whether one value is at most the other.</summary>
    public static bool operator <=(ConductanceRate a, ConductanceRate b) => a.Si <= b.Si;

    /// <summary>Whether one value is at least the other.</summary>
    public static bool operator >=(ConductanceRate a, ConductanceRate b) => a.Si >= b.Si;

    /// <inheritdoc/>
    public int CompareTo(ConductanceRate other) => Si.CompareTo(other.Si);

    /// <summary>The value in engineering notation with its unit.</summary>
    public override string ToString() => QuantityFormat.Short(this);
}
