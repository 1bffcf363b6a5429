using System.Text.Json.Nodes;

namespace EightOhm.Design.Tests.Running;

/// <summary>A notebook's code cells as text, the package lines left out.</summary>
internal sealed record ChapterText(string Folder, string Name, IReadOnlyList<string> Cells)
{
    /// <summary>Every notebook of a folder, in name order.</summary>
    public static IReadOnlyList<ChapterText> OfFolder(string folder) =>
        [.. Directory.GetFiles(folder, "*.ipynb").Order(StringComparer.Ordinal).Select(Read)];

    private static ChapterText Read(string file)
    {
        var notebook = JsonNode.Parse(File.ReadAllText(file))!;
        var cells = notebook["cells"]!.AsArray().Where(c => (string?)c!["cell_type"] == "code").Select(c => Source(c!["source"]!));
        return new(Path.GetDirectoryName(Path.GetFullPath(file))!, Path.GetFileNameWithoutExtension(file), [.. cells]);
    }

    private static string Source(JsonNode source)
    {
        var text = source is JsonArray lines ? string.Concat(lines.Select(l => (string)l!)) : (string)source!;
        return string.Join('\n', text.Split('\n').Where(l => !l.StartsWith("#r", StringComparison.Ordinal)));
    }
}
