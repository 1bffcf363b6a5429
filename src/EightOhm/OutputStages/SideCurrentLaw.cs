using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using MathNet.Numerics.Integration;

namespace EightOhm.OutputStages;

/// <summary>The crossover law on plain SI numbers, and its averages over a sine and over a Gaussian programme.</summary>
/// <param name="Idle">Idle current of a side; 0 for class B.</param>
/// <param name="Resistance">Emitter resistance of a side, the transistor's own included.</param>
/// <param name="Thermal">Thermal voltage.</param>
internal readonly record struct SideCurrentLaw(double Idle, double Resistance, double Thermal)
{
    private const int Nodes = 12;
    private const int MostSteps = 200;
    private const int MostEdges = 512;

    // An idle current this far below the load's is class B to the last digits.
    private const double Nothing = 1e-12;

    // Beyond nine sigma a Gaussian has 2e-19 of its time.
    private const int Sigmas = 9;

    private static readonly Panel Fine = new(Nodes), Coarse = new(Nodes / 2);

    /// <summary>The current of the side that lets go.</summary>
    /// <param name="load">The load's current, 0 or more.</param>
    /// <param name="steps">The steps it took.</param>
    /// <remarks>In w = ln(i_off/Idle) the balance is increasing and convex, and the root without resistors, where i_on·i_off = Idle², lies to the
    /// right of the one with them: from there Newton's steps come down to the root without passing it.</remarks>
    public double Off(double load, out int steps)
    {
        steps = 0;
        return Idle == 0 ? 0 : Off(new Vector<double>(load), out steps)[0];
    }

    // For an idle current above 0. Compiled for speed at the first call: in a notebook the first call is the one that is waited for.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private Vector<double> Off(Vector<double> load, out int steps)
    {
        Vector<double> y = load / new Vector<double>(Idle), drop = new(Resistance * Idle / Thermal), one = Vector<double>.One, two = new(2), near = new(1e-9);
        var w = Vector.Log(two / (y + Vector.SquareRoot((y * y) + new Vector<double>(4))));
        for (steps = 1; steps <= MostSteps; steps++)
        {
            var e = Vector.Exp(w);
            var balance = w + Vector.Log(e + y) + (drop * ((two * e) + y - two));
            var step = balance / (one + (e / (e + y)) + (two * drop * e));
            w -= step;
            // Its square is below the last bit.
            if (Vector.LessThanOrEqualAll(Vector.Abs(step), near * Vector.Max(one, Vector.Abs(w))))
                return new Vector<double>(Idle) * Vector.Exp(w);
        }

        throw new InvalidOperationException(FormattableString.Invariant($"The current of the side that lets go was not found: load {load[0]:G4} A, idle {Idle:G4} A, emitter resistance {Resistance:G4} Ω, thermal voltage {Thermal:G4} V, at ln(i/I_Q) = {w[0]:G6}."));
    }

    /// <summary>Means over a sine of a peak current: of the sum of both sides' currents, and of the sum of their squares.</summary>
    /// <param name="peak">The load's peak current.</param>
    /// <param name="coarse">To six digits or so, which is enough to search a level by; otherwise to eleven or more.</param>
    public (double Sum, double Squares) OverSine(double peak, bool coarse = false)
    {
        if (peak == 0)
            return (2 * Idle, 2 * Idle * Idle);
        if (Idle <= Nothing * peak)
            return (2 * peak / Math.PI, peak * peak / 2);
        Span<double> edges = stackalloc double[MostEdges];
        var count = Edges(edges, peak, 0);
        for (var k = 0; k < count; k++)
            edges[k] = Math.Asin(edges[k] / peak);
        var (sum, squares) = Over(edges[..count], coarse ? Coarse : Fine, new(peak, Sine: true));
        return (sum * 2 / Math.PI, squares * 2 / Math.PI);
    }

    /// <summary>The same means over a Gaussian current of an rms value.</summary>
    public (double Sum, double Squares) OverNoise(double rms)
    {
        if (rms == 0)
            return (2 * Idle, 2 * Idle * Idle);
        if (Idle <= Nothing * rms)
            return (rms * Math.Sqrt(2 / Math.PI), rms * rms);
        Span<double> edges = stackalloc double[MostEdges];
        var count = Edges(edges, Sigmas * rms, rms);
        var (sum, squares) = Over(edges[..count], Fine, new(rms, Sine: false));
        var density = Math.Sqrt(2 / Math.PI) / rms;
        return (sum * density, squares * density);
    }

    // Of both sides' currents, and of their squares.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private (double Sum, double Squares) Over(ReadOnlySpan<double> edges, Panel panel, Programme programme)
    {
        Vector<double> sum = default, squares = default;
        for (var k = 1; k < edges.Length; k++)
        {
            Vector<double> from = new(edges[k - 1]), width = new(edges[k] - edges[k - 1]);
            for (var j = 0; j < panel.Length; j++)
            {
                var (current, density) = programme.At(from + (width * panel.At[j]));
                var weight = width * panel.Weights[j] * density;
                var off = Off(current, out _);
                var on = off + current;
                sum += weight * (on + off);
                squares += weight * ((on * on) + (off * off));
            }
        }

        return (Vector.Sum(sum), Vector.Sum(squares));
    }

    // The load's current at an angle of a sine, or itself with its density in a Gaussian.
    private readonly record struct Programme(double Size, bool Sine)
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public (Vector<double> Current, Vector<double> Density) At(Vector<double> x)
        {
            if (Sine)
                return (new Vector<double>(Size) * Vector.Sin(x), Vector<double>.One);
            var u = x / new Vector<double>(Size);
            return (x, Vector.Exp(u * u * new Vector<double>(-0.5)));
        }
    }

    // Gauss-Legendre on the unit interval in whole vectors; what is beyond the last node has no weight.
    private sealed class Panel
    {
        private readonly double[] at, weights;

        public Panel(int nodes)
        {
            var rule = new GaussLegendreRule(0, 1, nodes);
            (at, weights) = (new double[FollowerSolver.Padded(nodes)], new double[FollowerSolver.Padded(nodes)]);
            Array.Fill(at, rule.Abscissas[^1]);
            rule.Abscissas.CopyTo(at, 0);
            rule.Weights.CopyTo(weights, 0);
        }

        public int Length => at.Length / Vector<double>.Count;

        public ReadOnlySpan<Vector<double>> At => MemoryMarshal.Cast<double, Vector<double>>(at.AsSpan());

        public ReadOnlySpan<Vector<double>> Weights => MemoryMarshal.Cast<double, Vector<double>>(weights.AsSpan());
    }

    // The sides change over about twice the idle current, within the narrower of the idle current and V_T/R: panels grow threefold from there,
    // so that Gauss-Legendre sees a smooth function in each.
    private int Edges(Span<double> edges, double most, double widest)
    {
        var middle = 2 * Idle;
        // Narrower than the last digit of the middle is a corner: no panel could tell, and a width of nothing would never grow.
        var narrow = Math.Max(Resistance * Idle > Thermal ? Thermal / Resistance : Idle, middle * 1e-16);
        var count = 0;
        edges[count++] = 0;
        var reach = narrow;
        while (reach * 3 < middle)
            reach *= 3;
        for (; reach >= narrow * 0.99; reach /= 3)
            Put(edges, ref count, middle - reach, most, widest);
        for (reach = narrow; middle + reach < most; reach *= 3)
            Put(edges, ref count, middle + reach, most, widest);
        Put(edges, ref count, most, most, widest);
        return count;
    }

    private static void Put(Span<double> edges, ref int count, double edge, double most, double widest)
    {
        if (edge > most)
            return;
        var last = edges[count - 1];
        var parts = widest > 0 ? Math.Max(1, (int)Math.Ceiling((edge - last) / widest)) : 1;
        for (var i = 1; i <= parts; i++)
            edges[count++] = i == parts ? edge : last + ((edge - last) * i / parts);
    }
}
