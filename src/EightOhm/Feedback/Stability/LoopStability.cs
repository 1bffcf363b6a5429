using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Feedback;

/// <summary>Whether a loop is stable, and how far from not being so.</summary>
/// <remarks>The verdict is that of the closed loop's poles and no margin's: a loop whose phase has passed −180° where its gain was high may be stable,
/// and one with a fine margin at one of its crossings may not be. Where the loop is unstable there are no margins, because a margin would be read as safety.</remarks>
public sealed class LoopStability
{
    // Far above the crossover 1/(1 + T) comes to one from either side.
    private const double NoPeak = 1e-4;

    // A search for the worst asks for one figure of thousands of loops: each is found when it is first asked for.
    private readonly Lazy<IReadOnlyList<GainCrossing>> gainCrossings;
    private readonly Lazy<IReadOnlyList<PhaseCrossing>> phaseCrossings;
    private readonly Lazy<(Frequency? At, double Peak)> sensitivity;

    private LoopStability(TransferFunction loop, TransferFunction closed)
    {
        (Loop, ClosedLoopPoles, IsStable) = (loop, closed.Poles, closed.IsStable);
        var scan = new Lazy<LoopScan>(() => new(loop), LazyThreadSafetyMode.PublicationOnly);
        gainCrossings = new(() => scan.Value.GainCrossings(), LazyThreadSafetyMode.PublicationOnly);
        phaseCrossings = new(() => scan.Value.PhaseCrossings(), LazyThreadSafetyMode.PublicationOnly);
        sensitivity = new(() => Raised(scan.Value.SensitivityPeak()), LazyThreadSafetyMode.PublicationOnly);
    }

    /// <summary>The loop gain T that was looked at.</summary>
    public TransferFunction Loop { get; }

    /// <summary>Whether all poles of the closed loop lie in the left half-plane.</summary>
    public bool IsStable { get; }

    /// <summary>The poles of 1/(1 + T); of a loop with a delay, those near enough to matter.</summary>
    public IReadOnlyList<TransferRoot> ClosedLoopPoles { get; }

    /// <summary>Those of them that are not in the left half-plane: the frequencies at which it oscillates.</summary>
    public IReadOnlyList<TransferRoot> UnstablePoles => [.. ClosedLoopPoles.Where(p => p.Damping <= 0)];

    /// <summary>Every frequency at which the loop gain is one, rising.</summary>
    public IReadOnlyList<GainCrossing> GainCrossings => gainCrossings.Value;

    /// <summary>Every frequency at which the phase passes −180°, rising, as far as the loop gain is above a millionth.</summary>
    public IReadOnlyList<PhaseCrossing> PhaseCrossings => phaseCrossings.Value;

    /// <summary>The loop crossover: the highest frequency at which the loop gain is one; none where it never is.</summary>
    [Symbol("f_x")]
    public Frequency? Crossover => GainCrossings.Count == 0 ? null : GainCrossings[^1].Frequency;

    /// <summary>The least phase margin of all crossings; none of an unstable loop.</summary>
    [Symbol("PM")]
    public Angle? PhaseMargin => IsStable && GainCrossings.Count > 0 ? GainCrossings.MinBy(c => Math.Abs(c.PhaseMargin.Degrees))!.PhaseMargin : null;

    /// <summary>By how much the loop gain may rise before the loop oscillates; none of an unstable loop, or where there is no end to it.</summary>
    [Symbol("GM")]
    public Gain? GainMargin => Margin(PhaseCrossings.Where(c => c.LoopGain.Ratio < 1), gain => 1 / gain);

    /// <summary>By how much the loop gain may fall before the loop oscillates; none of an unstable loop, and of most stable ones.</summary>
    [Symbol("GM_down")]
    public Gain? GainReductionMargin => Margin(PhaseCrossings.Where(c => c.LoopGain.Ratio > 1), gain => gain);

    /// <summary>The greatest value of |1/(1 + T)|: how near the loop gain comes to −1 in all, gain and phase together. One over it is that distance. None of an unstable loop.</summary>
    [Symbol("M_s")]
    public double? SensitivityPeak => IsStable ? sensitivity.Value.Peak : null;

    /// <summary>Where that is. None of an unstable loop, and of one that nowhere raises an error.</summary>
    [Symbol("f_Ms")]
    public Frequency? SensitivityPeakFrequency => IsStable ? sensitivity.Value.At : null;

    /// <summary>Looks at a loop gain.</summary>
    /// <remarks>Crossings between a ten-thousandth of the lowest corner and far above the highest: 500 looks a decade and around each root, then a root search.</remarks>
    /// <param name="T">The loop gain, positive where the feedback is negative; proper.</param>
    /// <returns>The verdict with its margins.</returns>
    /// <exception cref="InvalidOperationException">The loop gain is improper or nothing.</exception>
    /// <example><code>LoopStability.Of(TransferFunction.Integrator(1.5.MHz) * TransferFunction.Pole(8.MHz) * TransferFunction.Delayed(12.ns))</code></example>
    [Worked("the poles of 1/(1 + T) for the verdict; every crossing of |T| = 1 and of −180° by a scan and root finding; the highest |1/(1 + T)| by a scan and golden section")]
    public static LoopStability Of(TransferFunction T)
    {
        ArgumentNullException.ThrowIfNull(T);
        if (!T.IsProper)
            throw new InvalidOperationException($"This loop gain is improper: with {T.ZerosInS.Count} zeros above {T.Order} poles it rises without end, which no amplifier does. Put in the poles that end it.");
        if (T.IsZero)
            throw new InvalidOperationException("This loop gain is nothing at every frequency: there is no loop to look at. Give the gain and what is fed back of it.");
        return new(T, T.Sensitivity());
    }

    /// <inheritdoc/>
    public override string ToString()
    {
        if (!IsStable)
            return $"unstable: the closed loop has poles {string.Join(", ", UnstablePoles.Select(Pole))}, so it oscillates and its margins say nothing";
        List<string> parts = ["stable"];
        if (Crossover is { } f)
            parts.Add($"crossover {QuantityFormat.Short(f)}");
        if (PhaseMargin is { } pm)
            parts.Add($"phase margin {QuantityFormat.Short(pm)}");
        if (GainMargin is { } gm)
            parts.Add($"gain margin {QuantityFormat.Short(gm)}");
        if (SensitivityPeak is { } peak)
            parts.Add($"|1/(1 + T)| up to {QuantityFormat.Short(peak)}{(SensitivityPeakFrequency is { } where ? $" at {QuantityFormat.Short(where)}" : "")}");
        return string.Join(", ", parts);
    }

    private static (Frequency? At, double Peak) Raised((Frequency At, double Peak) top) => top.Peak > 1 + NoPeak ? top : (null, 1);

    private static string Pole(TransferRoot pole) => pole.Damping == 0 && pole.Frequency.Hertz == 0 ? "at 0 Hz" : $"at {QuantityFormat.Short(pole.Frequency)} with damping {QuantityFormat.Short(pole.Damping)}";

    private Gain? Margin(IEnumerable<PhaseCrossing> crossings, Func<double, double> margin)
    {
        var margins = crossings.Select(c => margin(c.LoopGain.Ratio)).ToArray();
        return IsStable && margins.Length > 0 ? Gain.FromRatio(margins.Min()) : null;
    }
}
