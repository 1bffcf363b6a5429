using System.Runtime.CompilerServices;
using System.Runtime.ExceptionServices;
using EightOhm.Quantities;

namespace EightOhm.Record;

/// <content>What must hold over conditions.</content>
public sealed partial class DesignRecord
{
    /// <summary>No conditions yet, beside the entries of this record: <c>record.Conditions().Range("x_mains", -m_tol, m_tol, "mains").Cases("Z_L", R_L, R_4)</c>.</summary>
    public Conditions Conditions() => new Conditions().Beside(new Arguments(this));

    /// <summary>Keeps the worst of a figure as a result, with where it is: it can be shown in a table, and used by rules.</summary>
    /// <typeparam name="T">The quantity.</typeparam>
    /// <param name="name">The symbol.</param>
    /// <param name="worst">The worst case: <c>use.Highest((Ratio x_mains, Angle phi) => …)</c>.</param>
    /// <param name="note">What the chapter says about it; kept from before when left out.</param>
    /// <param name="line">The line of the call; the compiler fills it in.</param>
    /// <returns>The value, in its SI unit.</returns>
    /// <exception cref="RecordException">The name is taken by something else or is not a symbol, the value would come from itself, or there is none; the
    /// record then keeps that there is no answer, and why.</exception>
    public T Compute<T>(string name, WorstCase<T> worst, string? note = null, [CallerLineNumber] int line = 0)
        where T : struct
    {
        ArgumentNullException.ThrowIfNull(worst);
        name = EntryNames.Check(name);
        lock (_gate)
        {
            Look();
            var slot = For(name, EntryRole.Computed, QuantityKinds.Of(typeof(T)));
            if (worst.Value is not { } value)
            {
                Commit(_content.WithoutAnswer([name], [], worst.Reason!), name);
                if (worst.Cause is ShortfallException)
                    ExceptionDispatchInfo.Throw(worst.Cause);
                throw new RecordException($"{name}: nobody can tell the worst {worst.Reason}", worst.Cause);
            }

            var (marks, hangsOnAll) = MarksOf(SourcesOf(name, line, worst.Entries), slot);
            Put(slot with { Value = value, Worst = worst, Rule = null, Marks = marks, HangsOnAll = hangsOnAll, Note = Words.Clean(note) ?? slot.Note });
            return value;
        }
    }

    /// <summary>Asks a limit of the worst of a figure over conditions: <c>record.Require("junction", use, (Ratio x_mains, Angle phi) => …).AtMost("T_jmax")</c>.
    /// The lambda's parameters pick conditions, or entries, by name. Of an upper limit the highest value is judged, of a lower one the lowest.</summary>
    /// <param name="label">The requirement in words; a name in braces is filled with the value in force.</param>
    /// <param name="over">The conditions; those that the lambda does not ask for cost nothing.</param>
    /// <param name="value">The figure; asked some fifty to some hundreds of times. What it and the conditions come from is found by reading the cells where
    /// somebody reads them (<see cref="CellSources"/>); otherwise the requirement hangs on every input that the record has.</param>
    /// <param name="line">The line of the call; the compiler fills it in.</param>
    /// <returns>What takes the limit, and searches then; without one nothing is required. Where the figure cannot be had somewhere under these conditions,
    /// nobody can tell how the requirement stands.</returns>
    /// <exception cref="RecordException">The label is empty; a parameter is neither a condition nor an entry, or of another type; or the figure is no quantity or number.</exception>
    public RequirementDraft Require<T1, TR>(string label, Conditions over, Func<T1, TR> value, [CallerLineNumber] int line = 0)
        where TR : struct => Draft(label, over, Lambdas.Of(value), line);

    /// <inheritdoc cref="Require{T1, TR}(string, Conditions, Func{T1, TR}, int)"/>
    public RequirementDraft Require<T1, T2, TR>(string label, Conditions over, Func<T1, T2, TR> value, [CallerLineNumber] int line = 0)
        where TR : struct => Draft(label, over, Lambdas.Of(value), line);

    /// <inheritdoc cref="Require{T1, TR}(string, Conditions, Func{T1, TR}, int)"/>
    public RequirementDraft Require<T1, T2, T3, TR>(string label, Conditions over, Func<T1, T2, T3, TR> value, [CallerLineNumber] int line = 0)
        where TR : struct => Draft(label, over, Lambdas.Of(value), line);

    /// <inheritdoc cref="Require{T1, TR}(string, Conditions, Func{T1, TR}, int)"/>
    public RequirementDraft Require<T1, T2, T3, T4, TR>(string label, Conditions over, Func<T1, T2, T3, T4, TR> value, [CallerLineNumber] int line = 0)
        where TR : struct => Draft(label, over, Lambdas.Of(value), line);

    /// <inheritdoc cref="Require{T1, TR}(string, Conditions, Func{T1, TR}, int)"/>
    public RequirementDraft Require<T1, T2, T3, T4, T5, TR>(string label, Conditions over, Func<T1, T2, T3, T4, T5, TR> value, [CallerLineNumber] int line = 0)
        where TR : struct => Draft(label, over, Lambdas.Of(value), line);

    /// <inheritdoc cref="Require{T1, TR}(string, Conditions, Func{T1, TR}, int)"/>
    public RequirementDraft Require<T1, T2, T3, T4, T5, T6, TR>(string label, Conditions over, Func<T1, T2, T3, T4, T5, T6, TR> value, [CallerLineNumber] int line = 0)
        where TR : struct => Draft(label, over, Lambdas.Of(value), line);

    /// <inheritdoc cref="Require{T1, TR}(string, Conditions, Func{T1, TR}, int)"/>
    public RequirementDraft Require<T1, T2, T3, T4, T5, T6, T7, TR>(string label, Conditions over, Func<T1, T2, T3, T4, T5, T6, T7, TR> value, [CallerLineNumber] int line = 0)
        where TR : struct => Draft(label, over, Lambdas.Of(value), line);

    /// <inheritdoc cref="Require{T1, TR}(string, Conditions, Func{T1, TR}, int)"/>
    public RequirementDraft Require<T1, T2, T3, T4, T5, T6, T7, T8, TR>(string label, Conditions over, Func<T1, T2, T3, T4, T5, T6, T7, T8, TR> value, [CallerLineNumber] int line = 0)
        where TR : struct => Draft(label, over, Lambdas.Of(value), line);

    private RequirementDraft Draft(string label, Conditions over, Lambda figure, int line)
    {
        label = CheckedLabel(label);
        ArgumentNullException.ThrowIfNull(over);
        WorstQuestion question;
        (IReadOnlyList<Mark> Marks, bool HangsOnAll) from;
        // Values and marks of one moment: what moves while the search runs makes its answer stale.
        lock (_gate)
        {
            Look();
            question = new(over.Beside(new Arguments(this)), figure);
            from = MarksOf(SourcesOf(label, line, question.Entries), new("", EntryRole.Computed, question.Kind));
        }

        return new((low, high) =>
        {
            LimitPair limits;
            lock (_gate)
                limits = Limits(label, question.Kind, low, high);
            var (highest, lowest) = question.Ask(high is not null, low is not null);
            lock (_gate)
                return Ask(new(label, null, new() { Kind = question.Kind, Highest = highest, Lowest = lowest, Marks = from.Marks, HangsOnAll = from.HangsOnAll }, limits));
        });
    }

    // What the cells tell, and the entries that the lambda names itself.
    private IReadOnlyCollection<string>? SourcesOf(string name, int line, IReadOnlyList<string> named) =>
        CellSources.Current?.Of(Path, name, line) is { } told ? [.. told, .. named] : null;

    private sealed class Arguments(DesignRecord record) : IEntryArguments
    {
        public IReadOnlyList<string> Names
        {
            get
            {
                lock (record._gate)
                    return [.. record._content.InOrder.Select(s => s.Name)];
            }
        }

        public void Take(string name)
        {
            lock (record._gate)
                record._conditions.Add(name.Normalize());
        }

        public (Type Type, object? Value, string? Reason)? Find(string name)
        {
            lock (record._gate)
            {
                record.Look();
                return record._content.Find(name) is { } slot ? (slot.Type, record._evaluation.ArgumentOf(name), record._evaluation.Of(name).Reason) : null;
            }
        }
    }
}
