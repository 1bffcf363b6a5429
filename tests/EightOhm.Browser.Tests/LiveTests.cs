using System.Text.RegularExpressions;
using EightOhm.Browser.Tests.Browsing;
using EightOhm.Browser.Tests.Hosting;

namespace EightOhm.Browser.Tests;

/// <summary>What a running kernel gives on the page: of every notebook by JupyterLab's renderer, of one of each folder live in Jupyter's classic page, in a browser that reaches nothing but the notebook server.</summary>
[Collection(SharedHosts.Name)]
public sealed partial class LiveTests(JupyterFixture jupyter, ChromiumFixture chromium)
{
    public static TheoryData<string> Notebooks => NotebookNames.All;

    public static TheoryData<string> OneOfEach => NotebookNames.OneOfEach;

    [SkippableTheory]
    [MemberData(nameof(Notebooks))]
    public async Task JupyterLab_sets_the_formulas_and_draws_the_traces_that_the_kernel_gave(string notebook)
    {
        Needs.Jupyter();
        Needs.Chromium();

        var look = await LabOutputs.Of(chromium, await KernelRuns.Of(jupyter, notebook), trusted: true, draws: true);

        AssertDrawn(look.Outputs);
        Assert.Equal(0, look.BareRoots);
        Expect.Nothing(look.Complaints);
    }

    [SkippableTheory]
    [MemberData(nameof(OneOfEach))]
    public async Task A_notebook_runs_live_with_its_formulas_set_and_its_traces_drawn(string notebook)
    {
        Needs.Jupyter();
        Needs.Chromium();
        var noise = await HostNoise.Of(chromium, jupyter);

        var live = await LiveRun.Of(chromium, jupyter, notebook);

        Expect.Nothing(live.CellErrors);
        AssertDrawn(live.Outputs);
        Assert.Equal(0, live.BadFormulas);
        Expect.Nothing(live.Complaints.Except(noise));
    }

    [SkippableFact]
    public async Task A_script_whose_output_is_replaced_has_run_and_leaves_nothing()
    {
        Needs.Jupyter();
        Needs.Chromium();
        var live = await LiveRun.Of(chromium, jupyter, NotebookNames.Probe);
        Assert.True(live.ProbeRan);
        Assert.DoesNotContain("probeRan", string.Concat(live.Outputs.Select(output => output.Html)), StringComparison.Ordinal);
    }

    [SkippableFact]
    public async Task The_host_alone_complains_of_nothing_but_what_is_known_of_it()
    {
        Needs.Jupyter();
        Needs.Chromium();
        Assert.All(await HostNoise.Of(chromium, jupyter), complaint => Assert.Matches(HostNoise.Known(), complaint));
    }

    private static void AssertDrawn(IReadOnlyList<ShownOutput> outputs)
    {
        Assert.NotEmpty(outputs);
        foreach (var output in outputs)
        {
            Assert.DoesNotContain("): error CS", output.Shown, StringComparison.Ordinal);
            Assert.True(Formula().Count(output.Html) == output.Formulas, $"Code cell {output.Cell}: {Formula().Count(output.Html)} formulas, {output.Formulas} set.");
            Assert.All(output.Figures, figure => Assert.True(figure.Traces > 0, $"Code cell {output.Cell}: “{figure.Caption}” has no trace drawn."));
        }
    }

    [GeneratedRegex(@"<math[\s>]")]
    private static partial Regex Formula();
}
