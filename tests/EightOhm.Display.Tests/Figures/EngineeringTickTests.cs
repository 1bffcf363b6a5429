using EightOhm.Display.Figures;

namespace EightOhm.Display.Tests.Figures;

public class EngineeringTickTests
{
    [Theory]
    [InlineData(0, "W", "0")]
    [InlineData(0.01, "W", "10 mW")]
    [InlineData(1000, "Hz", "1 kHz")]
    [InlineData(20e3, "Hz", "20 kHz")]
    [InlineData(-40, "V", "−40 V")]
    [InlineData(2e-9, "V/√Hz", "2 nV/√Hz")]
    [InlineData(1e-3, "F", "1 mF")]
    [InlineData(3600, "s", "3600 s")]
    [InlineData(1000, "", "1000")]
    [InlineData(0.5, "", "0.5")]
    [InlineData(-120, "dB", "−120 dB")]
    [InlineData(2000, "ppm", "2000 ppm")]
    [InlineData(45, "°", "45°")]
    [InlineData(1e-16, "V²/Hz", "1×10⁻¹⁶ V²/Hz")]
    public void A_tick_is_in_engineering_notation(double value, string unit, string text) =>
        Assert.Equal(text, EngineeringTick.Text(value, unit));

    [Theory]
    [InlineData(28.2843, "V", 3, "28.3 V")]
    [InlineData(999.96, "Ω", 3, "1.00 kΩ")]
    [InlineData(4.0587e-9, "V/√Hz", 3, "4.06 nV/√Hz")]
    [InlineData(5, "A", 3, "5.00 A")]
    [InlineData(-0.0667, "V", 3, "−66.7 mV")]
    [InlineData(0, "V", 3, "0 V")]
    [InlineData(123456, "Hz", 2, "120 kHz")]
    public void A_reading_has_its_significant_digits(double value, string unit, int digits, string text) =>
        Assert.Equal(text, EngineeringTick.Reading(value, unit, digits));
}
