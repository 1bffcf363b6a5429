namespace EightOhm.Cli.Watching;

/// <summary>How a process ended in which a cell ran.</summary>
internal static class ProcessEnd
{
    private const int Aborted = 134;

    /// <summary>What a thread that nobody waits for has done to it, as the end of a sentence.</summary>
    /// <param name="thrown">What it threw.</param>
    public static string Words(Exception thrown) => $"a thread that a cell had started threw {thrown.GetType().Name}: {thrown.Message}";

    /// <summary>What a cell has done to its process, as the end of a sentence.</summary>
    /// <param name="code">The process's exit code.</param>
    public static string Words(int code) => code switch
    {
        Aborted => "it called itself without end, or ended the process by force",
        > ExitCode.Signal => FormattableString.Invariant($"the process was ended by signal {code - ExitCode.Signal}, by hand or because it wanted too much memory"),
        _ => FormattableString.Invariant($"it ended the whole process with code {code}, as Environment.Exit does"),
    };
}
