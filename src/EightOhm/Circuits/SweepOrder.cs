using System.Numerics;

namespace EightOhm.Circuits;

/// <summary>In what order a matrix is eliminated at all frequencies of a sweep, and which entries that touches: found once.</summary>
/// <remarks>At one frequency in the middle of the sweep each step takes, among entries not much smaller than the largest of their column, the one that makes the
/// fewest new entries (Markowitz). At other frequencies the same order may be poor; the sweep checks what it solved and then does such a frequency by itself.
/// Source of the method: Duff, Erisman &amp; Reid, Direct Methods for Sparse Matrices, ch. 7.</remarks>
internal sealed class SweepOrder
{
    private const double Threshold = 0.1;

    private readonly int n;
    private readonly bool[] kept;
    private readonly int[] rowPlace, colPlace;

    public SweepOrder(LinearSystem system, double omega)
    {
        n = system.Count;
        kept = new bool[n * n];
        foreach (var s in system.Stamps)
            kept[(s.Row * n) + s.Col] = true;
        foreach (var d in system.Delays)
            kept[(d.Row * n) + d.Col] = true;
        (PivotRow, PivotCol, rowPlace, colPlace) = (new int[n], new int[n], new int[n], new int[n]);
        Array.Fill(rowPlace, -1);
        Array.Fill(colPlace, -1);
        var a = system.At(new Complex(0, omega));
        for (var k = 0; k < n && !Singular; k++)
            Step(k, a);
        (Slot, Rows) = (new int[n * n], new SweepRow[n]);
        if (!Singular)
            Lay();
    }

    /// <summary>Whether no pivot was left: the equations have no one solution at that frequency.</summary>
    public bool Singular { get; private set; }

    /// <summary>The row eliminated in each step.</summary>
    public int[] PivotRow { get; }

    /// <summary>The column eliminated in each step.</summary>
    public int[] PivotCol { get; }

    /// <summary>Where an entry is kept, by row·n + column; −1 where it is always zero.</summary>
    public int[] Slot { get; }

    /// <summary>How many entries are kept, those that arise while eliminating among them.</summary>
    public int Slots { get; private set; }

    /// <summary>The rows in the order of their pivots.</summary>
    public SweepRow[] Rows { get; }

    private void Step(int k, Complex[] a)
    {
        if (!Choose(a, out var r, out var q))
        {
            Singular = true;
            return;
        }

        (PivotRow[k], PivotCol[k], rowPlace[r], colPlace[q]) = (r, q, k, k);
        var inverse = 1 / a[(r * n) + q];
        for (var i = 0; i < n; i++)
        {
            if (rowPlace[i] >= 0 || !kept[(i * n) + q])
                continue;
            var factor = a[(i * n) + q] * inverse;
            for (var j = 0; j < n; j++)
            {
                if (colPlace[j] >= 0 || !kept[(r * n) + j])
                    continue;
                kept[(i * n) + j] = true;
                a[(i * n) + j] -= factor * a[(r * n) + j];
            }
        }
    }

    // Row after row in the order of the pivots, so that the rows that are read stand one behind the other.
    private void Lay()
    {
        Array.Fill(Slot, -1);
        var after = new int[n][];
        for (var i = 0; i < n; i++)
        {
            var row = PivotRow[i];
            int[] places = [.. Enumerable.Range(0, n).Where(k => kept[(row * n) + PivotCol[k]])];
            int[] before = [.. places.Where(k => k < i)];
            after[i] = [.. places.Where(k => k > i)];
            var first = Slots;
            foreach (var k in places)
                Slot[(row * n) + PivotCol[k]] = Slots++;
            Rows[i] = new(first, before, after[i], [.. before.Select(k => Targets(row, after[k]))], [.. before.Select((k, t) => t + 1 < before.Length && IsPair(after, k, before[t + 1]))]);
        }

        for (var i = 0; i + 1 < n; i++)
            Rows[i].IsTwin = AreTwins(Rows[i], Rows[i + 1], i);
    }

    // Two rows can be done together where they take up the same rows, the second the first too, and all that changes stands one behind the other.
    private static bool AreTwins(SweepRow first, SweepRow second, int i)
    {
        bool Runs(SweepRow row) => row.Targets.All(t => t.Length <= 1);
        return first.Before.Length > 1 && second.Before.Length == first.Before.Length + 1 && second.Before[^1] == i && second.Before.AsSpan(0, first.Before.Length).SequenceEqual(first.Before)
            && Runs(first) && Runs(second);
    }

    // Where a row takes up the entries of an earlier one; one number where they stand one behind the other.
    private int[] Targets(int row, int[] places)
    {
        int[] targets = [.. places.Select(j => Slot[(row * n) + PivotCol[j]])];
        for (var j = 1; j < targets.Length; j++)
            if (targets[j] != targets[0] + j)
                return targets;
        return targets.Length > 1 ? [targets[0]] : targets;
    }

    // Two steps can be done at once where the second has the columns of the first.
    private static bool IsPair(int[][] after, int first, int second) =>
        after[first].Length == after[second].Length + 1 && after[first][0] == second && after[first].AsSpan(1).SequenceEqual(after[second]);

    private bool Choose(Complex[] a, out int row, out int col)
    {
        (row, col) = (-1, -1);
        int[] inRow = new int[n], inCol = new int[n];
        var most = new double[n];
        for (var i = 0; i < n; i++)
        {
            if (rowPlace[i] >= 0)
                continue;
            for (var j = 0; j < n; j++)
            {
                if (colPlace[j] >= 0 || !kept[(i * n) + j])
                    continue;
                inRow[i]++;
                inCol[j]++;
                most[j] = Math.Max(most[j], Size(a[(i * n) + j]));
            }
        }

        var fewest = long.MaxValue;
        double best = 0;
        for (var i = 0; i < n; i++)
        {
            if (rowPlace[i] >= 0)
                continue;
            for (var j = 0; j < n; j++)
            {
                if (colPlace[j] >= 0 || !kept[(i * n) + j])
                    continue;
                var cost = (long)(inRow[i] - 1) * (inCol[j] - 1);
                var size = Size(a[(i * n) + j]);
                if (cost > fewest || !(size > 0) || size < Threshold * most[j] || !double.IsFinite(size))
                    continue;
                if (cost < fewest || size / most[j] > best)
                    (fewest, best, row, col) = (cost, size / most[j], i, j);
            }
        }

        return row >= 0;
    }

    private static double Size(Complex z) => Math.Abs(z.Real) + Math.Abs(z.Imaginary);
}

/// <summary>A row in the order of the pivots: its entries stand from <paramref name="First"/> on, those before the pivot, the pivot, those after it.</summary>
/// <param name="First">The slot of its first entry.</param>
/// <param name="Before">The steps whose pivots stand in it before its own.</param>
/// <param name="After">The steps whose columns it has after its pivot.</param>
/// <param name="Targets">For each of <paramref name="Before"/> the slots that change; the first alone where they stand one behind the other.</param>
/// <param name="Pairs">Whether a step and the next can be done at once.</param>
internal sealed record SweepRow(int First, int[] Before, int[] After, int[][] Targets, bool[] Pairs)
{
    /// <summary>Whether it can be done together with the next row.</summary>
    public bool IsTwin { get; set; }

    /// <summary>The slot of the pivot.</summary>
    public int Pivot => First + Before.Length;
}
