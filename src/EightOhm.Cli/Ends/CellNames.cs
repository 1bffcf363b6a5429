using EightOhm.Cli.Notebooks;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace EightOhm.Cli.Ends;

/// <summary>The names in a cell's code, as its syntax alone tells them: too many rather than too few.</summary>
internal sealed class CellNames
{
    private static readonly string[] Keepers = ["Target", "Choose", "Assume", "Part", "Derive", "Compute"];

    // Each with the line where its call ends; a call that may run later, or never, ends nowhere.
    private readonly List<(string Name, int EndsOn)> writes;

    private CellNames(CompilationUnitSyntax code)
    {
        var nodes = code.DescendantNodes().ToList();
        var calls = nodes.OfType<InvocationExpressionSyntax>().Select(c => (Call: c, Name: NameOf(c))).ToList();
        Gives = [.. nodes.SelectMany(Given).Except(["Console"])];
        Uses = [.. nodes.OfType<IdentifierNameSyntax>().Where(IsUse).Select(i => i.Identifier.ValueText)];
        writes = [.. calls.Where(c => c.Name == "Require" || Keepers.Contains(c.Name))
            .Select(c => (First(c.Call, c.Name == "Part"), !IsDeferred(c.Call) ? c.Call.GetLocation().GetLineSpan().EndLinePosition.Line + 1 : int.MaxValue))
            .Where(w => w.Item1 is not null).Select(w => (w.Item1!, w.Item2))];
        Reads =
        [
            .. calls.Where(c => c.Name is "Get" or "Explain").Select(c => First(c.Call)).OfType<string>(),
            .. calls.Where(c => c.Name == "Recall").SelectMany(c => c.Call.ArgumentList.Arguments).Select(Variable).OfType<string>(),
            .. calls.Where(c => Keepers.Contains(c.Name))
                .SelectMany(c => c.Call.ArgumentList.Arguments).Select(a => a.Expression).OfType<ParenthesizedLambdaExpressionSyntax>()
                .SelectMany(l => l.ParameterList.Parameters).Select(p => p.Identifier.ValueText),
        ];
    }

    /// <summary>Variables, functions and types that the cell makes, and variables that it may change.</summary>
    public HashSet<string> Gives { get; }

    /// <summary>Every name that stands for something from elsewhere.</summary>
    public HashSet<string> Uses { get; }

    /// <summary>The entries whose values it takes from a record.</summary>
    public HashSet<string> Reads { get; }

    /// <summary>The entries that it writes into a record and the labels of its requirements, where they stand as they are.</summary>
    public IEnumerable<string> Writes => writes.Select(w => w.Name);

    /// <summary>Those of them that are written when the cell has come to a line.</summary>
    public IEnumerable<string> WrittenBefore(int line) => writes.Where(w => w.EndsOn < line).Select(w => w.Name);

    public static CellNames Of(string source) => new(CellCode.Parse(source));

    private static IEnumerable<string> Given(SyntaxNode node) => node switch
    {
        VariableDeclaratorSyntax v when IsOutside(v) => [v.Identifier.ValueText],
        SingleVariableDesignationSyntax v when IsOutside(v) => [v.Identifier.ValueText],
        MethodDeclarationSyntax m => [m.Identifier.ValueText],
        LocalFunctionStatementSyntax f when IsOutside(f) => [f.Identifier.ValueText],
        BaseTypeDeclarationSyntax t => [t.Identifier.ValueText],
        AssignmentExpressionSyntax a => Root(a.Left),
        PrefixUnaryExpressionSyntax p when p.IsKind(SyntaxKind.PreIncrementExpression) || p.IsKind(SyntaxKind.PreDecrementExpression) => Root(p.Operand),
        PostfixUnaryExpressionSyntax p => Root(p.Operand),
        ArgumentSyntax { RefKindKeyword.RawKind: not 0 } a => Root(a.Expression),
        // A call for its effect alone may change what it is called on; the record says itself what it holds.
        ExpressionStatementSyntax { Expression: InvocationExpressionSyntax { Expression: MemberAccessExpressionSyntax m } call }
            when NameOf(call) is var name && name != "Require" && !Keepers.Contains(name) => Root(m.Expression),
        _ => [],
    };

    // "out Power P" and "out P": the entry goes by the variable's name.
    private static string? Variable(ArgumentSyntax argument) => argument.Expression switch
    {
        DeclarationExpressionSyntax { Designation: SingleVariableDesignationSyntax v } => v.Identifier.ValueText.Normalize(),
        IdentifierNameSyntax v => v.Identifier.ValueText.Normalize(),
        _ => null,
    };

    private static bool IsOutside(SyntaxNode node) => !IsDeferred(node) && !node.Ancestors().Any(a => a is BlockSyntax or QueryExpressionSyntax);

    private static bool IsDeferred(SyntaxNode node) =>
        node.Ancestors().Any(a => a is AnonymousFunctionExpressionSyntax or LocalFunctionStatementSyntax or BaseTypeDeclarationSyntax or MethodDeclarationSyntax);

    private static bool IsUse(IdentifierNameSyntax name) => name.Parent switch
    {
        MemberAccessExpressionSyntax m => m.Expression == name,
        NameColonSyntax or NameEqualsSyntax or MemberBindingExpressionSyntax => false,
        _ => true,
    };

    private static IEnumerable<string> Root(ExpressionSyntax expression) => expression switch
    {
        IdentifierNameSyntax i => [i.Identifier.ValueText],
        MemberAccessExpressionSyntax m => Root(m.Expression),
        ElementAccessExpressionSyntax e => Root(e.Expression),
        InvocationExpressionSyntax { Expression: MemberAccessExpressionSyntax m } => Root(m.Expression),
        TupleExpressionSyntax t => t.Arguments.SelectMany(a => Root(a.Expression)),
        _ => [],
    };

    private static string NameOf(InvocationExpressionSyntax call) => call.Expression switch
    {
        MemberAccessExpressionSyntax m => m.Name.Identifier.ValueText,
        SimpleNameSyntax n => n.Identifier.ValueText,
        _ => "",
    };

    private static string? First(InvocationExpressionSyntax call, bool isRole = false) =>
        call.ArgumentList.Arguments.FirstOrDefault()?.Expression is LiteralExpressionSyntax { Token.Value: string text }
            ? (isRole ? text.Replace(' ', '_') : text).Normalize()
            : null;
}
