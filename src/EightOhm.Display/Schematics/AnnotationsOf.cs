using EightOhm.Circuits;
using EightOhm.Noise;
using UnitsNet;

namespace EightOhm.Display.Schematics;

/// <content>From what a room has found.</content>
public sealed partial record Annotations
{
    /// <summary>The currents of all elements that have one of their own and the voltages of all nodes.</summary>
    /// <param name="point">An operating point.</param>
    /// <returns>Beside each element its current, beside each node its voltage against ground.</returns>
    public static Annotations Of(OperatingPoint point)
    {
        ArgumentNullException.ThrowIfNull(point);
        return new()
        {
            Currents = point.Circuit.Elements.Where(e => e.Kind is ElementKind.Resistor or ElementKind.CurrentSource or ElementKind.Npn or ElementKind.Pnp or ElementKind.Diode
                or ElementKind.Nmos or ElementKind.Pmos or ElementKind.Njfet or ElementKind.Pjfet).ToDictionary(e => e.Name, e => point.Current(e.Name)),
            Voltages = point.Circuit.Nodes.ToDictionary(n => n, n => point.Voltage(n)),
        };
    }

    /// <summary>The share of each element in a noise budget: the squares of all that it contributes over the square of the total.</summary>
    /// <param name="budget">A budget of the circuit's noise, whose contributions are named by their elements.</param>
    /// <returns>Shares that sum to one.</returns>
    public static Annotations Of(NoiseBudget budget)
    {
        ArgumentNullException.ThrowIfNull(budget);
        return new()
        {
            // "Q1 base current" is of Q1: a name of an element is one word.
            Shares = budget.Ranked.GroupBy(c => c.Name.Split(' ')[0])
                .ToDictionary(g => g.Key, g => Ratio.FromDecimalFractions(Math.Min(1, g.Sum(c => budget.ShareOf(c.Name).DecimalFractions)))),
        };
    }

    /// <summary>How much a gain hangs on each element: of a device, which has several values, the strongest.</summary>
    /// <param name="sensitivities">What <see cref="Circuit.Sensitivities"/> found; finite values.</param>
    /// <returns>Beside each element its sensitivity, relative change over relative change, with a bar in proportion to the strongest.</returns>
    /// <example><code>c.Draw(annotate: Annotations.Of(c.Sensitivities("in", "out", 20.kHz)))</code></example>
    public static Annotations Of(IReadOnlyList<Sensitivity> sensitivities)
    {
        ArgumentNullException.ThrowIfNull(sensitivities);
        return new()
        {
            // "Q1 I_C" is of Q1.
            Sensitivities = sensitivities.GroupBy(s => s.Name.Split(' ')[0]).ToDictionary(g => g.Key, g => g.MaxBy(s => Math.Abs(s.Magnitude))!),
        };
    }
}
