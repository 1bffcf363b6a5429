using System.Text.Json.Nodes;
using EightOhm.Cli.Notebooks;
using EightOhm.Cli.WhatIf;

namespace EightOhm.Cli.Live;

/// <summary>A chapter's code as it is to run: of a cell whose text was changed and is not asked for, the text that ran last.</summary>
internal sealed class ChapterView
{
    private readonly NotebookGraphs graphs;

    /// <param name="chapter">The chapter.</param>
    /// <param name="isAsked">Whether a cell is to run as it is written now.</param>
    /// <param name="graphs">Reads what hangs on what.</param>
    public ChapterView(LiveChapter chapter, Func<LiveCell, bool> isAsked, NotebookGraphs graphs)
    {
        this.graphs = graphs;
        Chapter = chapter;
        var texts = chapter.Cells.Select(c => Text(c, isAsked)).ToList();
        Notebook = chapter.File.With([.. chapter.Cells.Zip(texts, Light)], chapter.File.Read);
        var code = chapter.Cells.Zip(texts, Notebook.Cells).Where(c => c.First.IsCode && !string.IsNullOrWhiteSpace(c.Second)).ToList();
        Cells = [.. code.Select(c => c.First)];
        Texts = [.. code.Select(c => c.Second)];
        Places = [.. code.Select(c => new CellPlace(Notebook, c.Third))];
    }

    public LiveChapter Chapter { get; }

    /// <summary>The notebook with these texts, without outputs.</summary>
    public NotebookFile Notebook { get; }

    /// <summary>The cells that hold code.</summary>
    public IReadOnlyList<LiveCell> Cells { get; }

    /// <summary>Their code.</summary>
    public IReadOnlyList<string> Texts { get; }

    /// <summary>Where they stand.</summary>
    public IReadOnlyList<CellPlace> Places { get; }

    /// <summary>What hangs on what; read when it is first asked for.</summary>
    public NotebookGraph Graph => graphs.Of(Notebook);

    public int IndexOf(LiveCell cell) => ((List<LiveCell>)[.. Cells]).IndexOf(cell);

    /// <summary>The earlier cells that one needs in a fresh process, and the package's line, without which nothing compiles.</summary>
    public IEnumerable<int> Needed(int cell) =>
        Graph.Graph.NeededBefore(cell).Concat(Enumerable.Range(0, cell).Where(i => PackageLine(Texts[i]))).Where(i => i < cell).Distinct().Order();

    /// <summary>Whether it is still what the chapter says.</summary>
    public bool IsOf(LiveChapter chapter, Func<LiveCell, bool> isAsked) =>
        ReferenceEquals(chapter, Chapter) && chapter.Cells.Select(c => (c.IsCode, Text(c, isAsked))).SequenceEqual(seen ??= [.. Seen()]);

    private List<(bool, string)>? seen;

    private IEnumerable<(bool, string)> Seen() => Notebook.Cells.Select(c => (c.IsCode, c.Source));

    private static bool PackageLine(string text) => EightOhm.Cells.PackageLines.AskIn(text);

    private static string Text(LiveCell cell, Func<LiveCell, bool> isAsked) => cell.IsEdited && !isAsked(cell) ? cell.Good : cell.Source;

    private static JsonObject Light(LiveCell cell, string text) => new()
    {
        ["cell_type"] = cell.Json["cell_type"]?.DeepClone(),
        ["source"] = text,
    };
}
