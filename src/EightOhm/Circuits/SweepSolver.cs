using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace EightOhm.Circuits;

/// <summary>Solves the equations of a circuit at many frequencies, as many side by side as the processor's registers hold.</summary>
/// <remarks>All lanes are eliminated in one order. Each solution is put back into its equations; a frequency at which that leaves too much is done by itself with pivoting.</remarks>
internal static class SweepSolver
{
    /// <summary>Solves forward for one excitation, and for the adjoint of one output where it is given.</summary>
    /// <param name="system">The equations.</param>
    /// <param name="omega">Angular frequencies, rad/s, one or more.</param>
    /// <param name="drive">What stands on the right, as row, g, c; null to leave the forward solution out.</param>
    /// <param name="watch">The output, as unknown and factor; null to leave the adjoint out.</param>
    /// <param name="take">Gets each frequency's number, its solution and adjoint (an empty array for what was left out); the arrays are used again.</param>
    /// <param name="wide">Whether 512-bit registers are used; where the machine has them when not given.</param>
    public static int Solve(LinearSystem system, double[] omega, IReadOnlyList<(int Row, double G, double C)>? drive, IReadOnlyList<(int Col, double Sign)>? watch, ISweepTaker take, bool? wide = null)
    {
        var order = new SweepOrder(system, Middle(omega));
        if (order.Singular)
            return SingleSolver.All(system, omega, drive, watch, take);
        return wide ?? Vector512.IsHardwareAccelerated
            ? new Sweep<EightLanes>(system, order, omega, drive, watch, take).Run()
            : new Sweep<FourLanes>(system, order, omega, drive, watch, take).Run();
    }

    private static double Middle(double[] omega) => Math.Sqrt(omega[0]) * Math.Sqrt(omega[^1]);

    /// <summary>One sweep with its arrays.</summary>
    private sealed class Sweep<T>
        where T : struct, ILanes<T>
    {
        // What may be left of an equation, of the sum of its terms' magnitudes.
        private const double Left = 1e-9;

        private readonly LinearSystem system;
        private readonly SweepOrder order;
        private readonly double[] omega;
        private readonly IReadOnlyList<(int Row, double G, double C)>? drive;
        private readonly IReadOnlyList<(int Col, double Sign)>? watch;
        private readonly ISweepTaker take;
        private readonly int n;
        private readonly (int Slot, int Row, int Col, double G, double C)[] entries;

        // Each place is the real parts of all lanes, then the imaginary ones.
        private readonly LanePlaces<T> a, v, x, y, left;

        private readonly double[] frequencies, sizes;

        public Sweep(LinearSystem system, SweepOrder order, double[] omega, IReadOnlyList<(int Row, double G, double C)>? drive, IReadOnlyList<(int Col, double Sign)>? watch, ISweepTaker take)
        {
            (this.system, this.order, this.omega, this.drive, this.watch, this.take, n) = (system, order, omega, drive, watch, take, system.Count);
            entries = [.. system.Stamps.GroupBy(s => (s.Row * n) + s.Col).Select(g => (order.Slot[g.Key], g.Key / n, g.Key % n, g.Sum(s => s.G), g.Sum(s => s.C)))];
            (a, v, x, y, left) = (new(order.Slots), new(n), new(n), new(n), new(n));
            (frequencies, sizes) = (new double[T.Count], new double[n * T.Count]);
        }

        /// <summary>How many frequencies had to be done by themselves.</summary>
        public int Run()
        {
            var alone = 0;
            for (var first = 0; first < omega.Length; first += T.Count)
            {
                Work.Checkpoint();
                var count = Math.Min(T.Count, omega.Length - first);
                for (var lane = 0; lane < T.Count; lane++)
                    frequencies[lane] = omega[first + Math.Min(lane, count - 1)];
                Fill();
                SweepElimination<T>.Run(order, ref a.At(0));
                if ((drive is null || Forward()) && (watch is null || Adjoint()))
                {
                    take.Take<T>(first, count, drive is null ? [] : x.Span, watch is null ? [] : y.Span);
                    continue;
                }

                alone += count;
                SingleSolver.Some(system, omega, first, count, drive, watch, take);
            }

            return alone;
        }

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        private static ref double Imaginary(ref double real) => ref Unsafe.Add(ref real, T.Count);

        private void Fill()
        {
            a.Clear();
            var f = T.Load(ref frequencies[0]);
            foreach (var (slot, _, _, g, c) in entries)
            {
                ref var at = ref a.At(slot);
                T.All(g).Store(ref at);
                (T.All(c) * f).Store(ref Imaginary(ref at));
            }

            foreach (var d in system.Delays)
            {
                var at = a.Of(order.Slot[(d.Row * n) + d.Col]);
                for (var lane = 0; lane < T.Count; lane++)
                {
                    var (sin, cos) = Math.SinCos(frequencies[lane] * d.Seconds);
                    at[lane] += d.Factor * cos;
                    at[T.Count + lane] -= d.Factor * sin;
                }
            }
        }

        private bool Forward()
        {
            Right(left);
            for (var i = 0; i < n; i++)
                Copy(left, order.PivotRow[i], v, i);
            for (var i = 0; i < n; i++)
            {
                var row = order.Rows[i];
                for (var t = 0; t < row.Before.Length; t++)
                    Less(v, i, row.First + t, v, row.Before[t]);
            }

            for (var i = n - 1; i >= 0; i--)
            {
                var row = order.Rows[i];
                for (var t = 0; t < row.After.Length; t++)
                    Less(v, i, row.Pivot + 1 + t, v, row.After[t]);
                Times(v, i, row.Pivot);
            }

            for (var i = 0; i < n; i++)
                Copy(v, i, x, order.PivotCol[i]);
            return Fits(x, transposed: false);
        }

        private bool Adjoint()
        {
            left.Clear();
            foreach (var (col, sign) in watch!)
                foreach (ref var real in left.Of(col)[..T.Count])
                    real += sign;
            for (var i = 0; i < n; i++)
                Copy(left, order.PivotCol[i], v, i);
            for (var i = 0; i < n; i++)
            {
                var row = order.Rows[i];
                Times(v, i, row.Pivot);
                for (var t = 0; t < row.After.Length; t++)
                    Less(v, row.After[t], row.Pivot + 1 + t, v, i);
            }

            for (var i = n - 1; i >= 0; i--)
            {
                var row = order.Rows[i];
                for (var t = 0; t < row.Before.Length; t++)
                    Less(v, row.Before[t], row.First + t, v, i);
            }

            for (var i = 0; i < n; i++)
                Copy(v, i, y, order.PivotRow[i]);
            return Fits(y, transposed: true);
        }

        private static void Copy(LanePlaces<T> from, int i, LanePlaces<T> to, int j) => from.Of(i).CopyTo(to.Of(j));

        private void Right(LanePlaces<T> places)
        {
            places.Clear();
            foreach (var (row, g, c) in drive!)
            {
                var at = places.Of(row);
                for (var lane = 0; lane < T.Count; lane++)
                {
                    at[lane] += g;
                    at[T.Count + lane] += c * frequencies[lane];
                }
            }
        }

        // to[i] −= a[slot]·from[j].
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        private void Less(LanePlaces<T> to, int i, int slot, LanePlaces<T> from, int j)
        {
            ref var t = ref to.At(i);
            ref var l = ref a.At(slot);
            ref var f = ref from.At(j);
            T lr = T.Load(ref l), li = T.Load(ref Imaginary(ref l)), xr = T.Load(ref f), xi = T.Load(ref Imaginary(ref f)), minus = T.Negated(lr);
            T.MultiplyAdd(li, xi, T.MultiplyAdd(minus, xr, T.Load(ref t))).Store(ref t);
            T.MultiplyAdd(T.Negated(li), xr, T.MultiplyAdd(minus, xi, T.Load(ref Imaginary(ref t)))).Store(ref Imaginary(ref t));
        }

        // of[i] = a[slot]·of[i].
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        private void Times(LanePlaces<T> of, int i, int slot)
        {
            ref var t = ref of.At(i);
            ref var p = ref a.At(slot);
            T pr = T.Load(ref p), pi = T.Load(ref Imaginary(ref p)), xr = T.Load(ref t), xi = T.Load(ref Imaginary(ref t));
            T.MultiplyAdd(pr, xr, T.Negated(pi * xi)).Store(ref t);
            T.MultiplyAdd(pr, xi, pi * xr).Store(ref Imaginary(ref t));
        }

        // Whether a solution, put back, leaves little of each equation.
        private bool Fits(LanePlaces<T> solution, bool transposed)
        {
            for (var i = 0; i < n; i++)
            {
                ref var b = ref left.At(i);
                (T.Magnitude(T.Load(ref b)) + T.Magnitude(T.Load(ref Imaginary(ref b)))).Store(ref sizes[i * T.Count]);
            }

            var f = T.Load(ref frequencies[0]);
            foreach (var (_, row, col, g, c) in entries)
            {
                T gr = T.All(-g), ci = T.All(c) * f;
                Minus(gr, ci, solution, transposed ? row : col, transposed ? col : row);
            }

            Span<double> cos = stackalloc double[T.Count], sin = stackalloc double[T.Count];
            foreach (var d in system.Delays)
            {
                for (var lane = 0; lane < T.Count; lane++)
                {
                    (sin[lane], cos[lane]) = Math.SinCos(frequencies[lane] * d.Seconds);
                    (sin[lane], cos[lane]) = (-d.Factor * sin[lane], -d.Factor * cos[lane]);
                }

                Minus(T.Load(ref cos[0]), T.Load(ref sin[0]), solution, transposed ? d.Row : d.Col, transposed ? d.Col : d.Row);
            }

            var fits = true;
            for (var i = 0; i < n; i++)
            {
                ref var b = ref left.At(i);
                fits &= T.AllAtMost(T.Magnitude(T.Load(ref b)) + T.Magnitude(T.Load(ref Imaginary(ref b))), T.All(Left) * T.Load(ref sizes[i * T.Count]));
            }

            return fits;
        }

        // left[i] −= (g + j·c)·x[j], g given with the other sign; its size is added up.
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        private void Minus(T minusG, T c, LanePlaces<T> solution, int j, int i)
        {
            ref var b = ref left.At(i);
            ref var at = ref solution.At(j);
            T xr = T.Load(ref at), xi = T.Load(ref Imaginary(ref at));
            T.MultiplyAdd(c, xi, T.MultiplyAdd(minusG, xr, T.Load(ref b))).Store(ref b);
            T.MultiplyAdd(T.Negated(c), xr, T.MultiplyAdd(minusG, xi, T.Load(ref Imaginary(ref b)))).Store(ref Imaginary(ref b));
            var size = (T.Magnitude(minusG) + T.Magnitude(c)) * (T.Magnitude(xr) + T.Magnitude(xi));
            (size + T.Load(ref sizes[i * T.Count])).Store(ref sizes[i * T.Count]);
        }
    }
}
