using System.Text.RegularExpressions;
using EightOhm.Browser.Tests.Hosting;

namespace EightOhm.Browser.Tests.Browsing;

/// <summary>What Jupyter and the kernel complain of by themselves, heard from a notebook that never loads us.</summary>
internal static partial class HostNoise
{
    private static IReadOnlySet<string>? heard;

    public static async Task<IReadOnlySet<string>> Of(ChromiumFixture chromium, JupyterFixture jupyter)
    {
        if (heard is not null)
            return heard;
        await using var page = await JupyterPage.Open(chromium, jupyter, JupyterFixture.Live, NotebookNames.Alone);
        await page.RunAll();
        await page.Photograph("live-alone");
        return heard = page.Complaints.ToHashSet(StringComparer.Ordinal);
    }

    /// <summary>
    /// The known noise: Jupyter asks for the widgets extension, which is another package; the kernel's first output asks the kernel's own
    /// port on each address of this machine and then, refused here, for a script at an undefined place; MathJax tries a font at about:blank.
    /// </summary>
    [GeneratedRegex("nbextensions/widgets/|KERNEL/discovery|undefinedresources/dotnet-interactive|about:blank")]
    public static partial Regex Known();
}
