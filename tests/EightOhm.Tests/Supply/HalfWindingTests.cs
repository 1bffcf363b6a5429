using EightOhm.Quantities;
using EightOhm.Supply;
using UnitsNet;

namespace EightOhm.Tests.Supply;

/// <summary>The busier half of the winding, counted here from the drawn currents.</summary>
public class HalfWindingTests
{
    private static readonly DualRailSupply Stiff = new(34.9.V, 50.Hz, 85.mOhm, 42.5.mOhm, 0.9.V, 30.mF);

    [Theory]
    [InlineData(90)]
    [InlineData(120)]
    [InlineData(260)]
    public void A_note_locked_to_the_mains_loads_one_half_more_and_that_one_is_named(double phase)
    {
        var at = Stiff.SteadyState(RailCurrent.HalfWaves(10.A, 50.Hz, 0.7.A, phase.deg));
        // Two half-cycles: the first half-winding feeds the positive rail in the first and the negative rail in the second, the other the other way round.
        const int points = 40_001;
        double one = 0, other = 0;
        RailWaveform p = at.Positive.OverOneCycle(points), n = at.Negative.OverOneCycle(points);
        for (var k = 0; k < points - 1; k++)
        {
            var first = k < (points - 1) / 2;
            one += Math.Pow(first ? p.Winding[k] : n.Winding[k], 2);
            other += Math.Pow(first ? n.Winding[k] : p.Winding[k], 2);
        }

        one = Math.Sqrt(one / (points - 1));
        other = Math.Sqrt(other / (points - 1));
        Assert.Equal(Math.Max(one, other), at.HalfWindingRms.Amperes, 2e-3);
        Assert.True(Math.Abs(one - other) > 0.05 * at.HalfWindingRms.Amperes, $"the halves must differ for this to tell: {one} and {other} A");
    }
}
