using System.Numerics;
using EightOhm.Feedback;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Tests.Feedback;

public class TransferFunctionTests
{
    [Fact]
    public void Series_parallel_and_feedback_are_those_of_complex_numbers()
    {
        var random = new Random(5);
        for (var draw = 0; draw < 200; draw++)
        {
            TransferFunction a = Any(random, 6), b = Any(random, 6);
            var f = Frequency.FromHertz(Math.Pow(10, 8 * random.NextDouble()));
            Complex x = a.Value(f), y = b.Value(f);
            Near(x * y, (a * b).Value(f));
            Near(x + y, (a + b).Value(f));
            Near(x / y, (a / b).Value(f));
            Near(x / (1 + (x * y)), a.ClosedWith(b).Value(f));
            Near(1 / (1 + x), a.Sensitivity().Value(f));
        }

        static void Near(Complex expected, Complex ours) => Assert.True((expected - ours).Magnitude < 1e-7 * expected.Magnitude, $"{expected} and {ours}");
    }

    [Fact]
    public void Twelve_poles_over_eight_decades_keep_their_digits()
    {
        // A loop of twelve poles from 1 Hz to 100 MHz closed with so little gain that each root moves by what first order says.
        var corners = Enumerable.Range(0, 12).Select(i => Math.Pow(10, i * 8.0 / 11)).ToArray();
        var loop = corners.Aggregate(TransferFunction.Constant(1.0), (t, f) => t * TransferFunction.Pole(f.Hz));
        const double little = 1e-9;
        var moved = (little * loop).Sensitivity();
        Assert.Equal(12, moved.Order);
        for (var i = 0; i < 12; i++)
        {
            // d = T'(p)·… : the root of ∏(1 + s/w) + k moves by −k·w/∏(1 − p/w) of the others.
            var others = corners.Where((_, j) => j != i).Aggregate(1.0, (product, f) => product * (1 - (corners[i] / f)));
            var shift = -little * corners[i] / others;
            var now = moved.Poles[i].Frequency.Hertz;
            Assert.True(Math.Abs(now - corners[i] + shift) < 1e-13 * corners[i] + Math.Abs(shift) * 1e-3, $"{corners[i]}: {now - corners[i]:E3}, first order {-shift:E3}");
        }
    }

    [Fact]
    public void A_pole_under_a_zero_leaves_but_not_in_the_right_half_plane()
    {
        var pole = TransferFunction.Pole(1.kHz);
        Assert.Equal(0, (pole * TransferFunction.Zero(1.kHz)).Order);
        // 1/(1 − s/w): a pole on the right, which a zero on it does not make harmless.
        var right = TransferFunction.RightZero(1.kHz) / (TransferFunction.RightZero(1.kHz) * TransferFunction.Pole(1.MHz));
        Assert.False(right.IsStable);
        Assert.Equal(TransferFunction.Constant(3.0), TransferFunction.Constant(1.5) * 2);
        Assert.NotEqual(pole, TransferFunction.Pole(1001.Hz));
    }

    [Fact]
    public void Phase_is_counted_through()
    {
        var four = Enumerable.Repeat(TransferFunction.Pole(1.kHz), 4).Aggregate((a, b) => a * b);
        Assert.Equal(-360, four.Phase(1.GHz).Degrees, 1e-3);
        Assert.Equal(-180, four.Phase(1.kHz).Degrees, 1e-9);
        Assert.Equal(-36, TransferFunction.Delayed(1.us).Phase(100.kHz).Degrees, 1e-9);
        Assert.Equal(-45, TransferFunction.RightZero(1.kHz).Phase(1.kHz).Degrees, 1e-9);
        Assert.Equal(180, (-1 * TransferFunction.Pole(1.kHz)).Phase(Frequency.FromHertz(1e-3)).Degrees, 1e-3);
    }

    [Fact]
    public void A_delay_as_a_quotient_is_the_delay()
    {
        var delay = TransferFunction.Delayed(12.ns);
        var quotient = delay.WithoutDelay();
        Assert.Equal(6, quotient.Order);
        foreach (var f in new[] { 1.MHz, 10.MHz, 30.MHz })
            Assert.True((delay.Value(f) - quotient.Value(f)).Magnitude < 1e-5, $"{f}");
    }

    [Fact]
    public void A_step_of_an_integrator_and_of_stiff_poles()
    {
        // 1 V into 1/(j·f/1 MHz): 2π·10⁶ a second.
        Assert.Equal(2 * Math.PI, TransferFunction.Integrator(1.MHz).Step(1.us, 11).Y[^1], 1e-9);
        var stiff = TransferFunction.Pole(1.Hz) * TransferFunction.Pole(10.MHz) * TransferFunction.Pair(1.MHz, 2);
        Assert.Equal(1 - Math.Exp(-2 * Math.PI * 0.1), stiff.Step(100.ms, 51).Y[^1], 1e-6);
        // A zero pair over real poles, and a coupling.
        var notch = TransferFunction.ZeroPair(1.kHz, 5) * TransferFunction.Pole(500.Hz) * TransferFunction.Pole(2.kHz) * TransferFunction.HighPass(1.Hz);
        Assert.Equal(1, notch.Step(1.us, 2).Y[0], 1e-9);
    }

    [Fact]
    public void Settling_of_a_pair_is_that_of_the_second_order()
    {
        var figures = TransferFunction.Pair(1.MHz, 1).Settling();
        Assert.Equal(SecondOrder.Overshoot(0.5).DecimalFractions, figures.Overshoot.DecimalFractions, 1e-5);
        var one = TransferFunction.Pole(1.MHz).Settling();
        Assert.Equal(Math.Log(9) / (2 * Math.PI * 1e6), one.RiseTime.Seconds, 1e-11);
        Assert.Equal(Math.Log(100) / (2 * Math.PI * 1e6), one.SettlingTime.Seconds, 1e-10);
        Assert.Equal(0, one.Overshoot.DecimalFractions, 1e-12);
    }

    [Fact]
    public void What_cannot_be_is_refused_in_words()
    {
        var improper = TransferFunction.Zero(1.kHz);
        Assert.Contains("improper", Assert.Throws<InvalidOperationException>(() => improper.Step(1.ms)).Message, StringComparison.Ordinal);
        Assert.Contains("improper", Assert.Throws<InvalidOperationException>(() => LoopStability.Of(improper)).Message, StringComparison.Ordinal);
        var oscillator = (1e6 * TransferFunction.Pole(1.kHz) * TransferFunction.Pole(1.kHz) * TransferFunction.Pole(1.kHz)).ClosedWith(TransferFunction.Constant(1.0));
        Assert.Contains("right half-plane", Assert.Throws<InvalidOperationException>(() => oscillator.Settling()).Message, StringComparison.Ordinal);
        Assert.Contains("future", Assert.Throws<InvalidOperationException>(() => improper / TransferFunction.Delayed(1.us)).Message, StringComparison.Ordinal);
        Assert.Contains("WithoutDelay", Assert.Throws<InvalidOperationException>(() => improper + TransferFunction.Delayed(1.us)).Message, StringComparison.Ordinal);
        Assert.Contains("pole at exactly", Assert.Throws<InvalidOperationException>(() => TransferFunction.Integrator(1.kHz).Magnitude(default)).Message, StringComparison.Ordinal);
        Assert.Throws<RefusedValueException>(() => TransferFunction.Pole((-1).Hz));
        Assert.Throws<ArgumentException>(() => TransferFunction.OfPolynomials([], [1]));
    }

    private static TransferFunction Any(Random random, int most)
    {
        var t = TransferFunction.Constant((random.Next(2) == 0 ? 1 : -1) * Math.Pow(10, 4 * random.NextDouble()));
        for (var i = random.Next(1, most); i > 0; i--)
            t *= random.Next(4) switch
            {
                0 => TransferFunction.Pair(F(), 0.1 + (3 * random.NextDouble())),
                1 => TransferFunction.Pole(F()) * TransferFunction.Zero(F()),
                2 => TransferFunction.RightZero(F()) * TransferFunction.Pole(F()),
                _ => TransferFunction.Pole(F()),
            };
        return t;

        Frequency F() => Frequency.FromHertz(Math.Pow(10, 7 * random.NextDouble()));
    }
}
