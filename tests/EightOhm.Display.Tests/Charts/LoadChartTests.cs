using EightOhm.Display.Figures;
using EightOhm.Loads;
using EightOhm.Quantities;

namespace EightOhm.Display.Tests.ReadyMade;

public class LoadChartTests
{
    private static readonly BoxedDriver Box = new(5.8.Ohm, 0.5.mH, 45.Hz, 3, 0.6);

    [Fact]
    public void A_driver_with_its_equivalent_resistors_beneath()
    {
        var figure = Charts.Load(Box, 40.V);
        Assert.Equal("5.844 Ω at least, but 2.901 Ω to a transistor", figure.Title);
        Assert.Equal("40 V peak asks for 6.845 A with a sine at worst, 14.09 A with the worst programme", figure.Subtitle);
        var lines = figure.Series.Cast<LineSeries>().ToArray();
        Assert.Equal(AxisScale.Log, figure.X.Scale);
        for (var i = 0; i < lines[0].Y.Count; i++)
            Assert.True(lines[2].Y[i] <= lines[1].Y[i] * (1 + 1e-12) && lines[1].Y[i] <= lines[0].Y[i] * (1 + 1e-12));
        Assert.Contains("2.901 Ω at 1.92 kHz", figure.Marks[1].Label, StringComparison.Ordinal);
        Assert.StartsWith("<svg", SvgWriter.Write(figure), StringComparison.Ordinal);
    }

    [Fact]
    public void A_resistor_and_a_phase_can_be_drawn_as_well()
    {
        var resistor = Charts.Load(new ResistiveLoad(8.Ohm), 40.V);
        Assert.Equal("8 Ω, to a transistor as well", resistor.Title);
        Assert.Empty(resistor.Marks);
        var phase = Charts.Load(new PhaseLoad(4.Ohm, 45.deg), 40.V, 20.Hz, 2.kHz);
        Assert.DoesNotContain("programme", phase.Subtitle, StringComparison.Ordinal);
        Assert.StartsWith("<svg", SvgWriter.Write(phase), StringComparison.Ordinal);
        Assert.Throws<RefusedValueException>(() => Charts.Load(Box, (-1).V));
    }
}
