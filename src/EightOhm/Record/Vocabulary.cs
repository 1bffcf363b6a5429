using System.Collections.Concurrent;
using System.Linq.Expressions;
using System.Reflection;
using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Record;

/// <summary>Everything that a rule may use. A record can name only what stands here, so that loading one runs nothing else.</summary>
internal static class Vocabulary
{
    private const BindingFlags Public = BindingFlags.Public | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly;

    // Every change writes every rule: looking each name up by reflection again took most of a save.
    private static readonly ConcurrentDictionary<MemberInfo, string?> Names = new();

    /// <summary>The operators with one or two operands.</summary>
    public static IReadOnlyDictionary<string, ExpressionType> Operators { get; } =
        FormulaOperator.All.Select(o => Enum.Parse<ExpressionType>(o.Node)).ToDictionary(o => o.ToString(), StringComparer.Ordinal);

    /// <summary>A function's or constructor's name in a record, or null when a rule may not use it.</summary>
    public static string? NameOf(MethodBase method) => Names.GetOrAdd(method, static m => IsAllowed((MethodBase)m) ? Signature((MethodBase)m) : null);

    /// <summary>A property's name in a record, or null when a rule may not use it.</summary>
    public static string? NameOf(PropertyInfo property) =>
        Names.GetOrAdd(property, static p => IsAllowed((PropertyInfo)p) ? $"{TypeNames.Owner(p.DeclaringType)}.{p.Name}" : null);

    /// <summary>The function of a name, or null.</summary>
    public static MethodInfo? Method(string name) => Owner(name, name.IndexOf('(', StringComparison.Ordinal))?.GetMethods(Public)
        .FirstOrDefault(m => name.Contains($".{m.Name}(", StringComparison.Ordinal) && NameOf(m) == name);

    /// <summary>The constructor of a name, or null.</summary>
    public static ConstructorInfo? Constructor(string name) => name.IndexOf('(', StringComparison.Ordinal) is > 0 and var end
        ? TypeNames.Find(name[..end])?.GetConstructors().FirstOrDefault(c => NameOf(c) == name)
        : null;

    /// <summary>The property of a name, or null.</summary>
    public static PropertyInfo? Property(string name) => Owner(name, name.Length)?.GetProperties(Public)
        .FirstOrDefault(p => NameOf(p) == name);

    private static Type? Owner(string name, int end) => end > 0 && name.LastIndexOf('.', end - 1) is > 0 and var dot
        ? TypeNames.FindOwner(name[..dot])
        : null;

    private static bool IsAllowed(MethodBase method)
    {
        if (method.DeclaringType is not { } owner || !method.IsPublic || method.IsGenericMethod || method.IsDefined(typeof(ObsoleteAttribute), false))
            return false;
        if (method.GetParameters().Any(p => TypeNames.Of(p.ParameterType) is null))
            return false;
        if (method is ConstructorInfo)
            return TypeNames.IsOwn(owner) && TypeNames.Of(owner) is not null;
        if (TypeNames.Of(((MethodInfo)method).ReturnType) is null || method.Name == nameof(GetHashCode))
            return false;
        if (TypeNames.IsOwn(owner))
            return method.IsStatic || TypeNames.Of(owner) is not null;
        // UnitsNet and the framework: operators, and a quantity made from a number. Nothing else of theirs.
        return method.IsStatic && TypeNames.Of(owner) is not null
            && (method.Name.StartsWith("op_", StringComparison.Ordinal)
                || (QuantityKinds.Find(owner) is not null && typeof(IQuantity).IsAssignableFrom(owner)
                    && method.Name.StartsWith("From", StringComparison.Ordinal) && ((MethodInfo)method).ReturnType == owner));
    }

    private static bool IsAllowed(PropertyInfo property) =>
        property.DeclaringType is { } owner && property.GetMethod is { IsPublic: true } && property.GetIndexParameters().Length == 0
        && !property.IsDefined(typeof(ObsoleteAttribute), false) && TypeNames.Of(property.PropertyType) is not null
        && (TypeNames.IsOwn(owner) || (QuantityKinds.Find(owner) is not null && typeof(IQuantity).IsAssignableFrom(owner)));

    private static string Signature(MethodBase method)
    {
        var parameters = string.Join(", ", method.GetParameters().Select(p => TypeNames.Of(p.ParameterType)));
        var owner = TypeNames.Owner(method.DeclaringType);
        // Conversions differ by what they return alone.
        return method is MethodInfo { Name: "op_Implicit" or "op_Explicit" } conversion
            ? $"{owner}.{method.Name}({parameters}) -> {TypeNames.Of(conversion.ReturnType)}"
            : method is ConstructorInfo ? $"{owner}({parameters})" : $"{owner}.{method.Name}({parameters})";
    }
}
