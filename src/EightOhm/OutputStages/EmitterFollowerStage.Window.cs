using EightOhm.Explaining;
using EightOhm.Numerics;
using EightOhm.Quantities;
using MathNet.Numerics.RootFinding;
using UnitsNet;

namespace EightOhm.OutputStages;

/// <content>How far the bias may be off.</content>
public sealed partial record EmitterFollowerStage
{
    /// <summary>The idle currents between which a promise of static distortion holds at an output level, about the current of least distortion.</summary>
    /// <remarks>The promise is the stage's own: what feedback leaves of it is <c>LoopErrors</c>' matter. Give the share of the amplifier's promise that the stage may take, times |1 + T| at the harmonics.</remarks>
    /// <param name="level">Peak output voltage (not rms); greater than 0 V.</param>
    /// <param name="promise">Static distortion that must not be passed; greater than 0.</param>
    /// <param name="upTo">The highest idle current of one device to consider; four times the equal-gain current when not given.</param>
    /// <param name="highest">The highest harmonic counted; 2 to 1000.</param>
    /// <example><code>var window = stage.Transfer(R_L, V_pk).BiasWindow(V_pk, 100.ppm);</code></example>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <exception cref="ShortfallException">No bias keeps the promise; the message says by how much the best one misses it.</exception>
    /// <exception cref="InvalidOperationException">The solver did not converge; the message gives its last state.</exception>
    [Worked("the idle currents on either side of the least distortion at which it is just the promise: bracketed root searches over the logarithm of the current")]
    public BiasWindow BiasWindow(ElectricPotential level, Ratio promise, ElectricCurrent? upTo = null, int highest = 10)
    {
        var limit = Guard.Positive(promise).DecimalFractions;
        var best = LeastDistortionBias(level, upTo, highest);
        if (best.StaticThd > promise)
            throw new ShortfallException($"Static distortion at {QuantityFormat.Short(level)}", best.StaticThd - promise, $"the best bias, {QuantityFormat.Short(best.IdleCurrent)} a transistor, has {QuantityFormat.Short(best.StaticThd)}", "Take more pairs, smaller emitter resistors, or more loop gain.");
        double Over(double logarithm) => Math.Log(DistortionAt([ElectricCurrent.FromAmperes(Math.Exp(logarithm))], level, highest).Distortions[0] / limit);
        double middle = Math.Log(best.IdleCurrent.Amperes), top = Math.Log(best.HighestIdle.Amperes), bottom = middle;
        // A class-B stage of no bias at all passes any promise worth the name: some current below is too little.
        while (Over(bottom) <= 0 && bottom > middle - 12)
            bottom -= 0.5;
        var least = Over(bottom) <= 0 ? bottom : Root(Over, bottom, Math.Min(bottom + 0.5, middle));
        // The distortion may fall again in class A: the first crossing upwards counts.
        double? above = Scan.FirstAbove(Over, middle, top, 24) is var (a, b) ? Root(Over, a, b) : null;
        return new(ElectricCurrent.FromAmperes(Math.Exp(least)), best.IdleCurrent, above is { } u ? ElectricCurrent.FromAmperes(Math.Exp(u)) : null, promise, best.StaticThd, best.HighestIdle);
    }

    private static double Root(Func<double, double> over, double low, double high)
    {
        if (over(low) == 0)
            return low;
        return Brent.TryFindRoot(over, low, high, 1e-8, 100, out var root)
            ? root
            : throw new InvalidOperationException(FormattableString.Invariant($"No idle current was found between {Math.Exp(low):G4} A and {Math.Exp(high):G4} A at which the distortion is the promise."));
    }
}
