using EightOhm.Noise;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Explaining.Workings;

namespace EightOhm.Tests.Noise;

public class NoiseFormulaTests
{
    [Fact]
    public void The_ratio_of_a_signal_to_zero_noise_is_refused_with_what_to_do()
    {
        const string Hint = "The SNR of zero noise has no value: give the rms noise over its bandwidth, for example 3.uV, or a noise density with a corner.";
        Assert.Equal($"V_n must be greater than 0 V (was 0 V). {Hint}", Message(() => Snr.OfVoltages(1.V, 0.V)));
        Assert.Equal($"e_n must be greater than 0 V/√Hz (was 0 V/√Hz). {Hint}", Message(() => Snr.OfDensity(1.V, 0.nV_rtHz, 20.kHz)));
    }

    [Fact]
    public void A_band_upside_down_is_refused_with_what_to_do()
    {
        const string Hint = "The band is upside down: give its lower edge first, then its upper one.";
        Assert.Equal($"f_L must be from 0 Hz to 20 Hz (was 20 kHz). {Hint}", Message(() => FlickerNoise.Voltage(3.nV_rtHz, 100.Hz, 20.kHz, 20.Hz)));
        Assert.Equal($"f_L must be from 0 Hz to 20 Hz (was 20 kHz). {Hint}", Message(() => AWeighting.WhiteNoise(3.nV_rtHz, 20.kHz, 20.Hz)));
        Assert.StartsWith("f_L must be greater than 0 Hz (was 0 Hz). 1/f noise down to 0 Hz has no end", Message(() => FlickerNoise.Voltage(3.nV_rtHz, 100.Hz, 0.Hz, 20.Hz)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(11)]
    public void Orders_are_from_one_to_ten(int n)
    {
        Assert.StartsWith($"n must be from 1 to 10 (was {n}).", Message(() => NoiseBandwidth.OfButterworth(1.kHz, n)), StringComparison.Ordinal);
        Assert.StartsWith($"n must be from 1 to 10 (was {n}).", Message(() => NoiseBandwidth.OfIdenticalPolesByPole(1.kHz, n)), StringComparison.Ordinal);
        Assert.StartsWith($"n must be from 1 to 10 (was {n}).", Message(() => NoiseBandwidth.OfIdenticalPolesByCorner(1.kHz, n)), StringComparison.Ordinal);
    }

    [Fact]
    public void Two_equal_poles_are_one_case_of_unequal_ones() =>
        Assert.Equal(NoiseBandwidth.OfIdenticalPolesByPole(1.kHz, 2).Hertz, NoiseBandwidth.OfUnequalPoles(1.kHz, 1.kHz).Hertz, 1e-9);

    [Fact]
    public void The_poles_of_A_weighting_are_those_that_everybody_rounds()
    {
        Assert.Equal([20.598997, 107.65265, 737.86223, 12194.217], new[] { AWeighting.f_1, AWeighting.f_2, AWeighting.f_3, AWeighting.f_4 }.Select(f => Math.Round(f.Hertz, f.Hertz < 100 ? 6 : f.Hertz < 1000 ? 5 : 3)));
        Assert.Equal(0, AWeighting.Response(1.kHz).Decibels, 1e-12);
        Assert.True(double.IsFinite(AWeighting.Response(Frequency.FromHertz(1e-149)).Ratio) && double.IsFinite(AWeighting.Response(Frequency.FromHertz(1e40)).Ratio));
    }

    [Fact]
    public void White_noise_through_A_weighting_over_parts_of_a_band_makes_that_over_the_whole()
    {
        var all = AWeighting.WhiteNoiseBandwidth(0.Hz, 1000.MHz).Hertz;
        Assert.Equal(13_462.15, all, 0.005);
        Assert.Equal(13_460.70, AWeighting.WhiteNoiseBandwidth(0.Hz, 200.kHz).Hertz, 0.005);
        Assert.Equal(12_467, AWeighting.WhiteNoiseBandwidth(20.Hz, 20.kHz).Hertz, 0.5);
        Assert.Equal(all, AWeighting.WhiteNoiseBandwidth(0.Hz, 777.Hz).Hertz + AWeighting.WhiteNoiseBandwidth(777.Hz, 1000.MHz).Hertz, all * 1e-10);
        Assert.Equal(0, AWeighting.WhiteNoiseBandwidth(1.kHz, 1.kHz).Hertz);
    }

    [Fact]
    public void No_parts_are_no_noise_and_order_does_not_matter()
    {
        Assert.Equal(0.V, NoiseSum.OfVoltages([]));
        Assert.Equal(5e-6, NoiseSum.OfVoltages([4.uV, 3.uV]).Volts, 1e-20);
        Assert.Equal(NoiseSum.OfDensities([3.nV_rtHz, 4.nV_rtHz]), NoiseSum.OfDensities([4.nV_rtHz, 3.nV_rtHz]));
    }

    [Fact]
    public void The_board_of_identical_poles_shows_the_gamma_function()
    {
        var (f_p, n) = (1.kHz, 3);
        Assert.Contains("Γ(n − 0.5)", Explain(() => NoiseBandwidth.OfIdenticalPolesByPole(f_p, n)).ToString(), StringComparison.Ordinal);
    }

    private static string Message(Func<object> formula) => Assert.Throws<RefusedValueException>(formula).Message;
}
