using EightOhm.Devices;
using EightOhm.OutputStages;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Tests.OutputStages;

/// <summary>The bias by stated criteria, on three invented pairs of 0.22 Ω with 52.5 mΩ inside at 55 °C.</summary>
public class FollowerBiasTests
{
    private static EmitterFollowerStage Tern => FollowerTests.Tern;

    [Fact]
    public void Equal_gain_is_V_T_over_the_whole_emitter_resistance_and_a_dip_remains()
    {
        var at = Tern.EqualGainBias();
        Assert.Equal(0.1038, at.IdleCurrent.Amperes, 0.00005);
        Assert.Equal(22.83e-3, at.DropOnEmitterResistor.Volts, 0.005e-3); // not 26 mV
        Assert.Equal(at.LargeSignalGain.Ratio, at.GainAtZero.Ratio, 1e-12);
        var gain = at.Transfer(40.V).Gain;
        Assert.Equal(2240e-6, at.GainAtZero.Ratio - gain.Min.Ratio, 10e-6);
    }

    [Fact]
    public void Equal_gain_at_a_finite_output_is_a_lower_current()
    {
        var at = Tern.EqualGainBias(at: 40.V);
        Assert.Equal(at.GainAtZero.Ratio, at.GainAt(40.V).Ratio, 1e-10);
        // r_e of the conducting device is not yet zero: V_T/I_q = R + 2·V_T/I with I = 1.67 A.
        Assert.Equal(28.28e-3 / (0.2725 + 2 * 28.28e-3 / (5 / 3.0)), at.IdleCurrent.Amperes, 0.0001);
    }

    [Theory]
    [InlineData(8, 40, 1.06)]
    [InlineData(4, 38, 1.34)]
    [InlineData(8, 4, 0.54)]
    public void Least_distortion_is_another_current_at_every_level(double load, double level, double over)
    {
        var best = (Tern with { Load = load.Ohm }).LeastDistortionBias(level.V);
        Assert.Equal(over, best.OverEqualGain, 0.005);
        foreach (var factor in new[] { 0.97, 1.03 })
            Assert.True(Thd(load, best.IdleCurrent * factor, level) > best.StaticThd.DecimalFractions);
    }

    [Fact]
    public void At_one_watt_class_A_is_better_than_the_least_in_between()
    {
        var best = Tern.LeastDistortionBias(4.V);
        Assert.True(best.ThdAtHighest < best.StaticThd);
        Assert.Equal(4 * 0.1038, best.HighestIdle.Amperes, 0.0002);
        // At full level it is not.
        Assert.True(Tern.LeastDistortionBias(40.V).ThdAtHighest > 7 * Tern.LeastDistortionBias(40.V).StaticThd);
    }

    [Fact]
    public void A_bias_too_high_costs_as_much_as_one_too_low()
    {
        var best = Tern.LeastDistortionBias(40.V);
        double low = Thd(8, best.IdleCurrent * 0.6, 40), high = Thd(8, best.IdleCurrent * 1.7, 40);
        Assert.Equal(1, low / high, 0.1);
        Assert.True(low > 3 * best.StaticThd.DecimalFractions);
    }

    [Theory]
    [InlineData(8, 40, 93.7)]
    [InlineData(4, 38, 259.3)]
    public void Static_distortion_of_the_equal_gain_bias(double load, double level, double ppm) =>
        Assert.Equal(ppm, (Tern with { Load = load.Ohm }).BiasedAt(103.8.mA).Harmonics(level.V, 50).StaticThd.PartsPerMillion, 0.2);

    [Fact]
    public void Droop_alone_does_nothing_without_an_impedance_to_drive_it_and_most_of_it_into_4_ohms()
    {
        var droop = Tern with { Device = Tern.Device with { CurrentGain = 100, KneeCurrent = 5.A } };
        double Of(EmitterFollowerStage stage, double load, double level) => (stage with { Load = load.Ohm }).BiasedAt(103.8.mA).Harmonics(level.V).StaticThd.PartsPerMillion;
        Assert.Equal(1, Of(droop, 4, 38) / Of(Tern, 4, 38), 0.01);
        var driven = droop with { Source = 10.Ohm };
        Assert.True(Of(driven, 4, 38) > 5 * Of(droop, 4, 38));
        Assert.True(Of(driven, 4, 38) > 3 * Of(driven, 8, 40));
        // Gain that does not droop is a linear load: the impedance alone makes nothing of note.
        var level = driven with { Device = driven.Device with { KneeCurrent = null } };
        Assert.True(Of(level, 4, 38) < 1.5 * Of(Tern, 4, 38));
    }

    [Fact]
    public void The_harmonics_say_what_they_leave_out()
    {
        var stage = Tern with { Load = 4.Ohm, Drivers = new(47.Ohm), TransitionFrequency = 30.MHz };
        var at = stage.BiasedAt(103.8.mA);
        var harmonics = at.Harmonics(38.V);
        Assert.Contains("lower bound at high frequency", harmonics.ToString(), StringComparison.Ordinal);
        Assert.Equal(at.DriverCurrent!.Value.Amperes / 9.5 * 30e6, harmonics.ChargeLimit!.Value.Hertz, 1.0);
        Assert.Null(Tern.BiasedAt(100.mA).Harmonics(38.V).ChargeLimit);
        Assert.Equal(harmonics.StaticThd.DecimalFractions, Math.Sqrt(Enumerable.Range(2, 9).Sum(n => Math.Pow(harmonics.Harmonic(n).DecimalFractions, 2))), 1e-12);
        Assert.Throws<RefusedValueException>(() => harmonics.Harmonic(11));
    }

    [Fact]
    public void Bad_input_is_refused_with_what_is_allowed()
    {
        Assert.Contains("load must be greater than 0", Refused(() => new EmitterFollowerStage(0.Ohm, 3, 0.22.Ohm)), StringComparison.Ordinal);
        Assert.Contains("pairs must be greater than 0", Refused(() => new EmitterFollowerStage(8.Ohm, 0, 0.22.Ohm)), StringComparison.Ordinal);
        Assert.Contains("R_E must be 0", Refused(() => new EmitterFollowerStage(8.Ohm, 3, -1.Ohm)), StringComparison.Ordinal);
        Refused(() => new LargeSignalModel { CurrentGain = double.NaN });
        Refused(() => new LargeSignalModel { KneeCurrent = 0.A });
        Refused(() => new FollowerDrivers(0.Ohm));
        Refused(() => Tern.BiasedAt(0.A));
        Assert.Contains("Raise the idle current", Refused(() => (Tern with { Drivers = new(47.Ohm), Device = new() { SaturationCurrent = 1.A } }).BiasedAt(1.mA)), StringComparison.Ordinal);
        Refused(() => (Tern with { EmitterResistor = 0.Ohm }).EqualGainBias());
        Assert.Contains("For 100 mA it is 1.", Refused(() => Tern.BiasedBy(10_000.V)), StringComparison.Ordinal);
        Refused(() => Tern.BiasedAt(100.mA).Harmonics(0.V));
        Assert.Contains("multiple of 4", Refused(() => Tern.BiasedAt(100.mA).Harmonics(40.V, 10, 1001)), StringComparison.Ordinal);
        Refused(() => Tern.BiasedAt(100.mA).Harmonics(40.V, 1));
        Assert.Contains("no bias makes it equal", Refused(() => (Tern with { EmitterResistor = 0.Ohm }).EqualGainBias()), StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => Tern.GainFamily([], 40.V));
        Assert.Throws<ArgumentException>(() => (Tern with { PreDrivers = new(100.Ohm) }).BiasedAt(100.mA));
    }

    [Fact]
    public void What_has_no_solution_says_where_the_search_stopped()
    {
        // Outputs of megaohms in series with the emitters, driven to a megavolt: beyond what doubles hold.
        var absurd = Tern with { EmitterResistor = 1e9.Ohm };
        var error = Assert.Throws<InvalidOperationException>(() => absurd.BiasedBy(5.V).OutputFor(1e300.V));
        Assert.Contains("No currents were found for an input of 1E+300 V", error.Message, StringComparison.Ordinal);
        Assert.Contains("from the bias", error.Message, StringComparison.Ordinal);
        Assert.Contains("no bias makes it", Assert.Throws<ShortfallException>(() => Tern.EqualGainBias(1.nV)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_long_sweep_can_be_stopped()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        using var work = Work.Begin(stop.Token);
        Assert.Throws<OperationCanceledException>(() => Tern.DistortionAt([1.5.V], 40.V));
    }

    private static double Thd(double load, ElectricCurrent idle, double level) => (Tern with { Load = load.Ohm }).DistortionAt([idle], level.V).Thd.Y[0];

    private static string Refused(Func<object> make) => Assert.Throws<RefusedValueException>(make).Message;
}
