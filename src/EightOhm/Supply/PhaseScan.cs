using EightOhm.Numerics;
using UnitsNet;

namespace EightOhm.Supply;

/// <summary>The phase between mains and signal at which a rail is lowest.</summary>
internal static class PhaseScan
{
    private const double Fineness = 1e-4;

    /// <summary>The least of a figure over phases spread evenly over one half-cycle of the mains, then refined about the least.</summary>
    /// <remarks>Shifting the signal by a half-cycle of the mains gives the same waveforms again (with the halves of a dual winding exchanged).</remarks>
    public static ElectricPotential Lowest(Frequency mains, RailCurrent load, int phases, Func<RailCurrent, double> figure) => ElectricPotential.FromVolts(load.Plays
        ? Scan.LeastOfPeriod(phase => figure(load.AtPhase(Angle.FromRadians(phase))), Math.PI * load.Signal.Hertz / mains.Hertz, phases, Fineness).Value
        : figure(load));
}
