using CsCheck;
using EightOhm.Loads;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Tests.Loads;

/// <summary>The path of one side of the stage, and the equivalent resistors that stand for it.</summary>
public class EllipseTests
{
    private static readonly Gen<double> Degrees = Gen.Double[-90, 90];

    [Fact]
    public void A_resistor_is_a_line_from_the_rail_to_the_trough_and_back()
    {
        var path = SideEllipse.Of(46.V, 40.V, 8.Ohm, 0.deg, 91);
        Assert.Equal((46, 0, 46, 0), (path.Volts[0], path.Amperes[0], Math.Round(path.Volts[^1], 12), path.Amperes[^1]));
        Assert.Equal((6, 5), (path.Volts[45], path.Amperes[45]));
        Assert.Equal(46 * 46 / 32.0, (double)path.PeakHeat.Watts, 1e-9);
        Assert.Equal(23, path.HottestVoltage.Volts, 1e-6);
    }

    [Fact]
    public void An_inductor_carries_its_peak_at_the_rail_and_goes_to_twice_the_rail_almost()
    {
        var path = SideEllipse.Of(46.V, 46.V, 4.Ohm, 90.deg, 91);
        Assert.Equal((46, 11.5), (Math.Round(path.Volts[45], 9), path.Amperes[45]));
        Assert.Equal(92, path.Volts.Max(), 1e-9);
        Assert.Equal(11.5, path.PeakCurrent.Amperes);
    }

    [Fact]
    public void At_full_swing_the_hottest_instant_is_that_of_the_peak_equivalent_resistor() => Degrees.Sample(d =>
    {
        var heat = (double)SideEllipse.Of(46.V, 46.V, 4.Ohm, d.deg).PeakHeat.Watts;
        return Math.Abs((heat / (46 * 46 / (4 * EquivalentResistor.Peak(4.Ohm, d.deg).Ohms))) - 1) < 1e-9;
    });

    [Fact]
    public void No_point_of_the_path_nor_any_lower_level_is_hotter() => Gen.Select(Degrees, Gen.Double[0.05, 1]).Sample((d, level) =>
    {
        var path = SideEllipse.Of(46.V, (46 * level).V, 4.Ohm, d.deg, 721);
        var hottest = path.Volts.Zip(path.Amperes, (v, i) => v * i).Max();
        var full = 46 * 46 / (4 * EquivalentResistor.Peak(4.Ohm, d.deg).Ohms);
        return hottest <= (double)path.PeakHeat.Watts * (1 + 1e-12) && (double)path.PeakHeat.Watts <= full * (1 + 1e-9);
    });

    [Fact]
    public void Leading_or_lagging_is_the_same_stress_and_the_plain_numbers_are_the_formulas() => Degrees.Sample(d =>
    {
        Assert.Equal(EquivalentResistor.Peak(1.Ohm, d.deg).Ohms, EquivalentResistor.Peak(1.Ohm, (-d).deg).Ohms, 1e-15);
        Assert.Equal(EquivalentResistor.Average(1.Ohm, d.deg).Ohms, EquivalentResistor.Average(1.Ohm, (-d).deg).Ohms, 1e-15);
        Assert.Equal(EquivalentResistor.Peak(1.Ohm, d.deg).Ohms, EquivalentResistor.PeakFactor(d * Math.PI / 180), 1e-13);
        Assert.Equal(EquivalentResistor.Average(1.Ohm, d.deg).Ohms, EquivalentResistor.AverageFactor(d * Math.PI / 180), 1e-13);
        Assert.True(EquivalentResistor.Peak(1.Ohm, d.deg) <= EquivalentResistor.Average(1.Ohm, d.deg) * (1 + 1e-12), "the peak is the harder of the two");
    });

    [Fact]
    public void A_swing_past_the_rail_is_refused()
    {
        var past = Assert.Throws<RefusedValueException>(() => SideEllipse.Of(46.V, 47.V, 4.Ohm, 45.deg));
        Assert.Contains("cannot swing past its rail", past.Message, StringComparison.Ordinal);
        Assert.Throws<RefusedValueException>(() => SideEllipse.Of(46.V, 0.V, 4.Ohm, 45.deg));
        Assert.Throws<RefusedValueException>(() => SideEllipse.Of(46.V, 46.V, 4.Ohm, 95.deg));
        Assert.Throws<RefusedValueException>(() => SideEllipse.Of(46.V, 46.V, 4.Ohm, 45.deg, 2));
    }
}
