using EightOhm.Numerics;
using MathNet.Numerics.RootFinding;

namespace EightOhm.Loads;

/// <summary>∫|y(t)|dt of a network's admittance, y its impulse response; and ∫y(t)dt up to a time.</summary>
/// <remarks>With τ = L·ω/R, g = Z/R and time in units of 1/ω the admittance is D/((1 + τp)·D + g·p)/R, D = 1 + b·p + p². Its response is
/// written as r·exp(p₀t) + exp(σt)·(A·cosh δt + B·sinh(δt)/δ), p₀ a real pole and δ² of either sign or zero, so that two equal poles
/// are nothing special; its area between two zeros is a difference of closed forms.</remarks>
internal static class ImpulseArea
{
    // Three poles this close make the residues lose their digits; a change of 1/Q by this part takes them far enough apart.
    private const double Near = 1e-7;

    public static double PerVolt(SeriesNetwork n)
    {
        if (n.Z == 0)
            return 1 / n.R;
        double tau = n.L * n.W / n.R, g = n.Z / n.R, b = n.B;
        if (tau == 0)
            return (1 + (g * Area(NoCoil(g, b)))) / n.R;
        return Area(Coil(tau, g, b)) / n.R;
    }

    /// <summary>∫y(t)dt from 0 to a time: the current that a step of one volt drives.</summary>
    public static double StepPerVolt(SeriesNetwork n, double seconds)
    {
        var t = seconds * n.W;
        double tau = n.L * n.W / n.R, g = n.Z / n.R;
        if (n.Z == 0)
            return (tau == 0 ? 1 : Decay.Gone(t / tau)) / n.R;
        return (1 + (tau == 0 ? -g * NoCoil(g, n.B).Integral(t) : Coil(tau, g, n.B).Integral(t))) / n.R;
    }

    // What is left of y without its impulse, over −g.
    private static Response NoCoil(double g, double b) => new(0, -1, b + g, 1, 1, -(b + g) / 2);

    private static Response Coil(double tau, double g, double b) => Decompose(tau, g, b) ?? Decompose(tau, g, b * (1 + Near))
        ?? throw new InvalidOperationException(FormattableString.Invariant($"The poles of the admittance could not be told apart: L·ω/R = {tau:g9}, Z/R = {g:g9}, 1/Q = {b:g9}."));

    // The response of D/(monic cubic): the pole farthest from the other two stands alone.
    private static Response? Decompose(double tau, double g, double b)
    {
        var z = RealPole(tau, g, b);
        var (beta, gamma) = Rest(-z, tau, g, b);
        var square = (beta * beta / 4) - gamma;
        if (square > 0)
        {
            var far = (beta / 2) + Math.Sqrt(square);
            double[] poles = [z, far, gamma / far];
            Array.Sort(poles);
            z = Polish(poles[1] / poles[0] > poles[2] / poles[1] ? poles[0] : poles[2], tau, g, b);
            (beta, gamma) = Rest(-z, tau, g, b);
        }

        double p = -z, q = (p * p) + (beta * p) + gamma;
        if (Math.Abs(q) < Near * p * p)
            return null;
        // u = 1 + τ·p₀ without its cancellation; the rest follows from it.
        var u = -g * p / D(p, b);
        double a = u / tau * (p - (1 / p)) / q, constant = (-(u / (tau * p)) - (a * gamma)) / p, sigma = -beta / 2;
        // Over τ, so that the slow part is of the order of g: Brent takes a value far below 1 for a zero.
        return new((1 - a) / tau, p, beta, gamma, a / tau, (constant + (a * sigma)) / tau);
    }

    private static (double Beta, double Gamma) Rest(double p, double tau, double g, double b)
    {
        var u = -g * p / D(p, b);
        return (b + (u / tau), 1 - (u / (tau * p)));
    }

    private static double D(double p, double b) => 1 + (b * p) + (p * p);

    // The denominator at p = −z, over τ·z² + 1 so that it neither overflows nor vanishes in scale.
    private static double Denominator(double z, double tau, double g, double b) => ((1 - (tau * z)) * D(-z, b)) - (g * z);

    // A real pole −z: the denominator is 1 at z = 0 and negative beyond all poles, so a bisection of the logarithm cannot miss.
    private static double RealPole(double tau, double g, double b)
    {
        // A pole is no larger than this (Cauchy), and no smaller than its reciprocal with the coefficients turned round.
        double high = 1 + (Math.Max(1, Math.Max(1 + (tau * b), tau + b + g)) / tau), low = 1 / (1 + Math.Max(tau, Math.Max(1 + (tau * b), tau + b + g)));
        (low, high) = Halving.NarrowedByRatio(z => Denominator(z, tau, g, b) > 0, low, high);
        return Polish(Math.Sqrt(low * high), tau, g, b);
    }

    // Newton; a step that would leave the neighbourhood is one that rounding made.
    private static double Polish(double z, double tau, double g, double b)
    {
        for (var i = 0; i < 3; i++)
        {
            var slope = (-tau * D(-z, b)) + ((1 - (tau * z)) * ((2 * z) - b)) - g;
            var step = Denominator(z, tau, g, b) / slope;
            if (!(Math.Abs(step) < 1e-3 * z))
                break;
            z -= step;
        }

        return z;
    }

    private static double Area(Response y)
    {
        double cut = 0, area = 0, t = 0, value = y.At(0), before = value, length = y.Life;
        var from = y.Integral(0);
        void CutAt(double a, double b)
        {
            // Brent's accuracy is absolute, so the unknown is a part of the cell.
            cut = Brent.TryFindRoot(x => y.At(a + (x * (b - a))), 0, 1, 1e-13, 100, out var x) ? a + (x * (b - a))
                : throw new InvalidOperationException(FormattableString.Invariant($"The zero of an impulse response between {a:g9} and {b:g9} (times ω) was not found."));
            var to = y.Integral(cut);
            area += Math.Abs(to - from);
            from = to;
        }

        double last = 0;
        for (var k = 0; t < length; k++)
        {
            if (k % 1024 == 0)
                Work.Checkpoint();
            var next = t + Math.Min(Math.Max(0.005 * t, y.FirstStep), y.LongestStep);
            var ahead = y.At(next);
            if (value * ahead < 0)
                CutAt(t, next);
            else if (k > 0 && Math.Abs(value) < Math.Abs(before) && Math.Abs(value) < Math.Abs(ahead) && value * before > 0)
            {
                // A dip between three points may touch zero: two cuts that the steps do not see.
                double sign = Math.Sign(value), left = last, right = next;
                var dip = GoldenSection.Highest(s => -sign * y.At(s), left, right, 1e-12 * (1 + left));
                if (dip.Value > 0)
                {
                    CutAt(left, dip.At);
                    CutAt(dip.At, right);
                }
            }

            (last, before, t, value) = (t, value, next, ahead);
        }

        return area + Math.Abs(from);
    }

    /// <summary>r·exp(p·t) + exp(σt)·(A·cosh δt + B·sinh(δt)/δ), with σ = −β/2 and δ² = β²/4 − γ.</summary>
    private readonly record struct Response(double R, double P, double Beta, double Gamma, double A, double B)
    {
        private double Sigma => -Beta / 2;

        private double Square => (Beta * Beta / 4) - Gamma;

        private double Slowest => Square > 0 ? Gamma / ((Beta / 2) + Math.Sqrt(Square)) : Beta / 2;

        private double Fastest => Square > 0 ? (Beta / 2) + Math.Sqrt(Square) : Math.Sqrt(Gamma);

        /// <summary>When nothing is left of it: e⁻³², and a little for what t·exp(σt) keeps.</summary>
        public double Life => 36 / (R == 0 ? Slowest : Math.Min(Slowest, -P));

        public double FirstStep => 1e-3 / (R == 0 ? Fastest : Math.Max(Fastest, -P));

        public double LongestStep => Square < 0 ? Math.PI / 128 / Math.Sqrt(-Square) : double.PositiveInfinity;

        public double At(double t) => Both(t, R, A, B);

        /// <summary>The antiderivative that vanishes at infinity.</summary>
        public double Integral(double t)
        {
            var a = ((Sigma * A) - B) / Gamma;
            return Both(t, R == 0 ? 0 : R / P, a, A - (Sigma * a));
        }

        private double Both(double t, double r, double a, double b)
        {
            var alone = r == 0 ? 0 : r * Math.Exp(P * t);
            var square = Square;
            if (square < 0)
            {
                var w = Math.Sqrt(-square);
                return alone + (Math.Exp(Sigma * t) * ((a * Math.Cos(w * t)) + (b * (w * t < 1e-9 ? t : Math.Sin(w * t) / w))));
            }

            var d = Math.Sqrt(square);
            if (d * t < 1)
                return alone + (Math.Exp(Sigma * t) * ((a * Math.Cosh(d * t)) + (b * (d * t < 1e-9 ? t : Math.Sinh(d * t) / d))));
            double slow = Math.Exp(-Slowest * t), fast = Math.Exp(-Fastest * t);
            return alone + (((a * (slow + fast)) + (b / d * (slow - fast))) / 2);
        }
    }
}
