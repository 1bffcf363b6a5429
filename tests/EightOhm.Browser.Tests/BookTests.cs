using EightOhm.Browser.Tests.Browsing;
using EightOhm.Browser.Tests.Hosting;
using Microsoft.Playwright;

namespace EightOhm.Browser.Tests;

/// <summary>The book in a browser: light and dark, on a desk and on a telephone, on paper, from a server and from the disk.</summary>
[Collection(SharedHosts.Name)]
public sealed class BookTests(ChromiumFixture chromium)
{
    public static TheoryData<string> Pages => [.. BookLooks.Pages];

    [SkippableTheory]
    [MemberData(nameof(Pages))]
    public async Task A_page_is_sound_in_every_look_and_on_paper_open_to_all_and_asks_for_nothing_from_elsewhere(string file)
    {
        Needs.Chromium();
        Expect.Nothing(await BookLooks.Of(chromium, file));
    }

    [SkippableFact]
    public async Task The_book_opens_from_the_disk_without_a_server()
    {
        Needs.Chromium();
        var run = await BookOfChapters.OfThisBuild;
        foreach (var file in new[] { Clone.Chapters[0], Clone.Chapters[^1] }.Select(c => Path.ChangeExtension(c, "html")))
        {
            await using var page = await chromium.Open(new Uri(Path.Combine(run.Book, file)));
            Expect.Nothing(await BookLooks.Faults(page));
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
        // The button hears of each cell in turn.
        await page.Page.Locator("button.all-code", new() { HasTextString = "Show code" }).WaitForAsync();
    }
}
