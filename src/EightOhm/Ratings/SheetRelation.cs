using System.Numerics;

namespace EightOhm.Ratings;

/// <summary>A relation between printed figures with everything unprinted eliminated, and none of them to spare: Σ weight·(ln figure − constant) = 0.</summary>
/// <remarks>Each figure stands in it once, so interval arithmetic over it is exact. And these relations are enough: linear equations within
/// bounds have no solution only where one of their elementary combinations has none (Rockafellar's theorem on elementary vectors).</remarks>
/// <param name="Terms">Figures by their index, and slacks by null, each with its weight.</param>
internal sealed record SheetRelation(IReadOnlyList<(int? Index, double Weight)> Terms)
{
    private const double Nothing = 1e-9;

    public IEnumerable<int> Figures => Terms.Where(t => t.Index is not null).Select(t => t.Index!.Value);

    /// <summary>The relations of the fewest figures from which all others follow: as many as are independent.</summary>
    public static IReadOnlyList<SheetRelation> Independent(IReadOnlyList<SheetRelation> relations, int forms)
    {
        var kept = new List<SheetRelation>();
        var rows = new List<double[]>();
        foreach (var relation in relations.OrderBy(r => r.Terms.Count))
        {
            var row = new double[forms];
            foreach (var (index, weight) in relation.Terms)
                if (index is { } i)
                    row[i] = weight;
            foreach (var known in rows)
            {
                var lead = Array.FindIndex(known, x => x != 0);
                var factor = row[lead] / known[lead];
                for (var i = 0; i < forms; i++)
                    row[i] = Math.Abs(row[i] - (factor * known[i])) < Nothing ? 0 : row[i] - (factor * known[i]);
            }

            if (row.All(x => x == 0))
                continue;
            rows.Add(row);
            kept.Add(relation);
        }

        return kept;
    }

    /// <summary>All relations among forms.</summary>
    public static IReadOnlyList<SheetRelation> All(IReadOnlyList<SheetForm> forms)
    {
        // A slack is a column as well: it stands for one or more and is never printed.
        var slacks = forms.Select(f => f.Slack).OfType<string>().Distinct().ToList();
        var unknowns = forms.SelectMany(f => f.Terms.Select(t => t.Unknown)).Concat(slacks).Distinct().ToList();
        double[][] columns = [.. forms.Select(f => Column(unknowns, [.. f.Terms, .. f.Slack is { } s ? [(s, -1.0)] : Array.Empty<(string, double)>()])), .. slacks.Select(s => Column(unknowns, [(s, 1)]))];
        var found = new List<(long Set, SheetRelation Relation)>();
        for (var size = 1; size <= Math.Min(columns.Length, unknowns.Count + 1); size++)
        {
            Work.Checkpoint();
            foreach (var set in Subsets(columns.Length, size))
            {
                if (found.Any(f => (f.Set & set) == f.Set))
                    continue;
                int[] members = [.. Enumerable.Range(0, columns.Length).Where(i => (set & (1L << i)) != 0)];
                if (Dependency([.. members.Select(i => columns[i])]) is { } weights)
                    found.Add((set, new SheetRelation([.. members.Select((m, i) => (m < forms.Count ? m : (int?)null, weights[i]))])));
            }
        }

        return [.. found.Select(f => f.Relation)];
    }

    // The subsets of a size, in order.
    private static IEnumerable<long> Subsets(int count, int size)
    {
        for (long set = (1L << size) - 1; set < 1L << count;)
        {
            yield return set;
            var lowest = set & -set;
            var ripple = set + lowest;
            set = ripple | (((set ^ ripple) >> 2) >> BitOperations.TrailingZeroCount(lowest));
        }
    }

    private static double[] Column(List<string> unknowns, IReadOnlyList<(string Unknown, double Weight)> terms)
    {
        var column = new double[unknowns.Count];
        foreach (var (unknown, weight) in terms)
            column[unknowns.IndexOf(unknown)] += weight;
        return column;
    }

    // The weights that make the columns vanish, or null. No smaller set is dependent, so the last column is a combination of the others.
    private static double[]? Dependency(double[][] columns)
    {
        int count = columns.Length, rows = columns[0].Length;
        var m = new double[rows, count];
        for (var c = 0; c < count; c++)
            for (var r = 0; r < rows; r++)
                m[r, c] = columns[c][r];
        for (var c = 0; c < count - 1; c++)
        {
            var pivot = Enumerable.Range(c, rows - c).MaxBy(r => Math.Abs(m[r, c]));
            for (var k = 0; k < count; k++)
                (m[c, k], m[pivot, k]) = (m[pivot, k], m[c, k]);
            for (var r = 0; r < rows; r++)
            {
                if (r == c || m[r, c] == 0)
                    continue;
                var factor = m[r, c] / m[c, c];
                for (var k = c; k < count; k++)
                    m[r, k] -= factor * m[c, k];
            }
        }

        for (var r = count - 1; r < rows; r++)
            if (Math.Abs(m[r, count - 1]) > Nothing)
                return null;
        return [.. Enumerable.Range(0, count - 1).Select(c => -m[c, count - 1] / m[c, c]), 1];
    }
}
