using System.Runtime.CompilerServices;

namespace EightOhm.Circuits;

/// <summary>Two rows that take up the same rows before them, done together: what is read of the others is read once for both.</summary>
/// <remarks>Of a large full matrix the rows do not fit into the nearest memory, and reading them is what takes the time.</remarks>
internal static class SweepTwins<T>
    where T : struct, ILanes<T>
{
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static void Run(SweepRow[] rows, int i, ref double places)
    {
        SweepRow first = rows[i], second = rows[i + 1];
        var before = first.Before;
        for (var t = 0; t < before.Length; t++)
        {
            var row = rows[before[t]];
            var count = row.After.Length;
            var (ar, ai) = SweepElimination<T>.Factor(ref places, first.First + t, row.Pivot);
            var (br, bi) = SweepElimination<T>.Factor(ref places, second.First + t, row.Pivot);
            ref var u = ref SweepElimination<T>.At(ref places, row.Pivot + 1);
            if (!first.Pairs[t])
            {
                SweepElimination<T>.One(ref places, ar, ai, ref u, first.Targets[t], count);
                SweepElimination<T>.One(ref places, br, bi, ref SweepElimination<T>.At(ref places, row.Pivot + 1), second.Targets[t], count);
                continue;
            }

            SweepElimination<T>.Less(ref SweepElimination<T>.At(ref places, first.First + t + 1), ar, ai, ref u);
            SweepElimination<T>.Less(ref SweepElimination<T>.At(ref places, second.First + t + 1), br, bi, ref u);
            u = ref Unsafe.Add(ref u, 2 * T.Count);
            var next = rows[before[t + 1]].Pivot;
            var (cr, ci) = SweepElimination<T>.Factor(ref places, first.First + t + 1, next);
            var (dr, di) = SweepElimination<T>.Factor(ref places, second.First + t + 1, next);
            if (count > 1)
                Four(ref SweepElimination<T>.At(ref places, first.Targets[t + 1][0]), ref SweepElimination<T>.At(ref places, second.Targets[t + 1][0]), ref u, ref SweepElimination<T>.At(ref places, next + 1), count - 1, ar, ai, br, bi, cr, ci, dr, di);
            t++;
        }

        SweepElimination<T>.Invert(ref SweepElimination<T>.At(ref places, first.Pivot));
        // The second takes up the first.
        SweepElimination<T>.Row(rows, second, before.Length, ref places);
    }

    // t += a·u + c·w, s += b·u + d·w, along the columns.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Four(ref double t, ref double s, ref double u, ref double w, int count, T ar, T ai, T br, T bi, T cr, T ci, T dr, T di)
    {
        T minusA = T.Negated(ai), minusB = T.Negated(bi), minusC = T.Negated(ci), minusD = T.Negated(di);
        for (var j = 0; j < count; j++)
        {
            T ur = T.Load(ref u), ui = T.Load(ref Imaginary(ref u)), wr = T.Load(ref w), wi = T.Load(ref Imaginary(ref w));
            T re = T.MultiplyAdd(ar, ur, T.Load(ref t)), im = T.MultiplyAdd(ar, ui, T.Load(ref Imaginary(ref t)));
            T re2 = T.MultiplyAdd(br, ur, T.Load(ref s)), im2 = T.MultiplyAdd(br, ui, T.Load(ref Imaginary(ref s)));
            (re, im, re2, im2) = (T.MultiplyAdd(minusA, ui, re), T.MultiplyAdd(ai, ur, im), T.MultiplyAdd(minusB, ui, re2), T.MultiplyAdd(bi, ur, im2));
            (re, im, re2, im2) = (T.MultiplyAdd(cr, wr, re), T.MultiplyAdd(cr, wi, im), T.MultiplyAdd(dr, wr, re2), T.MultiplyAdd(dr, wi, im2));
            T.MultiplyAdd(minusC, wi, re).Store(ref t);
            T.MultiplyAdd(ci, wr, im).Store(ref Imaginary(ref t));
            T.MultiplyAdd(minusD, wi, re2).Store(ref s);
            T.MultiplyAdd(di, wr, im2).Store(ref Imaginary(ref s));
            t = ref Unsafe.Add(ref t, 2 * T.Count);
            s = ref Unsafe.Add(ref s, 2 * T.Count);
            u = ref Unsafe.Add(ref u, 2 * T.Count);
            w = ref Unsafe.Add(ref w, 2 * T.Count);
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static ref double Imaginary(ref double real) => ref Unsafe.Add(ref real, T.Count);
}
