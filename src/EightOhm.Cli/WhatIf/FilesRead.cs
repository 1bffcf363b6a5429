using EightOhm.Cells;
using EightOhm.Cli.Notebooks;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace EightOhm.Cli.WhatIf;

/// <summary>The files beside the notebooks that their cells name, such as cards and captures: when one changes, kept outputs are of another design.</summary>
internal static class FilesRead
{
    /// <summary>A fingerprint of these files and of the records.</summary>
    /// <param name="notebook">The notebook, whose folder its files' names start from.</param>
    /// <param name="records">The record files.</param>
    public static string Fingerprint(NotebookFile notebook, IEnumerable<string> records)
    {
        var home = Path.GetDirectoryName(notebook.Path)!;
        var kept = records.Order(StringComparer.Ordinal).Select(path => (Name: Path.GetFileName(path), Path: path));
        var others = Named(notebook, home).Select(path => (Name: Path.GetRelativePath(home, path), Path: path));
        return NotebookStamp.Fingerprint(kept.Concat(others).SelectMany(f => new[] { f.Name, Hash(f.Path) }));
    }

    // A name may be built from pieces: a folder named stands for the files in it.
    private static IEnumerable<string> Named(NotebookFile notebook, string home)
    {
        var pieces = notebook.Cells.Where(c => c.IsCode)
            .SelectMany(c => CellText.Parse(c.Source).DescendantTokens())
            .Where(t => t.IsKind(SyntaxKind.StringLiteralToken) || t.IsKind(SyntaxKind.InterpolatedStringTextToken) || t.IsKind(SyntaxKind.SingleLineRawStringLiteralToken))
            .Select(t => t.ValueText)
            .Where(t => t.Length is > 0 and < 200 && t.IndexOfAny(Path.GetInvalidPathChars()) < 0 && !Path.IsPathRooted(t))
            .Distinct(StringComparer.Ordinal);
        var found = new SortedSet<string>(StringComparer.Ordinal);
        foreach (var piece in pieces)
        {
            var path = Path.GetFullPath(piece, home);
            if (File.Exists(path))
                found.Add(path);
            if (piece.Contains('/', StringComparison.Ordinal) && Path.GetDirectoryName(path) is { } below && Directory.Exists(below)
                && Path.GetRelativePath(home, below) is var way && way != "." && !way.StartsWith("..", StringComparison.Ordinal))
            {
                found.UnionWith(Directory.GetFiles(below));
            }
        }

        return found.Where(f => Path.GetDirectoryName(f) != home || !IsOurs(f));
    }

    // Records count by their own, and notebooks by their code.
    private static bool IsOurs(string path) => path.EndsWith(".ipynb", StringComparison.OrdinalIgnoreCase) || RecordCopy.IsRecord(path);

    // A pipe waits for ever, and what has no length changes nothing.
    private static string Hash(string path) => OrdinaryFile.IsLarger(path, 0) ? Cells.Fingerprint.OfFile(path) : "";
}
