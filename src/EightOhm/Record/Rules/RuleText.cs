using System.Globalization;
using System.Linq.Expressions;

namespace EightOhm.Record;

/// <summary>A rule as a designer would type it: Sqrt(P * R_L), 100.W, rating.RmsVoltage.</summary>
internal static class RuleText
{
    private const int Atom = 10;

    public static string Of(Expression expression) => Write(expression).Text;

    private static (string Text, int Strength) Write(Expression expression) => expression switch
    {
        ParameterExpression p => (p.Name!, Atom),
        ConstantExpression c => (Constant(c.Value!), Atom),
        BinaryExpression b => Binary(b),
        UnaryExpression { NodeType: ExpressionType.Convert } c => Write(c.Operand),
        UnaryExpression u => (Sign(u.NodeType) + In(u.Operand, 8), 8),
        ConditionalExpression c => ($"{In(c.Test, 2)} ? {In(c.IfTrue, 2)} : {In(c.IfFalse, 1)}", 1),
        MethodCallExpression { Object: null } c when Literal(c) is { } literal => (literal, Atom),
        MethodCallExpression { Object: { } on } c => ($"{In(on, Atom)}.{c.Method.Name}({List(c.Arguments)})", Atom),
        MethodCallExpression c => ($"{Prefix(c.Method.DeclaringType)}{c.Method.Name}({List(c.Arguments)})", Atom),
        MemberExpression { Expression: { } on } m => ($"{In(on, Atom)}.{m.Member.Name}", Atom),
        MemberExpression m => (Prefix(m.Member.DeclaringType) + m.Member.Name, Atom),
        NewExpression n => ($"new {n.Type.Name}({List(n.Arguments)})", Atom),
        NewArrayExpression a => ($"[{List(a.Expressions)}]", Atom),
        _ => (expression.ToString(), 0),
    };

    private static string In(Expression expression, int least)
    {
        var (text, strength) = Write(expression);
        return strength < least ? $"({text})" : text;
    }

    private static string List(IEnumerable<Expression> items) => string.Join(", ", items.Select(Of));

    private static (string Text, int Strength) Binary(BinaryExpression b)
    {
        var (sign, strength) = b.NodeType switch
        {
            ExpressionType.Multiply => ("*", 7),
            ExpressionType.Divide => ("/", 7),
            ExpressionType.Modulo => ("%", 7),
            ExpressionType.Add => ("+", 6),
            ExpressionType.Subtract => ("-", 6),
            ExpressionType.LessThan => ("<", 5),
            ExpressionType.LessThanOrEqual => ("<=", 5),
            ExpressionType.GreaterThan => (">", 5),
            ExpressionType.GreaterThanOrEqual => (">=", 5),
            ExpressionType.Equal => ("==", 4),
            ExpressionType.NotEqual => ("!=", 4),
            ExpressionType.AndAlso => ("&&", 3),
            _ => ("||", 2),
        };
        return ($"{In(b.Left, strength)} {sign} {In(b.Right, strength + 1)}", strength);
    }

    private static string Sign(ExpressionType type) => type switch
    {
        ExpressionType.Negate => "-",
        ExpressionType.Not => "!",
        _ => "+",
    };

    private static string Constant(object value) => value is bool flag ? (flag ? "true" : "false") : Convert.ToString(value, CultureInfo.InvariantCulture)!;

    // Literals.get_W(100) is what the compiler leaves of 100.W.
    private static string? Literal(MethodCallExpression call) =>
        call.Method.DeclaringType == typeof(Quantities.Literals) && call.Arguments.Count == 1 && call.Method.Name.StartsWith("get_", StringComparison.Ordinal)
            ? $"{In(call.Arguments[0], Atom)}.{call.Method.Name[4..]}"
            : null;

    private static string Prefix(Type? owner) => owner == typeof(Quantities.Maths) || owner == typeof(Quantities.Constants) ? "" : owner?.Name + ".";
}
