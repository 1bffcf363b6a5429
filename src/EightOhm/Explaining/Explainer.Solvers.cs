using System.Linq.Expressions;
using System.Reflection;
using EightOhm.Quantities;

namespace EightOhm.Explaining;

/// <content>Solvers: by the equation that they satisfy, or by what they say of their method.</content>
internal sealed partial class Explainer
{
    private Explanation Solved(Expression call, MethodInfo solver, SolvesAttribute solves, GivenValue? of, GivenValue[] given, Bindings caller)
    {
        var (value, iterations) = Traced(call, caller);
        var balance = solver.DeclaringType!.GetMethod(solves.Balance, BindingFlags.Static | BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic)
            ?? throw new InvalidOperationException($"{solver.Name} names the balance {solves.Balance}, which {solver.DeclaringType.Name} does not have.");
        var names = solver.GetParameters().Select(p => p.Name!).ToList();
        var unknown = balance.GetParameters().Select(p => p.Name!).Single(p => !names.Contains(p));
        var put = balance.GetParameters()
            .Select(p => p.Name == unknown ? new GivenValue(Expression.Constant(value), value) : given[names.IndexOf(p.Name!)])
            .ToArray();
        var shown = Steps(balance, balance.IsStatic ? null : of, put, caller, 0, "");
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

    private static Explanation Worked(Expression call, WorkedAttribute worked, GivenValue? of, Bindings caller)
    {
        var (value, iterations) = Traced(call, caller);
        var (line, objects) = Line("", call, caller, value);
        if (of is not null && call is MemberExpression && MathTree.NameOf(of.Expression) is { } name && !MathTree.IsHost(of.Expression))
            objects = [.. objects, (name, of.Value)];
        var steps = iterations is { } n ? FormattableString.Invariant($", {n} iterations") : "";
        return new Explanation("", [line], value, worked.Source.Length > 0 ? worked.Source : null, WhereLines.Of([line], [], objects), [], null) { Worked = worked.How + steps };
    }

    private static (object Value, int? Iterations) Traced(Expression call, Bindings caller)
    {
        SolverTrace.Take();
        var value = caller.Value(call);
        return (value, SolverTrace.Take());
    }

    private static string LeftOver(object left, object right)
    {
        var kind = QuantityKinds.Of(left.GetType());
        return QuantityFormat.Short(kind.FromSi(kind.ToSi(left) - kind.ToSi(right)), 2);
    }
}
