using EightOhm.Quantities;
using EightOhm.SecondStages;

namespace EightOhm.Tests.SecondStages;

public class SecondStageTests
{
    private static readonly SecondStage Bare = new() { Current = 10.mA, RestVoltage = 46.V, OutputCapacitance = 4.pF, CurrentGain = 100, EarlyVoltage = 100.V };

    [Fact]
    public void The_two_errors_of_a_bare_stage()
    {
        var at20 = Bare.Errors(20.kHz, 40.V, (1.0 / 60).S, 23.6.ratio);
        Assert.Equal(81, at20.Harmonics[0].FromCapacitance.PartsPerMillion, 0.5);
        Assert.Equal(29, at20.Harmonics[1].FromCapacitance.PartsPerMillion, 0.5);
        Assert.Equal(98, at20.Harmonics[0].FromEarlyEffect.PartsPerMillion, 0.5);
        // The capacitance's error goes with frequency, the Early effect's does not.
        var at1 = Bare.Errors(1.kHz, 40.V, (1.0 / 60).S, 23.6.ratio);
        Assert.Equal(at20.Harmonics[0].FromCapacitance.PartsPerMillion / 20, at1.Harmonics[0].FromCapacitance.PartsPerMillion, 1e-6);
        Assert.Equal(at20.Harmonics[0].FromEarlyEffect.PartsPerMillion, at1.Harmonics[0].FromEarlyEffect.PartsPerMillion, 1e-6);
    }

    [Fact]
    public void A_follower_divides_by_its_gain_and_one()
    {
        var bare = Bare.Errors(20.kHz, 40.V, 16.mS, 23.6.ratio).Total;
        var followed = (Bare with { FollowerGain = 80 }).Errors(20.kHz, 40.V, 16.mS, 23.6.ratio).Total;
        Assert.Equal(81, bare / followed, 1e-6);
    }

    [Fact]
    public void A_cascode_leaves_what_the_transistor_below_needs_for_the_currents_of_the_cascode()
    {
        static double Ppm(SecondStage s) => s.Errors(20.kHz, 40.V, 16.mS, 23.6.ratio).Total.PartsPerMillion;
        var cascode = new StageCascode { Transconductance = 40.mS, InputCapacitance = 140.pF, OutputCapacitance = 4.pF, CurrentGain = 100 };
        double bare = Ppm(Bare), alone = Ppm(Bare with { Cascode = cascode }), both = Ppm(Bare with { Cascode = cascode, FollowerGain = 100 });
        // Not removed; alone by little more than the gain; and with a follower not by both gains, because the capacitance at the input does not care about either.
        Assert.InRange(alone, bare / 100, 1.02 * bare / 100);
        Assert.InRange(both, 7 * bare / (100 * 101), 12 * bare / (100 * 101));
        // Slowly only the base currents are left, and both gains do divide.
        static double Slow(SecondStage s) => s.Errors(10.Hz, 40.V, 16.mS, 23.6.ratio).Total.PartsPerMillion;
        Assert.Equal(100 * 101, Slow(Bare) / Slow(Bare with { Cascode = cascode, FollowerGain = 100 }), 1.0);
        Assert.Equal(1.72, (Bare with { FollowerGain = 80, Cascode = cascode }).SwingCost(22.Ohm).Volts, 1e-12);
        Assert.Equal(0.72, (Bare with { FollowerGain = 80 }).SwingCost(22.Ohm).Volts, 1e-12);
    }

    [Fact]
    public void Push_pull_cancels_even_harmonics()
    {
        var errors = (Bare with { IsPushPull = true }).Errors(20.kHz, 40.V, 16.mS, 23.6.ratio);
        Assert.All(errors.Harmonics.Where(h => h.Number % 2 == 0), h => Assert.True(h.Together.PartsPerMillion < 1e-6));
        Assert.True(errors.Harmonics[1].Together.PartsPerMillion > 10);
    }

    [Fact]
    public void A_fault_without_a_limit_is_many_times_the_limited_one()
    {
        Assert.Equal(0.56, (double)StageHeat.Idle(56.V, 10.mA).Watts, 1e-12);
        Assert.Equal(1.65, (double)StageHeat.LimitedFault(56.V, 0.65.V, 22.Ohm).Watts, 0.01);
        // 0.4 A makes 8.8 V in 22 Ω; with a follower the resistor bounds it, at half the rail: 56²/(4·22). With none it is V·I.
        Assert.Equal(0.4 * 47.2, (double)StageHeat.UnlimitedFault(56.V, 4.mA, 100, 22.Ohm, 0).Watts, 1e-9);
        Assert.Equal(56 * 56 / 88.0, (double)StageHeat.UnlimitedFault(56.V, 4.mA, 100, 22.Ohm, 100).Watts, 1e-9);
        Assert.Equal(56 * 40.4, (double)StageHeat.UnlimitedFault(56.V, 4.mA, 100, 0.Ohm, 100).Watts, 1e-9);
    }

    [Fact]
    public void What_no_stage_does_is_refused_in_words()
    {
        Assert.Contains("must be below the voltage at rest", Assert.Throws<RefusedValueException>(() => Bare.Errors(20.kHz, 46.V, 16.mS, 23.6.ratio)).Message, StringComparison.Ordinal);
        Assert.Contains("nothing is left to slew with", Assert.Throws<RefusedValueException>(() => StageCurrent.SlewRate(1.mA, 1.mA, 100.pF, 10.pF)).Message, StringComparison.Ordinal);
        Assert.Contains("does not saturate", Assert.Throws<RefusedValueException>(() => Recovery.Time(1.us, 0.1.mA, 0.2.mA)).Message, StringComparison.Ordinal);
    }
}
