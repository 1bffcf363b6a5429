using EightOhm.Cli.WhatIf;

namespace EightOhm.Cli.Sheets;

/// <summary>The sheets of the designs of a run.</summary>
internal static class DesignSheets
{
    /// <param name="copies">The records as the run left them.</param>
    /// <param name="set">What was set for the run.</param>
    public static IReadOnlyList<DesignSheet> Of(RecordCopies copies, IReadOnlyList<SetValue> set) =>
    [
        .. from copy in copies.All
           from record in copy.Records
           let file = Path.GetFileName(record.Path)
           select new DesignSheet(
               record.Name,
               copy.Home.Name.Length > 0 ? $"{copy.Home.Name}/{file}" : file,
               new ComplianceSheet(record.Compliance()),
               Movement.Of(set, copy, record)),
    ];

    /// <summary>How the requirements of all stand, a sentence each design: "Tern 100: 31 met, 4 not met."</summary>
    public static IEnumerable<string> Tallies(IReadOnlyList<DesignSheet> designs) => designs.Count switch
    {
        0 => [ComplianceSheet.Nothing],
        1 => [designs[0].Compliance.Tally],
        _ => designs.Select(d => $"{d.Name}: {d.Compliance.Tally}"),
    };
}
