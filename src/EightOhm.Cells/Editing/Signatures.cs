using System.Collections.Immutable;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace EightOhm.Cells.Editing;

/// <summary>What the call around a place of a cell asks for.</summary>
internal static class Signatures
{
    /// <summary>The forms of the innermost call whose brackets hold the place; null where there is none.</summary>
    public static async Task<SignatureAnswer?> At(Document document, int offset, CancellationToken ct)
    {
        var root = (await document.GetSyntaxRootAsync(ct).ConfigureAwait(false))!;
        if (offset == 0 || List(root, offset) is not { } list)
            return null;
        var model = (await document.GetSemanticModelAsync(ct).ConfigureAwait(false))!;
        var forms = Forms(model, list.Parent!, offset).DistinctBy(SymbolWords.Signature).OrderBy(f => Parameters(f).Length).ToList();
        if (forms.Count == 0)
            return null;
        var arguments = Arguments(list);
        var at = Math.Max(0, Separators(list).Count(s => s.Span.End <= offset));
        var active = Active(model, list.Parent!, forms, arguments, at);
        return new([.. forms.Select(Shown)], active, Parameter(Parameters(forms[active]), arguments, at));
    }

    /// <summary>The parameters of the innermost call whose brackets hold the place, of all its forms.</summary>
    public static IEnumerable<IParameterSymbol> ParametersAt(SemanticModel model, SyntaxNode root, int offset) =>
        offset > 0 && List(root, offset) is { } list ? Forms(model, list.Parent!, offset).SelectMany(f => Parameters(f)) : [];

    // From the inside out: the caret is behind the opening bracket and not behind the closing one.
    private static SyntaxNode? List(SyntaxNode root, int offset)
    {
        for (var node = root.FindToken(offset - 1).Parent; node is not null; node = node.Parent)
        {
            // A block of its own is not the call's any more.
            if (node is BlockSyntax)
                return null;
            var (open, close) = node switch
            {
                BaseArgumentListSyntax arguments => (arguments.GetFirstToken(), arguments.GetLastToken(includeZeroWidth: true)),
                AttributeArgumentListSyntax arguments => (arguments.OpenParenToken, arguments.CloseParenToken),
                _ => default,
            };
            if (!open.IsKind(SyntaxKind.None) && open.Span.End <= offset && (close.IsMissing || offset <= close.SpanStart))
                return node;
        }

        return null;
    }

    private static IEnumerable<ISymbol> Forms(SemanticModel model, SyntaxNode call, int offset)
    {
        var found = call switch
        {
            InvocationExpressionSyntax invoked => model.GetMemberGroup(invoked.Expression) is { Length: > 0 } group ? group : Invoked(model.GetTypeInfo(invoked.Expression).Type),
            BaseObjectCreationExpressionSyntax made => Constructors(model.GetTypeInfo(made).Type ?? model.GetTypeInfo(made).ConvertedType),
            ElementAccessExpressionSyntax element => Indexers(model.GetTypeInfo(element.Expression).Type),
            PrimaryConstructorBaseTypeSyntax based => Constructors(model.GetTypeInfo(based.Type).Type),
            ConstructorInitializerSyntax initializer => [.. model.GetSymbolInfo(initializer) is var info && info.Symbol is { } one ? [one] : info.CandidateSymbols],
            AttributeSyntax attribute => Constructors(model.GetTypeInfo(attribute).Type),
            _ => [],
        };
        return found.Where(f => model.IsAccessible(offset, f));
    }

    private static ImmutableArray<ISymbol> Invoked(ITypeSymbol? type) => type is INamedTypeSymbol { DelegateInvokeMethod: { } invoke } ? [invoke] : [];

    private static ImmutableArray<ISymbol> Constructors(ITypeSymbol? type) => type is INamedTypeSymbol { TypeKind: not TypeKind.Error } made ? [.. made.InstanceConstructors.Where(c => !IsCopy(c))] : [];

    // A record's own copy constructor, which nobody calls.
    private static bool IsCopy(IMethodSymbol constructor) =>
        constructor.ContainingType.IsRecord && constructor.Parameters is [var only] && SymbolEqualityComparer.Default.Equals(only.Type, constructor.ContainingType);

    private static ImmutableArray<ISymbol> Indexers(ITypeSymbol? type)
    {
        // An array's index needs no words.
        if (type is null or IArrayTypeSymbol)
            return [];
        for (var at = type; at is not null; at = at.BaseType)
        {
            if (at.GetMembers().OfType<IPropertySymbol>().Where(p => p.IsIndexer).ToList() is { Count: > 0 } own)
                return [.. own];
        }

        return [.. type.AllInterfaces.SelectMany(i => i.GetMembers()).OfType<IPropertySymbol>().Where(p => p.IsIndexer)];
    }

    private static ImmutableArray<IParameterSymbol> Parameters(ISymbol form) => form switch { IMethodSymbol method => method.Parameters, IPropertySymbol property => property.Parameters, _ => [] };

    private static List<(string? Name, ExpressionSyntax Value)> Arguments(SyntaxNode list) => list switch
    {
        BaseArgumentListSyntax arguments => [.. arguments.Arguments.Select(a => (a.NameColon?.Name.Identifier.ValueText, a.Expression))],
        AttributeArgumentListSyntax arguments => [.. arguments.Arguments.Select(a => (a.NameColon?.Name.Identifier.ValueText, a.Expression))],
        _ => [],
    };

    private static IEnumerable<SyntaxToken> Separators(SyntaxNode list) => list switch
    {
        BaseArgumentListSyntax arguments => arguments.Arguments.GetSeparators(),
        AttributeArgumentListSyntax arguments => arguments.Arguments.GetSeparators(),
        _ => [],
    };

    // What the compiler takes, if it takes one; else the first with room for what is written, its arguments of kinds that fit.
    private static int Active(SemanticModel model, SyntaxNode call, List<ISymbol> forms, List<(string? Name, ExpressionSyntax Value)> arguments, int at)
    {
        if (model.GetSymbolInfo(call).Symbol is { } taken && forms.FindIndex(f => SymbolEqualityComparer.Default.Equals(f, taken)) is >= 0 and var exact)
            return exact;
        var best = forms.Select((form, i) => (Index: i, Score: Score(model, Parameters(form), arguments, at))).MaxBy(f => f.Score);
        return best.Index;
    }

    private static int Score(SemanticModel model, ImmutableArray<IParameterSymbol> parameters, List<(string? Name, ExpressionSyntax Value)> arguments, int at)
    {
        var score = at < parameters.Length || (parameters.Length > 0 && parameters[^1].IsParams) || (at == 0 && parameters.Length == 0 && arguments.Count == 0) ? 100 : 0;
        for (var i = 0; i < arguments.Count; i++)
        {
            if (arguments[i].Value.IsMissing || Index(parameters, arguments[i].Name, i) is not { } index)
                continue;
            var conversion = model.ClassifyConversion(arguments[i].Value, parameters[index].Type);
            score += conversion is { Exists: true, IsImplicit: true } ? conversion.IsIdentity ? 3 : 2 : i == at ? 0 : -5;
        }

        return score;
    }

    private static int? Index(ImmutableArray<IParameterSymbol> parameters, string? name, int i)
    {
        if (name is not null)
            return parameters.FirstOrDefault(p => p.Name == name)?.Ordinal;
        return i < parameters.Length ? i : parameters.Length > 0 && parameters[^1].IsParams ? parameters.Length - 1 : null;
    }

    private static int Parameter(ImmutableArray<IParameterSymbol> parameters, List<(string? Name, ExpressionSyntax Value)> arguments, int at) =>
        Index(parameters, at < arguments.Count ? arguments[at].Name : null, at) ?? -1;

    private static Signature Shown(ISymbol form)
    {
        var docs = new SymbolDocs(form);
        return new(SymbolWords.Signature(form), [.. Parameters(form).Select(p => new SignatureParameter(SymbolWords.Parameter(p), docs.Of(p)))], docs.Summary);
    }
}
