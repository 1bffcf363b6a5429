using System.Text.Json;

namespace EightOhm.Notebook.Tests;

/// <summary>The repository's notebooks of the course, as they are on disk.</summary>
internal static class Chapters
{
    /// <summary>The notebooks' names, in order.</summary>
    public static IReadOnlyList<string> Names { get; } = [.. Directory.GetFiles(Course(), "*.ipynb").Select(f => Path.GetFileNameWithoutExtension(f)).Order(StringComparer.Ordinal)];

    /// <summary>All the code of a notebook.</summary>
    public static string Code(string notebook)
    {
        using var file = JsonDocument.Parse(File.ReadAllBytes(Path.Combine(Course(), notebook + ".ipynb")));
        return string.Join("\n", file.RootElement.GetProperty("cells").EnumerateArray()
            .Where(cell => cell.GetProperty("cell_type").GetString() == "code")
            .Select(cell => string.Concat(cell.GetProperty("source").EnumerateArray().Select(line => line.GetString()))));
    }

    /// <summary>The folder of all notebooks.</summary>
    public static string Home()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "EightOhm.slnx")))
                return Path.Combine(folder.FullName, "notebooks");
        }

        throw new DirectoryNotFoundException("The tests must run inside the repository: no folder above them holds EightOhm.slnx.");
    }

    private static string Course() => Path.Combine(Home(), "course");
}
