namespace EightOhm.Cli.Live;

/// <summary>How a cell on the page stands.</summary>
internal enum CellState
{
    /// <summary>Its outputs belong to its text and to the design as it stands.</summary>
    Current,

    /// <summary>Something that it hangs on has moved, or nobody knows what its outputs came from.</summary>
    Stale,

    /// <summary>Its text was changed since it was calculated.</summary>
    Edited,

    /// <summary>It is being calculated.</summary>
    Running,

    /// <summary>It will be calculated.</summary>
    Waiting,

    /// <summary>It was calculated and gave nothing.</summary>
    Failed,

    /// <summary>It was never calculated.</summary>
    Never,
}
