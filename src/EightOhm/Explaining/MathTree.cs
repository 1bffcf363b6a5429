using System.Linq.Expressions;
using System.Reflection;

namespace EightOhm.Explaining;

/// <summary>From an expression tree to what stands on paper: in symbols, or with the numbers put in.</summary>
/// <remarks>With <c>applying</c>, of cases only the one that holds for the values is written, and <see cref="Cases"/> says which it is.</remarks>
internal sealed partial class MathTree(Bindings bindings, bool numbers, bool applying = true)
{
    private static readonly Dictionary<ExpressionType, FormulaOperator> Operators = FormulaOperator.All
        .SelectMany(o => new[] { o.Node, $"{o.Node}Checked" }.Where(n => Enum.IsDefined(typeof(ExpressionType), n)).Select(n => (Enum.Parse<ExpressionType>(n), o)))
        .ToDictionary(p => p.Item1, p => p.o);

    private readonly List<MathNode> _cases = [];
    private readonly List<(string Name, object Value)> _objects = [];

    /// <summary>The conditions by which cases were chosen, in the order they were met.</summary>
    public IReadOnlyList<MathNode> Cases => _cases;

    /// <summary>The objects whose functions are called, by the names that they go by.</summary>
    public IReadOnlyList<(string Name, object Value)> Objects => _objects;

    public MathNode Of(Expression e) => e switch
    {
        UnaryExpression { NodeType: ExpressionType.Convert or ExpressionType.ConvertChecked or ExpressionType.Quote or ExpressionType.UnaryPlus } u => Of(u.Operand),
        UnaryExpression { NodeType: ExpressionType.Negate or ExpressionType.NegateChecked } u => new NegatedNode(Of(u.Operand)),
        UnaryExpression { NodeType: ExpressionType.Not } u when u.Type == typeof(bool) => new NotNode(Of(u.Operand)),
        BinaryExpression { NodeType: ExpressionType.Divide } b => new FractionNode(Factor(b.Left), Factor(b.Right)),
        BinaryExpression { NodeType: ExpressionType.Multiply } b when Same(b.Left, b.Right) => new PowerNode(Of(b.Left), new NumberNode("2")),
        BinaryExpression { NodeType: ExpressionType.Multiply or ExpressionType.MultiplyChecked } b => new InfixNode("·", Factor(b.Left), Factor(b.Right)),
        BinaryExpression { NodeType: ExpressionType.ArrayIndex } b => Item(e, b.Left, b.Right),
        BinaryExpression b when Operators.TryGetValue(b.NodeType, out var o) => new InfixNode(o.Sign, Of(b.Left), Of(b.Right)),
        ConditionalExpression c => applying ? Chosen(c) : new CasesNode([.. AllCases(c)]),
        MethodCallExpression call => Call(call),
        NewExpression { Arguments.Count: > 0 } made => new CallNode(made.Type.Name, [.. made.Arguments.Select(Of)]),
        _ => Leaf(e),
    };

    /// <summary>A whole line: a call of its own that no steps explain keeps its arguments also with the numbers put in.</summary>
    public MathNode Line(Expression e) => numbers && Bare(e) is MethodCallExpression call && IsOpaque(call) && !HasSteps(call.Method) ? Named(call) : Of(e);

    /// <summary>The formula or solver that an expression calls, or null.</summary>
    public static MemberInfo? Formula(Expression e) => e switch
    {
        MethodCallExpression m when IsMarked(m.Method) => m.Method,
        MemberExpression { Member: PropertyInfo p } when IsMarked(p) => p,
        _ => null,
    };

    public static Expression Bare(Expression e) =>
        e is UnaryExpression { NodeType: ExpressionType.Convert or ExpressionType.ConvertChecked } u ? Bare(u.Operand) : e;

    private static bool IsMarked(MemberInfo member) => HasSteps(member) || member.IsDefined(typeof(WorkedAttribute));

    private static bool HasSteps(MemberInfo member) => member.IsDefined(typeof(FormulaAttribute)) || member.IsDefined(typeof(SolvesAttribute));

    // Only the case that holds is worked out: another may not exist for these numbers. Of one that only remains, the condition is that the others fail.
    private MathNode Chosen(ConditionalExpression c)
    {
        MathNode? others = null;
        Expression e = c;
        while (Bare(e) is ConditionalExpression next)
        {
            var when = Of(next.Test);
            if ((bool)bindings.Value(next.Test))
            {
                _cases.Add(when);
                return Of(next.IfTrue);
            }

            others = others is null ? MathNodes.Opposite(when) : new InfixNode("and", others, MathNodes.Opposite(when));
            e = next.IfFalse;
        }

        _cases.Add(others!);
        return Of(e);
    }

    private IEnumerable<(MathNode Value, MathNode? When)> AllCases(Expression e)
    {
        while (Bare(e) is ConditionalExpression c)
        {
            yield return (Of(c.IfTrue), Of(c.Test));
            e = c.IfFalse;
        }

        yield return (Of(e), null);
    }

    private MathNode Sum(Expression items, LambdaExpression term)
    {
        // The terms have no value, and so no case, until they have an item.
        if (!numbers)
            return new SumNode(new NameNode(term.Parameters[0].Name!), Of(items), new MathTree(bindings, numbers: false, applying: false).Of(term.Body));
        MathNode? sum = null;
        foreach (var item in (System.Collections.IEnumerable)bindings.Value(items))
        {
            var one = new MathTree(bindings.With(term.Parameters[0], item), numbers: true).Of(term.Body);
            sum = sum is null ? one : new InfixNode("+", sum, one);
        }

        return sum ?? new NumberNode("0");
    }

    private static bool Same(Expression a, Expression b) => (Bare(a), Bare(b)) switch
    {
        (ParameterExpression p, ParameterExpression q) => p == q,
        (MemberExpression p, MemberExpression q) => p.Member == q.Member && (p.Expression, q.Expression) switch
        {
            (null, null) => true,
            (ConstantExpression c, ConstantExpression d) => Equals(c.Value, d.Value),
            ({ } c, { } d) => Same(c, d),
            _ => false,
        },
        _ => false,
    };
}
