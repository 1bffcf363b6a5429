using System.Runtime.InteropServices;

namespace EightOhm.Cli;

/// <summary>Turns Ctrl-C, a polite request to end and a closed terminal into a cancellation; a second one ends the process as the system does.</summary>
internal sealed class Interruption : IDisposable
{
    private readonly CancellationTokenSource source = new();
    private readonly PosixSignalRegistration[] registrations;
    private readonly Func<bool> isSecond;
    private volatile int code = ExitCode.Signal + 2;

    /// <summary>For who does the work. Where it is watched, the watcher decides about a second signal.</summary>
    public Interruption()
        : this(isSecond: null, told: null)
    {
    }

    /// <summary>For who waits for another process.</summary>
    /// <param name="told">Told of every signal, by its number.</param>
    public Interruption(Action<int> told)
        : this(isSecond: () => false, told)
    {
    }

    private Interruption(Func<bool>? isSecond, Action<int>? told)
    {
        this.isSecond = isSecond ?? (() => !Watching.Watched.Is && source.IsCancellationRequested);
        registrations =
        [
            Register(PosixSignal.SIGINT, 2, told),
            Register(PosixSignal.SIGTERM, 15, told),
            Register(PosixSignal.SIGHUP, 1, told),
        ];
    }

    public CancellationToken Token => source.Token;

    /// <summary>The shell's code for the signal that came first.</summary>
    public int Code => code;

    /// <summary>Does what a signal does.</summary>
    /// <param name="number">The signal.</param>
    public void Raise(int number)
    {
        if (!source.IsCancellationRequested)
            code = ExitCode.Signal + number;
        source.Cancel();
    }

    public void Dispose()
    {
        foreach (var registration in registrations)
            registration.Dispose();
        source.Dispose();
    }

    private PosixSignalRegistration Register(PosixSignal signal, int number, Action<int>? told) => PosixSignalRegistration.Create(signal, context =>
    {
        context.Cancel = !isSecond();
        Raise(number);
        told?.Invoke(number);
    });
}
