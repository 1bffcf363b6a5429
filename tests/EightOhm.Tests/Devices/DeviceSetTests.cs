using EightOhm.Devices;
using EightOhm.Quantities;

namespace EightOhm.Tests.Devices;

/// <summary>The shipped set, a folder of one's own, and choosing from either.</summary>
public sealed class DeviceSetTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("eightohm-cards-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Every_shipped_card_says_that_it_is_invented_and_none_has_another_s_name()
    {
        var cards = DeviceSet.Shipped.Cards;
        Assert.All(cards, c => Assert.True(c.Invented && c.Source.StartsWith("Invented", StringComparison.Ordinal), c.Name));
        Assert.Equal(cards.Count, cards.Select(c => c.Name).Distinct().Count());
    }

    [Fact]
    public void The_shipped_set_has_every_kind_and_both_polarities_of_each_size()
    {
        var set = DeviceSet.Shipped;
        Assert.Equal(
            set.Of<Transistor>().Where(t => t.Polarity == Polarity.Npn).Select(t => t.Name.Replace("npn", "pnp", StringComparison.Ordinal).Replace("Npn", "Pnp", StringComparison.Ordinal)).Order(),
            set.Of<Transistor>().Where(t => t.Polarity == Polarity.Pnp).Select(t => t.Name).Order());
        Assert.Equal([60, 150, 250], set.Of<Transistor>().Where(t => t.Name.StartsWith("Output", StringComparison.Ordinal) && t.Polarity == Polarity.Npn).Select(t => (double)t.MaxPowerDissipation.Watts).Order());
        Assert.Equal((50, 2000), (set.Of<TransformerSize>().Min(s => s.Rating.Voltamperes), set.Of<TransformerSize>().Max(s => s.Rating.Voltamperes)));
        Assert.InRange(set.Of<HeatSinkCard>().Min(s => s.ToAir.Si), 0, 0.1);
        Assert.InRange(set.Of<HeatSinkCard>().Max(s => s.ToAir.Si), 1.5, 10);
        Assert.NotEmpty(set.Of<RectifierBridge>());
        Assert.NotEmpty(set.Of<ReservoirCapacitor>());
        Assert.NotEmpty(set.Of<Relay>());
    }

    [Fact]
    public void A_sink_s_size_gives_about_what_its_card_rates()
    {
        foreach (var card in DeviceSet.Shipped.Of<HeatSinkCard>())
            Assert.InRange(EightOhm.Thermal.PlateFinSink.Of(card).At(card.RatedHeat, 35.degC).Resistance.Si / card.ToAir.Si, 0.9, 1.05);
    }

    [Fact]
    public void A_transformer_is_wound_to_order_and_its_card_reads_the_same()
    {
        var size = DeviceSet.Shipped.Of<TransformerSize>().First(s => s.Rating.Voltamperes == 800);
        var wound = size.Wound(230.V, 35.V, 50.Hz);
        Assert.Equal((800, 230, 35, 50), (wound.Rating.Voltamperes, wound.Primary.Volts, wound.Secondary.Volts, wound.Mains.Hertz));
        // Half of the copper: 0.5·0.06·230²/800, in four digits.
        Assert.Equal(1.984, wound.PrimaryResistance.Ohms, 3);
        Assert.Equal(size.Regulation, wound.Regulation);
        Assert.Contains("must be greater than 0 V", Assert.Throws<RefusedValueException>(() => size.Wound(230.V, 0.V, 50.Hz)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_smallest_that_is_enough_is_chosen_and_the_reason_holds_no_number()
    {
        var pick = DeviceSet.Shipped.Smallest<RectifierBridge>(b => b.AverageCurrent.Amperes, new DeviceNeed<RectifierBridge>("average current", b => b.AverageCurrent.Amperes / 7), new DeviceNeed<RectifierBridge>("reverse voltage", b => b.MaxReverseVoltage.Volts / 100))!;
        Assert.Equal(15, pick.Device.AverageCurrent.Amperes);
        Assert.True(pick.IsEnough);
        Assert.Equal("the smallest of the set with enough average current and reverse voltage", pick.Because);
    }

    [Fact]
    public void Where_none_is_enough_the_nearest_is_taken_and_said()
    {
        var pick = DeviceSet.Shipped.Smallest<RectifierBridge>(b => b.AverageCurrent.Amperes, new DeviceNeed<RectifierBridge>("average current", b => b.AverageCurrent.Amperes / 500), new DeviceNeed<RectifierBridge>("reverse voltage", b => b.MaxReverseVoltage.Volts / 100))!;
        Assert.Equal(50, pick.Device.AverageCurrent.Amperes);
        Assert.False(pick.IsEnough);
        Assert.Equal("the nearest of the set; none has enough average current", pick.Because);
        // Nothing is near at all: still the largest, not the first.
        Assert.Equal(50, DeviceSet.Shipped.Smallest<RectifierBridge>(b => b.AverageCurrent.Amperes, new DeviceNeed<RectifierBridge>("anything", _ => -3))!.Device.AverageCurrent.Amperes);
    }

    [Fact]
    public void A_folder_of_one_s_own_cards_is_a_set()
    {
        Directory.CreateDirectory(Path.Combine(folder, "deeper"));
        File.Copy(Path.Combine(Cards.Design, "bridge.json"), Path.Combine(folder, "deeper", "mine.json"));
        var set = DeviceSet.Load(folder);
        Assert.Equal(25, Assert.Single(set.Of<RectifierBridge>()).AverageCurrent.Amperes);
        Assert.Equal(File.ReadAllText(Path.Combine(folder, "deeper", "mine.json")), set.TextOf(set.Cards[0]));
        Assert.Null(set.Smallest<Relay>(r => r.DcCurrent.Amperes));
    }

    [Fact]
    public void A_folder_without_cards_or_with_a_damaged_one_is_refused()
    {
        Assert.Contains("no card (*.json) is in that folder", Assert.Throws<CardException>(() => DeviceSet.Load(folder)).Message, StringComparison.Ordinal);
        Assert.Contains("there is no such folder of cards", Assert.Throws<CardException>(() => DeviceSet.Load(Path.Combine(folder, "none"))).Message, StringComparison.Ordinal);
        File.WriteAllText(Path.Combine(folder, "bad.json"), "{ \"format\": \"eightohm-card\",\n \"version\": 1, \"kind\": \"relay\" }");
        Assert.StartsWith("bad.json, line 1: \"name\" is missing", Assert.Throws<CardException>(() => DeviceSet.Load(folder)).Message, StringComparison.Ordinal);
    }
}
