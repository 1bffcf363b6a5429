using System.Globalization;
using System.Linq.Expressions;
using System.Reflection;
using EightOhm.Json;

namespace EightOhm.Record;

/// <summary>Builds a rule from its JSON, out of the vocabulary only. Nothing is run.</summary>
internal static class RuleReader
{
    /// <summary>Reads one rule.</summary>
    /// <param name="body">The expression's JSON.</param>
    /// <param name="parameters">The entries it comes from.</param>
    /// <param name="result">What it must give; null where anything of a kind will do.</param>
    /// <exception cref="JsonFault">The JSON names something outside the vocabulary, or does not fit together.</exception>
    public static Rule Read(JsonPart body, IReadOnlyList<ParameterExpression> parameters, Type? result)
    {
        var expression = Build(body, parameters);
        return result is null || expression.Type == result
            ? new Rule(Expression.Lambda(expression, parameters))
            : throw body.Fault($"the expression gives {KindNames.Of(expression.Type)}, but the entry is {KindNames.Of(result)}.");
    }

    private static Expression Build(JsonPart part, IReadOnlyList<ParameterExpression> parameters)
    {
        var operands = part.Optional("of")?.Items.Select(o => Build(o, parameters)).ToArray() ?? [];
        try
        {
            return Node(part, operands, parameters);
        }
        catch (Exception e) when (e is ArgumentException or InvalidOperationException or FormatException or OverflowException or MissingMethodException)
        {
            throw part.Fault($"the expression does not fit together: {e.Message.Split('\n')[0]}", e);
        }
    }

    private static Expression Node(JsonPart part, Expression[] operands, IReadOnlyList<ParameterExpression> parameters)
    {
        switch (part.Members.Keys.FirstOrDefault())
        {
            case "entry":
                part.Allow("entry");
                var name = part["entry"].Text;
                return parameters.FirstOrDefault(p => p.Name == name) ?? throw part.Fault($"{name} is not among the entries that the rule comes from.");
            case "number":
                part.Allow("number", "kind");
                return Number(part["number"], part.Optional("kind"));
            case "flag":
                part.Allow("flag");
                return Expression.Constant(part["flag"].Flag);
            case "do":
                part.Allow("do", "of");
                return Operator(part["do"], operands);
            case "convert":
                part.Allow("convert", "of");
                var to = Type(part["convert"]);
                return Expression.Convert(Expect(part, operands, 1)[0], to, Operators.Conversion(operands[0].Type, to));
            case "either":
                part.Allow("either", "of");
                Expect(part, operands, 3);
                return Expression.Condition(operands[0], operands[1], operands[2]);
            case "call":
                part.Allow("call", "of");
                return Call(part["call"], operands);
            case "list":
                part.Allow("list", "of");
                return Expression.NewArrayInit(Type(part["list"]), operands);
            case var other:
                throw part.Fault($"an expression must start with entry, number, flag, do, convert, either, call or list (was {other ?? "empty"}).");
        }
    }

    private static Expression Operator(JsonPart sign, Expression[] operands)
    {
        if (!Operators.Signs.Contains(sign.Text))
            throw sign.Fault($"\"{sign.Text}\" is not an operator of a rule; known are {string.Join(" ", Operators.Signs)}.");
        var type = Operators.Find(sign.Text, operands.Length) ?? throw sign.Fault($"{sign.Text} takes another number of operands (there are {operands.Length}).");
        var method = Operators.Method(type, [.. operands.Select(o => o.Type)]);
        return operands.Length == 1 ? Expression.MakeUnary(type, operands[0], null!, method) : Expression.MakeBinary(type, operands[0], operands[1], liftToNull: false, method);
    }

    private static Expression Call(JsonPart name, Expression[] operands)
    {
        if (!Vocabulary.Knows(name.Text))
            throw name.Fault($"\"{name.Text}\" is not among EightOhm's own functions, and a rule may use no other; a newer EightOhm may know it.");
        var takes = string.Join(", ", operands.Select(o => KindNames.Of(o.Type)));
        return Vocabulary.Find(name.Text, [.. operands.Select(o => o.Type)]) switch
        {
            ConstructorInfo made => Expression.New(made, operands),
            PropertyInfo property => Expression.Property(property.GetMethod!.IsStatic ? null : operands[0], property),
            MethodInfo { IsStatic: true } method => Expression.Call(method, operands),
            MethodInfo method => Expression.Call(operands[0], method, operands[1..]),
            _ => throw name.Fault($"{name.Text} does not take ({takes})."),
        };
    }

    private static ConstantExpression Number(JsonPart number, JsonPart? kind) => kind?.Text switch
    {
        null => Expression.Constant(number.Number),
        "Int32" => Expression.Constant(int.Parse(number.NumberText, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture)),
        "Int64" => Expression.Constant(long.Parse(number.NumberText, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture)),
        "Decimal" => Expression.Constant(decimal.Parse(number.NumberText, NumberStyles.Float, CultureInfo.InvariantCulture)),
        _ => throw kind.Fault($"\"{kind.Text}\" is not a kind of number; known are Int32, Int64, Decimal, and none for a Double."),
    };

    private static Expression[] Expect(JsonPart part, Expression[] operands, int count) => operands.Length == count
        ? operands
        : throw part.Fault($"{count} operands are expected (were {operands.Length}).");

    private static Type Type(JsonPart part) => KindNames.Type(part.Text) ?? throw part.Fault($"\"{part.Text}\" is not a kind that a rule can hold.");
}
