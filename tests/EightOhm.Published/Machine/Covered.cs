using System.Linq.Expressions;
using System.Reflection;
using EightOhm.Explaining;

namespace EightOhm.Published.Machine;

/// <summary>Reads from an expression which functions of the library it puts to the test.</summary>
internal sealed class Covered : ExpressionVisitor
{
    private readonly SortedSet<string> _names = new(StringComparer.Ordinal);

    /// <summary>The formulas and solvers that an expression calls itself, by name; a solver without a balance to show counts too, as what is put to the test.</summary>
    public static IReadOnlyList<string> By(LambdaExpression expression)
    {
        var visitor = new Covered();
        visitor.Visit(expression.Body);
        return [.. visitor._names];
    }

    /// <summary>All formulas and solvers of the library.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        .. typeof(FormulaAttribute).Assembly.GetTypes()
            .SelectMany(t => t.GetMembers(BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly))
            .Where(Is).Select(Name).Distinct().Order(StringComparer.Ordinal),
    ];

    protected override Expression VisitMethodCall(MethodCallExpression node)
    {
        Note(node.Method);
        return base.VisitMethodCall(node);
    }

    protected override Expression VisitMember(MemberExpression node)
    {
        Note(node.Member);
        return base.VisitMember(node);
    }

    private void Note(MemberInfo member)
    {
        if (Is(member) || member.IsDefined(typeof(WorkedAttribute)))
            _names.Add(Name(member));
    }

    private static bool Is(MemberInfo member) =>
        member.IsDefined(typeof(FormulaAttribute)) || member.IsDefined(typeof(SolvesAttribute));

    private static string Name(MemberInfo member) => $"{member.DeclaringType!.Name}.{member.Name}";
}
