namespace EightOhm.Display.Figures;

/// <summary>A place in the picture, in pixels from its top left corner.</summary>
internal readonly record struct Point(double X, double Y);

/// <summary>An upright rectangle in the picture.</summary>
internal readonly record struct Box(double Left, double Top, double Width, double Height)
{
    public double Right => Left + Width;
    public double Bottom => Top + Height;

    public bool Overlaps(Box other) =>
        Left < other.Right && other.Left < Right && Top < other.Bottom && other.Top < Bottom;

    public bool Holds(Box other) =>
        other.Left >= Left && other.Right <= Right && other.Top >= Top && other.Bottom <= Bottom;

    public bool Holds(Point p) => p.X >= Left && p.X <= Right && p.Y >= Top && p.Y <= Bottom;

    public Box Grow(double by) => new(Left - by, Top - by, Width + 2 * by, Height + 2 * by);
}

/// <summary>Which point of a text its x is.</summary>
internal enum TextAnchor { Start, Middle, End }

/// <summary>What a text is for, and so how it looks.</summary>
internal enum TextRole { Title, Soft, Legend, End, Mark, Limit, Value }

/// <summary>Lines of text at a place; <paramref name="Top"/> is the upper edge of the first line.</summary>
internal sealed record TextBlock(IReadOnlyList<string> Lines, double X, double Top, TextAnchor Anchor, double Size, TextRole Role)
{
    public const double LineHeight = 1.25;

    /// <summary>The line style whose colour it wears, if it names a line.</summary>
    public int? Style { get; init; }

    public double Height => Lines.Count * Size * LineHeight;

    public Box Bounds
    {
        get
        {
            var width = Lines.Count == 0 ? 0 : Lines.Max(line => TextMetrics.Width(line, Size));
            return new(X - width * (int)Anchor / 2, Top, width, Height);
        }
    }

    public static Box Extent(IReadOnlyList<string> lines, double size) => new TextBlock(lines, 0, 0, TextAnchor.Start, size, TextRole.Soft).Bounds;
}

/// <summary>Text that belongs to a place of the data, so that it can move with it in the interactive picture.</summary>
/// <param name="Text">The text where it stands in the static picture.</param>
/// <param name="Pin">The place that it belongs to.</param>
/// <param name="X">That place's x value; null when it belongs to the frame and not to a value.</param>
/// <param name="Y">That place's y value; null when it belongs to the frame and not to a value.</param>
internal sealed record PinnedLabel(TextBlock Text, Point Pin, double? X = null, double? Y = null)
{
    /// <summary>Whether a line leads from the place to the text.</summary>
    public bool HasLeader { get; init; }
}
