using EightOhm.Devices;
using EightOhm.Quantities;
using EightOhm.Record;
using UnitsNet;

namespace EightOhm.Tests.Record;

/// <summary>Swap, edit or remove a card, and nothing that hangs on it is called met by what it was.</summary>
public sealed class PartTests : IDisposable
{
    private readonly TestFolder _folder = new();
    private readonly DesignRecord _record;

    public PartTests()
    {
        TestCards.Demo(_folder);
        _record = _folder.Open();
        Assert.Equal(Polarity.Npn, _record.Part("output npn", "npn.json").Polarity);
        _record.Target("T_case", 80.degC);
        _record.Target("P_d", 40.W);
        _record.Derive("T_j", (Transistor output_npn, Power P_d, Temperature T_case) => T_case + output_npn.JunctionToCase * P_d);
        _record.Compute("I_max", (Transistor output_npn) => output_npn.MaxCollectorCurrent);
        _record.Require("junction of the {output_npn}", "T_j").AtMost((Transistor output_npn) => output_npn.MaxJunctionTemperature);
    }

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_part_is_an_entry_with_its_file_its_hash_and_its_device()
    {
        var entry = _folder.Open().EntryOf("output_npn");
        var part = Assert.IsType<PartFile>(entry.Value);
        Assert.Equal((EntryRole.Part, EntryState.InForce, "npn.json", 32), (entry.Role, entry.State, part.File, part.Hash.Length));
        Assert.Equal($"{part.Device} (npn.json)", entry.Reads);
        var requirement = Assert.Single(_folder.Open().Compliance());
        Assert.Equal(($"junction of the {part.Device}", "113.2 °C", "at most 150 °C (T_J)", RequirementState.Met), (requirement.Label, requirement.Value, requirement.Limit, requirement.State));
    }

    [Fact]
    public void Another_card_moves_the_rules_and_makes_stale_what_was_computed()
    {
        TestCards.Demo(_folder, "other.json");
        TestCards.Edit(_folder, "other.json", "0.83 K/W", "0.87 K/W");
        _record.Set("output_npn", "other.json");
        var record = _folder.Open();
        Assert.Equal((EntryState.Set, "the chapter says npn.json"), State(record, "output_npn"));
        Assert.Equal("114.8 °C", record.EntryOf("T_j").Reads);
        Assert.Equal((RequirementState.Met, "114.8 °C"), (record.Compliance()[0].State, record.Compliance()[0].Value));
        Assert.Equal((EntryState.Stale, "output_npn moved: it is other.json as it stands now"), State(record, "I_max"));
        Assert.Equal(0.87, record.Part("output npn", "npn.json").JunctionToCase.Si);
        record.ClearSet("output_npn");
        Assert.Equal("113.2 °C", record.EntryOf("T_j").Reads);
        Assert.True(record.EntryOf("I_max").IsCurrent);
    }

    [Fact]
    public void A_card_edited_in_its_place_is_seen_at_once()
    {
        TestCards.Edit(_folder, "npn.json", "30 MHz", "25 MHz");
        Assert.Equal((EntryState.Stale, "npn.json changed since the chapter read it"), State(_record, "output_npn"));
        Assert.Equal(EntryState.Stale, _record.EntryOf("I_max").State);
        // A rule reads the card as it is now, and so belongs to it.
        Assert.True(_record.EntryOf("T_j").IsCurrent);
        // Computed by a cell that holds the card as it was: it belongs to the old text.
        _record.Compute("I_max", 15.A);
        Assert.Equal(EntryState.Stale, _record.EntryOf("I_max").State);
        _record.Part("output npn", "npn.json");
        _record.Compute("I_max", 12.A);
        Assert.True(_folder.Open().EntryOf("I_max").IsCurrent);
    }

    [Fact]
    public void Line_ends_of_a_checkout_are_no_change()
    {
        TestCards.Edit(_folder, "npn.json", "\n", "\r\n");
        Assert.Equal(EntryState.InForce, _record.EntryOf("output_npn").State);
    }

    [Fact]
    public void A_card_that_is_missing_or_damaged_leaves_no_answer_and_says_which_file_and_line()
    {
        File.Delete(TestCards.Path(_folder, "npn.json"));
        foreach (var record in new[] { _record, _folder.Open() })
        {
            Assert.Equal((EntryState.NoAnswer, "the card npn.json is missing"), State(record, "output_npn"));
            Assert.Equal((EntryState.NoAnswer, "output_npn has no answer: the card npn.json is missing"), State(record, "T_j"));
            Assert.Equal(EntryState.NoAnswer, record.EntryOf("I_max").State);
            Assert.Equal((RequirementState.CannotTell, "output_npn has no answer: the card npn.json is missing"), (record.Compliance()[0].State, record.Compliance()[0].Reason));
            Assert.Throws<RecordException>(() => record.Part("output npn"));
        }

        TestCards.Demo(_folder);
        TestCards.Edit(_folder, "npn.json", "0.83 K/W", "0.83 lightyears");
        Assert.Matches("npn.json, line [0-9]+, theta_JC: ", _folder.Open().EntryOf("output_npn").Reason);
        TestCards.Demo(_folder);
        Assert.Equal(RequirementState.Met, _record.Compliance()[0].State);
        Assert.Throws<CardException>(() => _record.Part("output npn", "nowhere.json"));
        Assert.Contains("nowhere.json", Assert.Throws<RecordException>(() => _record.Set("output_npn", "nowhere.json")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_runner_that_works_on_copies_finds_the_cards_at_home()
    {
        using var elsewhere = new TestFolder();
        File.Copy(_folder.File, elsewhere.File);
        using (RecordFolder.Use(Path.GetDirectoryName(elsewhere.File)!, parts: Path.GetDirectoryName(_folder.File)))
            Assert.Equal(EntryState.InForce, DesignRecord.Open("tern.json").EntryOf("output_npn").State);
        Assert.Equal(EntryState.NoAnswer, elsewhere.Open().EntryOf("output_npn").State);
    }

    private static (EntryState, string?) State(DesignRecord record, string name) => (record.EntryOf(name).State, record.EntryOf(name).Reason);
}
