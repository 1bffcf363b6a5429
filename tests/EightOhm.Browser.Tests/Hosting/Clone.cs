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

    /// <summary>The chapters, in name order.</summary>
    public static IReadOnlyList<string> Chapters { get; } =
        Directory.Exists(Notebooks)
            ? [.. Directory.EnumerateFiles(Notebooks, "*.ipynb").Select(path => Path.GetFileName(path)).Order(StringComparer.Ordinal)]
            : [];

    private static string Find()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
            if (File.Exists(Path.Combine(folder.FullName, "EightOhm.slnx")))
                return folder.FullName;
        throw new InvalidOperationException($"No EightOhm.slnx above {AppContext.BaseDirectory}.");
    }
}
