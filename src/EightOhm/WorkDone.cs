namespace EightOhm;

/// <summary>How far a long calculation is.</summary>
/// <param name="Done">Turns done.</param>
/// <param name="Of">Turns in all.</param>
public readonly record struct WorkDone(long Done, long Of)
{
    /// <summary>The part done, 0 to 1; 0 where the whole is not known.</summary>
    public double Fraction => Of > 0 ? Math.Clamp((double)Done / Of, 0, 1) : 0;
}
