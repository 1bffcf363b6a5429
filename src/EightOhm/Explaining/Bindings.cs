using System.Collections.Immutable;
using System.Linq.Expressions;

namespace EightOhm.Explaining;

/// <summary>What the parameters of a line stand for: their values.</summary>
internal sealed class Bindings(ImmutableDictionary<ParameterExpression, object> values) : ExpressionVisitor
{
    public static readonly Bindings None = new(ImmutableDictionary<ParameterExpression, object>.Empty);

    public static Bindings Of(IReadOnlyList<ParameterExpression> parameters, IReadOnlyList<object> values) =>
        parameters.Zip(values).Aggregate(None, (known, p) => known.With(p.First, p.Second));

    public Bindings With(ParameterExpression parameter, object value) => new(values.SetItem(parameter, value));

    /// <summary>The value of an expression; the same operations as the compiled line, so the same bits.</summary>
    public object Value(Expression expression)
    {
        var closed = Visit(expression);
        return closed is ConstantExpression constant
            ? constant.Value!
            : Expression.Lambda<Func<object>>(Expression.Convert(closed, typeof(object))).Compile(preferInterpretation: true)();
    }

    protected override Expression VisitParameter(ParameterExpression node) =>
        values.TryGetValue(node, out var value) ? Expression.Constant(value, node.Type) : node;
}
