using EightOhm.Quantities;

namespace EightOhm.Record;

/// <summary>An entry's value in force and how it stands.</summary>
/// <param name="Value">The value, or null when a rule cannot be computed.</param>
/// <param name="State">In words.</param>
/// <param name="IsCurrent">Neither stale nor missing.</param>
/// <param name="Error">Why a rule could not be computed.</param>
internal sealed record Outcome(object? Value, string State, bool IsCurrent, Exception? Error = null);

/// <summary>The values that follow from what a record keeps: rules recomputed, stale results recognised.</summary>
internal sealed class Evaluation
{
    private readonly RecordContent _content;
    private readonly Dictionary<string, Outcome> _outcomes = new(StringComparer.Ordinal);

    /// <summary>Evaluates a content without cycles and without names that are not there.</summary>
    public Evaluation(RecordContent content)
    {
        _content = content;
        foreach (var slot in content.Slots)
            Of(slot.Name);
    }

    public Outcome Of(string name)
    {
        if (_outcomes.TryGetValue(name, out var known))
            return known;
        var slot = _content.Find(name) ?? throw new InvalidOperationException($"The record has no {name}.");
        return _outcomes[name] = slot.Role switch
        {
            EntryRole.Given => Given(slot),
            EntryRole.Let => Let(slot),
            _ => Found(slot),
        };
    }

    private static Outcome Given(Slot slot) => slot.Override is { } set
        ? new(set, $"{QuantityFormat.Short(set)}, set; the chapter says {QuantityFormat.Short(slot.Value!)}", true)
        : new(slot.Value, "given", true);

    private Outcome Let(Slot slot)
    {
        var sources = slot.From.Select(n => (Name: n, Outcome: Of(n))).ToList();
        if (sources.FirstOrDefault(s => s.Outcome.Value is null) is { Name: { } missing, Outcome.Error: var cause })
            return new(null, $"cannot be computed: {missing} has no value", false, cause);
        try
        {
            var value = slot.Rule!.Evaluate([.. sources.Select(s => s.Outcome.Value!)]);
            if (!double.IsFinite(KeptValue.Number(slot.Kind, value)))
                throw new RefusedValueException(slot.Name, $"{slot.Rule.Text} has no finite value; look for a division by zero.");
            return sources.FirstOrDefault(s => !s.Outcome.IsCurrent) is { Name: { } stale }
                ? new(value, $"stale: {stale} is stale", false)
                : new(value, "computed", true);
        }
        catch (Exception e) when (e is not (OutOfMemoryException or OperationCanceledException))
        {
            return new(null, $"cannot be computed: {e.Message}", false, e);
        }
    }

    private Outcome Found(Slot slot)
    {
        foreach (var (name, fingerprint) in slot.Marks)
        {
            var source = Of(name);
            if (source.Value is null)
                return new(slot.Value, $"stale: {name} has no value", false);
            if (KeptValue.Fingerprint(_content.Find(name)!.Kind, source.Value) != fingerprint)
                return new(slot.Value, $"stale: {name} moved", false);
            if (!source.IsCurrent)
                return new(slot.Value, $"stale: {name} is stale", false);
        }

        return new(slot.Value, "found", true);
    }
}
