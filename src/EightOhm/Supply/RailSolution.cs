using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Supply;

/// <summary>A solved periodic state and how to look at it again.</summary>
internal sealed record RailSolution(RailNetwork Network, double U1, double U2, int HalfCycles, int Rail) : IRailSolution
{
    public RailWaveform Waveform(int points)
    {
        Guard.Between(points, 2, 1_000_000);
        var length = Math.Max(2, HalfCycles) * Network.Half;
        var time = new double[points];
        for (var k = 0; k < points; k++)
            time[k] = length * k / (points - 1);
        var sampler = new RailWaveform.Sampler(time, Rail);
        double u1 = U1, u2 = U2;
        new RailMarch(Network).Run(ref u1, ref u2, 0, length, sampler);
        return sampler.Done();
    }
}
