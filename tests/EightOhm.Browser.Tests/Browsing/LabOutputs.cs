using System.Text.Json;
using EightOhm.Browser.Tests.Hosting;
using EightOhm.Display.Figures;

namespace EightOhm.Browser.Tests.Browsing;

/// <summary>The outputs of a notebook as JupyterLab shows them, by its own renderer in a page with nothing else (Fixtures/lab): no server and no kernel.</summary>
/// <param name="Outputs">The outputs as the page shows them.</param>
/// <param name="BareRoots">Roots whose sign is not drawn.</param>
/// <param name="Complaints">What went wrong or went elsewhere.</param>
internal sealed record LabOutputs(IReadOnlyList<ShownOutput> Outputs, int BareRoots, IReadOnlyList<string> Complaints)
{
    private const string Script = """
        async ([cells, trusted, draws]) => {
            document.body.replaceChildren();
            const outputs = [];
            for (const { cell, data } of cells) {
                const host = document.body.appendChild(document.createElement('div'));
                await renderOutput(host, data, trusted);
                outputs.push({ cell, data, host });
            }
            await Promise.all([...document.images].map(picture => picture.decode().catch(() => {})));
            const undrawn = () => [...document.querySelectorAll('figure.eo-figure')].some(figure => !figure.querySelector('svg.main-svg .trace'));
            for (let i = 0; draws && undrawn() && i < 600; i++)
                await new Promise(go => setTimeout(go, 100));
            return JSON.stringify(outputs.map(({ cell, data, host }) => ({
                cell,
                html: data['text/html'] ?? '',
                text: data['text/plain'] ?? '',
                shown: host.innerText,
                formulas: [...host.querySelectorAll('math')].filter(math => math.closest('details:not([open])') || math.getBoundingClientRect().width > 0).length,
                figures: [...host.querySelectorAll('figure.eo-figure')].map(figure => ({
                    words: figure.innerText,
                    caption: figure.querySelector('figcaption')?.innerText ?? '',
                    pictures: [...figure.querySelectorAll('img')].filter(img => img.complete && img.naturalWidth > 0 && img.getBoundingClientRect().width > 20).length,
                    traces: figure.querySelectorAll('svg.main-svg .trace').length,
                })),
            })));
        }
        """;

    // One page for each, since its scripts cost more than an output.
    private static WatchedPage? plain, drawing;

    /// <summary>Renders the outputs that a notebook holds.</summary>
    /// <param name="chromium">The browser.</param>
    /// <param name="notebook">The notebook.</param>
    /// <param name="trusted">Whether as a notebook that its reader has run himself, or as one of a fresh clone.</param>
    /// <param name="draws">Whether the page has the script that draws figures, which a running kernel brings into it.</param>
    public static async Task<LabOutputs> Of(ChromiumFixture chromium, NotebookFile notebook, bool trusted, bool draws = false)
    {
        var page = draws ? drawing ??= await Open(chromium, PlotlyScript.Text) : plain ??= await Open(chromium, null);
        var before = page.Errors.Count + page.Outside.Count;
        var cells = notebook.Cells
            .SelectMany((cell, at) => cell.Outputs.Select(output => new { cell = at + 1, data = Standard(output) }))
            .Where(output => output.data.Count > 0);
        var shown = await page.Page.EvaluateAsync<string>(Script, new object[] { cells.ToArray(), trusted, draws });
        return new LabOutputs(
            JsonSerializer.Deserialize<ShownOutput[]>(shown, JsonSerializerOptions.Web)!,
            await page.CountBareRoots(),
            page.Errors.Count + page.Outside.Count == before ? [] : [.. page.Errors, .. page.Outside.Select(request => $"outside: {request}")]);
    }

    private static async Task<WatchedPage> Open(ChromiumFixture chromium, string? script)
    {
        var page = await chromium.Open(new Uri(Path.Combine(Clone.Fixtures, "lab", "index.html")));
        if (script is not null)
            await page.Page.AddScriptTagAsync(new() { Content = script });
        return page;
    }

    // A stream stands in the file under a kind of its own, which JupyterLab turns into this one.
    private static Dictionary<string, string> Standard(CellOutput output) =>
        output.Data.ToDictionary(entry => entry.Key == "stream" ? "application/vnd.jupyter.stdout" : entry.Key, entry => entry.Value);
}
