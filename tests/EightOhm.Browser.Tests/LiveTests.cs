using System.Text.RegularExpressions;
using EightOhm.Browser.Tests.Browsing;
using EightOhm.Browser.Tests.Hosting;

namespace EightOhm.Browser.Tests;

/// <summary>Every notebook run live in Jupyter, in a browser that reaches nothing but the notebook server.</summary>
[Collection(SharedHosts.Name)]
public sealed partial class LiveTests(JupyterFixture jupyter, ChromiumFixture chromium)
{
    public static TheoryData<string> Notebooks => NotebookNames.All;

    [SkippableTheory]
    [MemberData(nameof(Notebooks))]
    public async Task A_notebook_runs_live_with_its_formulas_set_and_its_traces_drawn(string notebook)
    {
        Needs.Jupyter();
        Needs.Chromium();
        var noise = await HostNoise.Of(chromium, jupyter);

        var live = await LiveRuns.Of(chromium, jupyter, notebook);

        Expect.Nothing(live.CellErrors);
        Assert.NotEmpty(live.Outputs);
        foreach (var output in live.Outputs)
        {
            Assert.DoesNotContain("): error CS", output.Shown, StringComparison.Ordinal);
            Assert.True(Formula().Count(output.Html) == output.Formulas, $"Code cell {output.Cell}: {Formula().Count(output.Html)} formulas, {output.Formulas} set.");
            Assert.All(output.Figures, figure => Assert.True(figure.Traces > 0, $"Code cell {output.Cell}: “{figure.Caption}” has no trace drawn."));
        }
        Assert.Equal(0, live.BadFormulas);
        Expect.Nothing(live.Complaints.Except(noise));
    }

    [SkippableFact]
    public async Task A_script_whose_output_is_replaced_has_run_and_leaves_nothing()
    {
        Needs.Jupyter();
        Needs.Chromium();
        await using var page = await JupyterPage.Open(chromium, jupyter, JupyterFixture.Live, NotebookNames.Probe);
        await page.RunAll();
        Assert.True(await page.Page.EvaluateAsync<bool>("() => window.probeRan === true"));
        Assert.DoesNotContain("probeRan", string.Concat((await ShownOutput.On(page)).Select(output => output.Html)), StringComparison.Ordinal);
    }

    [SkippableFact]
    public async Task The_host_alone_complains_of_nothing_but_what_is_known_of_it()
    {
        Needs.Jupyter();
        Needs.Chromium();
        Assert.All(await HostNoise.Of(chromium, jupyter), complaint => Assert.Matches(HostNoise.Known(), complaint));
    }

    [GeneratedRegex(@"<math[\s>]")]
    private static partial Regex Formula();
}
