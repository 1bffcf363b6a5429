using EightOhm.Quantities;
using EightOhm.Thermal;
using UnitsNet;

namespace EightOhm.Tests.Thermal;

public class PlateFinSinkTests
{
    private static readonly PlateFinSink Sink = new PlateFinSink { Width = 300.mm, Height = 100.mm, FinLength = 40.mm, Thickness = 2.mm, Fins = 24, Emissivity = 0.85 };

    [Fact]
    public void A_sink_has_no_one_resistance_it_falls_with_the_heat()
    {
        double[] theta = [.. new[] { 5, 20, 50, 100 }.Select(p => Sink.At(p.W, 35.degC).Resistance.Si)];
        Assert.Equal(theta.OrderDescending(), theta);
        Assert.True(theta[0] > 1.3 * theta[^1], string.Join(", ", theta));
    }

    [Fact]
    public void All_of_the_heat_is_accounted_for()
    {
        var at = Sink.At(80.W, 35.degC);
        Assert.Equal(80, (double)(at.ByChannels + at.ByFaces + at.ByRadiation).Watts, 1e-9);
        Assert.Equal(at.Rise.Kelvins / 80, at.Resistance.Si, 1e-12);
        Assert.Equal(35 + at.Rise.Kelvins, at.Base.DegreesCelsius, 1e-9);
        Assert.InRange(at.FinEfficiency.DecimalFractions, 0.9, 1);
    }

    [Fact]
    public void A_shiny_sink_radiates_nothing_worth_speaking_of_and_is_hotter()
    {
        var shiny = new PlateFinSink { Width = 300.mm, Height = 100.mm, FinLength = 40.mm, Thickness = 2.mm, Fins = 24, Emissivity = 0 };
        Assert.Equal(0.W, shiny.At(80.W, 35.degC).ByRadiation);
        Assert.True(shiny.At(80.W, 35.degC).Rise > Sink.At(80.W, 35.degC).Rise);
        Assert.True((Sink with { BackIsFree = true }).At(80.W, 35.degC).Rise < Sink.At(80.W, 35.degC).Rise);
    }

    [Fact]
    public void The_best_number_of_fins_beats_its_neighbours_and_is_near_the_closed_form_for_thin_fins()
    {
        var best = Sink.Best(80.W, 35.degC);
        var rise = best.At(80.W, 35.degC).Rise;
        Assert.True(rise <= best.WithFins(best.Fins - 1).At(80.W, 35.degC).Rise && rise <= best.WithFins(best.Fins + 1).At(80.W, 35.degC).Rise);

        // Copper fins without radiation and of hardly any thickness: what the closed form assumes.
        var thin = new PlateFinSink { Width = 500.mm, Height = 100.mm, FinLength = 20.mm, Thickness = 0.05.mm, Fins = 24, Emissivity = 0, Conductivity = ThermalConductivity.FromWattsPerMeterKelvin(4000) }.Best(100.W, 30.degC);
        var at = thin.At(100.W, 30.degC);
        var film = Air.At(30.degC + (at.Rise / 2));
        var closed = NaturalConvection.OptimumSpacing(100.mm, NaturalConvection.Rayleigh(at.Rise, 30.degC + (at.Rise / 2), 100.mm, film.Viscosity, film.Prandtl));
        Assert.InRange(thin.Spacing / closed, 0.85, 1.15);
    }

    [Fact]
    public void Outside_the_correlations_it_refuses_with_what_is_allowed()
    {
        var hot = Assert.Throws<RefusedValueException>(() => Sink.At(2000.W, 35.degC));
        Assert.Contains("P must be at most", hot.Message, StringComparison.Ordinal);
        Assert.Contains("use a larger sink", hot.Message, StringComparison.Ordinal);
        var dense = new PlateFinSink { Width = 100.mm, Height = 200.mm, FinLength = 40.mm, Thickness = 0.3.mm, Fins = 120, Emissivity = 0.8 };
        var near = Assert.Throws<RefusedValueException>(() => dense.At(1.W, 35.degC));
        Assert.Contains("use fewer", near.Message, StringComparison.Ordinal);
        Assert.Contains("too near each other", Assert.Throws<RefusedValueException>(() => new PlateFinSink { Width = 100.mm, Height = 150.mm, FinLength = 40.mm, Thickness = 0.5.mm, Fins = 50, Emissivity = 0.8 }.At(0.01.W, 35.degC)).Message, StringComparison.Ordinal);
        Assert.Contains("from 0.1 to", Assert.Throws<RefusedValueException>(() => NaturalConvection.BetweenPlates(0.05)).Message, StringComparison.Ordinal);
        Assert.Contains("from 0 °C to 120 °C", Assert.Throws<RefusedValueException>(() => Air.At(130.degC)).Message.Replace("0.00", "0", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Throws<RefusedValueException>(() => SinkBalance.Convected(300.K, Sink, 35.degC));
        Assert.Throws<RefusedValueException>(() => NaturalConvection.VerticalPlate(1e13, 0.7));
    }

    [Fact]
    public void Impossible_sinks_are_refused()
    {
        Assert.Contains("Emissivity must be from 0 to 1", Assert.Throws<RefusedValueException>(() => new PlateFinSink { Width = 300.mm, Height = 100.mm, FinLength = 40.mm, Thickness = 2.mm, Fins = 24, Emissivity = 1.2 }).Message, StringComparison.Ordinal);
        Assert.Contains("more than the 24 fins together", Assert.Throws<RefusedValueException>(() => new PlateFinSink { Width = 40.mm, Height = 100.mm, FinLength = 40.mm, Thickness = 2.mm, Fins = 24, Emissivity = 0.8 }.At(80.W, 35.degC)).Message, StringComparison.Ordinal);
        Assert.Throws<RefusedValueException>(() => new PlateFinSink { Width = 300.mm, Height = 100.mm, FinLength = 40.mm, Thickness = 2.mm, Fins = 1, Emissivity = 0.8 });
        Assert.Throws<RefusedValueException>(() => Sink.At(0.W, 35.degC));
        Assert.Throws<RefusedValueException>(() => Radiation.Flux(-0.1, 300, 290));
        Assert.Throws<RefusedValueException>(() => Insulator.Layer(0.mm, HeatMaterials.Mica, 5.cm2));
    }
}
