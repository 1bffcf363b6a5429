using Ganss.Xss;

namespace EightOhm.Cli.Book;

/// <summary>Leaves of a person's own HTML in a text what shows something, and nothing that runs, asks or loads.</summary>
internal static class CleanHtml
{
    private static readonly string[] Forms = ["form", "button", "textarea", "select", "option", "optgroup", "fieldset", "label", "datalist", "keygen", "output", "menu", "menuitem"];

    private static readonly HtmlSanitizer Cleaner = Make();

    public static string Of(string html)
    {
        lock (Cleaner)
            return Cleaner.Sanitize(html);
    }

    private static HtmlSanitizer Make()
    {
        var cleaner = new HtmlSanitizer();
        foreach (var tag in Forms)
            cleaner.AllowedTags.Remove(tag);
        cleaner.AllowedTags.UnionWith(["figure", "figcaption", "details", "summary", "mark"]);
        // A style could lay a text over the page; the book has its own.
        cleaner.AllowedAttributes.Remove("style");
        cleaner.AllowedAttributes.UnionWith(["id", "class", "role", "open", "aria-label"]);
        cleaner.AllowedSchemes.UnionWith(["mailto", "data"]);
        // Data is for pictures: as a link's target it could be a page of its own.
        cleaner.FilterUrl += (_, url) =>
        {
            if (url.OriginalUrl.TrimStart().StartsWith("data:", StringComparison.OrdinalIgnoreCase)
                && !(url.Tag.LocalName == "img" && url.OriginalUrl.TrimStart().StartsWith("data:image/", StringComparison.OrdinalIgnoreCase)))
            {
                url.SanitizedUrl = null;
            }
        };
        // A picture from elsewhere would tell that place who reads.
        cleaner.PostProcessNode += (_, node) =>
        {
            if (node.Node is AngleSharp.Html.Dom.IHtmlImageElement image && image.GetAttribute("src")?.StartsWith("data:image/", StringComparison.OrdinalIgnoreCase) != true)
                image.RemoveAttribute("src");
        };
        return cleaner;
    }
}
