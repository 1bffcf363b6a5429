using EightOhm.Loads;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Tests.Loads;

/// <summary>Cables: what the standard allows, what copper can do, what is refused.</summary>
public class CableTests
{
    [Fact]
    public void The_standard_s_maximum_is_above_what_copper_of_the_nominal_area_has()
    {
        foreach (var area in Iec60228.CrossSections)
        {
            var copper = CopperWire.PerKilometre(Length.FromMeters(Math.Sqrt(4 * area.SquareMeters / Math.PI))).Ohms;
            Assert.InRange(Iec60228.PerKilometre(area, ConductorClass.Fixed).Ohms / copper, 1.04, 1.08);
            Assert.InRange(Iec60228.PerKilometre(area, ConductorClass.Flexible).Ohms / copper, 1.10, 1.17);
        }
    }

    [Fact]
    public void Three_gauges_halve_the_area_nearly_and_39_are_a_factor_of_92()
    {
        Assert.Equal(92, CopperWire.Diameter(-3) / CopperWire.Diameter(36), 1e-9);
        Assert.Equal(2, CopperWire.PerKilometre(CopperWire.Diameter(15)) / CopperWire.PerKilometre(CopperWire.Diameter(12)), 0.006);
    }

    [Fact]
    public void Both_conductors_count_and_warm_copper_has_more()
    {
        var cold = Cable.Iec(5.m, 2.5.mm2);
        Assert.Equal(2 * 0.005 * 7.98, cold.LoopResistance.Ohms, 1e-12);
        Assert.Equal(0.005 * 2 * 7.41, Cable.Iec(5.m, 2.5.mm2, ConductorClass.Fixed).LoopResistance.Ohms, 1e-12);
        Assert.Equal(1.118, Cable.Iec(5.m, 2.5.mm2, temperature: 50.degC).LoopResistance / cold.LoopResistance, 5e-4);
        // A twin lead of any gauge with a conductor's width between: 0.65 µH/m.
        Assert.Equal(5 * 0.654e-6, cold.LoopInductance.Henries, 5e-9);
        Assert.True(Cable.Iec(5.m, 2.5.mm2, spacing: 20.mm).LoopInductance > cold.LoopInductance);
        Assert.Equal(cold, Cable.Iec(5.m, 2.5.mm2));
    }

    [Fact]
    public void What_is_no_cable_is_refused()
    {
        var odd = Assert.Throws<RefusedValueException>(() => Cable.Iec(5.m, 2.mm2)).Message;
        Assert.Contains("0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16 mm²", odd, StringComparison.Ordinal);
        Assert.Contains("4/0", Assert.Throws<RefusedValueException>(() => Cable.Awg(5.m, -4)).Message, StringComparison.Ordinal);
        Assert.Contains("overlap", Assert.Throws<RefusedValueException>(() => Cable.Awg(5.m, 12, 1.mm)).Message, StringComparison.Ordinal);
        Assert.Throws<RefusedValueException>(() => Cable.Awg(5.m, 12, temperature: 300.degC));
        Assert.Throws<RefusedValueException>(() => DampingFactor.Of(8.Ohm, 0.Ohm));
        Assert.Throws<RefusedValueException>(() => DampingFactor.WithCable(8.Ohm, 0.Ohm, 0.Ohm));
        Assert.Throws<RefusedValueException>(() => CopperWire.StandardFactor(120.degC));
        Assert.Throws<RefusedValueException>(() => CableLoss.Share(1.Ohm, 0.Ohm));
    }
}
