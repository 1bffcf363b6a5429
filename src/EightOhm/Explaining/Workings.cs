using System.Linq.Expressions;

namespace EightOhm.Explaining;

/// <summary>Shows the working of a number: <c>Explain(() => Sqrt(P * R_L))</c>.</summary>
public static class Workings
{
    /// <summary>The symbols, the same with the numbers and units put in, and the result; for a library formula its steps and its source.</summary>
    /// <typeparam name="T">The result.</typeparam>
    /// <param name="expression">What to show. Variables keep their names.</param>
    /// <exception cref="InvalidOperationException">A whole number is divided by another, which drops the rest; the message says what to write.</exception>
    public static Explanation Explain<T>(Expression<Func<T>> expression)
    {
        ArgumentNullException.ThrowIfNull(expression);
        WholeDivision.Refuse(expression.Body);
        return new Explainer().Shown(expression.Body, Bindings.None);
    }

    /// <summary>The same for an expression over named values, such as an entry of the record.</summary>
    /// <param name="rule">The expression; its parameters are the names.</param>
    /// <param name="values">Their values, in order.</param>
    /// <exception cref="InvalidOperationException">A whole number is divided by another, which drops the rest; the message says what to write.</exception>
    public static Explanation Explain(LambdaExpression rule, params object[] values)
    {
        ArgumentNullException.ThrowIfNull(rule);
        ArgumentNullException.ThrowIfNull(values);
        WholeDivision.Refuse(rule.Body);
        return new Explainer().Shown(rule.Body, Bindings.Of(rule.Parameters, values));
    }

    /// <summary>An expression over named values in symbols only, with all its cases.</summary>
    /// <param name="rule">The expression; its parameters are the names.</param>
    public static MathNode InSymbols(LambdaExpression rule)
    {
        ArgumentNullException.ThrowIfNull(rule);
        return new MathTree(Bindings.None, numbers: false, applying: false).Of(rule.Body);
    }
}
