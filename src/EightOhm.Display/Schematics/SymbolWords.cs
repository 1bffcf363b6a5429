using EightOhm.Circuits;
using EightOhm.Quantities;

namespace EightOhm.Display.Schematics;

/// <summary>The lines that belong to a symbol.</summary>
internal static class SymbolWords
{
    public static LabelBlock? Of(Circuit circuit, PlacedSymbol symbol, Annotations notes)
    {
        var name = symbol.Cell.Name;
        switch (symbol.Cell.Kind)
        {
            case PlanKind.Bend or PlanKind.Ground:
                return null;
            case PlanKind.Node or PlanKind.Rail:
                return Lines([new(name, LabelRole.Name), .. Note(notes, name)], null);
        }

        var element = symbol.Element!;
        if (element.Kind is ElementKind.Block or ElementKind.Delay)
        {
            var spoken = BlockSymbol.Lines(element);
            var names = BlockSymbol.NameLines(element);
            return Lines([.. spoken.Select((l, i) => new LabelLine(l, i < names ? LabelRole.Title : LabelRole.Value))], null);
        }

        var lines = new List<LabelLine> { new(name, LabelRole.Name) };
        if (DrawnText.Value(element) is { Length: > 0 } value && symbol.Symbol.NameRoom is null)
            lines.Add(new(value, LabelRole.Value));
        lines.AddRange(Note(notes, name));
        double? share = notes.Shares.TryGetValue(name, out var s) ? s : null;
        if (share is { } part)
            lines.Add(new(QuantityFormat.Short(UnitsNet.Ratio.FromDecimalFractions(part)), LabelRole.Note));
        return Lines(lines, share);
    }

    private static LabelBlock Lines(IReadOnlyList<LabelLine> lines, double? share) => new(lines) { Share = share };

    private static IEnumerable<LabelLine> Note(Annotations notes, string name) =>
        notes.Words.TryGetValue(name, out var words) ? [new(words, LabelRole.Note)] : [];
}
