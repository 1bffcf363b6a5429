using UnitsNet;

namespace EightOhm.Supply;

/// <summary>The phase between mains and signal at which a rail is lowest.</summary>
internal static class PhaseScan
{
    /// <summary>The least of a figure over phases spread evenly over one half-cycle of the mains, then refined about the least.</summary>
    /// <remarks>Shifting the signal by a half-cycle of the mains gives the same waveforms again (with the halves of a dual winding exchanged).</remarks>
    public static ElectricPotential Lowest(Frequency mains, RailCurrent load, int phases, Func<RailCurrent, ElectricPotential> figure)
    {
        var span = Math.PI * load.Signal.Hertz / mains.Hertz;
        double At(double phase) => figure(load.AtPhase(Angle.FromRadians(phase))).Volts;
        if (!load.Plays)
            return figure(load);

        double best = 0, least = double.PositiveInfinity, step = span / phases;
        for (var k = 0; k < phases; k++)
            if (At(k * step) is var v && v < least)
                (best, least) = (k * step, v);
        for (step /= 2; step > span * 1e-4; step /= 2)
            foreach (var phase in (ReadOnlySpan<double>)[best - step, best + step])
                if (At(phase) is var v && v < least)
                    (best, least) = (phase, v);
        return ElectricPotential.FromVolts(least);
    }
}
