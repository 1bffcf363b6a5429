namespace EightOhm.Cli;

/// <summary>What the program tells the shell; docs/cli.md and the help say the same.</summary>
internal static class ExitCode
{
    /// <summary>Every requirement is met, or there is none.</summary>
    public const int Done = 0;

    /// <summary>The run came to its end, and something is not met, stale, cannot be told, or had no answer.</summary>
    public const int NotMet = 1;

    public const int BadInput = 2;

    /// <summary>A cell failed: its code is wrong, not the design.</summary>
    public const int CellFailed = 3;

    public const int OverLimit = 4;

    /// <summary>The shell's own convention for a program ended by a signal: this and the signal's number.</summary>
    public const int Signal = 128;

    /// <summary>The codes in words, for the help.</summary>
    public const string Words =
        """
        Exit codes:
          0    every requirement is met, or there is none
          1    something is not met, is stale, cannot be told or had no answer
          2    something given to the program is wrong: a file, a name, a value, an option
          3    a cell failed: its code is wrong
          4    a cell took longer than --limit
          130  interrupted (Ctrl-C); ended by a request of the system: 143, by a closed terminal: 129
        """;
}
