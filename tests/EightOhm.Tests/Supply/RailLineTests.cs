using EightOhm.Quantities;
using EightOhm.Supply;
using UnitsNet;

namespace EightOhm.Tests.Supply;

public class RailLineTests
{
    private static readonly DualRailSupply Tern = new(new DualWinding(35.V, 6.percent, 800.VA), 50.Hz, 0.9.V, 30.mF) { DiodeResistance = 20.mOhm };
    private static readonly RailLine Rail = RailLine.Through([(0.A, 51.V), (2.A, 49.V), (6.A, 46.V)], 52.V);

    [Theory]
    [InlineData(0, 51)]
    [InlineData(1, 50)]
    [InlineData(2, 49)]
    [InlineData(4, 47.5)]
    [InlineData(6, 46)]
    public void Between_its_points_it_is_straight(double amperes, double volts) => Assert.Equal(volts, Rail.At(amperes.A).Volts, 1e-12);

    [Fact]
    public void With_the_mains_the_emf_moves_and_the_drop_stays()
    {
        Assert.Equal(57.2 - 6, Rail.AtMains(10.percent).At(6.A).Volts, 1e-12);
        Assert.Equal(46.8 - 6, Rail.AtMains((-10).percent).At(6.A).Volts, 1e-12);
        Assert.NotEqual(1.1 * 46, Rail.AtMains(10.percent).At(6.A).Volts, 0.1); // the loaded rail scaled: too low at high mains
        Assert.Equal(55, RailLine.Constant(50.V).AtMains(10.percent).At(1e6.A).Volts, 1e-12);
    }

    [Fact]
    public void Of_one_channel_is_the_rail_at_the_current_of_all()
    {
        var one = Rail.OfOne(2, 0.5.A);
        foreach (var mean in new[] { 0, 0.3, 0.75, 2, 2.75 })
            Assert.Equal(Rail.At(((2 * mean) + 0.5).A).Volts, one.At(mean.A).Volts, 1e-12);
        Assert.Equal(2.75, one.MaxMean.Amperes, 1e-12);
        Assert.Equal(Rail.AtMains(10.percent).At(4.5.A).Volts, one.AtMains(10.percent).At(2.A).Volts, 1e-12);
    }

    [Fact]
    public void That_of_a_supply_is_the_supply_at_any_mains()
    {
        var line = Tern.Line();
        Assert.Equal((37.1 * Math.Sqrt(2)) - 0.9, line.At(0.A).Volts, 1e-9);
        foreach (var amperes in new[] { 0.05, 0.7, 3.2, 6.1, 12, 30 })
        {
            Assert.Equal(Tern.RailAt(amperes.A).Volts, line.At(amperes.A).Volts, 0.02);
            foreach (var x in new[] { -10.0, 10 })
                Assert.Equal(Tern.AtMains(x.percent).RailAt(amperes.A).Volts, line.AtMains(x.percent).At(amperes.A).Volts, 0.02);
        }

        // Not the loaded rail scaled, and not quite the drop kept: at a higher emf the same current flows in shorter pulses and drops more.
        var high = line.AtMains(10.percent).At(6.1.A).Volts;
        Assert.NotEqual(1.1 * line.At(6.1.A).Volts, high, 0.4);
        Assert.Equal((1.1 * line.Emf.Volts) - (line.Emf.Volts - line.At(6.1.A).Volts) - 0.2, high, 0.02);

        // A playing channel's rail, mean: the half-waves' mean is what counts.
        var at4 = Tern.Playing(2, 9.49.A, 1.kHz, 50.mA);
        Assert.Equal(at4.PositiveMean.Volts, line.OfOne(2, 50.mA).At((9.49 / Math.PI).A).Volts, 0.05);
        Assert.Equal(at4.Positive.LoadMean.Amperes, RailCurrent.MeanOf(2, 9.49.A, 50.mA).Amperes, 1e-6);
    }

    [Fact]
    public void What_cannot_be_a_rail_is_refused()
    {
        Assert.Contains("falls as more is taken", Assert.Throws<RefusedValueException>(() => RailLine.Through([(0.A, 50.V), (1.A, 51.V)], 52.V)).Message, StringComparison.Ordinal);
        Assert.Contains("the emf, 49 V", Assert.Throws<RefusedValueException>(() => RailLine.Through([(0.A, 50.V)], 49.V)).Message, StringComparison.Ordinal);
        Assert.Contains("in the order", Assert.Throws<RefusedValueException>(() => RailLine.Through([(1.A, 50.V), (1.A, 49.V)], 52.V)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => RailLine.Through([], 52.V));
        Assert.Contains("give it more", Assert.Throws<RefusedValueException>(() => Rail.At(7.A)).Message, StringComparison.Ordinal);
        Assert.Throws<RefusedValueException>(() => Rail.AtMains((-95).percent));
        Assert.Throws<RefusedValueException>(() => Rail.AtMains((-100).percent));
        Assert.Throws<RefusedValueException>(() => Rail.OfOne(0, 0.A));
        Assert.Throws<RefusedValueException>(() => Rail.OfOne(2, 7.A));
    }
}
