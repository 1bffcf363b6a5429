using System.Numerics;
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
        private readonly double[] a, v, w, frequencies, left, sizes;

        public Sweep(LinearSystem system, SweepOrder order, double[] omega, IReadOnlyList<(int Row, double G, double C)>? drive, IReadOnlyList<(int Col, double Sign)>? watch, ISweepTaker take)
        {
            (this.system, this.order, this.omega, this.drive, this.watch, this.take, n) = (system, order, omega, drive, watch, take, system.Count);
            entries = [.. system.Stamps.GroupBy(s => (s.Row * n) + s.Col).Select(g => (order.Slot[g.Key], g.Key / n, g.Key % n, g.Sum(s => s.G), g.Sum(s => s.C)))];
            double[] Places(int count) => GC.AllocateUninitializedArray<double>(count * 2 * T.Count);
            (a, v, w, left, frequencies, sizes) = (Places(order.Slots), Places(n), Places(n), Places(n), new double[T.Count], new double[n * T.Count]);
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
                Eliminate();
                if ((drive is null || Forward()) && (watch is null || Adjoint()))
                {
                    take.Take<T>(first, count, drive is null ? [] : v, watch is null ? [] : w);
                    continue;
                }

                alone += count;
                SingleSolver.Some(system, omega, first, count, drive, watch, take);
            }

            return alone;
        }

        private static ref double At(double[] places, int place) => ref Unsafe.Add(ref MemoryMarshal.GetArrayDataReference(places), place * 2 * T.Count);

        private static ref double Imaginary(ref double real) => ref Unsafe.Add(ref real, T.Count);

        private void Fill()
        {
            Array.Clear(a);
            var f = T.Load(ref frequencies[0]);
            foreach (var (slot, _, _, g, c) in entries)
            {
                ref var at = ref At(a, slot);
                T.All(g).Store(ref at);
                (T.All(c) * f).Store(ref Imaginary(ref at));
            }

            foreach (var d in system.Delays)
            {
                var slot = order.Slot[(d.Row * n) + d.Col] * 2 * T.Count;
                for (var lane = 0; lane < T.Count; lane++)
                {
                    var (sin, cos) = Math.SinCos(frequencies[lane] * d.Seconds);
                    a[slot + lane] += d.Factor * cos;
                    a[slot + T.Count + lane] -= d.Factor * sin;
                }
            }
        }

        [MethodImpl(MethodImplOptions.AggressiveOptimization)]
        private void Eliminate()
        {
            var program = order.Program;
            for (int k = 0, at = 0; k < n; k++)
            {
                int pivot = program[at], rows = program[at + 1], cols = program[at + 2];
                ref var p = ref At(a, pivot);
                T pr = T.Load(ref p), pi = T.Load(ref Imaginary(ref p));
                var inverse = T.All(1) / T.MultiplyAdd(pr, pr, pi * pi);
                (pr, pi) = (pr * inverse, T.Negated(pi * inverse));
                pr.Store(ref p);
                pi.Store(ref Imaginary(ref p));
                int rowsAt = at + 3, colsAt = rowsAt + (2 * rows), targets = colsAt + (2 * cols);
                for (var i = 0; i < rows; i++)
                {
                    ref var l = ref At(a, program[rowsAt + (2 * i) + 1]);
                    T r = T.Load(ref l), m = T.Load(ref Imaginary(ref l));
                    T lr = T.MultiplyAdd(r, pr, T.Negated(m * pi)), li = T.MultiplyAdd(r, pi, m * pr);
                    lr.Store(ref l);
                    li.Store(ref Imaginary(ref l));
                    T minusR = T.Negated(lr), minusI = T.Negated(li);
                    for (var j = 0; j < cols; j++)
                    {
                        ref var u = ref At(a, program[colsAt + (2 * j) + 1]);
                        ref var t = ref At(a, program[targets + j]);
                        T ur = T.Load(ref u), ui = T.Load(ref Imaginary(ref u));
                        T.MultiplyAdd(li, ui, T.MultiplyAdd(minusR, ur, T.Load(ref t))).Store(ref t);
                        T.MultiplyAdd(minusI, ur, T.MultiplyAdd(minusR, ui, T.Load(ref Imaginary(ref t)))).Store(ref Imaginary(ref t));
                    }

                    targets += cols;
                }

                at = targets;
            }
        }

        private bool Forward()
        {
            Right(left);
            Array.Copy(left, v, v.Length);
            var program = order.Program;
            Span<int> starts = n <= 256 ? stackalloc int[n] : new int[n];
            for (int k = 0, at = 0; k < n; k++)
            {
                starts[k] = at;
                int rows = program[at + 1], cols = program[at + 2];
                for (var i = 0; i < rows; i++)
                    Less(v, program[at + 3 + (2 * i)], program[at + 4 + (2 * i)], v, order.PivotRow[k]);
                at += 3 + (2 * rows) + (2 * cols) + (rows * cols);
            }

            // The solution takes the place of its unknown; w serves until it is whole.
            for (var k = n - 1; k >= 0; k--)
            {
                var at = starts[k];
                int rows = program[at + 1], cols = program[at + 2], row = order.PivotRow[k];
                for (var j = 0; j < cols; j++)
                    Less(v, row, program[at + 4 + (2 * rows) + (2 * j)], w, program[at + 3 + (2 * rows) + (2 * j)]);
                Times(w, order.PivotCol[k], program[at], v, row);
            }

            Array.Copy(w, v, v.Length);
            return Fits(v, transposed: false);
        }

        private bool Adjoint()
        {
            Array.Clear(left);
            foreach (var (col, sign) in watch!)
                for (var lane = 0; lane < T.Count; lane++)
                    left[(col * 2 * T.Count) + lane] += sign;
            Array.Copy(left, w, w.Length);
            var program = order.Program;
            Span<int> starts = n <= 256 ? stackalloc int[n] : new int[n];
            for (int k = 0, at = 0; k < n; k++)
            {
                starts[k] = at;
                int rows = program[at + 1], cols = program[at + 2], col = order.PivotCol[k];
                Times(w, col, program[at], w, col);
                for (var j = 0; j < cols; j++)
                    Less(w, program[at + 3 + (2 * rows) + (2 * j)], program[at + 4 + (2 * rows) + (2 * j)], w, col);
                at += 3 + (2 * rows) + (2 * cols) + (rows * cols);
            }

            var y = AdjointPlaces;
            for (var k = n - 1; k >= 0; k--)
            {
                var at = starts[k];
                int rows = program[at + 1], col = order.PivotCol[k];
                for (var i = 0; i < rows; i++)
                    Less(w, col, program[at + 4 + (2 * i)], y, program[at + 3 + (2 * i)]);
                Array.Copy(w, col * 2 * T.Count, y, order.PivotRow[k] * 2 * T.Count, 2 * T.Count);
            }

            Array.Copy(y, w, w.Length);
            return Fits(w, transposed: true);
        }

        private double[] AdjointPlaces => field ??= new double[n * 2 * T.Count];

        private void Right(double[] places)
        {
            Array.Clear(places);
            foreach (var (row, g, c) in drive!)
            {
                for (var lane = 0; lane < T.Count; lane++)
                {
                    places[(row * 2 * T.Count) + lane] += g;
                    places[(((row * 2) + 1) * T.Count) + lane] += c * frequencies[lane];
                }
            }
        }

        // to[i] −= a[slot]·from[j].
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        private void Less(double[] to, int i, int slot, double[] from, int j)
        {
            ref var t = ref At(to, i);
            ref var l = ref At(a, slot);
            ref var x = ref At(from, j);
            T lr = T.Load(ref l), li = T.Load(ref Imaginary(ref l)), xr = T.Load(ref x), xi = T.Load(ref Imaginary(ref x)), minus = T.Negated(lr);
            T.MultiplyAdd(li, xi, T.MultiplyAdd(minus, xr, T.Load(ref t))).Store(ref t);
            T.MultiplyAdd(T.Negated(li), xr, T.MultiplyAdd(minus, xi, T.Load(ref Imaginary(ref t)))).Store(ref Imaginary(ref t));
        }

        // to[i] = a[slot]·from[j].
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        private void Times(double[] to, int i, int slot, double[] from, int j)
        {
            ref var t = ref At(to, i);
            ref var p = ref At(a, slot);
            ref var x = ref At(from, j);
            T pr = T.Load(ref p), pi = T.Load(ref Imaginary(ref p)), xr = T.Load(ref x), xi = T.Load(ref Imaginary(ref x));
            T.MultiplyAdd(pr, xr, T.Negated(pi * xi)).Store(ref t);
            T.MultiplyAdd(pr, xi, pi * xr).Store(ref Imaginary(ref t));
        }

        // Whether a solution, put back, leaves little of each equation.
        private bool Fits(double[] x, bool transposed)
        {
            for (var i = 0; i < n; i++)
            {
                ref var b = ref At(left, i);
                (T.Magnitude(T.Load(ref b)) + T.Magnitude(T.Load(ref Imaginary(ref b)))).Store(ref sizes[i * T.Count]);
            }

            var f = T.Load(ref frequencies[0]);
            foreach (var (_, row, col, g, c) in entries)
            {
                T gr = T.All(-g), ci = T.All(c) * f;
                Minus(gr, ci, x, transposed ? row : col, transposed ? col : row);
            }

            Span<double> cos = stackalloc double[T.Count], sin = stackalloc double[T.Count];
            foreach (var d in system.Delays)
            {
                for (var lane = 0; lane < T.Count; lane++)
                {
                    (sin[lane], cos[lane]) = Math.SinCos(frequencies[lane] * d.Seconds);
                    (sin[lane], cos[lane]) = (-d.Factor * sin[lane], -d.Factor * cos[lane]);
                }

                Minus(T.Load(ref cos[0]), T.Load(ref sin[0]), x, transposed ? d.Row : d.Col, transposed ? d.Col : d.Row);
            }

            var fits = true;
            for (var i = 0; i < n; i++)
            {
                ref var b = ref At(left, i);
                fits &= T.AllAtMost(T.Magnitude(T.Load(ref b)) + T.Magnitude(T.Load(ref Imaginary(ref b))), T.All(Left) * T.Load(ref sizes[i * T.Count]));
            }

            return fits;
        }

        // left[i] −= (g + j·c)·x[j], g given with the other sign; its size is added up.
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        private void Minus(T minusG, T c, double[] x, int j, int i)
        {
            ref var b = ref At(left, i);
            ref var at = ref At(x, j);
            T xr = T.Load(ref at), xi = T.Load(ref Imaginary(ref at));
            T.MultiplyAdd(c, xi, T.MultiplyAdd(minusG, xr, T.Load(ref b))).Store(ref b);
            T.MultiplyAdd(T.Negated(c), xr, T.MultiplyAdd(minusG, xi, T.Load(ref Imaginary(ref b)))).Store(ref Imaginary(ref b));
            var size = (T.Magnitude(minusG) + T.Magnitude(c)) * (T.Magnitude(xr) + T.Magnitude(xi));
            (size + T.Load(ref sizes[i * T.Count])).Store(ref sizes[i * T.Count]);
        }
    }
}
