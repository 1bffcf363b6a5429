using EightOhm.Display.Figures;
using EightOhm.Quantities;
using EightOhm.Thermal;
using UnitsNet;

namespace EightOhm.Display.Tests.Figures;

/// <summary>Junction, sink and idle current over minutes after a burst.</summary>
public class WarmUpChartTests
{
    private readonly BiasOverTime _run = Run();

    [Fact]
    public void The_title_says_what_the_junction_reaches_and_the_nodes_asked_for_are_drawn()
    {
        var figure = Charts.WarmUp(_run, AxisScale.Linear, "junction", "sink");
        Assert.Equal(["junction", "sink"], figure.Series.Select(s => s.Name));
        Assert.StartsWith("junction reaches", figure.Title, StringComparison.Ordinal);
        Assert.Equal(["junction", "sensor"], Charts.WarmUp(_run).Series.Select(s => s.Name));
        Assert.Equal(["junction", "sink", "sensor"], Charts.WarmUp(_run.Temperatures).Series.Select(s => s.Name));
        Assert.Contains("<svg", System.Text.Encoding.UTF8.GetString(Convert.FromBase64String(FigureHtml.Render(figure).Split("base64,")[1].Split('"')[0])), StringComparison.Ordinal);
    }

    [Fact]
    public void The_idle_current_is_drawn_against_what_it_was_set_to()
    {
        var figure = Charts.IdleCurrent(_run);
        Assert.Equal("set to 103.8 mA", Assert.Single(figure.Limits).Label);
        Assert.Equal(_run.IdleCurrent.Count, Assert.IsType<LineSeries>(figure.Series[0]).X.Count);
    }

    [Fact]
    public void On_logarithmic_time_the_instant_zero_is_left_out()
    {
        var line = Assert.IsType<LineSeries>(Charts.IdleCurrent(_run, AxisScale.Log).Series[0]);
        Assert.True(line.X[0] > 0);
        Assert.NotEmpty(FigureHtml.Render(Charts.WarmUp(_run, AxisScale.Log)));
    }

    [Fact]
    public void Ten_minutes_are_drawn_in_minutes_and_a_logarithmic_time_in_seconds()
    {
        Assert.Equal("min", Charts.IdleCurrent(_run).X.Unit);
        Assert.Equal("min", Charts.WarmUp(_run).X.Unit);
        Assert.Equal(10, Assert.IsType<LineSeries>(Charts.WarmUp(_run).Series[0]).X[^1], 1e-9);
        Assert.Equal("s", Charts.IdleCurrent(_run, AxisScale.Log).X.Unit);
        Assert.Equal(600, Assert.IsType<LineSeries>(Charts.IdleCurrent(_run, AxisScale.Log).Series[0]).X[^1], 1e-9);
        var minute = _run.Of.Follow(60.s, []);
        Assert.Equal("s", Charts.WarmUp(minute).X.Unit);
    }

    [Fact]
    public void A_node_that_is_not_there_is_refused() => Assert.Throws<ArgumentException>(() => Charts.WarmUp(_run, AxisScale.Linear, "sinc"));

    private static BiasOverTime Run()
    {
        var net = new ThermalNetwork(35.degC);
        HeatNode junction = net.Node("junction", 0.05.J_per_K), sink = net.Node("sink", 400.J_per_K), sensor = net.Node("sensor", 3.J_per_K);
        net.Link(junction, sink, 1.18.K_per_W);
        net.Link(sink, net.Ambient, 0.9.K_per_W);
        net.Link(sensor, sink, 2.K_per_W);
        return new BiasTracking(net, [junction], new BiasSensor(sensor, 2.1.mV_per_K), 46.V, 103.8.mA, 0.2725.Ohm, 2.1.mV_per_K)
            .Follow(600.s, [HeatProfile.Burst(junction, 30.W, 60.s, 180.s)]);
    }
}
