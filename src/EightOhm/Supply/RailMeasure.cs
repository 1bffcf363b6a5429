namespace EightOhm.Supply;

/// <summary>Means, extremes and charging time of a march, taken from the exact pieces.</summary>
internal class RailMeasure(RailNetwork network) : ISegmentVisitor
{
    // Gauss's rule of five points is exact to rounding on pieces this short.
    private const int Panels = 8;

    private static readonly double[] Nodes = [-0.906179845938664, -0.5384693101056831, 0, 0.5384693101056831, 0.906179845938664];
    private static readonly double[] Weights = [0.2369268850561891, 0.4786286704993665, 0.5688888888888889, 0.4786286704993665, 0.2369268850561891];

    private readonly Accumulated[] rails = [new(), new()];

    public double Time { get; private set; }

    public Accumulated this[int rail] => rails[rail];

    public void Visit(ref RailSegment segment, double length)
    {
        Time += length;
        var panels = Math.Max(1, (int)Math.Ceiling(length / network.Half * Panels));
        var step = length / panels;
        Extremes(ref segment, 0, 0, step);
        for (var p = 0; p < panels; p++)
        {
            for (var g = 0; g < Nodes.Length; g++)
            {
                segment.At((p + 0.5 + (0.5 * Nodes[g])) * step);
                var weight = 0.5 * Weights[g] * step;
                rails[0].Add(weight, segment.V1, segment.I1, segment.L1, segment.HalfCycle);
                rails[1].Add(weight, segment.V2, segment.I2, segment.L2, segment.HalfCycle);
            }

            Extremes(ref segment, (p + 1) * step, Math.Max(0, p * step), Math.Min(length, (p + 2) * step));
        }

        if (segment.Mode.First)
            rails[0].Charging += length;
        if (segment.Mode.Second)
            rails[1].Charging += length;
    }

    /// <summary>Sharpens the extremes, which so far are those of the looks.</summary>
    public void Finish()
    {
        for (var r = 0; r < network.Rails; r++)
            rails[r].Sharpen(r);
    }

    private void Extremes(ref RailSegment segment, double tau, double low, double high)
    {
        segment.At(tau);
        rails[0].See(ref segment, tau, low, high, segment.V1, segment.I1);
        if (network.Rails > 1)
            rails[1].See(ref segment, tau, low, high, segment.V2, segment.I2);
    }

    /// <summary>What one rail's march adds up to.</summary>
    internal sealed class Accumulated
    {
        private readonly Highest trough = new(), crest = new(), pulse = new();

        public double Rail, Current, Load, LoadSquare, CapacitorSquare, Charging, EvenSquare, OddSquare;

        public double Trough => -trough.Value;

        public double Crest => crest.Value;

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

        public void See(ref RailSegment segment, double tau, double low, double high, double v, double i)
        {
            trough.See(-v, tau, low, high, ref segment);
            crest.See(v, tau, low, high, ref segment);
            pulse.See(i, tau, low, high, ref segment);
        }

        public void Sharpen(int rail)
        {
            trough.Sharpen(rail == 0 ? Look.LowRail1 : Look.LowRail2);
            crest.Sharpen(rail == 0 ? Look.HighRail1 : Look.HighRail2);
            pulse.Sharpen(rail == 0 ? Look.Current1 : Look.Current2);
        }
    }
}
