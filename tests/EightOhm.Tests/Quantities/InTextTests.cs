using System.Globalization;
using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Tests.Quantities;

public class InTextTests
{
    private static string Text(QuantityStringHandler text) => text.ToStringAndClear();

    [Fact]
    public void Quantities_in_a_text_read_as_the_trade_writes_them_in_any_culture()
    {
        foreach (var culture in new[] { "", "de-DE", "ar-EG", "fa-IR" })
            EngineeringTests.Under(CultureInfo.GetCultureInfo(culture), () =>
            {
                Assert.Equal("25 °C 4.7 kΩ 220 µF 1.81 µV", Text($"{25.degC} {4.7.kOhm} {220.uF} {1.81.uV}"));
                Assert.Equal("28.3 V, 28280 mV, 28.3 mV", Text($"{28.28427.V:3}, {28.28427.V:mV}, {28.28427.mV:3 mV}"));
                Assert.Equal("[   8 Ω] [8 Ω   ]", Text($"[{8.Ohm,6}] [{8.Ohm,-6}]"));
                Assert.Equal("28.28 V", Text($"{28.28427.V:F2}"));
                Assert.Equal("3.3 nV/√Hz, 23.6, 10 ppm, 3 kg", Text($"{3.3.nV_rtHz}, {23.6.ratio}, {10.ppm}, {Mass.FromKilograms(3)}"));
            });
    }

    [Fact]
    public void All_else_stays_as_CSharp_has_it()
    {
        EngineeringTests.Under(CultureInfo.GetCultureInfo("de-DE"), () =>
            Assert.Equal("1,5 x  True abc", Text($"{1.5} {"x"} {null} {true} {"abc".AsSpan()}")));
        Assert.Equal(5, InText.Of(5));
        Assert.Equal("text", InText.Of("text"));
        Assert.Null(InText.Of(null));
        Assert.Equal("8 Ω", $"{InText.Of(8.Ohm)}");
        Assert.Equal("8000 mΩ", string.Create(CultureInfo.InvariantCulture, $"{InText.Of(8.Ohm):mΩ}"));
    }

    [Fact]
    public void A_format_that_says_nothing_is_refused_with_what_does() =>
        Assert.Contains("{x:3}", Assert.Throws<FormatException>(() => Text($"{28.V:volts please}")).Message, StringComparison.Ordinal);

    // A double holds 15 digits whatever they are, of a sixteenth not every one.
    [Fact]
    public void Digits_are_given_up_to_those_that_a_number_holds()
    {
        var third = (1.0 / 3).V;
        Assert.Equal("333.333333333333 mV, 0.333333333333333 V", Text($"{third:15}, {third.In("V"):15}"));
        Assert.Equal("300 mV, 0.3 V", Text($"{third:1}, {third.In("V"):1}"));
        foreach (var format in new[] { "0", "16" })
        {
            Assert.Contains("{x:3}", Assert.Throws<FormatException>(() => InText.Text(third, format)).Message, StringComparison.Ordinal);
            Assert.Contains("1 to 15", Assert.Throws<FormatException>(() => third.In("V").ToString(format, null)).Message, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("mV", "28280 mV")]
    [InlineData("uV", "28280000 µV")]
    [InlineData("kV", "0.02828 kV")]
    [InlineData("V", "28.28 V")]
    [InlineData("dBV", "29.03 dBV")]
    [InlineData("dBu", "31.25 dBu")]
    public void A_voltage_in_a_chosen_unit(string unit, string text) => Assert.Equal(text, 28.28427.V.In(unit).ToString());

    [Fact]
    public void Other_kinds_in_a_chosen_unit()
    {
        Assert.Equal("4700 Ω", 4.7.kOhm.In("ohm").ToString());
        Assert.Equal("0.0047 MΩ", 4.7.kOhm.In("MOhm").ToString());
        Assert.Equal("298.15 K", 25.degC.In("K").ToString());
        Assert.Equal("0.7854 rad", 45.deg.In("rad").ToString());
        Assert.Equal("27.46 dB", 23.6.ratio.In("dB").ToString());
        Assert.Equal("−100 dB", 10.ppm.In("dB").ToString());
        Assert.Equal("10 ppm", 0.001.percent.In("ppm").ToString());
        Assert.Equal("40000000 V/s", 40.V_per_us.In("V/s").ToString());
        Assert.Equal("40 V/µs", 40.V_per_us.In("V/us").ToString());
        Assert.Equal("45°", 45.deg.In("deg").ToString());
        Assert.Equal("1.5 min", 90.s.In("min").ToString());
        Assert.Equal("12 cm", 120.mm.In("cm").ToString());
        Assert.Equal("20 dBW", 100.W.In("dBW").ToString());
        Assert.Equal("500 mK/W", 0.5.K_per_W.In("mK/W").ToString());
    }

    [Fact]
    public void An_unknown_unit_is_refused_with_those_there_are()
    {
        Assert.Equal("\"mQ\" is not a unit of ElectricPotential (of 28.28 V); choose pV, nV, µV, mV, V, kV, dBu, dBV. (Parameter 'unit')",
            Assert.Throws<ArgumentException>(() => 28.28427.V.In("mQ")).Message);
        Assert.Contains("no unit to choose", Assert.Throws<ArgumentException>(() => 3.0.In("V")).Message, StringComparison.Ordinal);
        Assert.Contains("(2 V); choose".Replace("(2 V)", "(of 2 V)", StringComparison.Ordinal), Assert.Throws<ArgumentException>(() => 2.V.In("A")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_unit_that_is_offered_is_taken()
    {
        foreach (var kind in QuantityKinds.All)
            foreach (var unit in UnitChoice.Allowed(kind))
                Assert.NotNull(UnitChoice.Find(kind, unit));
    }

    [Fact]
    public void A_chosen_unit_holds_in_Explain()
    {
        var P = 100.W;
        var R_L = 8.Ohm;
        Assert.EndsWith("28280 mV", Workings.Explain(() => Maths.Sqrt(P * R_L).In("mV")).ToString(), StringComparison.Ordinal);
    }
}
