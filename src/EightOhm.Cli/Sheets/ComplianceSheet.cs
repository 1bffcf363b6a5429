using EightOhm.Display.Tables;
using EightOhm.Record;

namespace EightOhm.Cli.Sheets;

/// <summary>How the requirements of a design stand: failures first, and counted in words.</summary>
/// <param name="requirements">The requirements of a record, in the order they were made.</param>
internal sealed class ComplianceSheet(IEnumerable<Requirement> requirements)
{
    /// <summary>What is said where there is nothing to judge.</summary>
    public const string Nothing = "The record holds no requirements.";

    private readonly List<Requirement> rows = [.. requirements.OrderBy(Rank)];

    /// <summary>The requirements in the order in which they are to be looked at: failures first.</summary>
    public IReadOnlyList<Requirement> Rows => rows;

    public Table Table => WithoutEmptyColumns(RecordTables.Compliance(rows));

    /// <summary>The requirements that are not known to be met, failures first.</summary>
    public IEnumerable<Requirement> Open => rows.Where(r => r.State != RequirementState.Met);

    public bool AllMet => rows.All(r => r.State == RequirementState.Met);

    /// <summary>One sentence: "31 met, 4 not met, 2 cannot be told."</summary>
    public string Tally => rows.Count == 0
        ? Nothing
        : string.Join(", ", rows.GroupBy(Rank).OrderBy(g => g.Key == 3 ? -1 : g.Key).Select(g => $"{g.Count()} {Word(g.Key)}")) + ".";

    // What is to be mended first comes first.
    private static int Rank(Requirement requirement) => requirement.State switch
    {
        RequirementState.NotMet => 0,
        RequirementState.CannotTell => 1,
        RequirementState.Stale => 2,
        _ => 3,
    };

    private static string Word(int rank) => rank switch { 0 => "not met", 1 => "cannot be told", 2 => "stale", _ => "met" };

    // Where no requirement holds over conditions, nothing says where.
    private static Table WithoutEmptyColumns(Table table)
    {
        var kept = Enumerable.Range(0, table.Headings.Count).Where(i => table.Rows.Count == 0 || table.Rows.Any(r => r[i].Length > 0)).ToList();
        return table with
        {
            Headings = [.. kept.Select(i => table.Headings[i])],
            Rows = [.. table.Rows.Select(IReadOnlyList<string> (r) => [.. kept.Select(i => r[i])])],
            Figures = [.. table.Figures.Where(kept.Contains).Select(f => kept.IndexOf(f))],
        };
    }
}
