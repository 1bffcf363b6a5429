using System.Linq.Expressions;
using System.Text;
using EightOhm.Explaining;
using EightOhm.Quantities;

namespace EightOhm.Record;

public sealed partial class DesignRecord
{
    /// <summary>A rule over other entries, named by the lambda's parameters; recomputed whenever one of them moves, in any process, without a compiler.</summary>
    /// <remarks>The rule uses only entries, numbers, quantities and EightOhm's own functions; a variable of the notebook is refused: make it a Given.</remarks>
    /// <param name="name">The symbol.</param>
    /// <param name="rule">The rule, such as <c>(Power P, ElectricResistance R_L) => Sqrt(P * R_L)</c>.</param>
    /// <returns>The value now.</returns>
    /// <exception cref="RecordException">The rule names an entry that is not there or is of another kind, uses what a record cannot hold, goes round in a circle, or cannot be computed.</exception>
    /// <typeparam name="T1">The kind of a parameter.</typeparam>
    /// <typeparam name="TR">What the rule gives.</typeparam>
    public TR Let<T1, TR>(string name, Expression<Func<T1, TR>> rule)
        where TR : struct => (TR)Keep(name, rule);

    /// <inheritdoc cref="Let{T1, TR}(string, Expression{Func{T1, TR}})"/>
    public TR Let<T1, T2, TR>(string name, Expression<Func<T1, T2, TR>> rule)
        where TR : struct => (TR)Keep(name, rule);

    /// <inheritdoc cref="Let{T1, TR}(string, Expression{Func{T1, TR}})"/>
    public TR Let<T1, T2, T3, TR>(string name, Expression<Func<T1, T2, T3, TR>> rule)
        where TR : struct => (TR)Keep(name, rule);

    /// <inheritdoc cref="Let{T1, TR}(string, Expression{Func{T1, TR}})"/>
    public TR Let<T1, T2, T3, T4, TR>(string name, Expression<Func<T1, T2, T3, T4, TR>> rule)
        where TR : struct => (TR)Keep(name, rule);

    /// <inheritdoc cref="Let{T1, TR}(string, Expression{Func{T1, TR}})"/>
    public TR Let<T1, T2, T3, T4, T5, TR>(string name, Expression<Func<T1, T2, T3, T4, T5, TR>> rule)
        where TR : struct => (TR)Keep(name, rule);

    /// <inheritdoc cref="Let{T1, TR}(string, Expression{Func{T1, TR}})"/>
    public TR Let<T1, T2, T3, T4, T5, T6, TR>(string name, Expression<Func<T1, T2, T3, T4, T5, T6, TR>> rule)
        where TR : struct => (TR)Keep(name, rule);

    /// <inheritdoc cref="Let{T1, TR}(string, Expression{Func{T1, TR}})"/>
    public TR Let<T1, T2, T3, T4, T5, T6, T7, TR>(string name, Expression<Func<T1, T2, T3, T4, T5, T6, T7, TR>> rule)
        where TR : struct => (TR)Keep(name, rule);

    /// <inheritdoc cref="Let{T1, TR}(string, Expression{Func{T1, TR}})"/>
    public TR Let<T1, T2, T3, T4, T5, T6, T7, T8, TR>(string name, Expression<Func<T1, T2, T3, T4, T5, T6, T7, T8, TR>> rule)
        where TR : struct => (TR)Keep(name, rule);

    private object Keep(string name, LambdaExpression lambda)
    {
        ArgumentNullException.ThrowIfNull(lambda);
        name = EntryNames.Check(name);
        var kind = QuantityKinds.Find(lambda.ReturnType)
            ?? throw new RecordException($"{name} would be {lambda.ReturnType.Name}, which the record cannot keep; a rule must give a quantity or a number{(lambda.ReturnType == typeof(decimal) ? " of type double: write (double)(…)" : "")}.");
        lock (_gate)
        {
            var slot = Same(name, EntryRole.Let, kind) ?? new Slot(name, EntryRole.Let, kind);
            foreach (var parameter in lambda.Parameters)
            {
                // A rule that names itself is a circle, which says more than "not there".
                if (parameter.Name == name)
                    continue;
                var source = Known(parameter.Name!);
                if (source.Kind.Type != parameter.Type)
                    throw new RecordException($"{name} takes {source.Name} for {parameter.Type.Name}, but the record has it as {source.Kind.Name}. Write ({source.Kind.Name} {source.Name}, …) => ….");
            }

            Commit(_content.With(slot with { Rule = Rebuilt(name, lambda) }), mustHaveValue: name);
            return _evaluation.Of(name).Value!;
        }
    }

    // What runs is the rule as any other process will load it, never the cell's own lambda.
    private static Rule Rebuilt(string name, LambdaExpression lambda)
    {
        if (WholeDivision.In(lambda.Body) is { } refused)
            throw new RecordException($"{name}: {refused}");
        try
        {
            var text = RecordWriter.Text(json => RuleWriter.Write(json, lambda.Body));
            var parameters = lambda.Parameters.Select(p => Expression.Parameter(p.Type, p.Name)).ToList();
            return RuleReader.Read(JsonPart.Parse(Encoding.UTF8.GetBytes(text)), parameters, lambda.ReturnType);
        }
        catch (RecordException e)
        {
            throw new RecordException($"{name}: {e.Message}", e);
        }
    }
}
