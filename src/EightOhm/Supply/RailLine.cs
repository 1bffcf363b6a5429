using EightOhm.Numerics;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Supply;

/// <summary>A rail's voltage over the mean current that is taken from it, at any mains: what an output stage needs to know of its supply.</summary>
/// <remarks>
/// One rail, counted from the common point and positive, in the mean over the ripple. With the mains the emf moves and the drop
/// emf − rail stays, for the copper and the diodes stay: scaling the loaded rail would give too little heat at high mains.
/// </remarks>
public sealed class RailLine
{
    private readonly double[] means;
    private readonly double[] drops;
    private readonly double emf;

    private RailLine(double[] means, double[] drops, double emf) => (this.means, this.drops, this.emf) = (means, drops, emf);

    /// <summary>The emf that moves with the mains: the peak of the winding's voltage without load.</summary>
    public ElectricPotential Emf => ElectricPotential.FromVolts(emf);

    /// <summary>The highest mean current for which the rail is known.</summary>
    public ElectricCurrent MaxMean => ElectricCurrent.FromAmperes(means[^1]);

    /// <summary>A rail through solved or measured points, with straight lines between them.</summary>
    /// <param name="points">Mean current, rising from point to point, the first at 0 A or more, and the mean rail at it, falling; one point or more.</param>
    /// <param name="emf">Peak of the winding's voltage without load (√2 times its rms), not below the first rail: the part that moves with the mains.</param>
    /// <returns>The rail over mean current at nominal mains.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A current is negative or not above the one before, a rail is not positive, rises, or stands above the emf.</exception>
    /// <exception cref="ArgumentException">There is no point.</exception>
    public static RailLine Through(IReadOnlyList<(ElectricCurrent mean, ElectricPotential rail)> points, ElectricPotential emf)
    {
        ArgumentNullException.ThrowIfNull(points);
        if (points.Count == 0)
            throw new ArgumentException("points must hold one point or more: a mean current and the rail at it.", nameof(points));
        Guard.Positive(emf);
        double[] means = new double[points.Count], drops = new double[points.Count];
        for (var i = 0; i < means.Length; i++)
        {
            var (mean, rail) = points[i];
            Guard.NotNegative(mean, nameof(points));
            if (i > 0 && !(mean > points[i - 1].mean))
                Guard.Refuse(nameof(points), mean, $"above the current before it, {QuantityFormat.Short(points[i - 1].mean)}", "Give the points in the order of their currents.");
            Guard.Positive(rail, nameof(points));
            if (!(rail <= (i > 0 ? points[i - 1].rail : emf)))
                Guard.Refuse(nameof(points), rail, $"at most {(i > 0 ? $"the rail before it, {QuantityFormat.Short(points[i - 1].rail)}" : $"the emf, {QuantityFormat.Short(emf)}")}", "A rail falls as more is taken from it.");
            (means[i], drops[i]) = (mean.Amperes, (emf - rail).Volts);
        }

        return new(means, drops, emf.Volts);
    }

    /// <summary>A rail that no current moves, as of a bench supply; with the mains it is taken to move like an emf.</summary>
    /// <param name="V">The rail; greater than 0 V.</param>
    /// <returns>The same rail at every mean current.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The rail is not positive.</exception>
    public static RailLine Constant(ElectricPotential V) => new([0, double.MaxValue], [0, 0], Guard.Positive(V).Volts);

    /// <summary>The mean rail.</summary>
    /// <param name="mean">Mean current from this rail: Î/π a channel of a class-B sine, and what flows besides; within the range of the points.</param>
    /// <returns>The rail from the common point, mean over the ripple.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The current is outside the points.</exception>
    public ElectricPotential At(ElectricCurrent mean)
    {
        Guard.Between(mean, ElectricCurrent.FromAmperes(means[0]), MaxMean, hint: "The rail is known only over the currents of its points: give it more of them.");
        return ElectricPotential.FromVolts(AtAmperes(mean.Amperes));
    }

    /// <summary>The rail over the mean current of one channel, where several play alike on it.</summary>
    /// <param name="channels">How many channels play; 1 or more.</param>
    /// <param name="besides">What the rail gives away besides, all channels together: front ends and drivers; 0 A or more, below the last point.</param>
    /// <returns>The rail at n·mean + besides; what is given away besides stays at any mains.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public RailLine OfOne(int channels, ElectricCurrent besides)
    {
        double n = Guard.Positive(channels), first = Guard.NotNegative(besides).Amperes;
        Guard.Between(besides, ElectricCurrent.FromAmperes(means[0]), MaxMean, hint: "The rail is known only over the currents of its points.");
        int[] beyond = [.. Enumerable.Range(0, means.Length).Where(i => means[i] > first)];
        return new([0, .. beyond.Select(i => (means[i] - first) / n)], [Interpolation.Linear(means, drops, first), .. beyond.Select(i => drops[i])], emf);
    }

    /// <summary>The same rail at another mains: the emf goes with it, the drop stays.</summary>
    /// <param name="deviation">Mains over nominal, less one: 10.percent for high mains, (−10).percent for low; above −100 %.</param>
    /// <returns>A rail over the same currents.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The mains is not positive, or leaves nothing of the rail at its last point.</exception>
    public RailLine AtMains(Ratio deviation)
    {
        var moved = MainsDeviation.Factor(deviation) * emf;
        if (!(moved > drops[^1]))
            Guard.Refuse(nameof(deviation), deviation, $"above {QuantityFormat.Short(Ratio.FromDecimalFractions((drops[^1] / emf) - 1))}", "Below that the copper takes the whole emf at the highest current of the points.");
        return new(means, drops, moved);
    }

    /// <summary>In plain numbers, for a solver that stays within the points.</summary>
    internal double AtAmperes(double mean) => emf - Interpolation.Linear(means, drops, mean);
}
