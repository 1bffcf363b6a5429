using System.Numerics;

namespace EightOhm.Circuits;

/// <summary>One complex matrix, factored with partial pivoting: for single frequencies, and where the common order of a sweep does not fit.</summary>
internal sealed class ComplexLu
{
    private readonly int n;
    private readonly Complex[] lu;
    private readonly int[] rows;

    /// <summary>Factors a matrix, row by row, which is overwritten.</summary>
    public ComplexLu(Complex[] matrix, int n)
    {
        (this.n, lu, rows) = (n, matrix, [.. Enumerable.Range(0, n)]);
        // Rows of volts and of amperes are made comparable before the largest is chosen.
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

    /// <summary>The determinant's logarithm, its imaginary part the angle.</summary>
    public Complex LogDeterminant
    {
        get
        {
            var sum = Complex.Zero;
            for (var k = 0; k < n; k++)
                sum += Complex.Log(lu[(k * n) + k]);
            return sum;
        }
    }

    /// <summary>A·x = b.</summary>
    public Complex[] Solve(ReadOnlySpan<Complex> b)
    {
        var x = new Complex[n];
        for (var i = 0; i < n; i++)
        {
            var sum = b[rows[i]];
            for (var j = 0; j < i; j++)
                sum -= lu[(i * n) + j] * x[j];
            x[i] = sum;
        }

        for (var i = n - 1; i >= 0; i--)
        {
            var sum = x[i];
            for (var j = i + 1; j < n; j++)
                sum -= lu[(i * n) + j] * x[j];
            x[i] = sum / lu[(i * n) + i];
        }

        return x;
    }

    /// <summary>Aᵀ·y = c.</summary>
    public Complex[] SolveTransposed(ReadOnlySpan<Complex> c)
    {
        var w = new Complex[n];
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
        var y = new Complex[n];
        for (var i = 0; i < n; i++)
            y[rows[i]] = w[i];
        return y;
    }

    private static double Size(Complex z) => Math.Abs(z.Real) + Math.Abs(z.Imaginary);

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

        if (!(most > 0) || !double.IsFinite(most))
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

        var inverse = 1 / lu[(k * n) + k];
        for (var i = k + 1; i < n; i++)
        {
            if (lu[(i * n) + k] == Complex.Zero)
                continue;
            var factor = lu[(i * n) + k] *= inverse;
            for (var j = k + 1; j < n; j++)
                lu[(i * n) + j] -= factor * lu[(k * n) + j];
        }
    }
}
