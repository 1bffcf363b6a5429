namespace EightOhm.Record;

/// <summary>Which side of a limit is good.</summary>
public enum LimitSense
{
    /// <summary>The limit or more.</summary>
    AtLeast,

    /// <summary>The limit or less.</summary>
    AtMost,

    /// <summary>From one limit to the other.</summary>
    Between,
}
