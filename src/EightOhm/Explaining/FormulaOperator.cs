using System.Collections.Generic;

namespace EightOhm.Explaining;

/// <summary>An operator of formulas. One list says what a <c>[Formula]</c> may be made of, how it is shown, and what a saved rule may hold.</summary>
/// <remarks>The generator, which cannot refer to this project, compiles this same file; so names of the compiler's kinds stand here as text.</remarks>
internal sealed class FormulaOperator(string node, string syntax, string code, int operands, string method, string sign, string means, string example)
{
    /// <summary>The operators, in the order of docs/formulas.md.</summary>
    public static readonly IReadOnlyList<FormulaOperator> All =
    [
        new("Add", "AddExpression", "+", 2, "op_Addition", "+", "a sum", "a + b"),
        new("Subtract", "SubtractExpression", "-", 2, "op_Subtraction", "−", "a difference", "a - b"),
        new("Multiply", "MultiplyExpression", "*", 2, "op_Multiply", "·", "a product; x * x reads as a square", "a * b"),
        new("Divide", "DivideExpression", "/", 2, "op_Division", "/", "a fraction; of two whole numbers it is an error, write n / 2.0", "a / b"),
        new("Modulo", "ModuloExpression", "%", 2, "op_Modulus", "mod", "the rest of a division", "a % b"),
        new("Negate", "UnaryMinusExpression", "-", 1, "op_UnaryNegation", "−", "a sign", "-a"),
        new("UnaryPlus", "UnaryPlusExpression", "+", 1, "op_UnaryPlus", "", "nothing", "+a"),
        new("LessThan", "LessThanExpression", "<", 2, "op_LessThan", "<", "a condition", "a < b"),
        new("LessThanOrEqual", "LessThanOrEqualExpression", "<=", 2, "op_LessThanOrEqual", "≤", "a condition", "a <= b"),
        new("GreaterThan", "GreaterThanExpression", ">", 2, "op_GreaterThan", ">", "a condition", "a > b"),
        new("GreaterThanOrEqual", "GreaterThanOrEqualExpression", ">=", 2, "op_GreaterThanOrEqual", "≥", "a condition", "a >= b"),
        new("Equal", "EqualsExpression", "==", 2, "op_Equality", "=", "a condition", "a == b"),
        new("NotEqual", "NotEqualsExpression", "!=", 2, "op_Inequality", "≠", "a condition", "a != b"),
        new("AndAlso", "LogicalAndExpression", "&&", 2, "", "and", "both conditions", "a && b"),
        new("OrElse", "LogicalOrExpression", "||", 2, "", "or", "either condition", "a || b"),
        new("Not", "LogicalNotExpression", "!", 1, "", "not", "that a condition does not hold", "!(a > b)"),
    ];

    /// <summary>Its kind in an expression tree.</summary>
    public string Node { get; } = node;

    /// <summary>Its kind in the compiler's syntax.</summary>
    public string Syntax { get; } = syntax;

    /// <summary>Its sign in code and in saved rules.</summary>
    public string Code { get; } = code;

    /// <summary>One or two.</summary>
    public int Operands { get; } = operands;

    /// <summary>The method that a type gives it a meaning by; empty where only truth values have it.</summary>
    public string Method { get; } = method;

    /// <summary>Its sign in a shown formula.</summary>
    public string Sign { get; } = sign;

    /// <summary>What it reads as.</summary>
    public string Means { get; } = means;

    /// <summary>An example in code.</summary>
    public string Example { get; } = example;
}
