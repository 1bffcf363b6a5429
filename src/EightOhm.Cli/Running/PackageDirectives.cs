using EightOhm.Cells;
using EightOhm.Cli.Notebooks;

namespace EightOhm.Cli.Running;

/// <summary>The package lines of a notebook. Ours are answered by the assemblies of this very build; nothing is ever downloaded.</summary>
internal static class PackageDirectives
{
    /// <summary>Refuses, before anything runs, what this runner cannot run.</summary>
    public static void Check(NotebookFile notebook)
    {
        if (notebook.Language is { } language && !NotebookLanguage.IsCSharp(language))
            throw RunFailure.BadInput($"{notebook.FileLabel} is written in {language}; only notebooks in C# can be run.");

        foreach (var cell in notebook.Cells.Where(c => c.IsCode))
        {
            if (cell.Language is { } own && !NotebookLanguage.IsCSharp(own))
                throw RunFailure.BadInput($"{notebook.FileLabel}, cell {cell.Number} is written in {own}; only cells in C# can be run.");

            foreach (var line in PackageLines.In(cell.Source))
            {
                if (line.NamesSource || !PackageLines.Ours.Contains(line.Package, StringComparer.OrdinalIgnoreCase))
                {
                    throw RunFailure.BadInput(
                        $"{notebook.FileLabel}, cell {cell.Number}, line {line.Number}: '{line.Text}' asks for a package, and this runner fetches none. " +
                        $"Allowed are {string.Join(", ", PackageLines.Ours)}; reference any other assembly by its file: #r \"folder/name.dll\".");
                }

                if (line.Version is { } asked && asked > System.Version.Parse(BuildVersion.Text))
                {
                    throw RunFailure.BadInput(
                        $"{notebook.FileLabel}, cell {cell.Number}, line {line.Number}, asks for {line.Package} {asked}; this is eightohm {BuildVersion.Text}. " +
                        "Update the tool, or let the notebook ask for this version.");
                }
            }
        }
    }
}
