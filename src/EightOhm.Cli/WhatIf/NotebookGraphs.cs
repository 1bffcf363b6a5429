using System.Collections.Concurrent;
using EightOhm.Cells;
using EightOhm.Cells.Compiling;
using EightOhm.Cells.Sources;
using EightOhm.Cli.Notebooks;

namespace EightOhm.Cli.WhatIf;

/// <summary>The cell graphs of a run's notebooks, each read when it is first asked for: most runs need none. What was read before is taken from what is kept.</summary>
internal sealed class NotebookGraphs
{
    private static readonly byte[]? Secret = PersonalSecret.Get();

    private readonly ConcurrentDictionary<NotebookFile, Lazy<NotebookGraph>> graphs = [];
    private readonly ConcurrentQueue<Action> fresh = [];

    /// <summary>The graph of one notebook.</summary>
    public NotebookGraph Of(NotebookFile notebook) => graphs.GetOrAdd(notebook, n => new(() => Read(n))).Value;

    /// <summary>Forgets a notebook that is no longer as it was.</summary>
    public void Forget(NotebookFile notebook) => graphs.TryRemove(notebook, out _);

    /// <summary>Reads several, beside each other.</summary>
    public void Begin(IEnumerable<NotebookFile> notebooks) => Parallel.ForEach(notebooks, notebook => Of(notebook));

    /// <summary>Whether any cell says a word of a record at all; one that says none hangs on no entry.</summary>
    public static bool SpeaksOfARecord(NotebookFile notebook) => notebook.Cells.Any(c => c.IsCode && c.Source.Contains("Record", StringComparison.Ordinal));

    /// <summary>Keeps beside the notebooks what was read since, where the person lets their cells run.</summary>
    public void Keep()
    {
        while (fresh.TryDequeue(out var keep))
            keep();
    }

    private NotebookGraph Read(NotebookFile notebook)
    {
        var cells = notebook.Cells.Where(c => c.IsCode && !string.IsNullOrWhiteSpace(c.Source)).ToList();
        var texts = cells.ConvertAll(c => c.Source);
        var kept = KeptGraph.Open(notebook.Path, Secret);
        if (kept?.Find(texts) is { } known)
            return new NotebookGraph(cells, known);
        var graph = CellGraph.Read(texts, CellReferences.OfThisProcess(), CellUsings.Script);
        if (kept is not null)
            fresh.Enqueue(() => kept.Keep(texts, graph));
        return new NotebookGraph(cells, graph);
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
