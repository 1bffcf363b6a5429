using EightOhm.Circuits;

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
                return Lines(notes.At(name) is { } voltage ? [new(name, LabelRole.Name), new(voltage, LabelRole.Note)] : [new(name, LabelRole.Name)], null);
        }

        var element = symbol.Element!;
        if (element.Kind is ElementKind.Block or ElementKind.Delay)
        {
            var spoken = BlockSymbol.Lines(element);
            var names = BlockSymbol.NameLines(element);
            return Lines([.. spoken.Select((l, i) => new LabelLine(l, i < names ? LabelRole.Title : LabelRole.Value))], null);
        }

        var lines = new List<LabelLine> { new(name, LabelRole.Name) };
        if (SchematicWords.Value(element, notes) is { Length: > 0 } value && symbol.Symbol.NameRoom is null)
            lines.Add(new(value, LabelRole.Value));
        lines.AddRange(notes.Beside(name).Where(n => lines.All(l => l.Text != n)).Select(n => new LabelLine(n, LabelRole.Note)).ToArray());
        return Lines(lines, notes.Bar(name));
    }

    private static LabelBlock Lines(IReadOnlyList<LabelLine> lines, double? share) => new(lines) { Share = share };
}
