using EightOhm.Browser.Tests.Browsing;
using EightOhm.Browser.Tests.Hosting;
using Microsoft.Playwright;

namespace EightOhm.Browser.Tests;

/// <summary>The book in a browser: light and dark, on a desk and on a telephone, from a server and from the disk.</summary>
[Collection(SharedHosts.Name)]
public sealed class BookTests(ChromiumFixture chromium, BookOfChapters run) : IClassFixture<BookOfChapters>
{
    public static TheoryData<string, ColorScheme, int> Looks()
    {
        var looks = new TheoryData<string, ColorScheme, int>();
        foreach (var page in Clone.Chapters.Select(c => Path.ChangeExtension(c, "html")).Prepend("index.html"))
            foreach (var scheme in new[] { ColorScheme.Light, ColorScheme.Dark })
                foreach (var width in new[] { ChromiumFixture.Wide, ChromiumFixture.Narrow })
                    looks.Add(page, scheme, width);
        return looks;
    }

    [SkippableTheory]
    [MemberData(nameof(Looks))]
    public async Task A_page_shows_its_roots_and_traces_and_asks_for_nothing_from_elsewhere(string file, ColorScheme scheme, int width)
    {
        Needs.Chromium();
        using var server = new FolderServer(run.Book);
        await using var page = await chromium.Open(new Uri(server.Address, file), scheme, width);
        await Look(page, file);
        await page.Photograph($"book-{Path.GetFileNameWithoutExtension(file)}-{scheme}-{width}");
        var ink = await page.Page.EvaluateAsync<int>("getComputedStyle(document.body).color.match(/\\d+/g).slice(0, 3).reduce((sum, c) => sum + +c, 0)");
        Assert.Equal(scheme == ColorScheme.Dark, ink > 3 * 128);
    }

    [SkippableFact]
    public async Task The_book_opens_from_the_disk_without_a_server()
    {
        Needs.Chromium();
        foreach (var chapter in Clone.Chapters)
        {
            var file = Path.ChangeExtension(chapter, "html");
            await using var page = await chromium.Open(new Uri(Path.Combine(run.Book, file)));
            await Look(page, file);
        }
    }

    private static async Task Look(WatchedPage page, string file)
    {
        var figures = page.Page.Locator("figure.eo-figure");
        var count = await figures.CountAsync();
        for (var i = 0; i < count; i++)
            await figures.Nth(i).Locator("svg.main-svg .trace").First.WaitForAsync(new() { State = WaitForSelectorState.Attached });
        await page.Page.EvaluateAsync("() => document.fonts.ready");
        Assert.Equal(0, await page.CountBareRoots());
        Assert.True(await page.Overflow() <= 0, $"{file} scrolls sideways by {await page.Overflow()} px.");
        Expect.Nothing(page.Outside);
        Expect.Nothing(page.Errors);
    }
}
