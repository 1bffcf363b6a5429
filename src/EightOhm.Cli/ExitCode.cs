namespace EightOhm.Cli;

/// <summary>What the program tells the shell.</summary>
internal static class ExitCode
{
    public const int Done = 0;
    public const int CellFailed = 1;
    public const int BadInput = 2;
    public const int OverLimit = 4;

    /// <summary>The shell's own convention for a program ended by a signal: 128 and the signal's number.</summary>
    public const int Interrupted = 130;
}
