using Microsoft.CodeAnalysis;

namespace EightOhm.Cells.Editing;

/// <summary>How a symbol is declared, in short: names without their namespaces.</summary>
internal static class SymbolWords
{
    private const SymbolDisplayMiscellaneousOptions Plain = SymbolDisplayMiscellaneousOptions.UseSpecialTypes | SymbolDisplayMiscellaneousOptions.EscapeKeywordIdentifiers
        | SymbolDisplayMiscellaneousOptions.UseErrorTypeSymbolName | SymbolDisplayMiscellaneousOptions.AllowDefaultLiteral | SymbolDisplayMiscellaneousOptions.IncludeNullableReferenceTypeModifier;

    private static readonly SymbolDisplayFormat Short = new(
        genericsOptions: SymbolDisplayGenericsOptions.IncludeTypeParameters,
        memberOptions: SymbolDisplayMemberOptions.IncludeParameters,
        parameterOptions: SymbolDisplayParameterOptions.IncludeType | SymbolDisplayParameterOptions.IncludeName | SymbolDisplayParameterOptions.IncludeParamsRefOut | SymbolDisplayParameterOptions.IncludeDefaultValue,
        miscellaneousOptions: Plain);

    /// <summary>The whole of it: VoltageNoiseDensity ThermalNoise.VoltageDensity(ElectricResistance R, Temperature T).</summary>
    public static string Signature(ISymbol symbol) => symbol switch
    {
        IMethodSymbol { MethodKind: MethodKind.Constructor } made => $"new {Named(made.ContainingType)}({Parameters(made.Parameters)})",
        IMethodSymbol { MethodKind: MethodKind.DelegateInvoke } called => $"{Named(called.ReturnType)} {Named(called.ContainingType)}({Parameters(called.Parameters)})",
        IMethodSymbol { MethodKind: MethodKind.BuiltinOperator or MethodKind.UserDefinedOperator or MethodKind.Conversion } @operator => @operator.ToDisplayString(Short.WithMemberOptions(SymbolDisplayMemberOptions.IncludeParameters | SymbolDisplayMemberOptions.IncludeType)),
        IMethodSymbol method => $"{Named(method.ReturnType)} {Owner(method)}{method.ToDisplayString(Short)}",
        IPropertySymbol { IsIndexer: true } indexer => $"{Named(indexer.Type)} {Named(indexer.ContainingType)}[{Parameters(indexer.Parameters)}]",
        IPropertySymbol or IFieldSymbol or IEventSymbol => $"{Named(TypeOf(symbol)!)} {Owner(symbol)}{symbol.Name}",
        ILocalSymbol or IParameterSymbol or IRangeVariableSymbol => TypeOf(symbol) is { } type ? $"{Named(type)} {symbol.Name}" : symbol.Name,
        INamedTypeSymbol type => $"{KindOf(type)} {Named(type)}",
        INamespaceSymbol space => $"namespace {space.ToDisplayString()}",
        _ => symbol.ToDisplayString(Short),
    };

    /// <summary>What there is to say behind its name in a list: its type, or what it asks for and gives.</summary>
    public static string Detail(ISymbol symbol, int forms) => symbol switch
    {
        IMethodSymbol method => $"({Parameters(method.Parameters)}) → {Named(method.ReturnType)}{(forms > 1 ? $", {forms} forms" : "")}",
        INamedTypeSymbol type => KindOf(type),
        INamespaceSymbol => "namespace",
        _ => TypeOf(symbol) is { } type ? Named(type) : "",
    };

    /// <summary>A parameter as it stands in <see cref="Signature"/>.</summary>
    public static string Parameter(IParameterSymbol parameter) => parameter.ToDisplayString(Short);

    /// <summary>The type of a value; null for what is none.</summary>
    public static ITypeSymbol? TypeOf(ISymbol symbol) => symbol switch
    {
        IPropertySymbol property => property.Type,
        IFieldSymbol field => field.Type,
        IEventSymbol @event => @event.Type,
        ILocalSymbol local => local.Type,
        IParameterSymbol parameter => parameter.Type,
        IMethodSymbol { MethodKind: MethodKind.Constructor } made => made.ContainingType,
        IMethodSymbol method => method.ReturnType,
        _ => null,
    };

    private static string Named(ITypeSymbol type) => type.ToDisplayString(Short);

    private static string Parameters(IEnumerable<IParameterSymbol> parameters) => string.Join(", ", parameters.Select(Parameter));

    // A cell's own variables and functions stand for themselves; what extends a type belongs to that type.
    private static string Owner(ISymbol member) => member.ContainingType switch
    {
        null or { IsScriptClass: true } => "",
        { IsExtension: true, ExtensionParameter: { } extended } => $"{Named(extended.Type)}.",
        _ when member is IMethodSymbol { MethodKind: MethodKind.LocalFunction } => "",
        _ when member is IMethodSymbol { ReducedFrom: not null, ReceiverType: { } receiver } => $"{Named(receiver)}.",
        { } type => $"{Named(type)}.",
    };

    private static string KindOf(INamedTypeSymbol type) => type switch
    {
        { IsRecord: true, IsValueType: true } => "record struct",
        { IsRecord: true } => "record",
        _ => type.TypeKind switch
        {
            TypeKind.Struct => "struct",
            TypeKind.Interface => "interface",
            TypeKind.Enum => "enum",
            TypeKind.Delegate => "delegate",
            _ => "class",
        },
    };
}
