namespace EightOhm.Record;

/// <summary>How a requirement stands; the reason stands beside it.</summary>
public enum RequirementState
{
    /// <summary>The value lies on the good side of the limit, or on it.</summary>
    Met,

    /// <summary>It does not.</summary>
    NotMet,

    /// <summary>Value or limit is not there, or has no answer.</summary>
    CannotTell,

    /// <summary>Value or limit was computed from other inputs than those in force.</summary>
    Stale,
}
