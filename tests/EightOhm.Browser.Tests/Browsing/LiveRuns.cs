using EightOhm.Browser.Tests.Hosting;

namespace EightOhm.Browser.Tests.Browsing;

/// <summary>Each notebook run live in Jupyter, once for all tests that ask: a run costs more than all that is asserted of it.</summary>
internal static class LiveRuns
{
    private static readonly SideBySide<LiveRun> Runs = new();

    /// <summary>The run of a notebook.</summary>
    public static Task<LiveRun> Of(ChromiumFixture chromium, JupyterFixture jupyter, string notebook) =>
        Runs.Of(notebook, Rows(), name => LiveRun.Of(chromium, jupyter, name));

    // Notebooks of one record write into it: they are a row, which goes first, since it takes longest.
    private static IEnumerable<IReadOnlyList<string>> Rows()
    {
        var designs = Clone.Records.Select(Clone.FolderOf).ToHashSet(StringComparer.Ordinal);
        return Clone.Chapters.Append(NotebookNames.Probe).GroupBy(Clone.FolderOf).OrderBy(f => !designs.Contains(f.Key))
            .SelectMany(folder => designs.Contains(folder.Key) ? [[.. folder]] : folder.Select(IReadOnlyList<string> (notebook) => [notebook]));
    }
}
