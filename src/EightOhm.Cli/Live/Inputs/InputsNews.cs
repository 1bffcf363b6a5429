using System.Text.Json.Nodes;
using EightOhm.Cli.Book;
using EightOhm.Display.Formulas;
using EightOhm.Record;

namespace EightOhm.Cli.Live.Inputs;

/// <summary>The inputs of a design as the page shows them: targets, choices, assumptions, parts.</summary>
internal static class InputsNews
{
    private static readonly (EntryRole Role, string Title, string Word)[] Groups =
        [(EntryRole.Target, "Targets", "target"), (EntryRole.Choice, "Choices", "choice"), (EntryRole.Assumption, "Assumptions", "assumption"), (EntryRole.Part, "Parts", "part")];

    /// <param name="record">The record as it stands.</param>
    /// <param name="kept">The inputs as they are saved.</param>
    /// <param name="sliders">What gives the rows their sliders.</param>
    /// <param name="chapters">The chapters that make each entry.</param>
    public static JsonObject Of(DesignRecord record, KeptInputs kept, Sliders sliders, ILookup<string, string> chapters)
    {
        var entries = record.Entries;
        var groups = Groups.Select(g => (g.Title, Rows: entries.Where(e => e.Role == g.Role).Select(e => Row(e, g.Word)).ToArray())).Where(g => g.Rows.Length > 0);
        return new JsonObject
        {
            ["name"] = record.Name,
            ["groups"] = new JsonArray([.. groups.Select(g => new JsonObject { ["title"] = g.Title, ["rows"] = new JsonArray([.. g.Rows]) })]),
        };

        JsonNode Row(Entry entry, string word) => new JsonObject
        {
            ["name"] = entry.Name,
            ["symbol"] = SymbolHtml.Write(entry.Name.Contains('_', StringComparison.Ordinal) || entry.Role != EntryRole.Part ? entry.Name : entry.Name.Replace('_', ' ')),
            ["note"] = entry.Note is { } note ? SymbolHtml.Write(note) : entry.Value is PartFile part ? PageTemplate.Escape(part.Device) : "",
            ["value"] = InputText.Of(entry),
            ["unit"] = entry.Kind is { Spoken: { } spoken } ? spoken.Symbol : entry.Kind?.Symbol ?? "",
            ["role"] = word,
            ["moved"] = entry.State == EntryState.Set,
            ["tried"] = kept.EntryOf(entry.Name) is { } was && InputText.Of(was) != InputText.Of(entry),
            ["chapters"] = new JsonArray([.. chapters[entry.Name].Select(c => JsonValue.Create(c))]),
            ["slider"] = sliders.Of(entry, kept)?.ToJson(),
        };
    }
}
