using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.OutputStages;

public static partial class ClassB
{
    private const string PeakSource = "derived: V²/Z·(1 − sin θ)·sin(θ − φ), largest over the angle θ of the output; resistive, V²/(4·Z): Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 14";

    /// <summary>The greatest instantaneous heat of one side (all its n transistors together) at full swing: (1 − sin(30° − 2φ/3))·sin(30° + φ/3)·V²/Z.</summary>
    /// <remarks>No lower level has a higher peak. With emitter resistors put in <see cref="LoadWithEmitterResistor"/>: the result is then exact and without the
    /// resistors' heat. A quarter of V² over this is the resistor that would stress the side as much.</remarks>
    /// <param name="V">One rail (not rail to rail); greater than 0 V.</param>
    /// <param name="Z">Magnitude of the load that the transistors see; greater than 0 Ω.</param>
    /// <param name="phi">Its phase, −90° to 90°; either sign stresses the same.</param>
    /// <returns>The power dissipation of one side, instantaneous peak, in W.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(PeakSource, Symbol = "p_max")]
    [RecordName("class-b.peak-of-side")]
    public static Power PeakOfSide(ElectricPotential V, ElectricResistance Z, Angle phi)
    {
        Guard.Positive(V);
        Guard.Positive(Z);
        Guard.Between(phi, -90.deg, 90.deg, hint: LoadWithEmitterResistor.Phase90);
        var a = Sin(phi) < 0 ? -phi : phi;
        return (1 - Sin(30.deg - 2 * a / 3)) * Sin(30.deg + a / 3) * (V * V / Z);
    }

    /// <summary>Where the output (emitter resistors' drop included) stands at that moment: V·sin(30° − 2φ/3) towards the side's own rail; negative past the middle.</summary>
    /// <remarks>Half the rail for a resistor, 0 V at 45°, beyond the middle above 45°: then the transistor has more than its rail across it.</remarks>
    /// <param name="V">One rail (not rail to rail); greater than 0 V.</param>
    /// <param name="phi">Phase of the load that the transistors see, −90° to 90°.</param>
    /// <returns>The voltage at that instant, from the middle, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(PeakSource, Symbol = "v_o")]
    [RecordName("class-b.output-at-peak")]
    public static ElectricPotential OutputAtPeak(ElectricPotential V, Angle phi)
    {
        Guard.Positive(V);
        Guard.Between(phi, -90.deg, 90.deg, hint: LoadWithEmitterResistor.Phase90);
        var a = Sin(phi) < 0 ? -phi : phi;
        return Sin(30.deg - 2 * a / 3) * V;
    }
}
