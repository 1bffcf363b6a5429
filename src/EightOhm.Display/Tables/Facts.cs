using System.Reflection;
using EightOhm.Explaining;
using EightOhm.Quantities;

namespace EightOhm.Display.Tables;

/// <summary>Any value of ours as a table of its figures: what, symbol, value.</summary>
public static class Facts
{
    /// <summary>The figures of a value: its properties that are quantities or numbers.</summary>
    /// <param name="value">A value of ours.</param>
    public static Table Of(object value)
    {
        ArgumentNullException.ThrowIfNull(value);
        var rows = Figures(value.GetType())
            .Where(p => p.GetValue(value) is not null)
            .Select(IReadOnlyList<string> (p) => [SpokenName.Of(p), Symbol(p), QuantityFormat.Long(p.GetValue(value)!)])
            .ToList();
        return new Table(["figure", "symbol", "value"], rows, [2], SpokenName.Of(value.GetType()));
    }

    /// <summary>Whether a type has figures to show.</summary>
    /// <param name="type">The type.</param>
    public static bool Has(Type type) => Figures(type).Any();

    internal static IEnumerable<PropertyInfo> Figures(Type type) => type.GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(IsFigure);

    // One that may be absent is a figure too; where it is absent it has no row.
    private static bool IsFigure(PropertyInfo p) =>
        p.GetIndexParameters().Length == 0 && QuantityKinds.Find(Nullable.GetUnderlyingType(p.PropertyType) ?? p.PropertyType) is not null;

    private static string Symbol(PropertyInfo p) => MathText.Name(
        p.GetCustomAttribute<SymbolAttribute>()?.Text ?? (p.GetCustomAttribute<FormulaAttribute>() is { Symbol.Length: > 0 } f ? f.Symbol : ""));
}
