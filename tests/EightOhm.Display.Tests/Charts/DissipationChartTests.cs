using EightOhm.Display.Figures;
using EightOhm.Display.Tables;
using EightOhm.OutputStages;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Display.Tests.ReadyMade;

public class DissipationChartTests
{
    private static readonly StageDissipation Stage = new(46.V, 3, 0.22.Ohm) { IdleCurrent = 103.8.mA };

    [Fact]
    public void Each_phase_is_a_line_from_idle_to_full_swing_with_its_maximum_marked()
    {
        var figure = Charts.Dissipation(Stage, 4.Ohm);
        Assert.Equal(["0°", "30°", "45°", "60°"], figure.Series.Select(s => s.Name));
        Assert.Equal(4, figure.Marks.Count);
        foreach (var (line, mark) in figure.Series.Cast<LineSeries>().Zip(figure.Marks))
        {
            Assert.Equal(0, line.X[0]);
            Assert.InRange(line.X[^1], 0.97, 1);
            Assert.InRange(mark.Y, line.Y.Max() * (1 - 1e-9), line.Y.Max() * 1.001);
        }

        Assert.Contains("at most", figure.Title, StringComparison.Ordinal);
        Assert.Contains("103.8 mA idle a pair", figure.Subtitle, StringComparison.Ordinal);
        Assert.Contains("<figure", FigureHtml.Render(figure), StringComparison.Ordinal);
    }

    [Fact]
    public void A_chart_without_a_phase_is_refused() =>
        Assert.Throws<ArgumentException>(() => Charts.Dissipation(Stage, 4.Ohm, (Angle[])[]));

    [Fact]
    public void Levels_are_a_table()
    {
        var table = DissipationTables.Levels(Stage.Over([0.V, 20.V], 8.Ohm, 0.deg)).ToString();
        Assert.Contains("one transistor", table, StringComparison.Ordinal);
        Assert.Contains("25 W", table, StringComparison.Ordinal); // 20 V peak into 8 Ω
    }
}
