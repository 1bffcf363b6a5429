namespace EightOhm.Numerics;

/// <summary>e^x − 1 and its kin where x is small: the framework's <c>double.ExpM1</c> and <c>double.LogP1</c> subtract and lose every digit there.</summary>
/// <remarks>The rounding of e^x (of 1 + x) is undone by the logarithm of the rounded value: W. Kahan's device, in N. J. Higham, Accuracy and Stability of Numerical Algorithms, 2nd ed., sec. 1.14.1.</remarks>
internal static class Exponential
{
    /// <summary>e^x − 1, to a few units of the last place.</summary>
    public static double Expm1(double x)
    {
        var u = Math.Exp(x);
        if (u == 1)
            return x;
        var less = u - 1;
        return less == -1 || double.IsInfinity(u) ? less : less * (x / Math.Log(u));
    }

    /// <summary>ln(1 + x), to a few units of the last place.</summary>
    public static double Log1p(double x)
    {
        var u = 1 + x;
        return u == 1 || double.IsInfinity(u) ? x : Math.Log(u) * (x / (u - 1));
    }

    /// <summary>(e^x − 1)/x where e^x is known already: 1 at x = 0.</summary>
    /// <param name="x">The exponent.</param>
    /// <param name="exp">e^x.</param>
    public static double Expm1Over(double x, double exp) => Math.Abs(x) > 1e-3 ? (exp - 1) / x : 1 + (x / 2 * (1 + (x / 3 * (1 + (x / 4)))));
}
