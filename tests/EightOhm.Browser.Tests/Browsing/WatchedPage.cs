using System.Collections.Concurrent;
using EightOhm.Browser.Tests.Hosting;
using Microsoft.Playwright;

namespace EightOhm.Browser.Tests.Browsing;

/// <summary>A page whose every request outside its own place is refused and noted, and whose every error is noted.</summary>
internal sealed class WatchedPage : IAsyncDisposable
{
    private readonly IBrowserContext context;
    private readonly ConcurrentQueue<string> outside = new(), errors = new();

    private WatchedPage(IBrowserContext context, IPage page) => (this.context, Page) = (context, page);

    public IPage Page { get; }

    /// <summary>The requests that went elsewhere: method and address.</summary>
    public IReadOnlyCollection<string> Outside => outside;

    /// <summary>Console errors, uncaught exceptions and answers of 400 and over.</summary>
    public IReadOnlyCollection<string> Errors => errors;

    public static async Task<WatchedPage> In(IBrowserContext context, Uri home)
    {
        var watched = new WatchedPage(context, await context.NewPageAsync());
        await context.RouteAsync("**/*", route =>
        {
            if (Belongs(new Uri(route.Request.Url), home))
                return route.ContinueAsync();
            watched.outside.Enqueue($"{route.Request.Method} {route.Request.Url}");
            return route.AbortAsync();
        });
        await context.RouteWebSocketAsync(_ => true, socket =>
        {
            if (Belongs(new Uri(socket.Url), home))
                socket.ConnectToServer();
            else
            {
                watched.outside.Enqueue($"WEBSOCKET {socket.Url}");
                _ = socket.CloseAsync();
            }
        });
        watched.Page.Console += (_, message) =>
        {
            if (message.Type == "error")
                watched.errors.Enqueue($"{message.Text} [{message.Location}]");
        };
        watched.Page.PageError += (_, error) => watched.errors.Enqueue($"uncaught: {error}");
        watched.Page.Response += (_, answer) =>
        {
            if (answer.Status >= 400)
                watched.errors.Enqueue($"HTTP {answer.Status} {answer.Url}");
        };
        return watched;
    }

    /// <summary>Opens another page of the same place in this window; what was noted of the one before is forgotten.</summary>
    public async Task Turn(Uri address)
    {
        outside.Clear();
        errors.Clear();
        await Page.GotoAsync(address.AbsoluteUri);
    }

    /// <summary>Gives the window another width and the page other media, both at once: it is laid out once.</summary>
    public Task Become(int width, PageEmulateMediaOptions media) => Task.WhenAll(Page.EmulateMediaAsync(media), Page.SetViewportSizeAsync(width, 900));

    /// <summary>Keeps a picture of the whole page; not on a build machine, where nobody looks at it.</summary>
    public Task Photograph(string name) => Environment.GetEnvironmentVariable("CI") == "true"
        ? Task.CompletedTask
        : Page.ScreenshotAsync(new() { Path = Path.Combine(Clone.Screens, name + ".png"), FullPage = true });

    /// <summary>The roots whose sign is not drawn: their box is no wider than what stands under the sign.</summary>
    /// <remarks>Chromium draws no radical at all when the first font in use has no root sign; the formula then lies.</remarks>
    public Task<int> CountBareRoots() => Page.EvaluateAsync<int>(
        "[...document.querySelectorAll('msqrt')].filter(root => root.getBoundingClientRect().width > 0 && root.getBoundingClientRect().width - " +
        "[...root.children].reduce((sum, child) => sum + child.getBoundingClientRect().width, 0) < 3).length");

    /// <summary>How far the page reaches beyond the window on the right, in pixels.</summary>
    public Task<int> Overflow() => Page.EvaluateAsync<int>("document.documentElement.scrollWidth - document.documentElement.clientWidth");

    public ValueTask DisposeAsync() => context.DisposeAsync();

    private static bool Belongs(Uri asked, Uri home) => asked.Scheme switch
    {
        "data" or "blob" or "about" => true,
        "file" => home.IsFile,
        _ => !home.IsFile && asked.Host == home.Host && asked.Port == home.Port,
    };
}
