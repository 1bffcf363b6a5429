namespace EightOhm.Ratings;

/// <summary>What an audit finds.</summary>
public enum SheetVerdict
{
    /// <summary>The figures can all be true within their roundings.</summary>
    Consistent,

    /// <summary>Some figures cannot all be true.</summary>
    Contradictory,

    /// <summary>No figure can be held against another.</summary>
    CannotTell,
}
