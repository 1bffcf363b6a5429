using EightOhm.Explaining;
using EightOhm.Feedback;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.OutputNetworks;

/// <summary>The amplifier with one capacitor at its terminals.</summary>
/// <param name="Capacitance">The capacitor.</param>
/// <param name="IsStable">Whether the closed loop is stable with it.</param>
/// <param name="PhaseMargin">The loop's phase margin; none where it is unstable or nowhere crosses.</param>
/// <param name="SensitivityPeak">The greatest |1/(1 + T)|; none where it is unstable; 1 of an ideal amplifier.</param>
/// <param name="Peak">The highest gain at the terminals over that at 0 Hz; none where it is unstable.</param>
/// <param name="PeakFrequency">Where that is; none where the gain nowhere passes that at 0 Hz.</param>
/// <param name="Poles">The closed loop's poles with it: over the capacitors they draw the movement of the roots.</param>
public sealed record CapacitiveLoad(
    [property: Symbol("C_L")] ElectricCapacitance Capacitance,
    bool IsStable,
    [property: Symbol("PM")] Angle? PhaseMargin,
    [property: Symbol("M_s")] double? SensitivityPeak,
    [property: Symbol("A_pk")] Gain? Peak,
    [property: Symbol("f_pk")] Frequency? PeakFrequency,
    IReadOnlyList<TransferRoot> Poles)
{
    /// <summary>The least damping of its poles: below 0 it oscillates.</summary>
    [Symbol("zeta_min")]
    public double LeastDamping => Poles.Min(p => p.Damping);
}

/// <summary>The amplifier with capacitors of many sizes at its terminals.</summary>
/// <remarks>Two things are seen, and only one is the loop's. The loop's margin falls where the capacitor loads the followers through the coil; the peak at the terminals is mostly that of
/// coil and capacitor, which a perfect amplifier has too, and only the resistors across coil and load hold it down.</remarks>
public sealed record CapacitiveLoads
{
    private const double NoPeak = 1e-6;

    private CapacitiveLoads(IReadOnlyList<CapacitiveLoad> loads) => Loads = loads;

    /// <summary>One for each capacitor, in their order.</summary>
    public IReadOnlyList<CapacitiveLoad> Loads { get; }

    /// <summary>Whether the amplifier is stable with all of them.</summary>
    public bool IsStable => Loads.All(l => l.IsStable);

    /// <summary>The one that is hardest on the loop: the first with which it is unstable, else that of the highest |1/(1 + T)|.</summary>
    public CapacitiveLoad Worst => Loads.FirstOrDefault(l => !l.IsStable) ?? Loads.MaxBy(l => l.SensitivityPeak!.Value)!;

    /// <summary>The one with the highest peak at the terminals; none where every one is unstable.</summary>
    public CapacitiveLoad? Highest => Loads.Where(l => l.Peak is not null).MaxBy(l => l.Peak!.Value.Ratio);

    /// <summary>The highest peak at the terminals of all of them.</summary>
    /// <returns>The gain over that at 0 Hz.</returns>
    /// <exception cref="InvalidOperationException">The amplifier is unstable with one of them: it has no response there.</exception>
    [Worked("the highest of the peaks, one for each capacitor")]
    public Gain HighestPeak() => IsStable
        ? Highest!.Peak!.Value
        : throw new InvalidOperationException($"With {QuantityFormat.Short(Worst.Capacitance)} at its terminals the amplifier is unstable: there is no response to look for a peak in. More inductance, or a smaller resistor across the coil.");

    /// <summary>The least phase margin over all of them; not that of <see cref="Worst"/>, which is the one with the highest |1/(1 + T)|.</summary>
    /// <returns>The margin; 0° where the amplifier is unstable with one of them, none where the loop nowhere crosses.</returns>
    [Worked("the least of the phase margins, one for each capacitor")]
    public Angle? LeastPhaseMargin() => IsStable ? Loads.Where(l => l.PhaseMargin is not null).MinBy(l => l.PhaseMargin!.Value.Degrees)?.PhaseMargin : Angle.Zero;

    internal static CapacitiveLoads Of(OutputNetwork network, ElectricResistance? R_L, IReadOnlyList<ElectricCapacitance>? capacitors)
    {
        var list = capacitors ?? Sweep.Log(ElectricCapacitance.FromFarads(100e-12), ElectricCapacitance.FromFarads(2.2e-6), 11);
        if (list.Count == 0)
            throw new ArgumentException("Give at least one capacitor.", nameof(capacitors));
        var r = R_L is { } load ? Guard.Positive(load, nameof(R_L)).Ohms : (double?)null;
        return new([.. list.Select(c => One(network, r, Guard.Positive(c, nameof(capacitors))))]);
    }

    private static CapacitiveLoad One(OutputNetwork network, double? load, ElectricCapacitance c)
    {
        var s = TransferFunction.OfPolynomials([0, 1], [1]);
        // Behind the coil: the capacitor with its load; before it: the Zobel network.
        var atEnd = load is { } r ? TransferFunction.OfPolynomials([r], [1, r * c.Farads]) : 1 / (s * c.Farads);
        double rc = network.CoilResistance.Ohms, l = network.Inductance.Henries, d = network.DampingResistor.Ohms;
        var coil = TransferFunction.OfPolynomials([d * rc, d * l], [d + rc, l]);
        var branch = coil + atEnd;
        var toEnd = atEnd / branch;
        if (network.Loop is not { } loop || network.OpenLoopResistance.Ohms == 0)
            return Seen(c, network.Loop, toEnd);
        double rz = network.ZobelResistor.Ohms, cz = network.ZobelCapacitor.Farads;
        var admittance = TransferFunction.OfPolynomials([0, cz], [1, rz * cz]) + (1 / branch);
        var loaded = loop / (1 + (network.OpenLoopResistance.Ohms * admittance));
        return Seen(c, loaded, toEnd);
    }

    private static CapacitiveLoad Seen(ElectricCapacitance c, TransferFunction? loop, TransferFunction toEnd)
    {
        if (loop is null)
        {
            var (gain, at) = Over(toEnd);
            return new(c, true, null, 1, gain, at, toEnd.Poles);
        }

        var stability = LoopStability.Of(loop);
        // T/(1 + T), the closed loop over its ideal gain.
        var closed = loop.ClosedWith(TransferFunction.Constant(1)) * toEnd;
        if (!stability.IsStable || !closed.IsStable)
            return new(c, false, null, null, null, null, closed.Poles);
        var (peak, where) = Over(closed);
        return new(c, true, stability.PhaseMargin, stability.SensitivityPeak, peak, where, closed.Poles);
    }

    // The highest gain over that at 0 Hz, and where it is if it is above that at all.
    private static (Gain Peak, Frequency? At) Over(TransferFunction function)
    {
        var peak = function.Peak();
        var over = peak.Gain / function.Magnitude(default);
        return over.Ratio > 1 + NoPeak ? (over, (Frequency?)peak.Frequency) : (Gain.FromRatio(1), null);
    }
}
