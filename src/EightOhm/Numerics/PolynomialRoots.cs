using System.Numerics;

namespace EightOhm.Numerics;

/// <summary>The roots of a polynomial with real coefficients.</summary>
internal static class PolynomialRoots
{
    /// <summary>The roots, each complex one beside its conjugate.</summary>
    /// <param name="coefficients">Of rising powers, the last not zero.</param>
    public static Complex[] Of(double[] coefficients)
    {
        var zeros = coefficients.TakeWhile(c => c == 0).Count();
        var inner = coefficients[zeros..];
        var degree = inner.Length - 1;
        if (degree == 0)
            return new Complex[zeros];
        // The middle of the roots' sizes, so that numbers stay near one.
        var scale = Math.Exp((Math.Log(Math.Abs(inner[0])) - Math.Log(Math.Abs(inner[^1]))) / degree);
        var near = inner.Select((c, i) => c * Math.Pow(scale, i) / inner[0]).ToArray();
        var roots = Aberth.Roots(FirstGuess.Of(near), s => Step(near, s), s => LeftOver(near, s));
        Conjugates.Settle(roots);
        return [.. new Complex[zeros], .. roots.Select(r => r * scale)];
    }

    private static Complex Step(double[] c, Complex s)
    {
        Complex value = c[^1], slope = 0;
        for (var i = c.Length - 2; i >= 0; i--)
        {
            slope = (slope * s) + value;
            value = (value * s) + c[i];
        }

        return value / slope;
    }

    private static double LeftOver(double[] c, Complex s)
    {
        Complex value = c[^1];
        double whole = Math.Abs(c[^1]), size = s.Magnitude;
        for (var i = c.Length - 2; i >= 0; i--)
        {
            value = (value * s) + c[i];
            whole = (whole * size) + Math.Abs(c[i]);
        }

        return whole == 0 ? 0 : value.Magnitude / whole;
    }
}
