using System.Linq.Expressions;
using System.Reflection;
using EightOhm.Quantities;

namespace EightOhm.Explaining;

/// <summary>Shows the working of a number: <c>Explain(() => Sqrt(P * R_L))</c>.</summary>
public static class Workings
{
    /// <summary>The symbols, the same with the numbers and units put in, and the result; for a library formula its lines and its source.</summary>
    /// <typeparam name="T">The result.</typeparam>
    /// <param name="expression">What to show. Variables keep their names.</param>
    public static Explanation Explain<T>(Expression<Func<T>> expression)
    {
        ArgumentNullException.ThrowIfNull(expression);
        return Shown(expression.Body, Bindings.None);
    }

    /// <summary>The same for an expression over named values, such as an entry of the record.</summary>
    /// <param name="rule">The expression; its parameters are the names.</param>
    /// <param name="values">Their values, in order.</param>
    public static Explanation Explain(LambdaExpression rule, params object[] values)
    {
        ArgumentNullException.ThrowIfNull(rule);
        ArgumentNullException.ThrowIfNull(values);
        return Shown(rule.Body, Bound(rule.Parameters, values));
    }

    /// <summary>An expression over named values in symbols only.</summary>
    /// <param name="rule">The expression; its parameters are the names.</param>
    public static MathNode InSymbols(LambdaExpression rule)
    {
        ArgumentNullException.ThrowIfNull(rule);
        return new MathTree(Bindings.None, numbers: false).Of(rule.Body);
    }

    private static Explanation Shown(Expression body, Bindings bindings)
    {
        body = MathTree.Bare(body);
        if (MathTree.Formula(body) is { } formula)
            return Opened(body, formula, bindings, depth: 1);
        var value = bindings.Value(body);
        return new Explanation("", [Line("", body, bindings, value)], value, null, [], [.. Called(body, bindings, 1)], null);
    }

    // A formula: its own lines, its parameters bound to the values that the caller gave.
    private static Explanation Opened(Expression call, MemberInfo formula, Bindings caller, int depth)
    {
        var (owner, arguments) = call switch
        {
            MethodCallExpression m => (m.Object, m.Arguments.ToArray()),
            MemberExpression m => (m.Expression, []),
            _ => throw new ArgumentException("Only a method or a property can be a formula.", nameof(call)),
        };
        // The member itself first: its guards refuse what the board, which skips them, would compute.
        if (formula.GetCustomAttribute<SolvesAttribute>() is null)
            caller.Value(call);
        var given = (owner is null ? arguments : [owner, .. arguments]).Select(a => (Expression: a, Value: caller.Value(a))).ToArray();
        return formula.GetCustomAttribute<SolvesAttribute>() is { } solves
            ? Solved((MethodCallExpression)call, solves, given, caller)
            : Lines(formula, Board.Of(formula)!, given, caller, depth, MathTree.FormulaName(formula));
    }

    private static Explanation Lines(MemberInfo formula, Board board, (Expression Expression, object Value)[] given, Bindings caller, int depth, string name)
    {
        var lines = new List<WorkingLine>();
        var opened = new List<Explanation>();
        var values = given.Select(g => g.Value).ToList();
        foreach (var line in board.Lines)
        {
            var bound = Bound(line.Rule.Parameters, values);
            var value = line.Value(values);
            lines.Add(Line(line.Name.Length > 0 ? line.Name : name, line.Rule.Body, bound, value));
            if (depth > 0)
                opened.AddRange(Called(line.Rule.Body, bound, depth - 1));
            values.Add(value);
        }

        var source = formula.GetCustomAttribute<FormulaAttribute>()!.Source;
        return new Explanation(name, lines, values[^1], source, [.. Where(board, given, caller)], opened, null);
    }

    private static Explanation Solved(MethodCallExpression call, SolvesAttribute solves, (Expression Expression, object Value)[] given, Bindings caller)
    {
        SolverTrace.Take();
        var value = caller.Value(call);
        var iterations = SolverTrace.Take();
        var balance = call.Method.DeclaringType!.GetMethod(solves.Balance, BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic)
            ?? throw new InvalidOperationException($"{call.Method.Name} names the balance {solves.Balance}, which {call.Method.DeclaringType.Name} does not have.");
        var names = call.Method.GetParameters().Select(p => p.Name!).ToList();
        var unknown = balance.GetParameters().Select(p => p.Name!).Single(p => !names.Contains(p));
        var put = balance.GetParameters()
            .Select(p => p.Name == unknown ? (Expression.Constant(value), value) : given[names.IndexOf(p.Name!)])
            .Select(g => ((Expression)g.Item1, g.Item2)).ToArray();
        var shown = Lines(balance, Board.Of(balance)!, put, caller, 0, "");
        var sides = (IBalance)shown.Value;
        var equation = shown.Lines[^1];
        IReadOnlyList<WorkingLine> lines =
        [
            .. shown.Lines.SkipLast(1),
            new("", equation.InSymbols, equation.InSymbols, ""),
            new("", equation.InNumbers, equation.InNumbers, ""),
            new(unknown, new NameNode(unknown), new NameNode(unknown), QuantityFormat.Long(value)),
        ];
        var note = new SolvedNote(QuantityFormat.Short(sides.LeftSide), QuantityFormat.Short(sides.RightSide), LeftOver(sides.LeftSide, sides.RightSide), iterations);
        return shown with { Name = unknown, Value = value, Lines = lines, Where = [.. shown.Where.Where(w => w.Name != unknown)], Solved = note };
    }

    private static string LeftOver(object left, object right)
    {
        var kind = QuantityKinds.Of(left.GetType());
        return QuantityFormat.Short(kind.FromSi(kind.ToSi(left) - kind.ToSi(right)), 2);
    }

    private static WorkingLine Line(string name, Expression body, Bindings bound, object value) =>
        new(name, new MathTree(bound, numbers: false).Of(body), new MathTree(bound, numbers: true).Of(body), Result(value));

    private static string Result(object value) => QuantityKinds.Find(value.GetType()) is null ? MathTree.Plain(value) : QuantityFormat.Long(value);

    private static IEnumerable<WorkingLine> Where(Board board, (Expression Expression, object Value)[] given, Bindings caller)
    {
        var shift = given.Length - board.Parameters.Count;
        for (var i = 0; i < board.Parameters.Count; i++)
        {
            var (expression, value) = given[i + shift];
            if (MathTree.NameOf(expression) == board.Parameters[i])
                continue;
            yield return Line(board.Parameters[i], expression, caller, value);
        }
    }

    private static IEnumerable<Explanation> Called(Expression body, Bindings bound, int depth)
    {
        var finder = new FormulaCalls(bound);
        finder.Visit(body);
        return finder.Found.DistinctBy(f => f.ToString()).Select(f => Opened(f, MathTree.Formula(f)!, bound, depth - 1 < 0 ? 0 : depth - 1));
    }

    private static Bindings Bound(IReadOnlyList<ParameterExpression> parameters, IReadOnlyList<object> values) =>
        parameters.Zip(values).Aggregate(Bindings.None, (known, p) => known.With(p.First, p.Second));
}
