using EightOhm.Devices;
using EightOhm.OutputStages;
using EightOhm.Quantities;
using EightOhm.Supply;
using UnitsNet;

namespace EightOhm.Tests.Supply;

/// <summary>The supply chapter's computation for other amplifiers than the Tern: whatever the targets, verdicts with what is missing, and no exception.</summary>
public class ChapterFiveTests
{
    /// <summary>Rated power and load, second load, mains, channels; whether the Tern's supply holds the rated and the second load.</summary>
    public static TheoryData<double, double, double, double, double, double, int, bool, bool> Amplifiers => new()
    {
        { 100, 8, 180, 4, 230, 50, 2, true, true },
        { 200, 8, 180, 4, 230, 50, 2, false, true },
        { 100, 4, 180, 4, 230, 50, 2, true, true },
        { 25, 8, 45, 4, 230, 50, 2, true, true },
        { 60, 8, 100, 4, 120, 60, 1, true, true },
        { 1000, 8, 1800, 4, 230, 50, 2, false, false },
        { 1000, 0.5, 2000, 0.25, 230, 50, 2, false, false },
    };

    [Theory]
    [MemberData(nameof(Amplifiers))]
    public void Ends_with_verdicts(double P, double R_L, double P_4, double R_4, double line, double hertz, int channels, bool holds8, bool holds4)
    {
        var dual = new DualRailSupply(new DualWinding(35.V, 6.percent, 800.VA), hertz.Hz, 0.9.V, 30.mF) { DiodeResistance = 20.mOhm };
        SwingBudget budget8 = Budget(P, R_L), budget4 = Budget(P_4, R_4);
        Assert.Equal(holds8, Holds(dual, budget8, channels));
        Assert.Equal(holds4, Holds(dual, budget4, channels));

        SteadyClip Clip(Ratio x, SwingBudget budget) => dual.AtMains(x).ClipsAt(budget, channels, 50.mA, 1.kHz);
        foreach (var budget in new[] { budget8, budget4 })
        {
            var clip = Clip(default, budget);
            Assert.Equal(Math.Max(0, budget.Peak.Volts - clip.Peak.Volts), clip.Short.Volts, 1e-9);
            Assert.True(clip.Power > 0.W);
            // At the clip level the rail is used up, however far that is from what was asked.
            Assert.Equal(clip.Peak.Volts, budget.ClipPeak(clip.Rails).Volts, 1e-6);
        }

        var table = MainsTable.Within(10.percent)
            .Amplifier(x => new Rails(Transformer.NoLoadRail(35.V, 6.percent, x, 0.6.V)), x => Clip(x, budget8).Rails, budget8, x => 100.W, 63.V, 160.V)
            .Row($"clip power into {QuantityFormat.Short(R_4.Ohm)}", x => Clip(x, budget4).Power)
            .Row("half-winding rms while it clips", x => dual.AtMains(x).Playing(channels, Clip(x, budget8).Peak / R_L.Ohm, 1.kHz, 50.mA).HalfWindingRms);
        Assert.Equal(10, table.Rows.Count);
        Assert.All(table.Rows, r => Assert.NotNull(r.Nominal.Value));
        var burst = dual.LargestBurst(0.7.A, R_L.Ohm, 20.ms, budget8.NeededPositive - budget8.Peak, channels, 1.kHz);
        Assert.True(dual.Burst(0.7.A, channels, burst.Peak / R_L.Ohm, 20.ms, 1.kHz).Lowest > 0.V);

        // The same 27 Ω is four times as much at half the mains; and with the idle current drawn meanwhile it is too much at any.
        var start = SoftStart.Of(dual.SwitchedOn(line.V, 0.5.Ohm, InrushLimiter.Resistor(27.Ohm), 1.s, 0.A));
        Assert.Equal(line < 200, start.Short > 0.V);
        Assert.Equal(start.TimeTo90Percent is null, start.Short > 0.V);
        Assert.True(SoftStart.Of(dual.SwitchedOn(line.V, 0.5.Ohm, InrushLimiter.Resistor(27.Ohm), 1.s, 0.7.A)).Short > start.Short);
    }

    // The playing rail where there is one; a winding that cannot feed the load says so in the same words.
    private static bool Holds(DualRailSupply dual, SwingBudget budget, int channels)
    {
        try
        {
            var verdict = budget.Against(dual.Playing(channels, budget.PeakCurrent, 1.kHz, 50.mA).Minimum);
            Assert.Equal(verdict.Holds, verdict.Short.Volts == 0);
            Assert.Equal(verdict.Holds, verdict.ClipPeak >= budget.Peak);
            return verdict.Holds;
        }
        catch (ShortfallException shortfall)
        {
            Assert.Contains("is short by", shortfall.Message, StringComparison.Ordinal);
            return false;
        }
    }

    private static SwingBudget Budget(double watts, double ohms)
    {
        var V_T = Junction.ThermalVoltage(55.degC);
        var V_p = Math.Sqrt(2 * watts * ohms).V;
        var I_p = V_p / ohms.Ohm;
        return SwingBudget.For(V_p, I_p)
            .LessEmitterResistors(0.22.Ohm, 3)
            .Less("output junction", SwingLosses.Junction(0.677.V, V_T, I_p / 3, 103.8.mA, 52.5.mOhm), "at a third of the peak current")
            .Less("driver and pre-driver junctions", 1.3.V, "stated")
            .Less("second stage", 2.V, 1.5.V, "cascode; current source")
            .Less("front-end filter", RailFilter.Drop(15.9.mA, 22.Ohm), "its R");
    }
}
