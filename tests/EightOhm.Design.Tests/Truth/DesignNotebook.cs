using System.Text.Json.Nodes;

namespace EightOhm.Design.Tests.Truth;

/// <summary>One notebook of a design: its cells, markdown and code.</summary>
/// <param name="Folder">The folder's name, after which the design is called.</param>
/// <param name="Name">The notebook's name.</param>
/// <param name="Cells">Whether each is code, and its text.</param>
internal sealed record DesignNotebook(string Folder, string Name, IReadOnlyList<(bool IsCode, string Text)> Cells)
{
    /// <summary>The words of the design's name, numbers and short ones left out.</summary>
    public IReadOnlyCollection<string> NameWords => [.. Folder.Split('-', '_', ' ').Where(w => w.Length > 2 && w.All(char.IsLetter))];

    /// <summary>The faults of all cells, each with its place.</summary>
    public IEnumerable<string> Faults() => Cells.SelectMany((cell, i) =>
        (cell.IsCode ? CodeTruth.Faults(cell.Text, NameWords) : ProseTruth.Faults(cell.Text, NameWords)).Select(fault => $"{Name}, cell {i + 1}: {fault}"));

    /// <summary>Every notebook in a folder that opens a record beside it.</summary>
    /// <param name="root">The folder of all notebooks.</param>
    public static IReadOnlyList<DesignNotebook> Under(string root) =>
    [
        .. Directory.GetFiles(root, "*.ipynb", SearchOption.AllDirectories).Order(StringComparer.Ordinal).Select(Read)
            .Where(n => n.Cells.Any(c => c.IsCode && c.Text.Contains("DesignRecord.Open(\"record.json\")", StringComparison.Ordinal))),
    ];

    private static DesignNotebook Read(string file)
    {
        var cells = JsonNode.Parse(File.ReadAllText(file))!["cells"]!.AsArray();
        return new(
            Path.GetFileName(Path.GetDirectoryName(file)!),
            Path.GetFileNameWithoutExtension(file),
            [.. cells.Select(c => ((string?)c!["cell_type"] == "code", Text(c["source"]!)))]);
    }

    private static string Text(JsonNode source)
    {
        var text = source is JsonArray lines ? string.Concat(lines.Select(l => (string)l!)) : (string)source!;
        return string.Join('\n', text.Split('\n').Where(l => !l.StartsWith("#r ", StringComparison.Ordinal)));
    }
}
