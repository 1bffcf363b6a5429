using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Supply;

/// <summary>The periodic steady state of one rail behind exponential diodes.</summary>
internal sealed class ExponentialSolver : IRailSolution
{
    private const int StepsPerHalf = 1000, MostSteps = 60;

    private readonly RailNetwork network;
    private readonly ExponentialMarch march;
    private readonly int halfCycles;
    private readonly double[] inner;

    private ExponentialSolver(RailNetwork network, ExponentialDiode diode, int halfCycles)
    {
        (this.network, this.halfCycles) = (network, halfCycles);
        march = new ExponentialMarch(network, diode.Saturation.Amperes, diode.Slope, StepsPerHalf);
        inner = new double[(halfCycles * StepsPerHalf) + 1];
        double u = 0.8 * network.Peak, off = double.NaN;
        for (var k = 0; k < MostSteps; k++)
        {
            var end = march.Run(u, halfCycles, inner);
            off = end - u;
            if (Math.Abs(off) < 1e-10 * network.Peak)
                return;
            var gain = 1 - march.Sensitivity;
            u = Math.Min(network.Peak, gain > 1e-9 ? u + (off / gain) : end);
        }

        throw new InvalidOperationException($"No steady state was found in {MostSteps} steps: the last began at {u:g8} V and missed itself by {off:g3} V a period. Check that the load is one that the winding can carry.");
    }

    public static RailFigures Solve(RailNetwork network, ExponentialDiode diode, int halfCycles)
    {
        var solver = new ExponentialSolver(network, diode, halfCycles);
        return solver.Figures();
    }

    public RailWaveform Waveform(int points)
    {
        Guard.Between(points, 2, 1_000_000);
        var shown = Math.Max(2, halfCycles) * StepsPerHalf;
        double[] time = new double[points], v = new double[points], i = new double[points], load = new double[points];
        for (var k = 0; k < points; k++)
        {
            var at = (double)k / (points - 1) * shown;
            var step = Math.Min((int)at, shown - 1);
            var from = step % (inner.Length - 1);
            time[k] = at * network.Half / StepsPerHalf;
            (i[k], v[k], load[k]) = march.Outputs(inner[from] + ((at - step) * (inner[from + 1] - inner[from])), time[k]);
        }

        return new RailWaveform(time, v, i, load);
    }

    private RailFigures Figures()
    {
        int steps = inner.Length - 1;
        double mean = 0, current = 0, square = 0, capacitor = 0, loadSum = 0, peak = 0, low = double.PositiveInfinity, high = 0, own = double.PositiveInfinity, h = network.Half / StepsPerHalf;
        var pulses = new double[steps];
        for (var k = 0; k < steps; k++)
        {
            var (i, v, load) = march.Outputs(inner[k], k * h);
            pulses[k] = i;
            (mean, current, square, loadSum, capacitor) = (mean + v, current + i, square + (i * i), loadSum + load, capacitor + ((i - load) * (i - load)));
            (peak, low, high) = (Math.Max(peak, i), Math.Min(low, v), Math.Max(high, v));
            if (Math.Sin((network.SignalOmega * k * h) + network.SignalPhase) >= PeakLook.Near)
                own = Math.Min(own, v);
        }

        if (!(low > 0))
            Guard.Refuse("load", ElectricCurrent.FromAmperes(loadSum / steps), $"a load that leaves a rail (the rail would fall to {QuantityFormat.Short(ElectricPotential.FromVolts(low))})", "Take a stiffer winding, a larger reservoir or a lighter load.");
        return new RailFigures
        {
            Mean = ElectricPotential.FromVolts(mean / steps),
            Minimum = ElectricPotential.FromVolts(low),
            Maximum = ElectricPotential.FromVolts(high),
            VoltageAtLoadPeak = ElectricPotential.FromVolts(network.Load1.Peak > 0 ? own : low),
            LoadMean = ElectricCurrent.FromAmperes(loadSum / steps),
            WindingRms = ElectricCurrent.FromAmperes(Math.Sqrt(square / steps)),
            WindingPeak = ElectricCurrent.FromAmperes(peak),
            // An exponential has no edge: charging is where the current is above 1 % of its peak.
            ConductionAngle = Angle.FromDegrees(180.0 * pulses.Count(i => i > 0.01 * peak) / steps),
            CapacitorRipple = ElectricCurrent.FromAmperes(Math.Sqrt(capacitor / steps)),
            Solution = this,
        };
    }
}
