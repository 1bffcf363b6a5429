using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Circuits;

/// <summary>Whether a circuit stays at its operating point.</summary>
internal static class PointStability
{
    // Where a circuit has no capacitance at all, that of its wiring decides which way it falls.
    private static readonly ElectricCapacitance Stray = ElectricCapacitance.FromPicofarads(1);

    public static (bool? Stable, IReadOnlyList<ComplexRoot> Growing) Of(Circuit circuit)
    {
        try
        {
            var live = circuit.Elements.Any(e => e.Kind is ElementKind.Capacitor or ElementKind.Inductor or ElementKind.OpAmp || e.Model is BipolarModel { CollectorCapacitance.Farads: > 0 } or BipolarModel { TransitionFrequency: not null });
            var growing = ClosedLoop.Unstable(SmallSignalSystem.Of(live ? circuit : WithStrays(circuit), 298.15));
            return (growing.Count == 0, growing);
        }
        catch (InvalidOperationException)
        {
            return (null, []);
        }
    }

    private static Circuit WithStrays(Circuit circuit)
    {
        var copy = circuit.Changed(i => circuit.Elements[i]);
        foreach (var node in circuit.Nodes)
            copy.Capacitor($"stray({node})", node, Circuit.Ground, Stray);
        return copy;
    }
}
