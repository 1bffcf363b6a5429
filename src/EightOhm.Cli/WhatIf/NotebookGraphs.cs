using EightOhm.Cli.Notebooks;
using EightOhm.Notebook;
using EightOhm.Notebook.Sources;

namespace EightOhm.Cli.WhatIf;

/// <summary>The cell graphs of a run's notebooks, each read when it is first asked for: most runs need none.</summary>
internal sealed class NotebookGraphs
{
    private readonly Dictionary<NotebookFile, NotebookGraph> graphs = [];
    private readonly Lazy<CellReferences> references = new(CellReferences.OfThisProcess);

    public NotebookGraph Of(NotebookFile notebook)
    {
        if (graphs.TryGetValue(notebook, out var known))
            return known;
        var cells = notebook.Cells.Where(c => c.IsCode && !string.IsNullOrWhiteSpace(c.Source)).ToList();
        return graphs[notebook] = new NotebookGraph(cells, CellGraph.Read(cells.Select(c => c.Source), references.Value, NotebookExtension.Script));
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
