using EightOhm.OutputStages;
using UnitsNet;

namespace EightOhm.Sizing;

/// <summary>The harmonics that a stage makes of a sine, over its idle current: solved at steps of it when somebody asks, and straight between.</summary>
/// <param name="stage">The stage at its load.</param>
/// <param name="idle">Idle current of a pair as set.</param>
/// <param name="peak">Of the sine, at the output.</param>
internal sealed class SizedHarmonics(EmitterFollowerStage stage, ElectricCurrent idle, ElectricPotential peak)
{
    /// <summary>The highest that is looked at.</summary>
    public const int Highest = 4;

    // Of the idle current as set: between two of them a harmonic hardly bends.
    private const double Step = 0.02;

    // Of one period: the low harmonics of a crossover are in as many to far below a thousandth of them.
    private const int Samples = 512;
    private readonly Dictionary<int, double[]> known = [];

    /// <summary>The second and all higher ones, as fractions, at the ends of a range of the idle current, as multiples of what was set, and at the steps between: the worst may lie anywhere.</summary>
    public IEnumerable<double[]> Between(double from, double to)
    {
        yield return At(from);
        for (var i = (int)Math.Floor(from / Step) + 1; i * Step < to; i++)
            yield return Solved(i);
        yield return At(to);
    }

    /// <summary>The same at one idle current.</summary>
    public double[] At(double share)
    {
        var below = (int)Math.Floor(share / Step);
        var part = (share / Step) - below;
        return part < 1e-9 ? Solved(below) : [.. Solved(below).Zip(Solved(below + 1), (a, b) => a + (part * (b - a)))];
    }

    private double[] Solved(int i)
    {
        if (!known.TryGetValue(i, out var made))
        {
            var harmonics = stage.BiasedAt(i * Step * idle).Harmonics(peak, highest: Highest, Samples);
            known[i] = made = [.. Enumerable.Range(2, Highest - 1).Select(k => harmonics.Harmonic(k).DecimalFractions)];
        }

        return made;
    }
}
