namespace EightOhm.Supply;

/// <summary>What a rail gives away: idle + peak·max(0, sign·sin(Ω·t + φ)) + conductance·v.</summary>
internal readonly record struct RailLoad(double Idle, double Peak, double Conductance, int Sign)
{
    public bool IsNone => Idle == 0 && Peak == 0 && Conductance == 0;

    /// <summary>The part that does not depend on the rail, at a phase of the signal.</summary>
    public double At(double sine) => Idle + (Peak * Math.Max(0, Sign * sine));
}

/// <summary>Full-wave rectified source, one or two rails: plain SI numbers and the linear network of each set of charging rails.</summary>
internal sealed class RailNetwork
{
    private readonly RailMode[] modes = new RailMode[4];

    public required int Rails { get; init; }

    /// <summary>The emf's peak, V.</summary>
    public required double Peak { get; init; }

    /// <summary>Angular frequency of the mains, rad/s.</summary>
    public required double Omega { get; init; }

    /// <summary>What the diodes in the path take at any current, V.</summary>
    public required double Drop { get; init; }

    /// <summary>Resistance in the path of one rail alone, Ω.</summary>
    public required double Own { get; init; }

    /// <summary>Resistance that the currents of both rails share, Ω.</summary>
    public required double Shared { get; init; }

    public required double C { get; init; }

    public required double Esr { get; init; }

    public required RailLoad Load1 { get; init; }

    public RailLoad Load2 { get; init; }

    /// <summary>Angular frequency of the signal; 0 when no load is a playing amplifier.</summary>
    public double SignalOmega { get; init; }

    /// <summary>The signal's phase when the mains crosses zero at t = 0, rad.</summary>
    public double SignalPhase { get; init; }

    /// <summary>Half a period of the mains, s: that of the rectified sine.</summary>
    public double Half => Math.PI / Omega;

    public RailMode Mode(int mask) => modes[mask] ??= new RailMode(this, (mask & 1) != 0, (mask & 2) != 0);

    /// <summary>The same with other loads.</summary>
    public RailNetwork With(RailLoad first, RailLoad second, double signalOmega, double signalPhase) => new()
    {
        Rails = Rails,
        Peak = Peak,
        Omega = Omega,
        Drop = Drop,
        Own = Own,
        Shared = Shared,
        C = C,
        Esr = Esr,
        Load1 = first,
        Load2 = second,
        SignalOmega = signalOmega,
        SignalPhase = signalPhase,
    };
}
