using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Thermal;

/// <summary>From a sum of exponentials to a ladder.</summary>
/// <remarks>Z(s) = Σ (1/c)/(s + λ) with c = τ/R is (1/C₁)·e₁ᵀ(s + BᵀB)⁻¹e₁, B bidiagonal with √(g_k/C_k) on its diagonal and √(g_k/C_k+1) beside it.
/// Golub, Kahan: Calculating the singular values and pseudo-inverse of a matrix, SIAM J. Numer. Anal. B 2 (1965), sec. 2.</remarks>
internal static class LadderSynthesis
{
    private const double Same = 1e-9;

    public static CauerLadder Of(ReadOnlySpan<double> r, ReadOnlySpan<double> tau)
    {
        var (shares, roots) = Merged(r.ToArray(), tau.ToArray());
        var n = roots.Length;
        var start = Norm(shares);
        var right = new double[n][];
        var left = new double[n][];
        var rungs = new LadderRung[n];
        right[0] = [.. shares.Select(x => x / start)];
        var c = 1 / (start * start);
        for (var k = 0; k < n; k++)
        {
            // Left: B's diagonal. What is left of the earlier directions is rounding, taken out twice.
            left[k] = [.. right[k].Select((x, i) => roots[i] * x)];
            Remove(left[k], left, k);
            var alpha = Scale(left[k], k);
            var g = alpha * alpha * c;
            rungs[k] = new LadderRung(HeatCapacity.FromSi(c), ThermalResistance.FromSi(1 / g));
            if (k + 1 == n)
                break;
            right[k + 1] = [.. left[k].Select((x, i) => roots[i] * x)];
            Remove(right[k + 1], right, k + 1);
            var beta = Scale(right[k + 1], k);
            c = g / (beta * beta);
        }

        return new CauerLadder(rungs);
    }

    // Terms of one time constant are one term.
    private static (double[] Shares, double[] Roots) Merged(double[] r, double[] tau)
    {
        Array.Sort(tau, r);
        var shares = new List<double>();
        var taus = new List<double>();
        for (var i = 0; i < r.Length; i++)
        {
            if (taus.Count > 0 && tau[i] - taus[^1] <= Same * tau[i])
                shares[^1] += r[i] / tau[i];
            else
                (shares, taus) = ([.. shares, r[i] / tau[i]], [.. taus, tau[i]]);
        }

        return ([.. shares.Select(Math.Sqrt)], [.. taus.Select(t => Math.Sqrt(1 / t))]);
    }

    private static void Remove(double[] vector, double[][] earlier, int count)
    {
        for (var pass = 0; pass < 2; pass++)
            for (var j = 0; j < count; j++)
            {
                var along = 0.0;
                for (var i = 0; i < vector.Length; i++)
                    along += vector[i] * earlier[j][i];
                for (var i = 0; i < vector.Length; i++)
                    vector[i] -= along * earlier[j][i];
            }
    }

    private static double Scale(double[] vector, int rung)
    {
        var length = Norm(vector);
        if (!(length > 0) || !double.IsFinite(1 / length))
            throw new InvalidOperationException(FormattableString.Invariant($"The ladder ended at rung {rung + 1}: two time constants are too near each other, or a term is too small, to be told apart. Leave one of them out."));
        for (var i = 0; i < vector.Length; i++)
            vector[i] /= length;
        return length;
    }

    private static double Norm(double[] vector) => Math.Sqrt(vector.Sum(x => x * x));
}
