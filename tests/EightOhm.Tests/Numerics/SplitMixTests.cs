using EightOhm.Numerics;

namespace EightOhm.Tests.Numerics;

public class SplitMixTests
{
    // The generator's published reference output for this seed (S. Vigna's splitmix64.c), from memory.
    [Fact]
    public void Probes_come_from_a_generator_that_is_the_same_everywhere()
    {
        var random = new SplitMix(1234567);
        ulong[] known = [6457827717110365317, 3203168211198807973, 9817491932198370423, 4593380528125082431, 16408922859458223821];
        Assert.Equal(known, known.Select(_ => random.Next()));
        var fractions = Enumerable.Range(0, 10_000).Select(_ => random.Fraction()).ToList();
        Assert.All(fractions, f => Assert.InRange(f, 0, Math.BitDecrement(1.0)));
        Assert.Equal(0.5, fractions.Average(), 0.01);
        Assert.Equal([0, 1, 2], Enumerable.Range(0, 100).Select(_ => random.Below(3)).Distinct().Order());
    }
}
