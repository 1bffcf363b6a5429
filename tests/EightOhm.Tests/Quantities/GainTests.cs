using System.Reflection;
using EightOhm.Quantities;

namespace EightOhm.Tests.Quantities;

public class GainTests
{
    [Theory]
    [InlineData(1, 0)]
    [InlineData(10, 20)]
    [InlineData(-10, 20)]
    [InlineData(2, 6.0205999132796242)]
    [InlineData(0.5, -6.0205999132796242)]
    public void A_ratio_has_its_decibels_of_voltage(double ratio, double decibels) =>
        Assert.Equal(decibels, Gain.FromRatio(ratio).Decibels, 12);

    [Theory]
    [InlineData(0, 1)]
    [InlineData(6, 1.9952623149688795)]
    [InlineData(-40, 0.01)]
    [InlineData(27.4, 23.442288153199225)]
    public void Decibels_give_the_ratio(double decibels, double ratio) =>
        Assert.Equal(ratio, Gain.FromDecibels(decibels).Ratio, 12);

    [Fact]
    public void Gains_in_cascade_multiply_and_their_decibels_add()
    {
        Assert.Equal(26, (20.dB * 6.dB).Decibels, 12);
        Assert.Equal(14, (20.dB / 6.dB).Decibels, 12);
        Assert.Equal(3, Gain.FromPowerRatio(9).Ratio);
    }

    [Theory]
    [InlineData("op_Addition")]
    [InlineData("op_Subtraction")]
    public void Sum_and_difference_of_gains_do_not_compile(string name)
    {
        var refused = typeof(Gain).GetMethod(name)!.GetCustomAttribute<ObsoleteAttribute>();
        Assert.NotNull(refused);
        Assert.True(refused.IsError);
        Assert.Contains("Gain.FromRatio", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_gain_of_zero_has_no_decibels_and_a_gain_is_finite()
    {
        Assert.Throws<InvalidOperationException>(() => default(Gain).Decibels);
        Assert.ThrowsAny<ArgumentOutOfRangeException>(() => Gain.FromRatio(double.NaN));
        Assert.ThrowsAny<ArgumentOutOfRangeException>(() => Gain.FromDecibels(401));
        Assert.ThrowsAny<ArgumentOutOfRangeException>(() => Gain.FromPowerRatio(-1));
        Assert.ThrowsAny<ArgumentOutOfRangeException>(() => 1 / default(Gain));
    }

    [Fact]
    public void A_gain_reads_as_ratio_and_decibels()
    {
        Assert.Equal("10 (20 dB)", 20.dB.ToString());
        Assert.Equal("−10 (20 dB)", (-10).ratio.ToString());
        Assert.Equal("0", default(Gain).ToString());
    }

    [Fact]
    public void Decibels_below_zero_are_bracketed_and_an_inverting_gain_is_asked_for()
    {
        Assert.Equal(-6, (-6).dB.Decibels, 12);
        Assert.Equal(0.5012, (-6).dB.Ratio, 4);
        var stage = 20.dB.Inverted;
        Assert.Equal(-10, stage.Ratio, 12);
        Assert.Equal(20, stage.Decibels, 12);
        Assert.Equal(10, stage.Inverted.Ratio, 12);
    }
}
