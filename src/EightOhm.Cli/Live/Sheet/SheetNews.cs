using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using EightOhm.Cli.Live.Inputs;
using EightOhm.Cli.Sheets;
using EightOhm.Display.Formulas;
using EightOhm.Display.Tables;
using EightOhm.Record;

namespace EightOhm.Cli.Live.Sheet;

/// <summary>How one design stands, as the page shows it: the count, each requirement, what is tried, and what moved with it.</summary>
internal static partial class SheetNews
{
    /// <param name="record">The record as it stands.</param>
    /// <param name="kept">The record as it is saved; null where none is.</param>
    /// <param name="keeps">The inputs whose tried values are to be saved.</param>
    /// <param name="chapters">The chapters that ask each requirement, by its label as written.</param>
    public static JsonObject Of(DesignRecord record, DesignRecord? kept, IReadOnlySet<string> keeps, ILookup<string, string> chapters)
    {
        var rows = new ComplianceSheet(record.Compliance()).Rows;
        var changes = kept is null ? null : RecordChanges.Compare(kept, record);
        return new JsonObject
        {
            ["name"] = record.Name,
            ["tally"] = new JsonObject
            {
                ["met"] = rows.Count(r => r.State == RequirementState.Met),
                ["notMet"] = rows.Count(r => r.State == RequirementState.NotMet),
                ["cannotTell"] = rows.Count(r => r.State == RequirementState.CannotTell),
                ["stale"] = rows.Count(r => r.State == RequirementState.Stale),
            },
            ["requirements"] = new JsonArray([.. rows.Select(r => Requirement(r, chapters))]),
            ["tried"] = new JsonArray([.. (changes is null ? [] : LiveFolder.TriedIn(changes)).Select(m => Tried(m, keeps))]),
            ["moved"] = changes is null ? [] : new JsonArray([.. changes.Requirements.Select(Moved), .. changes.Entries.Select(Moved)]),
        };
    }

    private static JsonObject Requirement(Requirement r, ILookup<string, string> chapters) => new()
    {
        ["key"] = r.Key,
        ["label"] = Typeset(r.Label),
        ["state"] = Word(r.State),
        ["value"] = Typeset(r.Value),
        ["limit"] = Typeset(r.Limit),
        ["words"] = Words(r),
        ["chapter"] = chapters[r.Key].FirstOrDefault(),
    };

    private static string Words(Requirement r)
    {
        string?[] parts = [r.Reason ?? (r.Margin is { } margin ? $"{margin} to spare" : null), r.Where is { Length: > 0 } where ? $"at {where}" : null];
        return Typeset(string.Join(", ", parts.OfType<string>()));
    }

    private static JsonObject Tried(EntryChange change, IReadOnlySet<string> keeps) => new()
    {
        ["name"] = change.Name,
        ["symbol"] = SymbolHtml.Write(change.Name),
        ["before"] = InputText.Of(change.Before!),
        ["now"] = InputText.Of(change.After!),
        ["kept"] = keeps.Contains(change.Name),
    };

    private static JsonObject Moved(RequirementChange change) => new()
    {
        ["name"] = (change.After ?? change.Before)!.Key,
        ["symbol"] = Typeset(change.Label),
        ["before"] = Typeset(change.Before?.Value ?? "–"),
        ["now"] = Typeset(change.After?.Value ?? "–"),
        ["kind"] = "requirement",
        ["state"] = change.After is { } after ? Word(after.State) : null,
        ["broke"] = change.Broke,
        ["cures"] = change.Cures.Count > 0 ? Typeset(ChangeTables.Cures(change)) : null,
        ["chain"] = Chain(change.Chains is [var chain, ..] ? chain : []),
    };

    private static JsonObject Moved(EntryChange change) => new()
    {
        ["name"] = change.Name,
        ["symbol"] = SymbolHtml.Write(change.Name),
        ["before"] = Typeset(ChangeTables.Reads(change.Before)),
        ["now"] = Typeset(ChangeTables.Reads(change.After)),
        ["kind"] = "entry",
        ["state"] = change.After is { State: EntryState.Stale } ? "stale" : null,
        ["chain"] = Chain(change.Chain),
    };

    private static JsonArray Chain(IReadOnlyList<string> names) => new([.. names.Select(n => JsonValue.Create(n))]);

    private static string Word(RequirementState state) => state switch
    {
        RequirementState.Met => "met",
        RequirementState.NotMet => "notMet",
        RequirementState.Stale => "stale",
        _ => "cannotTell",
    };

    // A number and its unit stay on one line.
    private static string Typeset(string text) => SymbolHtml.Write(Unit().Replace(text, " "));

    [GeneratedRegex(@"(?<=[0-9]) (?=[%°ΩVAWKHJFkmµnpM])")]
    private static partial Regex Unit();
}
