namespace EightOhm.Cli.Live;

/// <summary>What the page asked for is not to be done; the message says why and what to try, and nothing was changed.</summary>
internal sealed class LiveRefusal(string message) : Exception(message);
