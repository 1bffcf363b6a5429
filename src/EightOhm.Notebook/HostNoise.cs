using Microsoft.DotNet.Interactive;
using Microsoft.DotNet.Interactive.Events;
using Microsoft.DotNet.Interactive.Formatting;

namespace EightOhm.Notebook;

/// <summary>Empties what the host itself shows while it loads a package: its bootstrap script, with this machine's addresses, and the path of the extension.</summary>
/// <remarks>They would be saved in every notebook's first cell, differ from machine to machine and say nothing to a reader.</remarks>
internal static class HostNoise
{
    private static readonly string[] Marks = ["Loading extension script", "probeAddresses", "Installed Packages", "Loading extensions from"];

    /// <summary>Replaces the host's outputs of this cell by nothing.</summary>
    /// <param name="context">The running cell.</param>
    public static void Hush(KernelInvocationContext context)
    {
        var shown = new List<DisplayedValueProduced>();
        using (context.KernelEvents.Subscribe(new Collector(shown)))
        {
            // The events of the cell so far are replayed at once to a new subscriber.
        }

        foreach (var value in shown.Where(v => v.FormattedValues.Any(f => Marks.Any(m => f.Value.Contains(m, StringComparison.Ordinal)))))
            context.Publish(new DisplayedValueUpdated("", value.ValueId, value.Command, [new FormattedValue("text/html", "")]));
    }

    private sealed class Collector(List<DisplayedValueProduced> shown) : IObserver<KernelEvent>
    {
        public void OnCompleted()
        {
        }

        public void OnError(Exception error)
        {
        }

        public void OnNext(KernelEvent value)
        {
            if (value is DisplayedValueProduced displayed)
                shown.Add(displayed);
        }
    }
}
