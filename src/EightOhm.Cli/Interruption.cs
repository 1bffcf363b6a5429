using System.Runtime.InteropServices;

namespace EightOhm.Cli;

/// <summary>Turns Ctrl-C (and a polite request to end) into a cancellation; a second one ends the process as the system does.</summary>
internal sealed class Interruption : IDisposable
{
    private readonly CancellationTokenSource source = new();
    private readonly PosixSignalRegistration[] registrations;

    public Interruption() => registrations =
    [
        PosixSignalRegistration.Create(PosixSignal.SIGINT, Handle),
        PosixSignalRegistration.Create(PosixSignal.SIGTERM, Handle),
    ];

    public CancellationToken Token => source.Token;

    public void Dispose()
    {
        foreach (var registration in registrations)
            registration.Dispose();
        source.Dispose();
    }

    private void Handle(PosixSignalContext signal)
    {
        signal.Cancel = !source.IsCancellationRequested;
        source.Cancel();
    }
}
