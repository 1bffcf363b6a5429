using System.Runtime.Intrinsics;
using EightOhm.Numerics;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Thermal;

/// <summary>The periodic steady state of a thermal impedance: each exponential from the closed form of its recursion over one period.</summary>
internal static class PeriodicRise
{
    private const int Wide = 4;

    public static JunctionRise Of(FosterImpedance impedance, PeriodicHeat heat)
    {
        var rise = new double[heat.Lengths.Length];
        Add(impedance.R, impedance.Tau, heat.Lengths, heat.From, heat.To, rise);
        var seconds = new double[rise.Length];
        var t = 0.0;
        for (var i = 0; i < rise.Length; i++)
            seconds[i] = t += heat.Lengths[i];
        return new JunctionRise(seconds, rise, impedance.Steady * heat.Mean, impedance.Steady * heat.Peak);
    }

    /// <summary>Adds the rise at the end of each piece of the period. No allocation.</summary>
    /// <param name="r">Resistances, K/W.</param>
    /// <param name="tau">Time constants, s.</param>
    /// <param name="lengths">Lengths of the pieces, s.</param>
    /// <param name="from">Power at the begin of each piece, W.</param>
    /// <param name="to">Power at the end of each piece, W.</param>
    /// <param name="rise">K; added to.</param>
    public static void Add(ReadOnlySpan<double> r, ReadOnlySpan<double> tau, ReadOnlySpan<double> lengths, ReadOnlySpan<double> from, ReadOnlySpan<double> to, Span<double> rise)
    {
        // Four exponentials side by side: each waits for its own last value, not for the others. Empty places have r = 0.
        Span<double> groupR = stackalloc double[Wide], groupTau = stackalloc double[Wide];
        for (var k = 0; k < r.Length; k += Wide)
        {
            Work.Checkpoint();
            groupR.Clear();
            groupTau.Fill(1);
            r[k..Math.Min(k + Wide, r.Length)].CopyTo(groupR);
            tau[k..Math.Min(k + Wide, r.Length)].CopyTo(groupTau);
            AddFour(Vector256.Create<double>(groupR), groupTau, lengths, from, to, rise);
        }
    }

    private static void AddFour(Vector256<double> r, ReadOnlySpan<double> tau, ReadOnlySpan<double> lengths, ReadOnlySpan<double> from, ReadOnlySpan<double> to, Span<double> rise)
    {
        // Once from rest gives what one period adds; of that, a period later, exp(−T/τ) is left, and so on: a geometric series.
        double h = double.NaN, period = 0;
        Vector256<double> gone = default, ramp = default, y = default;
        for (var pass = 0; pass < 2; pass++)
        {
            for (var i = 0; i < lengths.Length; i++)
            {
                if (lengths[i] != h)
                {
                    h = lengths[i];
                    gone = Vector256.Create(Decay.Gone(h / tau[0]), Decay.Gone(h / tau[1]), Decay.Gone(h / tau[2]), Decay.Gone(h / tau[3]));
                    ramp = r * Vector256.Create(Decay.Ramp(h / tau[0]), Decay.Ramp(h / tau[1]), Decay.Ramp(h / tau[2]), Decay.Ramp(h / tau[3]));
                }

                y += (gone * ((r * from[i]) - y)) + (ramp * (to[i] - from[i]));
                if (pass == 0)
                    period += h;
                else
                    rise[i] += Vector256.Sum(y);
            }

            if (pass == 0)
                y /= Vector256.Create(Decay.Gone(period / tau[0]), Decay.Gone(period / tau[1]), Decay.Gone(period / tau[2]), Decay.Gone(period / tau[3]));
        }
    }
}
