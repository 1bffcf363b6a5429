using EightOhm.Quantities;

namespace EightOhm.Record;

/// <summary>The worst of a figure over conditions: how much, where, and what each condition has to do with it.</summary>
/// <param name="Value">The worst value; null when nobody can tell.</param>
/// <param name="Reason">Why nobody can tell: the point where there is no value, and what was said there; null otherwise.</param>
/// <param name="Where">The conditions used, each at the worst, in their order; at the point without a value when nobody can tell.</param>
/// <param name="At">The same as a phrase: "4 Ω ∠45°, mains +10 %"; empty where no condition is used.</param>
/// <param name="Over">The conditions used and what each may be, in words.</param>
/// <param name="Method">How it was found.</param>
/// <param name="Evaluations">How many different points were evaluated.</param>
/// <param name="Seed">The seed of the random probes, which the same search gives again.</param>
/// <param name="Relief">What each condition alone could do: the value at its kindest, the others at the worst. In the conditions' order; empty when nobody can tell.</param>
public sealed record WorstCase(
    object? Value,
    string? Reason,
    IReadOnlyList<ConditionAt> Where,
    string At,
    string Over,
    WorstMethod Method,
    int Evaluations,
    ulong Seed,
    IReadOnlyList<ConditionRelief> Relief)
{
    /// <summary>How it was found, as a sentence.</summary>
    public string How => $"{(Method == WorstMethod.EveryCombination ? "every combination" : "searched")}, {Evaluations} evaluation{(Evaluations == 1 ? "" : "s")}{(Method == WorstMethod.Search ? $", seed {Seed}" : "")}";

    /// <summary>The value and where: "113 °C at 4 Ω ∠45°, mains +10 %"; or why nobody can tell.</summary>
    public override string ToString() => Value is null ? $"cannot tell {Reason}" : At.Length == 0 ? QuantityFormat.Short(Value) : $"{QuantityFormat.Short(Value)} at {At}";
}

/// <summary>A condition and the value it has.</summary>
/// <param name="Name">The condition's name.</param>
/// <param name="Value">Its value: a quantity, a number, or one of its cases; of a spread the factor.</param>
/// <param name="Text">The value in words, without the name.</param>
public sealed record ConditionAt(string Name, object Value, string Text);

/// <summary>What one condition has to do with the worst case: the value when it alone is at its kindest.</summary>
/// <param name="Name">The condition's name.</param>
/// <param name="Kindest">Its value there.</param>
/// <param name="Change">From its worst to its kindest, in words: "4 → 8 Ω".</param>
/// <param name="Value">The figure there, the other conditions at the worst.</param>
public sealed record ConditionRelief(string Name, object Kindest, string Change, object Value)
{
    /// <summary>The change and the value: "4 → 8 Ω: 97 °C".</summary>
    public override string ToString() => $"{Change}: {QuantityFormat.Short(Value)}";
}
