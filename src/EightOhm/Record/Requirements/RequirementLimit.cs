using System.Linq.Expressions;
using EightOhm.Quantities;

namespace EightOhm.Record;

/// <summary>One end of what a requirement asks: an entry, a rule over entries, or a natural constant. What the designer may move stands on the record, not in a requirement.</summary>
public sealed class RequirementLimit
{
    private RequirementLimit()
    {
    }

    internal string? EntryName { get; private init; }

    internal LambdaExpression? Lambda { get; private init; }

    internal (QuantityKind Kind, object Value)? Constant { get; private init; }

    /// <summary>The value in force of an entry.</summary>
    /// <param name="name">The symbol; the entry need not be there yet.</param>
    /// <exception cref="RecordException">It is not a symbol.</exception>
    public static RequirementLimit Of(string name) => new() { EntryName = EntryNames.Check(name) };

    /// <summary>A rule over entries, such as <c>(ElectricPotential V_in) => V_in * 1.01</c>.</summary>
    /// <param name="rule">The rule; its parameters name the entries, and it uses only EightOhm's own functions.</param>
    public static RequirementLimit Of(LambdaExpression rule)
    {
        ArgumentNullException.ThrowIfNull(rule);
        return new() { Lambda = rule };
    }

    /// <summary>A natural constant: nothing at all (0 V, 0 A), or the whole (1, 100 %).</summary>
    /// <typeparam name="T">The quantity.</typeparam>
    /// <param name="constant">Zero of any quantity, or one where the quantity has no unit.</param>
    /// <exception cref="RefusedValueException">It is a figure that somebody chose, and belongs on the record.</exception>
    public static RequirementLimit Of<T>(T constant)
        where T : struct
    {
        var kind = QuantityKinds.Of(typeof(T));
        var value = KeptValue.Normal("the limit", kind, constant);
        return IsNatural(kind, value)
            ? new() { Constant = (kind, value) }
            : throw new RefusedValueException(nameof(constant), $"A limit of {QuantityFormat.Short(value)} is somebody's choice, so that it belongs on the record: write record.Target(\"x_max\", …) with a name of its own and give that name as the limit. A limit without a name may be 0 of any quantity, or 1.");
    }

    /// <summary>An entry's name is a limit.</summary>
    /// <param name="entry">The symbol.</param>
    public static implicit operator RequirementLimit(string entry) => Of(entry);

    internal static bool IsNatural(QuantityKind kind, object value) =>
        KeptValue.Number(kind, value) is var number && (number == 0 || (number == 1 && kind.Style is FormatStyle.Gain or FormatStyle.Fraction or FormatStyle.Number));
}
