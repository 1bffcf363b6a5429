namespace EightOhm.Circuits;

/// <summary>A real matrix, factored with partial pivoting of scaled rows.</summary>
internal sealed class RealLu
{
    private readonly int n;
    private readonly double[] lu;
    private readonly int[] rows;

    /// <summary>Factors a matrix, row by row, which is overwritten.</summary>
    public RealLu(double[] matrix, int n)
    {
        (this.n, lu, rows) = (n, matrix, [.. Enumerable.Range(0, n)]);
        var scale = new double[n];
        for (var i = 0; i < n; i++)
            for (var j = 0; j < n; j++)
                scale[i] = Math.Max(scale[i], Math.Abs(lu[(i * n) + j]));
        for (var k = 0; k < n && !Singular; k++)
            Eliminate(k, scale);
    }

    /// <summary>Whether a pivot vanished.</summary>
    public bool Singular { get; private set; }

    /// <summary>A·x = b; x may be b.</summary>
    public void Solve(ReadOnlySpan<double> b, Span<double> x)
    {
        Span<double> v = n <= 512 ? stackalloc double[n] : new double[n];
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

    private void Eliminate(int k, double[] scale)
    {
        int best = k;
        double most = 0;
        for (var i = k; i < n; i++)
        {
            var size = Math.Abs(lu[(i * n) + k]) / scale[rows[i]];
            if (size > most)
                (best, most) = (i, size);
        }

        // What is left of a row after cancelling to the last digits is nothing.
        if (!(most > 1e-300) || !double.IsFinite(most))
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
            if (lu[(i * n) + k] == 0)
                continue;
            var factor = lu[(i * n) + k] /= lu[(k * n) + k];
            for (var j = k + 1; j < n; j++)
                lu[(i * n) + j] -= factor * lu[(k * n) + j];
        }
    }
}
