using System.Text.Json;

namespace EightOhm.Browser.Tests.Browsing;

/// <summary>An output as the open notebook holds it and as the page shows it.</summary>
/// <param name="Cell">Which code cell, from 1.</param>
/// <param name="Html">The output's HTML as stored, before any sanitising.</param>
/// <param name="Text">The plain text that stands beside it.</param>
/// <param name="Shown">The words on the screen.</param>
/// <param name="Formulas">Formulas that MathJax has set.</param>
/// <param name="Figures">The figures in it.</param>
internal sealed record ShownOutput(int Cell, string Html, string Text, string Shown, int Formulas, IReadOnlyList<ShownFigure> Figures)
{
    private const string Script = """
        () => JSON.stringify(Jupyter.notebook.get_cells().filter(cell => cell.cell_type === 'code').flatMap((cell, at) => {
            const areas = [...cell.output_area.element[0].querySelectorAll('.output_area')];
            const outputs = cell.output_area.outputs;
            if (areas.length !== outputs.length) throw new Error(`cell ${at + 1} shows ${areas.length} of its ${outputs.length} outputs: ${JSON.stringify(outputs).slice(0, 1500)}`);
            const text = (output, kind) => [output.data?.[kind] ?? ''].flat().join('');
            return outputs.map((output, i) => ({
                cell: at + 1,
                html: text(output, 'text/html'),
                text: text(output, 'text/plain') || output.text || '',
                shown: areas[i].querySelector('.output_subarea')?.innerText ?? '',
                formulas: areas[i].querySelectorAll('.MathJax, .MathJax_CHTML, .MathJax_SVG').length,
                figures: [...areas[i].querySelectorAll('figure.eo-figure')].map(figure => ({
                    words: figure.innerText,
                    caption: figure.querySelector('figcaption')?.innerText ?? '',
                    pictures: [...figure.querySelectorAll('img')].filter(img => img.complete && img.naturalWidth > 0 && img.getBoundingClientRect().width > 20).length,
                    traces: figure.querySelectorAll('svg.main-svg .trace').length,
                })),
            }));
        }))
        """;

    public static async Task<IReadOnlyList<ShownOutput>> On(JupyterPage page) =>
        JsonSerializer.Deserialize<ShownOutput[]>(await page.Page.EvaluateAsync<string>(Script), JsonSerializerOptions.Web)!;
}

/// <summary>A figure on the page.</summary>
/// <param name="Words">All its words.</param>
/// <param name="Caption">The words of its caption.</param>
/// <param name="Pictures">Static pictures shown in it.</param>
/// <param name="Traces">Traces drawn by Plotly in it.</param>
internal sealed record ShownFigure(string Words, string Caption, int Pictures, int Traces);
