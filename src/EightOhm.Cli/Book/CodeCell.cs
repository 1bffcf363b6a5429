using EightOhm.Cli.Notebooks;

namespace EightOhm.Cli.Book;

/// <summary>A code cell: its package lines folded away, the rest in a box.</summary>
internal static class CodeCell
{
    public static string ToHtml(NotebookCell cell)
    {
        var lines = cell.Source.TrimEnd().Split('\n');
        var packages = lines.TakeWhile(l => string.IsNullOrWhiteSpace(l) || l.TrimStart().StartsWith("#r", StringComparison.Ordinal)).ToList();
        var code = string.Join('\n', lines.Skip(packages.Count));
        packages.RemoveAll(string.IsNullOrWhiteSpace);

        var html = "";
        if (packages.Count > 0)
            html += $"<details class=\"packages\"><summary>Package</summary>{Box(string.Join('\n', packages))}</details>\n";
        if (code.Length > 0)
            html += Box(code) + "\n";
        return html;
    }

    private static string Box(string code) => $"<pre class=\"code\"><code>{CodeTint.ToHtml(code)}</code></pre>";
}
