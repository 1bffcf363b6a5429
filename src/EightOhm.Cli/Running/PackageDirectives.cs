using System.Text.RegularExpressions;
using EightOhm.Cli.Notebooks;
using EightOhm.Cells;

namespace EightOhm.Cli.Running;

/// <summary>The package lines of a notebook. Ours are answered by the assemblies of this very build; nothing is ever downloaded.</summary>
internal static partial class PackageDirectives
{
    private static readonly string[] Ours = ["EightOhm", "EightOhm.Display", "EightOhm.Notebook"];

    /// <summary>Refuses, before anything runs, what this runner cannot run.</summary>
    public static void Check(NotebookFile notebook)
    {
        if (notebook.Language is { } language && !NotebookLanguage.IsCSharp(language))
            throw RunFailure.BadInput($"{notebook.FileLabel} is written in {language}; only notebooks in C# can be run.");

        foreach (var cell in notebook.Cells.Where(c => c.IsCode))
        {
            if (cell.Language is { } own && !NotebookLanguage.IsCSharp(own))
                throw RunFailure.BadInput($"{notebook.FileLabel}, cell {cell.Number} is written in {own}; only cells in C# can be run.");

            foreach (Match match in Directive().Matches(cell.Source))
            {
                var line = cell.Source.AsSpan(0, match.Index).Count('\n') + 1;
                if (match.Groups["kind"].Value == "i" || !Ours.Contains(match.Groups["package"].Value, StringComparer.OrdinalIgnoreCase))
                {
                    throw RunFailure.BadInput(
                        $"{notebook.FileLabel}, cell {cell.Number}, line {line}: '{match.Value.Trim()}' asks for a package, and this runner fetches none. " +
                        $"Allowed are {string.Join(", ", Ours)}; reference any other assembly by its file: #r \"folder/name.dll\".");
                }

                if (System.Version.TryParse(match.Groups["version"].Value, out var asked) && asked > System.Version.Parse(BuildVersion.Text))
                {
                    throw RunFailure.BadInput(
                        $"{notebook.FileLabel}, cell {cell.Number}, line {line}, asks for {match.Groups["package"].Value} {asked}; this is eightohm {BuildVersion.Text}. " +
                        "Update the tool, or let the notebook ask for this version.");
                }
            }
        }
    }

    public static bool AsksForEightOhm(string source) => Directive().IsMatch(source);

    /// <summary>The cell without its package lines; every other line keeps its number.</summary>
    public static string Remove(string source) => Directive().Replace(source, "");

    [GeneratedRegex("""^[ \t]*#(?<kind>[ri])[ \t]+"nuget:[ \t]*(?<package>[^",\r\n]*)(?:,[ \t]*(?<version>[0-9.]*))?[^\r\n]*""", RegexOptions.Multiline)]
    private static partial Regex Directive();
}
