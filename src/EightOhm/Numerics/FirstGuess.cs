using System.Numerics;

namespace EightOhm.Numerics;

/// <summary>Where the roots of a polynomial may lie: circles whose radii the sizes of the coefficients tell.</summary>
/// <remarks>The upper hull of the logarithms of the coefficients: each of its edges is a circle with as many roots as it spans (D. A. Bini, Numerical Algorithms 13, 1996).</remarks>
internal static class FirstGuess
{
    /// <summary>A guess for each root.</summary>
    /// <param name="coefficients">Of rising powers, the last not zero.</param>
    public static Complex[] Of(double[] coefficients)
    {
        var degree = coefficients.Length - 1;
        var logs = coefficients.Select(c => c == 0 ? double.NegativeInfinity : Math.Log(Math.Abs(c))).ToArray();
        List<int> hull = [];
        for (var i = 0; i <= degree; i++)
        {
            if (double.IsNegativeInfinity(logs[i]))
                continue;
            while (hull.Count > 1 && Slope(logs, hull[^2], hull[^1]) <= Slope(logs, hull[^2], i))
                hull.RemoveAt(hull.Count - 1);
            hull.Add(i);
        }

        var guess = new Complex[degree];
        var k = 0;
        // Coefficients of zero below the first that is not are roots at the origin: begin beside it.
        while (k < hull[0])
            guess[k++] = Complex.FromPolarCoordinates(1e-12, 0.7 + k);
        for (var edge = 1; edge < hull.Count; edge++)
        {
            int from = hull[edge - 1], to = hull[edge], count = to - from;
            var radius = Math.Exp(-Slope(logs, from, to));
            for (var j = 0; j < count; j++)
                guess[k++] = Complex.FromPolarCoordinates(radius, (2 * Math.PI * j / count) + (0.7 * edge) + 0.4);
        }

        return guess;
    }

    private static double Slope(double[] logs, int from, int to) => (logs[to] - logs[from]) / (to - from);
}
