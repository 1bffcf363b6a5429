using EightOhm.Devices;
using EightOhm.Quantities;
using EightOhm.Record;
using EightOhm.Tests.Devices;
using UnitsNet;

namespace EightOhm.Tests.Record;

/// <summary>Any kind of card is a part: kept with its kind, refused in a role of another.</summary>
public sealed class PartKindTests : IDisposable
{
    private readonly TestFolder _folder = new();

    public PartKindTests()
    {
        foreach (var card in Directory.GetFiles(Cards.Design))
            File.Copy(card, TestCards.Path(_folder, Path.GetFileName(card)));
    }

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_rule_takes_a_part_of_any_kind_and_the_file_keeps_it()
    {
        var record = _folder.Open();
        Assert.Equal(25, record.Part<RectifierBridge>("bridge", "bridge.json").AverageCurrent.Amperes);
        record.Part<Relay>("relay", "relay.json");
        record.Target("I_rail", 20.A);
        record.Require("bridge", "I_rail").AtMost((RectifierBridge bridge) => bridge.AverageCurrent);
        record.Compute("I_coil", (Relay relay) => relay.CoilCurrent);
        var again = _folder.Open();
        Assert.Equal(RequirementState.Met, Assert.Single(again.Compliance()).State);
        Assert.Equal("rectifier bridge", Assert.IsType<PartFile>(again.EntryOf("bridge").Value).Kind);
        Assert.Equal("200 V", QuantityFormat.Short(again.Part<RectifierBridge>("bridge").MaxReverseVoltage));
        Edit("bridge.json", "25 A", "15 A");
        Assert.Equal(RequirementState.NotMet, Assert.Single(_folder.Open().Compliance()).State);
        Edit("relay.json", "720 Ω", "700 Ω");
        Assert.Equal(EntryState.Stale, _folder.Open().EntryOf("I_coil").State);
    }

    [Fact]
    public void A_card_of_another_kind_is_refused_in_a_role()
    {
        var record = _folder.Open();
        Assert.Equal("bridge: relay.json is a relay; a rectifier bridge is expected.", Assert.Throws<RecordException>(() => record.Part<RectifierBridge>("bridge", "relay.json")).Message);
        record.Part<RectifierBridge>("bridge", "bridge.json");
        Assert.Equal("bridge: relay.json is a relay; a rectifier bridge is expected.", Assert.Throws<RecordException>(() => record.Set("bridge", "relay.json")).Message);
        Assert.StartsWith("bridge is a rectifier bridge already and cannot be a relay too.", Assert.Throws<RecordException>(() => record.Part<Relay>("bridge", "relay.json")).Message, StringComparison.Ordinal);
        Assert.Equal("bridge is a rectifier bridge, not a relay.", Assert.Throws<RecordException>(() => record.Part<Relay>("bridge")).Message);
        Assert.Contains("takes bridge for a relay, but the record has it as a rectifier bridge. Write (RectifierBridge bridge, …)", Assert.Throws<RecordException>(() => record.Compute("x", (Relay bridge) => bridge.CoilCurrent)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_card_that_became_another_kind_leaves_no_answer()
    {
        var record = _folder.Open();
        record.Part<RectifierBridge>("bridge", "bridge.json");
        record.Derive("V_PIV", (RectifierBridge bridge) => bridge.MaxReverseVoltage);
        File.Copy(TestCards.Path(_folder, "relay.json"), TestCards.Path(_folder, "bridge.json"), overwrite: true);
        var entry = _folder.Open().EntryOf("V_PIV");
        Assert.Equal((EntryState.NoAnswer, "bridge has no answer: bridge.json is a relay now, no longer a rectifier bridge"), (entry.State, entry.Reason));
    }

    private void Edit(string file, string from, string to)
    {
        var path = TestCards.Path(_folder, file);
        var text = File.ReadAllText(path);
        Assert.Contains(from, text, StringComparison.Ordinal);
        File.WriteAllText(path, text.Replace(from, to, StringComparison.Ordinal));
    }
}
