using System.Runtime.CompilerServices;
using EightOhm.Quantities;

namespace EightOhm.Record;

/// <content>What only a cell can compute.</content>
public sealed partial class DesignRecord
{
    /// <summary>A result that only a cell can compute. What it came from is found by reading the cells where somebody reads them (<see cref="CellSources"/>); otherwise it hangs on every input that the record has. It is stale when any of them moves.</summary>
    /// <typeparam name="T">The quantity.</typeparam>
    /// <param name="name">The symbol.</param>
    /// <param name="value">The result; finite.</param>
    /// <param name="note">What the chapter says about it; kept from before when left out.</param>
    /// <param name="line">The line of the call; the compiler fills it in.</param>
    /// <returns>The value, in its SI unit.</returns>
    /// <exception cref="RecordException">The name is taken by something else or is not a symbol, or the value would come from itself.</exception>
    /// <exception cref="RefusedValueException">The value is not finite.</exception>
    public T Compute<T>(string name, T value, string? note = null, [CallerLineNumber] int line = 0)
        where T : struct
    {
        name = EntryNames.Check(name);
        var kind = QuantityKinds.Of(typeof(T));
        lock (_gate)
        {
            Look();
            var slot = For(name, EntryRole.Computed, kind);
            var (marks, hangsOnAll) = MarksOf(CellSources.Current?.Of(Path, name, line), slot);
            Put(slot with { Value = KeptValue.Normal(name, kind, value), Worst = null, Rule = null, Marks = marks, HangsOnAll = hangsOnAll, Note = Words.Clean(note) ?? slot.Note });
            return (T)KeptValue.Normal(name, kind, value);
        }
    }

    /// <summary>The same for a plain program: the lambda's parameters name the entries that the result comes from, and it must use nothing else.</summary>
    /// <remarks>A variable from outside is refused by its name, which is found in the lambda's code: the record could not know that it moved.
    /// When the lambda throws, the record keeps that there is no answer, and why.</remarks>
    /// <typeparam name="T1">The kind of a parameter; a part is taken as its device.</typeparam>
    /// <typeparam name="TR">The quantity.</typeparam>
    /// <param name="name">The symbol.</param>
    /// <param name="body">What computes it, such as <c>(Power P_d, ThermalResistance R_th) => Solve(P_d, R_th)</c>.</param>
    /// <param name="note">What the program says about it; kept from before when left out.</param>
    /// <returns>The value, in its SI unit.</returns>
    /// <exception cref="RecordException">The lambda captures something, or names an entry that is not there, is of another kind or has no answer.</exception>
    public TR Compute<T1, TR>(string name, Func<T1, TR> body, string? note = null)
        where TR : struct => (TR)Run(name, body, typeof(TR), note);

    /// <inheritdoc cref="Compute{T1, TR}(string, Func{T1, TR}, string?)"/>
    public TR Compute<T1, T2, TR>(string name, Func<T1, T2, TR> body, string? note = null)
        where TR : struct => (TR)Run(name, body, typeof(TR), note);

    /// <inheritdoc cref="Compute{T1, TR}(string, Func{T1, TR}, string?)"/>
    public TR Compute<T1, T2, T3, TR>(string name, Func<T1, T2, T3, TR> body, string? note = null)
        where TR : struct => (TR)Run(name, body, typeof(TR), note);

    /// <inheritdoc cref="Compute{T1, TR}(string, Func{T1, TR}, string?)"/>
    public TR Compute<T1, T2, T3, T4, TR>(string name, Func<T1, T2, T3, T4, TR> body, string? note = null)
        where TR : struct => (TR)Run(name, body, typeof(TR), note);

    /// <inheritdoc cref="Compute{T1, TR}(string, Func{T1, TR}, string?)"/>
    public TR Compute<T1, T2, T3, T4, T5, TR>(string name, Func<T1, T2, T3, T4, T5, TR> body, string? note = null)
        where TR : struct => (TR)Run(name, body, typeof(TR), note);

    /// <inheritdoc cref="Compute{T1, TR}(string, Func{T1, TR}, string?)"/>
    public TR Compute<T1, T2, T3, T4, T5, T6, TR>(string name, Func<T1, T2, T3, T4, T5, T6, TR> body, string? note = null)
        where TR : struct => (TR)Run(name, body, typeof(TR), note);

    /// <inheritdoc cref="Compute{T1, TR}(string, Func{T1, TR}, string?)"/>
    public TR Compute<T1, T2, T3, T4, T5, T6, T7, TR>(string name, Func<T1, T2, T3, T4, T5, T6, T7, TR> body, string? note = null)
        where TR : struct => (TR)Run(name, body, typeof(TR), note);

    /// <inheritdoc cref="Compute{T1, TR}(string, Func{T1, TR}, string?)"/>
    public TR Compute<T1, T2, T3, T4, T5, T6, T7, T8, TR>(string name, Func<T1, T2, T3, T4, T5, T6, T7, T8, TR> body, string? note = null)
        where TR : struct => (TR)Run(name, body, typeof(TR), note);

    private object Run(string name, Delegate body, Type gives, string? note)
    {
        ArgumentNullException.ThrowIfNull(body);
        name = EntryNames.Check(name);
        var kind = QuantityKinds.Of(gives);
        if (Captures.Find(body) is { } culprit)
            throw new RecordException($"{name}: {culprit}");
        lock (_gate)
        {
            Look();
            var slot = For(name, EntryRole.Computed, kind);
            var arguments = body.Method.GetParameters().Select(p => Argument(name, p)).ToArray();
            var (marks, _) = MarksOf([.. body.Method.GetParameters().Select(p => p.Name!)], slot);
            try
            {
                var value = KeptValue.Normal(name, kind, body.DynamicInvoke(arguments)!);
                Put(slot with { Value = value, Worst = null, Rule = null, Marks = marks, HangsOnAll = false, Note = Words.Clean(note) ?? slot.Note });
                return value;
            }
            catch (Exception e) when ((e is System.Reflection.TargetInvocationException ? e.InnerException! : e) is var cause and not (OutOfMemoryException or OperationCanceledException or RecordException or IOException))
            {
                Commit(_content.WithoutAnswer([name], [], Words.Clean(cause.Message)!), name);
                System.Runtime.ExceptionServices.ExceptionDispatchInfo.Throw(cause);
                throw;
            }
        }
    }

    private object Argument(string name, System.Reflection.ParameterInfo parameter)
    {
        var source = Known(parameter.Name!);
        if (source.Type != parameter.ParameterType)
            throw new RecordException($"{name} takes {source.Name} for {KindNames.Of(parameter.ParameterType)}, but the record has it as {source.KindName}. Write ({source.Type.Name} {source.Name}, …) => ….");
        return _evaluation.ArgumentOf(source.Name) ?? throw NoValue(source.Name, _evaluation.Of(source.Name));
    }

    // What a value came from as it stands now. A cell cannot tell a condition's name from an entry's, also through a function that others ask too; the record can. Null, or a name that the record does not have, means that nothing is known: then everything there is.
    private (IReadOnlyList<Mark> Marks, bool HangsOnAll) MarksOf(IReadOnlyCollection<string>? sources, Slot self)
    {
        var names = sources?.Select(s => s.Normalize()).Where(s => s != self.Name && (_content.Find(s) is not null || !_conditions.Contains(s))).Distinct(StringComparer.Ordinal).ToList();
        var known = names is not null && names.All(n => _content.Find(n) is not null);
        var slots = known
            ? names!.Select(n => _content.Find(n)!)
            : _content.InOrder.Where(s => s.Role.IsInput() || (s.Role == EntryRole.Computed && (self.Order < 0 || s.Order < self.Order)));
        return ([.. slots.Where(s => s.Name != self.Name).Select(s => new Mark(s.Name, NowOf(s)))], !known);
    }

    // The chapter works with a card as it read it, even if the file has changed since.
    private string NowOf(Slot slot) => slot.Role == EntryRole.Part
        ? ((PartFile)(slot.Override ?? slot.Value)!).Hash
        : (slot.Role == EntryRole.Computed ? slot.Value : _evaluation.Of(slot.Name).Value) is { } value ? KeptValue.Fingerprint(slot, value) : "";
}
