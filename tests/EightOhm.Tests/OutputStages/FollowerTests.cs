using CsCheck;
using EightOhm.Devices;
using EightOhm.OutputStages;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Tests.OutputStages;

/// <summary>What every follower stage does, whatever its parts.</summary>
public class FollowerTests
{
    private static readonly Gen<LargeSignalModel> Devices =
        from decade in Gen.Double[-14, -10]
        from celsius in Gen.Double[0, 120]
        from inside in Gen.Double[0, 0.3]
        from gain in Gen.Double[20, 500]
        from knee in Gen.Double[0.5, 20]
        from droops in Gen.Bool
        select new LargeSignalModel
        {
            SaturationCurrent = ElectricCurrent.FromAmperes(Math.Pow(10, decade)),
            Junction = celsius.degC,
            InternalResistance = inside.Ohm,
            CurrentGain = gain,
            KneeCurrent = droops ? knee.A : null,
        };

    private static readonly Gen<EmitterFollowerStage> Symmetric =
        from load in Gen.Double[2, 32]
        from pairs in Gen.Int[1, 6]
        from emitter in Gen.Double[0.05, 1]
        from outputs in Devices
        from drivers in Devices
        from stages in Gen.Int[1, 3]
        from source in Gen.Double[0, 50]
        select new EmitterFollowerStage(load.Ohm, pairs, emitter.Ohm)
        {
            Device = outputs,
            Drivers = stages > 1 ? new(47.Ohm) { Device = drivers } : null,
            PreDrivers = stages > 2 ? new(220.Ohm) { Device = drivers } : null,
            Source = source.Ohm,
        };

    private static readonly Gen<EmitterFollowerStage> Unequal =
        from stage in Symmetric
        from lower in Devices
        select stage with { Complement = lower };

    private static readonly Gen<ElectricCurrent> Idle = Gen.Double[-3, 0].Select(d => ElectricCurrent.FromAmperes(Math.Pow(10, d)));

    [Fact]
    public void Equal_sides_give_an_odd_transfer_and_an_even_gain() => Gen.Select(Symmetric, Idle).Sample(
        (stage, idle) =>
        {
            var curve = stage.BiasedAt(idle).Transfer(50.V, 101);
            for (var i = 0; i < 101; i++)
            {
                Assert.Equal(-curve.Transfer.X[i], curve.Transfer.X[100 - i], 1e-9);
                Assert.Equal(curve.Gain.Y[i], curve.Gain.Y[100 - i], 1e-9);
            }
        }, iter: 60);

    [Fact]
    public void The_gain_is_between_0_and_1_and_the_transfer_rises() => Gen.Select(Unequal, Idle).Sample(
        (stage, idle) =>
        {
            var curve = stage.BiasedAt(idle).Transfer(60.V, 151);
            Assert.All(curve.Gain.Y, g => Assert.InRange(g, 1e-6, 1 - 1e-12));
            Assert.All(Enumerable.Range(1, 150), i => Assert.True(curve.Transfer.X[i] > curve.Transfer.X[i - 1]));
        }, iter: 60);

    [Fact]
    public void Bias_and_idle_current_and_input_and_output_are_each_other_s_inverse() => Gen.Select(Unequal, Idle, Gen.Double[-55, 55]).Sample(
        (stage, idle, volts) =>
        {
            var at = stage.BiasedAt(idle);
            Assert.Equal(1, stage.BiasedBy(at.BiasVoltage).IdleCurrent / idle, 1e-9);
            Assert.Equal(volts, at.OutputFor(at.InputFor(volts.V)).Volts, 1e-9);
        }, iter: 1000);

    [Fact]
    public void The_gain_is_the_slope_of_the_transfer() => Gen.Select(Unequal, Idle, Gen.Double[-30, 30]).Sample(
        (stage, idle, volts) =>
        {
            const double h = 2e-4; // far below V_T, far above the rounding
            var at = stage.BiasedAt(idle);
            double In(double v) => at.InputFor(v.V).Volts;
            var slope = (8 * (In(volts + h) - In(volts - h)) - (In(volts + 2 * h) - In(volts - 2 * h))) / (12 * h);
            Assert.Equal(1, at.GainAt(volts.V).Ratio * slope, 1e-6);
        }, iter: 100);

    [Fact]
    public void A_sweep_that_starts_each_bias_from_the_last_gives_what_each_bias_gives_alone() => Symmetric.Sample(
        stage =>
        {
            ElectricPotential[] biases = [.. new[] { 5e-3, 20e-3, 21e-3, 22e-3, 23e-3, 100e-3, 0.5, 0.01 }.Select(i => stage.BiasedAt(i.A).BiasVoltage)];
            var together = stage.DistortionAt(biases, 20.V, 5, 256);
            for (var k = 0; k < biases.Length; k++)
                Assert.Equal(stage.DistortionAt([biases[k]], 20.V, 5, 256).Thd.Y[0], together.Thd.Y[k], 1e-12);
        }, iter: 20);

    [Fact]
    public void The_level_is_the_peak_of_the_output()
    {
        var at = Tern.BiasedAt(103.8.mA);
        Assert.Equal(40, at.OutputFor(at.Harmonics(40.V).InputPeak).Volts, 1e-9);
        Assert.Equal(40, at.Harmonics(40.V).Fundamental.Volts, 0.02);
    }

    [Fact]
    public void Samples_enough_are_enough()
    {
        var at = Tern.BiasedAt(103.8.mA);
        Assert.Equal(1, at.Harmonics(40.V, 10, 4096).StaticThd / at.Harmonics(40.V, 10, 65536).StaticThd, 1e-9);
    }

    [Fact]
    public void Deep_class_B_and_deep_class_A_are_solved()
    {
        var emptied = Tern with { EmitterResistor = 1.Ohm };
        Assert.Equal(-200, emptied.BiasedAt(1.uA).OutputFor(emptied.BiasedAt(1.uA).InputFor(-200.V)).Volts, 1e-9); // the other side at e^-600 of an ampere or so
        Assert.InRange(Tern.BiasedAt(10.A).GainAtZero.Ratio, 0.98, 1);
        Assert.InRange(Tern.BiasedAt(1e-9.A).GainAtZero.Ratio, 0, 0.01);
    }

    internal static EmitterFollowerStage Tern => new(load: 8.Ohm, pairs: 3, R_E: 0.22.Ohm) { InternalResistance = 52.5.mOhm, Junction = 55.degC };
}
