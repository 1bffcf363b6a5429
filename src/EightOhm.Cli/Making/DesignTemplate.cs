using System.Text;
using System.Text.Json.Nodes;
using EightOhm.Cells;
using EightOhm.Cli.Notebooks;

namespace EightOhm.Cli.Making;

/// <summary>The notebooks of a design, to be copied: those that come with the program, or a test's own.</summary>
internal sealed class DesignTemplate
{
    private const string Prefix = "design/";

    private DesignTemplate(IReadOnlyList<(string FileName, JsonObject Notebook)> notebooks)
    {
        Notebooks = notebooks;
        Inputs = [.. notebooks.SelectMany(n => Cells(n.Notebook)).SelectMany(c => DesignInput.Of(Source(c)))];
    }

    /// <summary>The notebooks in name order, without outputs.</summary>
    public IReadOnlyList<(string FileName, JsonObject Notebook)> Notebooks { get; }

    /// <summary>All inputs, in the order of the notebooks.</summary>
    public IReadOnlyList<DesignInput> Inputs { get; }

    /// <summary>The design that comes with the program.</summary>
    public static DesignTemplate Shipped()
    {
        var assembly = typeof(DesignTemplate).Assembly;
        return Of(assembly.GetManifestResourceNames().Where(n => n.StartsWith(Prefix, StringComparison.Ordinal)).Select(name =>
        {
            using var reader = new StreamReader(assembly.GetManifestResourceStream(name)!, Encoding.UTF8);
            return (name[Prefix.Length..], reader.ReadToEnd());
        }));
    }

    /// <summary>A design by the texts of its notebooks.</summary>
    public static DesignTemplate Of(IEnumerable<(string FileName, string Text)> notebooks) =>
        new([.. notebooks.OrderBy(n => n.FileName, StringComparer.Ordinal).Select(n => (n.FileName, Emptied(JsonNode.Parse(n.Text)!.AsObject())))]);

    /// <summary>The notebooks with other values in their inputs.</summary>
    /// <param name="values">By the input: the value's code and, where it has one, the reason's.</param>
    public IEnumerable<(string FileName, byte[] Bytes)> With(Func<DesignInput, (string? Value, string? Words)> values)
    {
        foreach (var (file, notebook) in Notebooks)
        {
            var copy = notebook.DeepClone().AsObject();
            foreach (var cell in Cells(copy))
                cell["source"] = NbFormat.Lines(Rewritten(Source(cell), values));
            yield return (file, NbFormat.ToBytes(copy));
        }
    }

    // From the end, so that what stands before keeps its place.
    private static string Rewritten(string source, Func<DesignInput, (string? Value, string? Words)> values)
    {
        foreach (var input in DesignInput.Of(source).OrderByDescending(i => i.At.Start))
        {
            var (value, words) = values(input);
            if (words is not null && input.Words is var (at, _))
                source = source[..at.Start] + Apart(source[at.Start..at.End], words) + source[at.End..];
            if (value is not null)
                source = source[..input.At.Start] + value + source[input.At.End..];
        }

        return source;
    }

    // On lines of their own where they were so or are many.
    private static string Apart(string before, string words) => before.StartsWith('"') ? words : (before.StartsWith('\n') || words.Contains('\n') ? "\n    " : " ") + words;

    private static JsonObject Emptied(JsonObject notebook)
    {
        foreach (var cell in Cells(notebook))
        {
            cell["execution_count"] = null;
            cell["outputs"] = new JsonArray();
        }

        (notebook["metadata"] as JsonObject)?.Remove(NotebookStamp.Key);
        return notebook;
    }

    private static IEnumerable<JsonObject> Cells(JsonObject notebook) =>
        notebook["cells"]!.AsArray().OfType<JsonObject>().Where(c => NbFormat.Text(c["cell_type"]) == "code");

    private static string Source(JsonObject cell) => NbFormat.Text(cell["source"]);
}
