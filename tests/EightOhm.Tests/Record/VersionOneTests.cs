using System.Text.Json.Nodes;
using EightOhm.Quantities;
using EightOhm.Record;
using UnitsNet;

namespace EightOhm.Tests.Record;

/// <summary>A file of the first version, kept as it was: the demo's own, with 164 entries and every way in which a rule could be written.</summary>
public sealed class VersionOneTests : IDisposable
{
    private readonly TestFolder _folder = new();
    private readonly JsonNode _old;

    public VersionOneTests()
    {
        var example = Path.Combine(Docs.WrittenTable.Root(), "tests", "EightOhm.Tests", "Record", "Examples", "version-1.json");
        File.Copy(example, _folder.File);
        _old = JsonNode.Parse(_folder.Text)!;
    }

    private IEnumerable<JsonNode> OldEntries => _old["entries"]!.AsArray()!;

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Every_entry_is_there_with_the_value_it_had()
    {
        var record = _folder.Open();
        Assert.Equal("Tern 100, an invented amplifier", record.Name);
        foreach (var old in OldEntries)
        {
            var entry = record.EntryOf((string)old["name"]!);
            Assert.Equal((double)old["value"]!["value"]!, KeptValue.Number(entry.Kind!, entry.Value!));
            Assert.Equal((string?)old["note"], entry.Note);
            Assert.Equal((string)old["role"]! switch { "Given" => EntryRole.Target, "Let" => EntryRole.Derived, _ => EntryRole.Computed }, entry.Role);
            Assert.True(entry.IsCurrent, $"{entry.Name}: {entry.Reason}");
            if ((string)old["role"]! != "Given")
                Assert.Equal(old["from"]!.AsObject().Select(f => f.Key), entry.From);
        }
    }

    [Fact]
    public void Every_requirement_is_there_and_its_limits_are_targets_now()
    {
        var record = _folder.Open();
        var sheet = record.Compliance();
        var old = _old["requirements"]!.AsArray();
        Assert.Equal(old.Count, sheet.Count);
        foreach (var (was, now) in old.Zip(sheet))
        {
            Assert.Equal((string)was!["entry"]!, now.Entry);
            Assert.StartsWith((string)was["says"]!, now.Key, StringComparison.Ordinal);
            Assert.Equal(RequirementState.Met, now.State);
            Assert.All(now.Limits, l => Assert.Equal(EntryRole.Target, record.EntryOf(l).Role));
        }

        Assert.Equal("at least 30 V/µs (SR_min)", sheet.First(r => r.Entry == "SR").Limit);
        record.Set("SR_min", "60 V/µs");
        Assert.Equal(RequirementState.NotMet, record.Compliance("SR")[0].State);
    }

    [Fact]
    public void Every_function_of_the_first_version_is_found_by_its_old_name()
    {
        var names = OldEntries.Where(e => e["expression"] is not null).SelectMany(e => Names(e["expression"]!)).Distinct().ToList();
        Assert.Equal(26 + 3, names.Count);
        Assert.All(names, name => Assert.True(Vocabulary.Knows(VersionOneRules.Name(name)), name));
    }

    [Fact]
    public void Reading_writes_nothing_and_the_first_change_writes_the_present_version()
    {
        var before = _folder.Text;
        var record = _folder.Open();
        record.Target("P", 100.W);
        Assert.Equal(before, _folder.Text);
        var seen = Seen(record);
        record.Set("P", "120 W");
        record.ClearSet("P");
        Assert.Contains("\"version\": 2", _folder.Text, StringComparison.Ordinal);
        Assert.Equal(seen, Seen(_folder.Open()));
    }

    [Theory]
    [InlineData("\"version\": 1", "\"version\": 1, \"colour\": 2", "\"colour\" is not known here")]
    [InlineData("\"role\": \"Let\"", "\"role\": \"Lost\"", "the role \"Lost\" is not known; known are Given, Let, Found")]
    [InlineData("\"do\": \"Multiply\"", "\"do\": \"Assign\"", "\"Assign\" is not an operator of a rule")]
    [InlineData("\"call\": \"EightOhm.Quantities.Maths.Sqrt(SquaredVoltage)\"", "\"call\": \"System.IO.File.Delete(String)\"", "is not among EightOhm's own functions")]
    [InlineData("\"value\": 8,", "\"value\": -8,", "R_L must be 0 Ω or more (was −8 Ω)")]
    [InlineData("\"value\": 8,", "\"value\": \"8\",", "a number is expected")]
    [InlineData("\"sense\": \"AtLeast\"", "\"sense\": \"About\"", "\"About\" is not a limit")]
    public void A_damaged_file_of_the_first_version_is_refused_at_its_line(string old, string with, string reason)
    {
        var at = _folder.Text.IndexOf(old, StringComparison.Ordinal);
        var line = _folder.Text[..at].Count(c => c == '\n') + 1;
        _folder.Put(_folder.Text[..at] + with + _folder.Text[(at + old.Length)..]);
        var e = Assert.Throws<RecordFileException>(_folder.Open);
        Assert.Contains(reason, e.Message, StringComparison.Ordinal);
        Assert.Equal(line, e.Line);
    }

    [Fact]
    public void A_found_that_named_nothing_hangs_on_all_and_has_to_be_computed_again()
    {
        _folder.Put("""
            { "format": "eightohm-record", "version": 1, "design": "d", "entries": [
              { "name": "a", "role": "Given", "value": { "value": 1, "unit": "", "kind": "Double", "reads": "1" } },
              { "name": "b", "role": "Found", "value": { "value": 2, "unit": "", "kind": "Double", "reads": "2" }, "from": {} } ],
              "requirements": [] }
            """);
        var entry = _folder.Open().EntryOf("b");
        Assert.Equal((true, EntryState.Stale, "what it came from was not kept; compute it again"), (entry.HangsOnAll, entry.State, entry.Reason));
    }

    private static IEnumerable<string> Names(JsonNode node) => node switch
    {
        JsonObject o => o.SelectMany(m => m.Key is "call" or "read" or "new" ? [(string)m.Value!] : m.Value is null ? [] : Names(m.Value)),
        JsonArray a => a.SelectMany(i => Names(i!)),
        _ => [],
    };

    private static List<string> Seen(DesignRecord record) =>
        [.. record.Entries.Select(e => $"{e.Name} {e.Role} {e.State} {e.Reads} {KeptValue.Fingerprint(e.Kind!, e.Value!)} {e.Rule} {string.Join(' ', e.From)} {e.Note}"), .. record.Compliance().Select(r => r.ToString())];
}
