using System.Linq.Expressions;
using EightOhm.Quantities;

namespace EightOhm.Record;

/// <summary>One line of the record as it stands now.</summary>
public sealed record Entry
{
    internal Entry(Slot slot, Outcome outcome)
    {
        Name = slot.Name;
        Role = slot.Role;
        Kind = slot.Kind;
        (Value, State, Reason) = (outcome.Value, outcome.State, outcome.Reason);
        Rule = slot.Rule?.Text;
        Expression = slot.Rule?.Lambda;
        From = slot.From;
        HangsOnAll = slot.HangsOnAll;
        Worst = Value is null ? null : slot.Worst;
        Note = slot.Note;
        Considered = slot.Considered;
    }

    /// <summary>The symbol; of a part its role with _ for a blank.</summary>
    public string Name { get; }

    /// <summary>Where the value comes from.</summary>
    public EntryRole Role { get; }

    /// <summary>The kind of quantity; null for a part.</summary>
    public QuantityKind? Kind { get; }

    /// <summary>How the value stands.</summary>
    public EntryState State { get; }

    /// <summary>Why, a clause: "P moved", "the chapter says 100 W"; null where the state says all.</summary>
    public string? Reason { get; }

    /// <summary>The value in force: a quantity, a number or a <see cref="PartFile"/>; null when there is none.</summary>
    public object? Value { get; }

    /// <summary>A rule as text, else null.</summary>
    public string? Rule { get; }

    /// <summary>A rule as a lambda over the entries it names, for showing the working, tolerances and sensitivities; else null.</summary>
    public LambdaExpression? Expression { get; }

    /// <summary>The entries that it comes from.</summary>
    public IReadOnlyList<string> From { get; }

    /// <summary>Whether nothing is known of where a computed value came from, so that it hangs on every input there was.</summary>
    public bool HangsOnAll { get; }

    /// <summary>Where and how the value was found, when it is the worst over conditions; else null.</summary>
    public WorstCase? Worst { get; }

    /// <summary>What the chapter says about it: a target's note, a choice's reason, an assumption's basis.</summary>
    public string? Note { get; }

    /// <summary>What else was considered for a choice, or null.</summary>
    public string? Considered { get; }

    /// <summary>Whether the value can be relied on: neither stale nor missing.</summary>
    public bool IsCurrent => State is not (EntryState.Stale or EntryState.NoAnswer);

    /// <summary>The value as it reads, or a dash when there is none.</summary>
    public string Reads => Value switch
    {
        null => "–",
        PartFile part => part.ToString(),
        var value => QuantityFormat.Long(value),
    };
}
