using EightOhm.Numerics;
using EightOhm.Quantities;
using EightOhm.Samples;
using MathNet.Numerics.LinearAlgebra;

namespace EightOhm.Feedback;

/// <summary>The response of a transfer function to a step, exact at its instants however stiff: sections of first and second order in a chain.</summary>
internal static class StepResponse
{
    /// <summary>The output at equally spaced instants from 0 s.</summary>
    public static Waveform<double> Of(TransferFunction function, double seconds, int points)
    {
        if (!function.IsProper)
            throw new InvalidOperationException($"A step has no response here: the function is improper, with {function.Zeros.Count} zeros above {function.Poles.Count} poles, so its output would be a spike without end. Put a pole above the band, as every real stage has.");
        var plain = function.WithoutDelay();
        var chain = Chain.Of(plain);
        var n = chain.Order;
        var step = seconds / (points - 1);
        // The state and the constant input in one vector: one matrix takes both a step further.
        var a = Matrix<double>.Build.Dense(n + 1, n + 1);
        a.SetSubMatrix(0, 0, chain.A);
        a.SetColumn(n, 0, n, chain.B);
        var forward = MatrixExponential.Of(a * step);
        var state = Vector<double>.Build.Dense(n + 1);
        state[n] = 1;
        double[] times = new double[points], values = new double[points];
        for (var i = 0; i < points; i++)
        {
            Work.Checkpoint();
            times[i] = step * i;
            values[i] = chain.Gain * ((chain.C * state.SubVector(0, n)) + chain.D);
            if (!double.IsFinite(values[i]))
                throw new InvalidOperationException($"The response grows beyond all numbers within {QuantityFormat.Short(times[i].s)}: the function is unstable, with poles in the right half-plane. Look at a shorter time.");
            state = forward * state;
        }

        return new Waveform<double>(times, values);
    }

    /// <summary>State equations of sections in a chain.</summary>
    private sealed record Chain(Matrix<double> A, Vector<double> B, Vector<double> C, double D, double Gain)
    {
        public int Order => A.RowCount;

        public static Chain Of(TransferFunction function)
        {
            var sections = StepSections.Of(function.PolesInS, function.ZerosInS);
            var order = Math.Max(1, sections.Sum(s => s.Order));
            var a = Matrix<double>.Build.Dense(order, order);
            Vector<double> b = Vector<double>.Build.Dense(order), c = Vector<double>.Build.Dense(order);
            double d = 1, gain = function.Factor;
            var at = 0;
            foreach (var section in sections)
            {
                gain *= section.Gain;
                // The input of this section is the output of those before it: c·x + d·u.
                for (var i = 0; i < section.Order; i++)
                {
                    for (var j = 0; j < at; j++)
                        a[at + i, j] = section.B[i] * c[j];
                    for (var j = 0; j < section.Order; j++)
                        a[at + i, at + j] = section.A[(i * section.Order) + j];
                    b[at + i] = section.B[i] * d;
                }

                c *= section.D;
                for (var i = 0; i < section.Order; i++)
                    c[at + i] = section.C[i];
                d *= section.D;
                at += section.Order;
            }

            return new(a, b, c, d, gain);
        }
    }
}
