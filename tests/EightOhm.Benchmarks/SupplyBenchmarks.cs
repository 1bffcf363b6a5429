using BenchmarkDotNet.Attributes;
using EightOhm.Quantities;
using EightOhm.Supply;
using UnitsNet;

namespace EightOhm.Benchmarks;

/// <summary>One operating point of a supply to its periodic steady state, beside the plain march of 200 cycles in 200 000 steps of backward Euler.</summary>
/// <remarks>The march is what a plain loop does: backward Euler with piecewise-linear diodes at 20 µs, from an empty reservoir.</remarks>
[MemoryDiagnoser]
public class SupplyBenchmarks
{
    private readonly RectifierSupply _supply = new(35.V, 50.Hz, 0.5.Ohm, 1.6.V, 10.mF);
    private readonly RectifierSupply _exponential = new(35.V, 50.Hz, 0.5.Ohm, new ExponentialDiode(5.nA, 1.8, 75.degC, 2), 10.mF);
    private readonly DualRailSupply _dual = new(new DualWinding(35.V, 6.percent, 800.VA), 50.Hz, 0.9.V, 30.mF);
    private readonly RailCurrent _constant = RailCurrent.Constant(3.A);
    private readonly RailCurrent _bass = RailCurrent.HalfWaves(10.A, 20.Hz, 0.7.A);

    private readonly int _cycles = 200;

    [Benchmark(Baseline = true)]
    public (double Mean, double Ripple, double Rms, double Peak) March_of_200_cycles() => Euler(_cycles);

    [Benchmark]
    public SteadySupply Steady_state() => _supply.SteadyState(_constant);

    [Benchmark]
    public SteadySupply Steady_state_of_half_waves_at_20_Hz() => _supply.SteadyState(_bass);

    [Benchmark]
    public DualSteadySupply Steady_state_of_two_rails() => _dual.SteadyState(_constant);

    [Benchmark]
    public DualSteadySupply Steady_state_of_two_rails_with_half_waves_at_20_Hz() => _dual.SteadyState(_bass);

    [Benchmark]
    public SteadySupply Steady_state_with_exponential_diodes() => _exponential.SteadyState(_constant);

    [Benchmark]
    public SupplyBurst Burst_of_20_ms() => _dual.Burst(0.7.A, 2, 5.A, 20.ms, 1.kHz);

    private static (double Mean, double Ripple, double Rms, double Peak) Euler(int cycles)
    {
        const int perCycle = 1000;
        const double h = 20e-6, rs = 0.5, c = 10e-3, load = 3, k = 1 / (1 + (h / (rs * c)));
        double peak = 35 * Math.Sqrt(2), v = 0, sum = 0, low = double.PositiveInfinity, high = 0, square = 0, most = 0;
        for (var n = 0; n < cycles * perCycle; n++)
        {
            var e = Math.Abs(peak * Math.Sin(2 * Math.PI * 50 * (n + 1) * h)) - 1.6;
            double off = v - (h / c * load), i = 0;
            if (e > off)
            {
                v = (v + (h / c * ((e / rs) - load))) * k;
                i = (e - v) / rs;
            }
            else
            {
                v = off;
            }

            if (n < (cycles - 1) * perCycle)
                continue;
            (sum, square) = (sum + v, square + (i * i));
            (low, high, most) = (Math.Min(low, v), Math.Max(high, v), Math.Max(most, i));
        }

        return (sum / perCycle, high - low, Math.Sqrt(square / perCycle), most);
    }
}
