namespace EightOhm.Protection;

/// <summary>A limiter's locus in plain numbers, at one sense voltage.</summary>
internal readonly struct LocusLine(double sense, double r1, double r2, double r3, double r4, double re, double span)
{
    private readonly double _atZero = sense * ((1 / r1) + (1 / r2) + (1 / r3));

    /// <summary>Amperes over volts from output to rail; none below zero.</summary>
    public double ByRail(double v) => Math.Max(0, r1 / re * (_atZero - (v / r3) + (Math.Max(0, span + sense - v) / r4)));

    /// <summary>Amperes over volts of the transistor: v = V_CE + I·R_E put in and solved for I, on whichever side of the knee it comes out.</summary>
    public double ByTransistor(double v)
    {
        var beyond = (_atZero - (v / r3)) / re / ((1 / r1) + (1 / r3));
        var below = (_atZero - (v / r3) + ((span + sense - v) / r4)) / re / ((1 / r1) + (1 / r3) + (1 / r4));
        return Math.Max(0, v + (beyond * re) >= span + sense ? beyond : below);
    }
}
