using System.Collections.Concurrent;
using System.Globalization;
using System.Net;
using System.Text;
using EightOhm.Circuits;
using EightOhm.Display.Figures;

namespace EightOhm.Display.Schematics;

/// <summary>The drawing of a circuit with the symbols of IEC 60617, laid out by the circuit's plan.</summary>
/// <remarks>It is drawn when it is first looked at, and drawn once for the same content. Source of the symbols: IEC 60617.</remarks>
public sealed class Schematic
{
    private const int MostKept = 256;

    private static readonly ConcurrentDictionary<string, SchematicPicture> Kept = new(StringComparer.Ordinal);

    private readonly Circuit circuit;
    private readonly Annotations notes;
    private readonly Lazy<SchematicPicture> picture;

    internal Schematic(Circuit circuit, string title, Annotations notes)
    {
        (this.circuit, Title, this.notes) = (circuit, title, notes);
        AltText = SchematicWords.Describe(circuit, title, notes);
        picture = new(Picture);
    }

    /// <summary>The title above the drawing; empty where there is none.</summary>
    public string Title { get; }

    /// <summary>The drawing in words: its parts with their values, and the nodes that they join.</summary>
    public string AltText { get; }

    /// <summary>Whether the circuit says where its parts stand. Without, its list of parts is shown in place of a drawing.</summary>
    public bool IsPlanned => circuit.PlanText is not null || circuit.Elements.Any(e => e.Place is not null);

    /// <summary>The drawing as SVG: complete by itself, dark where its reader asks for it.</summary>
    /// <exception cref="ArgumentException">The plan does not fit the circuit.</exception>
    public string Svg => picture.Value.Svg;

    /// <summary>The same for a telephone: a drawing too wide for it is cut into stages that stand one under another, with named ends where a wire goes on. Null where the one drawing serves both.</summary>
    /// <exception cref="ArgumentException">The plan does not fit the circuit.</exception>
    public string? NarrowSvg => picture.Value.Narrow;

    /// <summary>The parts and nodes as lines of text.</summary>
    public override string ToString() =>
        string.Join(Environment.NewLine, SchematicWords.Lines(circuit, notes).Prepend(Title).Where(l => l.Length > 0));

    /// <summary>The drawing as a piece of HTML: a static picture that needs no script.</summary>
    /// <exception cref="ArgumentException">The plan does not fit the circuit.</exception>
    internal string Html()
    {
        if (!IsPlanned)
            return $"<pre class=\"eo-words\">{WebUtility.HtmlEncode(ToString())}</pre>";
        var (svg, width, height, narrow) = picture.Value;
        // A page without the source for telephones, as some hosts leave it, still has the picture.
        var (open, close) = narrow is null ? ("", "") : ($"<picture><source media=\"(max-width:479px)\" srcset=\"{Address(narrow)}\">", "</picture>");
        var title = Title.Length == 0 ? "" : $"<figcaption style=\"font-weight:600\">{Formulas.SymbolHtml.Write(Title)}</figcaption>\n";
        return string.Create(CultureInfo.InvariantCulture, $"""
            <figure class="eo-schematic" id="{ContentId.Of(svg)}" style="margin:1em 0;max-width:{width}px">
            {title}{open}<img src="{Address(svg)}" alt="{WebUtility.HtmlEncode(AltText)}" width="{width}" height="{height}" style="max-width:100%;height:auto">{close}
            </figure>
            """);
    }

    private static string Address(string svg) => $"data:image/svg+xml;base64,{Convert.ToBase64String(Encoding.UTF8.GetBytes(svg))}";

    private SchematicPicture Picture()
    {
        // All that a drawing depends on is in these words and the plan.
        var content = $"{circuit.PlanText}\n{string.Concat(circuit.Elements.Select(e => e.Place))}\n{string.Concat(circuit.Nodes)}\n{AltText}\n{notes.Content}";
        if (Kept.TryGetValue(content, out var kept)) return kept;
        var sheet = SchematicSheet.Of(circuit, notes);
        if (Kept.Count >= MostKept) Kept.Clear();
        var narrow = SchematicStages.Narrow(circuit, sheet, notes) is { } stages ? SchematicSvg.Write(stages, AltText) : null;
        return Kept[content] = new(SchematicSvg.Write(sheet, AltText), sheet.Frame.Width, sheet.Frame.Height, narrow);
    }
}

/// <summary>A drawing as it is kept.</summary>
internal sealed record SchematicPicture(string Svg, double Width, double Height, string? Narrow);
