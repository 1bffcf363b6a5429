using System.Linq.Expressions;
using System.Reflection;
using EightOhm.Quantities;

namespace EightOhm.Explaining;

/// <summary>Makes one explanation: a line, the formulas that it calls one level down, each once.</summary>
internal sealed partial class Explainer
{
    private readonly HashSet<string> _opened = new(StringComparer.Ordinal);

    public Explanation Shown(Expression body, Bindings bindings) => WhereLines.EachObjectOnce(Whole(MathTree.Bare(body), bindings), new(StringComparer.Ordinal));

    private Explanation Whole(Expression body, Bindings bindings)
    {
        if (MathTree.Formula(body) is { } formula && Open(body, formula, bindings, levels: 1) is { } opened)
            return opened;
        var value = bindings.Value(body);
        var (line, objects) = Line("", body, bindings, value);
        // A method of somebody else's is no working: the reader is told so, instead of being shown a bare number.
        var unknown = body is MethodCallExpression { Method: { IsSpecialName: false } method } && FormulaFunction.Of(method) is null && method.DeclaringType != typeof(Literals)
            ? $"computed by {method.DeclaringType?.Name}, which does not say how"
            : null;
        return new Explanation("", [line], value, null, WhereLines.Of([line], [], objects), Called(body, bindings, 0), null) { Worked = unknown };
    }

    /// <summary>A line in symbols and numbers, with the objects whose functions it calls.</summary>
    internal static (WorkingLine Line, IReadOnlyList<(string Name, object Value)> Objects) Line(string name, Expression body, Bindings bound, object value)
    {
        var symbols = new MathTree(bound, numbers: false);
        var numbers = new MathTree(bound, numbers: true);
        var line = new WorkingLine(name, symbols.Line(body), numbers.Line(body), Result(value), value is bool)
        {
            Cases = [.. symbols.Cases.Zip(numbers.Cases, (s, n) => new CaseNote(s, n))],
        };
        return (line, symbols.Objects);
    }

    // A formula or solver: its own lines, its parameters bound to the values that the caller gave. Null when it has been shown already.
    private Explanation? Open(Expression call, MemberInfo member, Bindings caller, int levels)
    {
        var (owner, arguments) = call switch
        {
            MethodCallExpression m => (m.Object, m.Arguments.ToArray()),
            MemberExpression m => (m.Expression, []),
            _ => throw new ArgumentException("Only a method or a property can be a formula.", nameof(call)),
        };
        var given = arguments.Select(a => new GivenValue(a, caller.Value(a))).ToArray();
        var of = owner is null ? null : new GivenValue(owner, caller.Value(owner));
        if (!_opened.Add(Key(member, of is null ? given : [of, .. given])))
            return null;
        var shown = member switch
        {
            MethodInfo method when method.GetCustomAttribute<SolvesAttribute>() is { } solves => Solved(call, method, solves, of, given, caller),
            _ when member.GetCustomAttribute<WorkedAttribute>() is { } worked => Worked(call, worked, of, caller),
            _ => Formula(call, member, of, given, caller, levels),
        };
        // What the caller's expression computes on the way in is explained as well.
        return shown with { Opened = [.. shown.Opened, .. arguments.SelectMany(a => Called(a, caller, 0))] };
    }

    private Explanation Formula(Expression call, MemberInfo formula, GivenValue? of, GivenValue[] given, Bindings caller, int levels)
    {
        // The member itself first: its guards refuse what the steps, which skip them, would compute.
        caller.Value(call);
        return Steps(formula, of, given, caller, levels, MathTree.FormulaName(formula));
    }

    private Explanation Steps(MemberInfo formula, GivenValue? of, GivenValue[] given, Bindings caller, int levels, string name)
    {
        var steps = FormulaSteps.Of(formula)!;
        var lines = new List<WorkingLine>();
        var opened = new List<Explanation>();
        var objects = new List<(string, object)>();
        if (of is not null && MathTree.NameOf(of.Expression) is { } owner && owner != "self" && !MathTree.IsHost(of.Expression))
            objects.Add((owner, of.Value));
        List<object> values = of is null ? [] : [of.Value];
        values.AddRange(given.Select(g => g.Value));
        foreach (var step in steps.Lines)
        {
            var bound = Bindings.Of(step.Rule.Parameters, values);
            var value = step.Value(values);
            var (line, met) = Line(step.Name.Length > 0 ? step.Name : name, step.Rule.Body, bound, value);
            lines.Add(line);
            objects.AddRange(met);
            // A line that is nothing but a call explains nothing, however deep it stands.
            if (levels > 0 || MathTree.Formula(MathTree.Bare(step.Rule.Body)) is not null)
                opened.AddRange(Called(step.Rule.Body, bound, levels - 1));
            values.Add(value);
        }

        var source = formula.GetCustomAttribute<FormulaAttribute>()!.Source;
        var where = WhereLines.Of(lines, WhereLines.Renamed(steps.Parameters, given, caller), objects);
        return new Explanation(name, lines, values[^1], source, where, opened, null);
    }

    private List<Explanation> Called(Expression body, Bindings bound, int levels)
    {
        var opened = new List<Explanation>();
        foreach (var call in FormulaCalls.In(body, bound))
            if (Open(call, MathTree.Formula(call)!, bound, Math.Max(levels, 0)) is { } shown)
                opened.Add(shown);
        return opened;
    }

    // The same formula of the same numbers is shown once.
    private static string Key(MemberInfo member, IEnumerable<GivenValue> given) =>
        $"{member.DeclaringType}.{member}|{string.Join('|', given.Select(g => QuantityKinds.Find(g.Value.GetType()) is { } kind ? BitConverter.DoubleToInt64Bits(kind.ToSi(g.Value)) : g.Value.GetHashCode()))}";

    private static string Result(object? value) => value is not null && QuantityKinds.Find(value.GetType()) is not null ? QuantityFormat.Long(value) : ObjectWords.Of(value);
}

/// <summary>An argument: what the caller wrote, and its value.</summary>
internal sealed record GivenValue(Expression Expression, object Value);
