using System.Numerics;

namespace EightOhm.Numerics;

/// <summary>Roots of real polynomials: each is real or has its conjugate, to the last digit.</summary>
internal static class Conjugates
{
    /// <summary>Makes a list of computed roots so: each that is nearer to its own mirror image than to another root's becomes real, the others go in pairs.</summary>
    public static void Settle(Complex[] roots)
    {
        Array.Sort(roots, (x, y) => Math.Abs(y.Imaginary).CompareTo(Math.Abs(x.Imaginary)));
        for (var i = 0; i < roots.Length; i++)
        {
            var partner = -1;
            var nearest = 2 * Math.Abs(roots[i].Imaginary);
            for (var j = i + 1; j < roots.Length; j++)
                if (roots[i].Imaginary * roots[j].Imaginary <= 0 && (roots[i] - Complex.Conjugate(roots[j])).Magnitude is var distance && distance < nearest)
                    (partner, nearest) = (j, distance);
            if (partner < 0)
            {
                roots[i] = roots[i].Real;
                continue;
            }

            var middle = (roots[i] + Complex.Conjugate(roots[partner])) / 2;
            (roots[i], roots[partner]) = (middle, roots[i + 1]);
            roots[i + 1] = Complex.Conjugate(middle);
            i++;
        }
    }
}
