using System.Numerics;

namespace EightOhm.Feedback;

/// <summary>A section of first or second order as state equations, its own frequency taken out so that its numbers lie near it.</summary>
/// <param name="Order">1 or 2.</param>
/// <param name="A">Row by row, rad/s.</param>
/// <param name="B">What the input does to each state, rad/s.</param>
/// <param name="C">What the output takes of each state.</param>
/// <param name="D">What the output takes of the input.</param>
/// <param name="Gain">What was taken out of the section's ∏(s − zero)/∏(s − pole).</param>
internal sealed record StepSection(int Order, double[] A, double[] B, double[] C, double D, double Gain);

/// <summary>Poles and zeros shared out into sections: a pair of zeros over a pair of poles, or over two real ones; real zeros over what is left.</summary>
internal static class StepSections
{
    public static IReadOnlyList<StepSection> Of(IReadOnlyList<Complex> poles, IReadOnlyList<Complex> zeros)
    {
        var polePairs = new Queue<Complex>(poles.Where(p => p.Imaginary > 0).OrderBy(p => p.Magnitude));
        var singles = new Queue<double>(poles.Where(p => p.Imaginary == 0).Select(p => p.Real).OrderBy(Math.Abs));
        var zeroPairs = zeros.Where(z => z.Imaginary > 0).OrderBy(z => z.Magnitude).ToArray();
        var zeroSingles = new Queue<double>(zeros.Where(z => z.Imaginary == 0).Select(z => z.Real).OrderBy(Math.Abs));
        List<StepSection> sections = [];
        foreach (var zero in zeroPairs)
        {
            var (sum, product) = polePairs.TryDequeue(out var pole) ? (2 * pole.Real, Square(pole)) : Two(singles);
            sections.Add(Second(sum, product, 1, -2 * zero.Real, Square(zero)));
        }

        while (polePairs.TryDequeue(out var pole))
        {
            var (sum, product) = (2 * pole.Real, Square(pole));
            sections.Add((zeroSingles.TryDequeue(out var first), zeroSingles.TryDequeue(out var second)) switch
            {
                (true, true) => Second(sum, product, 1, -(first + second), first * second),
                (true, false) => Second(sum, product, 0, 1, -first),
                _ => Second(sum, product, 0, 0, 1),
            });
        }

        while (singles.TryDequeue(out var pole))
            sections.Add(zeroSingles.TryDequeue(out var zero) ? First(pole, 1, -zero) : First(pole, 0, 1));
        return sections;
    }

    private static double Square(Complex z) => (z.Real * z.Real) + (z.Imaginary * z.Imaginary);

    private static (double Sum, double Product) Two(Queue<double> singles)
    {
        var (a, b) = (singles.Dequeue(), singles.Dequeue());
        return (a + b, a * b);
    }

    // (d·s + e)/(s − p): one state of 1/(s/w − p/w), its drive w.
    private static StepSection First(double p, double d, double e)
    {
        var w = p == 0 ? 1 : Math.Abs(p);
        return new(1, [p], [w], [(e + (d * p)) / w], d, 1);
    }

    // (d·s² + e·s + g)/(s² − sum·s + product), in s = w·x.
    private static StepSection Second(double sum, double product, double d, double e, double g)
    {
        var w = product == 0 ? Math.Max(1, Math.Abs(sum)) : Math.Sqrt(Math.Abs(product));
        double p1 = sum / w, p0 = product / (w * w), gain = d != 0 ? 1 : e != 0 ? 1 / w : 1 / (w * w);
        double d2 = d, d1 = d != 0 ? e / w : e, d0 = d != 0 ? g / (w * w) : e != 0 ? g / w : g;
        return new(2, [0, w, -p0 * w, p1 * w], [0, w], [d0 - (d2 * p0), d1 + (d2 * p1)], d2, gain);
    }
}
