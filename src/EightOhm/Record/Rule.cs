using System.Linq.Expressions;

namespace EightOhm.Record;

/// <summary>A rule over other entries, made of the vocabulary only.</summary>
internal sealed class Rule(LambdaExpression lambda)
{
    private Func<object[], object>? _run;

    public LambdaExpression Lambda { get; } = lambda;

    /// <summary>The entries it comes from.</summary>
    public IReadOnlyList<string> Names { get; } = [.. lambda.Parameters.Select(p => p.Name!)];

    /// <summary>The rule as it reads.</summary>
    public string Text { get; } = RuleText.Of(lambda.Body);

    /// <summary>Computes the value; the interpreter does the same IEEE operations in the same order as the compiled lambda.</summary>
    public object Evaluate(object[] arguments) => (_run ??= Prepare())(arguments);

    private Func<object[], object> Prepare()
    {
        var arguments = Expression.Parameter(typeof(object[]), "arguments");
        var values = Lambda.Parameters.Select((p, i) => Expression.Assign(p, Expression.Convert(Expression.ArrayIndex(arguments, Expression.Constant(i)), p.Type)));
        var body = Expression.Block(Lambda.Parameters, [.. values, Expression.Convert(Lambda.Body, typeof(object))]);
        return Expression.Lambda<Func<object[], object>>(body, arguments).Compile(preferInterpretation: true);
    }
}
