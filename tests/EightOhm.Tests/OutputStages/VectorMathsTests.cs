using System.Numerics;

namespace EightOhm.Tests.OutputStages;

/// <summary>The vector exponential and logarithm that the follower solver stands on are those of the runtime: held here to what the solver needs of them.</summary>
public class VectorMathsTests
{
    [Fact]
    public void The_vector_exponential_is_within_two_units_in_the_last_place() => Within(2, -650, 10, Vector.Exp, Math.Exp);

    [Fact]
    public void The_vector_logarithm_is_within_two_units_in_the_last_place() => Within(2, 1e-250, 1e3, Vector.Log, Math.Log);

    private static void Within(int ulps, double from, double to, Func<Vector<double>, Vector<double>> fast, Func<double, double> plain)
    {
        var random = new Random(1);
        var lanes = new double[Vector<double>.Count];
        for (var turn = 0; turn < 100_000; turn++)
        {
            for (var i = 0; i < lanes.Length; i++)
                lanes[i] = from > 0 ? from * Math.Pow(to / from, random.NextDouble()) : from + (to - from) * random.NextDouble();
            var found = fast(new Vector<double>(lanes));
            for (var i = 0; i < lanes.Length; i++)
                Assert.True(Math.Abs(found[i] - plain(lanes[i])) <= ulps * Math.BitIncrement(Math.Abs(plain(lanes[i]))) - ulps * Math.Abs(plain(lanes[i])), $"{lanes[i]:R}: {found[i]:R}, {plain(lanes[i]):R}");
        }
    }
}
