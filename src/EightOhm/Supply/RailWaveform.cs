namespace EightOhm.Supply;

/// <summary>A rail over time, at equal steps: plain SI numbers for a chart.</summary>
/// <param name="Time">Seconds.</param>
/// <param name="Rail">The rail, V.</param>
/// <param name="Winding">The charging current, A.</param>
/// <param name="Load">The load current, A.</param>
public sealed record RailWaveform(IReadOnlyList<double> Time, IReadOnlyList<double> Rail, IReadOnlyList<double> Winding, IReadOnlyList<double> Load)
{
    /// <summary>Samples of a march, which the march fills as it goes.</summary>
    internal sealed class Sampler(double[] time, int rail) : ISegmentVisitor
    {
        private readonly double[] v = new double[time.Length], i = new double[time.Length], load = new double[time.Length];
        private int next;

        public void Visit(ref RailSegment segment, double length)
        {
            for (; next < time.Length && time[next] <= segment.Start + length + 1e-12; next++)
            {
                segment.At(Math.Max(0, time[next] - segment.Start));
                (v[next], i[next], load[next]) = rail == 1 ? (segment.V1, segment.I1, segment.L1) : (segment.V2, segment.I2, segment.L2);
            }
        }

        public RailWaveform Done() => new(time, v, i, load);
    }
}
