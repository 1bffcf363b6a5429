using EightOhm.Display.Figures;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Display.Tests.Figures;

/// <summary>Quantities in; bands, areas, histograms, spans and equal scales.</summary>
public class FigureKindsTests
{
    [Fact]
    public void An_axis_takes_its_unit_from_the_kind()
    {
        Assert.Equal("Hz", Axis.Of<Frequency>("f").Unit);
        Assert.Equal("V/µs", Axis.Of<ElectricPotentialChangeRate>("slew").Unit);
        Assert.Equal("dB", Axis.Of<Gain>("gain").Unit);
        Assert.Equal("%", Axis.Of<Ratio>("THD").Unit);
        Assert.Equal("°C", Axis.Of<Temperature>("T").Unit);
    }

    [Fact]
    public void Quantities_stand_in_the_units_of_their_axis()
    {
        var line = LineSeries.Of("a", [1.kHz, 2.kHz], [Gain.FromRatio(10), Gain.FromRatio(-100)]);
        Assert.Equal([1000.0, 2000], line.X);
        Assert.Equal([20.0, 40], line.Y.Select(y => Math.Round(y, 12)));
        Assert.Equal([40.0], LineSeries.Of("slew", [1.s], [40.V_per_us]).Y);
        Assert.Equal([25.0], LineSeries.Of("T", [1.s], [25.degC]).Y.Select(y => Math.Round(y, 9)));
    }

    [Fact]
    public void A_gain_of_zero_has_no_decibels_and_is_refused_with_its_place() =>
        Assert.Contains("Series \"a\" holds minus infinity as y at index 1", Assert.Throws<ArgumentException>(() => LineSeries.Of("a", [1.Hz, 2.Hz], [Gain.FromRatio(1), Gain.FromRatio(0)])).Message);

    [Fact]
    public void A_sweep_in_equal_ratios_brings_a_logarithmic_axis_and_others_do_not()
    {
        Assert.Equal(AxisScale.Log, Figure.Over("t", "f", Sweep.Log(20.Hz, 20.kHz), "V", ("a", f => 1.V)).X.Scale);
        Assert.Equal(AxisScale.Linear, Figure.Over("t", "f", Sweep.Linear(20.Hz, 20.kHz), "V", ("a", f => 1.V)).X.Scale);
        Assert.Equal(AxisScale.Linear, Figure.Over("t", "P", (Power[])[1.W, 2.W], "V", ("a", p => 1.V)).X.Scale);
    }

    [Fact]
    public void A_band_is_wholly_in_sight_and_needs_an_edge_for_each_point()
    {
        var band = LineSeries.Band("spread", [1.s, 2.s], [1.V, -3.V], [2.V, 4.V]);
        var rulers = FigureRulers.Of(Figure.Line("t", Axis.Of<Duration>("t"), Axis.Of<ElectricPotential>("V"), band));
        Assert.True(rulers.Y.Min <= -3 && rulers.Y.Max >= 4);
        Assert.Contains("2 points and 1 values", Assert.Throws<ArgumentException>(() => band with { FilledTo = [0] }).Message);
    }

    [Fact]
    public void Areas_stand_on_each_other()
    {
        var figure = Figure.Stacked("t", new Axis("x"), new Axis("y", "V"), new LineSeries("a", [0, 1], [1, 2]), new LineSeries("b", [0, 1], [10, 20]));
        var top = (LineSeries)figure.Series[1];
        Assert.Equal([11.0, 22], top.Y);
        Assert.Equal([1.0, 2], top.FilledTo);
        Assert.Throws<ArgumentException>(() => Figure.Stacked("t", new Axis("x"), new Axis("y"), new LineSeries("a", [0], [-1])));
        Assert.Throws<ArgumentException>(() => Figure.Stacked("t", new Axis("x"), new Axis("y"), new LineSeries("a", [0], [1]), new LineSeries("b", [1], [1])));
        Assert.Throws<ArgumentException>(() => Figure.Stacked("t", new Axis("x"), Axis.Log("y"), new LineSeries("a", [0], [1])));
    }

    [Fact]
    public void A_histogram_counts_every_value_once()
    {
        var values = Enumerable.Range(0, 1000).Select(i => (double)(i * 37 % 1000)).ToArray();
        var outline = (LineSeries)Figure.Histogram("t", "v", values).Series[0];
        // Each step has two points; the outline's ends are at zero.
        Assert.Equal(100, outline.Y.Sum() / 2, 9);
        Assert.True(outline.X[0] <= values.Min() && outline.X[^1] > values.Max());
        Assert.Contains("two different values", Assert.Throws<ArgumentException>(() => Figure.Histogram("t", "v", [1.V, 1.V])).Message);
    }

    [Theory]
    [InlineData(1, 3)]
    [InlineData(5, 1)]
    public void With_equal_scales_a_unit_is_as_long_on_both_axes(double across, double up)
    {
        var figure = Figure.Line("t", new Axis("x") { Min = 0, Max = across }, new Axis("y") { Min = 0, Max = up }, new LineSeries("a", [0, across], [0, up])) with { HasEqualScales = true };
        var (wide, narrow) = Scene.Both(figure);
        foreach (var scene in (Scene[])[wide, narrow])
        {
            Assert.Equal(scene.Frame.Width / across, scene.Frame.Height / up, 6);
            Assert.True(scene.Frame.Right <= scene.Width && scene.Frame.Top >= 0);
        }
        Assert.Throws<ArgumentException>(() => Figure.Line("t", Axis.Log("x"), new Axis("y"), new LineSeries("a", [1], [1])) with { HasEqualScales = true });
        Assert.Throws<ArgumentException>(() => SampleFigures.Lines with { HasEqualScales = true });
    }

    [Fact]
    public void A_span_is_drawn_from_end_to_end_with_its_name()
    {
        var figure = SampleFigures.Points([1, 10], [1, 10]) with { Spans = [Span.Vertical(5, 2, 8, "margin 6 V")] };
        var scene = Scene.Both(figure).Wide;
        var (from, to) = Assert.Single(scene.Spans);
        Assert.Equal(scene.At(5, 2), from);
        Assert.Equal(scene.At(5, 8), to);
        Assert.Contains("margin 6 V", SvgWriter.Write(figure));
        Assert.Contains("margin 6 V", figure.AltText);
        Assert.Throws<ArgumentException>(() => SampleFigures.Bars with { Spans = [Span.Vertical(1, 1, 2, "s")] });
    }

    [Fact]
    public void A_name_far_from_its_point_has_a_line_to_it()
    {
        // Nine points in a knot: not all names find room beside theirs.
        double[] x = [.. Enumerable.Range(0, 9).Select(i => 5 + i % 3 * 0.05)], y = [.. Enumerable.Range(0, 9).Select(i => 5 + i / 3 * 0.05)];
        var figure = SampleFigures.Points([0, 10], [0, 10]) with { Marks = [.. x.Zip(y, (a, b) => new Mark(a, b, "a name of some length"))] };
        var scene = Scene.Both(figure).Wide;
        var far = scene.Labels.Where(l => l.HasLeader).ToArray();
        Assert.NotEmpty(far);
        Assert.Equal(far.Length, scene.Leaders.Count(l => l.Style is null));
    }

    [Fact]
    public void Two_limits_of_a_figure_differ_in_their_dash()
    {
        var svg = SvgWriter.Write(SampleFigures.Lines);
        Assert.Contains("stroke-dasharray=\"10 3\"", svg);
        Assert.Contains("stroke-dasharray=\"3 3\"", svg);
    }
}
