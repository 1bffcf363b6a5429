using EightOhm.Display.Figures;
using EightOhm.Quantities;
using EightOhm.Samples;
using UnitsNet;

namespace EightOhm.Display.Tests.ReadyMade;

public class CurveChartTests
{
    private static readonly Waveform<ElectricPotential> Rail = new([45.V, 44.2.V, 44.6.V], 5.ms);

    [Fact]
    public void A_curve_is_drawn_over_the_quantities_that_it_has()
    {
        var figure = Charts.Sampled(Rail);
        Assert.Equal("Voltage over time", figure.Title);
        Assert.Equal(("time", "s"), (figure.X.Label, figure.X.Unit));
        Assert.Equal(("voltage", "V"), (figure.Y.Label, figure.Y.Unit));
        Assert.Equal([45, 44.2, 44.6], Assert.IsType<LineSeries>(figure.Series[0]).Y);
        Assert.Equal("Thermal resistance over number", Charts.Sampled(new Curve<double, ThermalResistance>([(1, 2.K_per_W), (2, 1.K_per_W)])).Title);
    }

    [Fact]
    public void Whatever_its_quantities_a_curve_and_a_waveform_are_shown_as_figures()
    {
        Assert.Equal(Charts.Sampled(Rail).AltText, Show.Text(Rail));
        Assert.Contains("<img", Show.Html(Rail), StringComparison.Ordinal);
        Assert.StartsWith("Current over voltage", Show.Text(new Curve<ElectricPotential, ElectricCurrent>([(1.V, 2.A), (2.V, 3.A)])), StringComparison.Ordinal);
    }
}
