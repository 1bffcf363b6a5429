using System.Globalization;
using CsCheck;
using EightOhm.Ratings;

namespace EightOhm.Tests.Ratings;

/// <summary>A sheet that is merely rounded is never accused; the same sheet with one figure moved well outside its rounding is.</summary>
public class RoundedSheetTests
{
    private static readonly Gen<Amplifier> Amplifiers =
        from power in Gen.Double[1, 1000]
        from ratio in Gen.Double[1, 2]
        from gain in Gen.Double[2, 100]
        from slew in Gen.Double[1e6, 1e8]
        from density in Gen.Double[1e-9, 1e-7]
        from bandwidth in Gen.Double[1e4, 1e6]
        from headroom in Gen.Double[1, 2]
        from filter in Gen.Double[0.05, 1]
        from digits in Gen.Int[2, 4]
        from printed in Gen.Int[0, (1 << 16) - 1]
        select new Amplifier(power, ratio, gain, slew, density, bandwidth, headroom, filter, digits, printed);

    [Fact]
    public void A_consistent_sheet_rounded_to_two_to_four_digits_is_never_accused() =>
        Amplifiers.Sample(a =>
        {
            var audit = a.Sheet(1).Audit();
            Assert.True(audit.Verdict != SheetVerdict.Contradictory, audit.ToString());
        }, iter: 300);

    [Fact]
    public void The_same_sheet_with_a_second_gain_off_by_a_quarter_is_always_accused() =>
        Amplifiers.Sample(a => Assert.Equal(SheetVerdict.Contradictory, a.Sheet(1.25).Audit().Verdict), iter: 100);

    private sealed record Amplifier(double Power, double Ratio, double Gain, double Slew, double Density, double Bandwidth, double Headroom, double Filter, int Digits, int Printed)
    {
        private double V8 => Math.Sqrt(Power * 8);

        private double V4 => Math.Sqrt(Power * Ratio * 4);

        private double Noise => Density * Math.Sqrt(Bandwidth);

        public SpecSheet Sheet(double wrong)
        {
            Func<SpecSheet, SpecSheet>[] figures =
            [
                s => s.RatedPower(Text(Power, "W"), "8 Ω"),
                s => s.RatedPower(Text(Power * Ratio, "W"), "4 Ω"),
                s => s.Sensitivity(Text(V8 / Gain, "V"), "8 Ω"),
                s => s.Sensitivity(Text(V4 / Gain, "V"), "4 Ω"),
                s => s.SlewRate(Text(Slew, "V/s")),
                s => s.FullPowerBandwidth(Text(Filter * Slew / (2 * Math.PI * Math.Sqrt(2) * V8), "Hz"), "8 Ω"),
                s => s.NoiseDensity(Text(Density, "V/√Hz")),
                s => s.NoiseBandwidth(Text(Bandwidth, "Hz")),
                s => s.OnePoleCorner(Text(Bandwidth * 2 / Math.PI, "Hz")),
                s => s.NoiseAtInput(Text(Noise, "V")),
                s => s.NoiseAtOutput(Text(Noise * Gain, "V")),
                s => s.Snr(Decibels(1 / Noise), "1 V"),
                s => s.SnrAtPower(Decibels(Math.Sqrt(8) / (Noise * Gain)), "1 W", "8 Ω"),
                s => s.SnrAtRatedPower(Decibels(V8 / (Noise * Gain)), "8 Ω"),
                s => s.DynamicHeadroom(Decibels(Math.Sqrt(Headroom)), "8 Ω"),
                s => s.BurstPower(Text(Power * Headroom, "W"), "8 Ω"),
            ];
            var sheet = SpecSheet.Named("Any").Gain(Text(Gain, ""));
            for (var i = 0; i < figures.Length; i++)
                if ((Printed & (1 << i)) != 0)
                    sheet = figures[i](sheet);
            return wrong == 1 ? sheet : sheet.Gain(Text(Gain * wrong, ""));
        }

        private string Text(double value, string unit) => $"{value.ToString($"E{Digits - 1}", CultureInfo.InvariantCulture)} {unit}".Trim();

        private static string Decibels(double ratio) => (20 * Math.Log10(ratio)).ToString("F2", CultureInfo.InvariantCulture) + " dB";
    }
}
