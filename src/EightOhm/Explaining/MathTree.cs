using System.Linq.Expressions;
using System.Reflection;
using EightOhm.Quantities;

namespace EightOhm.Explaining;

/// <summary>From an expression tree to what stands on the board: in symbols, or with the numbers put in.</summary>
internal sealed class MathTree(Bindings bindings, bool numbers)
{
    private static readonly Dictionary<ExpressionType, string> Signs = new()
    {
        [ExpressionType.Add] = "+",
        [ExpressionType.Subtract] = "−",
        [ExpressionType.Multiply] = "·",
        [ExpressionType.LessThan] = "<",
        [ExpressionType.LessThanOrEqual] = "≤",
        [ExpressionType.GreaterThan] = ">",
        [ExpressionType.GreaterThanOrEqual] = "≥",
        [ExpressionType.AndAlso] = "and",
        [ExpressionType.OrElse] = "or",
        [ExpressionType.AddChecked] = "+",
        [ExpressionType.SubtractChecked] = "−",
        [ExpressionType.MultiplyChecked] = "·",
    };

    public MathNode Of(Expression e) => e switch
    {
        UnaryExpression { NodeType: ExpressionType.Convert or ExpressionType.ConvertChecked or ExpressionType.Quote } u => Of(u.Operand),
        UnaryExpression { NodeType: ExpressionType.Negate or ExpressionType.NegateChecked } u => new NegatedNode(Of(u.Operand)),
        BinaryExpression { NodeType: ExpressionType.Divide } b => new FractionNode(Factor(b.Left), Factor(b.Right)),
        BinaryExpression { NodeType: ExpressionType.Multiply } b when Same(b.Left, b.Right) => new PowerNode(Of(b.Left), new NumberNode("2")),
        BinaryExpression { NodeType: ExpressionType.Multiply } b => new InfixNode("·", Factor(b.Left), Factor(b.Right)),
        BinaryExpression { NodeType: ExpressionType.ArrayIndex } b => Item(e, b.Left, b.Right),
        BinaryExpression b when Signs.TryGetValue(b.NodeType, out var sign) => new InfixNode(sign, Of(b.Left), Of(b.Right)),
        ConditionalExpression c => numbers ? Of(Taken(c)) : new CasesNode([.. Cases(c)]),
        MethodCallExpression call => Call(call),
        NewExpression { Arguments.Count: > 0 } made => new CallNode(made.Type.Name, [.. made.Arguments.Select(Of)]),
        _ => Leaf(e),
    };

    /// <summary>The formula that an expression calls, or null.</summary>
    public static MemberInfo? Formula(Expression e) => e switch
    {
        MethodCallExpression m when m.Method.GetCustomAttribute<FormulaAttribute>() is not null || m.Method.GetCustomAttribute<SolvesAttribute>() is not null => m.Method,
        MemberExpression { Member: PropertyInfo p } when p.GetCustomAttribute<FormulaAttribute>() is not null => p,
        _ => null,
    };

    public static Expression Bare(Expression e) =>
        e is UnaryExpression { NodeType: ExpressionType.Convert or ExpressionType.ConvertChecked } u ? Bare(u.Operand) : e;

    /// <summary>The name a leaf goes by, or null when it has none (a constant, a literal).</summary>
    public static string? NameOf(Expression e) => Bare(e) switch
    {
        ParameterExpression p => p.Name,
        MemberExpression m when Formula(m) is PropertyInfo f => FormulaName(f),
        MemberExpression m => m.Member.GetCustomAttribute<SymbolAttribute>()?.Text ?? m.Member.Name,
        _ => null,
    };

    public static string FormulaName(MemberInfo member) =>
        member.GetCustomAttribute<FormulaAttribute>() is { Symbol.Length: > 0 } f ? f.Symbol : member.Name;

    private MathNode Call(MethodCallExpression call)
    {
        var method = call.Method;
        if (method.DeclaringType == typeof(Literals))
            return Shown(bindings.Value(call));
        if (numbers && Formula(call) is not null)
            return Shown(bindings.Value(call));
        var args = call.Arguments;
        if (method is { IsSpecialName: true, Name: "get_Item" } && args.Count == 1)
            return Item(call, call.Object!, args[0]);
        switch (method.Name)
        {
            case nameof(Maths.Sqrt):
                return new RootNode(Of(args[0]));
            case nameof(Maths.Parallel) when method.DeclaringType == typeof(Maths):
                return new InfixNode("∥", Of(args[0]), Of(args[1]));
            case nameof(Balance.Of) when method.DeclaringType == typeof(Balance):
                return new InfixNode("=", Of(args[0]), Of(args[1]));
            case nameof(Math.Pow) when method.DeclaringType == typeof(Math) || method.DeclaringType == typeof(Maths):
                return new PowerNode(Of(args[0]), Of(args[1]));
            case nameof(Maths.PowerOfTen) when method.DeclaringType == typeof(Maths):
                return new PowerNode(new NumberNode("10"), Of(args[0]));
            case nameof(Gain.FromRatio) when method.DeclaringType == typeof(Gain):
            case nameof(UnitsNet.Ratio.FromDecimalFractions) when method.DeclaringType == typeof(UnitsNet.Ratio):
                return Of(args[0]);
            case nameof(Maths.Sum) when method.DeclaringType == typeof(Maths):
                return Sum(args[0], (LambdaExpression)Bare(args[1]));
        }

        var name = method.Name switch { nameof(Maths.Ln) => "ln", nameof(Maths.Log10) => "log₁₀", nameof(Maths.Gamma) => "Γ", _ when method.DeclaringType == typeof(Math) || method.DeclaringType == typeof(Maths) => method.Name.ToLowerInvariant(), _ => method.Name };
        var formula = Formula(call) is MethodInfo f ? FormulaName(f) : name;
        return new CallNode(formula, [.. args.Select(Of)]);
    }

    // An item of a list is the list's name with the index below it.
    private MathNode Item(Expression whole, Expression list, Expression index) => numbers || NameOf(list) is not { } name
        ? Shown(bindings.Value(whole))
        : new NameNode(FormattableString.Invariant($"{name}_{bindings.Value(index)}"));

    private MathNode Sum(Expression items, LambdaExpression term)
    {
        if (!numbers)
            return new SumNode(new NameNode(term.Parameters[0].Name!), Of(items), Of(term.Body));
        MathNode? sum = null;
        foreach (var item in (System.Collections.IEnumerable)bindings.Value(items))
        {
            var one = new MathTree(bindings.With(term.Parameters[0], item), numbers: true).Of(term.Body);
            sum = sum is null ? one : new InfixNode("+", sum, one);
        }

        return sum ?? new NumberNode("0");
    }

    private IEnumerable<(MathNode Value, MathNode? When)> Cases(Expression e)
    {
        while (Bare(e) is ConditionalExpression c)
        {
            yield return (Of(c.IfTrue), Of(c.Test));
            e = c.IfFalse;
        }

        yield return (Of(e), null);
    }

    // Only the branch that holds is worked out: the other may not exist for these numbers.
    private Expression Taken(ConditionalExpression c) => (bool)bindings.Value(c.Test) ? c.IfTrue : c.IfFalse;

    // A temperature that multiplies is absolute: kelvin stand in the line, not degrees.
    private MathNode Factor(Expression e) => numbers && IsLeaf(Bare(e)) && bindings.Value(e) is UnitsNet.Temperature t
        ? new NumberNode(Engineering.Text(t.Kelvins, "K", 0, 0, 5), Spaced: true)
        : Of(e);

    private MathNode Leaf(Expression e)
    {
        if (IsPi(e))
            return new NameNode("pi");
        if (numbers || NameOf(e) is not { } name)
            return Shown(bindings.Value(e));
        if (IsPlainNumber(e))
            return Of(((MemberExpression)e).Expression!);
        return e is MemberExpression { Expression: { } owner } && Formula(e) is null && NameOf(owner) is { } of && of != "self" && !IsHost(owner)
            ? new NameNode($"{name},{of}".Contains('_', StringComparison.Ordinal) ? name : $"{name}_{of}")
            : new NameNode(name);
    }

    private static NumberNode Shown(object value) => QuantityKinds.Find(value.GetType()) is { } kind
        ? new NumberNode(QuantityFormat.Short(value), kind.Symbol.Length > 0 || kind.Style is FormatStyle.Fraction)
        : new NumberNode(Plain(value));

    /// <summary>A value that is no quantity, as text: a list as its items, anything else by its own words.</summary>
    public static string Plain(object value) => value is System.Collections.IEnumerable list and not string
        ? string.Join(", ", list.Cast<object>().Select(item => Shown(item).Text))
        : value.ToString() ?? "";

    // What a closure or a notebook cell keeps its variables in has no name on the board.
    private static bool IsHost(Expression owner) =>
        Bare(owner) is ConstantExpression || owner.Type.Name.StartsWith("Submission#", StringComparison.Ordinal) || owner.Type.Name.StartsWith('<');

    private static bool IsPi(Expression e) => e is MemberExpression { Member: { Name: nameof(Constants.pi), DeclaringType: var type } } && type == typeof(Constants);

    // The number of a gain or a ratio goes by the name of the gain or ratio itself.
    private static bool IsPlainNumber(Expression e) => e is MemberExpression { Expression: not null, Member: { Name: var name, DeclaringType: var type } }
        && ((type == typeof(Gain) && name == nameof(Gain.Ratio)) || (type == typeof(UnitsNet.Ratio) && name == nameof(UnitsNet.Ratio.DecimalFractions)));

    private static bool IsLeaf(Expression e) => e is ParameterExpression or MemberExpression or ConstantExpression or MethodCallExpression;

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
