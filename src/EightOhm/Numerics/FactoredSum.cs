using System.Numerics;
using System.Runtime.CompilerServices;

namespace EightOhm.Numerics;

/// <summary>The roots of a sum of two products of factors, k_a·∏(s − a) + k_b·∏(s − b), which is what feedback and branches in parallel ask for.</summary>
/// <remarks>The sum is never looked at as an expanded polynomial but for the first guess: roots of 1 Hz beside roots of 100 MHz keep their digits.
/// All roots together by the iteration of Ehrlich and Aberth, each then checked by putting it in.</remarks>
internal static class FactoredSum
{
    // What may be left over at a root: of the two products there, or, where it lies a hair beside a factor of one of them and both are rounding alone, of the root itself.
    private const double LeftOver = 1e-9;

    /// <summary>The sum's leading coefficient and its roots, each complex one beside its conjugate.</summary>
    /// <param name="ka">The first product's factor; real.</param>
    /// <param name="a">Its roots, closed under conjugation.</param>
    /// <param name="kb">The second product's factor; real.</param>
    /// <param name="b">Its roots, closed under conjugation.</param>
    /// <exception cref="InvalidOperationException">The sum is nothing at all, or a root does not satisfy it.</exception>
    public static (double Lead, Complex[] Roots) Roots(double ka, IReadOnlyList<Complex> a, double kb, IReadOnlyList<Complex> b)
    {
        var (common, onlyA, onlyB) = Apart(a, b);
        if (ka == 0 || kb == 0)
            return ka == 0 ? (kb, [.. b]) : (ka, [.. a]);
        var scale = Middle([.. onlyA, .. onlyB]);
        var sum = new Sum(Lowered(ka, onlyA.Length, scale), Scaled(onlyA, scale), Lowered(kb, onlyB.Length, scale), Scaled(onlyB, scale));
        var coefficients = sum.Coefficients();
        var degree = coefficients.Length - 1;
        if (degree < 0)
            throw new InvalidOperationException("The two transfer functions cancel altogether: nothing is left of their sum.");
        var roots = degree == 0 ? [] : Aberth.Roots(FirstGuess.Of(coefficients), sum.NewtonStep, sum.LeftOverAt);
        Conjugates.Settle(roots);
        foreach (var root in roots)
            if (!(sum.LeftOverAt(root) <= LeftOver) && !(sum.NewtonStep(root).Magnitude <= LeftOver * root.Magnitude))
                throw new InvalidOperationException($"A root near {root.Magnitude * scale / (2 * Math.PI):0.###E+0} Hz could not be confirmed by putting it in: the factors lie too close to each other or too far apart for double precision. Leave out the poles and zeros that do not matter here.");
        return (coefficients[^1] / Math.Pow(scale, degree), [.. common, .. roots.Select(r => r * scale)]);
    }

    // With s = scale·x, so that the roots in x lie about one.
    private static double Lowered(double k, int degree, double scale) => k * Math.Pow(scale, degree);

    private static Complex[] Scaled(Complex[] roots, double scale) => [.. roots.Select(r => r / scale)];

    private static double Middle(Complex[] roots)
    {
        var sizes = roots.Select(r => r.Magnitude).Where(m => m > 0).ToArray();
        return sizes.Length == 0 ? 1 : Math.Exp(sizes.Average(Math.Log));
    }

    // Roots that both products have are roots of the sum, exactly.
    private static (List<Complex> Common, Complex[] A, Complex[] B) Apart(IReadOnlyList<Complex> a, IReadOnlyList<Complex> b)
    {
        List<Complex> common = [], left = [.. b], rest = [];
        foreach (var root in a)
            (left.Remove(root) ? common : rest).Add(root);
        return (common, [.. rest], [.. left]);
    }

    /// <summary>The two products, with their roots near one.</summary>
    private sealed class Sum(double ka, Complex[] a, double kb, Complex[] b)
    {
        /// <summary>Coefficients of rising powers, without leading ones that are rounding alone.</summary>
        public double[] Coefficients()
        {
            double[] fromA = Expand(ka, a), fromB = Expand(kb, b);
            var n = Math.Max(fromA.Length, fromB.Length);
            double Of(double[] from, int i) => i < from.Length ? from[i] : 0;
            while (n > 0 && Math.Abs(Of(fromA, n - 1) + Of(fromB, n - 1)) <= 1e-12 * (Math.Abs(Of(fromA, n - 1)) + Math.Abs(Of(fromB, n - 1))))
                n--;
            return [.. Enumerable.Range(0, n).Select(i => Of(fromA, i) + Of(fromB, i))];
        }

        /// <summary>The value over its slope.</summary>
        public Complex NewtonStep(Complex s)
        {
            while (a.Contains(s) || b.Contains(s))
                s = (s * (1 + 1e-14)) + 1e-300;
            Complex atA = Product(ka, a, s), atB = Product(kb, b, s);
            return (atA + atB) / ((atA * Slopes(a, s)) + (atB * Slopes(b, s)));
        }

        /// <summary>How much is left of the two products at a place, of the larger of what they are made of.</summary>
        public double LeftOverAt(Complex s)
        {
            Complex atA = Product(ka, a, s), atB = Product(kb, b, s);
            var whole = atA.Magnitude + atB.Magnitude;
            return whole == 0 ? 0 : (atA + atB).Magnitude / whole;
        }

        [MethodImpl(MethodImplOptions.AggressiveOptimization)]
        private static Complex Product(double k, Complex[] roots, Complex s)
        {
            Complex product = k;
            foreach (var root in roots)
                product *= s - root;
            return product;
        }

        [MethodImpl(MethodImplOptions.AggressiveOptimization)]
        private static Complex Slopes(Complex[] roots, Complex s)
        {
            var sum = Complex.Zero;
            foreach (var root in roots)
                sum += 1 / (s - root);
            return sum;
        }

        private static double[] Expand(double k, Complex[] roots)
        {
            Complex[] c = [k];
            foreach (var root in roots)
            {
                var next = new Complex[c.Length + 1];
                for (var i = 0; i < c.Length; i++)
                {
                    next[i + 1] += c[i];
                    next[i] -= root * c[i];
                }

                c = next;
            }

            return [.. c.Select(x => x.Real)];
        }
    }
}
