using EightOhm.Display.Figures;

namespace EightOhm.Display.Tests.Figures;

public class FigureTests
{
    [Theory]
    [InlineData(double.NaN, "not a number")]
    [InlineData(double.PositiveInfinity, "plus infinity")]
    public void A_value_that_is_not_finite_is_refused_with_series_and_index(double bad, string word)
    {
        var error = Assert.Throws<ArgumentException>(() => new LineSeries("into 8 Ω", [1, 2, 3], [1, 2, bad]));
        Assert.Contains($"Series \"into 8 Ω\" holds {word} as y at index 2", error.Message);
        Assert.Throws<ArgumentException>(() => new BarSeries("heat", ["a"], [bad]));
        Assert.Throws<ArgumentException>(() => new Mark(bad, 1, "m"));
        Assert.Throws<ArgumentException>(() => new Mark(1, 1, "m") with { Y = bad });
        Assert.Throws<ArgumentException>(() => Limit.Horizontal(bad, "rail"));
        Assert.Throws<ArgumentException>(() => new Axis("x") { Min = bad });
    }

    [Fact]
    public void A_value_that_a_logarithmic_axis_cannot_show_is_refused_with_series_and_index()
    {
        var error = Assert.Throws<ArgumentException>(() => SvgWriter.Write(SampleFigures.Points([1, 0, 3], [1, 2, 3], AxisScale.Log)));
        Assert.Contains("series \"points\" has 0 Hz as x at index 1", error.Message);
    }

    [Fact]
    public void Lists_of_different_length_are_refused() =>
        Assert.Contains("had 2 and 1", Assert.Throws<ArgumentException>(() => new LineSeries("a", [1, 2], [1])).Message);

    [Fact]
    public void Bars_with_different_labels_are_refused() =>
        Assert.Throws<ArgumentException>(() => Figure.Bars("t", new Axis("x"), new Axis("y"), new BarSeries("a", ["1"], [1]), new BarSeries("b", ["2"], [1])));

    [Fact]
    public void Bars_take_no_marks_and_no_vertical_limits()
    {
        Assert.Throws<ArgumentException>(() => SampleFigures.Bars with { Marks = [new(1, 1, "m")] });
        Assert.Throws<ArgumentException>(() => SampleFigures.Bars with { Limits = [Limit.Vertical(1, "l")] });
    }

    [Fact]
    public void A_series_does_not_change_with_the_array_it_came_from()
    {
        double[] x = [1, 2];
        var series = new LineSeries("a", x, x);
        x[0] = double.NaN;
        Assert.Equal([1, 2], series.X);
    }

    [Fact]
    public void The_figure_is_told_in_words()
    {
        Assert.Equal("Peak current at 28.3 V (rms). Bar chart of peak output current over load: 8 Ω 5.00 A, 4 Ω 10.0 A, 2 Ω 20.0 A; current limit.", SampleFigures.Bars.AltText);
        Assert.Equal("mine", (SampleFigures.Bars with { AltText = "mine" }).AltText);
    }
}
