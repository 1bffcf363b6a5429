using System.Text.RegularExpressions;
using EightOhm.Quantities;

namespace EightOhm.Record;

/// <summary>Holds requirements against the values in force.</summary>
internal sealed partial class Judgement(RecordContent content, Evaluation evaluation)
{
    private const string Dash = "–";

    /// <summary>How a requirement stands. It is called met only where value and limit both belong to the inputs in force.</summary>
    public Requirement Of(Clause clause)
    {
        var (low, high) = (LimitOf(clause.Limit.Low), LimitOf(clause.Limit.High));
        var worst = clause.Worst?.Deciding(NumberOf(low, clause.Worst), NumberOf(high, clause.Worst));
        var value = worst is null ? EntrySide(clause.Entry!) : WorstSide(clause.Worst!, worst);
        var shown = new Requirement(Label(clause.Label), clause.Label, clause.Entry, Text(value.Value), worst?.At is { Length: > 0 } at ? at : null, Asked(clause.Limit, low, high, true), clause.Limit.Names, null, RequirementState.CannotTell, null) { Worst = worst, Asked = Asked(clause.Limit, low, high, false), Lowest = low?.Known, Highest = high?.Known };
        if (content.Unasked.TryGetValue(clause.Label, out var lost))
            return shown with { Value = Dash, State = RequirementState.CannotTell, Reason = lost.Reason };
        foreach (var side in new[] { value, low, high }.OfType<Side>().OrderBy(s => s.State == RequirementState.CannotTell ? 0 : 1))
        {
            if (side.State is { } state)
                return shown with { State = state, Reason = side.Reason };
        }

        foreach (var limit in new[] { low, high }.OfType<Side>())
        {
            if (limit.Kind!.Type != value.Kind!.Type)
                return shown with { State = RequirementState.CannotTell, Reason = $"the value is {KindNames.Of(value.Kind)}, its limit {KindNames.Of(limit.Kind)}" };
        }

        return Compared(shown, value, low, high);
    }

    /// <summary>A requirement that a run did not come to: its limit is not known.</summary>
    public Requirement Lost(LostRequirement lost, string reason) => new(Label(lost.Label), lost.Label, lost.Entry, Dash, null, Dash, [], null, RequirementState.CannotTell, reason);

    private static Requirement Compared(Requirement shown, Side value, Side? low, Side? high)
    {
        var (lowest, highest) = (low?.Number, high?.Number);
        if (lowest > highest)
            return shown with { State = RequirementState.CannotTell, Reason = $"the lower limit, {Text(low!.Value)}, is above the upper one, {Text(high!.Value)}" };
        var margin = Margin.Of(value.Kind!, value.Number, lowest, highest);
        return margin.Met
            ? shown with { Margin = margin, State = RequirementState.Met }
            : shown with { Margin = margin, State = RequirementState.NotMet, Reason = Short(value, margin.Side == "upper" || low is null ? high! : low) };
    }

    private static string Short(Side value, Side limit)
    {
        var kind = value.Kind!;
        var by = Math.Abs(value.Number - limit.Number);
        var amount = kind.Style switch
        {
            FormatStyle.Celsius => QuantityFormat.Short(UnitsNet.TemperatureDelta.FromKelvins(by)),
            FormatStyle.Gain when value.Number > 0 && limit.Number > 0 => $"{Engineering.Number(Math.Abs(20 * Math.Log10(value.Number / limit.Number)), 3)} dB",
            _ => QuantityFormat.Short(KeptValue.Value(kind, by)),
        };
        return value.Number > limit.Number ? $"over by {amount}" : $"short by {amount}";
    }

    // A limit of another kind decides nothing, and is told as a fault.
    private static double? NumberOf(Side? limit, WorstValue worst) => limit is { Value: not null } && limit.Kind!.Type == worst.Kind.Type ? limit.Number : null;

    private Side WorstSide(WorstValue found, WorstCase worst)
    {
        if (evaluation.Moved(found.Marks, found.HangsOnAll) is var (state, reason))
            return new(found.Kind, state == EntryState.Stale ? worst.Value : null, state == EntryState.Stale ? RequirementState.Stale : RequirementState.CannotTell, reason);
        return worst.Value is null ? new(found.Kind, null, RequirementState.CannotTell, worst.Reason) : new(found.Kind, worst.Value, null, null);
    }

    private Side? LimitOf(LimitNode? limit)
    {
        if (limit is null)
            return null;
        if (limit.Constant is { } constant)
            return new(limit.Kind, constant, null, null);
        return limit.Entry is { } name ? EntrySide(name) : RuleSide(limit);
    }

    private Side RuleSide(LimitNode limit)
    {
        var rule = limit.Rule!;
        Side? stale = null;
        var arguments = new List<object>();
        foreach (var parameter in rule.Lambda.Parameters)
        {
            if (content.Find(parameter.Name!) is { } slot && slot.Type != parameter.Type)
                return new(null, null, RequirementState.CannotTell, $"{slot.Name} is {slot.KindName} now, and the limit's rule takes it for {KindNames.Of(parameter.Type)}");
            if (evaluation.ArgumentOf(parameter.Name!) is not { } argument)
                return EntrySide(parameter.Name!);
            arguments.Add(argument);
            if (QuantityKinds.Find(parameter.Type) is not null && EntrySide(parameter.Name!) is { State: not null } moved)
                stale ??= moved;
        }

        try
        {
            var value = rule.Evaluate([.. arguments]);
            return double.IsFinite(KeptValue.Number(limit.Kind!, value))
                ? new(limit.Kind, value, stale?.State, stale?.Reason)
                : new(null, null, RequirementState.CannotTell, $"the limit, {rule.Symbols}, has no finite value");
        }
        catch (Exception e) when (e is not (OutOfMemoryException or OperationCanceledException))
        {
            return new(null, null, RequirementState.CannotTell, $"the limit, {rule.Symbols}, cannot be computed: {e.Message}");
        }
    }

    private Side EntrySide(string name)
    {
        if (content.Find(name) is not { } slot)
        {
            return new(null, null, RequirementState.CannotTell, content.Unanswered.TryGetValue(name, out var why)
                ? $"{name} has no answer: {why}"
                : $"{name} is not on the record; the cell that writes it has not run");
        }

        var outcome = evaluation.Of(name);
        return outcome.State switch
        {
            not EntryState.NoAnswer when slot.Kind is null => new(null, null, RequirementState.CannotTell, $"{name} is a part, which is no quantity to be judged"),
            EntryState.NoAnswer => new(slot.Kind, null, RequirementState.CannotTell, Told(name, " has no answer: ", outcome.Reason)),
            EntryState.Stale => new(slot.Kind, outcome.Value, RequirementState.Stale, Told(name, " is stale: ", outcome.Reason)),
            _ => new(slot.Kind, outcome.Value, null, null),
        };
    }

    private static string Told(string name, string words, string? reason) =>
        reason is not null && reason.Contains(words, StringComparison.Ordinal) ? reason : $"{name}{words}{reason}";

    private static string Text(object? value) => value is null ? Dash : QuantityFormat.Long(value);

    private static string Asked(LimitPair limit, Side? low, Side? high, bool named)
    {
        return (limit.Low, limit.High) switch
        {
            ({ } l, null) => $"at least {End(l, low)}",
            (null, { } h) => $"at most {End(h, high)}",
            _ => $"from {End(limit.Low!, low)} to {End(limit.High!, high)}",
        };

        string End(LimitNode node, Side? side) => node.Origin is null || !named ? Text(side?.Value) : $"{Text(side?.Value)} ({node.Origin})";
    }

    // "clip power into {R_L}" → "clip power into 8 Ω"; of a name without a value the name itself: "clip power into R_L".
    private string Label(string label) => Placeholder().Replace(label, m =>
        content.Find(m.Groups["name"].Value) is { } slot && evaluation.Of(slot.Name).Value is { } value
            ? value is PartFile part ? part.Device : QuantityFormat.Short(value)
            : m.Groups["name"].Value);

    [GeneratedRegex(@"\{(?<name>[\p{L}_][\p{L}\p{Nd}_]*)\}")]
    private static partial Regex Placeholder();

    // A value or a limit: of what kind, how much, and what keeps it from being compared.
    private sealed record Side(QuantityKind? Kind, object? Value, RequirementState? State, string? Reason)
    {
        public double Number => KeptValue.Number(Kind!, Value!);

        // Of the inputs in force; what an earlier one gave is no limit any more.
        public object? Known => State is null ? Value : null;
    }
}
