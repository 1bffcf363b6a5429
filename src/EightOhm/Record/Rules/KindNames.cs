using System.Reflection;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Record;

/// <summary>The names of kinds and of the other types that a rule's values may have. Names of our own types stay when the code is renamed (<see cref="RecordNameAttribute"/>).</summary>
internal static class KindNames
{
    private static readonly Type[] Others = [typeof(bool), typeof(long), typeof(decimal), typeof(QuantityValue)];
    private static readonly Dictionary<Type, string> Known = QuantityKinds.All.Select(k => k.Type).Concat(Others).ToDictionary(t => t, NameOf);
    private static readonly Dictionary<string, Type> Types = Named();

    /// <summary>The name of a kind.</summary>
    public static string Of(QuantityKind kind) => Known[kind.Type];

    /// <summary>The name of a kind's type; of another type its own, for a message.</summary>
    public static string Of(Type type) => Name(type) ?? Devices.CardKinds.Find(type)?.InWords ?? type.Name;

    /// <summary>The name of a type whose values a rule may hold, or null: a kind, a number, or a list of one of those.</summary>
    public static string? Name(Type type)
    {
        if (Known.TryGetValue(type, out var name))
            return name;
        if (type.IsSZArray)
            return Known.TryGetValue(type.GetElementType()!, out var element) ? element + "[]" : null;
        return type.IsConstructedGenericType && type.GetGenericTypeDefinition() == typeof(IReadOnlyList<>) && Known.TryGetValue(type.GetGenericArguments()[0], out var item)
            ? $"IReadOnlyList<{item}>"
            : null;
    }

    /// <summary>The kind of a name, also of one it had before; or null.</summary>
    public static QuantityKind? Find(string name) => Types.TryGetValue(name, out var type) ? QuantityKinds.Find(type) : null;

    /// <summary>The type of a name, or null. A list holds single values only, so that no name is deeper than the stack.</summary>
    public static Type? Type(string name)
    {
        if (Types.TryGetValue(name, out var type))
            return type;
        if (name.EndsWith("[]", StringComparison.Ordinal))
            return Types.GetValueOrDefault(name[..^2])?.MakeArrayType();
        return name.StartsWith("IReadOnlyList<", StringComparison.Ordinal) && name.EndsWith('>') && Types.TryGetValue(name[14..^1], out var item)
            ? typeof(IReadOnlyList<>).MakeGenericType(item)
            : null;
    }

    /// <summary>Whether it can be computed with without any method.</summary>
    public static bool IsPrimitive(Type type) => type == typeof(double) || type == typeof(int) || type == typeof(long) || type == typeof(bool);

    private static string NameOf(Type type) => type.GetCustomAttribute<RecordNameAttribute>()?.Name ?? type.Name;

    private static Dictionary<string, Type> Named()
    {
        var types = new Dictionary<string, Type>(StringComparer.Ordinal);
        foreach (var (type, name) in Known)
        {
            types.Add(name, type);
            foreach (var other in type.GetCustomAttribute<RecordNameAttribute>()?.Others ?? [])
                types.Add(other, type);
        }

        return types;
    }
}
