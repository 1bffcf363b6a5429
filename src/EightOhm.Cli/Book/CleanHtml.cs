using Ganss.Xss;

namespace EightOhm.Cli.Book;

/// <summary>Leaves of a person's own HTML in a text what shows something, and nothing that runs, asks or loads.</summary>
internal static class CleanHtml
{
    /// <summary>The parts of forms: a page that only shows something has none.</summary>
    public static readonly string[] Forms = ["form", "button", "textarea", "select", "option", "optgroup", "fieldset", "label", "datalist", "keygen", "output", "menu", "menuitem"];

    private static readonly HtmlSanitizer Cleaner = Make();

    public static string Of(string html)
    {
        lock (Cleaner)
            return Cleaner.Sanitize(html);
    }

    /// <summary>Whether an address holds its content itself.</summary>
    public static bool IsData(string url) => url.TrimStart().StartsWith("data:", StringComparison.OrdinalIgnoreCase);

    /// <summary>Whether an address is a picture's whole content.</summary>
    public static bool IsPicture(string url) => url.TrimStart().StartsWith("data:image/", StringComparison.OrdinalIgnoreCase);

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
            if (IsData(url.OriginalUrl) && !(url.Tag.LocalName == "img" && IsPicture(url.OriginalUrl)))
                url.SanitizedUrl = null;
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
