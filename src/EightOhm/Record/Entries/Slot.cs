using EightOhm.Quantities;

namespace EightOhm.Record;

/// <summary>What the record keeps of an entry; its value in force and state follow from all of them (<see cref="Evaluation"/>).</summary>
/// <param name="Name">The symbol.</param>
/// <param name="Role">Where the value comes from.</param>
/// <param name="Kind">The kind of quantity; null for a part.</param>
internal sealed record Slot(string Name, EntryRole Role, QuantityKind? Kind)
{
    private IReadOnlyList<string>? _from;

    /// <summary>Its place in the order of first appearance.</summary>
    public int Order { get; init; } = -1;

    /// <summary>An input's value by its chapter, a computed one's by its cell: a quantity, or a <see cref="PartFile"/>.</summary>
    public object? Value { get; init; }

    /// <summary>A value set from outside, which wins over the chapter's.</summary>
    public object? Override { get; init; }

    public string? Note { get; init; }

    public string? Considered { get; init; }

    public Rule? Rule { get; init; }

    /// <summary>Where and how a computed value was found, when it is the worst over conditions.</summary>
    public WorstCase? Worst { get; init; }

    /// <summary>What a computed value came from, each with its fingerprint at that time.</summary>
    public IReadOnlyList<Mark> Marks { get; init; } = [];

    /// <summary>Whether the marks are all there was, because nothing is known.</summary>
    public bool HangsOnAll { get; init; }

    /// <summary>The entries that it comes from, as the record knows them.</summary>
    public IReadOnlyList<string> From => _from ??= Rule?.Names ?? [.. Marks.Select(m => m.Name)];

    /// <summary>The entries that must be evaluated before it. What hangs on all looks at kept values only, so that it closes no circle.</summary>
    public IReadOnlyList<string> Before => HangsOnAll ? [] : From;

    /// <summary>The type by which a rule takes it.</summary>
    public Type Type => Kind?.Type ?? Card.Type;

    public string KindName => Kind is null ? Card.InWords : KindNames.Of(Kind);

    private Devices.CardKind Card => Devices.CardKinds.Find(((PartFile)Value!).Kind)!;

    /// <summary>Whether a file would hold the same of both.</summary>
    public bool SaysTheSame(Slot other) =>
        (Role, Kind, Note, Considered, HangsOnAll, Rule?.Json) == (other.Role, other.Kind, other.Note, other.Considered, other.HangsOnAll, other.Rule?.Json)
        && Equals(Value, other.Value) && Equals(Override, other.Override) && From.SequenceEqual(other.From) && Marks.SequenceEqual(other.Marks)
        && (Worst is null ? other.Worst is null : other.Worst is { } worst && Worst.SaysTheSame(worst));

    // What was worked out from other marks must not be copied by "with".
    private Slot(Slot other)
    {
        (Name, Role, Kind, Order, Value, Override, Note, Considered, Rule, Worst, Marks, HangsOnAll) =
            (other.Name, other.Role, other.Kind, other.Order, other.Value, other.Override, other.Note, other.Considered, other.Rule, other.Worst, other.Marks, other.HangsOnAll);
    }
}

/// <summary>A source and its fingerprint at the time something was computed from it.</summary>
internal readonly record struct Mark(string Name, string Fingerprint);
