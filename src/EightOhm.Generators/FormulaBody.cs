using System.Collections.Generic;
using System.Linq;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace EightOhm.Generators;

/// <summary>A formula's body taken apart: locals, cases, result.</summary>
internal sealed class FormulaBody
{
    public List<(string Name, ExpressionSyntax Rule)> Locals { get; } = [];

    public List<(ExpressionSyntax When, ExpressionSyntax Then)> Cases { get; } = [];

    public ExpressionSyntax? Result { get; private set; }

    public List<Diagnostic> Problems { get; } = [];

    public static FormulaBody Of(SyntaxNode member)
    {
        var body = new FormulaBody();
        var (arrow, block) = member switch
        {
            MethodDeclarationSyntax m => (m.ExpressionBody, m.Body),
            PropertyDeclarationSyntax { ExpressionBody: { } e } => (e, null),
            PropertyDeclarationSyntax p => (p.AccessorList?.Accessors[0].ExpressionBody, p.AccessorList?.Accessors[0].Body),
            _ => (null, null),
        };
        if (arrow is not null)
            body.Result = arrow.Expression;
        else if (block is not null)
            foreach (var statement in block.Statements)
                body.Read(statement);
        if (body.Result is null && body.Problems.Count == 0)
            body.Refuse(member, "there is no returned expression");
        foreach (var expression in body.All())
            body.Check(expression);
        return body;
    }

    public IEnumerable<ExpressionSyntax> All() =>
        Locals.Select(l => l.Rule)
            .Concat(Cases.SelectMany(c => new[] { c.When, c.Then }))
            .Concat(Result is null ? [] : [Result]);

    private void Read(StatementSyntax statement)
    {
        if (Result is not null)
        {
            Refuse(statement, "nothing can follow the return");
            return;
        }

        switch (statement)
        {
            case ExpressionStatementSyntax { Expression: InvocationExpressionSyntax { Expression: MemberAccessExpressionSyntax { Expression: IdentifierNameSyntax { Identifier.Text: "Guard" } } } }:
                break;
            case LocalDeclarationStatementSyntax when Cases.Count > 0:
                Refuse(statement, "a local after a case would not always be there");
                break;
            case LocalDeclarationStatementSyntax { Declaration.Variables: { Count: 1 } v } when v[0].Initializer is { } set:
                Locals.Add((v[0].Identifier.Text, set.Value));
                break;
            case IfStatementSyntax { Else: null } choice when Returned(choice.Statement) is { } then:
                Cases.Add((choice.Condition, then));
                break;
            case ReturnStatementSyntax { Expression: { } result }:
                Result = result;
                break;
            default:
                Refuse(statement, "it is neither a local, a guard, a case nor a return");
                break;
        }
    }

    private static ExpressionSyntax? Returned(StatementSyntax statement) => statement switch
    {
        ReturnStatementSyntax r => r.Expression,
        BlockSyntax { Statements: { Count: 1 } only } => Returned(only[0]),
        _ => null,
    };

    private void Check(ExpressionSyntax expression)
    {
        foreach (var node in expression.DescendantNodesAndSelf())
        {
            var kind = node.Kind();
            var named = node is ArgumentSyntax { NameColon: not null } || node is ArgumentSyntax { RefKindKeyword.RawKind: not (int)SyntaxKind.None };
            if (named || !(Supported.Expressions.ContainsKey(kind) || Supported.Names.Contains(kind)))
                Problems.Add(Diagnostic.Create(Generators.Problems.Expression, node.GetLocation(), Short(node), named ? "a named, ref or out argument" : kind.ToString()));
        }
    }

    private void Refuse(SyntaxNode node, string why) =>
        Problems.Add(Diagnostic.Create(Generators.Problems.Statement, node.GetLocation(), Short(node), why));

    private static string Short(SyntaxNode node)
    {
        var text = node.ToString().Split('\n')[0].Trim();
        return text.Length > 60 ? text.Substring(0, 57) + "…" : text;
    }
}
