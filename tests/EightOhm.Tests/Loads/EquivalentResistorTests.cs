using CsCheck;
using EightOhm.Loads;
using EightOhm.Quantities;

namespace EightOhm.Tests.Loads;

/// <summary>The equivalent resistors that stand for a load's stress.</summary>
public class EquivalentResistorTests
{
    [Fact]
    public void Leading_or_lagging_is_the_same_stress_and_the_plain_numbers_are_the_formulas() => Gen.Double[-90, 90].Sample(d =>
    {
        Assert.Equal(EquivalentResistor.Peak(1.Ohm, d.deg).Ohms, EquivalentResistor.Peak(1.Ohm, (-d).deg).Ohms, 1e-15);
        Assert.Equal(EquivalentResistor.Average(1.Ohm, d.deg).Ohms, EquivalentResistor.Average(1.Ohm, (-d).deg).Ohms, 1e-15);
        Assert.Equal(EquivalentResistor.Peak(1.Ohm, d.deg).Ohms, EquivalentResistor.PeakFactor(d * Math.PI / 180), 1e-13);
        Assert.Equal(EquivalentResistor.Average(1.Ohm, d.deg).Ohms, EquivalentResistor.AverageFactor(d * Math.PI / 180), 1e-13);
        Assert.True(EquivalentResistor.Peak(1.Ohm, d.deg) <= EquivalentResistor.Average(1.Ohm, d.deg) * (1 + 1e-12), "the peak is the harder of the two");
    });
}
