using System.Numerics;
using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Feedback;

/// <content>The factors that transfer functions are made of.</content>
public sealed partial class TransferFunction
{
    /// <summary>A gain without poles and zeros.</summary>
    /// <param name="A">The gain, with its sign.</param>
    /// <returns>A transfer function of order 0.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The gain is out of reach.</exception>
    public static TransferFunction Constant(Gain A) => Constant(Guard.InReach(A).Ratio);

    /// <summary>A factor without poles and zeros.</summary>
    /// <param name="k">The factor, with its sign; of whatever unit the function is to have.</param>
    /// <returns>A transfer function of order 0.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The factor is out of reach.</exception>
    public static TransferFunction Constant(double k) => new(Guard.InReach(k), [], [], 0);

    /// <summary>One pole: 1/(1 + j·f/f_p), a gain of 1 far below it.</summary>
    /// <param name="f_p">Its corner; greater than 0 Hz.</param>
    /// <returns>A transfer function of order 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The corner is not positive.</exception>
    /// <example><code>TransferFunction.Pole(8.MHz)</code></example>
    public static TransferFunction Pole(Frequency f_p)
    {
        var w = Radians(f_p);
        return new(w, [], [-w], 0);
    }

    /// <summary>One zero: 1 + j·f/f_z, a gain of 1 far below it. Improper by itself.</summary>
    /// <param name="f_z">Its corner; greater than 0 Hz.</param>
    /// <returns>A transfer function with one zero.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The corner is not positive.</exception>
    public static TransferFunction Zero(Frequency f_z)
    {
        var w = Radians(f_z);
        return new(1 / w, [-w], [], 0);
    }

    /// <summary>A zero in the right half-plane: 1 − j·f/f_z, which lags as a pole does while its gain rises.</summary>
    /// <remarks>The Miller capacitor's own way forward past the second stage makes one, at g_m2/(2π·C).</remarks>
    /// <param name="f_z">Its corner; greater than 0 Hz.</param>
    /// <returns>A transfer function with one zero.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The corner is not positive.</exception>
    public static TransferFunction RightZero(Frequency f_z)
    {
        var w = Radians(f_z);
        return new(-1 / w, [w], [], 0);
    }

    /// <summary>A pair of poles: 1/(1 + j·f/(Q·f_0) − (f/f_0)²), a gain of 1 far below them.</summary>
    /// <param name="f_0">The natural frequency; greater than 0 Hz.</param>
    /// <param name="Q">The quality factor; greater than 0. Up to ½ both are real.</param>
    /// <returns>A transfer function of order 2.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    public static TransferFunction Pair(Frequency f_0, double Q)
    {
        var w = Radians(f_0);
        return new(w * w, [], Quadratic(w, Guard.Positive(Q)), 0);
    }

    /// <summary>A pair of zeros: 1 + j·f/(Q·f_0) − (f/f_0)².</summary>
    /// <param name="f_0">The natural frequency; greater than 0 Hz.</param>
    /// <param name="Q">The quality factor; greater than 0. Up to ½ both are real.</param>
    /// <returns>A transfer function with two zeros.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    public static TransferFunction ZeroPair(Frequency f_0, double Q)
    {
        var w = Radians(f_0);
        return new(1 / (w * w), Quadratic(w, Guard.Positive(Q)), [], 0);
    }

    /// <summary>An integrator: f_u/(j·f), with a gain of 1 at f_u. A stage with a capacitor from its output to its input, far above its first pole.</summary>
    /// <param name="f_u">Where the gain is one; greater than 0 Hz.</param>
    /// <returns>A transfer function of order 1, its pole at 0 Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is not positive.</exception>
    public static TransferFunction Integrator(Frequency f_u) => new(Radians(f_u), [], [0], 0);

    /// <summary>A differentiator: j·f/f_u, with a gain of 1 at f_u. Improper by itself.</summary>
    /// <param name="f_u">Where the gain is one; greater than 0 Hz.</param>
    /// <returns>A transfer function with a zero at 0 Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is not positive.</exception>
    public static TransferFunction Differentiator(Frequency f_u) => new(1 / Radians(f_u), [0], [], 0);

    /// <summary>A coupling: (j·f/f_c)/(1 + j·f/f_c), a gain of 1 far above it.</summary>
    /// <param name="f_c">Its corner; greater than 0 Hz.</param>
    /// <returns>A transfer function of order 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The corner is not positive.</exception>
    public static TransferFunction HighPass(Frequency f_c) => new(1, [0], [-Radians(f_c)], 0);

    /// <summary>A delay: all frequencies later by the same time, none louder or softer.</summary>
    /// <remarks>In a response it is exact. Where poles are asked for (a closed loop, a step) it stands as a quotient of polynomials of order 6 (Padé),
    /// which at three radians of delay is still right to a ten-thousandth of a degree.</remarks>
    /// <param name="t_d">The delay; 0 s or more.</param>
    /// <returns>A transfer function of order 0 with a delay.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The delay is negative.</exception>
    public static TransferFunction Delayed(Duration t_d) => new(1, [], [], Guard.NotNegative(t_d).Seconds);

    /// <summary>From the coefficients of two polynomials in s (rad/s), rising powers.</summary>
    /// <remarks>For a function that a book or a node equation gives so. Roots of polynomials whose coefficients are rounded are themselves uncertain: give factors where there are any.</remarks>
    /// <param name="numerator">Coefficients of 1, s, s² …; at least one not zero.</param>
    /// <param name="denominator">Coefficients of 1, s, s² …; at least one not zero.</param>
    /// <returns>The transfer function of their quotient.</returns>
    /// <exception cref="ArgumentException">A list is empty or holds nothing but zeros.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A coefficient is not finite.</exception>
    public static TransferFunction OfPolynomials(IReadOnlyList<double> numerator, IReadOnlyList<double> denominator)
    {
        var (above, zeros) = Rooted(numerator, nameof(numerator));
        var (below, poles) = Rooted(denominator, nameof(denominator));
        return new(above / below, zeros, poles, 0);
    }

    private static double Radians(Frequency f, [System.Runtime.CompilerServices.CallerArgumentExpression(nameof(f))] string name = "") => 2 * Math.PI * Guard.Positive(f, name).Hertz;

    private static Complex[] Quadratic(double w, double q)
    {
        if (q > 0.5)
        {
            var root = new Complex(-w / (2 * q), w * Math.Sqrt(1 - (1 / (4 * q * q))));
            return [root, Complex.Conjugate(root)];
        }

        // The smaller root from the product, so that it keeps its digits.
        var larger = -w / (2 * q) * (1 + Math.Sqrt(1 - (4 * q * q)));
        return [larger, w * w / larger];
    }

    private static (double Lead, Complex[] Roots) Rooted(IReadOnlyList<double> coefficients, string name)
    {
        ArgumentNullException.ThrowIfNull(coefficients, name);
        if (coefficients.Count == 0 || coefficients.All(c => c == 0))
            throw new ArgumentException("A polynomial has at least one coefficient that is not zero. Give them in rising powers of s.", name);
        if (coefficients.Count > MaxOrder + 1)
            throw new ArgumentException($"A polynomial of up to {MaxOrder + 1} coefficients is allowed (had {coefficients.Count}).", name);
        foreach (var c in coefficients)
            Guard.InReach(c, name);
        double[] trimmed = [.. coefficients.Reverse().SkipWhile(c => c == 0).Reverse()];
        return (trimmed[^1], Numerics.PolynomialRoots.Of(trimmed));
    }
}
