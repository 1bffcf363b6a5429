using System.Collections.Generic;
using Microsoft.CodeAnalysis.CSharp;

namespace EightOhm.Generators;

/// <summary>What a formula may be made of: the table in docs/formulas.md is written from here.</summary>
internal static class Supported
{
    /// <summary>Expressions: syntax, what it reads as on the board, an example.</summary>
    public static readonly IReadOnlyDictionary<SyntaxKind, (string Means, string Example)> Expressions = new Dictionary<SyntaxKind, (string, string)>
    {
        [SyntaxKind.IdentifierName] = ("a symbol: a parameter, a local, a constant, a property", "R_L"),
        [SyntaxKind.NumericLiteralExpression] = ("a number", "4"),
        [SyntaxKind.ParenthesizedExpression] = ("brackets, where the board needs them", "(a + b) * c"),
        [SyntaxKind.AddExpression] = ("a sum", "a + b"),
        [SyntaxKind.SubtractExpression] = ("a difference", "a - b"),
        [SyntaxKind.MultiplyExpression] = ("a product; x * x reads as a square", "a * b"),
        [SyntaxKind.DivideExpression] = ("a fraction", "a / b"),
        [SyntaxKind.UnaryMinusExpression] = ("a sign", "-a"),
        [SyntaxKind.InvocationExpression] = ("a root, logarithm, parallel resistance or sum of Maths; another formula, opened one level down; a function by its name", "Sqrt(P * R)"),
        [SyntaxKind.SimpleMemberAccessExpression] = ("a property of a value; a literal with its unit", "load.R, 25.degC"),
        [SyntaxKind.ThisExpression] = ("the object the formula belongs to", "this.Load"),
        [SyntaxKind.ConditionalExpression] = ("two cases", "c ? a : b"),
        [SyntaxKind.LessThanExpression] = ("a condition", "a < b"),
        [SyntaxKind.LessThanOrEqualExpression] = ("a condition", "a <= b"),
        [SyntaxKind.GreaterThanExpression] = ("a condition", "a > b"),
        [SyntaxKind.GreaterThanOrEqualExpression] = ("a condition", "a >= b"),
        [SyntaxKind.LogicalAndExpression] = ("both conditions", "a && b"),
        [SyntaxKind.LogicalOrExpression] = ("either condition", "a || b"),
        [SyntaxKind.CastExpression] = ("a change of number type, not shown", "(double)n"),
        [SyntaxKind.SimpleLambdaExpression] = ("the term of a sum over a list", "Sum(parts, x => x * x)"),
        [SyntaxKind.ElementAccessExpression] = ("an item of a list", "parts[0]"),
        [SyntaxKind.ObjectCreationExpression] = ("a value made of values", "new OutputRating(P, R_L)"),
    };

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
        ("a local: one line on the board", "var x = a * b;"),
        ("a guard: not shown", "Guard.Positive(R);"),
        ("a case, after the locals", "if (a > b) return c;"),
        ("the result", "return x;"),
    ];
}
