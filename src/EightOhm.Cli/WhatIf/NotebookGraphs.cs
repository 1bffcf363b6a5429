using System.Collections.Concurrent;
using EightOhm.Cells;
using EightOhm.Cells.Sources;
using EightOhm.Cli.Notebooks;

namespace EightOhm.Cli.WhatIf;

/// <summary>The cell graphs of a run's notebooks, each read when it is first asked for: most runs need none.</summary>
internal sealed class NotebookGraphs
{
    private readonly ConcurrentDictionary<NotebookFile, Lazy<NotebookGraph>> graphs = [];

    /// <summary>The graph of one notebook.</summary>
    public NotebookGraph Of(NotebookFile notebook) => graphs.GetOrAdd(notebook, n => new(() => Read(n))).Value;

    /// <summary>Forgets a notebook that is no longer as it was.</summary>
    public void Forget(NotebookFile notebook) => graphs.TryRemove(notebook, out _);

    /// <summary>Reads several, beside each other.</summary>
    public void Begin(IEnumerable<NotebookFile> notebooks) => Parallel.ForEach(notebooks, notebook => Of(notebook));

    /// <summary>Whether any cell says a word of a record at all; one that says none hangs on no entry.</summary>
    public static bool SpeaksOfARecord(NotebookFile notebook) => notebook.Cells.Any(c => c.IsCode && c.Source.Contains("Record", StringComparison.Ordinal));

    private static NotebookGraph Read(NotebookFile notebook)
    {
        var cells = notebook.Cells.Where(c => c.IsCode && !string.IsNullOrWhiteSpace(c.Source)).ToList();
        return new NotebookGraph(cells, CellGraph.Read(cells.Select(c => c.Source), CellReferences.OfThisProcess(), CellUsings.Script));
    }
}

/// <summary>What hangs on what in one notebook.</summary>
/// <param name="Cells">Its code cells that hold code, in order.</param>
/// <param name="Graph">Their graph, by place in that list.</param>
internal sealed record NotebookGraph(IReadOnlyList<NotebookCell> Cells, CellGraph Graph)
{
    public CellReading Reading(NotebookCell cell) => Graph.Cells[IndexOf(cell)];

    public int IndexOf(NotebookCell cell)
    {
        for (var i = 0; i < Cells.Count; i++)
        {
            if (Cells[i] == cell)
                return i;
        }

        throw new ArgumentException("The cell is of another notebook.", nameof(cell));
    }
}
