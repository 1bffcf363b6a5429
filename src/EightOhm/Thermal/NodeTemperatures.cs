using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Thermal;

/// <summary>The temperatures of a network's nodes at one instant, or for ever.</summary>
public sealed class NodeTemperatures
{
    private readonly ThermalNetwork _network;

    internal NodeTemperatures(ThermalNetwork network, double[] rises) => (_network, Rises) = (network, rises);

    /// <summary>The nodes, without the ambient.</summary>
    public IReadOnlyList<HeatNode> Nodes => [.. _network.Nodes.Take(Rises.Length)];

    /// <summary>The ambient's temperature.</summary>
    public Temperature Ambient => _network.AmbientTemperature;

    /// <summary>The temperature of the hottest node.</summary>
    public Temperature Hottest => At(Rises.DefaultIfEmpty(0).Max());

    /// <summary>Above the ambient, in K, in the order of the nodes.</summary>
    internal double[] Rises { get; }

    /// <summary>The temperature of a node.</summary>
    /// <param name="node">A node of the network.</param>
    /// <exception cref="ArgumentException">The node is of another network, or was added later.</exception>
    public Temperature this[HeatNode node] => _network.Place(node) switch
    {
        < 0 => Ambient,
        var i when i < Rises.Length => At(Rises[i]),
        _ => throw new ArgumentException($"\"{node.Name}\" was added after these temperatures were found. Solve again.", nameof(node)),
    };

    /// <summary>The temperature of a node by its name.</summary>
    /// <param name="name">The node's name.</param>
    /// <exception cref="ArgumentException">There is no node of that name.</exception>
    public Temperature this[string name] => this[Find(_network, name)];

    internal ThermalNetwork Network => _network;

    /// <inheritdoc/>
    public override string ToString() => string.Join(Environment.NewLine, Nodes.Select(n => $"{n.Name}: {QuantityFormat.Short(this[n])}"));

    internal static HeatNode Find(ThermalNetwork network, string name) => network.Nodes.Append(network.Ambient).FirstOrDefault(n => n.Name == name)
        ?? throw new ArgumentException($"There is no node \"{name}\"; there are {string.Join(", ", network.Nodes.Select(n => $"\"{n.Name}\""))} and the ambient.", nameof(name));

    private Temperature At(double rise) => Temperature.FromKelvins(Ambient.Kelvins + rise);
}
