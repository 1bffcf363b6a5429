using System.Collections;
using System.Reflection;
using System.Runtime.InteropServices;

namespace EightOhm.Notebook;

/// <summary>Lets a notebook page's interrupt stop the cell at work. Jupyter sends a signal, by which the host alone would end with all that the cells hold.</summary>
internal static class Interrupts
{
    private static readonly Lock Gate = new();
    private static CancellationTokenSource? running;
    private static PosixSignalRegistration? registration;

    /// <summary>Begins the work of a cell, which ends with the result's disposal or by an interrupt.</summary>
    /// <param name="also">The host's own word to stop.</param>
    public static IDisposable Begin(CancellationToken also)
    {
        var source = CancellationTokenSource.CreateLinkedTokenSource(also);
        CancellationTokenSource? outer;
        lock (Gate)
        {
            // Kept for the life of the process: between two cells an interrupt is no reason to end either.
            if (registration is null)
            {
                TakeFromHost();
                registration = PosixSignalRegistration.Create(PosixSignal.SIGINT, Stop);
            }

            (outer, running) = (running, source);
        }

        return new Cell(source, outer, Work.Begin(source.Token));
    }

    // The web host within the kernel ends the process at this signal, and offers nobody a way to keep it from that. Where the list is kept
    // otherwise than in the .NET at hand, an interrupt ends the kernel as it does without us.
    private static void TakeFromHost()
    {
        if (typeof(PosixSignalRegistration).GetField("s_registrations", BindingFlags.NonPublic | BindingFlags.Static)?.GetValue(null) is not IDictionary all)
            return;
        lock (all)
        {
            foreach (var token in all.Values.OfType<IList>())
                for (var i = token.Count - 1; i >= 0; i--)
                    if (IsHostInterrupt(token[i]!))
                        token.RemoveAt(i);
        }
    }

    private static bool IsHostInterrupt(object token) =>
        token.GetType().GetProperty("Signal")?.GetValue(token) is PosixSignal.SIGINT
        && token.GetType().GetProperty("Handler")?.GetValue(token) is Delegate { Target: { } target }
        && target.GetType().FullName?.StartsWith("Microsoft.Extensions.Hosting.", StringComparison.Ordinal) == true;

    private static void Stop(PosixSignalContext signal)
    {
        signal.Cancel = true;
        lock (Gate)
            running?.Cancel();
    }

    private sealed class Cell(CancellationTokenSource source, CancellationTokenSource? outer, IDisposable work) : IDisposable
    {
        public void Dispose()
        {
            lock (Gate)
                running = outer;
            work.Dispose();
            source.Dispose();
        }
    }
}
