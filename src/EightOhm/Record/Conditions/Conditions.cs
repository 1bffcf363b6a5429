using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Record;

/// <summary>The conditions under which something must hold: mains, loads and their phases, ambient, duty, spread of parts.</summary>
/// <remarks>Immutable: each verb gives new conditions. A lambda picks those it wants by the names of its parameters; the others cost nothing. Made by a record
/// (<see cref="DesignRecord.Conditions"/>), its parameters may name entries too, whose values in force they are given.</remarks>
public sealed partial class Conditions
{
    private readonly IReadOnlyList<Condition> all;

    /// <summary>No conditions yet.</summary>
    public Conditions()
        : this([], DefaultSeed, null)
    {
    }

    private Conditions(IReadOnlyList<Condition> all, ulong seed, IEntryArguments? entries) => (this.all, Seed, Entries) = (all, seed, entries);

    /// <summary>The seed of the random probes when none is given.</summary>
    public const ulong DefaultSeed = 1;

    /// <summary>The seed of the random probes of a search: the same seed, the same search.</summary>
    public ulong Seed { get; }

    /// <summary>The names, in the order they were made.</summary>
    public IReadOnlyList<string> Names => [.. all.Select(c => c.Name)];

    /// <summary>Anything from one value to another. From a tenth of the high end or less, a quantity that cannot be negative is looked at in equal
    /// ratios (20 Hz to 20 kHz has its middle at 632 Hz).</summary>
    /// <typeparam name="T">A quantity, or double; whole numbers are <see cref="Cases{T}(string, T[])"/>.</typeparam>
    /// <param name="name">The symbol by which a lambda asks for it.</param>
    /// <param name="low">The low end; finite.</param>
    /// <param name="high">The high end, not below <paramref name="low"/>; the same value holds it still.</param>
    /// <param name="word">What stands before the value in a sentence, such as "mains"; the name if nothing is given and the value alone would not tell.</param>
    /// <exception cref="RecordException">The name is no symbol or is taken, or the type is not one that has values between two values.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The low end is above the high one, or an end is not finite.</exception>
    public Conditions Range<T>(string name, T low, T high, string? word = null)
        where T : struct
    {
        name = Check(name);
        if (QuantityKinds.Find(typeof(T)) is not { } kind || typeof(T) == typeof(int))
            throw new RecordException($"{name} cannot be a range of {typeof(T).Name}: a range goes over a quantity or a double (write 0.0 instead of 0). Name single values with Cases(\"{name}\", …).");
        var (from, to) = (kind.ToSi(low), kind.ToSi(high));
        if (!double.IsFinite(from) || !double.IsFinite(to))
            throw new RefusedValueException(name, $"The ends of {name} must be finite numbers.");
        if (from > to)
            throw new RefusedValueException(name, $"{name} must run from the low end to the high one (was {QuantityFormat.Short(low)} to {QuantityFormat.Short(high)}). Exchange the two.");
        return With(new RangeCondition(name, low, high, word));
    }

    /// <summary>One of a few values; equal ones count once.</summary>
    /// <typeparam name="T">A quantity, a number, a bool, an enum, a text, or a record, such as a load with its phase.</typeparam>
    /// <param name="name">The symbol by which a lambda asks for it.</param>
    /// <param name="values">The values, one or more.</param>
    /// <exception cref="RecordException">The name is no symbol or is taken; there are no values; or a value has no words of its own.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is not finite.</exception>
    public Conditions Cases<T>(string name, params T[] values)
        where T : notnull => With(CaseList(name, null, values));

    /// <summary>One of a few values, with a word before it.</summary>
    /// <typeparam name="T">A quantity, a number, a bool, an enum, a text, or a record, such as a load with its phase.</typeparam>
    /// <param name="name">The symbol by which a lambda asks for it.</param>
    /// <param name="values">The values, one or more; equal ones count once.</param>
    /// <param name="word">What stands before the value in a sentence, such as "load".</param>
    /// <exception cref="RecordException">The name is no symbol or is taken; there are no values; or a value has no words of its own.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is not finite.</exception>
    public Conditions Cases<T>(string name, IReadOnlyCollection<T> values, string word)
        where T : notnull => With(CaseList(name, word, values));

    /// <summary>What varies from part to part, by so much either way, judged at both ends: the worst of a figure that goes one way with it lies there.</summary>
    /// <remarks>A lambda that takes a double or a <see cref="Ratio"/> gets the factor, 0.95 or 1.05. Named for an entry of the record, and taken in the
    /// entry's own kind, it gives the entry's value times the factor.</remarks>
    /// <param name="name">The symbol by which a lambda asks for it.</param>
    /// <param name="plusMinus">How far from nominal; 0 % or more, less than 100 %.</param>
    /// <param name="word">What stands before the deviation in a sentence; the name if nothing is given.</param>
    /// <exception cref="RecordException">The name is no symbol or is taken.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The spread is out of range.</exception>
    public Conditions Spread(string name, Ratio plusMinus, string? word = null)
    {
        name = Check(name);
        if (!(plusMinus.DecimalFractions is >= 0 and < 1))
            throw new RefusedValueException(name, $"The spread of {name} must be 0 % or more and less than 100 % (was {QuantityFormat.Short(plusMinus)}). Write 5.percent for ±5 %.");
        return With(new SpreadCondition(name, plusMinus, word));
    }

    /// <summary>The same conditions, searched with other random probes.</summary>
    /// <param name="seed">Any number.</param>
    public Conditions WithSeed(ulong seed) => new(all, seed, Entries);

    /// <summary>All conditions and what each may be, in words.</summary>
    public override string ToString() => all.Count == 0 ? "no conditions" : ConditionWords.Bounds(all);

    /// <summary>The entries that a lambda may name beside the conditions; null where there is no record.</summary>
    internal IEntryArguments? Entries { get; }

    /// <summary>The same conditions beside the entries of a record.</summary>
    internal Conditions Beside(IEntryArguments entries) => new(all, Seed, entries);

    /// <summary>The condition of a name, or null.</summary>
    internal Condition? Find(string name) => all.FirstOrDefault(c => c.Name == name);

    private string Check(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        var normal = name.Normalize();
        if (!EntryNames.IsGood(normal))
            throw new RecordException($"\"{name}\" cannot be the name of a condition: {EntryNames.Rule}");
        return Find(normal) is null ? normal : throw new RecordException($"There is a condition {normal} already ({ConditionWords.Bounds([Find(normal)!])}). Give the other one a name of its own.");
    }

    private CaseCondition CaseList<T>(string name, string? word, IReadOnlyCollection<T> values)
        where T : notnull
    {
        ArgumentNullException.ThrowIfNull(values);
        name = Check(name);
        object[] cases = [.. values.Distinct().Select(v => (object?)v ?? throw new RecordException($"A case of {name} is missing (null)."))];
        if (cases.Length == 0)
            throw new RecordException($"{name} has no cases. Name at least one: Cases(\"{name}\", 8.Ohm, 4.Ohm).");
        foreach (var value in cases)
        {
            if (!ConditionWords.HasWords(value.GetType()))
                throw new RecordException($"A case of {name} cannot be told in words: {value.GetType().Name} has no ToString of its own. Make it a record, or give it one.");
            if (value is double and not (> double.NegativeInfinity and < double.PositiveInfinity))
                throw new RefusedValueException(name, $"A case of {name} must be a finite number.");
        }

        return new CaseCondition(name, typeof(T), cases, word);
    }

    private Conditions With(Condition added)
    {
        Entries?.Take(added.Name);
        return new([.. all, added], Seed, Entries);
    }
}
