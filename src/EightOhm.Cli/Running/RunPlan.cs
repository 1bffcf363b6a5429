using EightOhm.Cli.Notebooks;

namespace EightOhm.Cli.Running;

/// <summary>Which cells run; the others keep the outputs that they hold.</summary>
/// <param name="Some">The cells to run, as notebook and number; null for all.</param>
/// <param name="Because">Why these, as the end of a sentence; empty when there is nothing to say.</param>
internal sealed record RunPlan(IReadOnlySet<(string Notebook, int Cell)>? Some, string Because)
{
    public static RunPlan All(string because) => new(null, because);

    public bool Runs(CellPlace place) => Some is null || Some.Contains((place.Notebook.Label, place.Cell.Number));

    /// <summary>Whether any of a notebook's cells run.</summary>
    public bool Runs(NotebookFile notebook) => Some is null || Some.Any(c => c.Notebook == notebook.Label);

    /// <summary>What the console says of it; null for a run of all cells that nobody asked to be another.</summary>
    /// <param name="ran">How many cells ran.</param>
    /// <param name="all">How many there are.</param>
    public string? Says(int ran, int all) => Because.Length == 0 ? null
        : Some is null ? FormattableString.Invariant($"Ran all {all} cells, since {Because}.")
        : FormattableString.Invariant($"Ran {ran} of {all} cells: {Because}.");
}
