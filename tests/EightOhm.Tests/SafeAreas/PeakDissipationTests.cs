using CsCheck;
using EightOhm.Loads;
using EightOhm.OutputStages;
using EightOhm.Quantities;
using EightOhm.SafeAreas;
using UnitsNet;

namespace EightOhm.Tests.SafeAreas;

/// <summary>The peak instantaneous dissipation of one transistor on its way through the half-wave, and the equivalent resistor that stands for it.</summary>
public class PeakDissipationTests
{
    private static readonly Gen<double> Degrees = Gen.Double[-90, 90];

    [Fact]
    public void A_resistor_is_a_line_from_the_rail_to_the_minimum_and_back()
    {
        var path = One(40, 8, 0);
        var trace = path.Trace(91);
        var (volts, amperes) = (trace.X, trace.Y);
        Assert.Equal((46, 0, 46, 0), (volts[0], amperes[0], Math.Round(volts[volts.Count - 1], 12), Math.Round(amperes[volts.Count - 1], 12)));
        Assert.Equal((6, 5), (volts[45], amperes[45]));
        Assert.Equal(46 * 46 / 32.0, (double)path.PeakDissipation.Watts, 1e-9);
        Assert.Equal(23, path.VoltageAtPeak.Volts, 1e-6);
        Assert.Equal(23 / 8.0, path.CurrentAtPeak.Amperes, 1e-6);
    }

    [Fact]
    public void An_inductor_carries_its_peak_at_the_rail_and_goes_to_twice_the_rail_almost()
    {
        var path = One(46, 4, 90);
        var trace = path.Trace(91);
        var (volts, amperes) = (trace.X, trace.Y);
        Assert.Equal((46, 11.5), (Math.Round(volts[45], 9), amperes[45]));
        Assert.Equal(92, volts.Max(), 1e-9);
        Assert.Equal(11.5, path.PeakCurrent.Amperes);
        Assert.True(path.VoltageAtPeak > path.Rail);
    }

    [Fact]
    public void At_full_swing_the_peak_dissipation_is_that_of_the_peak_equivalent_resistor() => Degrees.Sample(d =>
    {
        var heat = (double)One(46, 4, d).PeakDissipation.Watts;
        return Math.Abs((heat / (46 * 46 / (4 * EquivalentResistor.Peak(4.Ohm, d.deg).Ohms))) - 1) < 1e-9;
    });

    [Fact]
    public void No_point_of_the_path_nor_any_lower_level_is_hotter() => Gen.Select(Degrees, Gen.Double[0.05, 1]).Sample((d, level) =>
    {
        var path = One(46 * level, 4, d);
        var trace = path.Trace(721);
        var (volts, amperes) = (trace.X, trace.Y);
        var hottest = volts.Zip(amperes, (v, i) => v * i).Max();
        var full = 46 * 46 / (4 * EquivalentResistor.Peak(4.Ohm, d.deg).Ohms);
        return hottest <= (double)path.PeakDissipation.Watts * (1 + 1e-12) && (double)path.PeakDissipation.Watts <= full * (1 + 1e-9);
    });

    [Fact]
    public void Each_of_n_transistors_has_its_share_and_the_emitter_resistors_take_a_little_of_it() =>
        Gen.Select(Degrees, Gen.Int[1, 6]).Sample((d, n) =>
        {
            var one = (double)One(38, 4, d).PeakDissipation.Watts;
            var each = (double)new LoadEllipse(46.V, 38.V, 4.Ohm, d.deg, 0.Ohm, n).PeakDissipation.Watts;
            var behind = (double)new LoadEllipse(46.V, 38.V, 4.Ohm, d.deg, 0.22.Ohm, n).PeakDissipation.Watts;
            return Math.Abs((each * n / one) - 1) < 1e-9 && behind < each;
        });

    [Fact]
    public void A_load_gives_its_own_ellipse_at_a_frequency()
    {
        var box = new BoxedDriver(5.8.Ohm, 0.5.mH, 45.Hz, 3, 0.6);
        var path = box.Ellipse(46.V, 40.V, 2.kHz, 0.22.Ohm, 3);
        Assert.Equal((box.Magnitude(2.kHz), box.Phase(2.kHz), 3), (path.Magnitude, path.Phase, path.Pairs));
    }

    [Fact]
    public void A_swing_past_the_rail_is_refused()
    {
        var past = Assert.Throws<RefusedValueException>(() => One(47, 4, 45));
        Assert.Contains("47 V or more", past.Message, StringComparison.Ordinal);
        Assert.Throws<RefusedValueException>(() => One(0, 4, 45));
        Assert.Throws<RefusedValueException>(() => One(46, 4, 95));
        Assert.Throws<RefusedValueException>(() => One(46, 4, 45).Trace(1));
    }

    private static LoadEllipse One(double peak, double ohms, double degrees) => new(46.V, peak.V, ohms.Ohm, degrees.deg, 0.Ohm, 1);
}
