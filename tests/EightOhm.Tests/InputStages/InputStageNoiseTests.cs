using EightOhm.InputStages;
using EightOhm.Noise;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Tests.InputStages;

public class InputStageNoiseTests
{
    private static readonly InputStageNoise Stage = new()
    {
        Temperature = 45.degC,
        TailCurrent = 4.mA,
        CurrentGain = 300,
        BaseResistance = 30.Ohm,
        Degeneration = 47.Ohm,
        Source = 100.Ohm,
        Filter = 2.2.nF,
        Coupling = 10.uF,
        Bias = 10.kOhm,
        Upper = 2.24.kOhm,
        Lower = 100.Ohm,
        MirrorDegeneration = 220.Ohm,
    };

    [Fact]
    public void The_parts_of_a_stage_in_mid_band()
    {
        var budget = Stage.Spectrum().At(1.kHz);
        double Part(string name) => Math.Round(budget.Ranked.Single(p => p.Name == name).Density.Si * 1e9, 2);
        Assert.Equal([1.32, 1.3, 1.29, 1.03, 0.73, 0.49, 0.36], new[] { "source and input network", "feedback network", "emitter resistors", "base resistances", "mirror", "collector shot noise", "base currents" }.Select(Part));
        Assert.Equal(2.65, budget.Total.Si * 1e9, 0.005);
    }

    [Fact]
    public void At_the_low_end_the_bias_resistor_is_heard_and_at_the_high_end_the_filter_shorts_it()
    {
        var spectrum = Stage.Spectrum();
        double Network(Frequency f) => spectrum.At(f).Ranked.Single(p => p.Name == "source and input network").Density.Si;
        Assert.True(Network(1.Hz) > 5 * Network(1.kHz));
        Assert.True(Network(5.MHz) < Network(1.kHz) / 4);
    }

    [Fact]
    public void A_capacitor_in_the_divider_lets_the_upper_resistor_be_heard_below_its_corner()
    {
        var held = Stage with { LowerCapacitor = 1000.uF };
        double Divider(InputStageNoise s, Frequency f) => s.Spectrum().At(f).Ranked.Single(p => p.Name == "feedback network").Density.Si;
        Assert.Equal(Divider(Stage, 1.kHz), Divider(held, 1.kHz), 1e-3 * Divider(Stage, 1.kHz));
        Assert.True(Divider(held, 0.1.Hz) > 2 * Divider(Stage, 0.1.Hz));
    }

    [Fact]
    public void A_stage_without_a_mirror_and_a_tail_has_no_such_parts()
    {
        Assert.DoesNotContain((Stage with { Mirror = false }).Spectrum().Sources, s => s.Name == "mirror");
        Assert.DoesNotContain(Stage.Spectrum().Sources, s => s.Name == "tail current");
        Assert.Contains((Stage with { TailNoise = 20.pA_rtHz, Imbalance = 2.percent }).Spectrum().Sources, s => s.Name == "tail current");
    }

    [Fact]
    public void A_figure_that_cannot_be_is_refused_by_its_name() =>
        Assert.Contains("TailCurrent must be greater than 0 A", Assert.Throws<RefusedValueException>(() => (Stage with { TailCurrent = 0.A }).Spectrum()).Message, StringComparison.Ordinal);

    [Fact]
    public void A_ratio_is_stated_with_its_reference_its_band_and_its_weighting()
    {
        var totals = Stage.Spectrum().Over(20.Hz, 20.kHz, weighting: NoiseWeighting.A);
        Assert.EndsWith(" dB re 1.2 V rms, 20 Hz to 20 kHz, A-weighted", totals.Statement(1.2.V), StringComparison.Ordinal);
        Assert.Equal(1, totals.Ranked.Sum(p => totals.ShareOf(p.Name).DecimalFractions), 1e-12);
        Assert.Contains("There is no source \"hum\"", Assert.Throws<ArgumentException>(() => totals.ShareOf("hum")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_band_from_nothing_and_a_name_twice_are_refused()
    {
        var spectrum = Stage.Spectrum();
        Assert.Contains("1/f noise down to 0 Hz has no end", Assert.Throws<RefusedValueException>(() => spectrum.Over(0.Hz, 20.kHz)).Message, StringComparison.Ordinal);
        Assert.Contains("upside down", Assert.Throws<RefusedValueException>(() => spectrum.Over(20.kHz, 20.Hz)).Message, StringComparison.Ordinal);
        Assert.Contains("twice", Assert.Throws<ArgumentException>(() => new NoiseSpectrum([new("a", 1.nV_rtHz), new("a", 2.nV_rtHz)])).Message, StringComparison.Ordinal);
        Assert.Contains("one source or more", Assert.Throws<ArgumentException>(() => new NoiseSpectrum([])).Message, StringComparison.Ordinal);
    }
}
