using System.Numerics;

namespace EightOhm.Circuits;

/// <summary>Linear equations of a circuit, (G + s·C)·x = b, with terms that are delayed: node voltages, then branch currents.</summary>
/// <remarks>A row is the sum of the currents that leave a node, or the equation of a branch. Plain SI numbers.</remarks>
internal sealed class LinearSystem
{
    private readonly List<Stamp> stamps = [];
    private readonly List<DelayStamp> delays = [];
    private readonly List<string> parameters = [];
    private readonly List<(int Stamp, int Parameter, double Weight)> tags = [];

    /// <summary>How many unknowns.</summary>
    public int Count { get; private set; }

    public IReadOnlyList<Stamp> Stamps => stamps;

    public IReadOnlyList<DelayStamp> Delays => delays;

    /// <summary>Values that an answer may be sensitive to: "R1", "Q1 I_C".</summary>
    public IReadOnlyList<string> Parameters => parameters;

    /// <summary>Which entries go with which value, and by what power of it.</summary>
    public IReadOnlyList<(int Stamp, int Parameter, double Weight)> Tags => tags;

    /// <summary>The unknown of a node; −1 for ground.</summary>
    public Dictionary<string, int> Nodes { get; } = new(StringComparer.Ordinal) { [Circuit.Ground] = -1 };

    /// <summary>Which unknowns are currents: they are not compared with voltages.</summary>
    public bool[] Currents()
    {
        var currents = new bool[Count];
        foreach (var branch in Branches.Values)
            currents[branch] = true;
        return currents;
    }

    /// <summary>The unknown that is an element's own current.</summary>
    public Dictionary<string, int> Branches { get; } = new(StringComparer.Ordinal);

    public List<NoiseSource> Noises { get; } = [];

    /// <summary>Where a loop can be opened, in the order of the elements.</summary>
    public List<Opening> Openings { get; } = [];

    public int Unknown() => Count++;

    public int Parameter(string name)
    {
        parameters.Add(name);
        return parameters.Count - 1;
    }

    public void Delayed(int row, int col, double factor, double seconds) => delays.Add(new(row, col, factor, seconds));

    /// <summary>Adds g + s·c at a place; with the values that it goes with.</summary>
    public void Add(int row, int col, double g, double c, params ReadOnlySpan<(int Parameter, double Weight)> with)
    {
        if (row < 0 || col < 0 || (g == 0 && c == 0))
            return;
        foreach (var (parameter, weight) in with)
            tags.Add((stamps.Count, parameter, weight));
        stamps.Add(new(row, col, g, c));
    }

    /// <summary>Adds an admittance between two nodes.</summary>
    public void Admittance(int a, int b, double g, double c, params ReadOnlySpan<(int Parameter, double Weight)> with) => Transfer(a, b, a, b, g, c, with);

    /// <summary>Adds a current (g + s·c)·v that flows inside from a to b, v the voltage from p to m.</summary>
    public void Transfer(int a, int b, int p, int m, double g, double c, params ReadOnlySpan<(int Parameter, double Weight)> with)
    {
        Add(a, p, g, c, with);
        Add(a, m, -g, -c, with);
        Add(b, p, -g, -c, with);
        Add(b, m, g, c, with);
    }

    /// <summary>Adds the unknown current of a branch that leaves a node and enters another.</summary>
    public void Current(int branch, int leaves, int enters)
    {
        Add(leaves, branch, 1, 0);
        Add(enters, branch, -1, 0);
    }

    /// <summary>The system with a loop opened.</summary>
    public LinearSystem Opened(Opening at)
    {
        var open = Alike();
        open.stamps.AddRange(stamps);
        open.delays.AddRange(delays);
        foreach (var (row, g, c) in at.Drives)
            foreach (var (col, sign) in at.Control)
                open.Add(row, col, -g * sign, -c * sign);
        return open.Summed();
    }

    /// <summary>The same without what is delayed.</summary>
    public LinearSystem WithoutDelays()
    {
        var sum = Alike();
        sum.stamps.AddRange(stamps);
        return sum;
    }

    /// <summary>The same without the entries that have cancelled.</summary>
    public LinearSystem Summed()
    {
        var sum = Alike();
        sum.delays.AddRange(delays);
        foreach (var group in stamps.GroupBy(s => (s.Row, s.Col)))
        {
            double g = group.Sum(s => s.G), c = group.Sum(s => s.C);
            double most = group.Max(s => Math.Abs(s.G)), mostC = group.Max(s => Math.Abs(s.C));
            sum.Add(group.Key.Row, group.Key.Col, Math.Abs(g) <= 1e-15 * most ? 0 : g, Math.Abs(c) <= 1e-15 * mostC ? 0 : c);
        }

        return sum;
    }

    /// <summary>The system whose determinant is the numerator of a response: a row for the output, a column for the drive.</summary>
    public LinearSystem Bordered(IReadOnlyList<(int Row, double G, double C)> drive, IReadOnlyList<(int Col, double Sign)> watch)
    {
        var bordered = new LinearSystem { Count = Count + 1 };
        bordered.stamps.AddRange(stamps);
        bordered.delays.AddRange(delays);
        foreach (var (row, g, c) in drive)
            bordered.Add(row, Count, -g, -c);
        foreach (var (col, sign) in watch)
            bordered.Add(Count, col, sign, 0);
        return bordered;
    }

    /// <summary>The matrix at a complex frequency, row by row.</summary>
    public Complex[] At(Complex s)
    {
        var a = new Complex[Count * Count];
        foreach (var stamp in stamps)
            a[(stamp.Row * Count) + stamp.Col] += stamp.G + (s * stamp.C);
        foreach (var delay in delays)
            a[(delay.Row * Count) + delay.Col] += delay.Factor * Complex.Exp(-s * delay.Seconds);
        return a;
    }

    private LinearSystem Alike()
    {
        var alike = new LinearSystem { Count = Count };
        foreach (var (name, branch) in Branches)
            alike.Branches[name] = branch;
        return alike;
    }

    /// <summary>G and C, row by row.</summary>
    public (double[] G, double[] C) Matrices()
    {
        double[] g = new double[Count * Count], c = new double[Count * Count];
        foreach (var stamp in stamps)
        {
            g[(stamp.Row * Count) + stamp.Col] += stamp.G;
            c[(stamp.Row * Count) + stamp.Col] += stamp.C;
        }

        return (g, c);
    }
}

/// <summary>g + s·c at a place of the matrix.</summary>
internal readonly record struct Stamp(int Row, int Col, double G, double C);

/// <summary>factor·e^(−s·seconds) at a place of the matrix.</summary>
internal readonly record struct DelayStamp(int Row, int Col, double Factor, double Seconds);

/// <summary>A noise that is put into two rows with opposite signs (−1: into none): its density white and that of 1/f at 1 Hz, squared.</summary>
internal sealed record NoiseSource(string Name, int Leaves, int Enters, double White, double FlickerAtOne);

/// <summary>Where a loop is opened: what the control drives, and the control; the product of both is in the matrix.</summary>
internal sealed record Opening(string Element, string Words, IReadOnlyList<(int Row, double G, double C)> Drives, IReadOnlyList<(int Col, double Sign)> Control);
