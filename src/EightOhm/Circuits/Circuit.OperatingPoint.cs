using EightOhm.Explaining;
using UnitsNet;

namespace EightOhm.Circuits;

/// <content>The dc operating point.</content>
public sealed partial class Circuit
{
    // A_C of a device that is off, and V_CE of one that is saturated, in thermal voltages: there e^(V_BC/V_T) is a thousandth of e^(V_BE/V_T).
    private const double OffBelow = 1e-8, SaturatedBelow = 6.9;

    /// <summary>The dc operating point: all node voltages, the currents of all devices, which are off or saturated, and whether the circuit stays there.</summary>
    /// <remarks>Bipolar transistors and diodes by their exponential law, amplifiers with the ends of their outputs, all else straight; capacitors are open, inductors wires. Currents given by at: are
    /// not used: they are found. Tried in turn: Newton's method from conducting junctions; the sources raised step by step; the nodes named held near 0 V and let go.</remarks>
    /// <param name="hold">Nodes to hold and let go where the first two ways do not settle; an amplifier's output is a good one. All nodes when none is named.</param>
    /// <returns>The operating point.</returns>
    /// <exception cref="ArgumentException">There is no such node.</exception>
    /// <exception cref="InvalidOperationException">The circuit has a floating node or a ring of sources for dc, or the point was not found in any of the ways.</exception>
    /// <example><code>c.OperatingPoint().Voltage("out")</code></example>
    [Worked("Newton's method on the node equations, junctions exponential; then sources raised in steps; then nodes held and let go")]
    public OperatingPoint OperatingPoint(params string[] hold)
    {
        ArgumentNullException.ThrowIfNull(hold);
        Connections.Refuse(this, dc: true);
        var equations = new DcEquations(this);
        int[] held = [.. hold.Length > 0 ? hold.Select(n => equations.Nodes[Node(n, nameof(hold))]).Where(n => n >= 0) : equations.Nodes.Values.Where(n => n >= 0)];
        var method = DcSearch.Find(equations, held) ?? throw new InvalidOperationException(
            $"No operating point was found: neither from conducting junctions, nor by raising the sources, nor by holding {(hold.Length > 0 ? Lists.And(hold) : "the nodes")} and letting go. Name the output to be held, c.OperatingPoint(\"out\"); look for feedback of the wrong sign, for a base without a path for its current, and for a current source that nothing can carry.");
        return Read(equations, method);
    }

    private OperatingPoint Read(DcEquations equations, string method)
    {
        var x = equations.X;
        double V(string node) => equations.Nodes[node] is var i and >= 0 ? x[i] : 0;
        var volts = equations.Nodes.ToDictionary(n => n.Key, n => V(n.Key), StringComparer.Ordinal);
        Dictionary<string, double> amperes = new(StringComparer.Ordinal);
        foreach (var (name, branch) in equations.Branches)
            amperes[name] = this[name].Kind == ElementKind.OpAmp ? -x[branch] : x[branch];
        foreach (var e in elements.Where(e => e.Kind == ElementKind.Resistor))
            amperes[e.Name] = (V(e.Terminals[0].Node) - V(e.Terminals[1].Node)) / ((ElectricResistance)e.Value!).Ohms;
        foreach (var e in elements.Where(e => e.Kind == ElementKind.CurrentSource))
            amperes[e.Name] = ((ElectricCurrent)e.Value!).Amperes;
        List<DevicePoint> points = [];
        Dictionary<string, (double I, BipolarPoint? Point)> found = new(StringComparer.Ordinal);
        foreach (var device in equations.Devices)
        {
            if (device is DcBipolar q)
            {
                points.Add(PointOf(q, V));
                found[q.Element.Name] = (q.Point.Collector, q.Point);
                amperes[q.Element.Name] = q.Collector;
            }
            else if (device is DcDiode d)
            {
                var across = V(d.Element.Terminals[0].Node) - V(d.Element.Terminals[1].Node);
                points.Add(new(d.Element.Name, ElectricCurrent.FromAmperes(d.Through), null, ElectricPotential.FromVolts(across), null, Power.FromWatts(d.Through * across), d.Through < OffBelow ? DeviceState.Off : DeviceState.Active));
                found[d.Element.Name] = (Math.Max(d.Through, 0), null);
                amperes[d.Element.Name] = d.Through;
            }
        }

        string[] ends = [.. equations.Devices.OfType<DcOpAmp>().Where(a => a.IsSaturated).Select(a => a.Element.Name)];
        var at = Changed(i => found.TryGetValue(elements[i].Name, out var point) ? elements[i].WithBias(ElectricCurrent.FromAmperes(point.I), point.Point) : elements[i]);
        return new(at, volts, amperes, points, ends, method);
    }

    private static DevicePoint PointOf(DcBipolar q, Func<string, double> v)
    {
        var sign = q.Element.Kind == ElementKind.Npn ? 1 : -1;
        double c = v(q.Element["c"]), b = v(q.Element["b"]), e = v(q.Element["e"]);
        double v_be = sign * (b - e), v_ce = sign * (c - e), thermal = PhysicalNumbers.ThermalVolts(((BipolarModel)q.Element.Model!).Junction);
        var state = q.Collector < OffBelow ? DeviceState.Off : q.CollectorEmitter < SaturatedBelow * thermal ? DeviceState.Saturated : DeviceState.Active;
        return new(q.Element.Name, ElectricCurrent.FromAmperes(q.Collector), ElectricCurrent.FromAmperes(q.Base), ElectricPotential.FromVolts(v_be), ElectricPotential.FromVolts(v_ce), Power.FromWatts((q.Collector * v_ce) + (q.Base * v_be)), state);
    }
}
