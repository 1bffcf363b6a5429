using UnitsNet;

namespace EightOhm.Ratings;

/// <summary>Sheets side by side in common figures.</summary>
public sealed class SheetComparison
{
    private const int Digits = 3;

    private SheetComparison(IReadOnlyList<SpecSheet> sheets, IReadOnlyList<SheetRow> rows) => (Sheets, Rows) = (sheets, rows);

    /// <summary>The sheets, in the order given.</summary>
    public IReadOnlyList<SpecSheet> Sheets { get; }

    /// <summary>The figures, one a row; those that no sheet gives or implies are left out.</summary>
    public IReadOnlyList<SheetRow> Rows { get; }

    internal static SheetComparison Of(IReadOnlyList<SpecSheet> sheets)
    {
        ArgumentNullException.ThrowIfNull(sheets);
        if (sheets.Count == 0)
            throw new ArgumentException("A comparison needs at least one sheet.", nameof(sheets));
        var rows = Common(sheets).Select(form => new SheetRow(form.What, [.. sheets.Select(sheet => Cell(sheet, form))]));
        return new([.. sheets], [.. rows.Where(r => r.Cells.Any(c => c.Origin != SheetCellOrigin.Unknown))]);
    }

    // The common figures, for every load that a sheet names.
    private static IEnumerable<SheetForm> Common(IReadOnlyList<SpecSheet> sheets)
    {
        var loads = sheets.SelectMany(s => s.Figures).Select(f => f.Form.Load).OfType<ElectricResistance>().DistinctBy(r => r.Ohms).OrderByDescending(r => r.Ohms).ToList();
        var usual = new[] { SheetForm.VoltageGain(), SheetForm.SlewRate(), SheetForm.NoiseDensity(), SheetForm.NoiseBandwidth(), SheetForm.NoiseAtInput() }
            .Concat(loads.SelectMany(r => new[]
            {
                SheetForm.RatedPower(r), SheetForm.RatedVoltage(r), SheetForm.PeakCurrent(r), SheetForm.Sensitivity(r), SheetForm.FullPowerBandwidth(r), SheetForm.DynamicHeadroom(r), SheetForm.BurstPower(r),
                SheetForm.SnrAt(Power.FromWatts(1), r, ""), SheetForm.SnrAtRated(r, ""),
            }))
            .Append(SheetForm.Snr(ElectricPotential.FromVolts(1), ""));
        // What a sheet prints besides, such as an A-weighted ratio, has a row of its own.
        var printed = sheets.SelectMany(s => s.Figures).Where(f => f.Same is null).Select(f => f.Form);
        return usual.Concat(printed).DistinctBy(f => f.What).OrderBy(f => Order(f.What));
    }

    private static int Order(string what)
    {
        string[] order = ["rated power", "rms voltage", "peak current", "burst", "dynamic", "gain", "sensitivity", "slew", "full-power", "input noise", "noise band", "corner", "total", "SNR"];
        var place = Array.FindIndex(order, what.StartsWith);
        return place < 0 ? order.Length : place;
    }

    private static SheetCell Cell(SpecSheet sheet, SheetForm wanted)
    {
        if (sheet.Figures.FirstOrDefault(f => f.Says.Contains(wanted.What)) is { } printed)
            return new(printed.Text, SheetCellOrigin.Printed);
        List<SheetForm> forms = [.. sheet.Figures.Select(f => f.Form), wanted];
        var last = forms.Count - 1;
        var ranges = SheetRelation.All(forms).Where(r => r.Figures.Contains(last)).OrderBy(r => r.Terms.Count).Select(relation =>
        {
            var mine = relation.Terms.Single(t => t.Index == last).Weight;
            var others = relation.Terms.Where(t => t.Index != last)
                .Aggregate(new LogRange(0, 0), (sum, t) => sum.Plus(Range(t.Index).Times(t.Weight)));
            return others.Times(-1 / mine).Plus(wanted.Constant);
        });
        return ranges.Cast<LogRange?>().FirstOrDefault() is { } range
            ? new(range.Say(forms[last].Kind(), Digits), SheetCellOrigin.Follows)
            : new("–", SheetCellOrigin.Unknown);

        LogRange Range(int? index) => index is { } i
            ? new LogRange(sheet.Figures[i].Low, sheet.Figures[i].High).Plus(-forms[i].Constant)
            : new LogRange(0, double.PositiveInfinity);
    }
}

/// <summary>A figure across the sheets.</summary>
/// <param name="What">The figure in words.</param>
/// <param name="Cells">One for each sheet.</param>
public sealed record SheetRow(string What, IReadOnlyList<SheetCell> Cells);

/// <summary>A figure of one sheet.</summary>
/// <param name="Text">As printed, or the range that follows from other figures.</param>
/// <param name="Origin">Where it comes from.</param>
public sealed record SheetCell(string Text, SheetCellOrigin Origin);

/// <summary>Where a figure of a comparison comes from.</summary>
public enum SheetCellOrigin
{
    /// <summary>Nothing on the sheet says it.</summary>
    Unknown,

    /// <summary>The sheet prints it.</summary>
    Printed,

    /// <summary>It follows from other figures of the sheet, within their roundings.</summary>
    Follows,
}
