using EightOhm.Explaining;
using EightOhm.Numerics;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Supply;

/// <summary>A rail's voltage over the mean current that is taken from it, at any mains: what an output stage needs to know of its supply.</summary>
/// <remarks>
/// One rail, counted from the common point and positive, in the mean over the ripple. With the mains the emf moves and the drop
/// emf − rail stays, for the copper and the diodes stay: scaling the loaded rail would give too little dissipation at high mains.
/// </remarks>
public sealed class RailLine
{
    private readonly double[] means;
    private readonly double[] drops;
    private readonly double emf;

    // The rail is that of n·mean + besides.
    private readonly double channels;
    private readonly double besides;
    private readonly bool solved;

    private RailLine(double[] means, double[] drops, double emf, bool solved, double channels = 1, double besides = 0) =>
        (this.means, this.drops, this.emf, this.solved, this.channels, this.besides) = (means, drops, emf, solved, channels, besides);

    /// <summary>The emf that moves with the mains: the peak of the winding's voltage without load.</summary>
    public ElectricPotential Emf => ElectricPotential.FromVolts(emf);

    /// <summary>The highest mean current for which the rail is known.</summary>
    public ElectricCurrent MaxMean => ElectricCurrent.FromAmperes((means[^1] - besides) / channels);

    /// <summary>A rail through measured or computed points, with straight lines between them.</summary>
    /// <param name="points">Mean current, rising from point to point, the first at 0 A or more, and the mean rail at it, falling; one point or more.</param>
    /// <param name="emf">Peak of the winding's voltage without load (√2 times its rms), not below the first rail: the part that moves with the mains.</param>
    /// <returns>The rail over mean current at nominal mains.</returns>
    /// <example><code>var rail = RailLine.Through([(0.A, 51.V), (2.A, 48.5.V), (6.A, 45.5.V)], emf: 52.5.V);</code></example>
    /// <exception cref="ArgumentOutOfRangeException">A current is negative or not above the one before, a rail is not positive, rises, or stands above the emf.</exception>
    /// <exception cref="ArgumentException">There is no point.</exception>
    public static RailLine Through(IReadOnlyList<(ElectricCurrent mean, ElectricPotential rail)> points, ElectricPotential emf) => Through(points, emf, false);

    /// <summary>A rail that no current moves, as of a bench supply; with the mains it is taken to move like an emf.</summary>
    /// <param name="V">The rail; greater than 0 V.</param>
    /// <returns>The same rail at every mean current.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The rail is not positive.</exception>
    public static RailLine Constant(ElectricPotential V) => new([0, double.MaxValue], [0, 0], Guard.Positive(V).Volts, false);

    /// <summary>The mean rail.</summary>
    /// <param name="mean">Mean current from this rail: Î/π a channel of a class-B sine, and what flows besides; within the range of the points.</param>
    /// <returns>The rail from the common point, mean over the ripple.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The current is outside the points.</exception>
    [Worked("read from the points of the line, straight between them")]
    public ElectricPotential At(ElectricCurrent mean)
    {
        Guard.Between(mean, ElectricCurrent.FromAmperes(Math.Max(0, (means[0] - besides) / channels)), MaxMean, hint: "The rail is known only over the currents of its points: give it more of them.");
        return ElectricPotential.FromVolts(AtAmperes(mean.Amperes));
    }

    /// <summary>The rail over the mean current of one channel, where several play alike on it.</summary>
    /// <param name="channels">How many channels play; 1 or more.</param>
    /// <param name="besides">What the rail gives away besides, all channels together: front ends and drivers; 0 A or more, within the points.</param>
    /// <returns>The rail at n·mean + besides; what is given away besides stays at any mains.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public RailLine OfOne(int channels, ElectricCurrent besides)
    {
        Guard.Positive(channels);
        Guard.Between(Guard.NotNegative(besides), default, MaxMean, hint: "The rail is known only over the currents of its points.");
        return new(means, drops, emf, solved, this.channels * channels, this.besides + (this.channels * besides.Amperes));
    }

    /// <summary>The same rail at another mains: the emf goes with it, the drop stays.</summary>
    /// <remarks>The line of a solved supply follows the law of its circuit exactly: where emf and current grow together, so does all of the drop that is not the
    /// diode's. So at an emf of m times, rail + V_D is m times what it was at a current of 1/m.</remarks>
    /// <param name="deviation">Mains over nominal, less one: 10.percent for high mains, (−10).percent for low; above −100 %.</param>
    /// <returns>The rail at that mains.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The mains is not positive, or leaves nothing of the rail at its last point.</exception>
    public RailLine AtMains(Ratio deviation)
    {
        double m = MainsDeviation.Factor(deviation), moved = m * emf, diode = drops[0];
        double[] currents = solved ? [.. means.Select(i => m * i)] : means, lost = solved ? [.. drops.Select(d => diode + (m * (d - diode)))] : drops;
        if (!(moved > lost[^1]))
            Guard.Refuse(nameof(deviation), deviation, $"above {QuantityFormat.Short(Ratio.FromDecimalFractions(((solved ? diode : drops[^1]) / emf) - 1))}", "Below that nothing is left of the rail at the highest current of its points.");
        return new(currents, lost, moved, solved, channels, besides);
    }

    /// <summary>In plain numbers, for a solver that stays within the points.</summary>
    internal double AtAmperes(double mean) => emf - Interpolation.Linear(means, drops, (channels * mean) + besides);

    /// <summary>The line of a solved circuit, its first point at 0 A, where the diode alone drops.</summary>
    internal static RailLine OfCircuit(IReadOnlyList<(ElectricCurrent mean, ElectricPotential rail)> points, ElectricPotential emf) => Through(points, emf, true);

    private static RailLine Through(IReadOnlyList<(ElectricCurrent mean, ElectricPotential rail)> points, ElectricPotential emf, bool solved)
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

        return new(means, drops, emf.Volts, solved);
    }
}
