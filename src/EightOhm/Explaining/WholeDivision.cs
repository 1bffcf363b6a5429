using System.Linq.Expressions;

namespace EightOhm.Explaining;

/// <summary>Refuses a division of two whole numbers: it drops the rest, and no formula on paper does.</summary>
internal sealed class WholeDivision : ExpressionVisitor
{
    private string? _found;

    /// <summary>Looks through an expression.</summary>
    /// <exception cref="InvalidOperationException">A whole number is divided by another.</exception>
    public static void Refuse(Expression body)
    {
        if (In(body) is { } found)
            throw new InvalidOperationException(found);
    }

    /// <summary>What is wrong with an expression and what to write instead, or null.</summary>
    public static string? In(Expression body)
    {
        var look = new WholeDivision();
        look.Visit(body);
        return look._found;
    }

    protected override Expression VisitBinary(BinaryExpression node)
    {
        if (node.NodeType == ExpressionType.Divide && node.Type.IsPrimitive && node.Type != typeof(double) && node.Type != typeof(float))
        {
            var (over, under) = (Text(node.Left), Text(node.Right));
            var fix = Number(node.Right) ? $"{over} / {under}.0" : Number(node.Left) ? $"{over}.0 / {under}" : $"{over} / (double){under}";
            _found ??= $"{over} / {under} divides whole numbers and drops the rest. Write {fix}.";
        }

        return base.VisitBinary(node);
    }

    private static bool Number(Expression e) => MathTree.Bare(e) is ConstantExpression or MethodCallExpression { Method.Name: nameof(FormulaSteps.Kept) };

    private static string Text(Expression e) => MathTree.Bare(e) switch
    {
        ConstantExpression c => FormattableString.Invariant($"{c.Value}"),
        MethodCallExpression { Method.Name: nameof(FormulaSteps.Kept) } kept => Text(kept.Arguments[0]),
        MethodCallExpression call => $"{call.Method.Name}(…)",
        BinaryExpression => "(…)",
        var other => MathTree.NameOf(other) ?? "(…)",
    };
}
