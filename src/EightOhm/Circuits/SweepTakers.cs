using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace EightOhm.Circuits;

/// <summary>Keeps one output of a sweep: a sum of unknowns.</summary>
internal sealed class OutputTaker(Complex[] values, IReadOnlyList<(int Col, double Sign)> watch) : ISweepTaker
{
    public void Take<T>(int first, int count, ReadOnlySpan<double> x, ReadOnlySpan<double> y)
        where T : struct, ILanes<T>
    {
        for (var lane = 0; lane < count; lane++)
        {
            double re = 0, im = 0;
            foreach (var (col, sign) in watch)
            {
                re += sign * x[(col * 2 * T.Count) + lane];
                im += sign * x[(((col * 2) + 1) * T.Count) + lane];
            }

            values[first + lane] = new(re, im);
        }
    }
}

/// <summary>Keeps the noise densities squared of a sweep at one output, by contribution, and the gain where it was asked for.</summary>
/// <remarks>Each noise reaches the output by the adjoint: its density squared times |y(leaves) − y(enters)|².</remarks>
internal sealed class NoiseTaker(IReadOnlyList<NoiseSource> noises, double[][] squares, double[] hertz, Complex[]? gains, IReadOnlyList<(int Col, double Sign)> watch) : ISweepTaker
{
    private readonly OutputTaker? gain = gains is null ? null : new(gains, watch);

    public void Take<T>(int first, int count, ReadOnlySpan<double> x, ReadOnlySpan<double> y)
        where T : struct, ILanes<T>
    {
        gain?.Take<T>(first, count, x, y);
        Span<double> lanes = stackalloc double[T.Count];
        ref var at = ref MemoryMarshal.GetReference(y);
        for (var k = 0; k < noises.Count; k++)
        {
            var noise = noises[k];
            T re = T.All(0), im = T.All(0);
            if (noise.Leaves >= 0)
                (re, im) = (Load<T>(ref at, noise.Leaves * 2), Load<T>(ref at, (noise.Leaves * 2) + 1));
            if (noise.Enters >= 0)
                (re, im) = (re - Load<T>(ref at, noise.Enters * 2), im - Load<T>(ref at, (noise.Enters * 2) + 1));
            var power = T.All(noise.White) * T.MultiplyAdd(re, re, im * im);
            power.Store(ref lanes[0]);
            var to = squares[k];
            if (noise.FlickerAtOne == 0)
                lanes[..count].CopyTo(to.AsSpan(first));
            else
                for (var lane = 0; lane < count; lane++)
                    to[first + lane] = lanes[lane] * (1 + (noise.FlickerAtOne / noise.White / hertz[first + lane]));
        }
    }

    private static T Load<T>(ref double at, int place)
        where T : struct, ILanes<T> => T.Load(ref Unsafe.Add(ref at, place * T.Count));
}
