using EightOhm.Quantities;
using EightOhm.Thermal;
using UnitsNet;

namespace EightOhm.Tests.Thermal;

/// <summary>Between the duty that must not trip and the one that must; sinks by their data; the base under a device.</summary>
public class ThermostatTests
{
    [Fact]
    public void A_spread_counts_on_both_sides()
    {
        Assert.True(Thermostat.Judge(85.degC, 5.K, 79.degC, 92.degC).Fits);
        var early = Thermostat.Judge(70.degC, 0.K, 78.6.degC, 92.degC);
        Assert.False(early.Fits);
        Assert.Equal(-8.6, early.MarginToRated.Kelvins, 1e-9);
        Assert.Contains("rated duty trips it", early.ToString(), StringComparison.Ordinal);
        Assert.Contains("trips too late", Thermostat.Judge(90.degC, 5.K, 79.degC, 92.degC).ToString(), StringComparison.Ordinal);
        Assert.Contains("cannot fit", Thermostat.Judge(85.degC, 10.K, 79.degC, 92.degC).ToString(), StringComparison.Ordinal);
        Assert.Equal(125 - (18 * 1.18), Thermostat.SinkLimit(125.degC, 18.W, 0.83.K_per_W, 0.35.K_per_W).DegreesCelsius, 1e-9);
    }

    [Fact]
    public void A_bought_sink_is_worse_at_a_lower_rise()
    {
        Assert.Equal(0.4, RatedSink.AtRise(0.4.K_per_W, 75.K, 75.K).Si, 1e-12);
        var rise = RatedSink.Rise(0.4.K_per_W, 75.K, 80.W);
        Assert.Equal(RatedSink.AtRise(0.4.K_per_W, 75.K, rise).Si, RatedSink.AtPower(0.4.K_per_W, 75.K, 80.W).Si, 1e-12);
        // Not 0.4 K/W times 80 W.
        Assert.True(rise > 34.K);
        Assert.Throws<RefusedValueException>(() => RatedSink.Rise(0.4.K_per_W, 75.K, 1.W));
    }

    [Fact]
    public void Each_device_has_its_part_of_the_base()
    {
        var sink = new PlateFinSink { Width = 300.mm, Height = 150.mm, FinLength = 50.mm, Thickness = 3.mm, Fins = 24, Emissivity = 0.85 };
        var theta = sink.SpreadingUnder(3.cm2, 6, 10.mm, 120.W, 35.degC);
        var n = 6 * sink.At(120.W, 35.degC).Resistance;
        Assert.Equal(SpreadingResistance.Of(3.cm2, 10.mm, 75.cm2, sink.Conductivity, n).Si, theta.Si, 1e-12);
        Assert.True(theta > sink.SpreadingUnder(3.cm2, 6, 15.mm, 120.W, 35.degC), "a thicker base spreads better");
        Assert.Throws<RefusedValueException>(() => sink.SpreadingUnder(3.cm2, 6, 1.mm, 120.W, 35.degC));
    }
}
