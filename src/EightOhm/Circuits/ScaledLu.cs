using System.Numerics;

namespace EightOhm.Circuits;

/// <summary>A matrix, real or complex, factored with partial pivoting of scaled rows: rows of volts and of amperes are made comparable before the largest is chosen.</summary>
/// <typeparam name="T"><see cref="double"/> or <see cref="Complex"/>.</typeparam>
internal sealed class ScaledLu<T>
    where T : unmanaged, INumberBase<T>
{
    // What is left of a row after cancelling to the last digits is nothing.
    private const double Nothing = 1e-300;

    private const int OnStack = 256;

    private readonly int n;
    private readonly T[] lu;
    private readonly int[] rows;

    /// <summary>Factors a matrix, row by row, which is overwritten.</summary>
    public ScaledLu(T[] matrix, int n)
    {
        (this.n, lu, rows) = (n, matrix, [.. Enumerable.Range(0, n)]);
        var scale = new double[n];
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j < n; j++)
                scale[i] = Math.Max(scale[i], Size(lu[(i * n) + j]));
            if (scale[i] == 0)
                Singular = true;
        }

        for (var k = 0; k < n && !Singular; k++)
            Eliminate(k, scale);
    }

    /// <summary>Whether a pivot vanished: the equations have no one solution.</summary>
    public bool Singular { get; private set; }

    /// <summary>A·x = b; x may be b.</summary>
    public void Solve(ReadOnlySpan<T> b, Span<T> x)
    {
        var v = n <= OnStack ? stackalloc T[n] : new T[n];
        for (var i = 0; i < n; i++)
        {
            var sum = b[rows[i]];
            for (var j = 0; j < i; j++)
                sum -= lu[(i * n) + j] * v[j];
            v[i] = sum;
        }

        for (var i = n - 1; i >= 0; i--)
        {
            var sum = v[i];
            for (var j = i + 1; j < n; j++)
                sum -= lu[(i * n) + j] * v[j];
            v[i] = sum / lu[(i * n) + i];
        }

        v.CopyTo(x);
    }

    /// <summary>A·x = b.</summary>
    public T[] Solve(ReadOnlySpan<T> b)
    {
        var x = new T[n];
        Solve(b, x);
        return x;
    }

    /// <summary>Aᵀ·y = c.</summary>
    public T[] SolveTransposed(ReadOnlySpan<T> c)
    {
        var w = new T[n];
        for (var i = 0; i < n; i++)
        {
            var sum = c[i];
            for (var j = 0; j < i; j++)
                sum -= lu[(j * n) + i] * w[j];
            w[i] = sum / lu[(i * n) + i];
        }

        for (var i = n - 1; i >= 0; i--)
            for (var j = i + 1; j < n; j++)
                w[i] -= lu[(j * n) + i] * w[j];
        var y = new T[n];
        for (var i = 0; i < n; i++)
            y[rows[i]] = w[i];
        return y;
    }

    // For a choice of pivots as good as the magnitude, and without its root.
    private static double Size(T value) => value is Complex z ? Math.Abs(z.Real) + Math.Abs(z.Imaginary) : Math.Abs(double.CreateChecked(value));

    private void Eliminate(int k, double[] scale)
    {
        int best = k;
        double most = 0;
        for (var i = k; i < n; i++)
        {
            var size = Size(lu[(i * n) + k]) / scale[rows[i]];
            if (size > most)
                (best, most) = (i, size);
        }

        if (!(most > Nothing) || !double.IsFinite(most))
        {
            Singular = true;
            return;
        }

        if (best != k)
        {
            (rows[k], rows[best]) = (rows[best], rows[k]);
            for (var j = 0; j < n; j++)
                (lu[(k * n) + j], lu[(best * n) + j]) = (lu[(best * n) + j], lu[(k * n) + j]);
        }

        for (var i = k + 1; i < n; i++)
        {
            if (T.IsZero(lu[(i * n) + k]))
                continue;
            var factor = lu[(i * n) + k] /= lu[(k * n) + k];
            for (var j = k + 1; j < n; j++)
                lu[(i * n) + j] -= factor * lu[(k * n) + j];
        }
    }
}
