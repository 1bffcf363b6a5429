using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Devices;

/// <summary>How far the standing current of a transistor moves with its leakage, its V_BE and its gain: the stability factors of its bias.</summary>
/// <remarks>Bias of a voltage through R_B (a divider's two resistors in parallel) to the base, R_E in the emitter. Source: Boylestad &amp; Nashelsky, Electronic Devices
/// and Circuit Theory, 11th ed., sec. 4.19; there with β for β + 1.</remarks>
public static partial class BiasStability
{
    private const string Source = "R. L. Boylestad & L. Nashelsky, Electronic Devices and Circuit Theory, 11th ed., sec. 4.19: bias stabilization";

    /// <summary>Change of collector current for a change of leakage: (h_FE + 1)·(R_B + R_E)/(R_B + (h_FE + 1)·R_E). From 1 (good) to h_FE + 1.</summary>
    /// <param name="h_FE">Current gain; 1 or more.</param>
    /// <param name="R_B">Resistance seen by the base; 0 Ω or more.</param>
    /// <param name="R_E">Resistance in the emitter; with R_B greater than 0 Ω.</param>
    /// <returns>A/A.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source, Symbol = "S")]
    [RecordName("bias-stability.for-leakage")]
    public static double ForLeakage(double h_FE, ElectricResistance R_B, ElectricResistance R_E)
    {
        Guard.Between(h_FE, 1, 1e9);
        Guard.NotNegative(R_B);
        Guard.NotNegative(R_E);
        Guard.Positive(R_B + R_E, "the resistance of base and emitter together", "Without any resistance a voltage at the base sets no current.");
        return (h_FE + 1) * (R_B + R_E) / (R_B + (h_FE + 1) * R_E);
    }

    /// <summary>Change of collector current for a change of V_BE: −h_FE/(R_B + (h_FE + 1)·R_E).</summary>
    /// <param name="h_FE">Current gain; 1 or more.</param>
    /// <param name="R_B">Resistance seen by the base; 0 Ω or more.</param>
    /// <param name="R_E">Resistance in the emitter; with R_B greater than 0 Ω.</param>
    /// <returns>A/V, negative: a lower V_BE is a higher current.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source, Symbol = "S_V")]
    [RecordName("bias-stability.for-base-emitter-voltage")]
    public static ElectricConductance ForBaseEmitterVoltage(double h_FE, ElectricResistance R_B, ElectricResistance R_E)
    {
        Guard.Between(h_FE, 1, 1e9);
        Guard.NotNegative(R_B);
        Guard.NotNegative(R_E);
        Guard.Positive(R_B + R_E, "the resistance of base and emitter together", "Without any resistance a voltage at the base sets no current.");
        return -h_FE / (R_B + (h_FE + 1) * R_E);
    }

    /// <summary>The collector current with another gain: I_C·(h_2/h_1)·(R_B + (h_1 + 1)·R_E)/(R_B + (h_2 + 1)·R_E).</summary>
    /// <param name="h_1">Current gain at which I_C was; 1 or more.</param>
    /// <param name="I_C">The collector current with it; greater than 0 A.</param>
    /// <param name="h_2">The other gain; 1 or more.</param>
    /// <param name="R_B">Resistance seen by the base; 0 Ω or more.</param>
    /// <param name="R_E">Resistance in the emitter; with R_B greater than 0 Ω.</param>
    /// <returns>A.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source + "; from the loop of base and emitter, of any size", Symbol = "I_C2")]
    [RecordName("bias-stability.current-for-gain")]
    public static ElectricCurrent CurrentForGain(double h_1, ElectricCurrent I_C, double h_2, ElectricResistance R_B, ElectricResistance R_E)
    {
        Guard.Between(h_1, 1, 1e9);
        Guard.Positive(I_C);
        Guard.Between(h_2, 1, 1e9);
        Guard.NotNegative(R_B);
        Guard.NotNegative(R_E);
        Guard.Positive(R_B + R_E, "the resistance of base and emitter together", "Without any resistance a voltage at the base sets no current.");
        var before = R_B + (h_1 + 1) * R_E;
        var after = R_B + (h_2 + 1) * R_E;
        return h_2 / h_1 * (before / after) * I_C;
    }

    /// <summary>How far leakage and V_BE together move the collector current: S·ΔI_CBO + S_V·ΔV_BE.</summary>
    /// <remarks>For a rise ΔT: ΔI_CBO by <see cref="Leakage.At"/>, ΔV_BE = −tc·ΔT. First order: for large changes solve the stage. The change with gain, which is of any size,
    /// is <see cref="CurrentForGain"/>. A base resistor from the collector (collector feedback) has the same factors with R_B from collector to base and R_C + R_E for R_E.</remarks>
    /// <param name="S">By <see cref="ForLeakage"/>; 1 or more.</param>
    /// <param name="dI_CBO">Change of the leakage.</param>
    /// <param name="S_V">By <see cref="ForBaseEmitterVoltage"/>; negative.</param>
    /// <param name="dV_BE">Change of V_BE; negative for a warmer junction.</param>
    /// <returns>A, of the collector current.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A factor is out of range.</exception>
    [Formula(Source, Symbol = "dI_C")]
    [RecordName("bias-stability.shift")]
    public static ElectricCurrent Shift(double S, ElectricCurrent dI_CBO, ElectricConductance S_V, ElectricPotential dV_BE)
    {
        Guard.InReach(dI_CBO);
        Guard.InReach(dV_BE);
        Guard.Between(S, 1, 1e9);
        Guard.NotNegative(-S_V, nameof(S_V), "A higher V_BE is a lower current: the factor is negative.");
        return S * dI_CBO + S_V * dV_BE;
    }
}
