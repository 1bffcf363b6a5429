using EightOhm.Numerics;
using MathNet.Numerics.Integration;

namespace EightOhm.Supply;

/// <summary>Means, extremes and charging time of a march, taken from the exact pieces.</summary>
internal class RailMeasure(RailNetwork network) : ISegmentVisitor
{
    // Panels in a half-cycle of the mains; a half-wave of the signal takes two, and two time constants of a charging one. Gauss's rule of five points
    // is then good to nine digits.
    private const int Panels = 8, MostPanels = 1000, Points = 5, Middle = Points / 2;

    private static readonly GaussLegendreRule Rule = new(-1, 1, Points);
    private static readonly double[] Nodes = Rule.Abscissas, Weights = Rule.Weights;

    private readonly Accumulated[] rails = [new(), new()];
    private readonly (double V, double I)[][] looks = [new (double, double)[3], new (double, double)[3]];

    public double Time { get; private set; }

    public Accumulated this[int rail] => rails[rail];

    public void Visit(ref RailSegment segment, double length)
    {
        Time += length;
        var quickest = Math.Max(Math.Abs(segment.Mode.Rate1), Math.Abs(segment.Mode.Rate2));
        var panels = Math.Clamp((int)Math.Ceiling(length * Math.Max(Math.Max(Panels / network.Half, 2 * network.SignalOmega / Math.PI), quickest / 2)), 1, MostPanels);
        var step = length / panels;
        for (var p = 0; p < panels; p++)
        {
            Sight(ref segment, p * step, 0);
            for (var g = 0; g < Nodes.Length; g++)
            {
                segment.At((p + 0.5 + (0.5 * Nodes[g])) * step);
                var weight = 0.5 * Weights[g] * step;
                rails[0].Add(weight, segment.V1, segment.I1, segment.L1, segment.HalfCycle);
                rails[1].Add(weight, segment.V2, segment.I2, segment.L2, segment.HalfCycle);
                if (g == Middle)
                    Keep(ref segment, 1);
            }

            Sight(ref segment, (p + 1) * step, 2);
            for (var r = 0; r < network.Rails; r++)
                rails[r].Panel(looks[r], ref segment, r, p * step, (p + 1) * step, length);
        }

        if (segment.Mode.First)
            rails[0].Charging += length;
        if (segment.Mode.Second)
            rails[1].Charging += length;
    }

    private void Sight(ref RailSegment segment, double tau, int place)
    {
        segment.At(tau);
        Keep(ref segment, place);
    }

    // Rail and current at the beginning, the middle and the end of a panel.
    private void Keep(ref RailSegment segment, int place)
    {
        looks[0][place] = (segment.V1, segment.I1);
        looks[1][place] = (segment.V2, segment.I2);
    }

    /// <summary>What one rail's march adds up to.</summary>
    internal sealed class Accumulated
    {
        private readonly PanelHighest lowest = new(), highest = new(), pulse = new();

        public double Rail, Current, Load, LoadSquare, CapacitorSquare, Charging, EvenSquare, OddSquare;

        public double Minimum => -lowest.Value;

        public double Maximum => highest.Value;

        public double Peak => pulse.Value;

        public void Add(double weight, double v, double i, double load, int halfCycle)
        {
            Rail += weight * v;
            Current += weight * i;
            Load += weight * load;
            LoadSquare += weight * load * load;
            CapacitorSquare += weight * (i - load) * (i - load);
            if ((halfCycle & 1) == 0)
                EvenSquare += weight * i * i;
            else
                OddSquare += weight * i * i;
        }

        public void Panel((double V, double I)[] at, ref RailSegment segment, int rail, double from, double to, double length)
        {
            var low = new LookedSegment(ref segment, rail == 0 ? Look.LowRail1 : Look.LowRail2);
            lowest.Panel(-at[0].V, -at[1].V, -at[2].V, ref low, from, to, length);
            var high = new LookedSegment(ref segment, rail == 0 ? Look.HighRail1 : Look.HighRail2);
            highest.Panel(at[0].V, at[1].V, at[2].V, ref high, from, to, length);
            var current = new LookedSegment(ref segment, rail == 0 ? Look.Current1 : Look.Current2);
            pulse.Panel(at[0].I, at[1].I, at[2].I, ref current, from, to, length);
        }
    }
}
