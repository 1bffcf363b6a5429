using System.Text.RegularExpressions;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using EightOhm.Cli.Book;
using Ganss.Xss;

namespace EightOhm.Cli.Live;

/// <summary>Leaves of an output what shows something: formulas, tables, pictures, a figure's data. What a stored notebook smuggles in can neither run nor ask, and cannot cover the page.</summary>
internal static partial class CleanOutput
{
    private static readonly string[] Maths =
        ["math", "mrow", "mtext", "mi", "mn", "mo", "ms", "mspace", "mpadded", "mphantom", "msub", "msup", "msubsup", "mfrac", "msqrt", "mroot", "munder", "mover", "munderover", "mtable", "mtr", "mtd", "mstyle", "menclose", "semantics"];

    private static readonly string[] Refused = [.. CleanHtml.Forms, "input", "style", "meter", "progress"];

    private static readonly string[] Looks =
        ["text-align", "font-size", "font-weight", "font-style", "white-space", "margin", "margin-top", "margin-bottom", "margin-left", "margin-right", "max-width", "width", "height", "color", "vertical-align", "padding", "border-collapse"];

    private static readonly string[] MathsAttributes = ["displaystyle", "mathvariant", "depth", "lspace", "rspace", "stretchy", "fence", "separator", "linethickness", "columnalign", "rowspacing", "columnspacing", "accent", "notation", "encoding", "display"];

    private static readonly HtmlSanitizer Cleaner = Make();

    public static string Of(string html)
    {
        if (HtmlDepth.IsTooDeep(html))
            return "<p>Elements of this output stand too deep in each other to be shown.</p>";
        // The cleaner would write these signs as in a text, which a figure's data is not: they are spelled as the data's own language allows.
        var spelled = Data().Replace(html, m => m.Groups[1].Value + m.Groups[2].Value.Replace("&", "\\u0026", StringComparison.Ordinal).Replace(">", "\\u003e", StringComparison.Ordinal) + m.Groups[3].Value);
        lock (Cleaner)
            return Cleaner.Sanitize(spelled);
    }

    // What holds "<" is no data that we wrote.
    [GeneratedRegex("(<script type=\"application/json\">)([^<]*)(</script>)")]
    private static partial Regex Data();

    private static HtmlSanitizer Make()
    {
        var cleaner = new HtmlSanitizer();
        cleaner.AllowedTags.ExceptWith(Refused);
        cleaner.AllowedTags.UnionWith([.. Maths, "figure", "figcaption", "details", "summary", "mark", "picture", "source", "script"]);
        cleaner.AllowedAttributes.UnionWith([.. MathsAttributes, "id", "class", "role", "open", "aria-label", "aria-hidden", "scope", "type", "srcset", "media", "start", "tabindex"]);
        cleaner.AllowedCssProperties.Clear();
        cleaner.AllowedCssProperties.UnionWith(Looks);
        cleaner.AllowedSchemes.UnionWith(["data"]);
        cleaner.FilterUrl += (_, url) =>
        {
            if (CleanHtml.IsData(url.OriginalUrl) && !(CleanHtml.IsPicture(url.OriginalUrl) && url.Tag.LocalName is ("img" or "source")))
                url.SanitizedUrl = null;
        };
        // The data of a figure is read by the page's own script; whatever else is a script goes.
        cleaner.PostProcessDom += (_, e) =>
        {
            foreach (var script in e.Document.QuerySelectorAll("script").Where(s => s.GetAttribute("type") != "application/json" || s.Attributes.Length > 1 || s.Closest("figure.eo-figure") is null).ToList())
                script.Remove();
            foreach (var source in e.Document.QuerySelectorAll("[srcset]").Where(s => s.GetAttribute("srcset")?.StartsWith("data:image/", StringComparison.OrdinalIgnoreCase) != true).ToList())
                source.RemoveAttribute("srcset");
            foreach (var image in e.Document.QuerySelectorAll("img").OfType<IHtmlImageElement>().Where(i => !CleanHtml.IsPicture(i.GetAttribute("src") ?? "")))
                image.RemoveAttribute("src");
            // The page's own classes are its own: an output that wears one could look like a part of the page.
            foreach (var worn in e.Document.QuerySelectorAll("[class]").ToList())
            {
                var kept = worn.ClassList.Where(IsOutputs).ToList();
                if (kept.Count == 0)
                    worn.RemoveAttribute("class");
                else if (kept.Count < worn.ClassList.Length)
                    worn.ClassName = string.Join(' ', kept);
            }
        };
        return cleaner;
    }

    private static bool IsOutputs(string name) => name.StartsWith("eo-", StringComparison.Ordinal) || name is "named-value" or "name";
}
