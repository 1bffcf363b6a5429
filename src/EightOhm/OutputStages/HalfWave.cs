using EightOhm.Numerics;

namespace EightOhm.OutputStages;

/// <summary>One side of a stage through a sine, in plain SI numbers: voltage across its transistors, their current and their instantaneous dissipation.</summary>
/// <param name="Rail">The side's rail.</param>
/// <param name="Peak">Peak voltage at the load.</param>
/// <param name="Load">Magnitude of the load.</param>
/// <param name="Lag">How far the current lags the voltage, in radians.</param>
/// <param name="Resistor">Emitter resistor of the side: R_E/n.</param>
/// <param name="Law">How the sides share the load's current.</param>
internal readonly record struct HalfWave(double Rail, double Peak, double Load, double Lag, double Resistor, SideCurrentLaw Law)
{
    private const int Looks = 64;

    /// <summary>The load's voltage, towards the side's own rail, at an angle of that voltage.</summary>
    public double Output(double angle) => Peak * Math.Sin(angle);

    /// <summary>The current of all transistors of the side together.</summary>
    public double Current(double angle)
    {
        var load = Peak / Load * Math.Sin(angle - Lag);
        var off = Law.Off(Math.Abs(load), out _);
        return load > 0 ? off + load : off;
    }

    /// <summary>The voltage across the side's transistors.</summary>
    public double Across(double angle) => Rail - Output(angle) - (Current(angle) * Resistor);

    /// <summary>Their dissipation at that moment, all together.</summary>
    public double Dissipation(double angle) => Across(angle) * Current(angle);

    /// <summary>Where in the cycle the dissipation is highest, and how high.</summary>
    public (double Angle, double Watts) Highest() => Scan.Highest(Dissipation, Lag, Lag + (2 * Math.PI), Looks, 2e-9 * Math.PI);
}
