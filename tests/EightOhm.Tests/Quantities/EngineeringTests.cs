using System.Globalization;
using EightOhm.Quantities;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Tests.Quantities;

public class EngineeringTests
{
    [Theory]
    [InlineData(28.284271247461902, "V", "28.28 V")]
    [InlineData(28, "V", "28 V")]
    [InlineData(47000, "Ω", "47 kΩ")]
    [InlineData(4700, "Ω", "4.7 kΩ")]
    [InlineData(123456, "Ω", "123.456 kΩ")]
    [InlineData(1234567.891, "Ω", "1.235 MΩ")]
    [InlineData(999.96123, "Ω", "1 kΩ")]
    [InlineData(999.94321, "Ω", "999.9 Ω")]
    [InlineData(0.99996123, "V", "1 V")]
    [InlineData(999949.123, "Hz", "999.9 kHz")]
    [InlineData(999960.123, "Hz", "1 MHz")]
    [InlineData(-0.0047, "A", "−4.7 mA")]
    [InlineData(-28.284271247461902, "V", "−28.28 V")]
    [InlineData(2.2e-4, "F", "220 µF")]
    [InlineData(3.3e-9, "V/√Hz", "3.3 nV/√Hz")]
    [InlineData(1e-15, "A", "1 fA")]
    [InlineData(1.5e-18, "A", "0.0015 fA")]
    [InlineData(0, "V", "0 V")]
    [InlineData(-0.0, "V", "0 V")]
    [InlineData(1e12, "Ω", "1 TΩ")]
    [InlineData(0.1 + 0.2, "V", "300 mV")]
    public void A_value_has_a_mantissa_a_prefix_and_honest_digits(double value, string symbol, string text) =>
        Assert.Equal(text, Engineering.Text(value, symbol));

    [Theory]
    [InlineData(47000, "Ω", 3, "47.0 kΩ")]
    [InlineData(3.3e-9, "V/√Hz", 3, "3.30 nV/√Hz")]
    [InlineData(999.96, "Ω", 4, "1.000 kΩ")]
    [InlineData(100, "W", 3, "100 W")]
    [InlineData(-1, "V", 2, "−1.0 V")]
    [InlineData(0, "V", 3, "0 V")]
    public void A_table_column_keeps_its_zeros(double value, string symbol, int digits, string text) =>
        Assert.Equal(text, Engineering.Text(value, symbol, digits: digits, fixedDigits: true));

    [Theory]
    [InlineData(1234567, 0, 0, "1235000 V")]
    [InlineData(0.001234567, 0, 0, "0.001235 V")]
    [InlineData(5e6, -3, 3, "5000 kV")]
    public void A_unit_keeps_to_the_prefixes_that_its_trade_uses(double value, int least, int most, string text) =>
        Assert.Equal(text, Engineering.Text(value, "V", least, most, fixedDigits: false, digits: 4));

    [Theory]
    [InlineData(1.380649e-23, 4, "1.381×10⁻²³")]
    [InlineData(6.02214e23, 4, "6.022×10²³")]
    [InlineData(-1.5e-10, 4, "−1.5×10⁻¹⁰")]
    [InlineData(4.9e-324, 2, "4.9×10⁻³²⁴")]
    [InlineData(9.9996e9, 4, "1×10¹⁰")]
    [InlineData(123456, 4, "123500")]
    public void A_plain_number_far_from_one_is_a_power_of_ten(double value, int digits, string text) =>
        Assert.Equal(text, Engineering.Number(value, digits));

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    public void What_is_not_finite_is_never_shown(double value) =>
        Assert.Contains("division by zero", Assert.ThrowsAny<ArgumentOutOfRangeException>(() => Engineering.Text(value, "V")).Message, StringComparison.Ordinal);

    public static TheoryData<object, string> Faces => new()
    {
        { 10.ppm, "0.001 % (10 ppm, −100 dB)" },
        { 0.1.percent, "0.1 % (1000 ppm, −60 dB)" },
        { 10.percent, "10 %" },
        { 0.percent, "0 %" },
        { Gain.FromRatio(28.284271247461902 / 1.2), "23.57 (27.45 dB)" },
        { 20.dB, "10 (20 dB)" },
        { 61.4.degC, "61.4 °C" },
        { 61.4444.degC, "61.4 °C" },
        { (-40).degC, "−40 °C" },
        { 0.degC, "0 °C" },
        { 40.V_per_us, "40 V/µs" },
        { 0.5.K_per_W, "0.5 K/W" },
        { 1.5.K, "1.5 K" },
        { Constants.k, "1.381×10⁻²³ J/K" },
        { 3.3.nV_rtHz, "3.3 nV/√Hz" },
        { new SquaredVoltageDensity(1.60155284e-17), "1.602×10⁻¹⁷ V²/Hz" },
        { new SquaredVoltage(800), "800 V²" },
        { 45.deg, "45°" },
        { (-50.46).deg, "−50.46°" },
        { 7.cm2, "7 cm²" },
        { 800.VA, "800 VA" },
        { -2.1.mV_per_K, "−2.1 mV/K" },
        { Sqrt(40.uH * 600.pF), "154.9 ns" },
        { 1250.J_per_K, "1250 J/K" },
        { 5.A * 5.A * 1.s, "25 A²s" },
        { 300, "300" },
        { 0.123456789, "0.1235" },
        { 22000.uF, "22 mF" },
    };

    [Theory]
    [MemberData(nameof(Faces))]
    public void A_value_of_each_kind_reads_as_the_trade_speaks(object value, string text)
    {
        foreach (var culture in new[] { CultureInfo.InvariantCulture, CultureInfo.GetCultureInfo("de-DE"), CultureInfo.GetCultureInfo("ru-RU") })
            Under(culture, () => Assert.Equal(text, QuantityFormat.Long(value)));
    }

    internal static void Under(CultureInfo culture, Action action)
    {
        var before = Thread.CurrentThread.CurrentCulture;
        Thread.CurrentThread.CurrentCulture = culture;
        try
        {
            action();
        }
        finally
        {
            Thread.CurrentThread.CurrentCulture = before;
        }
    }
}
