using System.Linq.Expressions;
using EightOhm.Quantities;

namespace EightOhm.Record;

/// <content>Rules.</content>
public sealed partial class DesignRecord
{
    /// <summary>A rule over other entries, named by the lambda's parameters; recomputed whenever one of them moves, in any process, without a compiler.</summary>
    /// <remarks>The rule uses only entries, numbers, quantities and EightOhm's own functions; a variable of the notebook is refused: make it an entry.
    /// A rule that has no answer is kept all the same, and so is the reason: what hangs on it has no answer either.</remarks>
    /// <param name="name">The symbol.</param>
    /// <param name="rule">The rule, such as <c>(Power P, ElectricResistance R_L) => Sqrt(P * R_L)</c>; a part is taken as its device.</param>
    /// <param name="note">What the chapter says about it; kept from before when left out.</param>
    /// <returns>The value now.</returns>
    /// <exception cref="RecordException">The rule names an entry that is not there or is of another kind, uses what a record cannot hold, goes round in a circle, or has no answer.</exception>
    /// <typeparam name="T1">The kind of a parameter.</typeparam>
    /// <typeparam name="TR">What the rule gives.</typeparam>
    public TR Derive<T1, TR>(string name, Expression<Func<T1, TR>> rule, string? note = null)
        where TR : struct => (TR)KeepRule(name, rule, note);

    /// <inheritdoc cref="Derive{T1, TR}(string, Expression{Func{T1, TR}}, string?)"/>
    public TR Derive<T1, T2, TR>(string name, Expression<Func<T1, T2, TR>> rule, string? note = null)
        where TR : struct => (TR)KeepRule(name, rule, note);

    /// <inheritdoc cref="Derive{T1, TR}(string, Expression{Func{T1, TR}}, string?)"/>
    public TR Derive<T1, T2, T3, TR>(string name, Expression<Func<T1, T2, T3, TR>> rule, string? note = null)
        where TR : struct => (TR)KeepRule(name, rule, note);

    /// <inheritdoc cref="Derive{T1, TR}(string, Expression{Func{T1, TR}}, string?)"/>
    public TR Derive<T1, T2, T3, T4, TR>(string name, Expression<Func<T1, T2, T3, T4, TR>> rule, string? note = null)
        where TR : struct => (TR)KeepRule(name, rule, note);

    /// <inheritdoc cref="Derive{T1, TR}(string, Expression{Func{T1, TR}}, string?)"/>
    public TR Derive<T1, T2, T3, T4, T5, TR>(string name, Expression<Func<T1, T2, T3, T4, T5, TR>> rule, string? note = null)
        where TR : struct => (TR)KeepRule(name, rule, note);

    /// <inheritdoc cref="Derive{T1, TR}(string, Expression{Func{T1, TR}}, string?)"/>
    public TR Derive<T1, T2, T3, T4, T5, T6, TR>(string name, Expression<Func<T1, T2, T3, T4, T5, T6, TR>> rule, string? note = null)
        where TR : struct => (TR)KeepRule(name, rule, note);

    /// <inheritdoc cref="Derive{T1, TR}(string, Expression{Func{T1, TR}}, string?)"/>
    public TR Derive<T1, T2, T3, T4, T5, T6, T7, TR>(string name, Expression<Func<T1, T2, T3, T4, T5, T6, T7, TR>> rule, string? note = null)
        where TR : struct => (TR)KeepRule(name, rule, note);

    /// <inheritdoc cref="Derive{T1, TR}(string, Expression{Func{T1, TR}}, string?)"/>
    public TR Derive<T1, T2, T3, T4, T5, T6, T7, T8, TR>(string name, Expression<Func<T1, T2, T3, T4, T5, T6, T7, T8, TR>> rule, string? note = null)
        where TR : struct => (TR)KeepRule(name, rule, note);

    private object KeepRule(string name, LambdaExpression lambda, string? note)
    {
        ArgumentNullException.ThrowIfNull(lambda);
        name = EntryNames.Check(name);
        lock (_gate)
        {
            var rule = Built(name, lambda);
            foreach (var source in rule.Names.Where(n => n != name))
                _ = Known(source);
            var slot = For(name, EntryRole.Derived, QuantityKinds.Of(lambda.ReturnType));
            Put(slot with { Rule = rule, Value = null, Marks = [], HangsOnAll = false, Note = Words.Clean(note) ?? slot.Note });
            var outcome = _evaluation.Of(name);
            return outcome.Value ?? throw NoValue(name, outcome);
        }
    }

    // What runs is the rule as any other process will load it, never the cell's own lambda.
    private Rule Built(string what, LambdaExpression lambda)
    {
        if (QuantityKinds.Find(lambda.ReturnType) is null)
            throw new RecordException($"{what} would be {lambda.ReturnType.Name}, which the record cannot keep; a rule must give a quantity or a number{(lambda.ReturnType == typeof(decimal) ? " of type double: write (double)(…)" : "")}.");
        RuleSources.Check(what, lambda, _content.Find);
        try
        {
            return Rule.Rebuilt(lambda);
        }
        catch (RecordException e)
        {
            throw new RecordException($"{what}: {e.Message}", e);
        }
    }
}
