using EightOhm.Explaining;
using EightOhm.Quantities;
using EightOhm.Samples;
using UnitsNet;

namespace EightOhm.Feedback;

/// <summary>How a response to a step of 1 settles.</summary>
/// <param name="Final">Where it comes to rest: the gain at 0 Hz.</param>
/// <param name="RiseTime">From 10 % to 90 % of that, the first time.</param>
/// <param name="Overshoot">How far it goes beyond, of the final value; 0 where it does not.</param>
/// <param name="SettlingTime">After which it stays within 1 %.</param>
public sealed record StepFigures(
    [property: Symbol("A_0")] Gain Final,
    [property: Symbol("t_r")] Duration RiseTime,
    [property: Symbol("OS")] Ratio Overshoot,
    [property: Symbol("t_s")] Duration SettlingTime)
{
    private const int Points = 20_001;

    internal static StepFigures Of(TransferFunction function)
    {
        if (!function.IsStable)
            throw new InvalidOperationException($"This does not settle: it has poles in the right half-plane or on its edge ({string.Join(", ", function.Poles.Where(p => p.Damping <= 0))}). A closed loop of this kind oscillates; move its crossover down or its other poles up.");
        if (function.IsZero || function.ZerosInS.Contains(System.Numerics.Complex.Zero))
            throw new InvalidOperationException("This settles to nothing, as a coupling capacitor does: overshoot and settling are told of the final value. Leave the coupling out.");
        var final = function.AtZero();
        // Sixteen time constants of the slowest pole leave a ten-millionth of it; a pole that a zero nearly hides is waited for all the same.
        var slowest = function.PolesInS.Count == 0 ? 0 : 16 / function.PolesInS.Min(p => -p.Real);
        if (slowest == 0)
            return new(Gain.FromRatio(final), default, default, Duration.FromSeconds(function.DelaySeconds));
        var wave = Refined(function, final, slowest + (2 * function.DelaySeconds));
        var (t, y) = (wave.X, wave.Y.Select(v => v / final).ToArray());
        var settled = Array.FindLastIndex(y, v => Math.Abs(v - 1) > 0.01);
        return new(
            Gain.FromRatio(final),
            Duration.FromSeconds(Crossed(t, y, 0.9) - Crossed(t, y, 0.1)),
            Ratio.FromDecimalFractions(Math.Max(0, y.Max() - 1)),
            Duration.FromSeconds(settled < 0 ? 0 : settled + 1 < y.Length ? Between(t, y, settled, Math.Sign(y[settled] - 1) * 0.01 + 1) : t[^1]));
    }

    // A slow pole that does little would leave no points for what matters: look again over the time in which 1 % is left.
    private static Waveform<double> Refined(TransferFunction function, double final, double seconds)
    {
        var wave = function.Step(seconds.s, Points);
        for (var i = 0; i < 6; i++)
        {
            var last = 0;
            for (var k = 0; k < wave.Count; k++)
                last = Math.Abs((wave.Y[k] / final) - 1) > 0.005 ? k : last;
            if (last > Points / 20 || last == 0)
                return wave;
            wave = function.Step((wave.X[last] * 3).s, Points);
        }

        return wave;
    }

    private static double Crossed(IReadOnlyList<double> t, double[] y, double level)
    {
        var i = Array.FindIndex(y, v => v >= level);
        return i <= 0 ? 0 : Between(t, y, i - 1, level);
    }

    private static double Between(IReadOnlyList<double> t, double[] y, int i, double level) => t[i] + ((t[i + 1] - t[i]) * (level - y[i]) / (y[i + 1] - y[i]));
}
