using EightOhm.Devices;
using EightOhm.OutputStages;
using EightOhm.Quantities;
using EightOhm.Sizing;
using EightOhm.Supply;
using UnitsNet;

namespace EightOhm.Tests.Sizing;

/// <summary>Harmonics over the idle current, straight between where they were solved.</summary>
public class SizedHarmonicsTests
{
    private static readonly EmitterFollowerStage Stage = Made(2, 0.22.Ohm, 30.V, 8.Ohm, 20.V);

    [Fact]
    public void Between_two_solutions_a_harmonic_is_nearly_its_own()
    {
        var harmonics = new SizedHarmonics(Stage, 100.mA, 20.V);
        foreach (var share in new[] { 1, 1.017, 1.23, 1.418 })
        {
            var own = Stage.BiasedAt(share * 100.mA).Harmonics(20.V, highest: 8);
            var at = harmonics.At(share);
            for (var k = 2; k <= SizedHarmonics.Highest; k++)
                Assert.Equal(own.Harmonic(k).DecimalFractions, at[k - 2], 0.02 * at.Max());
        }
    }

    [Fact]
    public void A_range_has_its_ends_and_what_lies_between()
    {
        var harmonics = new SizedHarmonics(Stage, 100.mA, 20.V);
        var all = harmonics.Between(0.97, 1.05).ToArray();
        // 0.98, 1, 1.02 and 1.04, and both ends.
        Assert.Equal(6, all.Length);
        Assert.Equal(harmonics.At(0.97), all[0]);
        Assert.Equal(harmonics.At(1), all[2]);
        Assert.Equal(harmonics.At(1.05), all[^1]);
    }

    [Fact]
    public void The_sharpest_crossover_is_seen_as_well_as_with_many_samples()
    {
        // Ten kilowatts' worth: the sides change over within a few thousandths of the peak.
        var sharp = Made(12, 1.Ohm, 170.V, 2.Ohm, 140.V);
        var own = sharp.BiasedAt(100.mA).Harmonics(140.V, samples: 1 << 16);
        var at = new SizedHarmonics(sharp, 100.mA, 140.V).At(1);
        for (var k = 2; k <= SizedHarmonics.Highest; k++)
            Assert.Equal(own.Harmonic(k).DecimalFractions, at[k - 2], 1e-3 * at.Max());
    }

    private static EmitterFollowerStage Made(int pairs, ElectricResistance resistor, ElectricPotential rail, ElectricResistance load, ElectricPotential peak)
    {
        Transistor Of(Polarity polarity, double watts) => DeviceSet.Shipped.Of<Transistor>().Where(t => t.Polarity == polarity).MinBy(t => Math.Abs((double)t.MaxPowerDissipation.Watts - watts))!;
        return new OutputStage(Of(Polarity.Npn, 150), Of(Polarity.Pnp, 150), pairs, resistor, RailLine.Constant(rail))
        {
            IdleCurrent = 100.mA,
            Junction = 55.degC,
            SourceImpedance = 1.kOhm,
            Drivers = new(Of(Polarity.Npn, 15), Of(Polarity.Pnp, 15), 47.Ohm),
            PreDrivers = new(Of(Polarity.Npn, 15), Of(Polarity.Pnp, 15), 300.Ohm),
        }.Transfer(load, peak);
    }
}
