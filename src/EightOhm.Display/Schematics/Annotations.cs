using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Display.Schematics;

/// <summary>What a drawing says besides names and values: currents and voltages of an operating point, or the share that each element has in a sum.</summary>
/// <remarks>A current or a share stands beside its element, a voltage beside its node; a share has a bar as well, so that the largest is found without reading.</remarks>
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

    /// <summary>Whether the elements' own values stand beside them; a drawing of a topology is clearer without.</summary>
    public bool Values { get; init; } = true;

    /// <summary>The words beside an element.</summary>
    internal IEnumerable<string> Beside(string element)
    {
        if (Currents.TryGetValue(element, out var current)) yield return QuantityFormat.Short(current);
        if (Shares.TryGetValue(element, out var share)) yield return QuantityFormat.Short(share);
    }

    /// <summary>The words beside a node's wire or terminal; null where there are none.</summary>
    internal string? At(string node) => Voltages.TryGetValue(node, out var voltage) ? QuantityFormat.Short(voltage) : null;

    /// <summary>All of it in words, by which a drawing is known again.</summary>
    internal string Content => Values + string.Join(';',
        Currents.Select(c => $"{c.Key} {QuantityFormat.Short(c.Value)}").Concat(Voltages.Select(v => $"{v.Key} {QuantityFormat.Short(v.Value)}")).Concat(Shares.Select(s => $"{s.Key} {s.Value.DecimalFractions:R}")));
}
