using EightOhm.Browser.Tests.Browsing;
using EightOhm.Browser.Tests.Hosting;
using EightOhm.Display.Figures;
using EightOhm.Quantities;
using Microsoft.Playwright;

namespace EightOhm.Browser.Tests;

/// <summary>A figure where scripts run: looked into by the keyboard, brought back, its picture and values kept.</summary>
[Collection(SharedHosts.Name)]
public sealed class LookedIntoTests(ChromiumFixture chromium) : IDisposable
{
    private const string YTicks = "[...document.querySelectorAll('.ytick text')].map(t => t.textContent)";

    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("eightohm-figure-");

    public void Dispose() => folder.Delete(recursive: true);

    [SkippableFact]
    public async Task The_ticks_follow_what_is_in_sight_and_there_is_a_way_back()
    {
        Needs.Chromium();
        await using var page = await Shown();
        var first = await page.Page.EvaluateAsync<string[]>(YTicks);
        await page.Page.FocusAsync(".eo-plot");
        for (var i = 0; i < 8; i++) await page.Page.Keyboard.PressAsync("+");
        var near = await Settled(page, first);
        Assert.True(near.Length >= 3 && near.Distinct().Count() == near.Length, string.Join("; ", near));
        Assert.All(near, text => Assert.EndsWith(" V", text, StringComparison.Ordinal));
        await page.Page.Keyboard.PressAsync("ArrowUp");
        await page.Page.GetByText("Whole figure").ClickAsync();
        Assert.Equal(first, await Settled(page, near));
        Assert.Empty(page.Errors);
    }

    [SkippableFact]
    public async Task The_picture_and_the_values_are_kept_as_files()
    {
        Needs.Chromium();
        await using var page = await Shown();
        var values = await Kept(page, "Keep values");
        Assert.Equal("what-the-rated-power-asks-of-the-rails.csv", values.Name);
        var rows = values.Text.TrimStart('\uFEFF').TrimEnd().Split("\r\n");
        Assert.Equal("series,rated power (W),\"output voltage, peak (V)\"", rows[0]);
        Assert.Equal("into 8 Ω,1,4", rows[1]);
        Assert.Equal(1 + 2 * 50, rows.Length);
        var picture = await Kept(page, "Keep picture");
        Assert.StartsWith("<svg", picture.Text, StringComparison.Ordinal);
        Assert.Contains("100 W, 8 Ω", picture.Text, StringComparison.Ordinal);
    }

    private static async Task<string[]> Settled(WatchedPage page, string[] before)
    {
        await page.Page.WaitForFunctionAsync($"before => JSON.stringify({YTicks}) !== before", System.Text.Json.JsonSerializer.Serialize(before, Plain));
        await page.Page.WaitForTimeoutAsync(100);
        return await page.Page.EvaluateAsync<string[]>(YTicks);
    }

    private static readonly System.Text.Json.JsonSerializerOptions Plain = new() { Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private static async Task<(string Name, string Text)> Kept(WatchedPage page, string button)
    {
        var download = await page.Page.RunAndWaitForDownloadAsync(() => page.Page.GetByText(button).ClickAsync());
        return (download.SuggestedFilename, await File.ReadAllTextAsync((await download.PathAsync())!));
    }

    private async Task<WatchedPage> Shown()
    {
        double[] watts = [.. Sweep.Linear(1.0, 200, 50)];
        LineSeries Into(double ohms) => new($"into {ohms} Ω", watts, watts.Select(p => Math.Sqrt(2 * p * ohms)));
        var figure = Figure.Line("What the rated power asks of the rails", new Axis("rated power", "W"), new Axis("output voltage, peak", "V"), Into(8), Into(4)) with
        {
            Marks = [new(100, 40, "100 W, 8 Ω")],
        };
        var file = Path.Combine(folder.FullName, "index.html");
        await File.WriteAllTextAsync(file, $"<!doctype html><meta charset=\"utf-8\"><title>figure</title>{FigureHtml.Render(figure)}{PlotlyScript.LoadHtml()}");
        var page = await chromium.Open(new Uri(file));
        await page.Page.WaitForSelectorAsync(".eo-tools:not([hidden])");
        return page;
    }
}
