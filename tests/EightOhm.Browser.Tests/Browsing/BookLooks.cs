using EightOhm.Browser.Tests.Hosting;
using Microsoft.Playwright;

namespace EightOhm.Browser.Tests.Browsing;

/// <summary>The pages of the book, each opened once and looked at by day and by night, on a desk and on a telephone, and on paper.</summary>
internal static class BookLooks
{
    private static readonly SideBySide<IReadOnlyList<string>> Looks = new();
    private static readonly SeenParts<Look> Looked = new();

    /// <summary>The pages.</summary>
    public static IReadOnlyList<string> Pages { get; } =
        [.. Clone.Chapters.Select(Page).Prepend("index.html").Append("symbols.html").Append("glossary.html")];

    // The first of each folder and the pages of the whole show every part that the pages share: the head, the contents, the turns.
    private static readonly HashSet<string> Patterns =
        [.. Pages.Except(Clone.Chapters.Select(Page)), .. Clone.Chapters.GroupBy(Clone.FolderOf).Select(folder => Page(folder.First()))];

    // A telephone by day and a desk by night show every rule of the style at least once: what is wide depends on the width alone, and ink on the hour.
    private static readonly Look[] Opposite = [new(ChromiumFixture.Wide, ColorScheme.Dark), new(ChromiumFixture.Narrow, ColorScheme.Light)];
    private static readonly Look[] Every = [Opposite[0], new(ChromiumFixture.Wide, ColorScheme.Light), Opposite[1], new(ChromiumFixture.Narrow, ColorScheme.Dark)];

    /// <summary>What is wrong with a page in any look, a sentence each.</summary>
    public static Task<IReadOnlyList<string>> Of(ChromiumFixture chromium, string file) =>
        Looks.Of(file, Pages, page => Faults(chromium, page));

    /// <summary>What is wrong with a page as it is open now.</summary>
    public static async Task<IReadOnlyList<string>> Faults(WatchedPage page)
    {
        var faults = new List<string>();
        var figures = page.Page.Locator("figure.eo-figure");
        var count = await figures.CountAsync();
        for (var i = 0; i < count; i++)
            await figures.Nth(i).Locator("svg.main-svg .trace").First.WaitForAsync(new() { State = WaitForSelectorState.Attached });
        await page.Page.EvaluateAsync("() => document.fonts.ready");
        if (await page.CountBareRoots() is > 0 and var roots)
            faults.Add($"{roots} roots without their sign");
        if (await page.Overflow() is > 0 and var overflow)
            faults.Add($"scrolls sideways by {overflow} px");
        faults.AddRange(page.Outside);
        faults.AddRange(page.Errors);
        return faults;
    }

    private static async Task<IReadOnlyList<string>> Faults(ChromiumFixture chromium, string file)
    {
        var looks = Patterns.Contains(file) ? Every : Opposite;
        var page = await BookWindows.Take(chromium, file, looks[0]);
        var faults = new List<string>();
        foreach (var look in looks)
        {
            if (look != looks[0])
                await page.Become(look.Width, new() { ColorScheme = look.Scheme });
            var seen = (await Faults(page)).Concat(await Ink(page, look.Scheme));
            // What a page says is judged once, how it looks where it shows what no page before it has shown in that look.
            if (look == looks[0])
                seen = seen.Concat(await Barriers(page));
            seen = seen.Concat(await Faint(page, await Looked.New(look, page)));
            faults.AddRange(seen.Select(fault => $"{look.Scheme}, {look.Width} px: {fault}"));
            if (Opposite.Contains(look))
                await page.Photograph($"book-{LiveRun.Picture(file)}-{look.Scheme}-{look.Width}");
        }

        if (Clone.Chapters.Select(Page).Contains(file))
            faults.AddRange((await OnPaper(page)).Select(fault => $"on paper: {fault}"));
        BookWindows.Leave(page);
        return faults;
    }

    private static string Page(string chapter) => Path.ChangeExtension(chapter, "html");

    // On paper what overflows its box is lost, and a control is no use.
    private static async Task<IEnumerable<string>> OnPaper(WatchedPage page)
    {
        await page.Become(700, new() { Media = Media.Print, ColorScheme = ColorScheme.Light });
        var cut = await page.Page.EvaluateAsync<string[]>(
            "() => [...document.querySelectorAll('pre')].filter(e => e.getBoundingClientRect().width > 0 && e.scrollWidth > e.clientWidth + 1).map(e => 'cut: ' + e.innerText.slice(0, 80))");
        var controls = await page.Page.Locator(".top:visible, .turns:visible, .contents:visible, summary:visible, .table-file:visible").CountAsync();
        return controls == 0 ? cut : cut.Append($"{controls} controls are printed");
    }

    private static async Task<IEnumerable<string>> Ink(WatchedPage page, ColorScheme scheme)
    {
        var ink = await page.Page.EvaluateAsync<int>("getComputedStyle(document.body).color.match(/\\d+/g).slice(0, 3).reduce((sum, c) => sum + +c, 0)");
        return scheme == ColorScheme.Dark == ink > 3 * 128 ? [] : [$"ink of {ink}"];
    }

    // What keeps somebody out, as axe judges it; of words too faint to read, or to be told for a link, see Faint.
    private static Task<IEnumerable<string>> Barriers(WatchedPage page) =>
        Judge.Faults(page.Page, rules: $"rules: {{ {string.Join(", ", OfInk.Select(rule => $"'{rule}': {{ enabled: false }}"))} }}");

    // Words of the new parts alone, and of each a few from all over the page: to find what stands under a word takes milliseconds.
    private static async Task<IEnumerable<string>> Faint(WatchedPage page, IReadOnlyList<string> parts) => parts.Count == 0 ? [] : await Judge.Faults(
        page.Page,
        $$"""
        (wanted => {
            const words = {};
            for (const e of document.body.querySelectorAll('*')) {
                const part = ({{SeenParts<int>.Part}})(e);
                if (wanted.has(part) && [...e.childNodes].some(n => n.nodeType === Node.TEXT_NODE && n.data.trim()))
                    (words[part] ??= []).push(e);
            }
            return Object.values(words).flatMap(all => all.filter((_, i) => i % Math.ceil(all.length / {{Few}}) === 0));
        })(new Set(parts))
        """,
        $"runOnly: [{string.Join(", ", OfInk.Select(rule => $"'{rule}'"))}]",
        parts);

    private const int Few = 4;

    private static readonly string[] OfInk = ["color-contrast", "link-in-text-block"];
}
