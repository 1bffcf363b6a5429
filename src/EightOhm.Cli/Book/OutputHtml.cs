using System.Text;
using System.Text.Json.Nodes;
using EightOhm.Cells;
using EightOhm.Cli.Notebooks;

namespace EightOhm.Cli.Book;

/// <summary>A cell's outputs, each in a box that scrolls by itself when it is wider than the page.</summary>
internal static class OutputHtml
{
    public static string Of(NotebookCell cell)
    {
        var html = new StringBuilder();
        foreach (var output in Each(cell.Outputs, cell.Source))
            html.Append("<div class=\"output\">").Append(output).Append("</div>\n");

        return html.ToString();
    }

    /// <summary>Each output that shows something, without its box.</summary>
    /// <param name="outputs">The outputs in the notebook's format.</param>
    /// <param name="source">The cell's code.</param>
    public static IEnumerable<string> Each(JsonArray outputs, string source) =>
        outputs.OfType<JsonObject>().Select(Inner).Where(inner => inner.Length > 0).Select(inner => (ValueNames.Of(inner, source) ?? inner).TrimEnd());

    private static string Inner(JsonObject output)
    {
        if (NbFormat.Text(output["output_type"]) == "stream")
            return Plain(NbFormat.Text(output["text"]));
        if (output["data"] is not JsonObject data)
            return "";
        if (data["text/html"] is { } html)
            return NbFormat.Text(html);
        if (data["image/svg+xml"] is { } svg)
            return $"<img alt=\"\" src=\"data:image/svg+xml;base64,{Convert.ToBase64String(Encoding.UTF8.GetBytes(NbFormat.Text(svg)))}\">";
        if (data["image/png"] is { } png)
            return $"<img alt=\"\" src=\"data:image/png;base64,{NbFormat.Text(png).ReplaceLineEndings("")}\">";

        return data["text/plain"] is { } plain ? Plain(NbFormat.Text(plain)) : "";
    }

    private static string Plain(string text) =>
        string.IsNullOrWhiteSpace(text) ? "" : $"<pre>{PageTemplate.Escape(text.TrimEnd())}</pre>";
}
