using EightOhm.Explaining;
using EightOhm.Quantities;
using MathNet.Numerics.LinearAlgebra;
using UnitsNet;

namespace EightOhm.Thermal;

/// <summary>Nodes that store heat, joined by thermal resistances, with the air at the end.</summary>
/// <remarks>Linear: resistances and capacities do not depend on temperature. Steady temperatures by a linear solution; temperatures over
/// time by the network's modes, which is exact for powers that change by steps. Sources: Incropera &amp; DeWitt, Fundamentals of Heat and
/// Mass Transfer, ch. 3 (thermal circuits) and ch. 5 (lumped capacitance).</remarks>
public sealed class ThermalNetwork
{
    private readonly List<HeatNode> _nodes = [];
    private readonly List<(int A, int B, double R)> _links = [];
    private NetworkModes? _modes;

    /// <summary>Makes a network that has only the ambient.</summary>
    /// <param name="ambient">The temperature of the air (or of whatever is held); above 0 K.</param>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is not above absolute zero.</exception>
    public ThermalNetwork(Temperature ambient)
    {
        AmbientTemperature = Guard.Positive(ambient);
        Ambient = new HeatNode(this, "ambient", -1, 0);
    }

    /// <summary>The node whose temperature is held.</summary>
    public HeatNode Ambient { get; }

    /// <summary>The temperature that is held.</summary>
    public Temperature AmbientTemperature { get; }

    /// <summary>The nodes, without the ambient, in the order they were made.</summary>
    public IReadOnlyList<HeatNode> Nodes => _nodes;

    internal IReadOnlyList<(int A, int B, double R)> Links => _links;

    /// <summary>Adds a node.</summary>
    /// <param name="name">Its name; not yet taken.</param>
    /// <param name="capacity">What warms it by a kelvin; greater than 0 J/K.</param>
    /// <exception cref="ArgumentException">The name is empty or taken.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The capacity is not positive.</exception>
    public HeatNode Node(string name, HeatCapacity capacity)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        if (name == Ambient.Name || _nodes.Exists(n => n.Name == name))
            throw new ArgumentException($"There is already a node \"{name}\". Give each node a name of its own, for example \"{name} 2\".", nameof(name));
        Guard.Positive(capacity.Si, $"the heat capacity of \"{name}\" in J/K", "A thing without mass is a resistance between its neighbours; leave the node out.");
        var node = new HeatNode(this, name, _nodes.Count, capacity.Si);
        _nodes.Add(node);
        _modes = null;
        return node;
    }

    /// <summary>Joins two nodes.</summary>
    /// <param name="a">One end.</param>
    /// <param name="b">The other end.</param>
    /// <param name="R">Between them; greater than 0 K/W. Two links between the same nodes are side by side.</param>
    /// <exception cref="ArgumentException">A node belongs to another network, or both are the same.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The resistance is not positive.</exception>
    public void Link(HeatNode a, HeatNode b, ThermalResistance R)
    {
        int i = Place(a), j = Place(b);
        if (i == j)
            throw new ArgumentException($"\"{a.Name}\" cannot be linked with itself.", nameof(b));
        Guard.Positive(R, $"the resistance from \"{a.Name}\" to \"{b.Name}\"", "Two nodes without a resistance between them are one node.");
        _links.Add((i, j, R.Si));
        _modes = null;
    }

    /// <summary>Adds a device as a ladder of things with mass, from its junction to a node of this network (its case, or the sink).</summary>
    /// <remarks>Only a ladder can be joined. A list of (R, τ) from a datasheet has no inner temperatures: convert it by
    /// <see cref="FosterImpedance.ToLadder"/>.</remarks>
    /// <param name="device">The ladder.</param>
    /// <param name="name">The junction's name; the inner nodes are named after it.</param>
    /// <param name="to">Where the ladder ends.</param>
    /// <returns>The junction.</returns>
    public HeatNode Add(CauerLadder device, string name, HeatNode to)
    {
        ArgumentNullException.ThrowIfNull(device);
        Place(to);
        var nodes = device.Rungs.Select((rung, i) => Node(i == 0 ? name : FormattableString.Invariant($"{name}, layer {i + 1}"), rung.C)).ToArray();
        for (var i = 0; i < nodes.Length; i++)
            Link(nodes[i], i + 1 < nodes.Length ? nodes[i + 1] : to, device.Rungs[i].R);
        return nodes[0];
    }

    /// <summary>The temperatures when nothing changes any more.</summary>
    /// <param name="heats">What flows in; several into one node add.</param>
    /// <exception cref="ArgumentOutOfRangeException">A heat is negative.</exception>
    /// <exception cref="InvalidOperationException">A node has no path to the ambient.</exception>
    [Worked("the linear equations of the nodes' heat balance, solved")]
    public NodeTemperatures Steady(params Heat[] heats)
    {
        ArgumentNullException.ThrowIfNull(heats);
        RefuseFloating();
        var flow = Vector<double>.Build.Dense(_nodes.Count);
        foreach (var heat in heats)
        {
            var i = Place(heat.Node);
            if (i < 0)
                throw new ArgumentException("Heat into the ambient warms nothing: give it to a node.", nameof(heats));
            flow[i] += (double)Guard.NotNegative(heat.P, $"the heat into \"{heat.Node.Name}\"").Watts;
        }

        if (_nodes.Count == 0)
            return new NodeTemperatures(this, []);
        var conductance = Matrix<double>.Build.Dense(_nodes.Count, _nodes.Count);
        foreach (var (a, b, r) in _links)
        {
            Join(a, a, 1 / r);
            Join(b, b, 1 / r);
            Join(a, b, -1 / r);
            Join(b, a, -1 / r);
        }

        return new NodeTemperatures(this, conductance.Cholesky().Solve(flow).ToArray());

        void Join(int row, int column, double g)
        {
            if (row >= 0 && column >= 0)
                conductance[row, column] += g;
        }
    }

    /// <summary>How a node answers to its own heat, with the ambient as reference: the sum of the network's modes seen from there.</summary>
    /// <param name="node">The node, usually a junction.</param>
    /// <exception cref="InvalidOperationException">A node has no path to the ambient.</exception>
    [Worked("the modes of the network, seen from the node")]
    public FosterImpedance Impedance(HeatNode node)
    {
        var i = Place(node);
        return i >= 0 ? Modes().Impedance(i) : throw new ArgumentException("The ambient's temperature is held: it has no impedance.", nameof(node));
    }

    /// <summary>Temperatures over time, at equal intervals and at every step of the heat.</summary>
    /// <param name="until">The end; greater than 0 s.</param>
    /// <param name="heats">What flows in; several into one node add.</param>
    /// <param name="start">The temperatures at 0 s; the ambient's everywhere when not given.</param>
    /// <param name="points">Intervals; 1 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <exception cref="InvalidOperationException">A node has no path to the ambient.</exception>
    [Worked("each mode of the network under the stepped heat in closed form")]
    public ThermalTransient Transient(Duration until, IReadOnlyList<HeatProfile> heats, NodeTemperatures? start = null, int points = 400)
    {
        var end = Guard.Positive(until).Seconds;
        Guard.Positive(points);
        ArgumentNullException.ThrowIfNull(heats);
        var times = Enumerable.Range(0, points + 1).Select(i => end * i / points).Concat(heats.SelectMany(h => h.Times).Where(t => t < end));
        return NetworkSteps.Run(this, Modes(), [.. times.Distinct().Order()], heats, start);
    }

    /// <summary>Temperatures at chosen instants, for example equally spaced on a logarithmic axis.</summary>
    /// <param name="at">The instants, in the order of time; 0 s or later.</param>
    /// <param name="heats">What flows in; several into one node add.</param>
    /// <param name="start">The temperatures at 0 s; the ambient's everywhere when not given.</param>
    /// <exception cref="ArgumentOutOfRangeException">An instant is negative or out of order.</exception>
    /// <exception cref="InvalidOperationException">A node has no path to the ambient.</exception>
    [Worked("each mode of the network under the stepped heat in closed form")]
    public ThermalTransient Transient(IReadOnlyList<Duration> at, IReadOnlyList<HeatProfile> heats, NodeTemperatures? start = null)
    {
        ArgumentNullException.ThrowIfNull(at);
        ArgumentNullException.ThrowIfNull(heats);
        var times = at.Select(t => Guard.NotNegative(t, "an instant").Seconds).ToArray();
        for (var i = 1; i < times.Length; i++)
            if (!(times[i] > times[i - 1]))
                Guard.Refuse("an instant", at[i], $"later than {QuantityFormat.Short(at[i - 1])}", "Give the instants in the order of time.");
        return NetworkSteps.Run(this, Modes(), times, heats, start);
    }

    internal NetworkModes Modes()
    {
        RefuseFloating();
        return _modes ??= NetworkModes.Of(this);
    }

    internal int Place(HeatNode node)
    {
        ArgumentNullException.ThrowIfNull(node);
        return node.Network == this ? node.Index : throw new ArgumentException($"\"{node.Name}\" is a node of another network.", nameof(node));
    }

    // A node without a path to the ambient has no steady temperature; it warms for ever.
    private void RefuseFloating()
    {
        var reached = new bool[_nodes.Count];
        for (var grew = true; grew;)
        {
            grew = false;
            foreach (var (a, b, _) in _links)
            {
                bool from = a < 0 || reached[a], to = b < 0 || reached[b];
                if (from == to)
                    continue;
                reached[from ? b : a] = grew = true;
            }
        }

        var floating = _nodes.Where(n => !reached[n.Index]).Select(n => $"\"{n.Name}\"").ToArray();
        if (floating.Length > 0)
            throw new InvalidOperationException($"No path leads from {string.Join(", ", floating)} to the ambient, so the heat could not get out. Link {(floating.Length > 1 ? "one of them" : "it")} to a node that has a path, or to the ambient.");
    }
}
