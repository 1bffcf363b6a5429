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
    private readonly List<int> program = [];

    public SweepOrder(LinearSystem system, double omega)
    {
        n = system.Count;
        Slot = new int[n * n];
        Array.Fill(Slot, -1);
        foreach (var s in system.Stamps)
            Take(s.Row, s.Col);
        foreach (var d in system.Delays)
            Take(d.Row, d.Col);
        (PivotRow, PivotCol) = (new int[n], new int[n]);
        var a = system.At(new Complex(0, omega));
        bool[] rowDone = new bool[n], colDone = new bool[n];
        for (var k = 0; k < n && !Singular; k++)
            Step(k, a, rowDone, colDone);
        Program = [.. program];
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

    /// <summary>Each step: the pivot's slot, how many rows and columns; the rows' numbers and slots, the columns' numbers and slots; then row by row the slots that change.</summary>
    public int[] Program { get; }

    private int Take(int row, int col)
    {
        ref var slot = ref Slot[(row * n) + col];
        return slot >= 0 ? slot : slot = Slots++;
    }

    private void Step(int k, Complex[] a, bool[] rowDone, bool[] colDone)
    {
        if (!Choose(a, rowDone, colDone, out var r, out var q))
        {
            Singular = true;
            return;
        }

        (PivotRow[k], PivotCol[k], rowDone[r], colDone[q]) = (r, q, true, true);
        int[] rows = [.. Enumerable.Range(0, n).Where(i => !rowDone[i] && Slot[(i * n) + q] >= 0)];
        int[] cols = [.. Enumerable.Range(0, n).Where(j => !colDone[j] && Slot[(r * n) + j] >= 0)];
        program.AddRange([Slot[(r * n) + q], rows.Length, cols.Length]);
        foreach (var i in rows)
            program.AddRange([i, Slot[(i * n) + q]]);
        foreach (var j in cols)
            program.AddRange([j, Slot[(r * n) + j]]);
        foreach (var i in rows)
        {
            var factor = a[(i * n) + q] / a[(r * n) + q];
            foreach (var j in cols)
            {
                a[(i * n) + j] -= factor * a[(r * n) + j];
                program.Add(Take(i, j));
            }
        }
    }

    private bool Choose(Complex[] a, bool[] rowDone, bool[] colDone, out int row, out int col)
    {
        (row, col) = (-1, -1);
        var inRow = new int[n];
        for (var i = 0; i < n; i++)
            for (var j = 0; j < n; j++)
                inRow[i] += !rowDone[i] && !colDone[j] && Slot[(i * n) + j] >= 0 ? 1 : 0;
        long fewest = long.MaxValue;
        double best = 0;
        for (var j = 0; j < n; j++)
        {
            if (colDone[j])
                continue;
            double most = 0;
            var inCol = 0;
            for (var i = 0; i < n; i++)
            {
                if (rowDone[i] || Slot[(i * n) + j] < 0)
                    continue;
                inCol++;
                most = Math.Max(most, Complex.Abs(a[(i * n) + j]));
            }

            for (var i = 0; i < n; i++)
            {
                if (rowDone[i] || Slot[(i * n) + j] < 0)
                    continue;
                var size = Complex.Abs(a[(i * n) + j]);
                if (!(size > 0) || size < Threshold * most || !double.IsFinite(size))
                    continue;
                var cost = (long)(inRow[i] - 1) * (inCol - 1);
                if (cost < fewest || (cost == fewest && size / most > best))
                    (fewest, best, row, col) = (cost, size / most, i, j);
            }
        }

        return row >= 0;
    }
}
