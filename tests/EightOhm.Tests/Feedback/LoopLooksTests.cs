using EightOhm.Feedback;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Tests.Feedback;

/// <summary>What bounds of a gain settle, beside a look at each place.</summary>
public class LoopLooksTests
{
    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 40)];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void The_size_of_a_gain_stays_within_its_bounds(int seed)
    {
        var (loop, places) = Of(seed);
        for (var wide = 1; wide < places.Length; wide *= 5)
            for (var i = 0; i + wide < places.Length; i += wide)
            {
                var (least, most) = loop.SizeBetween(Math.Exp(places[i]), Math.Exp(places[i + wide]));
                for (var k = i; k <= i + wide; k++)
                    Assert.InRange(loop.At(Math.Exp(places[k])).Magnitude, least * (1 - 1e-12), most * (1 + 1e-12));
            }
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Where_the_gain_is_over_one_is_what_a_look_at_each_place_says(int seed)
    {
        var (loop, places) = Of(seed);
        Assert.Equal(places.Select(u => Math.Sign(loop.At(Math.Exp(u)).Magnitude - 1)), LoopLooks.OverOne(loop, places).Select(Math.Sign));
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void The_highest_is_that_of_a_look_at_each_place_to_the_last_bit(int seed)
    {
        var (loop, places) = Of(seed);
        Same<LoopLooks.Gain>(loop, places);
        Same<LoopLooks.Sensitivity>(loop, places);
    }

    [Fact]
    public void Of_equal_heights_the_first_is_told()
    {
        var (_, places) = Of(1);
        Assert.Equal((0, 3), LoopLooks.Highest<LoopLooks.Gain>(TransferFunction.Constant(3), places, default));
    }

    private static void Same<TFigure>(TransferFunction loop, double[] places)
        where TFigure : struct, IGainFigure
    {
        double[] each = [.. places.Select(u => default(TFigure).Of(loop.At(Math.Exp(u))))];
        var highest = each.Max();
        Assert.Equal((Array.IndexOf(each, highest), highest), LoopLooks.Highest<TFigure>(loop, places, default));
    }

    // Poles apart and close together, some near the axis, with zeros on either side, an integrator, a delay.
    private static (TransferFunction Loop, double[] Places) Of(int seed)
    {
        var random = new Random(seed);
        double Between(double low, double high) => low * Math.Exp(Math.Log(high / low) * random.NextDouble());
        Frequency Corner() => Between(1, 1e8).Hz;
        var loop = TransferFunction.Constant(Between(0.1, 1e6));
        for (var i = random.Next(1, 6); i > 0; i--)
            loop *= TransferFunction.Pole(Corner());
        if (seed % 2 == 0)
            loop = loop * TransferFunction.Pair(Corner(), Between(0.3, 300)) * TransferFunction.Zero(Corner());
        if (seed % 3 == 0)
            loop = loop * TransferFunction.Pair(Corner(), Between(0.3, 30)) * TransferFunction.ZeroPair(Corner(), Between(0.3, 300));
        if (seed % 4 == 0)
            loop *= TransferFunction.RightZero(Corner());
        if (seed % 5 == 0)
            loop *= TransferFunction.Integrator(Corner());
        if (seed % 7 < 3)
            loop *= TransferFunction.Delayed(Between(1e-9, 1e-6).s);
        return (loop, [.. Enumerable.Range(0, 5000).Select(i => Math.Log(0.1) + (i * 0.0046))]);
    }
}
