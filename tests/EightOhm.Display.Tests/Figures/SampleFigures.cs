using EightOhm.Display.Figures;

namespace EightOhm.Display.Tests.Figures;

/// <summary>Figures to try things on: voltage against power, and peak current into three loads.</summary>
internal static class SampleFigures
{
    public static LineSeries Voltage(double ohms, int points = 200)
    {
        double[] watts = [.. Enumerable.Range(0, points).Select(i => Math.Pow(200, i / (points - 1.0)))];
        return new($"into {ohms} Ω", watts, watts.Select(p => Math.Sqrt(2 * p * ohms)));
    }

    public static Figure Lines => Figure.Line("What the rated power asks of the rails",
        Axis.Log("rated power", "W"), new Axis("output voltage, peak", "V"), Voltage(8), Voltage(4)) with
    {
        Subtitle = "Tern 100 (invented), sine wave",
        Note = "Resistive load.",
        Marks = [new(100, 40, "100 W, 8 Ω → 40.0 V"), new(180, 37.95, "180 W, 4 Ω")],
        Limits = [Limit.Horizontal(45, "rail, 45 V"), Limit.Vertical(100, "rated power")],
    };

    public static Figure Bars => Figure.Bars("Peak current at 28.3 V (rms)", new Axis("load"), new Axis("peak output current", "A"),
        new BarSeries("", ["8 Ω", "4 Ω", "2 Ω"], [5.0, 10.0, 20.0])) with
    { Limits = [Limit.Horizontal(15, "current limit")] };

    public static Figure Groups => Figure.Bars("Dissipation per channel", new Axis("rated load"), new Axis("heat", "W"),
        new BarSeries("sine", ["8 Ω", "4 Ω, not rated"], [52.1, 104]), new BarSeries("idle", ["8 Ω", "4 Ω, not rated"], [9.3, 9.3]));

    public static Figure Ellipse
    {
        get
        {
            double[] turn = [.. Enumerable.Range(0, 91).Select(i => i * Math.PI / 45)];
            return Figure.Line("Load line", new Axis("collector voltage", "V"), new Axis("collector current", "A"),
                new LineSeries("inductive", turn.Select(t => 45 - 40 * Math.Sin(t)), turn.Select(t => 5 * Math.Sin(t - 0.8))));
        }
    }

    public static Figure Points(double[] x, double[] y, AxisScale scale = AxisScale.Linear) =>
        Figure.Line("Points", new Axis("x", "Hz", scale), new Axis("y", "V", scale), new LineSeries("points", x, y));

    public static TheoryData<string> Names => ["lines", "bars", "groups", "ellipse"];

    public static Figure ByName(string name) => name switch { "lines" => Lines, "bars" => Bars, "groups" => Groups, _ => Ellipse };
}
