using EightOhm.Browser.Tests.Hosting;

namespace EightOhm.Browser.Tests.Browsing;

/// <summary>What a notebook of a fresh clone shows before anybody runs it.</summary>
/// <param name="IsTrusted">Whether Jupyter trusts it.</param>
/// <param name="Outputs">The outputs as the page shows them.</param>
/// <param name="Complaints">What went wrong or went elsewhere.</param>
internal sealed record UntrustedLook(bool IsTrusted, IReadOnlyList<ShownOutput> Outputs, IReadOnlyList<string> Complaints)
{
    /// <summary>Opens a notebook of the copy that is never run.</summary>
    public static async Task<UntrustedLook> Of(ChromiumFixture chromium, JupyterFixture jupyter, string notebook)
    {
        await using var page = await JupyterPage.Open(chromium, jupyter, JupyterFixture.Fresh, notebook, runs: false);
        await page.Settle();
        await page.Photograph($"untrusted-{LiveRun.Picture(notebook)}");
        return new UntrustedLook(await page.IsTrusted(), await ShownOutput.On(page), [.. page.Complaints]);
    }
}
