using EightOhm.Cli.Notebooks;

namespace EightOhm.Cli.Running;

/// <summary>Which cells run; the others keep the outputs that they hold.</summary>
/// <param name="Some">The cells to run, as notebook and number; null for all.</param>
/// <param name="Says">Why these, for the console; empty when there is nothing to say.</param>
internal sealed record RunPlan(IReadOnlySet<(string Notebook, int Cell)>? Some, string Says)
{
    public bool Runs(CellPlace place) => Some is null || Some.Contains((place.Notebook.Name, place.Cell.Number));

    /// <summary>Whether any of a notebook's cells run.</summary>
    public bool Runs(NotebookFile notebook) => Some is null || Some.Any(c => c.Notebook == notebook.Name);
}
