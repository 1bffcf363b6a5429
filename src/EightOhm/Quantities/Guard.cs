using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Numerics;
using System.Runtime.CompilerServices;

namespace EightOhm.Quantities;

/// <summary>The one precondition helper: an impossible input is refused with its name, its value with unit, what is allowed and what to try.</summary>
/// <remarks>A statement that calls it is a guard: it is not shown as part of a formula's working.</remarks>
public static class Guard
{
    /// <summary>Refuses zero and negative values (for a temperature: 0 K and below).</summary>
    /// <typeparam name="T">A quantity or number whose <c>default</c> is zero.</typeparam>
    /// <param name="value">The value to check.</param>
    /// <param name="name">The parameter's name; filled in by the compiler.</param>
    /// <param name="hint">What to try, a full sentence.</param>
    /// <returns>The value.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is zero or negative.</exception>
    public static T Positive<T>(T value, [CallerArgumentExpression(nameof(value))] string name = "", string? hint = null)
        where T : struct, IComparisonOperators<T, T, bool>
    {
        var held = Reach<T>.Measured(value);
        if (!(held >= Reach<T>.Least) || !(held <= Reach<T>.Most))
            Refuse(name, value, value > default(T) ? Reach<T>.InWords : $"greater than {QuantityFormat.Short(default(T))}", hint);
        return value;
    }

    /// <summary>Refuses negative values.</summary>
    /// <typeparam name="T">A quantity or number whose <c>default</c> is zero.</typeparam>
    /// <param name="value">The value to check.</param>
    /// <param name="name">The parameter's name; filled in by the compiler.</param>
    /// <param name="hint">What to try, a full sentence.</param>
    /// <returns>The value.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative.</exception>
    public static T NotNegative<T>(T value, [CallerArgumentExpression(nameof(value))] string name = "", string? hint = null)
        where T : struct, IComparisonOperators<T, T, bool>
    {
        var held = Reach<T>.Measured(value);
        if (!(held >= Reach<T>.Least && held <= Reach<T>.Most) && !IsZero(held))
            Refuse(name, value, value > default(T) ? Reach<T>.InWords : $"{QuantityFormat.Short(default(T))} or more", hint);
        return value;
    }

    /// <summary>Refuses values below a bound.</summary>
    /// <typeparam name="T">A quantity or number.</typeparam>
    /// <param name="value">The value to check.</param>
    /// <param name="low">The least value allowed.</param>
    /// <param name="name">The parameter's name; filled in by the compiler.</param>
    /// <param name="hint">What to try, a full sentence.</param>
    /// <returns>The value.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is below the bound.</exception>
    public static T AtLeast<T>(T value, T low, [CallerArgumentExpression(nameof(value))] string name = "", string? hint = null)
        where T : struct, IComparisonOperators<T, T, bool>
    {
        if (!(value >= low) || !(Reach<T>.Measured(value) <= Reach<T>.Most))
            Refuse(name, value, value >= low ? Reach<T>.InWords : $"{QuantityFormat.Short(low)} or more", hint);
        return value;
    }

    /// <summary>Refuses values outside a closed range.</summary>
    /// <typeparam name="T">A quantity or number.</typeparam>
    /// <param name="value">The value to check.</param>
    /// <param name="low">The least value allowed.</param>
    /// <param name="high">The greatest value allowed.</param>
    /// <param name="name">The parameter's name; filled in by the compiler.</param>
    /// <param name="hint">What to try, a full sentence.</param>
    /// <returns>The value.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is out of range.</exception>
    public static T Between<T>(T value, T low, T high, [CallerArgumentExpression(nameof(value))] string name = "", string? hint = null)
        where T : struct, IComparisonOperators<T, T, bool>
    {
        if (!(value >= low && value <= high))
            Refuse(name, value, $"from {QuantityFormat.Short(low)} to {QuantityFormat.Short(high)}", hint);
        return value;
    }

    /// <summary>Refuses NaN and infinity.</summary>
    /// <param name="value">The number to check.</param>
    /// <param name="name">The parameter's name; filled in by the compiler.</param>
    /// <returns>The number.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number is not finite.</exception>
    public static double Finite(double value, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        if (!double.IsFinite(value))
            throw new ArgumentOutOfRangeException(name, $"{name} must be a finite number (a division by zero came before it?).");
        return value;
    }

    /// <summary>Refuses a value for a reason of the caller's.</summary>
    /// <typeparam name="T">A quantity or number.</typeparam>
    /// <param name="name">The parameter's name.</param>
    /// <param name="value">The value given.</param>
    /// <param name="allowed">What is allowed, to follow "must be".</param>
    /// <param name="hint">What to try, a full sentence.</param>
    /// <exception cref="ArgumentOutOfRangeException">Always.</exception>
    [DoesNotReturn]
    public static void Refuse<T>(string name, T value, string allowed, string? hint = null)
        where T : struct
    {
        var kind = QuantityKinds.Of(typeof(T));
        var given = kind.ToSi(value) switch
        {
            var si when !double.IsFinite(si) => "not a finite number",
            // In a smaller unit it would be no number any more.
            var si when Math.Abs(si) > 1e100 => $"{si.ToString("0.###E+0", CultureInfo.InvariantCulture)} {kind.Symbol}".TrimEnd(),
            _ => QuantityFormat.Short(value),
        };
        var message = $"{name} must be {allowed} (was {given}).{(hint is null ? "" : " " + hint)}";
        throw new RefusedValueException(name, message);
    }

    /// <summary>Refuses a value that no calculation can be made with: beyond 10⁴⁰ of its SI unit, or closer to zero than 10⁻¹⁵⁰ of it without being zero.</summary>
    /// <typeparam name="T">A quantity or number; it may be negative.</typeparam>
    /// <param name="value">The value to check.</param>
    /// <param name="name">The parameter's name; filled in by the compiler.</param>
    /// <returns>The value.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is out of reach.</exception>
    public static T InReach<T>(T value, [CallerArgumentExpression(nameof(value))] string name = "")
        where T : struct, IComparisonOperators<T, T, bool>
    {
        var held = Reach<T>.Measured(value);
        if (!(held >= Reach<T>.Least && held <= Reach<T>.Most) && !(held <= Reach<T>.LeastBelow && held >= Reach<T>.MostBelow) && !IsZero(held))
            Refuse(name, value, $"{Reach<T>.InWords}, with either sign, or zero");
        return value;
    }

    // Not by ==: UnitsNet takes 0 ppm and 0 % for two values.
    private static bool IsZero<T>(T held)
        where T : struct, IComparisonOperators<T, T, bool> => held >= default(T) && held <= default(T);
}
