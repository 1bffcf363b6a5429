using EightOhm.Explaining;
using System.Linq.Expressions;
using System.Reflection;
using System.Text.Json;

namespace EightOhm.Record;

/// <summary>Writes a rule's expression as JSON, refusing by name whatever a record may not hold.</summary>
internal static class RuleWriter
{
    /// <summary>Writes one expression.</summary>
    /// <exception cref="RecordException">The expression uses something outside the vocabulary.</exception>
    public static void Write(Utf8JsonWriter json, Expression expression)
    {
        json.WriteStartObject();
        expression = FormulaSteps.Unwrapped(expression);
        switch (expression)
        {
            case ParameterExpression parameter:
                json.WriteString("entry", parameter.Name);
                break;
            case ConstantExpression constant:
                WriteConstant(json, constant);
                break;
            case BinaryExpression { Conversion: null, IsLifted: false } b when IsOperator(b):
                WriteOperator(json, b.NodeType, b.Method, b.Left, b.Right);
                break;
            case UnaryExpression { NodeType: ExpressionType.Convert, IsLifted: false } c:
                json.WriteString("convert", TypeNames.Of(c.Type) ?? throw Refuse($"A conversion to {c.Type.Name}"));
                WriteBy(json, c.Method);
                WriteOperands(json, c.Operand);
                break;
            case UnaryExpression { IsLifted: false } u when IsOperator(u):
                WriteOperator(json, u.NodeType, u.Method, u.Operand);
                break;
            case ConditionalExpression choice:
                json.WriteBoolean("either", true);
                WriteOperands(json, choice.Test, choice.IfTrue, choice.IfFalse);
                break;
            case MethodCallExpression call:
                json.WriteString("call", Vocabulary.NameOf(call.Method) ?? throw RefuseMethod(call.Method));
                WriteOperands(json, call.Object is null ? [.. call.Arguments] : [call.Object, .. call.Arguments]);
                break;
            case MemberExpression { Member: PropertyInfo property } read:
                json.WriteString("read", Vocabulary.NameOf(property) ?? throw RefuseProperty(property));
                WriteOperands(json, read.Expression is null ? [] : [read.Expression]);
                break;
            case MemberExpression { Member: FieldInfo field }:
                throw RefuseVariable(field);
            case NewExpression { Constructor: { } constructor } made:
                json.WriteString("new", Vocabulary.NameOf(constructor) ?? throw Refuse($"new {constructor.DeclaringType?.Name}(…)"));
                WriteOperands(json, [.. made.Arguments]);
                break;
            case NewArrayExpression { NodeType: ExpressionType.NewArrayInit } list:
                json.WriteString("list", TypeNames.Of(list.Type.GetElementType()!) ?? throw Refuse($"A list of {list.Type.GetElementType()!.Name}"));
                WriteOperands(json, [.. list.Expressions]);
                break;
            default:
                throw Refuse($"{expression.NodeType} (in {expression})");
        }

        json.WriteEndObject();
    }

    private static bool IsOperator(Expression e) => Vocabulary.Operators.ContainsKey(e.NodeType.ToString());

    private static void WriteOperator(Utf8JsonWriter json, ExpressionType type, MethodInfo? by, params Expression[] operands)
    {
        json.WriteString("do", type.ToString());
        WriteBy(json, by);
        WriteOperands(json, operands);
    }

    private static void WriteBy(Utf8JsonWriter json, MethodInfo? by)
    {
        if (by is not null)
            json.WriteString("by", Vocabulary.NameOf(by) ?? throw RefuseMethod(by));
    }

    private static void WriteOperands(Utf8JsonWriter json, params Expression[] operands)
    {
        if (operands.Length == 0)
            return;
        json.WriteStartArray("of");
        foreach (var operand in operands)
            Write(json, operand);
        json.WriteEndArray();
    }

    private static void WriteConstant(Utf8JsonWriter json, ConstantExpression constant)
    {
        switch (constant.Value)
        {
            case double d when double.IsFinite(d):
                json.WriteNumber("number", d);
                break;
            case int i:
                json.WriteNumber("number", i);
                break;
            case long l:
                json.WriteNumber("number", l);
                break;
            case decimal m:
                json.WriteNumber("number", m);
                break;
            case bool b:
                json.WriteBoolean("flag", b);
                return;
            case Enum e when TypeNames.Of(constant.Type) is { } type:
                json.WriteString("choice", e.ToString());
                json.WriteString("kind", type);
                return;
            default:
                throw Refuse(constant.Value is null ? "null" : $"A fixed value of {constant.Type.Name}");
        }

        json.WriteString("kind", constant.Type.Name);
    }

    private static RecordException RefuseVariable(FieldInfo field) => new(field is { IsPublic: true, IsStatic: true, DeclaringType: { IsPublic: true } owner }
        ? $"{owner.Name}.{field.Name} is not one of EightOhm's own values, and a rule of the record may use only those. Make it a Given."
        : $"{field.Name} is a variable of the notebook; make it a Given and a parameter of the rule, so that the record can recompute without the notebook.");

    private static RecordException RefuseMethod(MethodInfo method) => Refuse($"{method.DeclaringType?.Name}.{method.Name}({string.Join(", ", method.GetParameters().Select(p => p.ParameterType.Name))})");

    private static RecordException RefuseProperty(PropertyInfo property) => Refuse($"{property.DeclaringType?.Name}.{property.Name}");

    private static RecordException Refuse(string what) => new(
        $"{what} cannot stand in a rule of the record: a rule uses only entries, numbers, quantities and EightOhm's own functions, so that it can be recomputed anywhere. Write it out in those, or compute the value in the cell and keep it with Found.");
}
