using EightOhm.Devices;
using EightOhm.Display;
using EightOhm.Display.Figures;
using EightOhm.OutputStages;
using EightOhm.Protection;
using EightOhm.Quantities;
using EightOhm.SafeAreas;
using EightOhm.Tests.Docs;
using UnitsNet;

namespace EightOhm.Display.Tests.Figures;

public class SafeAreaChartTests
{
    private static readonly SafeArea Area = new(Transistor.Load(Path.Combine(WrittenTable.Root(), "notebooks", "course", "cards", "output-npn.json")));
    private static readonly LoadEllipse[] Loads = [.. new[] { 0, 45, 60 }.Select(phi => new LoadEllipse(46.V, 37.95.V, 4.Ohm, phi.deg, 0.22.Ohm, 3))];

    private static Figure Chart() => Charts.SafeArea(Area, 80.degC, 100.ms, Loads, new VoltageCurrentLimiter(220.Ohm, 390.Ohm, 22.kOhm, 0.22.Ohm));

    [Fact]
    public void It_shows_both_lines_the_loads_and_both_edges_of_the_locus()
    {
        string[] names = ["dc", "100 ms", "4 Ω at 0°", "4 Ω at 45°", "4 Ω at 60°", "limiter, 25 °C", "limiter, 85 °C"];
        Assert.Equal(names, Chart().Series.Select(s => s.Name));
        Assert.Equal("The transistor is invented.", Chart().Note);
    }

    [Fact]
    public void What_it_draws_is_what_the_library_says()
    {
        var lines = Chart().Series.Cast<LineSeries>().ToArray();
        foreach (var (v, i) in lines[1].X.Zip(lines[1].Y))
            Assert.Equal(Area.LimitAt(v.V, 100.ms, 80.degC).Amperes, i, 9);
        // The ellipse at 60° crosses neither, the one at 45° is inside the pulse line and outside the dc line.
        bool Outside(int load, Duration? pulse) => lines[load].X.Zip(lines[load].Y).Any(p => p.Second > Area.LimitAt(p.First.V, pulse, 80.degC).Amperes);
        Assert.False(Outside(3, 100.ms));
        Assert.True(Outside(3, SafeArea.Dc));
        Assert.False(Outside(2, SafeArea.Dc));
        var limiter = new VoltageCurrentLimiter(220.Ohm, 390.Ohm, 22.kOhm, 0.22.Ohm);
        foreach (var (v, i) in lines[6].X.Zip(lines[6].Y))
            Assert.Equal(limiter.CurrentAtTransistor(v.V, 85.degC).Amperes, i, 9);
    }

    [Fact]
    public void Both_pictures_can_be_written()
    {
        Assert.Contains("limiter, 85 °C", SvgWriter.Write(Chart()), StringComparison.Ordinal);
        Assert.Contains("application/json", FigureHtml.Render(Chart()), StringComparison.Ordinal);
        if (Environment.GetEnvironmentVariable("EIGHTOHM_KEEP_CHART") is { Length: > 0 } path)
            File.WriteAllText(path, SvgWriter.Write(Chart()));
    }

    [Fact]
    public void Without_loads_and_limiter_it_is_the_area_alone() =>
        Assert.Equal(["dc"], Charts.SafeArea(Area, 25.degC, SafeArea.Dc, []).Series.Select(s => s.Name));
}
