using EightOhm.Numerics;
using UnitsNet;

namespace EightOhm.Supply;

/// <summary>The phase between mains and signal at which a rail is lowest.</summary>
internal static class PhaseScan
{
    private const double Fineness = 1e-4;

    /// <summary>The least of a figure over phases spread evenly over one half-cycle of the mains, then refined about the least.</summary>
    /// <remarks>Shifting the signal by a half-cycle of the mains gives the same waveforms again (with the halves of a dual winding exchanged).</remarks>
    /// <param name="mains">Mains frequency.</param>
    /// <param name="load">The load, whose phase is moved.</param>
    /// <param name="phases">How many phases to try first.</param>
    /// <param name="figure">The figure, in V.</param>
    /// <param name="enough">A figure below this ends the search at once.</param>
    public static ElectricPotential Lowest(Frequency mains, RailCurrent load, int phases, Func<RailCurrent, double> figure, double enough = double.NegativeInfinity) => ElectricPotential.FromVolts(load.Plays
        ? Scan.LeastOfPeriod(phase => figure(load.AtPhase(Angle.FromRadians(phase))), Math.PI * load.Signal.Hertz / mains.Hertz, phases, Fineness, enough).Value
        : figure(load));
}
