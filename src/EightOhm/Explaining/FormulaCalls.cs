using System.Linq.Expressions;

namespace EightOhm.Explaining;

/// <summary>Finds the formulas and solvers that an expression calls, in the order it is read; of cases only the one that holds.</summary>
internal sealed class FormulaCalls(Bindings bound) : ExpressionVisitor
{
    public List<Expression> Found { get; } = [];

    public static IReadOnlyList<Expression> In(Expression body, Bindings bound)
    {
        var finder = new FormulaCalls(bound);
        finder.Visit(body);
        return finder.Found;
    }

    public override Expression? Visit(Expression? node)
    {
        if (node is not null && MathTree.Formula(node) is not null)
        {
            Found.Add(node);
            return node;
        }

        return base.Visit(node);
    }

    protected override Expression VisitConditional(ConditionalExpression node)
    {
        Visit(node.Test);
        Visit((bool)bound.Value(node.Test) ? node.IfTrue : node.IfFalse);
        return node;
    }

    // The terms of a sum have no value until they have an item.
    protected override Expression VisitLambda<T>(Expression<T> node) => node;
}
