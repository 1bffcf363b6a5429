using System.Numerics;
using System.Runtime.CompilerServices;

namespace EightOhm.Feedback;

/// <content>Between which sizes it stays over a range of frequencies.</content>
public sealed partial class TransferFunction
{
    // Squares within these and all sums and products on the way to a gain are finite too, and none of its digits is lost.
    private const double Smallest = 1e-280, Greatest = 1e280;

    /// <summary>Bounds of the gain's size at all angular frequencies from one to another: of each factor the nearest and the farthest place.</summary>
    /// <remarks>Sure but for rounding in the last digits; the wider the range, the looser. A delay turns a gain and leaves its size.</remarks>
    /// <param name="from">Where the range begins, rad/s.</param>
    /// <param name="to">Where it ends, rad/s.</param>
    /// <returns>The bounds; 0 and infinite where nothing is known.</returns>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal (double Least, double Most) SizeBetween(double from, double to)
    {
        double least = factor * factor, most = least;
        for (var i = 0; i < zeros.Length || i < poles.Length; i++)
        {
            if (i < zeros.Length)
            {
                var (near, far) = Squares(zeros[i], from, to);
                (least, most) = (least * near, most * far);
                if (!(least > Smallest && most < Greatest))
                    return (0, double.PositiveInfinity);
            }

            if (i < poles.Length)
            {
                var (near, far) = Squares(poles[i], from, to);
                (least, most) = (least / far, most / near);
                if (!(least > Smallest && most < Greatest))
                    return (0, double.PositiveInfinity);
            }
        }

        return (Math.Sqrt(least), Math.Sqrt(most));
    }

    // The squares of the least and the greatest distance from a root to a stretch of the imaginary axis.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static (double Near, double Far) Squares(in Complex root, double from, double to)
    {
        double a = root.Real * root.Real, low = from - root.Imaginary, high = to - root.Imaginary;
        double atLow = a + (low * low), atHigh = a + (high * high);
        return (low < 0 && high > 0 ? a : Math.Min(atLow, atHigh), Math.Max(atLow, atHigh));
    }
}
