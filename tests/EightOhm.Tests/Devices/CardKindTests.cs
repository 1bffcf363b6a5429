using EightOhm.Devices;
using EightOhm.Quantities;
using EightOhm.Supply;
using EightOhm.Thermal;

namespace EightOhm.Tests.Devices;

/// <summary>The cards beside transistors: read with their units, refused with the place of what contradicts itself.</summary>
public class CardKindTests
{
    [Fact]
    public void Every_kind_of_card_is_read_and_says_what_it_is()
    {
        Assert.Equal("25 A, 900 mV, 600 mV, 10 mΩ", Texts(Cards.Of<RectifierBridge>("bridge"), b => [b.AverageCurrent, b.Threshold, b.DropAtRest, b.SlopeResistance]));
        Assert.Equal("10 mF, 63 V, 6 A", Texts(Cards.Of<ReservoirCapacitor>("reservoir"), c => [c.Capacitance, c.RatedVoltage, c.RippleCurrent]));
        Assert.Equal(2000, Cards.Of<ReservoirCapacitor>("reservoir").Life.Hours, 9);
        Assert.Equal("800 VA, 230 V, 35 V, 6 %, 1.98 Ω", Texts(Cards.Of<MainsTransformer>("transformer"), t => [t.Rating, t.Primary, t.Secondary, t.Regulation, t.PrimaryResistance]));
        Assert.Equal("0.36 K/W, 300 mm", Texts(Cards.Of<HeatSinkCard>("sink"), s => [s.ToAir, s.Width]));
        Assert.Equal("60 V, 10 A, 10 ms, 33.33 mA", Texts(Cards.Of<Relay>("relay"), r => [r.DcVoltage, r.DcCurrent, r.ReleaseTime, r.CoilCurrent]));
        Assert.All(Cards.All, card => Assert.True(card.Invented && card.Source.StartsWith("Invented", StringComparison.Ordinal), card.Name));
    }

    [Fact]
    public void What_follows_from_a_bridge_is_computed()
    {
        var bridge = Cards.Of<RectifierBridge>("bridge");
        Assert.Equal(1.1, bridge.DropAt(20.A).Volts, 12);
        // Of a half-sine the mean of the square is a half, over half a period at 50 Hz: 300²/2·10 ms.
        Assert.Equal(450, bridge.SurgeIntegral.Si, 9);
        Assert.Contains("must be 0 A or more", Assert.Throws<RefusedValueException>(() => bridge.DropAt(-1.A)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_transformer_s_card_is_the_winding_that_its_nameplate_tells()
    {
        var winding = new DualWinding(Cards.Of<MainsTransformer>("transformer"));
        Assert.Equal(new DualWinding(35.V, 6.percent, 800.VA), winding);
    }

    [Fact]
    public void A_sink_s_size_gives_about_what_its_maker_rates()
    {
        var card = Cards.Of<HeatSinkCard>("sink");
        var sink = PlateFinSink.Of(card).At(card.RatedHeat, 35.degC);
        Assert.InRange(sink.Resistance.Si / card.ToAir.Si, 0.9, 1.1);
    }

    [Theory]
    [InlineData("bridge", "\"I_FSM\": \"300 A\"", "\"I_FSM\": \"30 A\"", "bridge.json, line 11, I_FSM: must be at least the peak of the half-sines of I_FAV, 39.27 A (was 30 A)")]
    [InlineData("bridge", "\"theta_JC\": \"1.4 K/W\"", "\"theta_JC\": \"2 K/W\"", "theta_JC: must keep the junction at T_J when I_FAV flows")]
    [InlineData("bridge", "\"V_D0\": \"0.6 V\"", "\"V_D0\": \"1 V\"", "V_D0: must be at most V_F0, 900 mV (was 1 V)")]
    [InlineData("bridge", "\"T_J\": \"150 °C\"", "\"T_J\": \"50 °C\"", "T_J: must be above T_C, 60 °C (was 50 °C)")]
    [InlineData("bridge", "\"V_RRM\": \"200 V\",", "", "\"V_RRM\" is missing")]
    [InlineData("bridge", "\"V_RRM\": \"200 V\"", "\"V_RRM\": \"200 A\"", "V_RRM: \"200 A\" is not a value of ElectricPotential")]
    [InlineData("bridge", "\"r_d\": \"10 mΩ\"", "\"r_d\": \"-10 mΩ\"", "r_d must be 0 Ω or more")]
    [InlineData("bridge", "rectifier bridge", "half bridge", "kind: must be one of \"power transistor\", \"rectifier bridge\"")]
    [InlineData("reservoir", "\"ESR\": \"25 mΩ\"", "\"ESR\": \"25 Ω\"", "ESR: must be at most the reactance of C at f_ripple, 159.2 mΩ (was 25 Ω)")]
    [InlineData("reservoir", "\"I_ripple\": \"6 A\"", "\"I_ripple\": \"60 A\"", "I_ripple: must heat the inside by 30 K at most")]
    [InlineData("reservoir", "\"I_ripple\": \"6 A\"", "\"I_ripple\": \"699999999999999999999 A\"", "I_ripple: must be no larger than ")]
    [InlineData("reservoir", "\"ESR\": \"25 mΩ\"", "\"ESR\": \"1e40 Ω\"", "ESR: must be no larger than ")]
    [InlineData("sink", "\"theta_SA\": \"0.36 K/W\"", "\"theta_SA\": \"1e-40 K/W\"", "theta_SA: must be no smaller than ")]
    [InlineData("reservoir", "\"tolerance\": \"20 %\"", "\"tolerance\": \"100 %\"", "tolerance: must be from 0 % to less than 100 % (was 100 %)")]
    [InlineData("transformer", "\"R_pri\": \"1.98 Ω\"", "\"R_pri\": \"19.8 Ω\"", "R_pri: must be at most what the regulation tells of all windings, 3.96")]
    [InlineData("transformer", "\"I_inrush\": \"120 A\"", "\"I_inrush\": \"1200 A\"", "I_inrush: must be at most what R_pri lets through at the mains' peak, 164.3 A (was 1.2 kA)")]
    [InlineData("transformer", "\"I_inrush\": \"120 A\"", "\"I_inrush\": \"1.2 A\"", "I_inrush: must be at least the peak of the rated current, 4.919 A (was 1.2 A)")]
    [InlineData("transformer", "\"regulation\": \"6 %\"", "\"regulation\": \"0 %\"", "regulation: must be greater than 0 %")]
    [InlineData("sink", "\"theta_SA\": \"0.36 K/W\"", "\"theta_SA\": \"0.036 K/W\"", "A figure for a fan is none for still air")]
    [InlineData("sink", "\"fins\": \"24\"", "\"fins\": \"1\"", "fins: must be from 2 to 10 000 (was 1)")]
    [InlineData("sink", "\"finThickness\": \"3 mm\"", "\"finThickness\": \"13 mm\"", "width: must be more than the 24 fins together, 312 mm (was 300 mm)")]
    [InlineData("relay", "\"V_dc\": \"60 V\"", "\"V_dc\": \"600 V\"", "Were dc and ac exchanged?")]
    [InlineData("relay", "\"I_carry\": \"16 A\"", "\"I_carry\": \"8 A\"", "I_ac: must be at most I_carry, 8 A (was 16 A)")]
    public void What_is_wrong_in_a_card_is_said_with_its_place(string card, string from, string to, string says)
    {
        var text = File.ReadAllText(Path.Combine(Cards.Design, card + ".json"));
        Assert.Contains(from, text, StringComparison.Ordinal);
        Assert.Contains(says, Assert.Throws<CardException>(() => DeviceCard.Parse<DeviceCard>(text.Replace(from, to, StringComparison.Ordinal), card + ".json")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_card_of_another_kind_is_refused() =>
        Assert.Contains("relay.json, line 1, kind: it is a relay; a rectifier bridge is expected.", Assert.Throws<CardException>(() => Cards.Of<RectifierBridge>("relay")).Message, StringComparison.Ordinal);

    private static string Texts<T>(T card, Func<T, object[]> figures) => string.Join(", ", figures(card).Select(f => QuantityFormat.Short(f)));
}
