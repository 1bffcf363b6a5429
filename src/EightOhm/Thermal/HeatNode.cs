using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Thermal;

/// <summary>A place in a thermal network that has one temperature and stores heat.</summary>
/// <remarks>Made by <see cref="ThermalNetwork.Node"/>; it belongs to that network.</remarks>
public sealed class HeatNode
{
    internal HeatNode(ThermalNetwork network, string name, int index, double capacity) =>
        (Network, Name, Index, Capacity) = (network, name, index, HeatCapacity.FromSi(capacity));

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>What warms it by a kelvin; 0 J/K for the ambient, whose temperature is held.</summary>
    public HeatCapacity Capacity { get; }

    internal ThermalNetwork Network { get; }

    /// <summary>Its place in the vectors of a solution; −1 for the ambient.</summary>
    internal int Index { get; }

    /// <inheritdoc/>
    public override string ToString() => Name;
}

/// <summary>Heat that flows into a node, steadily.</summary>
/// <param name="Node">The node.</param>
/// <param name="P">The heat; 0 W or more.</param>
public readonly record struct Heat(HeatNode Node, [property: Symbol("P"), Called("power")] Power P);

/// <summary>The power from an instant on, until the next step.</summary>
/// <param name="From">When it begins; 0 s or later.</param>
/// <param name="P">The heat; 0 W or more.</param>
public readonly record struct HeatStep([property: Called("begins at")] Duration From, [property: Symbol("P"), Called("power")] Power P);

/// <summary>Heat into a node that changes by steps, as a burst of music seen from far away does.</summary>
/// <remarks>Before the first step nothing flows; after the last one its power stays.</remarks>
public sealed class HeatProfile
{
    /// <summary>Makes a profile from its steps.</summary>
    /// <param name="node">Where the heat flows in.</param>
    /// <param name="steps">The steps, each later than the one before.</param>
    /// <exception cref="ArgumentNullException">There is no node or no list.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A step is not later than the one before, or a power is negative.</exception>
    public HeatProfile(HeatNode node, params HeatStep[] steps)
    {
        ArgumentNullException.ThrowIfNull(node);
        ArgumentNullException.ThrowIfNull(steps);
        Node = node;
        var times = new double[steps.Length];
        var watts = new double[steps.Length];
        for (var i = 0; i < steps.Length; i++)
        {
            times[i] = Guard.NotNegative(steps[i].From, $"the start of step {i + 1} into {node.Name}").Seconds;
            watts[i] = (double)Guard.NotNegative(steps[i].P, $"the power of step {i + 1} into {node.Name}", "Heat flows in; give what leaves as a link to the ambient.").Watts;
            if (i > 0 && !(times[i] > times[i - 1]))
                Guard.Refuse($"the start of step {i + 1} into {node.Name}", steps[i].From, $"later than {QuantityFormat.Short(steps[i - 1].From)}", "Give the steps in the order of time.");
        }

        (Times, Watts) = (times, watts);
    }

    /// <summary>Where the heat flows in.</summary>
    public HeatNode Node { get; }

    /// <summary>The highest power.</summary>
    [Explaining.Symbol("P_max")]
    public Power Highest => Power.FromWatts(Watts.DefaultIfEmpty(0).Max());

    internal double[] Times { get; }

    internal double[] Watts { get; }

    /// <summary>The same power from 0 s on.</summary>
    /// <param name="node">Where the heat flows in.</param>
    /// <param name="P">The heat; 0 W or more.</param>
    public static HeatProfile Constant(HeatNode node, Power P) => new(node, new HeatStep(Duration.Zero, P));

    /// <summary>A power with a burst of another one in it.</summary>
    /// <param name="node">Where the heat flows in.</param>
    /// <param name="burst">The heat during the burst; 0 W or more.</param>
    /// <param name="from">When the burst begins; after 0 s.</param>
    /// <param name="to">When it ends; after its begin.</param>
    /// <param name="rest">The heat before and after; 0 W or more, none when not given.</param>
    public static HeatProfile Burst(HeatNode node, Power burst, Duration from, Duration to, Power rest = default) =>
        new(node, new HeatStep(Duration.Zero, rest), new HeatStep(from, burst), new HeatStep(to, rest));

    /// <summary>The power at an instant (from the step on that begins there).</summary>
    internal double At(double seconds)
    {
        var i = Array.BinarySearch(Times, seconds);
        i = i >= 0 ? i : ~i - 1;
        return i < 0 ? 0 : Watts[i];
    }
}
