using System.Collections.Frozen;
using System.Net;
using EightOhm.Quantities;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Completion;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Recommendations;
using Microsoft.CodeAnalysis.Tags;
using Microsoft.CodeAnalysis.Text;

namespace EightOhm.Cells.Editing;

/// <summary>The names that may stand at a place of a cell.</summary>
internal static class Completions
{
    private const int Most = 200;
    private const int Described = 20;

    // What every object has, and nobody looks for.
    private static readonly FrozenSet<string> ObjectMembers = FrozenSet.Create(StringComparer.Ordinal, nameof(Equals), nameof(GetHashCode), nameof(GetType), nameof(ToString), nameof(ReferenceEquals), nameof(MemberwiseClone));

    /// <summary>The names, the likeliest first.</summary>
    public static async Task<CompletionAnswer> At(Document document, int offset, CancellationToken ct)
    {
        var none = new CompletionAnswer([], offset, offset);
        var root = (await document.GetSyntaxRootAsync(ct).ConfigureAwait(false))!;
        // A number that is being typed is no name.
        if (offset > 0 && root.FindToken(offset - 1) is var token && token.IsKind(SyntaxKind.NumericLiteralToken) && token.Span.Contains(offset - 1))
            return none;
        var service = CompletionService.GetService(document)!;
        var found = await service.GetCompletionsAsync(document, offset, CompletionTrigger.Invoke, cancellationToken: ct).ConfigureAwait(false);
        if (found.ItemsList.Count == 0)
            return none;
        var text = await document.GetTextAsync(ct).ConfigureAwait(false);
        var typed = text.ToString(TextSpan.FromBounds(found.Span.Start, Math.Max(found.Span.Start, offset)));
        var symbols = await Symbols(document, offset, ct).ConfigureAwait(false);
        var ranked =
            from item in found.ItemsList
            where !item.IsComplexTextEdit
            let fit = NameMatch.Of(item.FilterText, typed)
            where fit is not null
            let meant = symbols[Label(item)].ToList()
            orderby fit, item.Rules.MatchPriority > MatchPriority.Default ? 0 : 1, Origin(item, meant), item.SortText.ToUpperInvariant(), item.DisplayText.Length
            select (Item: item, Meant: meant);
        var entries = new List<CompletionEntry>(Most);
        // A generic form of a name stands beside the other; what is put in is the same.
        foreach (var (item, meant) in ranked.DistinctBy(r => Label(r.Item)).Take(Most))
        {
            ct.ThrowIfCancellationRequested();
            var symbol = meant.FirstOrDefault();
            var html = entries.Count < Described ? await Written(service, document, item, symbol, ct).ConfigureAwait(false) : null;
            entries.Add(new(Label(item), Inserted(item), Kind(item, symbol), symbol is null ? "" : SymbolWords.Detail(symbol, meant.Count), html));
        }

        return new(entries, found.Span.Start, found.Span.End);
    }

    /// <summary>The documentation of a name that may stand at a place; empty when it may not, or nothing is written of it.</summary>
    public static async Task<string> Describe(Document document, int offset, string label, CancellationToken ct)
    {
        var service = CompletionService.GetService(document)!;
        var found = await service.GetCompletionsAsync(document, offset, CompletionTrigger.Invoke, cancellationToken: ct).ConfigureAwait(false);
        if (found.ItemsList.FirstOrDefault(i => Label(i) == label) is not { } item)
            return "";
        var symbols = await Symbols(document, offset, ct).ConfigureAwait(false);
        return await Written(service, document, item, symbols[label].FirstOrDefault(), ct).ConfigureAwait(false);
    }

    // By label; a named argument, "R:", is not the variable R.
    private static async Task<ILookup<string, ISymbol>> Symbols(Document document, int offset, CancellationToken ct)
    {
        var model = (await document.GetSemanticModelAsync(ct).ConfigureAwait(false))!;
        var root = (await document.GetSyntaxRootAsync(ct).ConfigureAwait(false))!;
        var all = await Recommender.GetRecommendedSymbolsAtPositionAsync(document, offset, cancellationToken: ct).ConfigureAwait(false);
        return all.Concat(Initialised(model, root, offset)).Select(s => (s.Name, Symbol: s))
            .Concat(Signatures.ParametersAt(model, root, offset).Select(p => (Name: p.Name + ":", Symbol: (ISymbol)p)))
            .ToLookup(s => s.Name, s => s.Symbol, StringComparer.Ordinal);
    }

    // What may be set between the braces of new() { } and with { }.
    private static IEnumerable<ISymbol> Initialised(SemanticModel model, SyntaxNode root, int offset)
    {
        if (offset == 0 || root.FindToken(offset - 1).Parent?.FirstAncestorOrSelf<InitializerExpressionSyntax>() is not { } braces || !braces.Span.Contains(offset - 1))
            return [];
        var type = braces.Parent switch
        {
            BaseObjectCreationExpressionSyntax made => model.GetTypeInfo(made).Type,
            WithExpressionSyntax with => model.GetTypeInfo(with.Expression).Type,
            _ => null,
        };
        return type is null ? [] : model.LookupSymbols(offset, type).Where(m => m is IPropertySymbol { SetMethod: not null } or IFieldSymbol);
    }

    private static async Task<string> Written(CompletionService service, Document document, CompletionItem item, ISymbol? symbol, CancellationToken ct)
    {
        if (symbol is not null)
            return new SymbolDocs(symbol).Whole();
        // A word of the language is its own documentation.
        if (item.Tags.Contains(WellKnownTags.Keyword))
            return "";
        var text = (await service.GetDescriptionAsync(document, item, ct).ConfigureAwait(false))?.Text ?? "";
        return string.Concat(text.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Select(l => $"<p>{WebUtility.HtmlEncode(l)}</p>"));
    }

    private static bool IsArgument(CompletionItem item) => item.DisplayTextSuffix.StartsWith(':');

    private static string Label(CompletionItem item) => IsArgument(item) ? item.DisplayText + ":" : item.DisplayText;

    // The notebook's own; the house's and the quantities it knows; others; the rest.
    private static int Origin(CompletionItem item, List<ISymbol> meant) => IsArgument(item) ? 0 : meant.Count == 0 ? 3 : meant.Min(Origin);

    private static int Origin(ISymbol symbol) =>
        ObjectMembers.Contains(symbol.Name) || symbol is IMethodSymbol { ReducedFrom.Parameters: [{ Type.SpecialType: SpecialType.System_Object }, ..] } ? 3
        : symbol is INamedTypeSymbol && QuantityKinds.Find(symbol.Name) is not null ? 1
        : !symbol.Locations.IsEmpty && symbol.Locations[0].IsInSource ? 0
        : symbol.ContainingAssembly?.Name is { } name ? name.StartsWith("EightOhm", StringComparison.Ordinal) ? 1 : name.StartsWith("UnitsNet", StringComparison.Ordinal) ? 2 : 3
        : symbol is INamespaceSymbol && symbol.ToDisplayString().StartsWith("EightOhm", StringComparison.Ordinal) ? 1 : 3;

    private static string Inserted(CompletionItem item)
    {
        var text = item.Properties.TryGetValue("InsertionText", out var written) && written.Length > 0 ? written : item.DisplayText;
        return IsArgument(item) && !text.EndsWith(':') ? text + ":" : text;
    }

    private static string Kind(CompletionItem item, ISymbol? symbol)
    {
        if (IsArgument(item))
            return "argument";
        return symbol switch
        {
            IMethodSymbol { ContainingType.IsScriptClass: true } or IMethodSymbol { MethodKind: MethodKind.LocalFunction } => "function",
            IMethodSymbol => "method",
            IFieldSymbol { IsConst: true } => "constant",
            IFieldSymbol { ContainingType.IsScriptClass: false } => "property",
            IFieldSymbol or ILocalSymbol or IParameterSymbol or IRangeVariableSymbol => "variable",
            IPropertySymbol or IEventSymbol => "property",
            INamespaceSymbol => "namespace",
            ITypeParameterSymbol => "type",
            INamedTypeSymbol type => type.TypeKind switch { TypeKind.Enum => "enum", TypeKind.Interface => "interface", TypeKind.Delegate => "type", _ => "class" },
            _ => item.Tags.Contains(WellKnownTags.Keyword) ? "keyword" : item.Tags.Contains(WellKnownTags.Method) ? "method" : item.Tags.Contains(WellKnownTags.Property) ? "property" : "variable",
        };
    }
}
