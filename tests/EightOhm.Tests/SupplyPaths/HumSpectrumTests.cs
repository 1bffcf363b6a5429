using EightOhm.Quantities;
using EightOhm.Supply;
using EightOhm.SupplyPaths;
using UnitsNet;

namespace EightOhm.Tests.SupplyPaths;

public class HumSpectrumTests
{
    private static readonly RectifierSupply Supply = new(35.V, 50.Hz, 0.5.Ohm, 1.6.V, 10.mF);

    [Fact]
    public void A_solved_rail_s_lines_make_its_ripple()
    {
        var rail = Supply.SteadyState(RailCurrent.Constant(3.A));
        var hum = HumSpectrum.Of(rail, 50.Hz, _ => 40.dB, 100);
        Assert.Equal(100, hum.Lines.MaxBy(l => l.Ripple.Volts)!.Frequency.Hertz);
        var v = rail.OverOneCycle(4001).Rail.Skip(1).ToArray();
        var mean = v.Average();
        Assert.Equal(Math.Sqrt(v.Average(x => (x - mean) * (x - mean))), hum.RippleRms.Volts, 1e-3 * hum.RippleRms.Volts);
        Assert.Equal(hum.RippleRms.Volts / 100, hum.Total.Volts, 1e-12);
        Assert.Equal(100 * 28.28 / hum.RippleRms.Volts, hum.Below(28.28.V).Ratio, 1e-6);
    }

    [Fact]
    public void A_rejection_of_nothing_is_refused() =>
        Assert.Contains("the rejection must be greater than 0", Assert.Throws<RefusedValueException>(() => HumSpectrum.OfSawtooth(1.V, 50.Hz, _ => 0.ratio)).Message, StringComparison.Ordinal);
}
