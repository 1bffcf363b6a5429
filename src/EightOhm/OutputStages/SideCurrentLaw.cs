using MathNet.Numerics.Integration;

namespace EightOhm.OutputStages;

/// <summary>The crossover law on plain SI numbers, and its averages over a sine and over a Gaussian programme.</summary>
/// <param name="Idle">Idle current of a side; 0 for class B.</param>
/// <param name="Resistance">Emitter resistance of a side, the transistor's own included.</param>
/// <param name="Thermal">Thermal voltage.</param>
internal readonly record struct SideCurrentLaw(double Idle, double Resistance, double Thermal)
{
    private const int Nodes = 12;
    private const int MostEdges = 512;

    // An idle current this far below the load's is class B to the last digits.
    private const double Nothing = 1e-12;

    // Beyond nine sigma a Gaussian has 2e-19 of its time.
    private const int Sigmas = 9;

    private static readonly GaussLegendreRule Rule = new(0, 1, Nodes);
    private static readonly GaussLegendreRule Coarse = new(0, 1, Nodes / 2);
    private static readonly double[] At = Rule.Abscissas, Weights = Rule.Weights, CoarseAt = Coarse.Abscissas, CoarseWeights = Coarse.Weights;

    /// <summary>The current of the side that lets go.</summary>
    /// <param name="load">The load's current, 0 or more.</param>
    /// <param name="steps">The steps it took.</param>
    /// <remarks>In w = ln(i_off/Idle) the balance is increasing and convex, and the root without resistors, where i_on·i_off = Idle², lies to the
    /// right of the one with them: from there Newton's steps come down to the root without passing it.</remarks>
    public double Off(double load, out int steps)
    {
        steps = 0;
        if (Idle == 0)
            return 0;
        var (y, drop) = (load / Idle, Resistance * Idle / Thermal);
        var w = Math.Log(2 / (y + Math.Sqrt((y * y) + 4)));
        while (steps < 200)
        {
            steps++;
            var e = Math.Exp(w);
            var balance = w + Math.Log(e + y) + (drop * ((2 * e) + y - 2));
            var step = balance / (1 + (e / (e + y)) + (2 * drop * e));
            w -= step;
            // Its square is below the last bit.
            if (Math.Abs(step) <= 1e-9 * Math.Max(1, Math.Abs(w)))
                return Idle * Math.Exp(w);
        }

        throw new InvalidOperationException(FormattableString.Invariant($"The current of the side that lets go was not found: load {load:G4} A, idle {Idle:G4} A, emitter resistance {Resistance:G4} Ω, thermal voltage {Thermal:G4} V, at ln(i/I_Q) = {w:G6}."));
    }

    /// <summary>Means over a sine of a peak current: of the sum of both sides' currents, and of the sum of their squares.</summary>
    /// <param name="peak">The load's peak current.</param>
    /// <param name="coarse">To six digits or so, which is enough to search a level by; otherwise to eleven or more.</param>
    public (double Sum, double Squares) OverSine(double peak, bool coarse = false)
    {
        var (at, weights) = coarse ? (CoarseAt, CoarseWeights) : (At, Weights);
        if (peak == 0)
            return (2 * Idle, 2 * Idle * Idle);
        if (Idle <= Nothing * peak)
            return (2 * peak / Math.PI, peak * peak / 2);
        Span<double> edges = stackalloc double[MostEdges];
        var count = Edges(edges, peak, 0);
        var (sum, squares) = (0.0, 0.0);
        for (var k = 1; k < count; k++)
        {
            var from = Math.Asin(edges[k - 1] / peak);
            var width = Math.Asin(edges[k] / peak) - from;
            for (var j = 0; j < at.Length; j++)
                Add(peak * Math.Sin(from + (width * at[j])), width * weights[j], ref sum, ref squares);
        }

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
        var (sum, squares) = (0.0, 0.0);
        for (var k = 1; k < count; k++)
        {
            var width = edges[k] - edges[k - 1];
            for (var j = 0; j < Nodes; j++)
            {
                var current = edges[k - 1] + (width * At[j]);
                var u = current / rms;
                Add(current, width * Weights[j] * Math.Exp(-u * u / 2), ref sum, ref squares);
            }
        }

        var density = Math.Sqrt(2 / Math.PI) / rms;
        return (sum * density, squares * density);
    }

    private void Add(double current, double weight, ref double sum, ref double squares)
    {
        var off = Off(current, out _);
        var on = off + current;
        sum += weight * (on + off);
        squares += weight * ((on * on) + (off * off));
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
