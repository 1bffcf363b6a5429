using EightOhm.Browser.Tests.Browsing;
using EightOhm.Browser.Tests.Hosting;
using Microsoft.Playwright;

namespace EightOhm.Browser.Tests;

/// <summary>The watch on a page itself: a watch that sees nothing would let every page pass.</summary>
[Collection(SharedHosts.Name)]
public sealed class ChromiumTests(ChromiumFixture chromium) : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("eightohm-page-");

    public void Dispose() => folder.Delete(recursive: true);

    [SkippableTheory]
    [InlineData(ColorScheme.Light, ChromiumFixture.Wide)]
    [InlineData(ColorScheme.Dark, ChromiumFixture.Narrow)]
    public async Task A_page_is_opened_from_a_file_in_the_scheme_and_width_asked_for(ColorScheme scheme, int width)
    {
        Needs.Chromium();
        await using var page = await chromium.Open(Write("<p>one</p>"), scheme, width);
        Assert.Equal(scheme == ColorScheme.Dark, await page.Page.EvaluateAsync<bool>("matchMedia('(prefers-color-scheme: dark)').matches"));
        Assert.Equal(width, await page.Page.EvaluateAsync<int>("innerWidth"));
        Assert.Empty(page.Errors);
        Assert.Empty(page.Outside);
        Assert.Equal(0, await page.Overflow());
    }

    [SkippableFact]
    public async Task A_request_to_another_place_is_refused_and_noted()
    {
        Needs.Chromium();
        Write("<p>one</p>");
        using var server = new FolderServer(folder.FullName);
        await using var page = await chromium.Open(server.Address);
        Assert.Empty(page.Errors);
        await page.Page.SetContentAsync("<img src='http://elsewhere.invalid/x.png'><script>new WebSocket('ws://elsewhere.invalid/y')</script>");
        await page.Page.WaitForTimeoutAsync(300);
        Assert.Equal(["GET http://elsewhere.invalid/x.png", "WEBSOCKET ws://elsewhere.invalid/y"], page.Outside.Order(StringComparer.Ordinal));
    }

    [SkippableFact]
    public async Task Console_errors_exceptions_and_missing_files_are_noted()
    {
        Needs.Chromium();
        Write("<script>console.error('said'); setTimeout(() => { throw new Error('thrown') })</script><img src='missing.png'>");
        using var server = new FolderServer(folder.FullName);
        await using var page = await chromium.Open(server.Address);
        await page.Page.WaitForTimeoutAsync(300);
        Assert.Contains(page.Errors, error => error.StartsWith("said", StringComparison.Ordinal));
        Assert.Contains(page.Errors, error => error.Contains("thrown", StringComparison.Ordinal));
        Assert.Contains(page.Errors, error => error.StartsWith("HTTP 404", StringComparison.Ordinal));
    }

    [SkippableTheory]
    [InlineData("with-root.ttf", 0)]
    [InlineData("without-root.ttf", 1)]
    public async Task A_root_whose_sign_the_font_lacks_is_counted(string font, int bare)
    {
        Needs.Chromium();
        File.Copy(Path.Combine(Clone.Fixtures, font), Path.Combine(folder.FullName, font));
        Write($"<style>@font-face {{ font-family: own; src: url({font}) }} math {{ font-family: own }}</style><math><msqrt><mi>P</mi></msqrt></math>");
        using var server = new FolderServer(folder.FullName);
        await using var page = await chromium.Open(server.Address);
        await page.Page.EvaluateAsync("document.fonts.ready");
        Assert.Equal(bare, await page.CountBareRoots());
    }

    private Uri Write(string body)
    {
        var file = Path.Combine(folder.FullName, "index.html");
        File.WriteAllText(file, $"<!doctype html><meta charset=\"utf-8\"><meta name=\"viewport\" content=\"width=device-width\"><title>page</title>{body}");
        return new Uri(file);
    }
}
