using System.Linq.Expressions;
using System.Reflection;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Explaining;

/// <content>Leaves: names and values.</content>
internal sealed partial class MathTree
{
    /// <summary>The parameter of a step that is the object the formula belongs to.</summary>
    private const string Self = "self";

    /// <summary>The name a leaf goes by, or null when it has none (a constant, a literal).</summary>
    public static string? NameOf(Expression e) => Bare(e) switch
    {
        ParameterExpression p => p.Name,
        MemberExpression m when Formula(m) is PropertyInfo f => FormulaName(f),
        MemberExpression m => m.Member.GetCustomAttribute<SymbolAttribute>()?.Text ?? m.Member.Name,
        _ => null,
    };

    public static string FormulaName(MemberInfo member) => member.GetCustomAttribute<FormulaAttribute>() is { Symbol.Length: > 0 } f
        ? f.Symbol
        : member.GetCustomAttribute<SymbolAttribute>()?.Text ?? member.Name;

    /// <summary>Whether an expression is what a closure or a notebook cell keeps its variables in: it has no name on paper.</summary>
    public static bool IsHost(Expression owner) =>
        Bare(owner) is ConstantExpression || owner.Type.Name.StartsWith("Submission#", StringComparison.Ordinal) || owner.Type.Name.StartsWith('<');

    /// <summary>A value as it stands in a formula.</summary>
    public static MathNode Shown(object? value) => value is not null && QuantityKinds.Find(value.GetType()) is { } kind
        ? new NumberNode(QuantityFormat.Short(value), kind.Symbol.Length > 0 || kind.Style is FormatStyle.Fraction)
        : new WordsNode(ObjectWords.Of(value));

    // An item of a list is the list's name with the index below it.
    private MathNode Item(Expression whole, Expression list, Expression index) => numbers || NameOf(list) is not { } name
        ? Shown(bindings.Value(whole))
        : new NameNode(FormattableString.Invariant($"{name}_{bindings.Value(index)}"));

    // A temperature that multiplies is absolute: kelvin stand in the line, not degrees.
    private MathNode Factor(Expression e) => numbers && IsLeaf(Bare(e)) && bindings.Value(e) is Temperature t
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
        // A formula of an object goes by its symbol; whose it is stands in the where line.
        if (Formula(e) is not null)
            Owner(((MemberExpression)e).Expression);
        return e is MemberExpression { Expression: { } owner } && Formula(e) is null && NameOf(owner) is { } of && of != Self && !IsHost(owner)
            ? new NameNode($"{name},{of}".Contains('_', StringComparison.Ordinal) ? name : $"{name}_{of}")
            : new NameNode(name);
    }

    private static bool IsPi(Expression e) => e is MemberExpression { Member: { Name: nameof(Constants.pi) or nameof(Constants.π), DeclaringType: var type } } && type == typeof(Constants);

    // The number of a gain or a ratio goes by the name of the gain or ratio itself.
    private static bool IsPlainNumber(Expression e) => e is MemberExpression { Expression: not null, Member: { Name: var name, DeclaringType: var type } }
        && ((type == typeof(Gain) && name == nameof(Gain.Ratio)) || (type == typeof(Ratio) && name == nameof(Ratio.DecimalFractions)));

    private static bool IsLeaf(Expression e) => e is ParameterExpression or MemberExpression or ConstantExpression or MethodCallExpression;
}
