using EightOhm.Quantities;

namespace EightOhm.Record;

/// <summary>The worst of a figure over conditions: how much, where, and what each condition has to do with it.</summary>
public class WorstCase
{
    internal WorstCase()
    {
    }

    internal WorstCase(WorstCase other)
    {
        (Value, Reason, Where, At, Over) = (other.Value, other.Reason, other.Where, other.At, other.Over);
        (Method, Evaluations, Seed, Relief) = (other.Method, other.Evaluations, other.Seed, other.Relief);
        (Entries, Conditions, Cause) = (other.Entries, other.Conditions, other.Cause);
    }

    /// <summary>The worst value, a quantity or a number; null when nobody can tell.</summary>
    public object? Value { get; internal init; }

    /// <summary>Why nobody can tell: "at 4 Ω, mains −10 %: " and what was said there; null otherwise.</summary>
    public string? Reason { get; internal init; }

    /// <summary>The conditions used, each at the worst, in their order; at the point without a value when nobody can tell.</summary>
    public IReadOnlyList<ConditionAt> Where { get; internal init; } = [];

    /// <summary>The same as a phrase: "4 Ω ∠45°, mains +10 %"; empty where no condition is used.</summary>
    public string At { get; internal init; } = "";

    /// <summary>The conditions used and what each may be, in words.</summary>
    public string Over { get; internal init; } = "";

    /// <summary>Which way it was found.</summary>
    public WorstMethod Method { get; internal init; }

    /// <summary>How many different points were evaluated.</summary>
    public int Evaluations { get; internal init; }

    /// <summary>The seed of the random probes, with which the same search comes again.</summary>
    public ulong Seed { get; internal init; }

    /// <summary>What each condition alone could do: the value at its kindest, the others at the worst. In the conditions' order; empty when nobody can tell.</summary>
    public IReadOnlyList<ConditionRelief> Relief { get; internal init; } = [];

    /// <summary>How it was found, as a phrase: "searched, 105 evaluations, seed 1".</summary>
    public string How => $"{(Method == WorstMethod.EveryCombination ? "every combination" : "searched")}, {Evaluations} evaluation{(Evaluations == 1 ? "" : "s")}{(Method == WorstMethod.Search ? $", seed {Seed}" : "")}";

    /// <summary>The entries of the record that parameters were bound to.</summary>
    internal IReadOnlyList<string> Entries { get; init; } = [];

    /// <summary>The names of all conditions over which it was asked.</summary>
    internal IReadOnlyList<string> Conditions { get; init; } = [];

    /// <summary>What was thrown at the point without a value; null when nothing was.</summary>
    internal Exception? Cause { get; init; }

    /// <summary>The value and where: "113 °C at 4 Ω ∠45°, mains +10 %"; or why nobody can tell.</summary>
    public override string ToString() => Value is null ? $"cannot tell {Reason}" : At.Length == 0 ? QuantityFormat.Short(Value) : $"{QuantityFormat.Short(Value)} at {At}";

    /// <summary>Whether a file would hold the same of both.</summary>
    internal bool SaysTheSame(WorstCase other) =>
        (Reason, At, Over, Method, Evaluations, Seed) == (other.Reason, other.At, other.Over, other.Method, other.Evaluations, other.Seed)
        && Equals(Value, other.Value) && Where.SequenceEqual(other.Where) && Relief.SequenceEqual(other.Relief);
}

/// <summary>The worst of a figure whose type is known.</summary>
/// <typeparam name="T">The quantity.</typeparam>
public sealed class WorstCase<T> : WorstCase
    where T : struct
{
    internal WorstCase(WorstCase found)
        : base(found)
    {
    }

    /// <summary>The worst value; null when nobody can tell.</summary>
    public new T? Value => (T?)base.Value;
}

/// <summary>A condition and the value it has.</summary>
/// <param name="Name">The condition's name.</param>
/// <param name="Value">Its value: a quantity, a number, or one of its cases; of a spread the factor. Of a case that is none of these it is null after the record was read from its file, which keeps the words.</param>
/// <param name="Text">The value in words, without the name.</param>
public sealed record ConditionAt(string Name, object? Value, string Text);

/// <summary>What one condition has to do with the worst case: the value when it alone is at its kindest.</summary>
/// <param name="Kindest">The condition there.</param>
/// <param name="Change">From its worst to its kindest, in words: "4 → 8 Ω".</param>
/// <param name="Value">The figure there, the other conditions at the worst.</param>
public sealed record ConditionRelief(ConditionAt Kindest, string Change, object Value)
{
    /// <summary>The change and the value: "4 → 8 Ω: 97 °C".</summary>
    public override string ToString() => $"{Change}: {QuantityFormat.Short(Value)}";
}
