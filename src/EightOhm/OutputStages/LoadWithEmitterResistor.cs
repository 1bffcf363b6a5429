using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.OutputStages;

/// <summary>The load as the transistors see it: the loudspeaker's |Z|∠φ and the emitter resistors of the conducting side in series, R_E/n.</summary>
/// <remarks>A stage with emitter resistors heats its transistors as one without does into this load, at the same current. That is exact in class B
/// with equal sharing; what the load and the resistors take is then both called "the load".</remarks>
public static partial class LoadWithEmitterResistor
{
    private const string Source = "C. K. Alexander & M. N. O. Sadiku, Fundamentals of Electric Circuits, 5th ed., ch. 9: impedances in series";

    /// <summary>Its magnitude: √((Z·cos φ + R_E/n)² + (Z·sin φ)²).</summary>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <param name="phi">Phase of the load, −90° to 90°; positive when the current lags.</param>
    /// <param name="R_E">Emitter resistor of one transistor; 0 Ω or more.</param>
    /// <param name="n">Pairs in parallel; 1 or more.</param>
    /// <returns>The magnitude of the impedance that the transistors see, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source, Symbol = "Z_s")]
    [RecordName("load-with-emitter-resistor.magnitude")]
    public static ElectricResistance Magnitude(ElectricResistance Z, Angle phi, ElectricResistance R_E, int n)
    {
        Guard.Positive(Z);
        Guard.Between(phi, -90.deg, 90.deg, hint: Phase90);
        Guard.NotNegative(R_E);
        Guard.Positive(n);
        var R = Z * Cos(phi) + R_E / n;
        var X = Z * Sin(phi);
        return Sqrt(R * R + X * X);
    }

    /// <summary>Its phase: nearer to zero than the load's own.</summary>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <param name="phi">Phase of the load, −90° to 90°; positive when the current lags.</param>
    /// <param name="R_E">Emitter resistor of one transistor; 0 Ω or more.</param>
    /// <param name="n">Pairs in parallel; 1 or more.</param>
    /// <returns>The phase of the impedance that the transistors see, in degrees.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source, Symbol = "phi_s")]
    [RecordName("load-with-emitter-resistor.phase")]
    public static Angle Phase(ElectricResistance Z, Angle phi, ElectricResistance R_E, int n)
    {
        Guard.Positive(Z);
        Guard.Between(phi, -90.deg, 90.deg, hint: Phase90);
        Guard.NotNegative(R_E);
        Guard.Positive(n);
        var R = Z * Cos(phi) + R_E / n;
        var X = Z * Sin(phi);
        return ArcTan(X / R);
    }

    internal const string Phase90 = "A load that takes power has a phase within ±90°; beyond it, it would drive the amplifier.";
}
