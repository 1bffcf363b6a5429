using System.Linq.Expressions;
using System.Reflection;
using System.Text.Json;
using EightOhm.Explaining;
using EightOhm.Json;

namespace EightOhm.Record;

/// <summary>Writes a rule's expression as JSON, refusing by name whatever a record may not hold.</summary>
internal static class RuleWriter
{
    // A file deeper than what the reader takes could not be read again.
    private const int Deepest = (JsonReading.Depth / 2) - 8;

    /// <summary>Writes one expression.</summary>
    /// <exception cref="RecordException">The expression uses something outside the vocabulary, or is too deep.</exception>
    public static void Write(Utf8JsonWriter json, Expression expression)
    {
        if (json.CurrentDepth > 2 * Deepest)
            throw new RecordException($"More than {Deepest} operations stand in each other, which is too deep for a rule. Derive a part of it under a name of its own.");
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
            case BinaryExpression { Conversion: null, IsLifted: false } b when Operators.Sign(b.NodeType) is { } sign:
                WriteOperator(json, sign, b.NodeType, b.Method, b.Left, b.Right);
                break;
            case UnaryExpression { NodeType: ExpressionType.Convert, IsLifted: false } c:
                WriteConversion(json, c);
                break;
            case UnaryExpression { IsLifted: false } u when Operators.Sign(u.NodeType) is { } sign:
                WriteOperator(json, sign, u.NodeType, u.Method, u.Operand);
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
                json.WriteString("call", Vocabulary.NameOf(property) ?? throw RefuseProperty(property));
                WriteOperands(json, read.Expression is null ? [] : [read.Expression]);
                break;
            case MemberExpression { Member: FieldInfo field }:
                throw RefuseVariable(field);
            case NewExpression { Constructor: { } constructor } made:
                json.WriteString("call", Vocabulary.NameOf(constructor) ?? throw Refuse($"new {constructor.DeclaringType?.Name}(…)"));
                WriteOperands(json, [.. made.Arguments]);
                break;
            case NewArrayExpression { NodeType: ExpressionType.NewArrayInit } list:
                json.WriteString("list", KindNames.Name(list.Type.GetElementType()!) ?? throw Refuse($"A list of {list.Type.GetElementType()!.Name}"));
                WriteOperands(json, [.. list.Expressions]);
                break;
            default:
                throw Refuse($"{expression.NodeType} (in {expression})");
        }

        json.WriteEndObject();
    }

    // The file has the sign alone: what it means there must be what the compiler took it for here.
    private static void WriteOperator(Utf8JsonWriter json, string sign, ExpressionType type, MethodInfo? by, params Expression[] operands)
    {
        if (Meant(() => Operators.Method(type, [.. operands.Select(o => o.Type)])) != by)
            throw by is null ? Refuse($"{sign} of {string.Join(" and ", operands.Select(o => o.Type.Name))}") : RefuseMethod(by);
        json.WriteString("do", sign);
        WriteOperands(json, operands);
    }

    private static void WriteConversion(Utf8JsonWriter json, UnaryExpression conversion)
    {
        if (KindNames.Name(conversion.Type) is not { } to || Meant(() => Operators.Conversion(conversion.Operand.Type, conversion.Type)) != conversion.Method)
            throw Refuse($"A conversion of {conversion.Operand.Type.Name} to {conversion.Type.Name}");
        json.WriteString("convert", to);
        WriteOperands(json, conversion.Operand);
    }

    private static MethodInfo? Meant(Func<MethodInfo?> find)
    {
        try
        {
            return find();
        }
        catch (MissingMethodException e)
        {
            throw Refuse(e.Message);
        }
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
                return;
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
            default:
                throw Refuse(constant.Value is null ? "null" : $"A fixed value of {constant.Type.Name}");
        }

        json.WriteString("kind", constant.Type.Name);
    }

    private static RecordException RefuseVariable(FieldInfo field) => new(field is { IsPublic: true, IsStatic: true, DeclaringType: { IsPublic: true } owner }
        ? $"{owner.Name}.{field.Name} is not one of EightOhm's own values, and a rule of the record may use only those. Make it an entry: Target, Choose or Assume."
        : $"{field.Name} is a variable of the notebook; make it an entry (Target, Choose or Assume) and a parameter of the rule, so that the record can recompute without the notebook.");

    private static RecordException RefuseMethod(MethodInfo method) => Refuse($"{method.DeclaringType?.Name}.{method.Name}({string.Join(", ", method.GetParameters().Select(p => p.ParameterType.Name))})");

    private static RecordException RefuseProperty(PropertyInfo property) => Refuse($"{property.DeclaringType?.Name}.{property.Name}");

    private static RecordException Refuse(string what) => new(
        $"{what} cannot stand in a rule of the record: a rule uses only entries, numbers, quantities and EightOhm's own functions, so that it can be recomputed anywhere. Write it out in those, or compute the value in the cell and keep it with Compute.");
}
