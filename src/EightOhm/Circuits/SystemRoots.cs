using System.Numerics;
using MathNet.Numerics.LinearAlgebra;

namespace EightOhm.Circuits;

/// <summary>The finite roots of det(G + s·C): poles of a circuit, or zeros where the system is bordered.</summary>
/// <remarks>
/// How many there are is read from how the determinant grows far out, how many lie at the origin from how it vanishes there. They begin at eigenvalues of
/// (G + σ·C)⁻¹·C, whose rounding would spoil the fast ones where the slow are a million times slower, and are then moved all together by the method of Ehrlich and
/// Aberth, with the determinant's logarithmic slope tr((G + s·C)⁻¹·C), until they stand still. A root counts only when a last step from it, put into the equations, leads nowhere.
/// Source: O. Aberth, Mathematics of Computation 27 (1973), p. 339.
/// </remarks>
internal static class SystemRoots
{
    private const int MostUnknowns = 60, MostTurns = 500;

    // A root of n-th order is found to the n-th root of the rounding: one of second order to 1e-8.
    private const double Verified = 1e-5;

    /// <exception cref="InvalidOperationException">The system is too large, has a delay or no one answer, or a root could not be verified.</exception>
    public static Complex[] Of(LinearSystem system, string what)
    {
        var n = system.Count;
        if (system.Delays.Count > 0)
            throw new InvalidOperationException($"With a delay the circuit has no finite number of {what}. Its margins are found all the same: c.ReturnRatio().");
        if (n > MostUnknowns)
            throw new InvalidOperationException($"The circuit has {n} unknowns; {what} are found up to {MostUnknowns}. Take a smaller part of it, or look at its response.");
        var (g, c) = system.Matrices();
        var equations = new Slope(n, g, c);
        if (!Plateau(equations, up: true, out var all) || !Plateau(equations, up: false, out var atOrigin))
            throw new InvalidOperationException($"The equations have no one answer at any frequency, so they have no {what}: nothing of the signal arrives, or a node hangs on controlled sources alone.");
        var roots = Improve(equations, Start(n, g, c, all - atOrigin), atOrigin, what);
        return [.. Enumerable.Repeat(Complex.Zero, atOrigin), .. roots];
    }

    // s·(d log det/ds) is the number of roots below |s|: a whole number far out and far in.
    private static bool Plateau(Slope equations, bool up, out int count)
    {
        count = 0;
        var found = false;
        int same = 0, last = -1;
        for (var decade = 0; decade <= 15; decade++)
        {
            var s = up ? Math.Pow(10, 5 + decade) : Math.Pow(10, 5 - decade);
            var value = (s * equations.At(s)).Real;
            var whole = (int)Math.Round(value);
            var clear = double.IsFinite(value) && Math.Abs(value - whole) < 0.05 && whole >= 0;
            same = clear && whole == last ? same + 1 : clear ? 1 : 0;
            last = clear ? whole : -1;
            if (same >= 2)
                (count, found) = (whole, true);
        }

        return found;
    }

    private static Complex[] Start(int n, double[] g, double[] c, int wanted)
    {
        if (wanted <= 0)
            return [];
        // σ in the middle of where circuits have their roots.
        const double shift = 1e4;
        var a = new double[n * n];
        for (var i = 0; i < a.Length; i++)
            a[i] = g[i] + (shift * c[i]);
        var lu = new ScaledLu<double>(a, n);
        var m = Matrix<double>.Build.Dense(n, n);
        double[] column = new double[n];
        for (var j = 0; j < n && !lu.Singular; j++)
        {
            for (var i = 0; i < n; i++)
                column[i] = c[(i * n) + j];
            lu.Solve(column, column);
            for (var i = 0; i < n; i++)
                m[i, j] = double.IsFinite(column[i]) ? column[i] : 0;
        }

        Balance(m);
        var found = m.Evd().EigenValues.Where(e => e.Magnitude > 0).OrderByDescending(e => e.Magnitude).Take(wanted).Select(e => shift - (1 / e)).ToList();
        // Where eigenvalues are lost in the rounding, the search begins far out.
        while (found.Count < wanted)
            found.Add(Complex.FromPolarCoordinates(1e9 * Math.Pow(10, found.Count / (double)wanted), 2 + found.Count));
        // Never two in one place, nor all on the axis, from which a pair could not leave.
        return [.. found.Select((s, i) => s * Complex.FromPolarCoordinates(1 + (1e-4 * (i + 1) / wanted), 1e-3 * ((i % 7) - 3.3)))];
    }

    private static Complex[] Improve(Slope equations, Complex[] s, int atOrigin, string what)
    {
        var still = new bool[s.Length];
        var last = new double[s.Length];
        Array.Fill(last, double.PositiveInfinity);
        for (var turn = 0; turn < MostTurns && !still.All(b => b); turn++)
        {
            Work.Checkpoint();
            for (var i = 0; i < s.Length; i++)
            {
                if (still[i])
                    continue;
                var slope = equations.At(s[i]);
                if (!Complex.IsFinite(slope))
                {
                    still[i] = true; // the equations are singular there: it is a root
                    continue;
                }

                var others = atOrigin / s[i];
                for (var j = 0; j < s.Length; j++)
                    if (j != i)
                        others += 1 / (s[i] - s[j]);
                var step = 1 / (slope - others);
                var size = step.Magnitude / s[i].Magnitude;
                if (!double.IsFinite(size))
                    continue;
                // From far away a step may overshoot by decades.
                if (size > 3)
                    step *= 3 / size;
                s[i] -= step;
                // Standing still: at the rounding, or where steps of 1e-9 do not get smaller any more.
                still[i] = size < 1e-13 || (size < 1e-9 && size >= last[i] / 2);
                last[i] = size;
            }
        }

        Verify(equations, s, atOrigin, what);
        return Clean(s);
    }

    private static void Verify(Slope equations, Complex[] s, int atOrigin, string what)
    {
        for (var i = 0; i < s.Length; i++)
        {
            var slope = equations.At(s[i]);
            if (!Complex.IsFinite(slope))
                continue;
            // The order of the root, counted by its neighbours.
            var order = s.Count(other => (other - s[i]).Magnitude < 1e-3 * s[i].Magnitude);
            var size = order / slope.Magnitude / s[i].Magnitude;
            if (!(size < Verified))
                throw new InvalidOperationException($"The {what} of this circuit could not be verified: {s[i].Magnitude / Math.Tau:0.###E+0} Hz, put back, misses by {size:0.#E+0}. Its response and margins are not touched by this.");
        }
    }

    // Of real equations roots come real or in pairs: what rounding left beside the axis, or made unlike, is taken away.
    private static Complex[] Clean(Complex[] s)
    {
        var clean = s.Select(r => Math.Abs(r.Imaginary) < 1e-9 * r.Magnitude ? new Complex(r.Real, 0) : Math.Abs(r.Real) < 1e-13 * r.Magnitude ? new Complex(0, r.Imaginary) : r).ToArray();
        var upper = clean.Where(r => r.Imaginary > 0).ToList();
        var real = clean.Where(r => r.Imaginary == 0);
        var lower = clean.Where(r => r.Imaginary < 0).ToList();
        if (upper.Count != lower.Count)
            return clean;
        return [.. real, .. upper.SelectMany(r => new[] { r, Complex.Conjugate(r) })];
    }

    // Rows and columns of like size, by powers of two (Osborne): the eigenvalues stay, their rounding shrinks.
    private static void Balance(Matrix<double> m)
    {
        var n = m.RowCount;
        for (var turn = 0; turn < 20; turn++)
        {
            var done = true;
            for (var i = 0; i < n; i++)
            {
                double row = 0, col = 0;
                for (var j = 0; j < n; j++)
                    if (j != i)
                        (row, col) = (row + Math.Abs(m[i, j]), col + Math.Abs(m[j, i]));
                if (row == 0 || col == 0)
                    continue;
                var f = Math.Pow(2, Math.Round(Math.Log2(row / col) / 2));
                if (f is > 0.9 and < 1.1)
                    continue;
                done = false;
                for (var j = 0; j < n; j++)
                    (m[j, i], m[i, j]) = j == i ? (m[i, i], m[i, i]) : (m[j, i] * f, m[i, j] / f);
            }

            if (done)
                break;
        }
    }

    /// <summary>d log det(G + s·C)/ds.</summary>
    private sealed class Slope(int n, double[] g, double[] c)
    {
        private readonly int[] columns = [.. Enumerable.Range(0, n).Where(j => Enumerable.Range(0, n).Any(i => c[(i * n) + j] != 0))];

        public Complex At(Complex s)
        {
            var a = new Complex[n * n];
            for (var i = 0; i < a.Length; i++)
                a[i] = g[i] + (s * c[i]);
            var lu = new ScaledLu<Complex>(a, n);
            if (lu.Singular)
                return double.NaN;
            var trace = Complex.Zero;
            var column = new Complex[n];
            foreach (var j in columns)
            {
                for (var i = 0; i < n; i++)
                    column[i] = c[(i * n) + j];
                trace += lu.Solve(column)[j];
            }

            return trace;
        }
    }
}
