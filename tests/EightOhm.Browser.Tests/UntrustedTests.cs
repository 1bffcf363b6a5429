using System.Text.RegularExpressions;
using EightOhm.Browser.Tests.Browsing;
using EightOhm.Browser.Tests.Hosting;

namespace EightOhm.Browser.Tests;

/// <summary>Every notebook opened from a fresh clone without running: Jupyter does not trust it and sanitises what it shows.</summary>
[Collection(SharedHosts.Name)]
public sealed partial class UntrustedTests(JupyterFixture jupyter, ChromiumFixture chromium)
{
    public static TheoryData<string> Notebooks => NotebookNames.All;

    [SkippableTheory]
    [MemberData(nameof(Notebooks))]
    public async Task An_untrusted_notebook_keeps_its_roots_brackets_and_pictures(string notebook)
    {
        Needs.Jupyter();
        Needs.Chromium();
        var noise = await HostNoise.Of(chromium, jupyter);

        var look = await UntrustedLook.Of(chromium, jupyter, notebook);

        Assert.False(look.IsTrusted);
        Assert.NotEmpty(look.Outputs);
        foreach (var output in look.Outputs)
        {
            if (output.Html.Contains("<math", StringComparison.Ordinal))
                AssertReadable(output);
            // Jupyter drops the tags of an inline picture and leaves the words that stood on it.
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
        Expect.Nothing(look.Complaints.Except(noise));
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
