using EightOhm.Display.Figures;
using Microsoft.DotNet.Interactive;

namespace EightOhm.Notebook;

/// <summary>Brings plotly.js into a live page, once, and leaves nothing of it in the saved file.</summary>
internal static class PlotlyInPage
{
    /// <summary>Shows the script in this cell's output and at once replaces it by nothing: the page has run it by then.</summary>
    /// <param name="context">The running cell.</param>
    public static void Bring(KernelInvocationContext context)
    {
        if (!HasLivePage(context))
            return;
        var shown = context.DisplayAs(PlotlyScript.LoadHtml(), "text/html");
        shown.Update("");
    }

    // Only a notebook server's kernel has a page; the runner's embedded kernel has none and keeps plotly.js beside the book.
    private static bool HasLivePage(KernelInvocationContext context) =>
        context.HandlingKernel.RootKernel is CompositeKernel root && root.ChildKernels.Count > 1;
}
