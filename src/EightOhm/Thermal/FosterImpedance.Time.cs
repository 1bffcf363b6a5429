using EightOhm.Explaining;
using EightOhm.Numerics;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Thermal;

/// <content>How long a power may last.</content>
public sealed partial class FosterImpedance
{
    /// <summary>How long a constant power may last before the junction has risen by so much above the far end; null when it never does.</summary>
    /// <param name="dT">The rise allowed; greater than 0 K.</param>
    /// <param name="P">The power; greater than 0 W.</param>
    /// <returns>The time at which P·Z_th(t) is the rise.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    /// <exception cref="InvalidOperationException">The time was not found.</exception>
    [Worked("the time at which power times transient impedance is the rise: a bracketed root search over the logarithm of the time")]
    public Duration? TimeTo(TemperatureDelta dT, Power P)
    {
        var allowed = Guard.Positive(dT).Kelvins / (double)Guard.Positive(P).Watts;
        if (allowed >= Steady.Si)
            return null;
        double Over(double u)
        {
            var (t, z) = (Math.Exp(u), 0.0);
            for (var i = 0; i < _r.Length; i++)
                z += _r[i] * Decay.Gone(t / _tau[i]);
            return (z / allowed) - 1;
        }

        // Below, the rise is at most t·ΣR/τ; above, what is missing from the steady rise has died away.
        var (fast, slow) = (_r.Zip(_tau, (r, tau) => r / tau).Sum(), _tau.Max());
        double low = Math.Log(allowed / fast) - 1e-6, high = Math.Log(slow * (2 + Math.Log(Steady.Si / (Steady.Si - allowed)))) + 1e-6;
        if (!MathNet.Numerics.RootFinding.Brent.TryFindRoot(Over, low, high, 1e-13, 200, out var u))
            throw new InvalidOperationException($"No time was found at which {QuantityFormat.Short(P)} warm the junction by {QuantityFormat.Short(dT)}.");
        return Duration.FromSeconds(Math.Exp(u));
    }
}
