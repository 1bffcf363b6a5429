using EightOhm.Browser.Tests.Hosting;
using Microsoft.Playwright;

namespace EightOhm.Browser.Tests.Browsing;

/// <summary>One Chromium for all tests; each page has its own context, so that nothing is carried from one to the next.</summary>
/// <remarks>Playwright's driver comes in its package; the browser is the machine's, so nothing is downloaded.</remarks>
public sealed class ChromiumFixture : IAsyncLifetime
{
    /// <summary>The widths at which pages are looked at: a desk and a telephone.</summary>
    public const int Wide = 1280, Narrow = 390;

    /// <summary>A name of somebody else's that leads to this machine.</summary>
    public const string Rebound = "rebound.test";

    private IPlaywright? playwright;
    private IBrowser? browser;

    async Task IAsyncLifetime.InitializeAsync()
    {
        if (Needs.ChromiumPath is not { } path)
            return;
        playwright = await Playwright.CreateAsync();
        browser = await playwright.Chromium.LaunchAsync(new()
        {
            ExecutablePath = path,
            // Root in a container has no sandbox; small containers have a small /dev/shm. One name leads to this machine, as a hostile name server would have it.
            Args = ["--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage", $"--host-resolver-rules=MAP {Rebound} 127.0.0.1"],
            Timeout = 120_000,
        });
    }

    async Task IAsyncLifetime.DisposeAsync()
    {
        if (browser is not null)
            await browser.DisposeAsync();
        playwright?.Dispose();
    }

    /// <summary>A page that may ask for whatever it likes, as a page from elsewhere does.</summary>
    internal async Task<IPage> Stranger()
    {
        Needs.Chromium();
        var context = await browser!.NewContextAsync(new() { Locale = "en-GB" });
        context.SetDefaultTimeout(120_000);
        return await context.NewPageAsync();
    }

    /// <summary>Opens a page that may ask for nothing but what its own place serves.</summary>
    /// <param name="address">A file, or a page of a server on loopback.</param>
    /// <param name="scheme">Light or dark.</param>
    /// <param name="width">The window's width in pixels.</param>
    /// <param name="before">What is done to the page before it is opened.</param>
    internal async Task<WatchedPage> Open(Uri address, ColorScheme scheme = ColorScheme.Light, int width = Wide, Func<IPage, Task>? before = null)
    {
        Needs.Chromium();
        var context = await browser!.NewContextAsync(new()
        {
            ColorScheme = scheme,
            ViewportSize = new() { Width = width, Height = 900 },
            Locale = "en-GB",
            ServiceWorkers = ServiceWorkerPolicy.Block,
        });
        // Other test projects share the processors: slow is not wrong.
        context.SetDefaultTimeout(120_000);
        var page = await WatchedPage.In(context, address);
        if (before is not null)
            await before(page.Page);
        await page.Page.GotoAsync(address.AbsoluteUri);
        return page;
    }
}
