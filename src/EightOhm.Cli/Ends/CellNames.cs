using EightOhm.Cells;
using EightOhm.Cli.Notebooks;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace EightOhm.Cli.Ends;

/// <summary>The names in a cell's code, as its syntax alone tells them: too many rather than too few.</summary>
internal sealed class CellNames
{
    private static readonly string[] Keepers = ["Target", "Choose", "Assume", "Part", "Derive", "Compute"];

    private CellNames(CompilationUnitSyntax code)
    {
        var nodes = code.DescendantNodes().ToList();
        var calls = nodes.OfType<InvocationExpressionSyntax>().Select(c => (Call: c, Name: NameOf(c))).ToList();
        Gives = [.. nodes.SelectMany(Given).Except(["Console"])];
        Uses = [.. nodes.OfType<IdentifierNameSyntax>().Where(IsUse).Select(i => i.Identifier.ValueText)];
        Entries = [.. calls.Where(c => Keepers.Contains(c.Name)).Select(c => Written(c.Call, c.Name == "Part")).OfType<CellWrite>()];
        ComputesLabels = calls.Any(c => c.Name == "Require" && First(c.Call) is null);
        Requirements = [.. calls.Where(c => c.Name == "Require").Select(c => Written(c.Call)).OfType<CellWrite>()];
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

    /// <summary>The entries that it writes into a record, where their names stand as they are.</summary>
    public IReadOnlyList<CellWrite> Entries { get; }

    /// <summary>Its requirements, where their labels stand as they are.</summary>
    public IReadOnlyList<CellWrite> Requirements { get; }

    /// <summary>Whether a label of a requirement does not stand as it is.</summary>
    public bool ComputesLabels { get; }

    public static CellNames Of(string source) => new(CellText.Parse(source));

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

    private static CellWrite? Written(InvocationExpressionSyntax call, bool isRole = false) =>
        First(call, isRole) is { } name
            ? new(name, Literal(call, 1), IsDeferred(call) ? int.MaxValue : call.GetLocation().GetLineSpan().EndLinePosition.Line + 1)
            : null;

    private static string? First(InvocationExpressionSyntax call, bool isRole = false) =>
        Literal(call, 0) is { } text ? isRole ? text.Replace(' ', '_') : text : null;

    private static string? Literal(InvocationExpressionSyntax call, int argument) =>
        call.ArgumentList.Arguments.ElementAtOrDefault(argument)?.Expression is LiteralExpressionSyntax { Token.Value: string text } ? text.Normalize() : null;
}

/// <summary>A name that a cell writes.</summary>
/// <param name="Name">The entry, or the label.</param>
/// <param name="About">The entry that a requirement is about, where it stands as it is.</param>
/// <param name="EndsOn">The line where the call ends, from 1; a call that may run later, or never, ends nowhere.</param>
internal sealed record CellWrite(string Name, string? About, int EndsOn);
