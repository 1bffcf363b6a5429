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

/// <summary>The highest of many looks with its neighbours, to be sharpened when all have been seen.</summary>
/// <remarks>A piece begins where the last one ended, so a look there is seen twice, once with each neighbour: both are kept, as the top may
/// lie on either side.</remarks>
internal sealed class Highest
{
    private RailSegment segment, twin;
    private double low, high, twinLow, twinHigh;
    private bool hasTwin;

    public double Value { get; private set; } = double.NegativeInfinity;

    public void See(double value, double at, double from, double to, ref RailSegment s)
    {
        if (at == 0 && Math.Abs(value - Value) < 1e-9 * Math.Abs(value))
        {
            (twin, twinLow, twinHigh, hasTwin) = (s, from, to, true);
            return;
        }

        if (value > Value)
            (Value, low, high, segment, hasTwin) = (value, from, to, s, false);
    }

    public void Sharpen(Look look)
    {
        if (high > low)
            Sharpen(ref segment, look, low, high);
        if (hasTwin)
            Sharpen(ref twin, look, twinLow, twinHigh);
    }

    // Golden section: the looks are close enough for one top between neighbours.
    private void Sharpen(ref RailSegment s, Look look, double a, double b)
    {
        const double golden = 0.6180339887498949;
        double c = b - (golden * (b - a)), d = a + (golden * (b - a)), fc = Height(ref s, look, c), fd = Height(ref s, look, d);
        for (var i = 0; i < 22; i++)
        {
            if (fc > fd)
            {
                (b, d, fd) = (d, c, fc);
                c = b - (golden * (b - a));
                fc = Height(ref s, look, c);
            }
            else
            {
                (a, c, fc) = (c, d, fd);
                d = a + (golden * (b - a));
                fd = Height(ref s, look, d);
            }
        }

        if (Math.Max(fc, fd) > Value)
            Value = Math.Max(fc, fd);
    }

    private static double Height(ref RailSegment s, Look look, double at)
    {
        s.At(at);
        return look switch
        {
            Look.LowRail1 => -s.V1,
            Look.LowRail2 => -s.V2,
            Look.HighRail1 => s.V1,
            Look.HighRail2 => s.V2,
            Look.Current1 => s.I1,
            _ => s.I2,
        };
    }
}
