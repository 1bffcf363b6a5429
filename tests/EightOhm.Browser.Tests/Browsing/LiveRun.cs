using EightOhm.Browser.Tests.Hosting;

namespace EightOhm.Browser.Tests.Browsing;

/// <summary>What a notebook gave when it was run live in Jupyter.</summary>
/// <param name="CellErrors">The errors that cells show.</param>
/// <param name="Outputs">The outputs as the page shows them.</param>
/// <param name="BadFormulas">Formulas that could not be set.</param>
/// <param name="Complaints">What went wrong or went elsewhere.</param>
/// <param name="Content">The notebook with its outputs, as it would be saved.</param>
internal sealed record LiveRun(IReadOnlyList<string> CellErrors, IReadOnlyList<ShownOutput> Outputs, int BadFormulas, IReadOnlyList<string> Complaints, NotebookFile Content)
{
    public static async Task<LiveRun> Of(ChromiumFixture chromium, JupyterFixture jupyter, string notebook)
    {
        await using var page = await JupyterPage.Open(chromium, jupyter, JupyterFixture.Live, notebook);
        await page.RunAll();
        await page.Photograph($"live-{Picture(notebook)}");
        return new LiveRun(
            await page.CellErrors(),
            await ShownOutput.On(page),
            await page.Page.Locator(".merror, .MathJax_Error").CountAsync(),
            [.. page.Complaints],
            await page.Content(notebook));
    }

    /// <summary>The name of a notebook's picture.</summary>
    public static string Picture(string notebook) => Path.ChangeExtension(notebook, null).Replace('/', '-');
}
