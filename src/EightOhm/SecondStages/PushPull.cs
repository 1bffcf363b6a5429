using EightOhm.Devices;
using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.SecondStages;

/// <summary>The other topology: two second stages, one to each rail, that work against each other; no current source.</summary>
/// <remarks>It needs two first stages, or one with two outputs. Both slopes slew alike; even harmonics of the two stages cancel as far as they are alike; the standing current hangs on both
/// first stages and must be held.</remarks>
public static partial class PushPull
{
    private const string Source = "Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 14: complementary push-pull, class A";

    /// <summary>The most current that it gives either way while both sides conduct: 2·I.</summary>
    /// <param name="I">Standing current of each side; greater than 0 A.</param>
    /// <returns>The current, in A. A stage with a current source gives I the one way.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The current is not positive.</exception>
    [Formula(Source, Symbol = "I_max")]
    [RecordName("push-pull.class-a-current")]
    public static ElectricCurrent ClassACurrent(ElectricCurrent I)
    {
        Guard.Positive(I);
        return 2 * I;
    }

    /// <summary>Transconductance of both sides together: 2/(V_T/I + R_E).</summary>
    /// <param name="I">Standing current of each side; greater than 0 A.</param>
    /// <param name="R_E">Emitter resistor of each side; 0 Ω or more.</param>
    /// <param name="T_J">Junction temperature; above 0 K.</param>
    /// <returns>The transconductance at rest, in S.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source, Symbol = "g_m2")]
    [RecordName("push-pull.transconductance")]
    public static ElectricConductance Transconductance(ElectricCurrent I, ElectricResistance R_E, Temperature T_J)
    {
        var g = StageGain.Transconductance(I, R_E, T_J);
        return 2 * g;
    }
}
