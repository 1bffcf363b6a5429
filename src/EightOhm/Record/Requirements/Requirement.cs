namespace EightOhm.Record;

/// <summary>A requirement and how the present value stands to it.</summary>
/// <param name="Label">The requirement in words, with the values in force where its label names entries.</param>
/// <param name="Key">The label as it was written: "clip power into {R_L}". One requirement has it.</param>
/// <param name="Entry">The entry that is judged; null for the worst over conditions.</param>
/// <param name="Value">The present value as it reads, or a dash.</param>
/// <param name="Where">Under which conditions the value was found, or null.</param>
/// <param name="Limit">What is asked, with the limit's value and name: "at most 125 °C (T_jmax)".</param>
/// <param name="Limits">The entries that the limit comes from; empty for a natural constant.</param>
/// <param name="Margin">How far inside or outside; null when nobody can tell.</param>
/// <param name="State">How it stands.</param>
/// <param name="Reason">Why: by how much it is missed, what is missing, what moved; null when met.</param>
public sealed record Requirement(
    string Label,
    string Key,
    string? Entry,
    string Value,
    string? Where,
    string Limit,
    IReadOnlyList<string> Limits,
    Margin? Margin,
    RequirementState State,
    string? Reason)
{
    /// <summary>What is asked, without the name of the limit: "at most 125 °C".</summary>
    public string Asked { get; init; } = Limit;

    /// <summary>The lower limit's value; null where none is asked or nobody can tell it.</summary>
    public object? Lowest { get; init; }

    /// <summary>The upper limit's value; null where none is asked or nobody can tell it.</summary>
    public object? Highest { get; init; }

    /// <summary>What was found over conditions: where, how, and what each condition has to do with it; null where an entry is judged.</summary>
    public WorstCase? Worst { get; init; }

    /// <summary>Whether it is met; null when nobody can tell.</summary>
    public bool? Met => State switch
    {
        RequirementState.Met => true,
        RequirementState.NotMet => false,
        _ => null,
    };
}
