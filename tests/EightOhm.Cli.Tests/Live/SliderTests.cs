using EightOhm.Cli.Live.Inputs;
using EightOhm.Quantities;
using EightOhm.Record;
using UnitsNet;

namespace EightOhm.Cli.Tests.Live;

/// <summary>Where a slider ends: at what is asked of the input itself, and never short of the value in force.</summary>
public class SliderTests
{
    [Fact]
    public void It_ends_at_the_least_that_is_asked_three_digits_up()
    {
        var record = WithSlew();

        // Three times 5.0265 V/µs is 15.0796 V/µs; half a decade below 40 V/µs is 12.6 V/µs.
        var slider = Assert.IsType<SliderOfRange>(Of(record, "SR"));
        Assert.Equal("15.1 V/µs", slider.At(0));
        Assert.Equal("126 V/µs", slider.At(1));
    }

    [Fact]
    public void A_least_far_below_leaves_the_half_decade()
    {
        var record = Record();
        record.Choose("SR", ElectricPotentialChangeRate.FromVoltsPerMicroseconds(400), "slew rate");
        record.Require("slew rate", "SR").AtLeast("need");
        Assert.Equal("126 V/µs", Of(record, "SR")!.At(0));
    }

    [Fact]
    public void Preferred_values_end_inside_what_is_asked()
    {
        var record = Record();
        record.Choose("R_x", 4.7.kOhm, "a resistor");
        record.Assume("R_hi", 9.5.kOhm, "no more than this");
        record.Require("not too large", "R_x").AtMost("R_hi");
        var values = Assert.IsType<SliderOfValues>(Of(record, "R_x")).Values;
        Assert.Equal("9.1 kΩ", values[^1]);
        Assert.Equal("1.5 kΩ", values[0]);
    }

    [Fact]
    public void A_count_begins_at_the_least_that_is_asked()
    {
        var record = Record();
        record.Choose("n", 5, "pairs");
        record.Assume("n_need", 3, "pairs needed");
        record.Require("pairs", "n").AtLeast("n_need");
        Assert.Equal(["3", "4", "5", "6", "7", "8", "9", "10"], Assert.IsType<SliderOfValues>(Of(record, "n")).Values);
    }

    [Fact]
    public void From_a_value_outside_the_way_back_is_on_the_slider()
    {
        var record = Record();
        record.Choose("SR", ElectricPotentialChangeRate.FromVoltsPerMicroseconds(1), "slew rate");
        record.Require("slew rate", "SR").AtLeast("need");
        var slider = Assert.IsType<SliderOfRange>(Of(record, "SR"));
        Assert.True(slider.Least < 1e6 && slider.Most > 5.0265e6, $"{slider.Least} to {slider.Most}");
    }

    [Fact]
    public void A_promise_in_decibels_is_moved_in_tenths_of_one_and_reads_so()
    {
        var record = Record();
        record.Target("SNR_min", 112.dB, "signal to noise");
        record.Target("A", Gain.FromRatio(20), "a gain");
        record.Target("m_lvl", Gain.FromDecibels(-0.1), "a level");
        var slider = Assert.IsType<SliderOfRange>(Of(record, "SNR_min"));
        Assert.Equal("112 dB", InputText.Of(record.Entries.First(e => e.Name == "SNR_min")));
        Assert.Equal(["102 dB", "112 dB", "113.3 dB", "122 dB"], new[] { 0, 0.5, 0.567, 1 }.Select(slider.At));
        Assert.Equal("−0.1 dB", InputText.Of(record.Entries.First(e => e.Name == "m_lvl")));
        // Twenty times stays twenty times, which is 26.0206 dB.
        Assert.Equal("20", InputText.Of(record.Entries.First(e => e.Name == "A")));
        Assert.Equal("20.2", Of(record, "A")!.At(0.504));
    }

    [Theory]
    [InlineData(16.6)]
    [InlineData(30.2)]
    [InlineData(0.00678)]
    public void A_value_of_three_digits_reads_in_three_in_any_unit(double number)
    {
        var record = DesignRecord.Scratch();
        record.Choose("SR", ElectricPotentialChangeRate.FromVoltsPerSeconds(number * 1e6), "slew rate");
        record.Choose("I", ElectricCurrent.FromAmperes(number), "a current");
        var digits = number.ToString("E2", System.Globalization.CultureInfo.InvariantCulture)[..4];
        Assert.All(record.Entries, e => Assert.Equal(digits.Replace(".", "", StringComparison.Ordinal), new string([.. InputText.Of(e).Where(char.IsDigit)]).TrimStart('0')));
    }

    [Fact]
    public void What_nobody_can_tell_ends_nothing()
    {
        var record = Record();
        record.Choose("SR", ElectricPotentialChangeRate.FromVoltsPerMicroseconds(40), "slew rate");
        record.Require("slew rate", "SR").AtLeast("not_there");
        Assert.Equal("12.6 V/µs", Of(record, "SR")!.At(0));
    }

    [Fact]
    public void The_ends_are_those_of_the_saved_record()
    {
        DesignRecord record = WithSlew(), saved = WithSlew();
        record.Set("k", "5");
        Assert.Equal("15.1 V/µs", Of(record, "SR", saved)!.At(0));
        // As it stands it would end at five times the need.
        Assert.Equal("25.2 V/µs", Of(record, "SR")!.At(0));
    }

    private static DesignRecord WithSlew()
    {
        var record = Record();
        record.Choose("SR", ElectricPotentialChangeRate.FromVoltsPerMicroseconds(40), "slew rate");
        record.Require("slew rate, {k} times the need", "SR").AtLeast((double k, ElectricPotentialChangeRate need) => k * need);
        return record;
    }

    private static DesignRecord Record()
    {
        var record = DesignRecord.Scratch();
        record.Assume("k", 3.0, "times the need");
        // 2π · 20 kHz · 40 V.
        record.Assume("need", ElectricPotentialChangeRate.FromVoltsPerMicroseconds(5.026548), "the need");
        return record;
    }

    // No part is asked about: there are no cards.
    private static Slider? Of(DesignRecord record, string name, DesignRecord? saved = null) =>
        new Sliders(new CardFiles("")).Of(record.Entries.First(e => e.Name == name), new KeptInputs(saved ?? record));
}
