using MathNet.Numerics;
using UnitsNet;

namespace EightOhm.Quantities;

/// <summary>The functions of formulas: roots, logarithms, powers of ten, sums and resistances in parallel, for quantities and numbers.</summary>
public static class Maths
{
    /// <summary>The voltage whose square this is.</summary>
    /// <param name="square">Not negative.</param>
    /// <exception cref="ArgumentOutOfRangeException">The square is negative.</exception>
    [RecordName("sqrt")]
    public static ElectricPotential Sqrt(SquaredVoltage square) => ElectricPotential.FromVolts(Root(square.Si, "V²"));

    /// <summary>The current whose square this is.</summary>
    /// <param name="square">Not negative.</param>
    /// <exception cref="ArgumentOutOfRangeException">The square is negative.</exception>
    [RecordName("sqrt")]
    public static ElectricCurrent Sqrt(SquaredCurrent square) => ElectricCurrent.FromAmperes(Root(square.Si, "A²"));

    /// <summary>The noise voltage density whose square this is.</summary>
    /// <param name="square">Not negative.</param>
    /// <exception cref="ArgumentOutOfRangeException">The square is negative.</exception>
    [RecordName("sqrt")]
    public static VoltageNoiseDensity Sqrt(SquaredVoltageDensity square) => VoltageNoiseDensity.FromSi(Root(square.Si, "V²/Hz"));

    /// <summary>The noise current density whose square this is.</summary>
    /// <param name="square">Not negative.</param>
    /// <exception cref="ArgumentOutOfRangeException">The square is negative.</exception>
    [RecordName("sqrt")]
    public static CurrentNoiseDensity Sqrt(SquaredCurrentDensity square) => CurrentNoiseDensity.FromSi(Root(square.Si, "A²/Hz"));

    /// <summary>The root of a bandwidth, by which a density is multiplied.</summary>
    /// <param name="bandwidth">Not negative.</param>
    /// <exception cref="ArgumentOutOfRangeException">The bandwidth is negative.</exception>
    [RecordName("sqrt")]
    public static RootFrequency Sqrt(Frequency bandwidth) => new(Root(bandwidth.Hertz, "Hz"));

    /// <summary>The time whose square this is: 1 over the angular frequency of a resonance L·C.</summary>
    /// <param name="square">Not negative.</param>
    /// <exception cref="ArgumentOutOfRangeException">The square is negative.</exception>
    [RecordName("sqrt")]
    public static Duration Sqrt(SquaredDuration square) => Duration.FromSeconds(Root(square.Si, "s²"));

    /// <summary>The frequency whose square this is.</summary>
    /// <param name="square">Not negative.</param>
    /// <exception cref="ArgumentOutOfRangeException">The square is negative.</exception>
    [RecordName("sqrt")]
    public static Frequency Sqrt(SquaredFrequency square) => Frequency.FromHertz(Root(square.Si, "Hz²"));

    /// <summary>The resistance whose square this is: the characteristic impedance of L/C.</summary>
    /// <param name="square">Not negative.</param>
    /// <exception cref="ArgumentOutOfRangeException">The square is negative.</exception>
    [RecordName("sqrt")]
    public static ElectricResistance Sqrt(SquaredResistance square) => ElectricResistance.FromOhms(Root(square.Si, "Ω²"));

    /// <summary>The side of a square of an area.</summary>
    /// <param name="area">Not negative.</param>
    /// <exception cref="ArgumentOutOfRangeException">The area is negative.</exception>
    [RecordName("sqrt")]
    public static Length Sqrt(Area area) => Length.FromMeters(Root(area.SquareMeters, "m²"));

    /// <summary>The square root of a number.</summary>
    /// <param name="number">Not negative.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is negative.</exception>
    [RecordName("sqrt")]
    public static double Sqrt(double number) => Root(number, "");

    /// <summary>The natural logarithm of a number.</summary>
    /// <param name="number">Greater than 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is not positive.</exception>
    [RecordName("ln")]
    public static double Ln(double number) => Math.Log(Guard.Positive(number, "the number under ln"));

    /// <summary>The logarithm to base ten of a number.</summary>
    /// <param name="number">Greater than 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is not positive.</exception>
    [RecordName("log10")]
    public static double Log10(double number) => Math.Log10(Guard.Positive(number, "the number under log₁₀"));

    /// <summary>e to a power.</summary>
    /// <param name="exponent">At most 700; a very negative one gives 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The exponent is out of range.</exception>
    [RecordName("exp")]
    public static double Exp(double exponent) => Math.Exp(Guard.Between(exponent, double.MinValue, 700, "the exponent of e"));

    /// <summary>A positive number to a power.</summary>
    /// <param name="number">Greater than 0.</param>
    /// <param name="exponent">Such that the result is finite.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is not positive, or the result not finite.</exception>
    [RecordName("pow")]
    public static double Pow(double number, double exponent) => Guard.Finite(Math.Pow(Guard.Positive(number, "the number raised to a power"), exponent), "the power");

    /// <summary>The sine of an angle.</summary>
    /// <param name="angle">Any angle.</param>
    [RecordName("sin")]
    public static double Sin(Angle angle) => Math.Sin(angle.Radians);

    /// <summary>The cosine of an angle.</summary>
    /// <param name="angle">Any angle.</param>
    [RecordName("cos")]
    public static double Cos(Angle angle) => Math.Cos(angle.Radians);

    /// <summary>The tangent of an angle.</summary>
    /// <param name="angle">Not a right angle.</param>
    [RecordName("tan")]
    public static double Tan(Angle angle) => Math.Tan(angle.Radians);

    /// <summary>The angle whose tangent this is, between −90° and 90°.</summary>
    /// <param name="number">Any number.</param>
    [RecordName("arc-tan")]
    public static Angle ArcTan(double number) => Angle.FromRadians(Math.Atan(number));

    /// <summary>The complementary error function: the share of a Gaussian beyond √2·x standard deviations, both ways.</summary>
    /// <param name="number">Any number.</param>
    [RecordName("erfc")]
    public static double Erfc(double number) => SpecialFunctions.Erfc(number);

    /// <summary>The gamma function: (n − 1)! for a whole number n, and what lies between.</summary>
    /// <param name="number">Greater than 0, at most 171.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is not positive or the value too large.</exception>
    [RecordName("gamma")]
    public static double Gamma(double number) => SpecialFunctions.Gamma(Guard.Between(Guard.Positive(number, "the number under Γ"), 0, 171, "the number under Γ"));

    /// <summary>Ten to a power: what a number of decibels, over 10 or 20, stands for.</summary>
    /// <param name="exponent">From −300 to 300.</param>
    /// <exception cref="ArgumentOutOfRangeException">The exponent is out of range.</exception>
    [RecordName("power-of-ten")]
    public static double PowerOfTen(double exponent) => Math.Pow(10, Guard.Between(exponent, -300, 300, "the exponent of ten"));

    /// <summary>Resistances side by side: 1/(1/R₁ + 1/R₂).</summary>
    /// <param name="R_1">Greater than 0 Ω.</param>
    /// <param name="R_2">Greater than 0 Ω.</param>
    /// <exception cref="ArgumentOutOfRangeException">A resistance is not positive.</exception>
    [RecordName("parallel")]
    public static ElectricResistance Parallel(ElectricResistance R_1, ElectricResistance R_2)
    {
        double a = Guard.Positive(R_1).Ohms, b = Guard.Positive(R_2).Ohms;
        return ElectricResistance.FromOhms(a * b / (a + b));
    }

    /// <summary>The sum of a term over a list, in the list's order.</summary>
    /// <typeparam name="TItem">The items.</typeparam>
    /// <typeparam name="TTerm">What is summed.</typeparam>
    /// <param name="items">The list; an empty one sums to zero.</param>
    /// <param name="term">The term of each item.</param>
    public static TTerm Sum<TItem, TTerm>(IReadOnlyList<TItem> items, Func<TItem, TTerm> term)
        where TTerm : struct, System.Numerics.IAdditionOperators<TTerm, TTerm, TTerm>
    {
        ArgumentNullException.ThrowIfNull(items);
        ArgumentNullException.ThrowIfNull(term);
        TTerm sum = default;
        for (var i = 0; i < items.Count; i++)
            sum = i == 0 ? term(items[i]) : sum + term(items[i]);
        return sum;
    }

    private static double Root(double value, string unit) => value >= 0
        ? Math.Sqrt(value)
        : throw new RefusedValueException("square", $"The value under the root must be 0 {unit} or more (was {Engineering.Text(value, unit, 0, 0)}). Look for a difference that came out negative.");
}
