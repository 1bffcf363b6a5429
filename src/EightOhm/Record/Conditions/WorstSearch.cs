using EightOhm.Numerics;

namespace EightOhm.Record;

/// <summary>The search for the highest and the lowest value over conditions. What it reports is never better than any point that it looked at.</summary>
/// <remarks>
/// Every combination (ends and middle of a range, each case, both ends of a spread) where that is few enough. Otherwise it climbs from the middle, one
/// condition at a time, throws random probes, and climbs once more from the best of them. Ranges are then followed between the places looked at: five
/// looks along the range, and a golden section about the best. A peak within a range narrower than a quarter of it, away from all looks, can be missed.
/// </remarks>
internal sealed class WorstSearch
{
    /// <summary>How many combinations are still tried one by one.</summary>
    private const int MostCombinations = 200;

    private const int Probes = 48;
    private const int MostPasses = 24;

    // Of a range: a smooth top is flat, so its value is known far better than its place.
    private const double Width = 1e-4;

    // Of a range: whether the values still rise inwards from an end is seen this near to it.
    private const double Step = 1e-3;

    // Of the values' span: a pass that gains less has arrived.
    private const double Gain = 1e-7;

    private readonly IReadOnlyList<Condition> conditions;
    private readonly WorstLooks looks;
    private readonly ulong seed;

    public WorstSearch(IReadOnlyList<Condition> conditions, WorstLooks looks, ulong seed)
    {
        (this.conditions, this.looks, this.seed) = (conditions, looks, seed);
        Method = conditions.Aggregate(1.0, (n, c) => n * c.Places.Count) <= MostCombinations ? WorstMethod.EveryCombination : WorstMethod.Search;
    }

    /// <summary>Which way it goes.</summary>
    public WorstMethod Method { get; }

    /// <summary>Takes the looks.</summary>
    /// <param name="highest">Whether the highest is sought.</param>
    /// <param name="lowest">Whether the lowest is sought.</param>
    /// <exception cref="RefusedPointException">A point has no value.</exception>
    public void Run(bool highest, bool lowest)
    {
        Span<int> senses = highest && lowest ? [1, -1] : highest ? [1] : [-1];
        if (Method == WorstMethod.EveryCombination)
            EveryCombination();
        else
            Middle();
        foreach (var sense in senses)
            Climb(Best(sense), sense);
        if (Method == WorstMethod.EveryCombination)
            return;

        var probes = RandomProbes();
        foreach (var sense in senses)
            Climb(probes.MaxBy(p => sense * looks.At(p))!, sense);
    }

    /// <summary>The best number along each condition with the others at the worst, and its place.</summary>
    /// <param name="sense">1 when the worst is the highest, −1 when it is the lowest.</param>
    public IReadOnlyList<(double Place, double Number)> LeastAlong(int sense)
    {
        while (true)
        {
            var worst = Best(sense);
            (double Place, double Number)[] least = [.. conditions.Select((_, i) => Top(Line.Along(worst, i), i, -sense))];
            if (ReferenceEquals(worst, Best(sense)))
                return least;
            Climb(Best(sense), sense); // the looks for the least found something worse
        }
    }

    private double[] Best(int sense) => sense > 0 ? looks.Highest.Point : looks.Lowest.Point;

    private void Middle() => looks.At([.. conditions.Select(c => c.Places[0])]);

    private void EveryCombination()
    {
        var point = new double[conditions.Count];
        Fill(0);

        void Fill(int i)
        {
            if (i == point.Length)
            {
                looks.At(point);
                return;
            }

            foreach (var place in conditions[i].Places)
            {
                point[i] = place;
                Fill(i + 1);
            }
        }
    }

    // A range's ends are as likely as all between them: the worst is at an end more often than not.
    private List<double[]> RandomProbes()
    {
        var random = new SplitMix(seed);
        var probes = new List<double[]>(Probes);
        for (var k = 0; k < Probes; k++)
        {
            var point = new double[conditions.Count];
            for (var i = 0; i < point.Length; i++)
                point[i] = conditions[i] is { IsContinuous: true } ? Math.Clamp((random.Fraction() * 2) - 0.5, 0, 1) : conditions[i].Places[random.Below(conditions[i].Places.Count)];
            looks.At(point);
            probes.Add(point);
        }

        return probes;
    }

    private void Climb(double[] from, int sense)
    {
        double[] point = [.. from];
        double[]? last = null;
        var value = looks.At(point);
        for (var pass = 0; pass < MostPasses; pass++)
        {
            var start = value;
            for (var i = 0; i < point.Length; i++)
                Move(Line.Along(point, i), i);

            // A ridge that runs across ranges is climbed in small steps. Each pass ends where the last range is at its best, and of a quadratic
            // in two ranges all such points lie on one line through the top: follow it.
            double[] end = [.. point];
            if (last is not null && Line.Through(last, end, conditions) is { } line)
                Move(line, null);
            last = end;
            if (sense * (value - start) <= Gain * looks.Span)
                return;
        }

        void Move(Line line, int? along)
        {
            var (place, number) = Top(line, along, sense);
            if (!WorstLooks.Above(sense * number, sense * value))
                return;
            line.To(place, point);
            value = number;
        }
    }

    // The top of the values along a line; of a list of cases, the best of all.
    private (double Place, double Number) Top(Line line, int? along, int sense)
    {
        if (along is { } i && !conditions[i].IsContinuous)
            return conditions[i].Places.Select(p => (p, Along(p))).MaxBy(p => sense * p.Item2);

        Span<double> at = [0, 0.25, 0.5, 0.75, 1], values = stackalloc double[5];
        var best = 0;
        for (var k = 0; k < at.Length; k++)
        {
            values[k] = sense * Along(at[k]);
            if (WorstLooks.Above(values[k], values[best]))
                best = k;
        }

        var (low, high) = (Math.Max(best - 1, 0), Math.Min(best + 1, at.Length - 1));
        var rises = best == 0 ? WorstLooks.Above(sense * Along(Step), values[0])
            : best == at.Length - 1 ? WorstLooks.Above(sense * Along(1 - Step), values[best])
            : WorstLooks.Above(values[best], values[low]) || WorstLooks.Above(values[best], values[high]);
        if (!rises)
            return (at[best], sense * values[best]);
        var top = GoldenSection.Highest(x => sense * Along(x), at[low], at[high], Width);
        return WorstLooks.Above(top.Value, values[best]) ? (top.At, sense * top.Value) : (at[best], sense * values[best]);

        double Along(double place) => looks.At(line.At(place));
    }
}
