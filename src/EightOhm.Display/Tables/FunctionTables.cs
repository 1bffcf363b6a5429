using System.Net;
using EightOhm.Display.Formulas;
using EightOhm.Finding;

namespace EightOhm.Display.Tables;

/// <summary>Functions that were found, and what there is to know of one.</summary>
public static class FunctionTables
{
    /// <summary>Functions found by words: how each is called, what it is, its unit.</summary>
    /// <param name="found">The functions.</param>
    /// <returns>The table.</returns>
    [Shows]
    public static Table Found(FunctionList found)
    {
        ArgumentNullException.ThrowIfNull(found);
        return found.Count == 0
            ? new Table(["nothing found"], [[found.ToString()]], [], "Functions")
            : new Table(["function", "what it is", "unit"], [.. found.Select(IReadOnlyList<string> (f) => [f.Signature, f.Summary, f.Unit])], [], found.Words.Trim().Length == 0 ? "All functions" : $"Functions for \"{found.Words}\"; About(\"…\") tells more");
    }

    /// <summary>What there is to know of a function.</summary>
    /// <param name="function">The function.</param>
    /// <returns>HTML.</returns>
    [Shows]
    public static string About(FunctionDescription function)
    {
        ArgumentNullException.ThrowIfNull(function);
        string Line(string what, string text) => text.Length == 0 ? "" : $"<dt>{what}</dt><dd>{SymbolHtml.Write(text)}</dd>";
        return $"<div class=\"eo-about\"><p><code>{WebUtility.HtmlEncode(function.Signature)}</code></p><p>{SymbolHtml.Write(function.Summary)}</p>"
            + (function.Parameters.Count == 0 ? "" : new Table(["takes", "kind", "unit", "what it is, and its range"], [.. function.Parameters.Select(IReadOnlyList<string> (p) => [p.Name, p.Kind, p.Unit, p.Text])], [], "Takes").ToHtml())
            + $"<dl>{Line("gives", function.Returns)}{string.Concat(function.Refuses.Select(r => Line("refuses", r)))}{Line("note", function.Remarks)}{Line("source", function.Source)}</dl>"
            + (function.Example.Length == 0 ? "" : $"<pre>{WebUtility.HtmlEncode(function.Example)}</pre>") + "</div>";
    }
}
