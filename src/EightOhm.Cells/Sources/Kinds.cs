using Microsoft.CodeAnalysis;

namespace EightOhm.Cells.Sources;

/// <summary>What a type is to the reader: a plain value that settles when it is made, a thing that can change, the record.</summary>
internal sealed class Kinds(CellCode code)
{
    private readonly Dictionary<ITypeSymbol, bool> _plain = new(SymbolEqualityComparer.Default);
    private readonly Dictionary<ITypeSymbol, bool> _changing = new(SymbolEqualityComparer.Default);

    /// <summary>Whether a value of the type can neither change later nor hold what can: its sources are settled when it is made.</summary>
    public bool IsPlain(ITypeSymbol? type)
    {
        if (type is null || type.TypeKind == TypeKind.Error)
            return false;
        if (_plain.TryGetValue(type, out var known))
            return known;
        // A type that holds itself is judged by the rest of it.
        _plain[type] = true;
        return _plain[type] = Plain(type);
    }

    /// <summary>Whether a type of ours keeps something that its own calls can change.</summary>
    public bool Changes(ITypeSymbol? type)
    {
        if (type is not INamedTypeSymbol named || Root(named) != "EightOhm" || IsRecord(named) || code.IsOfACell(named))
            return false;
        if (_changing.TryGetValue(type, out var known))
            return known;
        _changing[type] = false;
        return _changing[type] = Fields(named).Any(f => (named.IsReferenceType && !f.IsReadOnly) || IsChangingCollection(f.Type) || Changes(f.Type));
    }

    /// <summary>Whether it is the design's record.</summary>
    public static bool IsRecord(ITypeSymbol? type) => type is { Name: "DesignRecord", ContainingNamespace: { Name: "Record", ContainingNamespace.Name: "EightOhm" } };

    /// <summary>Whether the cells show its inside: then its members are told apart.</summary>
    public bool IsVisible(ITypeSymbol type) => type.IsTupleType || type.IsAnonymousType || (type.TypeKind is TypeKind.Class or TypeKind.Struct && code.IsOfACell(type));

    /// <summary>Whether a value of the type is a function.</summary>
    public static bool IsFunction(ITypeSymbol? type) => type is { TypeKind: TypeKind.Delegate } or { Name: "Expression" or "LambdaExpression", ContainingNamespace.Name: "Expressions" };

    /// <summary>The first part of a symbol's namespace.</summary>
    public static string Root(ISymbol symbol)
    {
        var space = symbol.ContainingNamespace;
        while (space is { IsGlobalNamespace: false, ContainingNamespace.IsGlobalNamespace: false })
            space = space.ContainingNamespace;
        return space?.Name ?? "";
    }

    /// <summary>What a collection holds, as far as its type says; empty when it does not.</summary>
    public static IReadOnlyList<ITypeSymbol> ItemsOf(ITypeSymbol? type) => type switch
    {
        IArrayTypeSymbol array => [array.ElementType],
        INamedTypeSymbol { IsGenericType: true } named when Root(named) == "System" && !IsFunction(named) => named.TypeArguments,
        _ => [],
    };

    private bool Plain(ITypeSymbol type)
    {
        if (type.SpecialType is SpecialType.System_Void or SpecialType.System_String or SpecialType.System_DateTime or (>= SpecialType.System_Boolean and <= SpecialType.System_Double))
            return true;
        if (type.SpecialType != SpecialType.None && type.OriginalDefinition.SpecialType != SpecialType.System_Nullable_T)
            return false;
        if (type is not INamedTypeSymbol named || type.IsTupleType || type.IsAnonymousType || type.IsRefLikeType)
            return false;
        if (type.TypeKind == TypeKind.Enum)
            return true;
        if (code.IsOfACell(type) || IsRecord(type))
            return false;
        if (Root(type) == "UnitsNet" && type.IsValueType)
            return true;
        return type.TypeKind switch
        {
            TypeKind.Struct => Fields(named).All(f => IsPlain(f.Type)),
            TypeKind.Class => type.IsSealed && named.BaseType is not null && Fields(named).All(f => f.IsReadOnly && IsPlain(f.Type)),
            _ => false,
        };
    }

    private static IEnumerable<IFieldSymbol> Fields(INamedTypeSymbol type)
    {
        for (INamedTypeSymbol? at = type; at is not null && at.SpecialType != SpecialType.System_Object; at = at.BaseType)
        {
            foreach (var field in at.GetMembers().OfType<IFieldSymbol>().Where(f => f is { IsStatic: false, IsConst: false }))
                yield return field;
        }
    }

    private static bool IsChangingCollection(ITypeSymbol type) =>
        type is INamedTypeSymbol { TypeKind: TypeKind.Class } && type.ContainingNamespace?.ToDisplayString() is "System.Collections.Generic" or "System.Collections.Concurrent" or "System.Collections" or "System.Text";
}
