using System.Reflection;
using System.Text.RegularExpressions;
using EightOhm.Quantities;
using EightOhm.Explaining;

namespace EightOhm.Display.Tables;

/// <summary>Any value of ours as a table of its figures: what, symbol, value.</summary>
public static partial class Facts
{
    /// <summary>The figures of a value: its properties that are quantities or numbers.</summary>
    /// <param name="value">A value of ours.</param>
    public static Table Of(object value)
    {
        ArgumentNullException.ThrowIfNull(value);
        var rows = value.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance)
            .Where(p => IsFigure(p) && p.GetValue(value) is not null)
            .Select(IReadOnlyList<string> (p) => [Words(p.Name), Symbol(p), QuantityFormat.Long(p.GetValue(value)!)])
            .ToList();
        return new Table(["figure", "symbol", "value"], rows, [2], Words(value.GetType().Name));
    }

    /// <summary>Whether a type has figures to show.</summary>
    /// <param name="type">The type.</param>
    public static bool Has(Type type) => type.GetProperties(BindingFlags.Public | BindingFlags.Instance)
        .Any(IsFigure);

    // One that may be absent is a figure too; where it is absent it has no row.
    private static bool IsFigure(PropertyInfo p) =>
        p.GetIndexParameters().Length == 0 && QuantityKinds.Find(Nullable.GetUnderlyingType(p.PropertyType) ?? p.PropertyType) is not null;

    private static string Symbol(PropertyInfo p) => MathText.Name(
        p.GetCustomAttribute<SymbolAttribute>()?.Text ?? (p.GetCustomAttribute<FormulaAttribute>() is { Symbol.Length: > 0 } f ? f.Symbol : ""));

    // "RmsVoltage" as "rms voltage", "StageDissipation" as "class B stage", "TimeTo90Percent" as "time to 90 percent".
    private static string Words(string name) => string.Join(' ', Humps().Split(name).Select(w => w.Length == 1 ? w : w.ToLowerInvariant()));

    [GeneratedRegex("(?<=[a-z0-9])(?=[A-Z])|(?<=[A-Z])(?=[A-Z][a-z])|(?<=[a-z])(?=[0-9])")]
    private static partial Regex Humps();
}
