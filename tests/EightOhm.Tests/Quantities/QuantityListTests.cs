using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Tests.Quantities;

public class QuantityListTests
{
    [Fact]
    public void Sum_mean_least_and_greatest()
    {
        ElectricPotential[] volts = [1.V, ElectricPotential.FromMillivolts(500), 3.V];
        Assert.Equal(4.5.V, volts.Sum());
        Assert.Equal(1.5.V, volts.Mean());
        Assert.Equal((0.5, 3.0), (volts.Min().Volts, volts.Max().Volts));
        Assert.Equal(0.V, Array.Empty<ElectricPotential>().Sum());
        Assert.Equal(25.degC.Kelvins, new[] { 20.degC, 30.degC }.Mean().Kelvins, 1e-12);
        Assert.Equal(1.5.W, new[] { "a", "bb" }.Sum(t => 0.5.W * t.Length));
        Assert.Equal(0.75.W, new[] { "a", "bb" }.Mean(t => 0.5.W * t.Length));
        // Numbers keep the framework's own sum.
        Assert.Equal(3.5, new[] { 1.5, 2.0 }.Sum());
        Assert.Equal(3, new[] { "a", "bb" }.Sum(t => t.Length));
    }

    [Fact]
    public void What_does_not_add_is_refused_in_words()
    {
        Assert.Contains("Mean()", Assert.Throws<InvalidOperationException>(() => new[] { 20.degC }.Sum()).Message, StringComparison.Ordinal);
        Assert.Contains("multiply", Assert.Throws<InvalidOperationException>(() => new[] { 20.dB }.Sum()).Message, StringComparison.Ordinal);
        Assert.Contains("behind them", Assert.Throws<InvalidOperationException>(() => new[] { 4.dBu }.Mean()).Message, StringComparison.Ordinal);
        Assert.Contains("empty", Assert.Throws<InvalidOperationException>(() => Array.Empty<Power>().Mean()).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Within_a_share_or_a_difference_the_bound_included()
    {
        Assert.True(28.V.IsWithin(1.percent, of: 28.28.V));
        Assert.False(28.V.IsWithin(0.9.percent, of: 28.28.V));
        Assert.True(1.kV.IsWithin(0.percent, of: ElectricPotential.FromKilovolts(1)));
        Assert.True((-1.1).V.IsWithin(10.percent, of: (-1).V));
        Assert.True(650.mV.IsWithin(20.mV, of: 640.mV));
        Assert.True(1.1.V.IsWithin(0.1.V, of: 1.V));
        Assert.False(661.mV.IsWithin(20.mV, of: 640.mV));
        Assert.True(1.01.IsWithin(1.percent, of: 1.0));
        Assert.True(26.degC.IsWithin(1.K, of: 25.degC));
        Assert.True(4.3.dBu.IsWithin(0.5.dB, of: 4.dBu));
        Assert.False(4.6.dBu.IsWithin(0.5.dB, of: 4.dBu));
        Assert.False(1.uV.IsWithin(50.percent, of: 0.V));
    }

    [Fact]
    public void A_tolerance_that_means_nothing_is_refused_in_words()
    {
        Assert.Contains("kelvins", Assert.Throws<ArgumentOutOfRangeException>(() => 25.degC.IsWithin(1.percent, of: 25.degC)).Message, StringComparison.Ordinal);
        Assert.Contains("kelvins", Assert.Throws<ArgumentOutOfRangeException>(() => 25.degC.IsWithin(1.degC, of: 25.degC)).Message, StringComparison.Ordinal);
        Assert.Contains("(was −1 V)", Assert.Throws<RefusedValueException>(() => 1.V.IsWithin((-1).V, of: 1.V)).Message, StringComparison.Ordinal);
        Assert.Throws<RefusedValueException>(() => 1.V.IsWithin((-1).percent, of: 1.V));
    }
}
