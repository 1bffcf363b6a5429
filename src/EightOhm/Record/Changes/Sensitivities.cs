using EightOhm.Quantities;

namespace EightOhm.Record;

/// <summary>What each input does to a missed requirement's margin, where rules alone lie between.</summary>
/// <remarks>A central difference over a thousandth of the input to each side (a kelvin-thousandth for a temperature), recomputed through the whole record.
/// An input at zero has no per cent; it is moved by a thousandth of its unit and the answer is per unit.</remarks>
internal sealed class Sensitivities(RecordSnapshot at, Clause clause)
{
    private const double Step = 1e-3;

    /// <summary>The inputs that could cure it, the strongest first; those that do nothing are left out.</summary>
    public IReadOnlyList<Cure> Cures()
    {
        // What a cell computed would have to be computed again before anybody could tell.
        if (clause.Worst is not null || Ancestry.Of(at.Content, clause.From).Concat(clause.From.Select(at.Content.Find).OfType<Slot>()).Any(s => s.Role == EntryRole.Computed))
            return [];
        return [.. Ancestry.Of(at.Content, clause.From).Concat(clause.From.Select(at.Content.Find).OfType<Slot>())
            .DistinctBy(s => s.Name).Where(s => s.Role.IsInput() && s.Kind is not null && s.Kind.Type != typeof(int))
            .Select(CureBy).OfType<Cure>().OrderByDescending(c => Math.Abs(c.Sensitivity))];
    }

    private Cure? CureBy(Slot input)
    {
        var kind = input.Kind!;
        var value = at.Evaluation.Of(input.Name).Value!;
        var number = KeptValue.Number(kind, value);
        var (step, per) = kind.Style == FormatStyle.Celsius ? (Step, "K") : number == 0 ? (Step, KeptValue.Unit(kind)) : (Step * Math.Abs(number), "%");
        if (new Judgement(at.Content, at.Evaluation).Of(clause).Margin is not { } here)
            return null;
        // At the end of what can be there is one side only.
        var (up, down) = (MarginAt(input, number + step), MarginAt(input, number - step));
        if ((up ?? here).Unit != (down ?? here).Unit)
            return null;
        var width = (up is null ? 0 : 1) + (down is null ? 0 : 1);
        var sensitivity = ((up ?? here).Amount - (down ?? here).Amount) / (width * (per == "%" ? 100 * Step * Math.Sign(number) : step));
        return sensitivity == 0 || !double.IsFinite(sensitivity) ? null : new(input.Name, QuantityFormat.Long(value), sensitivity, $"{here.Unit} per {per}".Trim());
    }

    private Margin? MarginAt(Slot input, double number)
    {
        try
        {
            var moved = at.Content.With(input with { Override = KeptValue.Input(input.Name, input.Kind!, KeptValue.Value(input.Kind!, number)) });
            return new Judgement(moved, at.Evaluation.After(moved, [input.Name])).Of(clause).Margin;
        }
        catch (ArgumentException)
        {
            // There is nothing on that side: no power below zero.
            return null;
        }
    }
}
