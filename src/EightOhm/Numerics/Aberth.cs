using System.Numerics;

namespace EightOhm.Numerics;

/// <summary>All roots of a polynomial together: Newton's step of each, bent away from the others (the iteration of Ehrlich and Aberth).</summary>
internal static class Aberth
{
    private const int Turns = 500;
    private const double Epsilon = 2.2204460492503131e-16;

    /// <summary>Moves guesses to the roots.</summary>
    /// <param name="guesses">One for each root, no two alike.</param>
    /// <param name="newtonStep">The polynomial's value over its slope.</param>
    /// <param name="leftOver">What is left of the polynomial at a place, of the sizes of its terms there.</param>
    /// <returns>The roots, in no order.</returns>
    public static Complex[] Roots(Complex[] guesses, Func<Complex, Complex> newtonStep, Func<Complex, double> leftOver)
    {
        var roots = guesses;
        for (var turn = 0; turn < Turns; turn++)
        {
            Work.Checkpoint();
            var moved = false;
            for (var i = 0; i < roots.Length; i++)
            {
                var step = newtonStep(roots[i]);
                var others = Complex.Zero;
                for (var j = 0; j < roots.Length; j++)
                    if (roots[i] != roots[j])
                        others += 1 / (roots[i] - roots[j]);
                step /= 1 - (step * others);
                if (!double.IsFinite(step.Real) || !double.IsFinite(step.Imaginary))
                    continue;
                roots[i] -= step;
                moved |= step.Magnitude > 4 * Epsilon * roots[i].Magnitude && leftOver(roots[i]) > 4 * Epsilon;
            }

            if (!moved)
                break;
        }

        return roots;
    }
}
