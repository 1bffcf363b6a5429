using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Constants;

namespace EightOhm.OutputNetworks;

/// <summary>A resistor and a capacitor in series across the output: a load for the amplifier where the loudspeaker and its cable are none.</summary>
public static partial class Zobel
{
    private const string Source = "C. K. Alexander & M. N. O. Sadiku, Fundamentals of Electric Circuits, 5th ed., ch. 11: average power in a series circuit";

    /// <summary>Power dissipation in the resistor: V²·R/(R² + X²), with X = 1/(2π·f·C).</summary>
    /// <remarks>At full level it rises with the square of the frequency, and an amplifier that oscillates at its full swing burns the resistor: V²/R.</remarks>
    /// <param name="V_rms">Voltage across the network (rms, not peak); 0 V or more.</param>
    /// <param name="f">Frequency; greater than 0 Hz.</param>
    /// <param name="R">The resistor; greater than 0 Ω.</param>
    /// <param name="C">The capacitor; greater than 0 F.</param>
    /// <returns>The power dissipation, in W.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>Zobel.Dissipation(28.28.V, 20.kHz, 10.Ohm, 100.nF)   // 1.243 W</code></example>
    [Formula(Source, Symbol = "P_Z")]
    [RecordName("zobel.dissipation")]
    public static Power Dissipation(ElectricPotential V_rms, Frequency f, ElectricResistance R, ElectricCapacitance C)
    {
        Guard.NotNegative(V_rms);
        Guard.Positive(f);
        Guard.Positive(R);
        Guard.Positive(C);
        var X = 1 / (2 * pi * f * C);
        var x = X / R;
        return V_rms * V_rms / R / (1 + x * x);
    }

    /// <summary>The frequency from which the network loads the output as its resistor: 1/(2π·R·C).</summary>
    /// <param name="R">The resistor; greater than 0 Ω.</param>
    /// <param name="C">The capacitor; greater than 0 F.</param>
    /// <returns>The corner, in Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    /// <example><code>Zobel.Corner(10.Ohm, 100.nF)   // 159.2 kHz</code></example>
    [Formula(Source + "; R = X", Symbol = "f_Z")]
    [RecordName("zobel.corner")]
    public static Frequency Corner(ElectricResistance R, ElectricCapacitance C)
    {
        Guard.Positive(R);
        Guard.Positive(C);
        return 1 / (2 * pi * R * C);
    }

    /// <summary>The capacitor that makes a voice coil's inductance look like a resistance: L_e/R².</summary>
    /// <param name="L_e">Inductance of the voice coil; greater than 0 H.</param>
    /// <param name="R">The resistor of the network: about 1.25 times the voice coil's; greater than 0 Ω.</param>
    /// <returns>The capacitor, in F.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    /// <example><code>Zobel.EqualizerCapacitor(1.87.mH, 8.125.Ohm)   // 28.33 µF</code></example>
    [Formula("Dayton Audio, BR-1 manual, p. 4: C = L_e/R², R = 1.25·R_e", Symbol = "C_Z")]
    [RecordName("zobel.equalizer-capacitor")]
    public static ElectricCapacitance EqualizerCapacitor(ElectricInductance L_e, ElectricResistance R)
    {
        Guard.Positive(L_e);
        Guard.Positive(R);
        var tau = L_e / R;
        return tau / R;
    }
}
