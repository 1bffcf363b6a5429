using EightOhm.SafeAreas;
using EightOhm.Devices;
using EightOhm.Quantities;

namespace EightOhm.Tests.Devices;

public class TransistorTests
{
    private readonly string text = File.ReadAllText(Cards.Output);

    [Fact]
    public void A_card_is_read_with_its_units()
    {
        var card = Transistor.Load(Cards.Output);
        Assert.True(card.Invented);
        Assert.Equal("200 V, 15 A, 150 W, 0.83 K/W, 30 MHz, 52.5 mΩ, 150 °C", string.Join(", ", QuantityFormat.Short(card.MaxCollectorEmitterVoltage), QuantityFormat.Short(card.MaxCollectorCurrent), QuantityFormat.Short(card.MaxPowerDissipation), QuantityFormat.Short(card.JunctionToCase), QuantityFormat.Short(card.TransitionFrequency), QuantityFormat.Short(card.InternalEmitterResistance), QuantityFormat.Short(card.MaxJunctionTemperature)));
        Assert.Equal(Polarity.Npn, card.Polarity);
        Assert.Equal("dc: 10 V/15 A, 50 V/3 A, 100 V/900 mA, 200 V/200 mA", card.SafeAreaLines[0].ToString());
        Assert.Contains("(invented)", card.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_card_beside_the_notebooks_is_a_card_and_says_that_it_is_invented()
    {
        var files = Directory.GetFiles(Cards.Folder, "*.json");
        Assert.Equal(4, files.Length);
        foreach (var card in files.Select(Transistor.Load))
        {
            Assert.True(card.Invented, card.Name);
            Assert.StartsWith("Invented", card.Source, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData(3, 60)]
    [InlineData(0.01, 70)]
    [InlineData(15, 12)]
    [InlineData(1.7320508075688772, 70)] // half way from 1 A to 3 A on a logarithmic scale
    public void Gain_is_read_over_the_logarithm_of_the_current(double amperes, double gain) =>
        Assert.Equal(gain, Transistor.Load(Cards.Output).GainAt(amperes.A), 9);

    [Fact]
    public void A_current_beyond_the_gain_table_is_refused() =>
        Assert.Contains("from 10 mA to 15 A", Assert.Throws<RefusedValueException>(() => Transistor.Load(Cards.Output).GainAt(16.A)).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("\"f_T\": \"30 MHz\",", "", "\"f_T\" is missing")]
    [InlineData("\"f_T\"", "\"f_t\"", "f_t: \"f_t\" is not known here; allowed are format, version")]
    [InlineData("\"30 MHz\"", "\"30 ns\"", "f_T: \"30 ns\" is not a value of Frequency")]
    [InlineData("\"30 MHz\"", "30", "f_T: a text in quotes is expected")]
    [InlineData("\"0.83 K/W\"", "\"0 K/W\"", "theta_JC: must be greater than 0 K/W")]
    [InlineData("\"npn\"", "\"NPN\"", "polarity: must be npn or pnp (was NPN)")]
    [InlineData("eightohm-card", "something else", "format: must be \"eightohm-card\"")]
    [InlineData("\"version\": 1", "\"version\": 2", "version: must be 1: a newer card needs a newer EightOhm")]
    [InlineData("\"invented\": true", "\"invented\": \"yes\"", "invented: true or false is expected")]
    [InlineData("\"150 °C\"", "\"20 °C\"", "T_J: must be above T_ref, 25 °C")]
    [InlineData("{ \"V_CE\": \"50 V\", \"I_C\": \"3.0 A\" }", "{ \"V_CE\": \"50 V\", \"I_C\": \"16 A\" }", "safeArea.lines[0]: points must descend")]
    [InlineData("{ \"V_CE\": \"50 V\", \"I_C\": \"3.0 A\" }", "{ \"V_CE\": \"9 V\", \"I_C\": \"3.0 A\" }", "safeArea.lines[0]: points must descend")]
    [InlineData("{ \"V_CE\": \"50 V\", \"I_C\": \"3.0 A\" }", "{ \"V_CE\": \"50 V\", \"I\": \"3.0 A\" }", "safeArea.lines[0].points[1].I: \"I\" is not known here; allowed are V_CE, I_C")]
    [InlineData("{ \"V_CE\": \"50 V\", \"I_C\": \"3.0 A\" }", "{ \"V_CE\": \"50 V\", \"I_C\": \"2.0 A\" }", "must lie on one heat")]
    [InlineData("{ \"V_CE\": \"100 V\", \"I_C\": \"0.9 A\" }", "{ \"V_CE\": \"100 V\", \"I_C\": \"1.6 A\" }", "must fall faster than those of constant heat")]
    [InlineData("\"secondBreakdownFrom\": \"50 V\"", "\"secondBreakdownFrom\": \"60 V\"", "must be the voltage of one of the points, 10 V, 50 V, 100 V, 200 V (was 60 V)")]
    [InlineData("\"secondBreakdownLeft\": \"0 %\"", "\"secondBreakdownLeft\": \"120 %\"", "from 0 % to 100 % (was 120 %)")]
    [InlineData("\"pulse\": \"dc\"", "\"pulse\": \"1 s\"", "safeArea.lines: the dc line is expected first")]
    [InlineData("{ \"I_C\": \"1 A\", \"h_FE\": \"80\" }", "{ \"I_C\": \"4 A\", \"h_FE\": \"80\" }", "h_FE: two points or more are expected, in the order of their currents")]
    public void What_is_wrong_in_a_card_is_said_with_its_place(string from, string to, string says)
    {
        Assert.Contains(from, text, StringComparison.Ordinal);
        var at = text.IndexOf(from, StringComparison.Ordinal);
        var thrown = Assert.Throws<CardException>(() => Transistor.Parse(text[..at] + to + text[(at + from.Length)..], "demo.json"));
        Assert.Contains(says, thrown.Message, StringComparison.Ordinal);
        Assert.StartsWith("demo.json, line ", thrown.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "the file is empty")]
    [InlineData("{ \"format\": ", "not JSON")]
    [InlineData("[]", "an object { … } is expected")]
    [InlineData("{ \"format\": \"eightohm-card\", \"format\": \"eightohm-card\" }", "stands here twice")]
    public void What_is_no_card_is_refused(string json, string says) =>
        Assert.Contains(says, Assert.Throws<CardException>(() => Transistor.Parse(json)).Message, StringComparison.Ordinal);

    [Fact]
    public void A_file_that_is_not_there_is_named() =>
        Assert.Contains("nowhere.json, line 1: there is no such file in ", Assert.Throws<CardException>(() => Transistor.Load("cards/nowhere.json")).Message, StringComparison.Ordinal);
}
