namespace EightOhm.Record;

/// <summary>An entry's value in force and how it stands.</summary>
/// <param name="Value">The value, or null when there is none.</param>
/// <param name="State">How it stands.</param>
/// <param name="Reason">Why, in words, where the state does not say all.</param>
/// <param name="Error">Why a rule could not be computed.</param>
internal sealed record Outcome(object? Value, EntryState State, string? Reason = null, Exception? Error = null)
{
    public bool IsCurrent => State is not (EntryState.Stale or EntryState.NoAnswer);

    /// <summary>Whether nobody who hangs on it could tell the two apart.</summary>
    public bool Same(Outcome? other) => other is not null && State == other.State && Reason == other.Reason && Equals(Value, other.Value);
}
