namespace EightOhm.Supply;

/// <summary>A bound that no rail of a march falls below: cheap, so that a rail far above zero need not be measured to be known to stand.</summary>
/// <remarks>A charging current only lifts. Without it a capacitor falls from where a piece begins by the greatest load at most, and its series resistance drops
/// as much again below it. For loads that do not depend on the rail.</remarks>
internal sealed class RailFloor(RailNetwork network) : ISegmentVisitor
{
    // The beginning and end of charging are known to rounding; a thousandth of the emf is far more.
    private const double Room = 1e-3;

    private double lowest = double.PositiveInfinity;

    /// <summary>Whether both rails surely stay above zero.</summary>
    public bool IsAboveZero => network.Load1.Conductance == 0 && network.Load2.Conductance == 0 && lowest > Room * network.Peak;

    public void Visit(ref RailSegment segment, double length)
    {
        segment.At(0);
        lowest = Math.Min(lowest, Least(segment.U1, network.Load1, length));
        if (network.Rails > 1)
            lowest = Math.Min(lowest, Least(segment.U2, network.Load2, length));
    }

    private double Least(double u, RailLoad load, double length) => u - ((load.Idle + load.Peak) * ((length / network.C) + network.Esr));
}
