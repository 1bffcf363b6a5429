namespace EightOhm.Cli;

/// <summary>The run ends here: a message for the person, and an exit code for the shell.</summary>
internal sealed class RunFailure(int exitCode, string message) : Exception(message)
{
    public int ExitCode { get; } = exitCode;

    public static RunFailure BadInput(string message) => new(Cli.ExitCode.BadInput, message);
}
