using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Record;

/// <summary>What a parameter of a lambda is given: a condition's value, an entry's, or an entry's times a factor.</summary>
internal sealed class LambdaArgument
{
    private readonly Condition? condition;
    private readonly object? entry;
    private readonly Func<object, object> shape;

    /// <summary>Binds a parameter; a condition goes before an entry of the same name.</summary>
    /// <exception cref="RecordException">The parameter is of another type.</exception>
    public LambdaArgument(string name, Type type, Condition? condition, (Type Type, object? Value, string? Reason)? entry)
    {
        (this.condition, this.entry) = (condition, entry?.Value);
        UsesEntry = condition is null || (condition is SpreadCondition && entry?.Type == type);
        shape = condition is SpreadCondition ? UsesEntry ? Spread(name, type) : Factor(name, type, entry?.Type) : x => x;
        var given = condition?.Type ?? entry!.Value.Type;
        if (condition is not SpreadCondition && !type.IsAssignableFrom(given))
            throw new RecordException($"{name} is {given.Name}, but the lambda takes {type.Name}. Write ({given.Name} {name}, …) => ….");
    }

    /// <summary>Whether the entry's value goes into it.</summary>
    public bool UsesEntry { get; }

    /// <summary>The value where the condition is at a place.</summary>
    public object At(double place) => shape(condition is null ? entry! : condition.At(place));

    private static Func<object, object> Factor(string name, Type type, Type? entry) =>
        type == typeof(double) ? x => x
        : type == typeof(Ratio) ? x => Ratio.FromDecimalFractions((double)x)
        : throw new RecordException($"{name} is a spread, a factor about 1, but the lambda takes {type.Name}. Take a double or a Ratio{(entry is null ? "" : $", or {entry.Name} to have the entry's value times the factor")}.");

    private Func<object, object> Spread(string name, Type type)
    {
        if (QuantityKinds.Find(type) is not { Style: not FormatStyle.Celsius } kind || type == typeof(int))
            throw new RecordException($"{name} is {type.Name}, which cannot be spread by a factor. Use Range or Cases.");
        return factor => kind.FromSi(kind.ToSi(entry!) * (double)factor);
    }
}
