using System.Linq.Expressions;
using System.Text;
using System.Text.Json;
using EightOhm.Explaining;
using EightOhm.Json;

namespace EightOhm.Record;

/// <summary>A rule over other entries, made of the vocabulary only.</summary>
internal sealed class Rule(LambdaExpression lambda)
{
    private Func<object[], object>? _run;
    private string? _json;
    private string? _symbols;

    public LambdaExpression Lambda { get; } = lambda;

    /// <summary>The entries it comes from.</summary>
    public IReadOnlyList<string> Names { get; } = [.. lambda.Parameters.Select(p => p.Name!)];

    /// <summary>The rule as a person writes it: k · V, not the code's k.DecimalFractions * V.</summary>
    public string Symbols => _symbols ??= MathText.Write(Workings.InSymbols(Lambda));

    /// <summary>The rule as it is typed.</summary>
    public string Text { get; } = RuleText.Of(lambda.Body);

    /// <summary>The rule's expression as the file has it, on one line.</summary>
    public string Json => _json ??= Written(Lambda);

    /// <summary>A cell's lambda as any other process will load it: what runs is never the cell's own.</summary>
    /// <exception cref="RecordException">It uses something outside the vocabulary, divides whole numbers, or is too deep for a file.</exception>
    public static Rule Rebuilt(LambdaExpression lambda)
    {
        if (WholeDivision.In(lambda.Body) is { } refused)
            throw new RecordException(refused);
        var text = Written(lambda);
        var parameters = lambda.Parameters.Select(p => Expression.Parameter(p.Type, p.Name)).ToList();
        try
        {
            return RuleReader.Read(JsonPart.Parse(Encoding.UTF8.GetBytes(text)), parameters, lambda.ReturnType);
        }
        catch (JsonFault fault)
        {
            throw new RecordException(fault.Message, fault);
        }
    }

    /// <summary>Computes the value; the interpreter does the same IEEE operations in the same order as the compiled lambda.</summary>
    public object Evaluate(object[] arguments) => (_run ??= Prepare())(arguments);

    private static string Written(LambdaExpression lambda)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, RecordJson.OneLine))
            RuleWriter.Write(json, lambda.Body);
        return Encoding.UTF8.GetString(stream.ToArray());
    }

    private Func<object[], object> Prepare()
    {
        var arguments = Expression.Parameter(typeof(object[]), "arguments");
        var values = Lambda.Parameters.Select((p, i) => Expression.Assign(p, Expression.Convert(Expression.ArrayIndex(arguments, Expression.Constant(i)), p.Type)));
        var body = Expression.Block(Lambda.Parameters, [.. values, Expression.Convert(Lambda.Body, typeof(object))]);
        return Expression.Lambda<Func<object[], object>>(body, arguments).Compile(preferInterpretation: true);
    }
}
