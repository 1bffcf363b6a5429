using EightOhm.Explaining;
using EightOhm.Feedback;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.OutputNetworks;

/// <summary>The amplifier with one capacitor at its terminals.</summary>
/// <remarks>Searches for the worst ask for one figure of thousands: each is found when it is first asked for.</remarks>
public sealed class CapacitiveLoad
{
    private const double NoPeak = 1e-6;

    private readonly TransferFunction closed;
    private readonly LoopStability? stability;
    private readonly Lazy<(Gain Peak, Frequency? At)> over;

    private CapacitiveLoad(ElectricCapacitance capacitance, TransferFunction? loop, TransferFunction toEnd)
    {
        Capacitance = capacitance;
        stability = loop is null ? null : LoopStability.Of(loop);
        // T/(1 + T), the closed loop over its ideal gain.
        closed = loop is null ? toEnd : loop.ClosedWith(TransferFunction.Constant(1)) * toEnd;
        IsStable = stability is null || (stability.IsStable && closed.IsStable);
        over = new(() => Over(closed), LazyThreadSafetyMode.PublicationOnly);
    }

    /// <summary>The capacitor.</summary>
    [Symbol("C_L")]
    public ElectricCapacitance Capacitance { get; }

    /// <summary>Whether the closed loop is stable with it.</summary>
    public bool IsStable { get; }

    /// <summary>The loop's phase margin; none where it is unstable or nowhere crosses.</summary>
    [Symbol("PM")]
    public Angle? PhaseMargin => IsStable ? stability?.PhaseMargin : null;

    /// <summary>The greatest |1/(1 + T)|; none where it is unstable; 1 of an ideal amplifier.</summary>
    [Symbol("M_s")]
    public double? SensitivityPeak => IsStable ? stability is null ? 1 : stability.SensitivityPeak : null;

    /// <summary>The highest gain at the terminals over that at 0 Hz; none where it is unstable.</summary>
    [Symbol("A_pk")]
    public Gain? Peak => IsStable ? over.Value.Peak : null;

    /// <summary>Where that is; none where the gain nowhere passes that at 0 Hz.</summary>
    [Symbol("f_pk")]
    public Frequency? PeakFrequency => IsStable ? over.Value.At : null;

    /// <summary>The closed loop's poles with it: over the capacitors they draw the movement of the roots.</summary>
    public IReadOnlyList<TransferRoot> Poles => closed.Poles;

    /// <summary>The least damping of its poles: below 0 it oscillates.</summary>
    [Symbol("zeta_min")]
    public double LeastDamping => Poles.Min(p => p.Damping);

    internal static CapacitiveLoad Of(OutputNetwork network, double? load, ElectricCapacitance c)
    {
        var s = TransferFunction.OfPolynomials([0, 1], [1]);
        // Behind the coil: the capacitor with its load; before it: the Zobel network.
        var atEnd = load is { } r ? TransferFunction.OfPolynomials([r], [1, r * c.Farads]) : 1 / (s * c.Farads);
        double rc = network.CoilResistance.Ohms, l = network.Inductance.Henries, d = network.DampingResistor.Ohms;
        var coil = TransferFunction.OfPolynomials([d * rc, d * l], [d + rc, l]);
        var branch = coil + atEnd;
        var toEnd = atEnd / branch;
        if (network.Loop is not { } loop || network.OpenLoopResistance.Ohms == 0)
            return new(c, network.Loop, toEnd);
        double rz = network.ZobelResistor.Ohms, cz = network.ZobelCapacitor.Farads;
        var admittance = TransferFunction.OfPolynomials([0, cz], [1, rz * cz]) + (1 / branch);
        var loaded = loop / (1 + (network.OpenLoopResistance.Ohms * admittance));
        return new(c, loaded, toEnd);
    }

    // The highest gain over that at 0 Hz, and where it is if it is above that at all.
    private static (Gain Peak, Frequency? At) Over(TransferFunction function)
    {
        var peak = function.Peak();
        var over = peak.Gain / function.Magnitude(default);
        return over.Ratio > 1 + NoPeak ? (over, peak.Frequency) : (Gain.FromRatio(1), null);
    }
}
