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
        var (measure, looks) = (new RailMeasure(network), Looks(network));
        March(network, u1, u2, period, [measure, .. looks.Where(l => l.HasPeak)]);
        var first = Figures(network, measure[0], looks[0], period, new RailSolution(network, u1, u2, halfCycles, 1));
        var second = network.Rails > 1 ? Figures(network, measure[1], looks[1], period, new RailSolution(network, u1, u2, halfCycles, 2)) : first;
        return (first, second, measure);
    }

    /// <summary>The lowest rail of all while it carries its own peak, V.</summary>
    /// <exception cref="ShortfallException">The load would draw a rail below zero.</exception>
    public static double LowestAtLoadPeak(RailNetwork network, int halfCycles)
    {
        var (first, second) = AtLoadPeaks(network, halfCycles);
        return Math.Min(first, second);
    }

    /// <summary>Each rail while it carries its own peak, V: that of <see cref="Solve"/>, without the measuring of all else.</summary>
    /// <exception cref="ShortfallException">The load would draw a rail below zero.</exception>
    public static (double First, double Second) AtLoadPeaks(RailNetwork network, int halfCycles)
    {
        var period = halfCycles * network.Half;
        var looks = Looks(network);
        if (Array.TrueForAll(looks, l => l.HasPeak))
        {
            var (u1, u2) = PeriodicState.Find(network, period, out _);
            var floor = new RailFloor(network);
            March(network, u1, u2, period, [floor, .. looks]);
            if (floor.IsAboveZero)
                return (looks[0].Found, looks[^1].Found);
        }

        var (first, second, _) = Solve(network, halfCycles);
        return (first.VoltageAtLoadPeak.Volts, second.VoltageAtLoadPeak.Volts);
    }

    private static PeakLook[] Looks(RailNetwork network) => [.. Enumerable.Range(1, network.Rails).Select(rail => new PeakLook(network, rail, 0))];

    private static void March(RailNetwork network, double u1, double u2, double period, ISegmentVisitor[] visitors) =>
        new RailMarch(network).Run(ref u1, ref u2, 0, period, new SegmentVisitors(visitors));

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

    private static RailFigures Figures(RailNetwork network, RailMeasure.Accumulated m, PeakLook look, double period, RailSolution solution)
    {
        if (!(m.Minimum > 0))
            throw new ShortfallException("The rail", ElectricPotential.FromVolts(-m.Minimum), $"a load of a mean of {QuantityFormat.Short(ElectricCurrent.FromAmperes(m.Load / period))} would draw it {QuantityFormat.Short(ElectricPotential.FromVolts(-m.Minimum))} below zero", "Take a stiffer winding, a larger reservoir or a lighter load.");
        return new RailFigures
        {
            Mean = ElectricPotential.FromVolts(m.Rail / period),
            Minimum = ElectricPotential.FromVolts(m.Minimum),
            Maximum = ElectricPotential.FromVolts(m.Maximum),
            VoltageAtLoadPeak = ElectricPotential.FromVolts(look.HasPeak ? look.Found : m.Minimum),
            LoadMean = ElectricCurrent.FromAmperes(m.Load / period),
            WindingRms = ElectricCurrent.FromAmperes(Math.Sqrt((m.EvenSquare + m.OddSquare) / period)),
            WindingPeak = ElectricCurrent.FromAmperes(Math.Max(0, m.Peak)),
            ConductionAngle = Angle.FromDegrees(180 * m.Charging / period),
            CapacitorRipple = ElectricCurrent.FromAmperes(Math.Sqrt(m.CapacitorSquare / period)),
            Solution = solution,
        };
    }
}
