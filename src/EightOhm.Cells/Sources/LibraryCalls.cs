using System.Collections.Frozen;
using Microsoft.CodeAnalysis;

namespace EightOhm.Cells.Sources;

/// <summary>What a call into a library may change.</summary>
internal enum Change
{
    /// <summary>Nothing that a cell can see.</summary>
    Nothing,

    /// <summary>The object it is called on.</summary>
    Receiver,

    /// <summary>Whatever it is given, and whatever that holds.</summary>
    All,

    /// <summary>All that, and files or the process, where it may also read.</summary>
    World,
}

/// <summary>What is known of libraries' calls. What is not listed may change all that it is given.</summary>
internal static class LibraryCalls
{
    private static readonly FrozenSet<string> Reading = FrozenSet.Create(StringComparer.Ordinal,
        "ToString", "Equals", "GetHashCode", "GetType", "CompareTo", "Compare", "GetEnumerator", "GetAsyncEnumerator", "MoveNext", "MoveNextAsync", "Dispose", "DisposeAsync");

    private static readonly FrozenSet<string> ReadingCollections = FrozenSet.Create(StringComparer.Ordinal,
        "Contains", "ContainsKey", "ContainsValue", "IndexOf", "LastIndexOf", "TryGetValue", "Find", "FindAll", "FindIndex", "FindLast", "FindLastIndex", "Exists",
        "TrueForAll", "ToArray", "BinarySearch", "GetRange", "ConvertAll", "ForEach", "Peek", "TryPeek", "AsReadOnly", "GetValueOrDefault", "Deconstruct");

    private static readonly FrozenSet<string> ReadingSpaces = FrozenSet.Create(StringComparer.Ordinal,
        "System.Linq", "System.Linq.Expressions", "System.Collections.Immutable", "System.Collections.Frozen", "System.Numerics", "System.Globalization", "System.Text.RegularExpressions",
        "System.Threading.Tasks", "System.Runtime.CompilerServices", "System.Diagnostics");

    private static readonly FrozenSet<string> ReadingTypes = FrozenSet.Create(StringComparer.Ordinal,
        "Object", "String", "Math", "MathF", "Convert", "Enum", "Tuple", "ValueTuple", "Nullable", "DateTime", "DateTimeOffset", "DateOnly", "TimeOnly", "TimeSpan", "Guid", "Random", "Char", "Boolean",
        "Byte", "SByte", "Int16", "UInt16", "Int32", "UInt32", "Int64", "UInt64", "Half", "Single", "Double", "Decimal", "Int128", "UInt128", "BitConverter", "StringComparer", "Type", "Version", "Uri",
        "Lazy", "Index", "Range", "Exception", "ArgumentException", "ArgumentOutOfRangeException", "ArgumentNullException", "InvalidOperationException", "ReadOnlySpan", "ReadOnlyMemory", "MemoryExtensions", "IFormattable");

    /// <summary>Calls of LINQ that give an object of their own, with the items as they are now.</summary>
    private static readonly FrozenSet<string> Fresh = FrozenSet.Create(StringComparer.Ordinal, "ToArray", "ToList", "ToDictionary", "ToHashSet", "ToLookup");

    /// <summary>Calls of LINQ that look at the items only through a function.</summary>
    private static readonly FrozenSet<string> Summaries = FrozenSet.Create(StringComparer.Ordinal, "Sum", "Average", "Min", "Max", "Count", "LongCount", "Any", "All");

    /// <summary>What a call may change.</summary>
    public static Change Of(IMethodSymbol? method)
    {
        if (method is null)
            return Change.World;
        var type = method.ContainingType;
        if (Kinds.Root(method) is "EightOhm" or "UnitsNet")
            return Change.Nothing;
        var space = method.ContainingNamespace?.ToDisplayString() ?? "";
        if (space.StartsWith("System.IO", StringComparison.Ordinal) && type.Name != "Path")
            return Change.World;
        if (space == "System" && type.Name is "Console" or "Environment" or "AppContext" or "AppDomain")
            return Change.World;
        if (Reading.Contains(method.Name) || ReadingSpaces.Contains(space) || space.StartsWith("Microsoft.DotNet.Interactive", StringComparison.Ordinal))
            return Change.Nothing;
        if (space == "System" && ReadingTypes.Contains(type.Name))
            return Change.Nothing;
        if (space is "System.Collections.Generic" or "System.Collections" or "System.Collections.ObjectModel" or "System.Collections.Concurrent")
            return ReadingCollections.Contains(method.Name) || method.MethodKind == MethodKind.Constructor ? Change.Nothing : Change.Receiver;
        if (space == "System.Text" && type.Name == "StringBuilder")
            return method.MethodKind == MethodKind.Constructor ? Change.Nothing : Change.Receiver;
        return Change.All;
    }

    /// <summary>Whether the result is a new collection with the items as they are now, however lazy the source.</summary>
    public static bool IsFresh(IMethodSymbol? method) =>
        method is { ContainingType.Name: "Enumerable" } ? Fresh.Contains(method.Name)
        : method is { MethodKind: MethodKind.Constructor } && method.ContainingNamespace?.ToDisplayString() is "System.Collections.Generic" or "System.Collections";

    /// <summary>Whether the result is computed from what a function gives for each item, and from nothing else of the items.</summary>
    public static bool IsSummary(IMethodSymbol? method) =>
        method is { ContainingType.Name: "Enumerable", ReturnType.IsValueType: true } && Summaries.Contains(method.Name) && method.Parameters.Any(p => Kinds.IsFunction(p.Type));

    /// <summary>Whether nothing of the functions that it is given runs before the result is enumerated.</summary>
    public static bool IsLazy(IMethodSymbol? method) =>
        method is { ContainingType.Name: "Enumerable", ReturnType.Name: "IEnumerable" or "IOrderedEnumerable" };

    /// <summary>Whether a call hands strings on but makes none: LINQ and collections.</summary>
    public static bool HandsStringsOn(IMethodSymbol? method) =>
        method is not null && (method.ContainingType.Name is "Enumerable" or "Array" or "KeyValuePair" or "Tuple" || method.ContainingNamespace?.ToDisplayString() is { } space
            && (space.StartsWith("System.Collections", StringComparison.Ordinal) || space.StartsWith("System.Linq", StringComparison.Ordinal)));
}
