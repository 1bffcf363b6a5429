using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Record;

/// <summary>The types whose values a rule may hold, and their names in a record: quantities, numbers, lists of them, and EightOhm's own data types.</summary>
internal static class TypeNames
{
    private static readonly Dictionary<string, Type> Others = new Type[] { typeof(bool), typeof(long), typeof(decimal), typeof(QuantityValue) }
        .ToDictionary(t => t.Name, StringComparer.Ordinal);

    /// <summary>The name of a type that a rule may hold, or null.</summary>
    public static string? Of(Type type)
    {
        if (type.IsSZArray)
            return Of(type.GetElementType()!) is { } element ? element + "[]" : null;
        if (type.IsConstructedGenericType && type.GetGenericTypeDefinition() == typeof(IReadOnlyList<>))
            return Of(type.GetGenericArguments()[0]) is { } item ? $"IReadOnlyList<{item}>" : null;
        if (QuantityKinds.Find(type) is { } kind)
            return kind.Name;
        return Others.ContainsValue(type) ? type.Name : IsData(type) ? type.FullName : null;
    }

    /// <summary>The type of a name, or null; never a type outside the list.</summary>
    public static Type? Find(string name)
    {
        if (name.EndsWith("[]", StringComparison.Ordinal))
            return Find(name[..^2])?.MakeArrayType();
        if (name.StartsWith("IReadOnlyList<", StringComparison.Ordinal) && name.EndsWith('>'))
            return Find(name[14..^1]) is { } item ? typeof(IReadOnlyList<>).MakeGenericType(item) : null;
        if (QuantityKinds.Find(name) is { } kind)
            return kind.Type;
        return Others.GetValueOrDefault(name) ?? (Own(name) is { } type && IsData(type) ? type : null);
    }

    /// <summary>The name under which a type's functions go: also the house's static classes, which hold no value.</summary>
    public static string? Owner(Type? type) => type is null ? null : Of(type) ?? (IsOwn(type) ? type.FullName : null);

    /// <summary>The type whose functions go under a name, or null.</summary>
    public static Type? FindOwner(string name) => Find(name) ?? (Own(name) is { } type && IsOwn(type) ? type : null);

    /// <summary>Whether a plain number can be computed with without any method.</summary>
    public static bool IsPrimitive(Type type) => type == typeof(double) || type == typeof(int) || type == typeof(long) || type == typeof(bool);

    /// <summary>A public type of the house, outside the record itself.</summary>
    public static bool IsOwn(Type type) =>
        type.Assembly == typeof(QuantityFormat).Assembly && type is { IsPublic: true, IsGenericTypeDefinition: false, IsConstructedGenericType: false }
        && type.Namespace is { } space && (space == "EightOhm" || space.StartsWith("EightOhm.", StringComparison.Ordinal))
        && type.Namespace != typeof(TypeNames).Namespace;

    // Enumerations and C# records: immutable values, no handles to the world.
    private static bool IsData(Type type) => IsOwn(type)
        && (type.IsEnum || type.GetMethod("PrintMembers", System.Reflection.BindingFlags.Instance | System.Reflection.BindingFlags.NonPublic) is not null);

    private static Type? Own(string name) => typeof(QuantityFormat).Assembly.GetType(name, throwOnError: false);
}
