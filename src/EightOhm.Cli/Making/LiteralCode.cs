using System.Globalization;
using System.Reflection;
using EightOhm.Quantities;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace EightOhm.Cli.Making;

/// <summary>An input's value as code, such as <c>4.7.kOhm</c>: from the code to the value and back.</summary>
/// <param name="Kind">The kind of quantity.</param>
/// <param name="Suffix">The literal's unit; null for a number, and for a kind made by its constructor.</param>
internal sealed record LiteralCode(QuantityKind Kind, string? Suffix)
{
    private static readonly Dictionary<string, MethodInfo> Units = typeof(Literals).GetMethods(BindingFlags.Public | BindingFlags.Static)
        .Where(m => m.Name.StartsWith("get_", StringComparison.Ordinal) && m.GetParameters() is [{ ParameterType: var type }] && type == typeof(double) && QuantityKinds.Find(m.ReturnType) is not null)
        .ToDictionary(m => m.Name[4..], StringComparer.Ordinal);

    /// <summary>Reads the code of a value; null when it is no literal.</summary>
    public static (LiteralCode Code, object Value)? Read(ExpressionSyntax expression) => expression switch
    {
        ParenthesizedExpressionSyntax p => Read(p.Expression),
        PrefixUnaryExpressionSyntax or LiteralExpressionSyntax => Number(expression) is { } n
            ? n is int ? (new(QuantityKinds.Find(typeof(int))!, null), n) : (new(QuantityKinds.Find(typeof(double))!, null), n)
            : null,
        MemberAccessExpressionSyntax { Name.Identifier.ValueText: var suffix } m when Units.TryGetValue(suffix, out var unit) && Number(m.Expression) is { } n =>
            (new(QuantityKinds.Find(unit.ReturnType)!, suffix), Of(unit, Convert.ToDouble(n, CultureInfo.InvariantCulture))),
        ObjectCreationExpressionSyntax { Type: var type, ArgumentList.Arguments: [var only] } when QuantityKinds.Find(type.ToString()) is { } kind && Number(only.Expression) is { } n =>
            (new(kind, null), kind.FromSi(Convert.ToDouble(n, CultureInfo.InvariantCulture))),
        _ => null,
    };

    /// <summary>The code of a value of this kind, in the unit that it had or the one that reads best.</summary>
    public string Write(object value)
    {
        var si = Kind.ToSi(value);
        if (Kind.Type == typeof(int))
            return ((int)value).ToString(CultureInfo.InvariantCulture);
        if (Kind.Type == typeof(double))
            return Plain(si) is var number && number.Contains('.', StringComparison.Ordinal) ? number : number + ".0";
        if (Suffix is null)
            return $"new {Kind.Name}({Plain(si)})";
        return Spelled(Suffix, si) is { Reads: true } own ? own.Text
            : Units.Where(u => u.Value.ReturnType == Kind.Type && u.Key.All(char.IsAscii)).Select(u => Spelled(u.Key, si)).Where(s => s is { Reads: true }).MinBy(s => s!.Text.Length)?.Text
                ?? Spelled(Suffix, si)!.Text;
    }

    // Straight units only: what is no multiple of one (decibels) is not a way to write a computed value.
    private static Spelling? Spelled(string suffix, double si)
    {
        var unit = Units[suffix];
        var kind = QuantityKinds.Find(unit.ReturnType)!;
        double At(double x) => kind.ToSi(Of(unit, x));
        if (suffix.StartsWith("dB", StringComparison.Ordinal))
            return null;
        var (zero, one) = (At(0), At(1));
        var number = double.Parse(((si - zero) / (one - zero)).ToString("G10", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        var text = Plain(number);
        return new($"{(number < 0 ? $"({text})" : text)}.{suffix}", number == 0 || Math.Abs(number) is >= 0.1 and < 1000);
    }

    private static string Plain(double x) => x.ToString("0.##########", CultureInfo.InvariantCulture);

    private static object Of(MethodInfo unit, double x) => unit.Invoke(null, BindingFlags.DoNotWrapExceptions, null, [x], null)!;

    private static object? Number(ExpressionSyntax expression) => expression switch
    {
        LiteralExpressionSyntax { Token.Value: int or double } l => l.Token.Value,
        ParenthesizedExpressionSyntax p => Number(p.Expression),
        PrefixUnaryExpressionSyntax p when p.IsKind(SyntaxKind.UnaryMinusExpression) => Number(p.Operand) switch { int i => -i, double d => -d, _ => null },
        _ => null,
    };

    private sealed record Spelling(string Text, bool Reads);
}
