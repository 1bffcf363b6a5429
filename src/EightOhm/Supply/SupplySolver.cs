using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Supply;

/// <summary>From a network to the figures of its periodic steady state.</summary>
internal static class SupplySolver
{
    /// <summary>Solves the network and measures both rails.</summary>
    public static (RailFigures First, RailFigures Second, RailMeasure Measure) Solve(RailNetwork network, int halfCycles)
    {
        var period = halfCycles * network.Half;
        var (u1, u2) = PeriodicState.Find(network, period, out _);
        var measure = new RailMeasure(network);
        double a = u1, b = u2;
        new RailMarch(network).Run(ref a, ref b, 0, period, measure);
        var first = Figures(network, measure[0], period, new RailSolution(network, u1, u2, halfCycles, 1));
        var second = network.Rails > 1 ? Figures(network, measure[1], period, new RailSolution(network, u1, u2, halfCycles, 2)) : first;
        return (first, second, measure);
    }

    /// <summary>Stops at a load that the winding could not feed even into a rail of 0 V.</summary>
    /// <exception cref="ShortfallException">The load is beyond it.</exception>
    public static void Feeds(RailNetwork network, double current, double resistance)
    {
        // The rectified sine's mean, less the drop, over the path's resistance: an upper bound, as the current never reverses it is the mean of max(0, …).
        var begins = Math.Asin(network.Drop / network.Peak);
        var most = ((network.Peak * Math.Cos(begins)) - (network.Drop * ((Math.PI / 2) - begins))) * 2 / Math.PI / resistance;
        if (!(current < most))
            throw new ShortfallException("The winding", ElectricCurrent.FromAmperes(current - most), $"the load takes a mean of {QuantityFormat.Short(ElectricCurrent.FromAmperes(current))} and even into a rail of 0 V there are {QuantityFormat.Short(ElectricCurrent.FromAmperes(most))}", "Take a stiffer winding or a lighter load.");
    }

    private static RailFigures Figures(RailNetwork network, RailMeasure.Accumulated m, double period, RailSolution solution)
    {
        if (!(m.Minimum > 0))
            throw new ShortfallException("The rail", ElectricPotential.FromVolts(-m.Minimum), $"a load of a mean of {QuantityFormat.Short(ElectricCurrent.FromAmperes(m.Load / period))} would draw it {QuantityFormat.Short(ElectricPotential.FromVolts(-m.Minimum))} below zero", "Take a stiffer winding, a larger reservoir or a lighter load.");
        var load = solution.Rail == 1 ? network.Load1 : network.Load2;
        return new RailFigures
        {
            Mean = ElectricPotential.FromVolts(m.Rail / period),
            Minimum = ElectricPotential.FromVolts(m.Minimum),
            Maximum = ElectricPotential.FromVolts(m.Maximum),
            VoltageAtLoadPeak = ElectricPotential.FromVolts(load.Peak > 0 ? PeakLook.Lowest(network, solution, 0, period) : m.Minimum),
            LoadMean = ElectricCurrent.FromAmperes(m.Load / period),
            WindingRms = ElectricCurrent.FromAmperes(Math.Sqrt((m.EvenSquare + m.OddSquare) / period)),
            WindingPeak = ElectricCurrent.FromAmperes(Math.Max(0, m.Peak)),
            ConductionAngle = Angle.FromDegrees(180 * m.Charging / period),
            CapacitorRipple = ElectricCurrent.FromAmperes(Math.Sqrt(m.CapacitorSquare / period)),
            Solution = solution,
        };
    }
}
