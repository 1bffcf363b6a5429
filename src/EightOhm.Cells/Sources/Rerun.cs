namespace EightOhm.Cells.Sources;

/// <summary>Which cells of a notebook must run when entries have moved.</summary>
/// <param name="Moved">The cells that must run again, in order: what they compute, show, keep or hold can be another now.</param>
/// <param name="NeededBefore">The other cells that must run before and between those in a fresh kernel, in order: what they define is used.</param>
/// <param name="MovedEntries">The entries and requirements that have moved, those asked about and those that come from them; to be handed to the next notebook of the folder.</param>
public sealed record Rerun(IReadOnlyList<int> Moved, IReadOnlyList<int> NeededBefore, IReadOnlyList<EntryName> MovedEntries)
{
    /// <summary>All cells for a fresh kernel, in order.</summary>
    public IReadOnlyList<int> InAFreshKernel => [.. Moved.Concat(NeededBefore).Order()];
}
