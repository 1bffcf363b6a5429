namespace EightOhm.Cli.Tests;

/// <summary>The repository that the tests were built from.</summary>
internal static class Repository
{
    /// <summary>Its folder of notebooks.</summary>
    public static string Notebooks { get; } = Find();

    /// <summary>Copies a folder of notebooks with what lies beside them.</summary>
    /// <param name="from">The folder.</param>
    /// <param name="to">The folder of the copy.</param>
    /// <param name="takes">Whether a notebook belongs to it, by its file's name.</param>
    public static void Copy(string from, string to, Func<string, bool> takes)
    {
        foreach (var file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories))
        {
            var place = Path.GetRelativePath(from, file);
            // What begins with a dot is kept by a program and made again.
            if (place.StartsWith('.') || (place.EndsWith(".ipynb", StringComparison.Ordinal) && !takes(place)))
                continue;
            Directory.CreateDirectory(Path.GetDirectoryName(Path.Combine(to, place))!);
            File.Copy(file, Path.Combine(to, place), overwrite: true);
        }
    }

    private static string Find()
    {
        var folder = AppContext.BaseDirectory;
        while (!Directory.Exists(Path.Combine(folder, "notebooks")) || !File.Exists(Path.Combine(folder, "EightOhm.slnx")))
            folder = Path.GetDirectoryName(folder)!;
        return Path.Combine(folder, "notebooks");
    }
}
