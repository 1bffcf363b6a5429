using EightOhm.Explaining;
using EightOhm.Quantities;
using EightOhm.Ratings;
using EightOhm.Supply;
using UnitsNet;

namespace EightOhm.SupplyPaths;

/// <summary>The ripple of a rail, line by line, against the rejection at each line's own frequency: hum at the output in volts.</summary>
/// <remarks>Rejection by loop gain falls with frequency while the ripple's harmonics do too: one figure at twice the mains tells half of the story.</remarks>
public sealed class HumSpectrum
{
    // From the fundamental of the mains up; a solved rail without signal has the even ones.
    private const int Most = 200;

    private HumSpectrum(IReadOnlyList<RippleLine> lines)
    {
        Lines = lines;
        RippleRms = Rms(lines.Select(l => l.Ripple.Volts));
        Total = Rms(lines.Select(l => l.AtOutput.Volts));
    }

    /// <summary>The lines, rising frequency; those without ripple left out.</summary>
    public IReadOnlyList<RippleLine> Lines { get; }

    /// <summary>The ripple of all lines together, rms.</summary>
    [Symbol("V_r")]
    public ElectricPotential RippleRms { get; }

    /// <summary>The hum at the output, all lines together, rms.</summary>
    [Symbol("V_hum")]
    public ElectricPotential Total { get; }

    /// <summary>The ripple of a solved rail, against a rejection.</summary>
    /// <remarks>The rail over one cycle of the mains by the Fourier sum of its samples. Of a rail whose load has a period of its own, solve it with its mean current.</remarks>
    /// <param name="rail">A rail in its periodic steady state.</param>
    /// <param name="mains">Mains frequency; greater than 0 Hz.</param>
    /// <param name="rejection">Output-referred rejection at a frequency; greater than 0.</param>
    /// <param name="lines">How many multiples of the mains; 1 to 200.</param>
    /// <returns>Each line with what is left of it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Worked("Fourier sum of the rail over one cycle of the mains, each line over the rejection at its frequency, squares added")]
    public static HumSpectrum Of(RailFigures rail, Frequency mains, Func<Frequency, Gain> rejection, int lines = 20)
    {
        ArgumentNullException.ThrowIfNull(rail);
        Guard.Positive(mains);
        Guard.Between(lines, 1, Most);
        // The last sample repeats the first.
        const int Samples = 4000;
        var v = rail.OverOneCycle(Samples + 1).Rail;
        return Make(mains, rejection, Enumerable.Range(1, lines).Select(h => (h, Amplitude(v, Samples, h) / Math.Sqrt(2))));
    }

    /// <summary>A sawtooth ripple at twice the mains, against a rejection: the estimate before a supply is solved.</summary>
    /// <param name="V_pp">Ripple, peak to peak; 0 V or more.</param>
    /// <param name="mains">Mains frequency; greater than 0 Hz.</param>
    /// <param name="rejection">Output-referred rejection at a frequency; greater than 0.</param>
    /// <param name="lines">How many multiples of twice the mains; 1 to 200.</param>
    /// <returns>Each line with what is left of it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Worked("Ripple.SawtoothHarmonic over the rejection at each line's frequency, squares added")]
    public static HumSpectrum OfSawtooth(ElectricPotential V_pp, Frequency mains, Func<Frequency, Gain> rejection, int lines = 20)
    {
        Guard.Positive(mains);
        Guard.Between(lines, 1, Most);
        return Make(mains, rejection, Enumerable.Range(1, lines).Select(h => (2 * h, Ripple.SawtoothHarmonic(V_pp, h).Volts / Math.Sqrt(2))));
    }

    /// <summary>How far the hum is below a voltage at the output: V_rated/V_hum.</summary>
    /// <param name="V_rated">Rms; greater than 0 V.</param>
    /// <returns>The distance, a ratio of voltages.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The voltage is not positive, or there is no hum.</exception>
    [Worked("Ripple.BelowRated with all lines together")]
    public Gain Below(ElectricPotential V_rated) => Ripple.BelowRated(V_rated, Total);

    private static HumSpectrum Make(Frequency mains, Func<Frequency, Gain> rejection, IEnumerable<(int Multiple, double Rms)> ripple)
    {
        ArgumentNullException.ThrowIfNull(rejection);
        return new([.. ripple.Where(r => r.Rms > 0).Select(r => Line(mains * r.Multiple, r.Rms, rejection))]);
    }

    private static RippleLine Line(Frequency f, double rms, Func<Frequency, Gain> rejection) =>
        new(f, ElectricPotential.FromVolts(rms), Guard.Positive(rejection(f), "the rejection", "Give the output-referred rejection as a ratio above zero, for example 80.dB."));

    private static double Amplitude(IReadOnlyList<double> v, int samples, int h)
    {
        double re = 0, im = 0;
        for (var n = 0; n < samples; n++)
        {
            var (sin, cos) = Math.SinCos(2 * Math.PI * h * n / samples);
            re += v[n] * cos;
            im += v[n] * sin;
        }

        return 2 * Math.Sqrt((re * re) + (im * im)) / samples;
    }

    private static ElectricPotential Rms(IEnumerable<double> volts) => ElectricPotential.FromVolts(Math.Sqrt(volts.Sum(v => v * v)));
}
