namespace EightOhm.Numerics;

/// <summary>What an exponential does in a step of time, without losing digits when the step is short.</summary>
internal static class Decay
{
    /// <summary>1 − exp(−x).</summary>
    public static double Gone(double x) => -Exponential.Expm1(-x);

    /// <summary>1 − (1 − exp(−x))/x: the weight of the end of a ramp.</summary>
    public static double Ramp(double x) => x > 1e-2
        ? 1 - (Gone(x) / x)
        : x / 2 * (1 - (x / 3 * (1 - (x / 4 * (1 - (x / 5 * (1 - (x / 6 * (1 - (x / 7))))))))));
}
