using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace EightOhm.OutputStages;

/// <summary>Harmonics of what a sine makes of a memoryless stage.</summary>
/// <remarks>Counted from the input's peak the output is the same forwards and backwards, so half a period holds everything and only cosines occur.</remarks>
internal sealed class CosineSeries
{
    private readonly double[][] weights;

    /// <param name="samples">Samples of the whole period; even.</param>
    /// <param name="highest">The highest harmonic.</param>
    public CosineSeries(int samples, int highest)
    {
        Points = samples / 2 + 1;
        // All harmonics look at the same places of one turn.
        var cosines = new double[samples];
        for (var i = 0; i < samples; i++)
            cosines[i] = Math.Cos(2 * Math.PI * i / samples);
        weights = new double[highest + 1][];
        for (var h = 0; h <= highest; h++)
        {
            weights[h] = new double[FollowerSolver.Padded(Points)];
            for (var i = 0; i < Points; i++)
                weights[h][i] = cosines[h * (long)i % samples] * (i == 0 || i == Points - 1 ? 2.0 : 4.0) / samples;
        }
    }

    /// <summary>Samples of the half period, from the positive to the negative peak.</summary>
    public int Points { get; }

    /// <summary>The input at each: a cosine of one volt. Beyond the points: zero.</summary>
    public void Fill(Span<double> input, double peak)
    {
        var scale = peak * (Points - 1) / 2;
        for (var i = 0; i < Points; i++)
            input[i] = weights[1][i] * (i == 0 || i == Points - 1 ? 2 : 1) * scale;
    }

    /// <summary>The peak of a harmonic's cosine. The samples beyond the points do not count.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public double Of(int harmonic, double[] samples)
    {
        var a = MemoryMarshal.Cast<double, Vector<double>>(samples.AsSpan());
        var b = MemoryMarshal.Cast<double, Vector<double>>(weights[harmonic].AsSpan());
        Vector<double> even = default, odd = default;
        var i = 0;
        for (; i + 1 < a.Length; i += 2)
        {
            even += a[i] * b[i];
            odd += a[i + 1] * b[i + 1];
        }

        if (i < a.Length)
            even += a[i] * b[i];
        return Vector.Sum(even + odd);
    }
}
