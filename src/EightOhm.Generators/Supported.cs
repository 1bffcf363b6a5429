using System.Collections.Generic;
using System.Linq;
using EightOhm.Explaining;
using Microsoft.CodeAnalysis.CSharp;

namespace EightOhm.Generators;

/// <summary>What a formula may be made of: the table in docs/formulas.md is written from here.</summary>
internal static class Supported
{
    private static readonly Dictionary<SyntaxKind, (string Means, string Example)> Structure = new()
    {
        [SyntaxKind.IdentifierName] = ("a symbol: a parameter, a local, a constant, a property", "R_L"),
        [SyntaxKind.NumericLiteralExpression] = ("a number", "4"),
        [SyntaxKind.ParenthesizedExpression] = ("brackets, shown where precedence needs them", "(a + b) * c"),
        [SyntaxKind.InvocationExpression] = ("a root, logarithm, parallel resistance or sum of Maths; another formula, opened one level down; a function by its name", "Sqrt(P * R)"),
        [SyntaxKind.SimpleMemberAccessExpression] = ("a property of a value; a literal with its unit", "load.R, 25.degC"),
        [SyntaxKind.ThisExpression] = ("the object the formula belongs to", "this.Load"),
        [SyntaxKind.ConditionalExpression] = ("two cases", "c ? a : b"),
        [SyntaxKind.CastExpression] = ("a change of number type, not shown", "(double)n"),
        [SyntaxKind.SimpleLambdaExpression] = ("the term of a sum over a list", "Sum(parts, x => x * x)"),
        [SyntaxKind.ElementAccessExpression] = ("an item of a list", "parts[0]"),
        [SyntaxKind.ObjectCreationExpression] = ("a value made of values", "new OutputRating(P, R_L)"),
    };

    /// <summary>Expressions: syntax, what it reads as, an example. The operators are those of the list that Explain and the record share.</summary>
    public static readonly IReadOnlyDictionary<SyntaxKind, (string Means, string Example)> Expressions = Structure
        .Concat(FormulaOperator.All.Select(o => new KeyValuePair<SyntaxKind, (string, string)>(Kind(o), (o.Means, o.Example))))
        .ToDictionary(e => e.Key, e => e.Value);

    /// <summary>Types may stand where a cast, a creation or a static member names them.</summary>
    public static readonly ISet<SyntaxKind> Names = new HashSet<SyntaxKind>
    {
        SyntaxKind.PredefinedType, SyntaxKind.GenericName, SyntaxKind.QualifiedName, SyntaxKind.TypeArgumentList,
        SyntaxKind.ArgumentList, SyntaxKind.Argument, SyntaxKind.BracketedArgumentList, SyntaxKind.Parameter,
    };

    /// <summary>Statements: syntax, what it reads as, an example.</summary>
    public static readonly IReadOnlyList<(string Means, string Example)> Statements =
    [
        ("an expression body", "=> Sqrt(P * R)"),
        ("a local: one line of the working", "var x = a * b;"),
        ("a guard: not shown", "Guard.Positive(R);"),
        ("a case, after the locals", "if (a > b) return c;"),
        ("the result", "return x;"),
    ];

    private static SyntaxKind Kind(FormulaOperator o) => (SyntaxKind)System.Enum.Parse(typeof(SyntaxKind), o.Syntax);
}
