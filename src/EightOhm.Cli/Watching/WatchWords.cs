namespace EightOhm.Cli.Watching;

/// <summary>The words between the process that runs cells and the one that watches it; each begins a line.</summary>
internal static class WatchWords
{
    public const string At = "at";
    public const string Why = "why";
    public const string Placing = "placing";
    public const string End = "end";
}
