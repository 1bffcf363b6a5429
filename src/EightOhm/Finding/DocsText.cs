using System.Xml.Linq;

namespace EightOhm.Finding;

/// <summary>Documentation as plain text: references by their short names, runs of blanks as one.</summary>
internal static class DocsText
{
    /// <summary>The text of an element, or nothing.</summary>
    public static string Of(XElement? element) => element is null ? "" : string.Join(' ', string.Concat(element.Nodes().Select(Node)).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    private static string Node(XNode node) => node switch
    {
        XText text => text.Value,
        XElement { Name.LocalName: "see" or "seealso" } see => Short(see.Attribute("cref")?.Value ?? see.Attribute("langword")?.Value ?? see.Value),
        XElement { Name.LocalName: "paramref" or "typeparamref" } named => named.Attribute("name")!.Value,
        XElement other => string.Concat(other.Nodes().Select(Node)),
        _ => "",
    };

    // M:EightOhm.Thermal.SharedSink.AllowedSink(…) is SharedSink.AllowedSink.
    private static string Short(string reference)
    {
        var name = reference.Split('(')[0];
        var parts = name.Split(':')[^1].Split('.');
        return name.StartsWith("T:", StringComparison.Ordinal) || parts.Length < 2 ? parts[^1] : $"{parts[^2]}.{parts[^1]}";
    }
}
