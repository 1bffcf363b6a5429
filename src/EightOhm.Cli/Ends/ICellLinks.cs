using EightOhm.Cli.Notebooks;

namespace EightOhm.Cli.Ends;

/// <summary>What hangs on what between the cells of a run.</summary>
internal interface ICellLinks
{
    /// <summary>What a cell needs and a lost cell was to give; null when it can run without them.</summary>
    /// <param name="place">The cell about to run.</param>
    /// <param name="lost">The cells that gave nothing so far.</param>
    CellNeed? Need(CellPlace place, IReadOnlyList<CellEnd> lost);

    /// <summary>The entries that a cell writes into a record and the labels of its requirements, as far as it did not come to them.</summary>
    /// <param name="place">The cell.</param>
    /// <param name="reached">The line that the cell had come to, from 1; null when it did not run, or nobody can tell.</param>
    IReadOnlyCollection<string> Lost(CellPlace place, int? reached);
}

/// <summary>A name that a lost cell was to give.</summary>
/// <param name="Name">A variable, a function or an entry, in words.</param>
/// <param name="Lost">The cell.</param>
internal sealed record CellNeed(string Name, CellEnd Lost);
