using EightOhm.Browser.Tests.Browsing;
using Microsoft.Playwright;

namespace EightOhm.Browser.Tests.Live;

/// <summary>The page of an opened folder, as a hand and an eye use it.</summary>
internal sealed class LivePage : IAsyncDisposable
{
    // Wide enough for the list of chapters to stand open.
    private const int Width = 1500;

    // Generous: other test projects share the processors.
    private const float Patience = 60_000;

    private readonly WatchedPage watched;

    private LivePage(WatchedPage watched) => this.watched = watched;

    public IPage Page => watched.Page;

    /// <summary>Errors and requests to elsewhere.</summary>
    public IEnumerable<string> Complaints => watched.Errors.Concat(watched.Outside);

    public ILocator NotMet => Page.Locator(".requirements.notMet > li");

    public ILocator Tried => Page.Locator(".tried li");

    public ILocator Troubles => Page.Locator(".notice.trouble");

    public ILocator Focused => Page.Locator(":focus");

    /// <summary>Opens a window by a ticket.</summary>
    public static async Task<LivePage> Open(ChromiumFixture chromium, Uri address)
    {
        var page = new LivePage(await chromium.Open(address, width: Width));
        page.Page.SetDefaultTimeout(Patience);
        await page.Page.Locator(".cell").First.WaitForAsync();
        return page;
    }

    /// <summary>One more window's address.</summary>
    public async Task<Uri> AnotherWindow()
    {
        await Press("Another window");
        var notice = Page.Locator(".notice", new() { HasText = "ticket=" });
        var found = new Uri((await notice.Locator(".tells").InnerTextAsync()).Trim());
        await notice.GetByRole(AriaRole.Button, new() { Name = "Put away" }).ClickAsync();
        return found;
    }

    /// <summary>Says that the notebooks are trusted, where it is asked.</summary>
    public async Task Trust()
    {
        var yes = Button("I trust them");
        await yes.ClickAsync();
        await yes.WaitForAsync(new() { State = WaitForSelectorState.Hidden });
    }

    public async Task GoTo(string chapter)
    {
        await Page.Locator($".list a[href='#{Uri.EscapeDataString(chapter)}']").ClickAsync();
        await Page.WaitForFunctionAsync(
            "chapter => document.querySelector('.list a[aria-current]')?.getAttribute('href') === '#' + encodeURIComponent(chapter) && !document.querySelector('#_chapter').hasAttribute('aria-busy') && document.querySelector('.cell')", chapter);
    }

    public ILocator Button(string words) => Page.GetByRole(AriaRole.Button, new() { Name = words, Exact = true });

    public Task Press(string words) => Button(words).First.ClickAsync();

    /// <summary>The row of an input, by what it says of itself; found by the search where the chapter does not use it.</summary>
    public async Task<ILocator> Row(string note)
    {
        var row = Page.Locator(".row", new() { HasText = note });
        if (!await row.First.IsVisibleAsync())
            await Page.Locator("input.find:visible").FillAsync(note);
        await row.First.WaitForAsync();
        return row.First;
    }

    public static ILocator Field(ILocator row) => row.Locator("input[type=text]");

    /// <summary>Types a value over that of an input.</summary>
    public async Task Type(string note, string value)
    {
        var field = Field(await Row(note));
        await field.ClickAsync();
        await field.FillAsync(value);
        await field.PressAsync("Enter");
    }

    /// <summary>Waits until nothing is calculated or about to be.</summary>
    public Task Calm() => Page.WaitForFunctionAsync(
        "() => document.body.dataset.line === 'open' && !document.body.classList.contains('asking') && document.querySelector('button.stop').disabled && !document.querySelector('[data-state=running], [data-state=waiting]')",
        null, new() { Timeout = 4 * Patience });

    /// <summary>Drops all that was changed and tried, where something was.</summary>
    public async Task AsSaved()
    {
        if (await Button("as saved").IsDisabledAsync() && await Tried.CountAsync() == 0)
            return;
        if (await Button("as saved").IsDisabledAsync())
            foreach (var _ in Enumerable.Range(0, await Tried.CountAsync()))
                await Tried.First.GetByRole(AriaRole.Button).ClickAsync();
        else
        {
            await Press("as saved");
            await Press("Drop it");
        }

        await Page.WaitForFunctionAsync("() => document.querySelector('#_saved').textContent.startsWith('all saved') && !document.querySelector('.tried li')");
        await Calm();
    }

    /// <summary>How many code cells are in each state.</summary>
    public async Task<IReadOnlyList<string>> States() =>
        await Page.EvaluateAsync<string[]>("() => [...document.querySelectorAll('.cell.code-kind')].map(cell => cell.dataset.state)");

    /// <summary>Adds code at the end of the chapter; the hand is in it.</summary>
    /// <returns>The new cell.</returns>
    public async Task<ILocator> AddCode(string code)
    {
        var before = await Page.Locator(".cell").CountAsync();
        await Page.Locator(".end").GetByRole(AriaRole.Button, new() { Name = "Add code" }).ClickAsync();
        await Page.Locator(".cell").Nth(before).WaitForAsync();
        var cell = Page.Locator($".cell[data-cell='{await Page.Locator(".cell").Nth(before).GetAttributeAsync("data-cell")}']");
        await cell.Locator(".cm-content").ClickAsync();
        await Page.Keyboard.InsertTextAsync(code);
        return cell;
    }

    /// <summary>What stands in the outputs of the chapter, numbers of figures and formulas too, a line each, and the data and pictures of its figures.</summary>
    public async Task<Outputs> Shown() => new(
        await Page.EvaluateAsync<string[]>($"() => ({Outputs.Texts})(document)"),
        // As the server sent them: once drawn, a figure holds what the chart's script has made of it.
        await Page.EvaluateAsync<string[]>($"() => ({Outputs.Figures})(new DOMParser().parseFromString([...document.querySelectorAll('.outputs')].map(box => box.putHtml ?? '').join(''), 'text/html'))"));

    /// <summary>The same of a page of the book.</summary>
    public async Task<Outputs> InBook(string file)
    {
        var html = await File.ReadAllTextAsync(file);
        return new(
            await Page.EvaluateAsync<string[]>($"html => ({Outputs.Texts})(new DOMParser().parseFromString(html, 'text/html'))", html),
            await Page.EvaluateAsync<string[]>($"html => ({Outputs.Figures})(new DOMParser().parseFromString(html, 'text/html'))", html));
    }

    /// <summary>What keeps somebody out, as axe judges it.</summary>
    public async Task<IEnumerable<string>> Barriers(string when) => (await Judge.Faults(Page)).Select(fault => $"{when}: {fault}");

    public ValueTask DisposeAsync() => watched.DisposeAsync();
}

/// <summary>What a chapter shows.</summary>
/// <param name="Lines">The words of each output.</param>
/// <param name="Charts">The data and the pictures of its figures.</param>
internal sealed record Outputs(IReadOnlyList<string> Lines, IReadOnlyList<string> Charts)
{
    // Of a figure the caption alone: what is drawn in it depends on the window.
    public const string Texts = """
        root => [...root.querySelectorAll('.output:not(.printed)')].map(output => {
          const copy = output.cloneNode(true);
          for (const figure of copy.querySelectorAll('figure.eo-figure')) figure.replaceChildren(...figure.querySelectorAll('figcaption'));
          return copy.textContent.replace(/\s+/g, ' ').trim();
        })
        """;

    public const string Figures = """
        root => [...root.querySelectorAll('figure')].map(figure => JSON.stringify([
          [...figure.querySelectorAll('script[type="application/json"]')].map(data => JSON.parse(data.textContent)),
          [...figure.querySelectorAll('img')].map(picture => [picture.getAttribute('src'), picture.alt]),
          [...figure.querySelectorAll('svg text')].map(text => text.textContent)]))
        """;
}
