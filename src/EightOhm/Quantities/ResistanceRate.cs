using System.Text.Json.Serialization;

namespace EightOhm.Quantities;

/// <summary>A resistance times a frequency, or an inductance times a squared one: one over it is a capacitance.</summary>
/// <remarks>An intermediate of the algebra: it has arithmetic and a face, no unit zoo. Equality and order are by value; <c>default</c> is 0 Ω/s.</remarks>
/// <param name="Si">The value in Ω/s.</param>
[JsonConverter(typeof(QuantityJsonConverter))]
public readonly record struct ResistanceRate(double Si) : IIntermediate<ResistanceRate>
{
    /// <inheritdoc/>
    public static string Symbol => "Ω/s";

    /// <inheritdoc/>
    public static ResistanceRate FromSi(double si) => new(si);

    /// <summary>Adds two values.</summary>
    public static ResistanceRate operator +(ResistanceRate a, ResistanceRate b) => new(a.Si + b.Si);

    /// <summary>Subtracts two values.</summary>
    public static ResistanceRate operator -(ResistanceRate a, ResistanceRate b) => new(a.Si - b.Si);

    /// <summary>Scales a value.</summary>
    public static ResistanceRate operator *(double factor, ResistanceRate a) => new(factor * a.Si);

    /// <summary>Scales a value.</summary>
    public static ResistanceRate operator *(ResistanceRate a, double factor) => new(a.Si * factor);

    /// <summary>Divides a value.</summary>
    public static ResistanceRate operator /(ResistanceRate a, double divisor) => new(a.Si / divisor);

    /// <summary>The ratio of two values.</summary>
    public static double operator /(ResistanceRate a, ResistanceRate b) => a.Si / b.Si;

    /// <summary>Whether one value is less than the other.</summary>
    public static bool operator <(ResistanceRate a, ResistanceRate b) => a.Si < b.Si;

    /// <summary>Whether one value is greater than the other.</summary>
    public static bool operator >(ResistanceRate a, ResistanceRate b) => a.Si > b.Si;

    /// <summary>Whether one value is at most the other.</summary>
    public static bool operator <=(ResistanceRate a, ResistanceRate b) => a.Si <= b.Si;

    /// <summary>Whether one value is at least the other.</summary>
    public static bool operator >=(ResistanceRate a, ResistanceRate b) => a.Si >= b.Si;

    /// <inheritdoc/>
    public int CompareTo(ResistanceRate other) => Si.CompareTo(other.Si);

    /// <summary>The value in engineering notation with its unit.</summary>
    public override string ToString() => QuantityFormat.Short(this);
}
