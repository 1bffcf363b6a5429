using EightOhm.Display.Figures;
using Microsoft.DotNet.Interactive;
using Microsoft.DotNet.Interactive.Events;
using Microsoft.DotNet.Interactive.Formatting;

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
        // Not by the value's own update: the host would put its styles around the nothing.
        context.Publish(new DisplayedValueUpdated("", shown.DisplayId, context.Command, [new FormattedValue("text/html", "")]));
    }

    /// <summary>Whether the kernel serves a page: only a notebook server's does; the runner's embedded kernel has none and keeps plotly.js beside the book.</summary>
    /// <param name="context">The running cell.</param>
    public static bool HasLivePage(KernelInvocationContext context) =>
        context.HandlingKernel.RootKernel is CompositeKernel root && root.ChildKernels.Count > 1;
}
