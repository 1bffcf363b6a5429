namespace EightOhm.Cli.Live;

/// <summary>The words of the notebook format for the kinds of cells, and the page's for them.</summary>
internal static class CellKinds
{
    public const string Code = "code";

    public const string Text = "text";

    /// <summary>The format's word for a kind of the page.</summary>
    /// <exception cref="LiveRefusal">There is no such kind.</exception>
    public static string InFile(string kind) => kind switch
    {
        Code => "code",
        Text => "markdown",
        _ => throw new LiveRefusal($"A cell's kind must be \"{Code}\" or \"{Text}\" (was \"{kind}\")."),
    };
}
