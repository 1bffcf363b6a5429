using System.Globalization;
using System.Xml.Linq;

namespace EightOhm.Display.Tests.Schematics;

/// <summary>Pictures with one thing wrong, to prove that the checker sees it.</summary>
internal static class DrawnMutants
{
    public static IEnumerable<(string What, string Svg)> Of(string svg)
    {
        var count = XDocument.Parse(svg).Root!;
        var lines = Wires(count).Sum(p => Pieces(p).Length);
        for (var i = 0; i < lines; i++)
        {
            yield return ($"line {i} taken out", Changed(svg, r => EditLine(r, i, _ => "")));
            yield return ($"line {i} cut short", Changed(svg, r => EditLine(r, i, Shortened)));
        }

        for (var i = 0; i < Dots(count).Length; i++)
        {
            yield return ($"dot {i} taken out", Changed(svg, r => Dots(r)[i].Remove()));
            yield return ($"dot {i} moved", Changed(svg, r => Add(Dots(r)[i].Attribute("cx")!, 10)));
        }

        for (var i = 0; i < Groups(count).Length; i++)
        {
            var pins = Groups(count)[i].Attribute("data-pins")!.Value.Split(';');
            for (var j = 1; j < pins.Length; j++)
                yield return ($"pins 0 and {j} of {Groups(count)[i].Attribute("data-name")!.Value} swapped", Changed(svg, r => Swap(Groups(r)[i].Attribute("data-pins")!, j)));
            if (pins.Length > 1)
                yield return ($"{Groups(count)[i].Attribute("data-name")!.Value} taken out", Changed(svg, r => Groups(r)[i].Remove()));
        }
    }

    private static string Changed(string svg, Action<XElement> change)
    {
        var document = XDocument.Parse(svg);
        change(document.Root!);
        return document.ToString(SaveOptions.DisableFormatting);
    }

    private static XElement[] Wires(XElement root) => [.. root.Elements().Single(e => e.Attribute("class")?.Value == "wires").Elements()];

    private static XElement[] Dots(XElement root) => [.. root.Elements().Single(e => e.Attribute("class")?.Value == "dots").Elements()];

    private static XElement[] Groups(XElement root) => [.. root.Elements().Where(e => e.Attribute("data-is") is not null)];

    private static string[] Pieces(XElement path) => [.. path.Attribute("d")!.Value.Split('M', StringSplitOptions.RemoveEmptyEntries)];

    private static void EditLine(XElement root, int index, Func<string, string> edit)
    {
        foreach (var path in Wires(root))
        {
            var pieces = Pieces(path);
            if (index < pieces.Length)
            {
                pieces[index] = edit(pieces[index]);
                var d = string.Concat(pieces.Where(p => p.Length > 0).Select(p => "M" + p));
                if (d.Length == 0) path.Remove();
                else path.Attribute("d")!.Value = d;
                return;
            }

            index -= pieces.Length;
        }
    }

    // Its last stretch ends five pixels further.
    private static string Shortened(string piece)
    {
        var at = piece.LastIndexOfAny(['H', 'V']) + 1;
        return piece[..at] + (DrawnPart.Number(piece[at..]) + 5).ToString(CultureInfo.InvariantCulture);
    }

    private static void Add(XAttribute attribute, double by) =>
        attribute.Value = (DrawnPart.Number(attribute.Value) + by).ToString(CultureInfo.InvariantCulture);

    private static void Swap(XAttribute pins, int with)
    {
        var all = pins.Value.Split(';').Select(p => p.Split(',')).ToArray();
        (all[0][0], all[with][0]) = (all[with][0], all[0][0]);
        pins.Value = string.Join(';', all.Select(p => string.Join(',', p)));
    }
}
