using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Circuits;

/// <summary>The dc equations of a circuit about the present voltages of its devices: currents that leave each node, then the branches.</summary>
internal sealed class DcEquations
{
    // S; in the slopes alone.
    private const double LooseSlope = 1e-12;

    private readonly List<(int Row, int Col, double G)> straight = [];
    private readonly List<(int Row, double Value)> sources = [];
    private readonly double[] matrix, right;

    public DcEquations(Circuit circuit)
    {
        foreach (var e in circuit.Elements)
            if (e.Kind is ElementKind.Nmos or ElementKind.Pmos or ElementKind.Njfet or ElementKind.Pjfet)
                throw new InvalidOperationException($"The operating point of {e.Name} is not solved: field-effect transistors are for small signals only. Give the other devices their currents (at:) and ask for responses.");
        foreach (var node in circuit.Nodes)
            Nodes[node] = Count++;
        foreach (var e in circuit.Elements)
            if (SmallSignalSystem.HasBranch(e.Kind))
                Branches[e.Name] = Count++;
        foreach (var e in circuit.Elements)
            Put(circuit, e);
        (X, matrix, right) = (new double[Count], new double[Count * Count], new double[Count]);
    }

    public int Count { get; private set; }

    public double[] X { get; private set; }

    public Dictionary<string, int> Nodes { get; } = new(StringComparer.Ordinal) { [Circuit.Ground] = -1 };

    public Dictionary<string, int> Branches { get; } = new(StringComparer.Ordinal);

    public List<IDcDevice> Devices { get; } = [];

    /// <summary>Sources are taken by this share of their values.</summary>
    public double Share { get; set; } = 1;

    /// <summary>Nodes held near 0 V through this conductance, S; 0 for none.</summary>
    public (IReadOnlyList<int> Nodes, double Conductance) Hold { get; set; } = ([], 0);

    /// <summary>Back to the start: all voltages zero, all junctions conducting.</summary>
    public void Start()
    {
        Array.Clear(X);
        foreach (var device in Devices)
            device.Start();
    }

    /// <summary>Goes on from a solution.</summary>
    public void From(double[] x)
    {
        x.CopyTo(X, 0);
        foreach (var device in Devices)
            device.Towards(X);
    }

    /// <summary>Newton's method until nothing moves.</summary>
    /// <returns>How many steps; null where it does not settle.</returns>
    public int? Solve(int most)
    {
        for (var step = 1; step <= most; step++)
        {
            Array.Clear(matrix);
            Array.Clear(right);
            foreach (var (row, col, g) in straight)
                matrix[(row * Count) + col] += g;
            foreach (var (row, value) in sources)
                right[row] += Share * value;
            foreach (var node in Hold.Nodes)
                matrix[(node * Count) + node] += Hold.Conductance;
            foreach (var device in Devices)
                device.Add(this);
            var lu = new ScaledLu<double>(matrix, Count);
            if (lu.Singular)
                return null;
            var next = new double[Count];
            lu.Solve(right, next);
            double moved = 0;
            for (var i = 0; i < Count; i++)
            {
                if (!double.IsFinite(next[i]))
                    return null;
                moved = Math.Max(moved, Math.Abs(next[i] - X[i]) / (1e-12 + (1e-11 * Math.Max(Math.Abs(next[i]), Math.Abs(X[i])))));
            }

            X = next;
            foreach (var device in Devices)
                device.Towards(X);
            if (moved < 1000 && !Devices.Any(d => d.Held) && step > 1)
                return step;
        }

        return null;
    }

    public void Slope(int row, int col, double g)
    {
        if (row >= 0 && col >= 0)
            matrix[(row * Count) + col] += g;
    }

    /// <summary>A current that leaves a node whatever the unknowns are.</summary>
    public void Leaves(int row, double current)
    {
        if (row >= 0)
            right[row] -= current;
    }

    /// <summary>A slope between two nodes that makes no current at their present voltage.</summary>
    public void Loose(int a, int b, double voltage)
    {
        Slope(a, a, LooseSlope);
        Slope(b, b, LooseSlope);
        Slope(a, b, -LooseSlope);
        Slope(b, a, -LooseSlope);
        Leaves(a, -LooseSlope * voltage);
        Leaves(b, LooseSlope * voltage);
    }

    /// <summary>A number of its own for a node inside a device.</summary>
    private int Behind(int node, ElectricResistance resistance)
    {
        if (resistance.Ohms <= 0)
            return node;
        var inner = Count++;
        Conductance(node, inner, 1 / resistance.Ohms);
        return inner;
    }

    private void Put(Circuit circuit, Element e)
    {
        int On(int t) => Nodes[e.Terminals[t].Node];
        switch (e.Kind)
        {
            case ElementKind.Resistor:
                Conductance(On(0), On(1), 1 / ((ElectricResistance)e.Value!).Ohms);
                break;
            case ElementKind.Inductor:
                Branch(e, On(0), On(1), 0);
                break;
            case ElementKind.VoltageSource or ElementKind.Rail:
                Branch(e, On(0), On(1), ((ElectricPotential)e.Value!).Volts);
                break;
            case ElementKind.CurrentSource:
                var current = ((ElectricCurrent)e.Value!).Amperes;
                Source(On(0), -current);
                Source(On(1), current);
                break;
            case ElementKind.VoltageControlledVoltage:
                var gain = ((Gain)e.Value!).Ratio;
                Branch(e, On(0), On(1), 0);
                Straight(Branches[e.Name], On(2), -gain);
                Straight(Branches[e.Name], On(3), gain);
                break;
            case ElementKind.VoltageControlledCurrent:
                Driven(On(0), On(1), [(On(2), 1), (On(3), -1)], ((ElectricConductance)e.Value!).Siemens);
                break;
            case ElementKind.CurrentControlledVoltage:
                Branch(e, On(0), On(1), 0);
                foreach (var (col, share) in Through(circuit[e.Refers[0]]))
                    Straight(Branches[e.Name], col, -share * ((ElectricResistance)e.Value!).Ohms);
                break;
            case ElementKind.CurrentControlledCurrent:
                Driven(On(0), On(1), Through(circuit[e.Refers[0]]), (double)e.Value!);
                break;
            case ElementKind.Delay:
                Straight(On(1), Branches[e.Name], 1);
                Straight(Branches[e.Name], On(1), 1);
                Straight(Branches[e.Name], On(0), -1);
                break;
            case ElementKind.Npn or ElementKind.Pnp:
                var model = (BipolarModel)e.Model!;
                Devices.Add(new DcBipolar(e, On(0), Behind(On(1), model.BaseResistance), Behind(On(2), model.EmitterResistance)));
                break;
            case ElementKind.Diode:
                Devices.Add(new DcDiode(e, Behind(On(0), ((DiodeModel)e.Model!).SeriesResistance), On(1)));
                break;
            case ElementKind.OpAmp:
                Devices.Add(new DcOpAmp(e, On(0), On(1), On(2), Branches[e.Name]));
                if (((OpAmpModel)e.Model!).InputResistance is { } r_id)
                    Conductance(On(0), On(1), 1 / r_id.Ohms);
                break;
        }
    }

    private IReadOnlyList<(int Col, double Share)> Through(Element carrier)
    {
        if (Branches.TryGetValue(carrier.Name, out var branch))
            return [(branch, 1)];
        var g = 1 / ((ElectricResistance)carrier.Value!).Ohms;
        return [(Nodes[carrier.Terminals[0].Node], g), (Nodes[carrier.Terminals[1].Node], -g)];
    }

    private void Driven(int a, int b, IReadOnlyList<(int Col, double Share)> control, double strength)
    {
        foreach (var (col, share) in control)
        {
            Straight(a, col, strength * share);
            Straight(b, col, -strength * share);
        }
    }

    private void Branch(Element e, int a, int b, double volts)
    {
        var branch = Branches[e.Name];
        Straight(a, branch, 1);
        Straight(b, branch, -1);
        Straight(branch, a, 1);
        Straight(branch, b, -1);
        Source(branch, volts);
    }

    private void Conductance(int a, int b, double g)
    {
        Straight(a, a, g);
        Straight(b, b, g);
        Straight(a, b, -g);
        Straight(b, a, -g);
    }

    private void Straight(int row, int col, double g)
    {
        if (row >= 0 && col >= 0)
            straight.Add((row, col, g));
    }

    private void Source(int row, double value)
    {
        if (row >= 0 && value != 0)
            sources.Add((row, value));
    }
}
