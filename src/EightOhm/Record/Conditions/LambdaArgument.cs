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
    public LambdaArgument(string name, Type type, Condition? condition, object? entry)
    {
        (this.condition, this.entry) = (condition, entry);
        if (condition is SpreadCondition)
        {
            UsesEntry = entry?.GetType() == type;
            shape = UsesEntry ? Spread(name, entry!) : type == typeof(double) ? x => x : type == typeof(Ratio) ? x => Ratio.FromDecimalFractions((double)x) : null!;
            if (shape is null)
                throw new RecordException($"{name} is a spread, a factor about 1, but the lambda takes {type.Name}. Take a double or a Ratio{(entry is null ? "" : $", or {entry.GetType().Name} to have the entry's value times the factor")}.");
            return;
        }

        UsesEntry = condition is null;
        var given = condition?.Type ?? entry!.GetType();
        if (!type.IsAssignableFrom(given))
            throw new RecordException($"{name} is {given.Name}, but the lambda takes {type.Name}. Write ({given.Name} {name}, …) => ….");
        shape = x => x;
    }

    /// <summary>Whether the entry's value goes into it.</summary>
    public bool UsesEntry { get; }

    /// <summary>The value where the condition is at a place.</summary>
    public object At(double place) => shape(condition is null ? entry! : condition.At(place));

    private static Func<object, object> Spread(string name, object entry)
    {
        var kind = QuantityKinds.Find(entry.GetType());
        if (kind is null || kind.Style == FormatStyle.Celsius || kind.Type == typeof(int))
            throw new RecordException($"{name} is {entry.GetType().Name}, which cannot be spread by a factor. Use Range or Cases.");
        var nominal = kind.ToSi(entry);
        return factor => kind.FromSi(nominal * (double)factor);
    }
}
