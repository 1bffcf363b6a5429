using System.Collections.Concurrent;
using EightOhm.Browser.Tests.Hosting;

namespace EightOhm.Browser.Tests.Browsing;

/// <summary>What a notebook gave when it was run live in Jupyter.</summary>
/// <param name="CellErrors">The errors that cells show.</param>
/// <param name="Outputs">The outputs as the page shows them.</param>
/// <param name="BadFormulas">Formulas that could not be set.</param>
/// <param name="Complaints">What went wrong or went elsewhere.</param>
/// <param name="ProbeRan">Whether the script of the probe ran.</param>
internal sealed record LiveRun(IReadOnlyList<string> CellErrors, IReadOnlyList<ShownOutput> Outputs, int BadFormulas, IReadOnlyList<string> Complaints, bool ProbeRan)
{
    private static readonly ConcurrentDictionary<string, Task<LiveRun>> Runs = new(StringComparer.Ordinal);

    /// <summary>Runs a notebook, once for all tests that ask.</summary>
    public static Task<LiveRun> Of(ChromiumFixture chromium, JupyterFixture jupyter, string notebook) => Runs.GetOrAdd(notebook, _ => Run(chromium, jupyter, notebook));

    /// <summary>The name of a notebook's picture.</summary>
    public static string Picture(string notebook) => Path.ChangeExtension(notebook, null).Replace('/', '-');

    private static async Task<LiveRun> Run(ChromiumFixture chromium, JupyterFixture jupyter, string notebook)
    {
        await using var page = await JupyterPage.Open(chromium, jupyter, JupyterFixture.Live, notebook);
        await page.RunAll();
        await page.Photograph($"live-{Picture(notebook)}");
        return new LiveRun(
            await page.CellErrors(),
            await ShownOutput.On(page),
            await page.Page.Locator(".merror, .MathJax_Error").CountAsync(),
            [.. page.Complaints],
            await page.Page.EvaluateAsync<bool>("() => window.probeRan === true"));
    }
}
