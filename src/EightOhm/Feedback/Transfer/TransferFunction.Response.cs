using System.Numerics;
using System.Runtime.CompilerServices;
using EightOhm.Explaining;
using EightOhm.Quantities;
using EightOhm.Samples;
using UnitsNet;

namespace EightOhm.Feedback;

/// <content>What it does to a sine and to a step.</content>
public sealed partial class TransferFunction
{
    /// <summary>The gain at a frequency, its size without its phase.</summary>
    /// <param name="f">Frequency; 0 Hz or more.</param>
    /// <returns>The magnitude, 0 or more.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is negative.</exception>
    /// <exception cref="InvalidOperationException">There is a pole at exactly that frequency.</exception>
    /// <example><code>TransferFunction.Pole(1.kHz).Magnitude(1.kHz)   // 0.7071</code></example>
    [Worked("the product of the distances to the zeros over that to the poles, in the s plane")]
    public Gain Magnitude(Frequency f) => Gain.FromRatio(Value(f).Magnitude);

    /// <summary>The phase at a frequency, counted through from 0 Hz: four poles come to −360°, not back to 0°. Negative lags.</summary>
    /// <param name="f">Frequency; 0 Hz or more.</param>
    /// <returns>The phase; a function that inverts begins at 180°.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is negative.</exception>
    /// <example><code>TransferFunction.Pole(1.kHz).Phase(1.kHz)   // −45°</code></example>
    [Worked("the sum of the angles to the zeros less that to the poles, in the s plane, and of the delay")]
    public Angle Phase(Frequency f) => Angle.FromDegrees(PhaseAt(2 * Math.PI * Guard.NotNegative(f).Hertz) * 180 / Math.PI);

    /// <summary>The complex gain at a frequency.</summary>
    /// <param name="f">Frequency; 0 Hz or more.</param>
    /// <returns>A complex number.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is negative.</exception>
    /// <exception cref="InvalidOperationException">There is a pole at exactly that frequency.</exception>
    public Complex Value(Frequency f) => At(2 * Math.PI * Guard.NotNegative(f).Hertz);

    /// <summary>The response over frequency, as circuits give theirs: to lay one beside the other.</summary>
    /// <param name="frequencies">Rising, greater than 0 Hz.</param>
    /// <returns>The complex gain at each; exact between them too.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The frequencies do not rise from above 0 Hz.</exception>
    [Worked("the product of its factors at each frequency")]
    public Response<Gain> Response(IReadOnlyList<Frequency> frequencies)
    {
        var hertz = Response<Gain>.Checked(frequencies);
        return new(hertz, [.. hertz.Select(f => At(2 * Math.PI * f))], f => At(2 * Math.PI * f));
    }

    /// <summary>The response to a step of 1 at 0 s.</summary>
    /// <param name="to">How long to look; greater than 0 s.</param>
    /// <param name="points">How many points, equally far apart; 2 to 100 000.</param>
    /// <returns>The output over time. Of an unstable function it grows.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <exception cref="InvalidOperationException">The function is improper, or grows beyond all numbers in that time.</exception>
    [Worked("its factors as a chain of state equations, stepped exactly by e to their matrix; a delay as a quotient of order 6")]
    public Waveform<double> Step(Duration to, int points = 401) => StepResponse.Of(this, Guard.Positive(to).Seconds, Guard.Between(points, 2, 100_000));

    /// <summary>How the response to a step settles: its final value, rise, overshoot and settling time.</summary>
    /// <remarks>For a function that has settled to something: stable, with a gain at 0 Hz.</remarks>
    /// <exception cref="InvalidOperationException">The function is improper, unstable, or settles to nothing.</exception>
    [Worked("read from the response to a step over a time in which its slowest pole has died away")]
    public StepFigures Settling() => StepFigures.Of(this);

    /// <summary>The −3 dB bandwidth: the highest frequency at which the gain is down to √½ of that at 0 Hz.</summary>
    /// <returns>The bandwidth, in Hz.</returns>
    /// <exception cref="InvalidOperationException">There is no gain at 0 Hz to be compared with, or it never falls so far.</exception>
    /// <example><code>TransferFunction.Pole(1.kHz).Bandwidth()   // 1 kHz</code></example>
    [Worked("the highest crossing of √½ of the gain at 0 Hz: a scan over the logarithm of frequency, then root finding")]
    public Frequency Bandwidth()
    {
        if (IsZero || !IsProper || poles.Concat(zeros).Contains(Complex.Zero))
            throw new InvalidOperationException("A −3 dB bandwidth is told of a gain at 0 Hz, and this function has none or rises without end: divide a coupling or an integrator out first.");
        var crossings = new LoopScan(this * (Math.Sqrt(2) / AtZero())).GainCrossings();
        return crossings.Count > 0 ? crossings[^1].Frequency : throw new InvalidOperationException("The gain never falls by 3 dB: this function has no poles that end it.");
    }

    /// <summary>The highest gain of all frequencies.</summary>
    /// <returns>The gain's size and where it is.</returns>
    /// <exception cref="InvalidOperationException">The function rises without end or is nothing, or has poles on the imaginary axis, where its gain has no end.</exception>
    [Worked("the highest magnitude: a scan over the logarithm of frequency, then golden section")]
    public ResponsePeak Peak()
    {
        if (IsZero || !IsProper || poles.Any(p => p.Real == 0))
            throw new InvalidOperationException("This has no highest gain: it is nothing, or it rises without end, towards high frequency or at a pole on the imaginary axis.");
        var (at, height) = new LoopScan(this).GainPeak();
        return new(at, Gain.FromRatio(height));
    }

    internal Complex At(double radians)
    {
        var product = WithoutDelay(radians);
        return delay == 0 ? product : product * Complex.FromPolarCoordinates(1, -radians * delay);
    }

    // In plain numbers, each operation as complex ones do it: every scan spends its time here, and most of it before code is compiled a second time.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal Complex WithoutDelay(double radians)
    {
        double re = factor, im = 0;
        for (var i = 0; i < zeros.Length || i < poles.Length; i++)
        {
            if (i < zeros.Length)
            {
                double a = 0 - zeros[i].Real, b = radians - zeros[i].Imaginary;
                (re, im) = ((re * a) - (im * b), (im * a) + (re * b));
            }

            if (i >= poles.Length)
                continue;
            var pole = poles[i];
            if (pole.Real == 0 && pole.Imaginary == radians)
                throw new InvalidOperationException($"There is a pole at exactly {QuantityFormat.Short((radians / (2 * Math.PI)).Hz)}: the gain there has no end. Ask at another frequency.");
            Divide(ref re, ref im, 0 - pole.Real, radians - pole.Imaginary);
        }

        return new(re, im);
    }

    // A division in full takes care of numbers whose squares are beyond all numbers, which costs more than all else in a scan.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Divide(ref double re, ref double im, double a, double b)
    {
        var square = (a * a) + (b * b);
        if (square is not (> 1e-280 and < 1e280))
        {
            var quotient = new Complex(re, im) / new Complex(a, b);
            (re, im) = (quotient.Real, quotient.Imaginary);
            return;
        }

        var over = 1 / square;
        (re, im) = (((re * a) + (im * b)) * over, ((im * a) - (re * b)) * over);
    }

    internal double PhaseAt(double radians)
    {
        var phase = -radians * delay;
        var negative = factor < 0;
        foreach (var zero in zeros)
            phase += Turn(zero, radians, ref negative);
        foreach (var pole in poles)
            phase -= Turn(pole, radians, ref negative);
        return negative ? phase + Math.PI : phase;
    }

    internal double AtZero() => At(0).Real;

    // A root on the right counts as the mirror image's opposite; its sign goes with the gain's.
    private static double Turn(Complex root, double radians, ref bool negative)
    {
        if (root.Real <= 0)
            return root == Complex.Zero ? Math.PI / 2 : Math.Atan2(radians - root.Imaginary, -root.Real);
        negative = !negative;
        return -Math.Atan2(radians - root.Imaginary, root.Real);
    }
}
