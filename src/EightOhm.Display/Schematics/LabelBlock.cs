using EightOhm.Display.Figures;

namespace EightOhm.Display.Schematics;

/// <summary>How a line beside a symbol is written.</summary>
internal enum LabelRole { Name, Title, Value, Note }

/// <summary>A line of a label.</summary>
/// <param name="Text">As it stands in the circuit; a name is set with its subscript.</param>
/// <param name="Role">How it is written.</param>
internal readonly record struct LabelLine(string Text, LabelRole Role)
{
    public double Size => Role is LabelRole.Name or LabelRole.Title ? DrawnText.NameSize : DrawnText.ValueSize;

    public double Width => Role == LabelRole.Name ? DrawnText.Width(Text, Size) : DrawnText.Plain(Text, Size);
}

/// <summary>The lines that belong to one symbol, and where they stand once they are placed.</summary>
/// <param name="Lines">From top to bottom.</param>
internal sealed record LabelBlock(IReadOnlyList<LabelLine> Lines)
{
    /// <summary>A share from 0 to 1 drawn as a bar beneath; null where there is none.</summary>
    public double? Share { get; init; }

    public double Width => Math.Max(Lines.Max(l => l.Width), Share is null ? 0 : BarWidth);

    public double Height => (Lines.Count * DrawnText.Row) + (Share is null ? 0 : BarHeight + 3);

    /// <summary>Length of the bar of a share of one.</summary>
    public const double BarWidth = 46;

    public const double BarHeight = 5;
}

/// <summary>Lines that stand at a place.</summary>
internal sealed record SetLabel(PlacedSymbol? Of, LabelBlock Block, Box Box, TextAnchor Anchor)
{
    /// <summary>The node that it speaks of, where it belongs to a wire.</summary>
    public string? Node { get; init; }
}
