using System.Globalization;
using System.Net;
using System.Text;
using System.Xml.Linq;
using EightOhm.Ratings;

namespace EightOhm.Display.Figures;

/// <summary>A data sheet as a set of equations: its figures in a column, and for each equation a line that joins the figures in it.</summary>
/// <remarks>What cannot all be true is joined by a broken line with crosses, so that colour is not the only sign. One static picture, light and dark.</remarks>
public static class SheetDiagram
{
    private const double Row = 26, Top = 64, Left = 20, Size = 14, Step = 30;

    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    /// <summary>The picture as a piece of HTML.</summary>
    /// <param name="audit">The audit of a sheet of at least one figure.</param>
    /// <exception cref="ArgumentException">The sheet has no figures.</exception>
    public static string Render(SheetAudit audit)
    {
        var (svg, width, height) = Draw(audit);
        return string.Create(CultureInfo.InvariantCulture, $"""
            <figure class="eo-diagram" style="margin:1em 0;max-width:{width}px">
            <img src="data:image/svg+xml;base64,{Convert.ToBase64String(Encoding.UTF8.GetBytes(svg))}" alt="{WebUtility.HtmlEncode(Words(audit))}" width="{width}" height="{height}" style="max-width:100%;height:auto">
            </figure>
            """);
    }

    /// <summary>The picture in words.</summary>
    /// <param name="audit">The audit.</param>
    public static string Words(SheetAudit audit)
    {
        ArgumentNullException.ThrowIfNull(audit);
        var joined = Lines(audit).Select(l => $"{string.Join(", ", l.Figures.Select(f => f.ToString()))} {(l.Wrong ? "cannot all be true" : "stand in one equation")}");
        return $"{audit.Sheet.Name} as a set of equations: {string.Join("; ", joined)}.";
    }

    internal static (string Svg, double Width, double Height) Draw(SheetAudit audit)
    {
        ArgumentNullException.ThrowIfNull(audit);
        var figures = audit.Sheet.Figures;
        if (figures.Count == 0)
            throw new ArgumentException($"{audit.Sheet.Name} has no figures to draw.", nameof(audit));
        var lines = Lines(audit);
        var what = figures.Max(f => TextMetrics.Width(f.What, Size));
        var value = figures.Max(f => TextMetrics.Width(f.Text, Size));
        var first = Left + what + 24 + value + 28;
        var width = Math.Ceiling(Math.Max(first + (lines.Count * Step) + 10, TextMetrics.Width(Title(audit), 16) + (2 * Left)));
        var height = Top + (figures.Count * Row) + 34;
        var svg = new XElement(Svg + "svg", new XAttribute("viewBox", $"0 0 {SvgWriter.N(width)} {SvgWriter.N(height)}"),
            N("width", width), N("height", height), new XAttribute("role", "img"), new XAttribute("aria-label", Words(audit)),
            new XElement(Svg + "style", Palette.StyleSheet([0], 0) + ".l0,.rule{fill:none;stroke-width:2}"),
            new XElement(Svg + "rect", new XAttribute("class", "paper"), N("width", width), N("height", height)),
            Text(Title(audit), Left, 26, 16, "title"),
            figures.SelectMany((f, i) => new[]
            {
                new XElement(Svg + "path", new XAttribute("class", "minor"), new XAttribute("d", $"M{SvgWriter.N(Left)} {SvgWriter.N(Y(i) + (Row / 2))}H{SvgWriter.N(width - 10)}")),
                Text(f.What, Left, Y(i) + 5, Size, "soft"),
                Text(f.Text, Left + what + 24 + value, Y(i) + 5, Size, "", "end"),
            }),
            lines.SelectMany((line, n) => Line(line, [.. line.Figures.Select(f => Y(IndexOf(figures, f))).Order()], first + (n * Step))),
            Text(lines.Any(l => l.Wrong) ? "● one equation   × cannot all be true" : "● one equation", Left, height - 12, 12, "soft"));
        return (svg.ToString(SaveOptions.DisableFormatting), width, height);
    }

    private static IEnumerable<XElement> Line((IReadOnlyList<PrintedFigure> Figures, bool Wrong) line, double[] ys, double x)
    {
        var path = new XElement(Svg + "path", new XAttribute("class", line.Wrong ? "rule" : "l0"), new XAttribute("d", $"M{SvgWriter.N(x)} {SvgWriter.N(ys[0])}V{SvgWriter.N(ys[^1])}"));
        if (line.Wrong)
            path.Add(new XAttribute("stroke-dasharray", "6 4"));
        yield return path;
        foreach (var y in ys)
            yield return line.Wrong
                ? new XElement(Svg + "path", new XAttribute("class", "rule"), new XAttribute("d", $"M{SvgWriter.N(x - 5)} {SvgWriter.N(y - 5)}l10 10m0 -10l-10 10"))
                : new XElement(Svg + "circle", new XAttribute("class", "f0"), N("cx", x), N("cy", y), N("r", 4.5));
    }

    // The equations that hold, then what cannot be: an equation that is broken stands once, among the latter.
    private static List<(IReadOnlyList<PrintedFigure> Figures, bool Wrong)> Lines(SheetAudit audit) =>
    [
        .. audit.Equations.Where(e => !audit.Contradictions.Any(c => c.Figures.ToHashSet().SetEquals(e))).Select(e => (e, false)),
        .. audit.Contradictions.Select(c => (c.Figures, true)),
    ];

    private static string Title(SheetAudit audit) => $"{audit.Sheet.Name}: the sheet as a set of equations";

    private static double Y(int row) => Top + (row * Row);

    private static int IndexOf(IReadOnlyList<PrintedFigure> figures, PrintedFigure one) => figures.TakeWhile(f => f != one).Count();

    private static XElement Text(string text, double x, double y, double size, string role, string anchor = "start") => new(Svg + "text",
        role.Length > 0 ? new XAttribute("class", role) : null, N("x", x), N("y", y), N("font-size", size),
        anchor == "start" ? null : new XAttribute("text-anchor", anchor), text);

    private static XAttribute N(string name, double value) => new(name, SvgWriter.N(value));
}
