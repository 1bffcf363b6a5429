using EightOhm.Feedback;
using EightOhm.OutputNetworks;
using EightOhm.Quantities;
using EightOhm.SecondStages;

namespace EightOhm.Display.Tables;

/// <summary>Loops, their harmonics and what loads them, as tables.</summary>
public static class LoopTables
{
    private const int Digits = 4;

    /// <summary>The verdict on a loop first, then its margins; of an unstable one its growing poles and no margin.</summary>
    /// <param name="stability">The loop.</param>
    [Shows]
    public static Table Stability(LoopStability stability)
    {
        ArgumentNullException.ThrowIfNull(stability);
        List<IReadOnlyList<string>> rows = [["closed loop", "", stability.IsStable ? "stable" : "unstable: it oscillates"]];
        rows.AddRange(stability.UnstablePoles.Select(IReadOnlyList<string> (p) => ["growing pole", "", p.ToString()]));
        foreach (var crossing in stability.GainCrossings)
            rows.Add([stability.GainCrossings.Count > 1 ? "a crossover" : "crossover", "f_x", QuantityFormat.Short(crossing.Frequency, Digits)]);
        void Add<T>(string what, string symbol, T? value)
            where T : struct
        {
            if (value is { } v)
                rows.Add([what, symbol, Of(v)]);
        }

        Add(stability.GainCrossings.Count > 1 ? "least phase margin" : "phase margin", "PM", stability.PhaseMargin);
        Add("gain margin", "GM", stability.GainMargin);
        Add("gain margin downwards", "GM_down", stability.GainReductionMargin);
        Add("highest |1/(1 + T)|", "M_s", stability.SensitivityPeak);
        Add("where that is", "f_Ms", stability.SensitivityPeakFrequency);
        return new Table(["figure", "symbol", "value"], rows, [2], "stability of a loop");
    }

    /// <summary>The factors of a transfer function.</summary>
    /// <param name="function">The function.</param>
    [Shows]
    public static Table Factors(TransferFunction function)
    {
        ArgumentNullException.ThrowIfNull(function);
        List<IReadOnlyList<string>> rows = [];
        if (function.Poles.Concat(function.Zeros).All(r => r.Frequency.Hertz > 0))
            rows.Add(["gain at 0 Hz", QuantityFormat.Long(Gain.FromRatio(function.Value(default).Real))]);
        rows.AddRange(function.Poles.Select(IReadOnlyList<string> (p) => ["pole", p.ToString()]));
        rows.AddRange(function.Zeros.Select(IReadOnlyList<string> (z) => ["zero", z.ToString()]));
        if (function.Delay.Seconds > 0)
            rows.Add(["delay", QuantityFormat.Short(function.Delay)]);
        return new Table(["factor", "value"], rows, [1], "transfer function");
    }

    /// <summary>Harmonics before and after a loop, each with the loop gain that it meets.</summary>
    /// <param name="harmonics">The harmonics.</param>
    [Shows]
    public static Table Harmonics(LoopHarmonics harmonics)
    {
        ArgumentNullException.ThrowIfNull(harmonics);
        return new Table(
            ["harmonic", "at", "before", "loop gain there", "after"],
            [
                .. harmonics.Harmonics.Where(h => h.Before.DecimalFractions > 0).Select(IReadOnlyList<string> (h) =>
                    [$"{h.Number}", QuantityFormat.Short(h.Frequency), Short(h.Before), Of(h.LoopGain), Short(h.After)]),
                ["all", "", Short(harmonics.Before), "", Short(harmonics.After)],
            ],
            [1, 2, 3, 4],
            "each harmonic divided at its own frequency");
    }

    /// <summary>Harmonics that a second stage adds at the summing node.</summary>
    /// <param name="errors">The errors.</param>
    [Shows]
    public static Table Errors(SummingNodeErrors errors)
    {
        ArgumentNullException.ThrowIfNull(errors);
        return new Table(
            ["harmonic", "from capacitance", "from Early effect", "together"],
            [
                .. errors.Harmonics.Select(IReadOnlyList<string> (h) => [$"{h.Number}", Short(h.FromCapacitance), Short(h.FromEarlyEffect), Short(h.Together)]),
                ["all", "", "", Short(errors.Total)],
            ],
            [1, 2, 3],
            "errors at the summing node, at the output, whatever the loop gain");
    }

    /// <summary>Slew rate and noise over the degeneration of the pair.</summary>
    /// <param name="points">The points, at one crossover.</param>
    [Shows]
    public static Table Trade(IEnumerable<SlewPoint> points)
    {
        ArgumentNullException.ThrowIfNull(points);
        return new Table(
            ["degeneration", "capacitor", "slew rate", "noise of the pair"],
            [.. points.Select(IReadOnlyList<string> (p) => [QuantityFormat.Short(p.Degeneration), QuantityFormat.Short(p.Capacitor, 3), QuantityFormat.Short(p.SlewRate, 3), QuantityFormat.Short(p.NoiseDensity, 3)])],
            [0, 1, 2, 3],
            "at one crossover: junctions and degeneration alone make the noise");
    }

    /// <summary>Output impedance over frequency, by its parts.</summary>
    /// <param name="impedances">The impedances.</param>
    [Shows]
    public static Table Impedances(IEnumerable<OutputImpedance> impedances)
    {
        ArgumentNullException.ThrowIfNull(impedances);
        return new Table(
            ["at", "loop", "coil", "cable", "at the terminals", "damping factor", "at the loudspeaker", "damping factor there"],
            [.. impedances.Select(IReadOnlyList<string> (z) =>
            [
                QuantityFormat.Short(z.Frequency), QuantityFormat.Short(z.Loop, 3), QuantityFormat.Short(z.Coil, 3), QuantityFormat.Short(z.Cable, 3),
                QuantityFormat.Short(z.AtTerminals, 3), QuantityFormat.Short(z.DampingAtTerminals, 3), QuantityFormat.Short(z.AtLoudspeaker, 3), QuantityFormat.Short(z.DampingAtLoudspeaker, 3),
            ])],
            [0, 1, 2, 3, 4, 5, 6, 7],
            "magnitudes: the parts stand at angles and do not add up as numbers");
    }

    /// <summary>An amplifier with one capacitor at its terminals.</summary>
    /// <param name="load">The capacitor and what it does.</param>
    [Shows]
    public static Table Capacitive(CapacitiveLoad load) => Capacitors([load ?? throw new ArgumentNullException(nameof(load))]);

    /// <summary>An amplifier with capacitors at its terminals.</summary>
    /// <param name="loads">The capacitors and what they do.</param>
    [Shows]
    public static Table Capacitors(IEnumerable<CapacitiveLoad> loads)
    {
        ArgumentNullException.ThrowIfNull(loads);
        return new Table(
            ["capacitor", "closed loop", "phase margin", "highest |1/(1 + T)|", "peak at the terminals", "at"],
            [.. loads.Select(IReadOnlyList<string> (l) =>
                [QuantityFormat.Short(l.Capacitance, 3), l.IsStable ? "stable" : "unstable", Or(l.PhaseMargin), Or(l.SensitivityPeak), Or(l.Peak), Or(l.PeakFrequency)])],
            [0, 2, 3, 4, 5],
            "capacitors at the terminals");
    }

    private static string Or<T>(T? value)
        where T : struct => value is { } v ? Of(v, 3) : "–";

    // Margins and peaks are spoken of in decibels.
    private static string Of<T>(T value, int digits = Digits)
        where T : struct => value is Gain { Ratio: not 0 } gain ? $"{QuantityFormat.Short(gain.Decibels, digits)} dB" : QuantityFormat.Short(value, digits);

    private static string Short(UnitsNet.Ratio ratio) => QuantityFormat.Short(ratio, 3);
}
