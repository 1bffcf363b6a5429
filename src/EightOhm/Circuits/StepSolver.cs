using EightOhm.Samples;
using UnitsNet;

namespace EightOhm.Circuits;

/// <summary>C·x' + G·x = b from rest, b put on at 0 s: the Radau IIA method of order 5, which holds the equations without a derivative exactly.</summary>
/// <remarks>The state is C·x, which does not jump; what must jump (a divider of resistors) has done so at the end of the first step. A step is taken once whole and once in two halves;
/// their difference decides how long it may be. Lengths are powers of two of one, so that few matrices are factored.
/// Source: E. Hairer &amp; G. Wanner, Solving Ordinary Differential Equations II, sec. IV.5 and IV.8.</remarks>
internal static class StepSolver
{
    // Of a step; what rounding may leave of it where it rules; and the share of the greatest of its kind below which an unknown is not looked at more closely.
    private const double Tolerance = 1e-8, Tolerable = 1e-4, Negligible = 1e-3;

    private const int Shortest = -60;

    private const int MostSteps = 2_000_000;

    private static readonly double Root6 = Math.Sqrt(6);

    private static readonly double[] Radau =
    [
        (88 - (7 * Root6)) / 360, (296 - (169 * Root6)) / 1800, (-2 + (3 * Root6)) / 225,
        (296 + (169 * Root6)) / 1800, (88 + (7 * Root6)) / 360, (-2 - (3 * Root6)) / 225,
        (16 - Root6) / 36, (16 + Root6) / 36, 1 / 9.0,
    ];

    public static Waveform<ElectricPotential> Solve(LinearSystem system, IReadOnlyList<(int Row, double G, double C)> drive, IReadOnlyList<(int Col, double Sign)> watch, double end, int points)
    {
        if (system.Delays.Count > 0)
            throw new InvalidOperationException("The step response of a circuit with a delay is not solved. Replace the delay by an RC section or two for this.");
        var n = system.Count;
        var (g, c) = system.Matrices();
        var b = new double[n];
        foreach (var (row, value, _) in drive)
            b[row] += value;
        // Voltages are compared with voltages, currents of inductors with currents; those of sources follow from them, and are huge for the moment in which capacitors are charged.
        var kinds = new Kind[n];
        foreach (var branch in system.Branches.Values)
            kinds[branch] = c[(branch * n) + branch] != 0 && g[(branch * n) + branch] == 0 ? Kind.Inductor : Kind.Follows;
        var march = new March(n, g, c, b, kinds);
        double[] seconds = new double[points], values = new double[points];
        for (var i = 1; i < points; i++)
        {
            seconds[i] = end * i / (points - 1);
            march.To(seconds[i], end / (points - 1));
            foreach (var (col, sign) in watch)
                values[i] += sign * march.X[col];
        }

        // At 0 s the value just after the step: the limit from a step in which hardly any state has moved.
        var instant = new March(n, g, c, b, kinds).Instant(end);
        foreach (var (col, sign) in watch)
            values[0] += sign * instant[col];
        return new(seconds, values);
    }

    private enum Kind
    {
        Voltage,
        Inductor,
        Follows,
    }

    private sealed class March(int n, double[] g, double[] c, double[] b, Kind[] kinds)
    {
        private readonly Dictionary<int, ScaledLu<double>> factored = [];
        private readonly double[] most = new double[n];
        private double now;
        private int exponent = -4;
        private double unit;
        private int steps;

        public double[] X { get; private set; } = new double[n];

        public double[] Instant(double end)
        {
            unit = end;
            return Step(X, -40);
        }

        public void To(double target, double interval)
        {
            unit = interval;
            while (now < target * (1 - 1e-14))
            {
                Work.Checkpoint();
                if (++steps > MostSteps)
                    throw new InvalidOperationException("The step response rings too fast for the time asked for: ask for a shorter time.");
                // Steps are whole parts of the interval, so that each value is met exactly.
                var (halves, error) = Best();
                var length = Math.ScaleB(unit, exponent);
                (X, now) = (halves, now + length);
                var position = (now - (target - interval)) / interval;
                // Longer only where the longer step begins on its own grid.
                if (error < Tolerance / 64 && exponent < 0 && Math.Abs(Math.IEEERemainder(position, Math.ScaleB(1, exponent + 1))) < 1e-9 * Math.ScaleB(1, exponent + 1))
                    exponent++;
            }

            now = target;
        }

        // The longest step that is accurate enough; where shorter ones do not help any more, the rounding rules, and the best of them is taken.
        private (double[] X, double Error) Best()
        {
            var best = (X: Array.Empty<double>(), Error: double.PositiveInfinity, Exponent: exponent);
            for (var worse = 0; worse < 4 && exponent > Shortest; exponent--)
            {
                double[] whole = Step(X, exponent), halves = Step(Step(X, exponent - 1), exponent - 1);
                var error = Error(whole, halves);
                if (error <= Tolerance)
                    return (halves, error);
                if (error < best.Error / 2)
                    worse = 0;
                else
                    worse++;
                if (error < best.Error)
                    best = (halves, error, exponent);
            }

            exponent = best.Exponent;
            return best.X.Length > 0 && best.Error < Tolerable
                ? (best.X, best.Error)
                : throw new InvalidOperationException("The step response could not be followed: the circuit's equations lose too many digits in time. Put in the resistances that the real parts have.");
        }

        // Against the greatest that each unknown has been, or a thousandth of the greatest of its kind: what only trembles in the last digits is no error.
        private double Error(double[] whole, double[] halves)
        {
            Span<double> greatest = [0, 0, 0];
            for (var i = 0; i < n; i++)
            {
                most[i] = Math.Max(most[i], Math.Abs(halves[i]));
                greatest[(int)kinds[i]] = Math.Max(greatest[(int)kinds[i]], most[i]);
            }

            double error = 0;
            for (var i = 0; i < n; i++)
            {
                var size = Math.Max(most[i], Negligible * greatest[(int)kinds[i]]);
                if (size > 0 && kinds[i] != Kind.Follows)
                    error = Math.Max(error, Math.Abs(whole[i] - halves[i]) / size);
            }

            return error;
        }

        // One step from a state: of its X only C·X counts.
        private double[] Step(double[] from, int power)
        {
            var h = Math.ScaleB(unit, power);
            if (!factored.TryGetValue(power, out var lu))
                factored[power] = lu = Factor(h);
            if (lu.Singular)
                throw new InvalidOperationException("The equations of this circuit have no one answer in time: a node may hang on controlled sources alone.");
            var right = new double[3 * n];
            for (var i = 0; i < n; i++)
            {
                double state = 0;
                for (var j = 0; j < n; j++)
                    state += c[(i * n) + j] * from[j];
                for (var k = 0; k < 3; k++)
                    right[(k * n) + i] = (state / h) + ((Radau[k * 3] + Radau[(k * 3) + 1] + Radau[(k * 3) + 2]) * b[i]);
            }

            lu.Solve(right, right);
            return right[(2 * n)..];
        }

        // C/h·X_k + Σ a_kl·G·X_l, all three stages at once.
        private ScaledLu<double> Factor(double h)
        {
            var m = 3 * n;
            var a = new double[m * m];
            for (var k = 0; k < 3; k++)
            {
                for (var l = 0; l < 3; l++)
                {
                    for (var i = 0; i < n; i++)
                    {
                        for (var j = 0; j < n; j++)
                            a[(((k * n) + i) * m) + (l * n) + j] = (Radau[(k * 3) + l] * g[(i * n) + j]) + (k == l ? c[(i * n) + j] / h : 0);
                    }
                }
            }

            return new ScaledLu<double>(a, m);
        }
    }
}
