using EightOhm.Record;

namespace EightOhm.Cli.Ends;

/// <summary>What a cell was to write into a record and did not.</summary>
/// <param name="Entries">The entries.</param>
/// <param name="Requirements">Its requirements.</param>
internal sealed record LostNames(IReadOnlySet<string> Entries, IReadOnlyCollection<LostRequirement> Requirements)
{
    public bool IsEmpty => Entries.Count + Requirements.Count == 0;
}
