using EightOhm.Devices;
namespace EightOhm.Notebook.Tests;

/// <summary>Safe area, pairs and limiter as a cell shows them: nothing of the host's, and the verdict in words.</summary>
public sealed class SafeAreaCellTests(Cells cells) : IClassFixture<Cells>
{
    private static readonly string Card = Path.Combine(Chapters.Home(), "course", "cards", "output-npn.json");

    [Theory]
    [InlineData("card", "Course output npn (invented)")]
    [InlineData("area", "Safe area of Course output npn")]
    [InlineData("area.For(80.degC, 100.ms)", "0.56 of the power")]
    [InlineData("area.LimitAt(50.V, SafeArea.Dc, 80.degC)", "1.68 A")]
    [InlineData("load", "4 Ω at 45°, 37.95 V peak on 46 V, 3 pairs")]
    [InlineData("SafeAreaUtilisation.Of(area.For(80.degC, 100.ms), load)", "0.761 of the safe area, inside")]
    [InlineData("PairCount.Decide(area, load, 80.degC, 100.ms)", "3 pairs; what decides is safe area")]
    [InlineData("limiter", "R_3 22 kΩ")]
    [InlineData("limiter.Against(area.For(80.degC, 100.ms), new[] { load }, 25.degC, 85.degC)", "Does not pass: the limiter acts within the load line of 4 Ω at 45°")]
    [InlineData("limiter.Against(area.For(80.degC, 100.ms), new[] { load }, 25.degC, 85.degC).Area", "limiter margin")]
    public async Task A_value_is_shown_in_our_words(string code, string says)
    {
        await cells.Shown($"var card = Transistor.Load(@\"{Card}\"); var area = new SafeArea(card); var load = new LoadEllipse(46.V, 37.95.V, 4.Ohm, 45.deg, 0.22.Ohm, 3); var limiter = new VoltageCurrentLimiter(220.Ohm, 390.Ohm, 22.kOhm, 0.22.Ohm); 1.V");
        var shown = await cells.Shown(code);
        Assert.Contains(says, shown["text/plain"], StringComparison.Ordinal);
        Assert.DoesNotContain("dni-", shown["text/html"], StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_chart_and_a_working_are_shown()
    {
        await cells.Shown($"var area = new SafeArea(Transistor.Load(@\"{Card}\")); var V = 46.V; 1.V");
        var chart = await cells.Shown("Charts.SafeArea(area, 80.degC, 100.ms, new[] { new LoadEllipse(V, 37.95.V, 4.Ohm, 45.deg, 0.22.Ohm, 3) }, new VoltageCurrentLimiter(220.Ohm, 390.Ohm, 22.kOhm, 0.22.Ohm))");
        Assert.Contains("<img", chart["text/html"], StringComparison.Ordinal);
        var working = await cells.Shown("Explain(() => LimiterLocus.SingleSlope(0.65.V, 220.Ohm, 390.Ohm, 22.kOhm, 0.22.Ohm, V))");
        Assert.Contains("2.56 A", working["text/plain"], StringComparison.Ordinal);
    }
}
