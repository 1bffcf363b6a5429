using EightOhm.Browser.Tests.Hosting;

namespace EightOhm.Browser.Tests.Browsing;

/// <summary>Each notebook run live in Jupyter, once for all tests that ask: a run costs more than all that is asserted of it.</summary>
internal static class LiveRuns
{
    // A kernel and a page keep about one processor busy.
    private const int AtOnce = 2;

    private static readonly Lock Gate = new();
    private static readonly SemaphoreSlim Places = new(AtOnce);
    private static Dictionary<string, Task<LiveRun>>? runs;

    /// <summary>The run of a notebook; the first that asks starts those of all, two at a time.</summary>
    public static Task<LiveRun> Of(ChromiumFixture chromium, JupyterFixture jupyter, string notebook)
    {
        lock (Gate)
            runs ??= Start(name => LiveRun.Of(chromium, jupyter, name));
        return runs[notebook];
    }

    // Notebooks of one record write into it: they go one after the other, in their order, and first, since that takes longest.
    private static Dictionary<string, Task<LiveRun>> Start(Func<string, Task<LiveRun>> run)
    {
        var started = new Dictionary<string, Task<LiveRun>>(StringComparer.Ordinal);
        var designs = Clone.Records.Select(Clone.FolderOf).ToHashSet(StringComparer.Ordinal);
        foreach (var folder in Clone.Chapters.Append(NotebookNames.Probe).GroupBy(Clone.FolderOf).OrderBy(f => !designs.Contains(f.Key)))
        {
            Task before = Task.CompletedTask;
            foreach (var notebook in folder)
            {
                var mine = After(before, () => run(notebook));
                started[notebook] = mine;
                if (designs.Contains(folder.Key))
                    before = mine;
            }
        }

        return started;
    }

    private static async Task<LiveRun> After(Task before, Func<Task<LiveRun>> run)
    {
        // One that failed is that test's matter; the next has its record all the same.
        await before.ContinueWith(_ => { }, TaskScheduler.Default);
        await Places.WaitAsync();
        try
        {
            return await run();
        }
        finally
        {
            Places.Release();
        }
    }
}
