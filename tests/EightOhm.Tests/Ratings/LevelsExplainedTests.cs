using EightOhm.Quantities;
using EightOhm.Ratings;
using static EightOhm.Explaining.Workings;

namespace EightOhm.Tests.Ratings;

public class LevelsExplainedTests
{
    [Fact]
    public void A_headroom_reads_by_its_own_name_and_as_a_share()
    {
        var H = 2.dB;
        Assert.Contains("H − 1", Explain(() => DynamicHeadroom.VoltageRise(H)).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Impossible_levels_are_refused()
    {
        Assert.Throws<RefusedValueException>(() => Levels.InDbV(0.V));
        Assert.Throws<RefusedValueException>(() => Levels.PowerOfDbW(200));
        Assert.Throws<RefusedValueException>(() => Crest.Factor(1.V, 2.V));
        Assert.Throws<RefusedValueException>(() => ListeningPower.Average(90, 90, 0.m));
    }
}
