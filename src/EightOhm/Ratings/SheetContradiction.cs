namespace EightOhm.Ratings;

/// <summary>Figures of a sheet that cannot all be true, however they were rounded; without any one of them the others could be.</summary>
public sealed class SheetContradiction
{
    private const double Tie = 1e-9;

    private readonly IReadOnlyList<string> _allowed;

    private SheetContradiction(IReadOnlyList<PrintedFigure> figures, IReadOnlyList<string> allowed) => (Figures, _allowed) = (figures, allowed);

    /// <summary>The figures.</summary>
    public IReadOnlyList<PrintedFigure> Figures { get; }

    /// <summary>The contradiction in a relation, or null where the roundings leave room for it.</summary>
    /// <param name="relation">The relation, over the columns.</param>
    /// <param name="columns">Each form of the sheet with its figure; a figure for two loads has two.</param>
    internal static SheetContradiction? Of(SheetRelation relation, IReadOnlyList<(PrintedFigure Figure, SheetForm Form)> columns)
    {
        var parts = relation.Terms.Select(t => (t.Index, t.Weight, Range: Range(t.Index, columns).Times(t.Weight))).ToList();
        if (parts.Aggregate(new Interval(0, 0), (sum, p) => sum.Plus(p.Range)) is { Low: <= Tie, High: >= -Tie })
            return null;
        var allowed = parts.Where(p => p.Index is { } i && columns[i].Form == columns[i].Figure.Form).Select(p =>
        {
            var figure = columns[p.Index!.Value].Figure;
            var others = parts.Where(o => o.Index != p.Index).Aggregate(new Interval(0, 0), (sum, o) => sum.Plus(o.Range)).Times(-1 / p.Weight);
            return $"{figure.What} {Say(figure, new Interval(others.Low + figure.Form.Constant, others.High + figure.Form.Constant))} (printed {figure.Text})";
        });
        return new([.. relation.Figures.Select(i => columns[i].Figure).Distinct()], [.. allowed]);
    }

    /// <summary>The contradiction in words: what cannot be, and for each figure what the others would have it be.</summary>
    public override string ToString() =>
        $"{SheetAudit.And(Figures.Select(f => f.ToString()))} cannot all be true. If the others hold: {string.Join("; ", _allowed)}.";

    // The logarithm less its constant; a slack is one or more.
    private static Interval Range(int? index, IReadOnlyList<(PrintedFigure Figure, SheetForm Form)> columns)
    {
        if (index is not { } i)
            return new Interval(0, double.PositiveInfinity);
        var (figure, form) = columns[i];
        return form == figure.Form ? new Interval(figure.Low - form.Constant, figure.High - form.Constant) : new Interval(-form.Constant, -form.Constant);
    }

    private static string Say(PrintedFigure figure, Interval range) => (double.IsInfinity(range.Low), double.IsInfinity(range.High)) switch
    {
        (true, _) => $"at most {figure.Say(range.High)}",
        (_, true) => $"at least {figure.Say(range.Low)}",
        _ when figure.Say(range.Low) == figure.Say(range.High) => $"about {figure.Say(range.Low)}",
        _ => $"{figure.Say(range.Low)} to {figure.Say(range.High)}",
    };

    private readonly record struct Interval(double Low, double High)
    {
        public Interval Plus(Interval other) => new(Low + other.Low, High + other.High);

        public Interval Times(double factor) => factor >= 0 ? new(Low * factor, High * factor) : new(High * factor, Low * factor);
    }
}
