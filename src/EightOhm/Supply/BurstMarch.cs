using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Supply;

/// <summary>A rail at idle that must suddenly play, and is left in peace again.</summary>
internal sealed class BurstMarch
{
    private readonly RailNetwork idle;
    private readonly double u1, u2;

    public BurstMarch(RailNetwork idle)
    {
        this.idle = idle;
        (u1, u2) = PeriodicState.Find(idle, idle.Half, out _);
        var measure = Measure(idle, u1, u2, 0, idle.Half);
        IdleMinimum = measure[0].Minimum;
        IdleMean = measure[0].Rail / measure.Time;
    }

    public double IdleMinimum { get; }

    public double IdleMean { get; }

    /// <summary>The burst: lowest rail, and lowest at the rail's own peaks, of both rails the lower.</summary>
    /// <param name="peak">Peak of the half-waves, A.</param>
    /// <param name="signal">Frequency, Hz.</param>
    /// <param name="length">s.</param>
    /// <param name="begins">When the burst begins after a zero of the mains, s.</param>
    public (double Lowest, double VoltageAtLoadPeak, double U1, double U2) Play(double peak, double signal, double length, double begins)
    {
        double a = u1, b = u2;
        new RailMarch(idle).Run(ref a, ref b, 0, begins, null);
        var playing = Playing(peak, signal, begins);
        var measure = new RailMeasure(playing);
        PeakLook first = new(playing, 1, begins), second = new(playing, 2, begins);
        new RailMarch(playing).Run(ref a, ref b, begins, begins + length, new SegmentVisitors(measure, first, second));
        return playing.Rails > 1
            ? (Math.Min(measure[0].Minimum, measure[1].Minimum), Math.Min(first.Found, second.Found), a, b)
            : (measure[0].Minimum, first.Found, a, b);
    }

    /// <summary>How long after the burst the lost part of the minimum has fallen to 1/e.</summary>
    public double Recovery(double begins, double length, double a, double b)
    {
        var (t, half, lost, last) = (begins + length, idle.Half, double.NaN, double.NaN);
        for (var k = 0; k < 2000; k++)
        {
            var measure = Measure(idle, a, b, t, t + half);
            (a, b, t) = (measure.U1, measure.U2, t + half);
            var now = IdleMinimum - measure[0].Minimum;
            if (double.IsNaN(lost))
            {
                if (now <= 1e-6 * idle.Peak)
                    return 0;
                lost = now;
            }
            else if (now <= lost / Math.E)
            {
                var part = Math.Log(last * Math.E / lost) / Math.Log(last / now);
                return (k - 1 + part) * half;
            }

            last = now;
        }

        throw new ShortfallException("The rail", ElectricPotential.FromVolts(last), $"2000 half-cycles after the burst it has not made up what it lost, {QuantityFormat.Short(ElectricPotential.FromVolts(lost))}", "Take a stiffer winding or a smaller reservoir.");
    }

    /// <summary>The first rail over time, the burst beginning at zero.</summary>
    public RailWaveform Waveform(double peak, double signal, double length, double begins, double before, double after, int points)
    {
        // Whole half-cycles before, so that the idle state starts as it was found.
        var lead = Math.Ceiling(before / idle.Half) * idle.Half;
        var starts = lead + begins;
        var time = new double[points];
        for (var k = 0; k < points; k++)
            time[k] = starts - before + ((before + length + after) * k / (points - 1));
        var sampler = new RailWaveform.Sampler(time, 1);
        double a = u1, b = u2;
        new RailMarch(idle).Run(ref a, ref b, 0, starts, sampler);
        new RailMarch(Playing(peak, signal, starts)).Run(ref a, ref b, starts, starts + length, sampler);
        new RailMarch(idle).Run(ref a, ref b, starts + length, starts + length + after, sampler);
        var wave = sampler.Done();
        return wave with { Time = [.. wave.Time.Select(t => t - starts)] };
    }

    private RailNetwork Playing(double peak, double signal, double begins)
    {
        var omega = 2 * Math.PI * signal;
        return idle.With(idle.Load1 with { Peak = peak, Sign = 1 }, idle.Rails > 1 ? idle.Load2 with { Peak = peak, Sign = -1 } : default, omega, -omega * begins);
    }

    private static Stretch Measure(RailNetwork network, double a, double b, double from, double to)
    {
        var measure = new Stretch(network);
        new RailMarch(network).Run(ref a, ref b, from, to, measure);
        (measure.U1, measure.U2) = (a, b);
        return measure;
    }

    private sealed class Stretch(RailNetwork network) : RailMeasure(network)
    {
        public double U1, U2;
    }
}
