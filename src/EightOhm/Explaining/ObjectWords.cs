using System.Collections;
using System.Reflection;
using System.Runtime.CompilerServices;
using EightOhm.Quantities;

namespace EightOhm.Explaining;

/// <summary>What a value that is no quantity reads as in a line of working: a list as its items, an object as what it is with its first figures.</summary>
internal static class ObjectWords
{
    private const int Longest = 80;
    private const int Figures = 4;
    private const int Most = 12;

    public static string Of(object? value) => value switch
    {
        null => "none",
        string text => text,
        bool truth => truth ? "true" : "false",
        _ when QuantityKinds.Find(value.GetType()) is not null => QuantityFormat.Short(value),
        IEnumerable list => Items([.. list.Cast<object?>().Take(Most + 1)]),
        _ when OwnWords(value) is { } words => words,
        ITuple tuple => $"({string.Join(", ", Enumerable.Range(0, tuple.Length).Select(i => Of(tuple[i])))})",
        _ => Described(value),
    };

    private static string Items(IReadOnlyList<object?> items) => string.Join(", ", items.Take(Most).Select(Of)) + (items.Count > Most ? ", …" : "");

    // A record's own text is a list of all its members, which is no sentence.
    private static string? OwnWords(object value)
    {
        var type = value.GetType();
        var method = type.GetMethod(nameof(ToString), Type.EmptyTypes)!;
        if (method.DeclaringType == typeof(object) || (method.DeclaringType == typeof(ValueType) && !type.IsEnum) || method.IsDefined(typeof(CompilerGeneratedAttribute)) || value is ITuple)
            return null;
        var text = value.ToString() ?? "";
        return text.Length <= Longest && !text.Contains('\n', StringComparison.Ordinal) ? text : null;
    }

    // What the object was made of, as it was written; where it was made otherwise, its first figures.
    private static string Described(object value)
    {
        var type = value.GetType();
        var made = type.GetConstructors().SelectMany(c => c.GetParameters()).Select(p => p.Name ?? "").ToHashSet(StringComparer.OrdinalIgnoreCase);
        var all = type.GetProperties(BindingFlags.Public | BindingFlags.Instance)
            .Where(p => p.GetIndexParameters().Length == 0 && !p.IsDefined(typeof(FormulaAttribute)) && !p.IsDefined(typeof(WorkedAttribute)) && QuantityKinds.Find(p.PropertyType) is not null)
            .ToList();
        var given = all.Where(p => made.Contains(p.Name)).ToList();
        var figures = (given.Count > 0 ? given : all).Take(Figures)
            .Select(p => $"{MathText.Name(p.GetCustomAttribute<SymbolAttribute>()?.Text ?? p.Name)} = {Figure(p, value)}").ToList();
        return figures.Count == 0 ? Words(type.Name) : $"{Words(type.Name)} with {string.Join(", ", figures)}";
    }

    private static string Figure(PropertyInfo property, object value)
    {
        try
        {
            return Of(property.GetValue(value));
        }
        catch (TargetInvocationException)
        {
            return "none";
        }
    }

    // "OutputRating" is an output rating.
    private static string Words(string name)
    {
        var plain = name.Split('`')[0];
        var text = new System.Text.StringBuilder();
        for (var i = 0; i < plain.Length; i++)
        {
            var starts = i > 0 && char.IsUpper(plain[i]) && (!char.IsUpper(plain[i - 1]) || (i + 1 < plain.Length && char.IsLower(plain[i + 1])));
            var single = char.IsUpper(plain[i]) && (i + 1 == plain.Length || char.IsUpper(plain[i + 1]));
            text.Append(starts ? " " : "").Append(single ? plain[i] : char.ToLowerInvariant(plain[i]));
        }

        return text.ToString();
    }
}
