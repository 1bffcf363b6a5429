using System.Runtime.InteropServices;

namespace EightOhm.Cli;

/// <summary>Turns Ctrl-C, a polite request to end and a closed terminal into a cancellation; a second one ends the process as the system does.</summary>
internal sealed class Interruption : IDisposable
{
    private readonly CancellationTokenSource source = new();
    private readonly PosixSignalRegistration[] registrations;
    private volatile int code = ExitCode.Signal + 2;

    public Interruption() => registrations =
    [
        Register(PosixSignal.SIGINT, 2),
        Register(PosixSignal.SIGTERM, 15),
        Register(PosixSignal.SIGHUP, 1),
    ];

    public CancellationToken Token => source.Token;

    /// <summary>The shell's code for the signal that came first.</summary>
    public int Code => code;

    public void Dispose()
    {
        foreach (var registration in registrations)
            registration.Dispose();
        source.Dispose();
    }

    private PosixSignalRegistration Register(PosixSignal signal, int number) => PosixSignalRegistration.Create(signal, context =>
    {
        context.Cancel = !source.IsCancellationRequested;
        if (context.Cancel)
            code = ExitCode.Signal + number;
        source.Cancel();
    });
}
