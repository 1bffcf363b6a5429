using EightOhm.Quantities;
using EightOhm.Ratings;
using UnitsNet;

namespace EightOhm.Tests.Quantities;

public class LevelTests
{
    // 0 dBu is √0.6 V, not 0.775 V; 94 dB SPL is 1.002 Pa, not 1 Pa.
    [Fact]
    public void A_level_and_what_is_behind_it()
    {
        Assert.Equal(1.2276537, 4.dBu.Voltage.Volts, 1e-6);
        Assert.Equal(0.3162278, (-10.dBV).Voltage.Volts, 1e-6);
        Assert.Equal(1e-3, (double)0.dBm.Power.Watts, 1e-12);
        Assert.Equal(100, (double)20.dBW.Power.Watts, 1e-9);
        Assert.Equal(1.0023745, 94.dB_SPL.Pressure.Pascals, 1e-6);
        Assert.Equal(2.2184875, 1.V.dBu.Decibels, 1e-6);
        Assert.Equal(0, DbuLevel.Reference.dBu.Decibels);
        Assert.Equal(20.dBW, 100.W.dBW);
        Assert.Equal(30.dBm, 1.W.dBm);
        Assert.Equal(94.dB_SPL.Decibels, 1.002374467.Pa.dB_SPL.Decibels, 1e-8);
    }

    [Fact]
    public void The_values_agree_with_the_formulas_of_the_room()
    {
        foreach (var volts in new[] { 1e-6, 0.775, 28.28 })
        {
            Assert.Equal(Levels.InDbU(volts.V), volts.V.dBu.Decibels, 1e-11);
            Assert.Equal(Levels.InDbV(volts.V), volts.V.dBV.Decibels, 1e-11);
            Assert.Equal(Levels.InDbW(volts.W), volts.W.dBW.Decibels, 1e-11);
            Assert.Equal(Levels.InDbM(volts.W), volts.W.dBm.Decibels, 1e-11);
        }
    }

    [Fact]
    public void A_gain_raises_a_level_and_two_levels_differ_by_a_gain()
    {
        Assert.Equal(20.dBV, -10.dBV + 30.dB);
        Assert.Equal(-16.dBu, 4.dBu - 20.dB);
        Assert.Equal(14, (4.dBu - -10.dBu).Decibels, 1e-12);
        Assert.True(4.dBu > 0.dBu && -10.dBV <= -10.dBV && 1.dBm < 2.dBm && 3.dBW >= 2.dBW);
        Assert.Equal(4.dBu, new[] { 0.dBu, 4.dBu, -3.dBu }.Max());
    }

    [Theory]
    [InlineData("4 dBu")]
    [InlineData("−10 dBV")]
    [InlineData("20 dBW")]
    [InlineData("−3.01 dBm")]
    [InlineData("94 dB SPL")]
    public void A_level_is_read_and_printed_with_its_reference(string text) =>
        Assert.Equal(text, QuantityFormat.Short(QuantityText.ParseAny(text)));

    [Fact]
    public void A_level_of_nothing_is_refused()
    {
        Assert.Contains("Silence", Assert.Throws<RefusedValueException>(() => 0.V.dBu).Message, StringComparison.Ordinal);
        Assert.Throws<RefusedValueException>(() => 500.dBu.Voltage);
        Assert.Throws<ArgumentOutOfRangeException>(() => double.NaN.dBu);
        Assert.False(QuantityText.TryParse<DbuLevel>("4 dBV", out _));
    }
}
