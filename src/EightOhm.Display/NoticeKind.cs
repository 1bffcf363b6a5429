namespace EightOhm.Display;

/// <summary>Why a cell shows a notice.</summary>
public enum NoticeKind
{
    /// <summary>The design's numbers have no answer here.</summary>
    NoAnswer,

    /// <summary>It needs something that had no answer or failed.</summary>
    NotCalculated,

    /// <summary>Its code is wrong.</summary>
    Failed,
}
