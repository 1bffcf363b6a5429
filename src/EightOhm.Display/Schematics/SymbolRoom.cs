using EightOhm.Circuits;
using EightOhm.Display.Figures;

namespace EightOhm.Display.Schematics;

/// <summary>The room that a symbol takes with its words and its ground.</summary>
internal static class SymbolRoom
{
    /// <summary>Between a symbol and its words.</summary>
    public const int LabelGap = 6;

    private const int Grid = PlacedSymbol.Grid;

    /// <summary>The box about its origin that a symbol takes with its words and its ground.</summary>
    public static Box Of(PlacedSymbol s)
    {
        var box = s.Symbol.Extent;
        double left = box.Left, right = box.Right, top = box.Top, bottom = box.Bottom;
        foreach (var (pin, net) in s.Symbol.Pins.Zip(s.Nets))
        {
            if (net != Circuit.Ground || s.Cell.Kind == PlanKind.Ground || pin.Out == default) continue;
            if (pin.Out == Way.Down) bottom = Math.Max(bottom, pin.Y + 24);
            else if (pin.Out == Way.ToRight) (right, bottom) = (Math.Max(right, pin.X + 30), Math.Max(bottom, pin.Y + 24));
            else if (pin.Out == Way.ToLeft) (left, bottom) = (Math.Min(left, pin.X - 30), Math.Max(bottom, pin.Y + 24));
        }

        if (s.Label is { } label && s.Symbol.NameRoom is null)
        {
            if (!s.Lies)
            {
                // Many lines are taller than the part.
                var middle = s.Symbol.Body.Top + (s.Symbol.Body.Height / 2);
                (top, bottom) = (Math.Min(top, middle - (label.Height / 2)), Math.Max(bottom, middle + (label.Height / 2)));
            }

            if (s.Cell.Kind is PlanKind.Node or PlanKind.Rail)
            {
                if (s.Cell.Column == 0) left -= label.Width + LabelGap + s.Spare;
                else right += label.Width + LabelGap + s.Spare;
            }
            else if (s.Lies || !s.IsPart || (s.Symbol.Pins.Any(p => p.Out == Way.ToLeft) && s.Symbol.Pins.Any(p => p.Out == Way.ToRight)))
            {
                var half = (label.Width / 2) + s.Spare;
                (left, right) = (Math.Min(left, -half), Math.Max(right, half));
                top = Math.Min(top, s.Symbol.Body.Top - 3 - label.Height - s.Spare);
            }
            else if (s.Symbol.Pins.Any(p => p.Out == Way.ToRight)) left -= label.Width + LabelGap + s.Spare;
            else right = Math.Max(right, Math.Max(s.Symbol.Body.Right, 4) + LabelGap + label.Width + s.Spare);
        }

        return new(left, top, right - left, bottom - top);
    }

    /// <summary>A length in whole tracks.</summary>
    public static int Up(double length) => (int)Math.Ceiling(length / Grid) * Grid;
}
