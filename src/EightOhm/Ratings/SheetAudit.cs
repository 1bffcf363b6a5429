using UnitsNet;

namespace EightOhm.Ratings;

/// <summary>A sheet read critically: the figures that cannot all be true, those that nothing could be held against, and what would tell.</summary>
public sealed class SheetAudit
{
    private readonly SpecSheet _sheet;

    private SheetAudit(SpecSheet sheet, SheetVerdict verdict, IReadOnlyList<SheetContradiction> contradictions, IReadOnlyList<IReadOnlyList<PrintedFigure>> equations, IReadOnlyList<PrintedFigure> unjudged, IReadOnlyList<string> wouldTell) =>
        (_sheet, Verdict, Contradictions, Equations, Unjudged, WouldTell) = (sheet, verdict, contradictions, equations, unjudged, wouldTell);

    /// <summary>The sheet.</summary>
    public SpecSheet Sheet => _sheet;

    /// <summary>The verdict.</summary>
    public SheetVerdict Verdict { get; }

    /// <summary>The contradictions, the one of the fewest figures first; each is as small as it can be.</summary>
    public IReadOnlyList<SheetContradiction> Contradictions { get; }

    /// <summary>The sheet as a set of equations: the figures that stand in one together, the shortest equations from which the rest follow.</summary>
    public IReadOnlyList<IReadOnlyList<PrintedFigure>> Equations { get; }

    /// <summary>Figures that no other figure of the sheet says anything about.</summary>
    public IReadOnlyList<PrintedFigure> Unjudged { get; }

    /// <summary>Figures not on the sheet, each of which would let an unjudged one be judged; where one is not enough, pairs.</summary>
    public IReadOnlyList<string> WouldTell { get; }

    /// <summary>The audit in words.</summary>
    public override string ToString() => string.Join('\n', Words());

    internal static SheetAudit Of(SpecSheet sheet)
    {
        List<(PrintedFigure Figure, SheetForm Form)> columns = [.. sheet.Figures.Select(f => (f, f.Form)), .. sheet.Figures.Where(f => f.Same is not null).Select(f => (f, f.Same!))];
        var forms = columns.Select(c => c.Form).ToList();
        var relations = SheetRelation.All(forms);
        var contradictions = Smallest(relations.Select(r => SheetContradiction.Of(r, columns)).OfType<SheetContradiction>().OrderBy(c => c.Figures.Count));
        var judged = relations.SelectMany(r => r.Figures).Select(i => columns[i].Figure).ToHashSet();
        var verdict = contradictions.Count > 0 ? SheetVerdict.Contradictory : relations.Count > 0 ? SheetVerdict.Consistent : SheetVerdict.CannotTell;
        var equations = SheetRelation.Independent(relations, columns.Count)
            .Select(IReadOnlyList<PrintedFigure> (r) => [.. r.Figures.Select(i => columns[i].Figure).Distinct()]).Where(e => e.Count > 1);
        return new(sheet, verdict, contradictions, [.. equations], [.. sheet.Figures.Where(f => !judged.Contains(f))], verdict == SheetVerdict.CannotTell ? Missing(forms) : []);
    }

    // A contradiction that holds a smaller one, or the same again, says nothing new.
    private static List<SheetContradiction> Smallest(IEnumerable<SheetContradiction> bySize)
    {
        var kept = new List<SheetContradiction>();
        foreach (var one in bySize)
            if (!kept.Any(k => k.Figures.All(one.Figures.Contains)))
                kept.Add(one);
        return kept;
    }

    // What, added to the sheet, would give the first relation.
    private static string[] Missing(List<SheetForm> forms)
    {
        if (forms.Count == 0)
            return [];
        var possible = Possible(forms);
        string[] single = [.. possible.Where(p => SheetRelation.All([.. forms, p]).Count > 0).Select(p => p.What)];
        if (single.Length > 0)
            return single;
        return [.. from i in Enumerable.Range(0, possible.Count)
                   from j in Enumerable.Range(i + 1, possible.Count - i - 1)
                   let relations = SheetRelation.All([.. forms, possible[i], possible[j]])
                   where relations.Any(r => r.Figures.Any(f => f < forms.Count))
                   select $"{possible[i].What} with {possible[j].What}"];
    }

    // The usual figures for the sheet's own loads (8 Ω where it has none) that it does not print.
    private static List<SheetForm> Possible(List<SheetForm> forms)
    {
        var loads = forms.Select(f => f.Load).OfType<ElectricResistance>().DistinctBy(r => r.Ohms).DefaultIfEmpty(ElectricResistance.FromOhms(8));
        var printed = forms.Select(f => f.What).ToHashSet(StringComparer.Ordinal);
        return [.. new[] { SheetForm.VoltageGain(), SheetForm.SlewRate(), SheetForm.NoiseDensity(), SheetForm.NoiseBandwidth(), SheetForm.NoiseAtInput() }
            .Concat(loads.SelectMany(r => new[] { SheetForm.RatedPower(r), SheetForm.Sensitivity(r), SheetForm.FullPowerBandwidth(r), SheetForm.DynamicHeadroom(r), SheetForm.BurstPower(r) }))
            .Where(f => !printed.Contains(f.What))];
    }

    private IEnumerable<string> Words()
    {
        yield return Verdict switch
        {
            SheetVerdict.Contradictory => $"{_sheet.Name}: the sheet contradicts itself.",
            SheetVerdict.Consistent => $"{_sheet.Name}: the figures can all be true within their roundings.",
            _ when _sheet.Figures.Count == 0 => $"{_sheet.Name}: cannot tell, the sheet has no figures.",
            _ => $"{_sheet.Name}: cannot tell, no figure can be held against another.",
        };
        foreach (var contradiction in Contradictions)
            yield return Sentence(contradiction.ToString());
        if (WouldTell.Count > 0)
            yield return $"What would tell: {string.Join("; or ", WouldTell)}.";
        if (Verdict != SheetVerdict.CannotTell && Unjudged.Count > 0)
            yield return $"Not judged, for nothing stands against it: {Lists.And([.. Unjudged.Select(f => f.ToString())])}.";
    }

    private static string Sentence(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
