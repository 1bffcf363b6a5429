using System.ComponentModel;
using System.Globalization;
using System.Reflection;
using System.Runtime.CompilerServices;
using System.Text;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Record;

/// <summary>How conditions read in a sentence: 4 Ω ∠45°, mains +10 %, sine of maximum dissipation.</summary>
internal static class ConditionWords
{
    /// <summary>A value without its name.</summary>
    /// <param name="value">A quantity, a number, a member of an enum, or anything that tells what it is.</param>
    /// <param name="signed">Whether a ratio is a deviation, which is told with its sign.</param>
    public static string Value(object value, bool signed = false) => value switch
    {
        Ratio { DecimalFractions: 0 } when signed => "nominal",
        Ratio { DecimalFractions: > 0 } when signed => "+" + QuantityFormat.Short(value),
        Angle => "∠" + QuantityFormat.Short(value),
        bool yes => yes ? "yes" : "no",
        Enum member => Member(member),
        _ when QuantityKinds.Find(value.GetType()) is not null => QuantityFormat.Short(value),
        _ when TellsOnlyItsParts(value.GetType()) => Join(Parts(value).Select(p => Value(p))),
        IFormattable formattable => formattable.ToString(null, CultureInfo.InvariantCulture),
        _ => value.ToString() ?? "",
    };

    /// <summary>Whether the value is a deviation below nothing, so that its kind is told with a sign.</summary>
    public static bool IsSigned(object value) => value is Ratio { DecimalFractions: < 0 };

    /// <summary>Whether values like this are understood alone: a load, a phase, a duty. A temperature is not: it may be of anything.</summary>
    public static bool SpeakForThemselves(object value) => value is ElectricResistance or Angle or Enum || (value is not bool && QuantityKinds.Find(value.GetType()) is null);

    /// <summary>Whether a type has words of its own, and not merely the framework's name for it.</summary>
    public static bool HasWords(Type type) =>
        type.GetMethod(nameof(ToString), Type.EmptyTypes)?.DeclaringType is { } owner && owner != typeof(object) && owner != typeof(ValueType);

    /// <summary>The conditions used, each at its place, in their order.</summary>
    /// <param name="used">The conditions.</param>
    /// <param name="places">The place of each.</param>
    public static string Where(IReadOnlyList<Condition> used, IReadOnlyList<double> places) =>
        Join(used.Select((c, i) => Named(c, used, c.Text(places[i]))));

    /// <summary>All that the conditions may be.</summary>
    public static string Bounds(IReadOnlyList<Condition> conditions) => string.Join(", ", conditions.Select(c => Named(c, conditions, c.Bounds)));

    /// <summary>From one value to another, the unit said once: 4 → 8 Ω.</summary>
    public static string Change(Condition condition, IReadOnlyList<Condition> used, double from, double to)
    {
        var (a, b) = (condition.Text(from), condition.Text(to));
        if (a.LastIndexOf(' ') is > 0 and var space && b.EndsWith(a[space..], StringComparison.Ordinal) && QuantityKinds.Find(condition.At(from).GetType()) is not null)
            a = a[..space];
        return Named(condition, used, $"{a} → {b}");
    }

    private static string Named(Condition condition, IReadOnlyList<Condition> all, string text) => condition switch
    {
        { Word: { } word } => $"{word} {text.Replace("∠", "", StringComparison.Ordinal)}",
        { SpeaksForItself: true } when all.Count(c => c.Word is null && c.Type == condition.Type) == 1 => text,
        _ => $"{condition.Name} {text.Replace("∠", "", StringComparison.Ordinal)}",
    };

    // A phase belongs to the magnitude before it.
    private static string Join(IEnumerable<string> texts)
    {
        var line = new StringBuilder();
        foreach (var text in texts.Where(t => t.Length > 0))
            line.Append(line.Length == 0 ? "" : text.StartsWith('∠') ? " " : ", ").Append(text);
        return line.ToString();
    }

    private static string Member(Enum member)
    {
        var name = member.ToString();
        if (member.GetType().GetField(name)?.GetCustomAttribute<DescriptionAttribute>() is { } told)
            return told.Description;
        var words = new StringBuilder();
        foreach (var (i, letter) in name.Index())
            words.Append(i > 0 && char.IsUpper(letter) ? " " : "").Append(char.ToLowerInvariant(letter));
        return words.ToString();
    }

    // The compiler's own text of a record, "Load { Z = 4 Ohm }", is for programmers.
    private static bool TellsOnlyItsParts(Type type) =>
        type.GetMethod(nameof(ToString), Type.EmptyTypes)?.IsDefined(typeof(CompilerGeneratedAttribute), false) == true;

    // What it was made of; what follows from that would only be said again.
    private static IEnumerable<object> Parts(object value) => value.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance)
        .Where(p => p.GetIndexParameters().Length == 0 && IsMadeFrom(value.GetType(), p.Name)).Select(p => p.GetValue(value)).OfType<object>();

    private static bool IsMadeFrom(Type type, string property) => type.GetConstructors() is var makers && (makers.All(m => m.GetParameters().Length == 0)
        || makers.Any(m => m.GetParameters().Any(p => string.Equals(p.Name, property, StringComparison.OrdinalIgnoreCase))));
}
