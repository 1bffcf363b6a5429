using System.Globalization;
using EightOhm.Quantities;
using EightOhm.Ratings;
using UnitsNet;
using static EightOhm.Display.Sentences;

namespace EightOhm.Display.Tests.Shown;

public class SentenceTests
{
    [Theory]
    [InlineData("")]
    [InlineData("de-DE")]
    public void Quantities_in_a_sentence_read_as_everywhere_in_any_culture(string culture)
    {
        var before = Thread.CurrentThread.CurrentCulture;
        Thread.CurrentThread.CurrentCulture = CultureInfo.GetCultureInfo(culture);
        try
        {
            Assert.Equal("25 °C 4.7 kΩ 220 µF", Show.Text($"{25.degC} {4.7.kOhm} {220.uF}"));
            Assert.Equal("3 pairs, 1.81 µV, 1.5 times", Show.Text($"{3} pairs, {1.81.uV} , {1.5} times").Replace(" ,", ",", StringComparison.Ordinal));
            Assert.Equal("28.3 V; [  8 Ω]; 50.0 Hz", Show.Text($"{Math.Sqrt(800).V:3}; [{8.Ohm,5}]; {50.0:F1} Hz"));
        }
        finally
        {
            Thread.CurrentThread.CurrentCulture = before;
        }
    }

    [Fact]
    public void What_is_said_is_a_line_on_a_console_and_a_paragraph_on_a_page()
    {
        var V_CEO = 200.V;
        var said = Say($"""
            At {28.28427.V:3} and {0.1 + 0.2} of V_CEO,
            {V_CEO} < {1.kV}.
            """);
        Assert.Equal("At 28.3 V and 0.3 of V_CEO, 200 V < 1 kV.", Show.Text(said));
        Assert.Equal("<p class=\"eo-sentence\">At 28.3 V and 0.3 of <i>V</i><sub><span style=\"font-size:0\">_</span>CEO</sub>, 200 V &lt; 1 kV.</p>", Show.Html(said));
    }

    [Fact]
    public void A_result_in_a_sentence_is_its_table() =>
        Assert.Equal("As rated:\n" + Show.Text(new OutputRating(100.W, 8.Ohm)), Show.Text($"As rated:\n{new OutputRating(100.W, 8.Ohm)}"));

    [Fact]
    public void What_is_no_finite_number_says_so() =>
        Assert.Equal("gain not a finite number (a division by zero?)", Show.Text($"gain {double.NaN}"));

    [Fact]
    public void A_quantity_outside_the_house_keeps_UnitsNet_s_words() => Assert.Equal("2 kg", Show.Text($"{Mass.FromKilograms(2)}"));
}
