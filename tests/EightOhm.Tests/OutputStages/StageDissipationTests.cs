using EightOhm.OutputStages;
using EightOhm.Quantities;
using EightOhm.Samples;
using EightOhm.Supply;
using UnitsNet;

namespace EightOhm.Tests.OutputStages;

/// <summary>The stage whole: found maxima against dense scans, idle current, a rail that sags, high mains, music.</summary>
public class StageDissipationTests
{
    private static readonly StageDissipation ClassBOnly = new(rail: 46.V, pairs: 3, R_E: 0.22.Ohm);
    private static readonly StageDissipation Biased = ClassBOnly with { IdleCurrent = 103.8.mA, InternalResistance = 52.5.mOhm };

    // 50.1 V idle, 47.6 V with both channels at 40 V peak into 8 Ω: a drop of 2.5 V at a mean of 5 A/π a channel, from an emf of 51 V.
    private static readonly RailLine Line = RailLine.Through([(0.A, 50.1.V), ((5 / Math.PI).A, 47.6.V), ((40 / Math.PI).A, 30.1.V)], emf: 51.V);
    private static readonly StageDissipation Sagging = On(Line);

    public static TheoryData<double, double> Loads => new() { { 4, 0 }, { 4, 45 }, { 4, -60 }, { 8, 0 }, { 8, 90 }, { 2, 30 } };

    [Theory]
    [MemberData(nameof(Loads))]
    public void A_dense_scan_does_not_beat_the_maximum_that_is_found(double z, double a)
    {
        var steps = On(RailLine.Through([(0.A, 52.V), (0.8.A, 49.V), (3.A, 46.V), (9.A, 40.V)], 53.V));
        foreach (var stage in new[] { ClassBOnly, Biased, Sagging, steps, Biased with { IdleCurrent = 3.A }, Sagging.AtMains(10.percent) })
        {
            var found = stage.Maximum(z.Ohm, a.deg);
            var dense = stage.Sweep(z.Ohm, a.deg, 4001).Max(h => W(h.Total));
            Assert.InRange(W(found.Total), dense * (1 - 1e-6), dense * 1.001);
            Assert.Equal(W(found.Total), 6 * W(found.PerDevice), 1e-9);
            Assert.Equal(W(found.SupplyPower), W(found.LoadPower) + W(found.Resistors) + W(found.Total), 1e-9);
        }
    }

    [Fact]
    public void Efficiency_is_what_the_load_takes_of_the_supply()
    {
        var half = Biased.At(20.V, 8.Ohm, 0.deg);
        Assert.InRange(half.Efficiency.DecimalFractions, 0.2, 0.5);
        Assert.Equal(W(half.LoadPower) / W(half.SupplyPower), half.Efficiency.DecimalFractions, 1e-12);
        Assert.Equal(0, Biased.At(0.V, 8.Ohm, 0.deg).Efficiency.DecimalFractions);
        Assert.Equal(0, ClassBOnly.At(0.V, 8.Ohm, 0.deg).Efficiency.DecimalFractions);
    }

    [Fact]
    public void Idle_current_adds_a_watt_to_the_worst_and_not_its_own_heat()
    {
        var worst = W(Biased.Maximum(4.Ohm).Total);
        Assert.Equal(106.40, worst, 0.005);
        Assert.Equal(28.6, W(Biased.At(0.V, 4.Ohm, 0.deg).Total), 0.05);
        Assert.Equal(133.9, W(ClassBOnly.Maximum(4.Ohm).Total) + W(Biased.At(0.V, 4.Ohm, 0.deg).Total), 0.05); // class B plus idle: too much by a quarter
        Assert.Equal(106.39, W((Biased with { Junction = 45.degC }).Maximum(4.Ohm).Total), 0.005);
        Assert.Equal(106.46, W((Biased with { InternalResistance = 0.Ohm }).Maximum(4.Ohm).Total), 0.005);
    }

    [Fact]
    public void Without_idle_current_the_search_finds_the_closed_form()
    {
        var searched = ClassBOnly;
        foreach (var a in new[] { 0, 30, 45, 60, -80 })
        {
            Assert.Equal(W(ClassB.Worst(46.V, 4.Ohm, a.deg, 0.22.Ohm, 3)), W(searched.Maximum(4.Ohm, a.deg).Total), 1e-9);
            Assert.Equal(ClassB.WorstLevel(46.V, 4.Ohm, a.deg, 0.22.Ohm, 3).Volts, searched.Maximum(4.Ohm, a.deg).Level.Volts, 1e-3);
        }

        Assert.Equal(W(ClassBOnly.Maximum(4.Ohm).Total), W((ClassBOnly with { IdleCurrent = 1.nA }).Maximum(4.Ohm).Total), 1e-4);
    }

    [Fact]
    public void The_rail_is_that_of_the_level()
    {
        var worst = (Sagging with { IdleCurrent = 0.A }).Maximum(8.Ohm);
        Assert.Equal(48.2, worst.Rail.Volts, 0.1);
        Assert.Equal(1.15, W(worst.Total) / W(ClassB.Worst(45.V, 8.Ohm, 0.deg, 0.22.Ohm, 3)), 0.01);
        Assert.Equal(W(ClassB.AtHighMains(ClassBOnly.Maximum(4.Ohm).Total, 10.percent)), W(ClassBOnly.AtMains(10.percent).Maximum(4.Ohm).Total), 1e-9);
        var full = Sagging.FullSwing(8.Ohm, 0.deg);
        Assert.Equal(Sagging.RailAt(full, 8.Ohm).Volts, full.Volts * (8 + (0.22 / 3)) / 8, 1e-6);
    }

    [Theory]
    [MemberData(nameof(Loads))]
    public void The_peak_of_a_side_is_the_closed_form_and_no_moment_beats_it(double z, double a)
    {
        var peak = ClassBOnly.Peak(z.Ohm, a.deg);
        var closed = W(ClassB.PeakOfSide(46.V, LoadWithEmitterResistor.Magnitude(z.Ohm, a.deg, 0.22.Ohm, 3), LoadWithEmitterResistor.Phase(z.Ohm, a.deg, 0.22.Ohm, 3)));
        Assert.Equal(closed, W(peak.Side), 1e-8 * closed);
        Assert.Equal(W(peak.Side) / 3, W(peak.PerDevice), 1e-9);
        Assert.Equal(W(peak.Side), peak.Across.Volts * peak.Current.Amperes, 1e-9 * closed);
        var most = 0.0;
        var full = ClassB.FullSwing(46.V, z.Ohm, a.deg, 0.22.Ohm, 3).Volts;
        for (var k = 1; k <= 100; k++)
            for (var t = 0.0; t < Math.Tau; t += 0.005)
            {
                var v = k / 100.0 * full;
                var i = v / z * Math.Sin(t - (a * Math.PI / 180));
                most = Math.Max(most, i > 0 ? (46 - (v * Math.Sin(t)) - (i * 0.22 / 3)) * i : 0);
            }

        Assert.InRange(W(peak.Side), most * (1 - 1e-9), most * 1.001);
        Assert.True(W(Biased.Peak(z.Ohm, a.deg).Side) >= W(peak.Side)); // the bias adds a little
    }

    [Fact]
    public void An_eighth_of_rated_power_is_cooler_as_noise_than_as_a_sine()
    {
        var ideal = new StageDissipation(46.V, 3, 0.Ohm);
        Assert.Equal(75.72, W(ideal.Sine(22.5.W, 4.Ohm, 0.deg).Total), 0.005);
        Assert.Equal(64.55, W(ideal.Noise(22.5.W, 4.Ohm, 0.deg).Total), 0.005);
        Assert.Equal(W(MusicDissipation.NoiseHeat(46.V, 22.5.W, 4.Ohm, 30.deg)), W(ideal.Noise(22.5.W, 4.Ohm, 30.deg).Total), 1e-9);
        Assert.Equal(W(MusicDissipation.SineHeat(46.V, 22.5.W, 4.Ohm, 30.deg)), W(ideal.Sine(22.5.W, 4.Ohm, 30.deg).Total), 1e-9);
        Assert.Equal(4, MusicDissipation.CrestFactor(180.W, 22.5.W).Ratio, 1e-12);
        Assert.Equal(63e-6, MusicDissipation.ClippedShare(4.ratio).DecimalFractions, 1e-6);
        Assert.True(W(Biased.Noise(22.5.W, 4.Ohm, 0.deg).Total) < W(Biased.Sine(22.5.W, 4.Ohm, 0.deg).Total));
    }

    [Fact]
    public void Impossible_inputs_are_refused_with_what_is_allowed()
    {
        Refused("at most 45.17 V", () => ClassBOnly.At(45.5.V, 4.Ohm, 0.deg));
        Refused("rail at this level is 46 V", () => ClassBOnly.At(50.V, 4.Ohm, 0.deg));
        Refused("within ±90°", () => Biased.Maximum(4.Ohm, 100.deg));
        Refused("greater than 0 Ω", () => Biased.Maximum(0.Ohm));
        Refused("greater than 0 Ω", () => Biased.Peak(0.Ohm, 0.deg));
        Refused("3 times the rms", () => ClassBOnly.Noise(80.W, 4.Ohm, 0.deg));
        Refused("3 times the rms", () => MusicDissipation.NoiseHeat(46.V, 80.W, 4.Ohm, 0.deg));
        Refused("sine's peak", () => MusicDissipation.SineHeat(20.V, 100.W, 4.Ohm, 0.deg));
        Refused("0 A or more", () => ClassBOnly with { IdleCurrent = -1.A });
        Refused("greater than 0 V", () => new StageDissipation(0.V, 3, 0.22.Ohm));
        Refused("give it more of them", () => On(RailLine.Through([(0.A, 50.V), (1.A, 49.V)], 51.V)).Maximum(4.Ohm));
        Refused("nothing is left of the rail", () => Sagging.AtMains((-90).percent));
        Refused("a multiple of 4", () => ClassBOnly.OverPeriod(20.V, 8.Ohm, 0.deg, 20.Hz, 1001));
        Refused("clip it first", () => ClassBOnly.OverPiece(new([0.V, 47.V], 1.s), 4.Ohm));
    }

    [Fact]
    public void High_mains_moves_the_emf_and_not_the_copper()
    {
        var stage = Sagging with { IdleCurrent = 0.A };
        var (nominal, high) = (stage.Maximum(4.Ohm), stage.AtMains(10.percent).Maximum(4.Ohm));
        Assert.Equal((1.1 * 51) - (51 - Line.At(high.RailCurrent).Volts), high.Rail.Volts, 1e-9);

        // Scaling the loaded rail would leave out what the drop does not grow by.
        var scaled = (stage with { }) is var s ? W(new StageDissipation(RailLine.Through([(0.A, 55.11.V), ((5 / Math.PI).A, 52.36.V), ((40 / Math.PI).A, 33.11.V)], 56.1.V), 3, 0.22.Ohm).Maximum(4.Ohm).Total) : 0;
        Assert.True(W(high.Total) > scaled * 1.01, $"{W(high.Total)} W, {scaled} W");
        Assert.True(W(high.Total) / W(nominal.Total) > 1.21);
        Assert.Equal(high, stage.AtMains(5.percent).AtMains(10.percent).Maximum(4.Ohm)); // each time from nominal
        Assert.Equal(W(stage.Maximum(4.Ohm).Total), W(stage.AtMains(0.percent).Maximum(4.Ohm).Total));
        Assert.True(stage.AtMains((-10).percent).FullSwing(4.Ohm, 0.deg) < stage.FullSwing(4.Ohm, 0.deg));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(45)]
    [InlineData(-60)]
    public void Over_a_period_one_transistor_dissipates_its_share(double a)
    {
        foreach (var stage in new[] { ClassBOnly, Biased, Sagging })
        {
            var period = stage.OverPeriod(30.V, 8.Ohm, a.deg, 50.Hz);
            Assert.Equal(W(stage.At(30.V, 8.Ohm, a.deg).PerDevice), W(period.Mean), 2e-5 * W(period.Mean));
            Assert.Equal(0.02, period.Period.Seconds, 1e-12);
        }
    }

    [Fact]
    public void A_piece_of_music_is_a_sine_where_it_is_one()
    {
        var sine = new Waveform<ElectricPotential>([.. Enumerable.Range(0, 4000).Select(i => (30 * Math.Sin(2 * Math.PI * i / 4000)).V)], (0.02 / 4000).s);
        foreach (var stage in new[] { ClassBOnly, Biased, Sagging })
        {
            var (piece, period) = (stage.OverPiece(sine, 8.Ohm), stage.OverPeriod(30.V, 8.Ohm, 0.deg, 50.Hz, 4000));
            Assert.Equal(W(period.Mean), W(piece.Mean), 1e-5 * W(period.Mean));
            Assert.Equal(W(period.Peak), W(piece.Peak), 1e-5 * W(period.Peak));
            Assert.Equal(period.Period.Seconds, piece.Period.Seconds, 1e-12);
        }
    }

    private static StageDissipation On(RailLine rails) => new(rails, 3, 0.22.Ohm) { IdleCurrent = 103.8.mA, InternalResistance = 52.5.mOhm };

    private static void Refused(string says, Func<object> call) =>
        Assert.Contains(says, Assert.Throws<RefusedValueException>(call).Message, StringComparison.Ordinal);

    private static double W(Power p) => (double)p.Watts;
}
