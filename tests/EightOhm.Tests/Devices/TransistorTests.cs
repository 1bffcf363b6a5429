using EightOhm.Devices;
using EightOhm.Quantities;
using EightOhm.SafeAreas;

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
    [InlineData("\"P\": \"150 W\"", "\"P\": \"62.5 W\"", "theta_JC: must agree with P, T_J and T_ref within 5")]
    [InlineData("\"theta_JC\": \"0.83 K/W\"", "\"theta_JC\": \"0.9 K/W\"", "theta_JC: must agree with P, T_J and T_ref within 5")]
    [InlineData("\"P\": \"150 W\",\n  \"T_ref\": \"25 °C\",\n  \"T_J\": \"150 °C\",\n  \"theta_JC\": \"0.83 K/W\"", "\"P\": \"62.5 W\",\n  \"T_ref\": \"25 °C\",\n  \"T_J\": \"150 °C\",\n  \"theta_JC\": \"2.0 K/W\"", "safeArea.lines[0].points[0]: a corner of the dc line must not pass P, 62.5 W, by more than 10")]
    [InlineData("\"I_CM\": \"15 A\"", "\"I_CM\": \"12 A\"", "I_CM: must be at least I_C, 15 A (was 12 A)")]
    [InlineData("\"I_C\": \"15 A\"", "\"I_C\": \"12 A\"", "safeArea.lines[0].points[0].I_C: must be at most I_C, 12 A (was 15 A)")]
    [InlineData("{ \"V_CE\": \"16 V\", \"I_C\": \"15 A\" }", "{ \"V_CE\": \"15.5 V\", \"I_C\": \"15.5 A\" }", "safeArea.lines[1].points[0].I_C: must be at most I_CM, 15 A (was 15.5 A)")]
    [InlineData("\"V_CEO\": \"200 V\"", "\"V_CEO\": \"180 V\"", "safeArea.lines[0].points[3].V_CE: must be at most V_CEO, 180 V (was 200 V)")]
    [InlineData("{ \"V_CE\": \"200 V\", \"I_C\": \"0.35 A\" }", "{ \"V_CE\": \"200 V\", \"I_C\": \"0.15 A\" }", "safeArea.lines[1]: a line must not lie below that of a longer pulse: at 200 V 150 mA for 100 ms, and 200 mA for dc")]
    [InlineData("{ \"I_C\": \"15 A\", \"h_FE\": \"12\" }", "{ \"I_C\": \"16 A\", \"h_FE\": \"12\" }", "h_FE[6].I_C: must be at most I_CM, 15 A (was 16 A)")]
    [InlineData("\"h_FE\": \"12\"", "\"h_FE\": \"0.5\"", "h_FE[6].h_FE: must be 1 or more (was 0.5)")]
    [InlineData("\"V_BE\": { \"I_C\": \"0.1 A\"", "\"V_BE\": { \"I_C\": \"20 A\"", "V_BE.I_C: must be at most I_CM, 15 A (was 20 A)")]
    [InlineData("\"tc\": \"2.1 mV/K\"", "\"tc\": \"21 mV/K\"", "V_BE.tc: must leave something of V_BE at T_J")]
    [InlineData("\"tc\": \"2.1 mV/K\"", "\"TC\": \"2.1 mV/K\"", "V_BE.TC: \"TC\" is not known here")]
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

    [Fact]
    public void What_a_chart_reading_explains_is_no_contradiction()
    {
        // A corner 8 % above P, and one 8 % below the longer line: read off a printed chart.
        Assert.NotNull(Transistor.Parse(text.Replace("{ \"V_CE\": \"10 V\", \"I_C\": \"15 A\" }", "{ \"V_CE\": \"10.8 V\", \"I_C\": \"15 A\" }", StringComparison.Ordinal)));
        Assert.NotNull(Transistor.Parse(text.Replace("{ \"V_CE\": \"200 V\", \"I_C\": \"0.35 A\" }", "{ \"V_CE\": \"200 V\", \"I_C\": \"0.185 A\" }", StringComparison.Ordinal)));
    }

    [Fact]
    public void What_the_rooms_need_is_derived_from_the_card()
    {
        var card = Transistor.Load(Cards.Output);
        Assert.Equal(70 / 0.83, (double)card.AllowedPower(80.degC).Watts, 1e-9);
        Assert.Equal(45 / 0.83, (double)card.AllowedPower(80.degC, 125.degC).Watts, 1e-9);
        Assert.Equal(150, (double)card.AllowedPower(20.degC).Watts);
        Assert.Contains("rated to 150", Assert.Throws<RefusedValueException>(() => card.AllowedPower(80.degC, 175.degC)).Message, StringComparison.Ordinal);

        // 0.62 V at 0.1 A and 25 °C, 2.1 mV/K less for a kelvin; a tenth of the current is 59 mV less at 25 °C.
        Assert.Equal(0.62, card.BaseEmitterVoltageAt(0.1.A, 25.degC).Volts, 1e-12);
        Assert.Equal(0.62 - 0.063, card.BaseEmitterVoltageAt(0.1.A, 55.degC).Volts, 1e-12);
        Assert.Equal(0.62 - (0.0256926 * Math.Log(10)), card.BaseEmitterVoltageAt(10.mA, 25.degC).Volts, 1e-6);
        Assert.Equal((card.BaseEmitterVoltageAt(3.A, 30.degC) - card.BaseEmitterVoltageAt(3.A, 31.degC)).Volts, card.DriftAt(3.A).Si, 1e-9);
        Assert.Equal(0.1, Junction.Voltage(0.1.A, Junction.ThermalVoltage(90.degC), card.SaturationCurrentAt(90.degC)) is var v ? 0.1 * Math.Exp((v - card.BaseEmitterVoltageAt(0.1.A, 90.degC)).Volts) : 0, 1e-12);
    }

    [Theory]
    [InlineData(3, 80, 9)]
    [InlineData(0.5, 80, double.PositiveInfinity)]
    [InlineData(8, 80, 4.8)]
    [InlineData(0.02, 73.01029995663981, double.PositiveInfinity)] // rising up to there: constant, at what it is there
    public void The_gain_of_the_large_signal_model_passes_through_the_table_at_the_current_asked_for(double upTo, double h_0, double I_k)
    {
        var model = Transistor.Load(Cards.Output).LargeSignal(55.degC, upTo.A);
        Assert.Equal(h_0, model.CurrentGain!.Value, 1e-9);
        Assert.Equal(I_k, model.KneeCurrent?.Amperes ?? double.PositiveInfinity, 1e-9);
        Assert.Equal((52.5, 55.0), (model.InternalResistance.Milliohms, model.Junction.DegreesCelsius));
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
