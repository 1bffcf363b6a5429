using Deque.AxeCore.Commons;
using EightOhm.Browser.Tests.Browsing;
using EightOhm.Browser.Tests.Hosting;
using Microsoft.Playwright;

namespace EightOhm.Browser.Tests;

/// <summary>The book in a browser: light and dark, on a desk and on a telephone, on paper, from a server and from the disk.</summary>
[Collection(SharedHosts.Name)]
public sealed class BookTests(ChromiumFixture chromium)
{
    private static readonly string Axe = new BundledAxeScriptProvider().GetScript();

    public static TheoryData<string> Pages =>
        [.. Clone.Chapters.Select(c => Path.ChangeExtension(c, "html")).Prepend("index.html").Append("symbols.html").Append("glossary.html")];

    [SkippableTheory]
    [MemberData(nameof(Pages))]
    public async Task A_page_is_sound_in_every_look_and_asks_for_nothing_from_elsewhere(string file)
    {
        Needs.Chromium();
        var run = await BookOfChapters.OfThisBuild;
        using var server = new FolderServer(run.Book);
        await using var page = await chromium.Open(new Uri(server.Address, file));
        foreach (var width in new[] { ChromiumFixture.Wide, ChromiumFixture.Narrow })
        {
            await page.Page.SetViewportSizeAsync(width, 900);
            foreach (var scheme in new[] { ColorScheme.Light, ColorScheme.Dark })
            {
                await page.Page.EmulateMediaAsync(new() { ColorScheme = scheme });
                await Look(page, file);
                var ink = await page.Page.EvaluateAsync<int>("getComputedStyle(document.body).color.match(/\\d+/g).slice(0, 3).reduce((sum, c) => sum + +c, 0)");
                Assert.Equal(scheme == ColorScheme.Dark, ink > 3 * 128);
                // A telephone by day and a desk by night show every rule of the style at least once.
                if ((width == ChromiumFixture.Wide) == (scheme == ColorScheme.Dark))
                    await page.Photograph($"book-{LiveRun.Picture(file)}-{scheme}-{width}");
                if (width == ChromiumFixture.Wide)
                    Expect.Nothing(await Barriers(page, scheme));
            }
        }
    }

    [SkippableFact]
    public async Task The_book_opens_from_the_disk_without_a_server()
    {
        Needs.Chromium();
        var run = await BookOfChapters.OfThisBuild;
        foreach (var file in new[] { Clone.Chapters[0], Clone.Chapters[^1] }.Select(c => Path.ChangeExtension(c, "html")))
        {
            await using var page = await chromium.Open(new Uri(Path.Combine(run.Book, file)));
            await Look(page, file);
            await page.Page.GetByRole(AriaRole.Searchbox).FillAsync("resistance");
            var found = page.Page.Locator(".found a").First;
            await found.WaitForAsync();
            await found.ClickAsync();
            Assert.StartsWith("file:", page.Page.Url, StringComparison.Ordinal);
            Assert.False(page.Page.Url.EndsWith(file, StringComparison.Ordinal));
            Expect.Nothing(page.Errors);
        }
    }

    [SkippableFact]
    public async Task One_press_opens_all_code_of_a_page_and_one_closes_it()
    {
        Needs.Chromium();
        var run = await BookOfChapters.OfThisBuild;
        await using var page = await chromium.Open(new Uri(Path.Combine(run.Book, Path.ChangeExtension(Clone.Chapters[0], "html"))));
        var cells = await page.Page.Locator("details.code-cell").CountAsync();
        var button = page.Page.Locator("button.all-code");
        if (await page.Page.Locator("details.code-cell[open]").CountAsync() < cells)
            await button.ClickAsync();
        Assert.Equal(cells, await page.Page.Locator("details.code-cell[open]").CountAsync());
        await button.ClickAsync();
        Assert.Equal(0, await page.Page.Locator("details.code-cell[open]").CountAsync());
        Assert.Equal("Show code", await button.InnerTextAsync());
    }

    [SkippableFact]
    public async Task On_paper_nothing_is_cut_and_no_control_is_printed()
    {
        Needs.Chromium();
        var run = await BookOfChapters.OfThisBuild;
        foreach (var chapter in Clone.Chapters)
        {
            await using var page = await chromium.Open(new Uri(Path.Combine(run.Book, Path.ChangeExtension(chapter, "html"))), width: 700);
            await page.Page.EmulateMediaAsync(new() { Media = Media.Print });
            // On paper what overflows its box is lost.
            var cut = await page.Page.EvaluateAsync<string[]>(
                "() => [...document.querySelectorAll('pre')].filter(e => e.getBoundingClientRect().width > 0 && e.scrollWidth > e.clientWidth + 1).map(e => e.innerText.slice(0, 80))");
            Expect.Nothing(cut.Select(code => $"{chapter}: {code}"));
            Assert.Equal(0, await page.Page.Locator(".top:visible, .turns:visible, .contents:visible, summary:visible, .table-file:visible").CountAsync());
        }
    }

    private static async Task<IEnumerable<string>> Barriers(WatchedPage page, ColorScheme scheme)
    {
        // Through the debugger: the page itself forbids scripts that are not its own.
        await page.Page.EvaluateAsync(Axe);
        var found = await page.Page.EvaluateAsync<string[]>(
            "async () => (await axe.run(document, { resultTypes: ['violations'] })).violations.filter(v => v.impact === 'serious' || v.impact === 'critical')" +
            ".map(v => v.id + ': ' + v.help + ' at ' + v.nodes.slice(0, 3).map(n => n.target.join(' ')).join('; '))");
        return found.Select(barrier => $"{scheme}: {barrier}");
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
