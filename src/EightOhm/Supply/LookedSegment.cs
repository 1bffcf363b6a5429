using EightOhm.Numerics;

namespace EightOhm.Supply;

/// <summary>What is looked at; a low is looked at upside down.</summary>
internal enum Look
{
    LowRail1,
    LowRail2,
    HighRail1,
    HighRail2,
    Current1,
    Current2,
}

/// <summary>One figure over a piece of a march, as a curve that a search takes.</summary>
internal readonly ref struct LookedSegment(ref RailSegment segment, Look look) : ICurve
{
    private readonly ref RailSegment segment = ref segment;

    public double At(double x)
    {
        segment.At(x);
        return look switch
        {
            Look.LowRail1 => -segment.V1,
            Look.LowRail2 => -segment.V2,
            Look.HighRail1 => segment.V1,
            Look.HighRail2 => segment.V2,
            Look.Current1 => segment.I1,
            _ => segment.I2,
        };
    }
}
