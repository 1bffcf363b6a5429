namespace EightOhm.Ratings;

/// <summary>Figures of a sheet that cannot all be true, however they were rounded; without any one of them the others could be.</summary>
public sealed class SheetContradiction
{
    private const double Tie = 1e-9;

    private readonly IReadOnlyDictionary<PrintedFigure, string> _allowed;

    private SheetContradiction(IReadOnlyList<PrintedFigure> figures, IReadOnlyDictionary<PrintedFigure, string> allowed) => (Figures, _allowed) = (figures, allowed);

    /// <summary>The figures.</summary>
    public IReadOnlyList<PrintedFigure> Figures { get; }

    /// <summary>The contradiction in a relation, or null where the roundings leave room for it.</summary>
    /// <param name="relation">The relation, over the columns.</param>
    /// <param name="columns">Each form of the sheet with its figure; a figure for two loads has two.</param>
    internal static SheetContradiction? Of(SheetRelation relation, IReadOnlyList<(PrintedFigure Figure, SheetForm Form)> columns)
    {
        var parts = relation.Terms.Select(t => (t.Index, t.Weight, Range: Range(t.Index, columns).Times(t.Weight))).ToList();
        if (parts.Aggregate(new LogRange(0, 0), (sum, p) => sum.Plus(p.Range)) is { Low: <= Tie, High: >= -Tie })
            return null;
        var allowed = new Dictionary<PrintedFigure, string>();
        foreach (var p in parts.Where(p => p.Index is { } i && columns[i].Form == columns[i].Figure.Form))
        {
            var figure = columns[p.Index!.Value].Figure;
            var others = parts.Where(o => o.Index != p.Index).Aggregate(new LogRange(0, 0), (sum, o) => sum.Plus(o.Range)).Times(-1 / p.Weight);
            allowed[figure] = others.Plus(figure.Form.Constant).Say(figure.Kind);
        }

        return new([.. relation.Figures.Select(i => columns[i].Figure).Distinct()], allowed);
    }

    /// <summary>What a figure of the contradiction would have to be if the others hold; empty where they say nothing of it.</summary>
    /// <param name="figure">A figure of the contradiction.</param>
    public string IfTheOthersHold(PrintedFigure figure) => _allowed.GetValueOrDefault(figure, "");

    /// <summary>The contradiction in words: what cannot be, and for each figure what the others would have it be.</summary>
    public override string ToString() =>
        $"{Lists.And([.. Figures.Select(f => f.ToString())])} cannot all be true. If the others hold: {string.Join("; ", _allowed.Select(a => $"{a.Key.What} {a.Value} (printed {a.Key.Text})"))}.";

    // The logarithm less its constant; a slack is one or more.
    private static LogRange Range(int? index, IReadOnlyList<(PrintedFigure Figure, SheetForm Form)> columns)
    {
        if (index is not { } i)
            return new LogRange(0, double.PositiveInfinity);
        var (figure, form) = columns[i];
        return form == figure.Form ? new LogRange(figure.Low - form.Constant, figure.High - form.Constant) : new LogRange(-form.Constant, -form.Constant);
    }

}
