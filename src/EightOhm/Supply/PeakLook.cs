using EightOhm.Numerics;

namespace EightOhm.Supply;

/// <summary>Looks at a rail while its own half-wave is within 2 % of its top.</summary>
/// <remarks>A window and not the instant alone: at a low frequency the minimum beside the top catches a swing that is still there.</remarks>
internal sealed class PeakLook(RailNetwork network, int rail, double from) : ISegmentVisitor
{
    /// <summary>The part of the peak that counts as the peak.</summary>
    public const double Near = 0.98;

    private const int Looks = 3;

    private readonly RailLoad load = rail == 1 ? network.Load1 : network.Load2;
    private readonly double width = Math.Acos(Near) / network.SignalOmega;
    private readonly PanelHighest low = new();

    /// <summary>Whether the load has peaks to look at.</summary>
    public bool HasPeak => load.Peak > 0;

    /// <summary>The lowest rail seen; infinite when no peak was met.</summary>
    public double Found => -low.Value;

    public void Visit(ref RailSegment segment, double length)
    {
        // Ω·t + φ = ±π/2 + 2π·k at the tops.
        double turn = 2 * Math.PI, w = network.SignalOmega, first = (load.Sign * Math.PI / 2) - network.SignalPhase;
        var end = segment.Start + length;
        for (var k = Math.Ceiling(((w * (Math.Max(from, segment.Start) - width)) - first) / turn); ; k++)
        {
            var top = (first + (turn * k)) / w;
            if (top - width > end)
                return;
            double a = Math.Max(top - width, segment.Start) - segment.Start, b = Math.Min(top + width, end) - segment.Start;
            if (!(b > a))
                continue;
            var step = (b - a) / Looks;
            var curve = new LookedSegment(ref segment, rail == 1 ? Look.LowRail1 : Look.LowRail2);
            for (var i = 0; i < Looks; i++)
                low.Panel(Low(ref segment, a + (i * step)), Low(ref segment, a + ((i + 0.5) * step)), Low(ref segment, a + ((i + 1) * step)), ref curve, a + (i * step), a + ((i + 1) * step), b);
        }
    }

    private double Low(ref RailSegment segment, double tau)
    {
        segment.At(tau);
        return rail == 1 ? -segment.V1 : -segment.V2;
    }
}
