using System.Xml.Linq;

namespace EightOhm.Browser.Tests.Hosting;

/// <summary>The working copy that these tests were built from.</summary>
internal static class Clone
{
    public static string Root { get; } = Find();

    public static string Notebooks { get; } = Path.Combine(Root, "notebooks");

    public static string Fixtures { get; } = Path.Combine(AppContext.BaseDirectory, "Fixtures");

    /// <summary>Pictures of everything that a test looked at, for a person to look at too.</summary>
    public static string Screens { get; } = Directory.CreateDirectory(Path.Combine(Root, "artifacts", "screens")).FullName;

    /// <summary>The one version of the build.</summary>
    public static string Version { get; } =
        XDocument.Load(Path.Combine(Root, "Directory.Build.props")).Descendants("Version").Single().Value;

    /// <summary>The chapters, those of folders within the folder of notebooks too, as paths from there: "tern-100/05-supply.ipynb".</summary>
    public static IReadOnlyList<string> Chapters { get; } = Below("*.ipynb");

    /// <summary>The records of designs, as paths from the folder of notebooks.</summary>
    public static IReadOnlyList<string> Records { get; } =
        [.. Below("*.json").Where(file => File.ReadAllText(Path.Combine(Notebooks, file)).Contains("eightohm-record", StringComparison.Ordinal))];

    /// <summary>The folder of a chapter or a record, from the folder of notebooks; empty for that folder itself.</summary>
    public static string FolderOf(string file) => Path.GetDirectoryName(file) ?? "";

    private static IReadOnlyList<string> Below(string pattern) => Directory.Exists(Notebooks)
        ? [.. Directory.GetDirectories(Notebooks).Where(folder => !Path.GetFileName(folder).StartsWith('.')).Append(Notebooks)
            .SelectMany(folder => Directory.EnumerateFiles(folder, pattern)).Select(path => Path.GetRelativePath(Notebooks, path).Replace('\\', '/')).Order(StringComparer.Ordinal)]
        : [];

    private static string Find()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
            if (File.Exists(Path.Combine(folder.FullName, "EightOhm.slnx")))
                return folder.FullName;
        throw new InvalidOperationException($"No EightOhm.slnx above {AppContext.BaseDirectory}.");
    }
}
