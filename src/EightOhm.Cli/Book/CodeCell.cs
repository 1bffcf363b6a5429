using EightOhm.Cli.Notebooks;

namespace EightOhm.Cli.Book;

/// <summary>A code cell: its package lines folded away, the rest in a box that opens and closes.</summary>
internal static class CodeCell
{
    private const string Open = "open";
    private const string Folded = "folded";

    /// <param name="cell">The cell.</param>
    /// <param name="isPaper">Whether the notebook is a design's paper, whose reader wants the results first; a course shows its code.</param>
    public static string ToHtml(NotebookCell cell, bool isPaper)
    {
        var lines = cell.Source.TrimEnd().Split('\n');
        var packages = lines.TakeWhile(l => string.IsNullOrWhiteSpace(l) || l.TrimStart().StartsWith("#r", StringComparison.Ordinal)).ToList();
        var code = string.Join('\n', lines.Skip(packages.Count));
        packages.RemoveAll(string.IsNullOrWhiteSpace);

        var html = "";
        if (packages.Count > 0)
            html += $"<details class=\"packages\"><summary>Package</summary>{Box(string.Join('\n', packages))}</details>\n";
        if (code.Length > 0)
            html += $"<details class=\"code-cell\"{(IsOpen(cell, isPaper) ? " open" : "")}><summary>Code</summary>{Box(code)}</details>\n";
        return html;
    }

    /// <summary>Whether a reader sees the code at first.</summary>
    public static bool IsOpen(NotebookCell cell, bool isPaper) => isPaper ? cell.HasTag(Open) : !cell.HasTag(Folded);

    private static string Box(string code) => $"<pre class=\"code\" tabindex=\"0\"><code>{CodeTint.ToHtml(code)}</code></pre>";
}
