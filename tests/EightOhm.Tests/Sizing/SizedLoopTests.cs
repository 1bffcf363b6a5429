using EightOhm.Devices;
using EightOhm.Quantities;
using EightOhm.Sizing;

namespace EightOhm.Tests.Sizing;

/// <summary>What the loop is made as fast as.</summary>
public class SizedLoopTests
{
    [Fact]
    public void The_pair_makes_at_the_highest_frequency_what_it_is_allowed_of_the_distortion()
    {
        // Noise that cannot be had: then the slowest loop is chosen that slew rate and distortion ask for, and here it is the pair that asks.
        var targets = new AmplifierTargets { Power = 60.W, Load = 4.Ohm };
        var basis = new SizingBasis { SignalToNoise = 200.dB, Distortion = 0.001.percent };
        var chosen = Of(targets, basis).Choose(Nothing);

        Assert.Equal(SizedLoop.Promises.Slew | SizedLoop.Promises.Distortion, chosen.Meets);
        // Of the tail, which may be a tenth less, into the capacitor, which may be a twentieth more, a share turns at 20 kHz; the junctions' voltage for it, by its Fourier series, over the peak at the input.
        var peak = Math.Sqrt(2 * 60 * 4);
        var share = 2 * Math.PI * 20e3 * peak / (chosen.Slew.VoltsPerSeconds * 0.9 / 1.05);
        var thermal = 8.617333262e-5 * basis.Pair.Kelvins;
        const int N = 1 << 12;
        var third = 2.0 / N * Enumerable.Range(0, N).Sum(i => 2 * thermal * Math.Atanh(share * Math.Sin(2 * Math.PI * i / N)) * Math.Sin(6 * Math.PI * i / N));
        Assert.Equal(0.65 * 1e-5, Math.Abs(third) * 20 / peak, 0.65e-5 * 0.03);
    }

    [Fact]
    public void Where_distortion_is_beyond_every_loop_noise_is_kept_and_the_loop_is_as_fast_as_it_allows()
    {
        var targets = new AmplifierTargets { Power = 60.W, Load = 4.Ohm };
        var basis = new SizingBasis { Distortion = 100.ppm };
        // Ten megahertz at the summing node are more than the margins of any of them.
        var loop = Of(targets, basis);
        var beyond = loop.Choose(From(10e6));
        Assert.Equal(SizedLoop.Promises.Slew | SizedLoop.Promises.Noise, beyond.Meets);
        var within = loop.Choose(Nothing);
        Assert.Equal(SizedLoop.Promises.All, within.Meets);
        // Where nothing of the kind is asked for the loop keeps to the middle.
        Assert.True(Hertz(beyond) > Hertz(within), $"{Hertz(beyond)} over {Hertz(within)}");
        // A louder promise of quiet is not given up with it.
        var quieter = Of(targets, basis with { SignalToNoise = 114.dB }).Choose(From(10e6));
        Assert.Equal(SizedLoop.Promises.Slew | SizedLoop.Promises.Noise, quieter.Meets);
        Assert.True(Hertz(quieter) < Hertz(beyond), $"{Hertz(quieter)} over {Hertz(beyond)}");
    }

    [Fact]
    public void What_only_just_fits_is_taken_without_the_usual_room()
    {
        var targets = new AmplifierTargets { Power = 60.W, Load = 4.Ohm };
        var loop = Of(targets, new() { Distortion = 100.ppm });
        var safe = loop.FastestSafe();
        Assert.Equal(SizedLoop.Promises.All, loop.Choose((f, _) => f < 0.5 * safe ? 2 : f < 5 * safe ? 0.97 : 0.5).Meets);
        Assert.False(loop.Choose(From(5 * safe)).Meets.HasFlag(SizedLoop.Promises.Distortion));
    }

    [Fact]
    public void The_pair_takes_its_part_of_the_distortion_so_that_a_promise_for_all_asks_for_a_faster_loop()
    {
        var loop = Of(new() { Power = 60.W, Load = 4.Ohm }, new() { SignalToNoise = 90.dB, Distortion = 100.ppm });
        var peak = Math.Sqrt(2 * 60 * 4);
        // Outputs that leave all of it at a crossover of 500 kHz, and the same with the pair's third beside them: some parts in a million.
        var alone = loop.SlowestFor((f, _) => 500e3 / f);
        var together = loop.SlowestFor((f, pair) => (500e3 / f) + (pair.Third(peak) / 20e-6));
        Assert.Equal(500e3 / 0.95, alone, 1e3);
        Assert.True(together > 1.02 * alone, $"{together} over {alone}");
    }

    private static double Nothing(double hertz, SizedLoop.PairHarmonics pair) => 0;

    // All of what is allowed, at a crossover of so many hertz.
    private static Func<double, SizedLoop.PairHarmonics, double> From(double hertz) => (f, _) => hertz / f;

    // Crossover of one pole: slew rate over tail current, the pair's resistance and the loop's fraction.
    private static double Hertz(SizedLoop.Choice chosen) => chosen.Slew.VoltsPerSeconds / 20 / (2 * Math.PI * 4e-3 * (chosen.Degeneration.Ohms + (8.617333262e-5 * 318.15 / 2e-3)));

    private static SizedLoop Of(AmplifierTargets targets, SizingBasis basis) => new(Fast(Polarity.Npn), Fast(Polarity.Pnp), Fast(Polarity.Pnp), 20.pF, (1900.Ohm, 100.Ohm), (100.Ohm, 1.nF, 10.kOhm), 4.mA, 1.V_per_us, targets, basis);

    private static Transistor Fast(Polarity polarity) => DeviceSet.Shipped.Of<Transistor>().Where(t => t.Polarity == polarity).MaxBy(t => t.TransitionFrequency.Hertz)!;
}
