using System.Runtime.CompilerServices;

namespace EightOhm.Circuits;

/// <summary>Factors the matrices of all lanes in one order, row by row: each row takes up the rows before it and is then done.</summary>
/// <remarks>The row that changes stays in the nearest memory, the rows read stand one behind the other, and two of them are taken up at once where they have the same columns.
/// Factors stand before the pivot, the pivot's inverse in its place.</remarks>
internal static class SweepElimination<T>
    where T : struct, ILanes<T>
{
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static void Run(SweepOrder order, ref double places)
    {
        var rows = order.Rows;
        for (var i = 0; i < rows.Length; i++)
        {
            // What two rows together need of registers the narrow ones have not.
            if (T.Count == 8 && rows[i].IsTwin)
            {
                SweepTwins<T>.Run(rows, i, ref places);
                i++;
            }
            else
            {
                Row(rows, rows[i], 0, ref places);
            }
        }
    }

    /// <summary>A row takes up the rows before it, from one on, and its pivot is turned over.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static void Row(SweepRow[] rows, SweepRow row, int from, ref double places)
    {
        var before = row.Before;
        for (var t = from; t < before.Length; t++)
        {
            var (lr, li) = Factor(ref places, row.First + t, rows[before[t]].Pivot);
            var targets = row.Targets[t];
            ref var u = ref At(ref places, rows[before[t]].Pivot + 1);
            var count = rows[before[t]].After.Length;
            if (!row.Pairs[t])
            {
                One(ref places, lr, li, ref u, targets, count);
                continue;
            }

            // The first column of the one is the pivot of the next.
            Less(ref At(ref places, row.First + t + 1), lr, li, ref u);
            u = ref Unsafe.Add(ref u, 2 * T.Count);
            var (kr, ki) = Factor(ref places, row.First + t + 1, rows[before[t + 1]].Pivot);
            Two(ref places, lr, li, ref u, kr, ki, ref At(ref places, rows[before[t + 1]].Pivot + 1), row.Targets[t + 1], count - 1);
            t++;
        }

        Invert(ref At(ref places, row.Pivot));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static ref double At(ref double places, int slot) => ref Unsafe.Add(ref places, slot * 2 * T.Count);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static ref double Imaginary(ref double real) => ref Unsafe.Add(ref real, T.Count);

    // The factor with its sign turned, ready to be added; it is kept with its own.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static (T R, T I) Factor(ref double places, int slot, int pivot)
    {
        ref var l = ref At(ref places, slot);
        ref var p = ref At(ref places, pivot);
        T r = T.Load(ref l), m = T.Load(ref Imaginary(ref l)), pr = T.Load(ref p), pi = T.Load(ref Imaginary(ref p));
        T lr = T.MultiplyAdd(r, pr, T.Negated(m * pi)), li = T.MultiplyAdd(r, pi, m * pr);
        lr.Store(ref l);
        li.Store(ref Imaginary(ref l));
        return (T.Negated(lr), T.Negated(li));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Invert(ref double p)
    {
        T r = T.Load(ref p), m = T.Load(ref Imaginary(ref p));
        var inverse = T.All(1) / T.MultiplyAdd(r, r, m * m);
        (r * inverse).Store(ref p);
        T.Negated(m * inverse).Store(ref Imaginary(ref p));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Less(ref double t, T lr, T li, ref double u)
    {
        T ur = T.Load(ref u), ui = T.Load(ref Imaginary(ref u));
        T.MultiplyAdd(T.Negated(li), ui, T.MultiplyAdd(lr, ur, T.Load(ref t))).Store(ref t);
        T.MultiplyAdd(li, ur, T.MultiplyAdd(lr, ui, T.Load(ref Imaginary(ref t)))).Store(ref Imaginary(ref t));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void One(ref double places, T lr, T li, ref double u, int[] targets, int count)
    {
        var minus = T.Negated(li);
        var run = count > 1 && targets.Length == 1;
        for (var j = 0; j < count; j++)
        {
            ref var t = ref At(ref places, run ? targets[0] + j : targets[j]);
            T ur = T.Load(ref u), ui = T.Load(ref Imaginary(ref u));
            T.MultiplyAdd(minus, ui, T.MultiplyAdd(lr, ur, T.Load(ref t))).Store(ref t);
            T.MultiplyAdd(li, ur, T.MultiplyAdd(lr, ui, T.Load(ref Imaginary(ref t)))).Store(ref Imaginary(ref t));
            u = ref Unsafe.Add(ref u, 2 * T.Count);
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Two(ref double places, T lr, T li, ref double u, T kr, T ki, ref double w, int[] targets, int count)
    {
        T minusL = T.Negated(li), minusK = T.Negated(ki);
        var run = count > 1 && targets.Length == 1;
        for (var j = 0; j < count; j++)
        {
            ref var t = ref At(ref places, run ? targets[0] + j : targets[j]);
            T ur = T.Load(ref u), ui = T.Load(ref Imaginary(ref u)), wr = T.Load(ref w), wi = T.Load(ref Imaginary(ref w));
            var re = T.MultiplyAdd(minusL, ui, T.MultiplyAdd(lr, ur, T.Load(ref t)));
            var im = T.MultiplyAdd(li, ur, T.MultiplyAdd(lr, ui, T.Load(ref Imaginary(ref t))));
            T.MultiplyAdd(minusK, wi, T.MultiplyAdd(kr, wr, re)).Store(ref t);
            T.MultiplyAdd(ki, wr, T.MultiplyAdd(kr, wi, im)).Store(ref Imaginary(ref t));
            u = ref Unsafe.Add(ref u, 2 * T.Count);
            w = ref Unsafe.Add(ref w, 2 * T.Count);
        }
    }
}
