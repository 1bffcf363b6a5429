using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Operations;

namespace EightOhm.Cells.Sources;

/// <summary>The compiled cells of one notebook: which cell a symbol is of, and what a function of a cell does.</summary>
internal sealed class CellCode
{
    private readonly List<SyntaxTree> _trees = [];
    private readonly Dictionary<SyntaxTree, (int Position, CSharpCompilation Compilation, SemanticModel Model)> _cells = [];
    private readonly Dictionary<ISymbol, int> _scripts = new(SymbolEqualityComparer.Default);
    private readonly Dictionary<ISymbol, IOperation?> _bodies = new(SymbolEqualityComparer.Default);
    private readonly Dictionary<SyntaxTree, ILookup<string, SyntaxNode>> _functions = [];
    private readonly Dictionary<SyntaxNode, bool> _outside = [];
    private readonly Dictionary<ISymbol, HashSet<string>> _words = new(SymbolEqualityComparer.Default);
    private readonly Dictionary<ISymbol, bool> _captured = new(SymbolEqualityComparer.Default);

    /// <summary>The types that cells declare.</summary>
    public List<INamedTypeSymbol> Types { get; } = [];

    /// <summary>How many cells there are; also the position of the next.</summary>
    public int Count => _trees.Count;

    /// <summary>Takes the next cell in.</summary>
    /// <returns>Its position in the chain.</returns>
    public int Add(CSharpCompilation compilation)
    {
        var tree = compilation.SyntaxTrees.Single();
        var model = compilation.GetSemanticModel(tree);
        _cells.Add(tree, (_trees.Count, compilation, model));
        if (compilation.ScriptClass is { } script)
            _scripts[script] = _trees.Count;
        _trees.Add(tree);
        Types.AddRange(tree.GetRoot().DescendantNodes().OfType<TypeDeclarationSyntax>().Select(t => model.GetDeclaredSymbol(t)).OfType<INamedTypeSymbol>());
        return _trees.Count - 1;
    }

    public SyntaxTree Tree(int position) => _trees[position];

    public SemanticModel Model(SyntaxTree tree) => _cells[tree].Model;

    /// <summary>The position of the cell that holds a piece of syntax.</summary>
    public int PositionOf(SyntaxTree tree) => _cells[tree].Position;

    /// <summary>The position of the cell that declares a variable, a function or a type at its top; null for all else.</summary>
    public int? PositionOf(ISymbol symbol)
    {
        if (symbol.ContainingType is { IsScriptClass: true } script)
            return _scripts.TryGetValue(script, out var position) ? position : null;
        return symbol.OriginalDefinition.DeclaringSyntaxReferences.FirstOrDefault()?.SyntaxTree is { } tree && symbol is INamedTypeSymbol && _cells.TryGetValue(tree, out var cell) ? cell.Position : null;
    }

    /// <summary>Whether a cell declares it.</summary>
    public bool IsOfACell(ISymbol symbol) =>
        symbol.OriginalDefinition.DeclaringSyntaxReferences is { Length: > 0 } places && _cells.ContainsKey(places[0].SyntaxTree);

    /// <summary>What a function of a cell does; null for what the compiler writes itself and for a library's.</summary>
    public IOperation? Body(IMethodSymbol method)
    {
        ISymbol key = method.OriginalDefinition;
        if (!_bodies.TryGetValue(key, out var body))
            _bodies[key] = body = key.DeclaringSyntaxReferences.Select(r => r.GetSyntax()).Select(Body).FirstOrDefault(b => b is not null);
        return body;
    }

    /// <summary>The value that a field or property of a cell's type begins with; null when there is none.</summary>
    public IOperation? Initial(ISymbol member)
    {
        var clause = member.DeclaringSyntaxReferences.Select(r => r.GetSyntax()).Select(node => node switch
        {
            VariableDeclaratorSyntax v => v.Initializer,
            PropertyDeclarationSyntax p => p.Initializer,
            _ => null,
        }).FirstOrDefault(c => c is not null);
        return clause is null ? null : Initial(clause);
    }

    /// <summary>The value of an initialiser, with the conversion to what it fills.</summary>
    public IOperation? Initial(EqualsValueClauseSyntax clause)
    {
        var model = Model(clause.SyntaxTree);
        return model.GetOperation(clause) is ISymbolInitializerOperation whole ? whole.Value : model.GetOperation(clause.Value);
    }

    /// <summary>Whether a function inside the one that declares a variable uses it too.</summary>
    public bool IsCaptured(ISymbol variable)
    {
        if (!_captured.TryGetValue(variable, out var captured))
            _captured[variable] = captured = variable.DeclaringSyntaxReferences.FirstOrDefault() is { } place && _cells.ContainsKey(place.SyntaxTree)
                && Functions(place.SyntaxTree)[variable.Name].Any(f => !f.Span.Contains(place.Span));
        return captured;
    }

    /// <summary>Whether a function uses variables of the functions around it.</summary>
    public bool SeesOutside(IAnonymousFunctionOperation lambda)
    {
        if (!_outside.TryGetValue(lambda.Syntax, out var outside))
        {
            _outside[lambda.Syntax] = outside = lambda.Body.Descendants().Any(o => o switch
            {
                ILocalReferenceOperation local => IsOutside(local.Local),
                IParameterReferenceOperation parameter => IsOutside(parameter.Parameter),
                IInvocationOperation { TargetMethod.MethodKind: MethodKind.LocalFunction } call => IsOutside(call.TargetMethod.OriginalDefinition),
                IMethodReferenceOperation { Method.MethodKind: MethodKind.LocalFunction } group => IsOutside(group.Method.OriginalDefinition),
                _ => false,
            });
        }

        return outside;

        bool IsOutside(ISymbol variable) => variable.DeclaringSyntaxReferences.FirstOrDefault() is not { } place || !lambda.Syntax.Span.Contains(place.Span) || place.SyntaxTree != lambda.Syntax.SyntaxTree;
    }

    /// <summary>The names that the text of a cell's type says.</summary>
    public IReadOnlySet<string> WordsOf(ITypeSymbol type)
    {
        if (!_words.TryGetValue(type.OriginalDefinition, out var words))
            _words[type.OriginalDefinition] = words = type.OriginalDefinition.DeclaringSyntaxReferences.SelectMany(r => r.GetSyntax().DescendantTokens()).Where(t => t.IsKind(SyntaxKind.IdentifierToken)).Select(t => t.ValueText).ToHashSet();
        return words;
    }

    // Every function inside another, by the names that it says.
    private ILookup<string, SyntaxNode> Functions(SyntaxTree tree)
    {
        if (!_functions.TryGetValue(tree, out var found))
            _functions[tree] = found = (
                from function in tree.GetRoot().DescendantNodes()
                where function is AnonymousFunctionExpressionSyntax or LocalFunctionStatementSyntax or QueryExpressionSyntax
                from name in function.DescendantTokens().Where(t => t.IsKind(SyntaxKind.IdentifierToken)).Select(t => t.ValueText).Distinct()
                select (name, function)).ToLookup(f => f.name, f => f.function);
        return found;
    }

    private IOperation? Body(SyntaxNode node)
    {
        if (!_cells.TryGetValue(node.SyntaxTree, out var cell))
            return null;
        return node switch
        {
            LocalFunctionStatementSyntax => (cell.Model.GetOperation(node) as ILocalFunctionOperation)?.Body,
            AccessorDeclarationSyntax { Body: null, ExpressionBody: null } => null,
            BaseMethodDeclarationSyntax or AccessorDeclarationSyntax or ArrowExpressionClauseSyntax => cell.Model.GetOperation(node),
            _ => null,
        };
    }
}
