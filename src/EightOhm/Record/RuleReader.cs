using System.Globalization;
using System.Linq.Expressions;

namespace EightOhm.Record;

/// <summary>Builds a rule from its JSON, out of the vocabulary only. Nothing is run.</summary>
internal static class RuleReader
{
    /// <summary>Reads one rule.</summary>
    /// <param name="body">The expression's JSON.</param>
    /// <param name="parameters">The entries it comes from.</param>
    /// <param name="result">What it must give.</param>
    /// <exception cref="RecordFault">The JSON names something outside the vocabulary, or does not fit together.</exception>
    public static Rule Read(JsonPart body, IReadOnlyList<ParameterExpression> parameters, Type result)
    {
        var expression = Build(body, parameters);
        return expression.Type == result
            ? new Rule(Expression.Lambda(expression, parameters))
            : throw body.Fault($"the expression gives {expression.Type.Name}, but the entry is {result.Name}.");
    }

    private static Expression Build(JsonPart part, IReadOnlyList<ParameterExpression> parameters)
    {
        var operands = part.Optional("of")?.Items.Select(o => Build(o, parameters)).ToArray() ?? [];
        try
        {
            return Node(part, operands, parameters);
        }
        catch (Exception e) when (e is ArgumentException or InvalidOperationException or FormatException or OverflowException)
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
                var name = part.Member("entry").Text;
                return parameters.FirstOrDefault(p => p.Name == name) ?? throw part.Fault($"{name} is not among the entries that the rule comes from.");
            case "number":
                part.Allow("number", "kind");
                return Number(part.Member("number"), part.Member("kind"));
            case "flag":
                part.Allow("flag");
                return Expression.Constant(part.Member("flag").Flag);
            case "choice":
                part.Allow("choice", "kind");
                return Choice(part);
            case "do":
                part.Allow("do", "by", "of");
                return Operator(part, operands);
            case "convert":
                part.Allow("convert", "by", "of");
                return Conversion(part, Expect(part, operands, 1)[0]);
            case "either":
                part.Allow("either", "of");
                Expect(part, operands, 3);
                return Expression.Condition(operands[0], operands[1], operands[2]);
            case "call":
                part.Allow("call", "of");
                var call = part.Member("call");
                var method = Vocabulary.Method(call.Text) ?? throw Unknown(call);
                return method.IsStatic ? Expression.Call(method, operands) : Expression.Call(Expect(part, operands, method.GetParameters().Length + 1)[0], method, operands[1..]);
            case "read":
                part.Allow("read", "of");
                var read = part.Member("read");
                var property = Vocabulary.Property(read.Text) ?? throw Unknown(read);
                Expect(part, operands, property.GetMethod!.IsStatic ? 0 : 1);
                return Expression.Property(operands.FirstOrDefault(), property);
            case "new":
                part.Allow("new", "of");
                var made = part.Member("new");
                return Expression.New(Vocabulary.Constructor(made.Text) ?? throw Unknown(made), operands);
            case "list":
                part.Allow("list", "of");
                return Expression.NewArrayInit(Type(part.Member("list")), operands);
            case var other:
                throw part.Fault($"an expression must start with entry, number, flag, choice, do, convert, either, call, read, new or list (was {other ?? "empty"}).");
        }
    }

    private static Expression Operator(JsonPart part, Expression[] operands)
    {
        var name = part.Member("do");
        if (!Vocabulary.Operators.TryGetValue(name.Text, out var type))
            throw Unknown(name);
        var by = part.Optional("by") is { } b ? Vocabulary.Method(b.Text) ?? throw Unknown(b) : null;
        if (by is null && !operands.All(o => TypeNames.IsPrimitive(o.Type)))
            throw part.Fault($"{name.Text} of {string.Join(" and ", operands.Select(o => o.Type.Name))} must say by which function.");
        return type is ExpressionType.Negate or ExpressionType.UnaryPlus or ExpressionType.Not
            ? Expression.MakeUnary(type, Expect(part, operands, 1)[0], null!, by)
            : Expression.MakeBinary(type, Expect(part, operands, 2)[0], operands[1], liftToNull: false, by);
    }

    private static UnaryExpression Conversion(JsonPart part, Expression operand)
    {
        var to = Type(part.Member("convert"));
        if (part.Optional("by") is { } by)
            return Expression.Convert(operand, to, Vocabulary.Method(by.Text) ?? throw Unknown(by));
        return (TypeNames.IsPrimitive(operand.Type) && TypeNames.IsPrimitive(to)) || to.IsAssignableFrom(operand.Type)
            ? Expression.Convert(operand, to)
            : throw part.Fault($"a conversion from {operand.Type.Name} to {to.Name} must say by which function.");
    }

    private static ConstantExpression Number(JsonPart number, JsonPart kind) => kind.Text switch
    {
        "Double" => Expression.Constant(number.Number),
        "Int32" => Expression.Constant(int.Parse(number.NumberText, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture)),
        "Int64" => Expression.Constant(long.Parse(number.NumberText, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture)),
        "Decimal" => Expression.Constant(decimal.Parse(number.NumberText, NumberStyles.Float, CultureInfo.InvariantCulture)),
        _ => throw kind.Fault($"\"{kind.Text}\" is not a kind of number; known are Double, Int32, Int64, Decimal."),
    };

    private static ConstantExpression Choice(JsonPart part)
    {
        var type = Type(part.Member("kind"));
        var choice = part.Member("choice");
        return type.IsEnum && Enum.GetNames(type).Contains(choice.Text)
            ? Expression.Constant(Enum.Parse(type, choice.Text), type)
            : throw choice.Fault($"\"{choice.Text}\" is not a choice of {type.Name}.");
    }

    private static Expression[] Expect(JsonPart part, Expression[] operands, int count) => operands.Length == count
        ? operands
        : throw part.Fault($"{count} operands are expected (were {operands.Length}).");

    private static Type Type(JsonPart part) => TypeNames.Find(part.Text) ?? throw Unknown(part);

    private static RecordFault Unknown(JsonPart part) => part.Fault($"\"{part.Text}\" is not among EightOhm's own functions and types, and a rule may use no other.");
}
