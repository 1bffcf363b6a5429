using System.Text.RegularExpressions;
using EightOhm.Browser.Tests.Browsing;
using EightOhm.Browser.Tests.Hosting;

namespace EightOhm.Browser.Tests;

/// <summary>Every notebook as it stands in a fresh clone, looked at without running: a host does not trust it and sanitises what it shows.</summary>
[Collection(SharedHosts.Name)]
public sealed partial class UntrustedTests(JupyterFixture jupyter, ChromiumFixture chromium)
{
    public static TheoryData<string> Notebooks => NotebookNames.All;

    [SkippableTheory]
    [MemberData(nameof(Notebooks))]
    public async Task JupyterLab_keeps_the_roots_brackets_and_pictures_of_an_untrusted_notebook(string notebook)
    {
        Needs.Chromium();

        var look = await LabOutputs.Of(chromium, NotebookNames.Read(notebook), trusted: false);

        AssertReadable(look.Outputs);
        Expect.Nothing(look.Complaints);
    }

    [SkippableTheory]
    [MemberData(nameof(Notebooks))]
    public async Task JupyterLab_sets_the_formulas_and_shows_the_figures_of_a_trusted_notebook_that_was_not_run(string notebook)
    {
        Needs.Chromium();

        var look = await LabOutputs.Of(chromium, NotebookNames.Read(notebook), trusted: true);

        Assert.NotEmpty(look.Outputs);
        Assert.All(look.Outputs, output =>
        {
            Assert.Equal(Formula().Count(output.Html), output.Formulas);
            Assert.Equal(Figure().Count(output.Html), output.Figures.Count);
            Assert.All(output.Figures, figure => Assert.True(figure.Pictures == 1 || figure.Traces > 0, $"Code cell {output.Cell}: “{figure.Caption}” shows nothing."));
        });
        Assert.Equal(0, look.BareRoots);
        Expect.Nothing(look.Complaints);
    }

    public static TheoryData<string> OneOfEach => NotebookNames.OneOfEach;

    // The classic page trusts by its own rules and sanitises by its own sanitiser.
    [SkippableTheory]
    [MemberData(nameof(OneOfEach))]
    public async Task The_classic_page_does_not_trust_a_notebook_of_a_fresh_clone_and_keeps_its_roots_brackets_and_pictures(string notebook)
    {
        Needs.Jupyter();
        Needs.Chromium();
        var noise = await HostNoise.Of(chromium, jupyter);

        var look = await UntrustedLook.Of(chromium, jupyter, notebook);

        Assert.False(look.IsTrusted);
        AssertReadable(look.Outputs);
        Expect.Nothing(look.Complaints.Except(noise));
    }

    private static void AssertReadable(IReadOnlyList<ShownOutput> outputs)
    {
        Assert.NotEmpty(outputs);
        foreach (var output in outputs)
        {
            if (output.Html.Contains("<math", StringComparison.Ordinal))
                AssertReadable(output);
            // A host drops the tags of an inline picture and leaves the words that stood on it.
            Assert.DoesNotContain("<svg", output.Html, StringComparison.Ordinal);
            Assert.Equal(Figure().Count(output.Html), output.Figures.Count);
            Assert.All(output.Figures, figure =>
            {
                Assert.True(figure.Pictures == 1, $"Code cell {output.Cell}: “{figure.Caption}” shows {figure.Pictures} pictures.");
                Assert.Equal(figure.Caption.Trim(), figure.Words.Trim());
            });
            Assert.All(Script().Matches(output.Html), script =>
                Assert.DoesNotContain(PrintedText.Unspaced(script.Groups["code"].Value)[..20], PrintedText.Unspaced(output.Shown), StringComparison.Ordinal));
        }
    }

    // The same words as the plain text: no root sign lost, no bracket, no subscript run into its letter.
    private static void AssertReadable(ShownOutput output)
    {
        var shown = PrintedText.Unspaced(output.Shown);
        Assert.Equal(PrintedText.Unspaced(output.Text), shown);
        // A source line may hold a root of its own, in plain words; a root in a unit (nV/√Hz) is a letter of the unit.
        var inWords = SignOfRoot().Count(Mathematics().Replace(output.Html, ""));
        Assert.Equal(Root().Count(output.Html) + inWords, SignOfRoot().Count(shown));
        Assert.Equal(shown.Count(letter => letter == '('), shown.Count(letter => letter == ')'));
    }

    [GeneratedRegex(@"<math[\s>]")]
    private static partial Regex Formula();

    [GeneratedRegex(@"<msqrt[\s>]")]
    private static partial Regex Root();

    [GeneratedRegex("√(?!Hz)")]
    private static partial Regex SignOfRoot();

    [GeneratedRegex("<math.*?</math>", RegexOptions.Singleline)]
    private static partial Regex Mathematics();

    [GeneratedRegex("<figure class=\"eo-figure\"")]
    private static partial Regex Figure();

    [GeneratedRegex(@"<script[^>]*>(?<code>.{20,}?)</script>", RegexOptions.Singleline)]
    private static partial Regex Script();
}
