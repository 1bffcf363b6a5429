using System.Text.RegularExpressions;
using EightOhm.Browser.Tests.Hosting;
using Microsoft.Playwright;

namespace EightOhm.Browser.Tests.Browsing;

/// <summary>A notebook open in the browser, driven by the page's own <c>Jupyter.notebook</c>.</summary>
internal sealed partial class JupyterPage(WatchedPage watched) : IAsyncDisposable
{
    public IPage Page => watched.Page;

    /// <summary>What went wrong or went elsewhere, in a form that does not change from run to run.</summary>
    public IEnumerable<string> Complaints => watched.Errors.Concat(watched.Outside.Select(request => $"outside: {request}")).Select(Settled);

    /// <param name="chromium">The browser.</param>
    /// <param name="jupyter">The notebook server.</param>
    /// <param name="copy">Which copy of the notebooks.</param>
    /// <param name="notebook">The notebook.</param>
    /// <param name="runs">Whether it is to be run: one that is only looked at gets no kernel.</param>
    public static async Task<JupyterPage> Open(ChromiumFixture chromium, JupyterFixture jupyter, string copy, string notebook, bool runs = true)
    {
        var page = new JupyterPage(await chromium.Open(jupyter.PageOf(copy, notebook), before: runs ? null : NoKernel.For));
        await page.Page.WaitForFunctionAsync(runs
            ? "() => window.Jupyter?.notebook?._fully_loaded && Jupyter.notebook.kernel?.is_connected()"
            : "() => window.Jupyter?.notebook?._fully_loaded && Jupyter.notebook.session");
        // Jupyter scrolls its page inside a box; a picture of the whole needs the whole.
        await page.Page.AddStyleTagAsync(new() { Content = "#site { height: auto !important; overflow: visible !important } #header { position: static }" });
        return page;
    }

    /// <summary>Cell, Run all, in the kernel that the page was opened with; waits until each cell has run and the mathematics is set.</summary>
    public async Task RunAll()
    {
        await Page.EvaluateAsync("() => { Jupyter.notebook.clear_all_output(); Jupyter.notebook.execute_all_cells(); }");
        await Page.WaitForFunctionAsync(
            "() => document.querySelector('.output_error') || !Jupyter.notebook.kernel_busy && " +
            "Jupyter.notebook.get_cells().filter(cell => cell.cell_type === 'code').every(cell => Number.isInteger(cell.input_prompt_number))",
            null, new() { Timeout = 240_000 });
        await Settle();
    }

    /// <summary>Waits until MathJax has nothing left to set, then a moment for what follows it.</summary>
    public async Task Settle()
    {
        await Page.EvaluateAsync("() => new Promise(done => window.MathJax ? MathJax.Hub.Queue(() => done()) : done())");
        await Page.WaitForTimeoutAsync(1_500);
    }

    public Task<bool> IsTrusted() => Page.EvaluateAsync<bool>("() => Jupyter.notebook.trusted");

    /// <summary>The errors that cells show.</summary>
    public Task<string[]> CellErrors() => Page.EvaluateAsync<string[]>("() => [...document.querySelectorAll('.output_error, .output_stderr')].map(e => e.innerText)");

    public Task Photograph(string name) => watched.Photograph(name);

    public async ValueTask DisposeAsync()
    {
        // Closing the page alone would leave its kernel running.
        await Page.EvaluateAsync("() => Jupyter.notebook.session.delete()");
        await Page.WaitForTimeoutAsync(300);
        await watched.DisposeAsync();
    }

    // Ports, addresses of this machine, cache stamps and the notebook's own name differ between pages.
    private static string Settled(string complaint) =>
        Beside().Replace(Name().Replace(Stamp().Replace(Discovery().Replace(complaint, "http://KERNEL/discovery"), ""), "/notebooks/NOTEBOOK"), "/notebooks/");

    [GeneratedRegex(@"http://[^/\s]+:(?:20[4-9]\d|2[1-9]\d\d|3000)/discovery")]
    private static partial Regex Discovery();

    [GeneratedRegex(@"\?v=\w+|:\d+:\d+(?=\])")]
    private static partial Regex Stamp();

    // The host's own script is sought beside the notebook, in whatever folder that is.
    [GeneratedRegex(@"/notebooks/\w+/(?:[^/\s\]]+/)?(?=undefinedresources/)")]
    private static partial Regex Beside();

    [GeneratedRegex(@"/notebooks/\w+/(?:[^/\s\]]+/)?[^/\s\]]+\.ipynb")]
    private static partial Regex Name();
}
