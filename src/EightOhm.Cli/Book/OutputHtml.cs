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
        foreach (var output in cell.Outputs.OfType<JsonObject>())
        {
            if (Inner(output) is { Length: > 0 } inner)
                html.Append("<div class=\"output\">").Append((ValueNames.Of(inner, cell.Source) ?? inner).TrimEnd()).Append("</div>\n");
        }

        return html.ToString();
    }

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
