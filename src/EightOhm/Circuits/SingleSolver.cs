using System.Numerics;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Circuits;

/// <summary>Gets the solutions of a sweep, block by block.</summary>
internal interface ISweepTaker
{
    /// <summary>Takes a block.</summary>
    /// <param name="first">The number of its first frequency.</param>
    /// <param name="count">How many of its lanes are frequencies.</param>
    /// <param name="x">The solution: of each unknown the real parts of all lanes, then the imaginary ones; empty where none was asked for.</param>
    /// <param name="y">The adjoint, likewise by rows.</param>
    void Take<T>(int first, int count, ReadOnlySpan<double> x, ReadOnlySpan<double> y)
        where T : struct, ILanes<T>;
}

/// <summary>Solves one frequency at a time, with pivoting and one step of refinement.</summary>
internal static class SingleSolver
{
    // What may be left of an equation, of the sum of its terms' magnitudes; and of the sum that the largest unknowns would make.
    private const double Left = 1e-7, Rounding = 1e-13;

    public static int All(LinearSystem system, double[] omega, IReadOnlyList<(int Row, double G, double C)>? drive, IReadOnlyList<(int Col, double Sign)>? watch, ISweepTaker take)
    {
        for (var first = 0; first < omega.Length; first += FourLanes.Count)
            Some(system, omega, first, Math.Min(FourLanes.Count, omega.Length - first), drive, watch, take);
        return omega.Length;
    }

    public static void Some(LinearSystem system, double[] omega, int first, int count, IReadOnlyList<(int Row, double G, double C)>? drive, IReadOnlyList<(int Col, double Sign)>? watch, ISweepTaker take)
    {
        var n = system.Count;
        double[] x = drive is null ? [] : new double[n * 2 * FourLanes.Count], y = watch is null ? [] : new double[n * 2 * FourLanes.Count];
        for (var i = 0; i < count; i += FourLanes.Count)
        {
            var some = Math.Min(FourLanes.Count, count - i);
            for (var lane = 0; lane < some; lane++)
            {
                var (forward, adjoint) = At(system, new Complex(0, omega[first + i + lane]), drive, watch);
                Put(forward, x, lane);
                Put(adjoint, y, lane);
            }

            take.Take<FourLanes>(first + i, some, x, y);
        }
    }

    /// <summary>Solution and adjoint at a complex frequency.</summary>
    /// <exception cref="InvalidOperationException">The equations have no one solution there.</exception>
    public static (Complex[] X, Complex[] Y) At(LinearSystem system, Complex s, IReadOnlyList<(int Row, double G, double C)>? drive, IReadOnlyList<(int Col, double Sign)>? watch)
    {
        var n = system.Count;
        var matrix = system.At(s);
        var lu = new ScaledLu<Complex>([.. matrix], n);
        if (lu.Singular)
            throw NoAnswer(s);
        Complex[] x = [], y = [];
        if (drive is not null)
            x = Refined(lu, matrix, system, Right(n, s, drive), transposed: false, s);
        if (watch is not null)
        {
            var c = new Complex[n];
            foreach (var (col, sign) in watch)
                c[col] += sign;
            y = Refined(lu, matrix, system, c, transposed: true, s);
        }

        return (x, y);
    }

    /// <summary>The right side at a complex frequency.</summary>
    public static Complex[] Right(int n, Complex s, IReadOnlyList<(int Row, double G, double C)> drive)
    {
        var b = new Complex[n];
        foreach (var (row, g, c) in drive)
            b[row] += g + (s * c);
        return b;
    }

    private static Complex[] Refined(ScaledLu<Complex> lu, Complex[] a, LinearSystem system, Complex[] b, bool transposed, Complex s)
    {
        var n = system.Count;
        var x = transposed ? lu.SolveTransposed(b) : lu.Solve(b);
        for (var turn = 0; turn < 3; turn++)
        {
            var (left, worst) = Leftover(a, system.Currents(), b, x, transposed);
            if (!double.IsFinite(worst) || (turn == 2 && worst > Left))
                throw NoAnswer(s);
            if (worst < 1e-14)
                break;
            var step = transposed ? lu.SolveTransposed(left) : lu.Solve(left);
            for (var i = 0; i < n; i++)
                x[i] += step[i];
        }

        return x;
    }

    // What a solution, put back, leaves; and the largest share of it of its equation.
    private static (Complex[] Left, double Worst) Leftover(Complex[] a, bool[] currents, Complex[] b, Complex[] x, bool transposed)
    {
        var n = x.Length;
        double volts = 0, amperes = 0, worst = 0;
        for (var i = 0; i < n; i++)
            (volts, amperes) = currents[i] ? (volts, Math.Max(amperes, Size(x[i]))) : (Math.Max(volts, Size(x[i])), amperes);
        var left = new Complex[n];
        for (var i = 0; i < n; i++)
        {
            var sum = b[i];
            double size = Size(b[i]), bound = 0;
            for (var j = 0; j < n; j++)
            {
                var entry = a[transposed ? (j * n) + i : (i * n) + j];
                if (entry == Complex.Zero)
                    continue;
                sum -= entry * x[j];
                size += Size(entry) * Size(x[j]);
                bound += Size(entry) * (currents[j] ? amperes : volts);
            }

            left[i] = sum;
            if (size + bound > 0)
                worst = Math.Max(worst, Size(sum) / (size + (Rounding / Left * bound)));
        }

        return (left, worst);
    }

    private static double Size(Complex z) => Math.Abs(z.Real) + Math.Abs(z.Imaginary);

    private static InvalidOperationException NoAnswer(Complex s) => new(
        $"The equations of this circuit have no one answer at {(s == Complex.Zero ? "dc" : QuantityFormat.Short(Frequency.FromHertz(s.Magnitude / Math.Tau)))}. A node may hang on controlled sources alone, or a loop of ideal sources may have a gain of exactly one: put in the resistances that the real parts have.");

    private static void Put(Complex[] from, double[] to, int lane)
    {
        for (var i = 0; i < from.Length; i++)
            (to[(i * 2 * FourLanes.Count) + lane], to[(((i * 2) + 1) * FourLanes.Count) + lane]) = (from[i].Real, from[i].Imaginary);
    }
}
