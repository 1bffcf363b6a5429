using EightOhm.Explaining;
using EightOhm.Feedback;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.OutputNetworks;

/// <summary>The amplifier with capacitors of many sizes at its terminals.</summary>
/// <remarks>Two things are seen, and only one is the loop's. The loop's margin falls where the capacitor loads the followers through the coil; the peak at the terminals is mostly that of
/// coil and capacitor, which a perfect amplifier has too, and only the resistors across coil and load hold it down.</remarks>
public sealed record CapacitiveLoads
{
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
        return new([.. list.Select(c => CapacitiveLoad.Of(network, r, Guard.Positive(c, nameof(capacitors))))]);
    }
}
