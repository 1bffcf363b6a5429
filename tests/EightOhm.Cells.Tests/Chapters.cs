using System.Text.Json;

namespace EightOhm.Cells.Tests;

/// <summary>The repository's notebooks as they are on disk.</summary>
internal static class Chapters
{
    /// <summary>The code cells of a notebook, in order.</summary>
    /// <param name="notebook">Its path below the notebooks, without its ending: tern-100/05-supply.</param>
    public static IReadOnlyList<string> Cells(string notebook)
    {
        using var file = JsonDocument.Parse(File.ReadAllBytes(Path.Combine(Home(), notebook + ".ipynb")));
        return [.. file.RootElement.GetProperty("cells").EnumerateArray()
            .Where(cell => cell.GetProperty("cell_type").GetString() == "code")
            .Select(cell => string.Concat(cell.GetProperty("source").EnumerateArray().Select(line => line.GetString())))];
    }

    private static string Home()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "EightOhm.slnx")))
                return Path.Combine(folder.FullName, "notebooks");
        }

        throw new DirectoryNotFoundException("The tests must run inside the repository: no folder above them holds EightOhm.slnx.");
    }
}
