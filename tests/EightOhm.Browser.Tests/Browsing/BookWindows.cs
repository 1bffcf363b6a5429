using System.Collections.Concurrent;
using EightOhm.Browser.Tests.Hosting;
using Microsoft.Playwright;

namespace EightOhm.Browser.Tests.Browsing;

/// <summary>Windows in which one page of the book is opened after another, as a reader turns them: a window costs as much as what is looked at in it.</summary>
internal static class BookWindows
{
    private static readonly ConcurrentBag<WatchedPage> Free = [];
    private static readonly Lazy<Task<FolderServer>> Server = new(async () => new FolderServer((await BookOfChapters.OfThisBuild).Book));

    /// <summary>A window with a page of the book open.</summary>
    public static async Task<WatchedPage> Take(ChromiumFixture chromium, string file, Look look)
    {
        var address = new Uri((await Server.Value).Address, file);
        if (!Free.TryTake(out var window))
            return await chromium.Open(address, look.Scheme, look.Width);
        // The page before need not be set anew for a look that nobody takes at it.
        await window.Page.GotoAsync("about:blank");
        await window.Become(look.Width, new() { Media = Media.Screen, ColorScheme = look.Scheme });
        await window.Turn(address);
        return window;
    }

    /// <summary>Gives a window back for the next page.</summary>
    public static void Leave(WatchedPage window) => Free.Add(window);
}

/// <summary>How wide a window is, in pixels, and whether it is day or night.</summary>
internal readonly record struct Look(int Width, ColorScheme Scheme);
