using EightOhm.Circuits;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Display.Schematics;

/// <summary>What a drawing says besides names and values: currents and voltages of an operating point, the share that each element has in a sum, or how much a gain hangs on it.</summary>
/// <remarks>A current, a share or a sensitivity stands beside its element, a voltage beside its node; a share and a sensitivity have a bar as well, so that the largest is found without reading.</remarks>
/// <example><code>c.Draw(annotate: new() { Currents = point.Currents, Voltages = point.Voltages })</code></example>
public sealed partial record Annotations
{
    /// <summary>Nothing besides names and values.</summary>
    public static Annotations None { get; } = new();

    /// <summary>Dc currents by element: the collector current of a transistor, the current from the first terminal to the second of the others.</summary>
    public IReadOnlyDictionary<string, ElectricCurrent> Currents { get; init; } = new Dictionary<string, ElectricCurrent>();

    /// <summary>Dc voltages by node, against ground.</summary>
    public IReadOnlyDictionary<string, ElectricPotential> Voltages { get; init; } = new Dictionary<string, ElectricPotential>();

    /// <summary>The shares of elements in a sum, such as the squared noise at the output; each 0 to 1.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A share is below 0 or above 1.</exception>
    public IReadOnlyDictionary<string, Ratio> Shares
    {
        get;
        init
        {
            foreach (var (name, share) in value)
                Guard.Between(share, Ratio.Zero, Ratio.FromDecimalFractions(1), $"the share of {name}");
            field = value;
        }
    } = new Dictionary<string, Ratio>();

    /// <summary>How much a gain hangs on each element, the strongest of its values: relative change over relative change, of either sign.</summary>
    /// <remarks>The bar of the strongest element is a whole one and the others are in proportion; where an element has a share too, the bar is the share's.</remarks>
    public IReadOnlyDictionary<string, Sensitivity> Sensitivities { get; init; } = new Dictionary<string, Sensitivity>();

    /// <summary>Whether the elements' own values stand beside them; a drawing of a topology is clearer without.</summary>
    public bool Values { get; init; } = true;

    /// <summary>The words beside an element.</summary>
    internal IEnumerable<string> Beside(string element)
    {
        if (Currents.TryGetValue(element, out var current)) yield return QuantityFormat.Short(current);
        if (Shares.TryGetValue(element, out var share)) yield return QuantityFormat.Short(share);
        if (Sensitivities.TryGetValue(element, out var sensitivity)) yield return Said(element, sensitivity);
    }

    /// <summary>The words beside a node's wire or terminal; null where there are none.</summary>
    internal string? At(string node) => Voltages.TryGetValue(node, out var voltage) ? QuantityFormat.Short(voltage) : null;

    /// <summary>The bar beneath an element's words, 0 to 1; null where there is none.</summary>
    internal double? Bar(string element)
    {
        if (Shares.TryGetValue(element, out var share)) return share.DecimalFractions;
        if (!Sensitivities.TryGetValue(element, out var sensitivity)) return null;
        var strongest = Sensitivities.Values.Max(s => Math.Abs(s.Magnitude));
        return strongest > 0 ? Math.Abs(sensitivity.Magnitude) / strongest : 0;
    }

    // "S = −0.95"; of a device, which of its figures it is: "S = 0.48 (I_C)".
    private static string Said(string element, Sensitivity sensitivity)
    {
        var of = sensitivity.Name.Length > element.Length ? $" ({sensitivity.Name[element.Length..].Trim()})" : "";
        return $"S = {QuantityFormat.Short(sensitivity.Magnitude, 3)}{of}";
    }

    /// <summary>All of it in words, by which a drawing is known again.</summary>
    internal string Content => Values + string.Join(';',
        Currents.Select(c => $"{c.Key} {QuantityFormat.Short(c.Value)}").Concat(Voltages.Select(v => $"{v.Key} {QuantityFormat.Short(v.Value)}")).Concat(Shares.Select(s => $"{s.Key} {s.Value.DecimalFractions:R}"))
        .Concat(Sensitivities.Select(s => $"{s.Key} {s.Value.Name} {s.Value.Magnitude:R}")));
}
