using System.Text.RegularExpressions;

namespace EightOhm.Cells;

/// <summary>The lines of a cell that ask for a package. Ours are answered by the assemblies of this very build; nothing is ever downloaded.</summary>
public static partial class PackageLines
{
    /// <summary>The packages that are at hand.</summary>
    public static IReadOnlyList<string> Ours { get; } = ["EightOhm", "EightOhm.Display", "EightOhm.Cells", "EightOhm.Notebook"];

    /// <summary>Whether a cell asks for a package, which can only be one of ours.</summary>
    /// <param name="source">The cell's code.</param>
    public static bool AskIn(string source) => Line().IsMatch(source);

    /// <summary>The cell without its package lines; every other line keeps its number.</summary>
    /// <param name="source">The cell's code.</param>
    public static string Remove(string source) => Line().Replace(source, "");

    /// <summary>The package lines of a cell, in order.</summary>
    /// <param name="source">The cell's code.</param>
    public static IEnumerable<PackageLine> In(string source) => Line().Matches(source).Select(m => new PackageLine(
        source.AsSpan(0, m.Index).Count('\n') + 1,
        m.Value.Trim(),
        m.Groups["kind"].Value == "i",
        m.Groups["package"].Value,
        System.Version.TryParse(m.Groups["version"].Value, out var version) ? version : null));

    [GeneratedRegex("""^[ \t]*#(?<kind>[ri])[ \t]+"nuget:[ \t]*(?<package>[^",\r\n]*)(?:,[ \t]*(?<version>[0-9.]*))?[^\r\n]*""", RegexOptions.Multiline)]
    private static partial Regex Line();
}

/// <summary>A line that asks for a package, or names a source of packages.</summary>
/// <param name="Number">The line, from 1.</param>
/// <param name="Text">As it is written.</param>
/// <param name="NamesSource">Whether it names a source of packages.</param>
/// <param name="Package">The package.</param>
/// <param name="Version">The version, where one is named.</param>
public sealed record PackageLine(int Number, string Text, bool NamesSource, string Package, Version? Version);
