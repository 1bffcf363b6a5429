using EightOhm.Explaining;
using EightOhm.Noise;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Constants;
using static EightOhm.Quantities.Maths;

namespace EightOhm.InputStages;

/// <summary>An integrator that watches the output and feeds into the inverting input through a resistor, so that the mean of the output is nothing.</summary>
/// <remarks>It takes the place of a capacitor in the feedback divider. It must have the authority to undo what it is there for, and it winds up on a signal whose mean is not nothing.</remarks>
public static partial class DcServo
{
    private const string Source = "Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 2: the integrator; superposition at the inverting input";

    /// <summary>Gain with the servo's resistor in parallel with R_g: 1 + R_f/(R_g∥R_inj).</summary>
    /// <param name="R_f">From the output to the inverting input; greater than 0 Ω.</param>
    /// <param name="R_g">From the inverting input to ground; greater than 0 Ω.</param>
    /// <param name="R_inj">From the servo to the inverting input; greater than 0 Ω.</param>
    /// <returns>The closed-loop gain in the audio band.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    /// <example><code>DcServo.GainBeside(2.26.kOhm, 100.Ohm, 10.kOhm)   // 23.826</code></example>
    [Formula("Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 2", Symbol = "G")]
    [RecordName("dc-servo.gain-beside")]
    public static Gain GainBeside(ElectricResistance R_f, ElectricResistance R_g, ElectricResistance R_inj)
    {
        Guard.Positive(R_f);
        return Gain.FromRatio(1 + R_f / Parallel(R_g, R_inj));
    }

    /// <summary>The low corner that it makes: R_f/R_inj/(2π·R_i·C_i).</summary>
    /// <param name="R_i">Resistor of the integrator; greater than 0 Ω.</param>
    /// <param name="C_i">Capacitor of the integrator; greater than 0 F.</param>
    /// <param name="R_f">From the output to the inverting input; greater than 0 Ω.</param>
    /// <param name="R_inj">From the servo to the inverting input; greater than 0 Ω.</param>
    /// <returns>The −3 dB frequency of the amplifier's low end by the servo, in Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    /// <example><code>DcServo.Corner(1.MOhm, 220.nF, 2.26.kOhm, 10.kOhm)   // 163.5 mHz</code></example>
    [Formula(Source, Symbol = "f_sv")]
    [RecordName("dc-servo.corner")]
    public static Frequency Corner(ElectricResistance R_i, ElectricCapacitance C_i, ElectricResistance R_f, ElectricResistance R_inj)
    {
        Guard.Positive(R_i);
        Guard.Positive(C_i);
        Guard.Positive(R_f);
        Guard.Positive(R_inj);
        return R_f / R_inj / (2 * pi) / (R_i * C_i);
    }

    /// <summary>The capacitor of the integrator for a corner: R_f/R_inj/(2π·f·R_i).</summary>
    /// <param name="f">The corner wanted; greater than 0 Hz.</param>
    /// <param name="R_i">Resistor of the integrator; greater than 0 Ω.</param>
    /// <param name="R_f">From the output to the inverting input; greater than 0 Ω.</param>
    /// <param name="R_inj">From the servo to the inverting input; greater than 0 Ω.</param>
    /// <returns>The capacitor, in F.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Formula(Source, Symbol = "C_i")]
    [RecordName("dc-servo.capacitor-for")]
    public static ElectricCapacitance CapacitorFor(Frequency f, ElectricResistance R_i, ElectricResistance R_f, ElectricResistance R_inj)
    {
        Guard.Positive(f);
        Guard.Positive(R_i);
        Guard.Positive(R_f);
        Guard.Positive(R_inj);
        return R_f / R_inj / (2 * pi) * (1 / (R_i * f));
    }

    /// <summary>The offset at the input that it can undo at most: V_max·(R_f∥R_g)/(R_inj + R_f∥R_g).</summary>
    /// <param name="V_max">What the servo's output can reach, either way; greater than 0 V.</param>
    /// <param name="R_f">From the output to the inverting input; greater than 0 Ω.</param>
    /// <param name="R_g">From the inverting input to ground; greater than 0 Ω.</param>
    /// <param name="R_inj">From the servo to the inverting input; greater than 0 Ω.</param>
    /// <returns>At the inverting input, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    /// <example><code>DcServo.Authority(12.V, 2.26.kOhm, 100.Ohm, 10.kOhm)   // 113.8 mV</code></example>
    [Formula(Source, Symbol = "V_auth")]
    [RecordName("dc-servo.authority")]
    public static ElectricPotential Authority(ElectricPotential V_max, ElectricResistance R_f, ElectricResistance R_g, ElectricResistance R_inj)
    {
        Guard.Positive(V_max);
        Guard.Positive(R_inj);
        var R_p = Parallel(R_f, R_g);
        return V_max * (R_p / (R_inj + R_p));
    }

    /// <summary>What the servo's output stands at when it undoes an offset: V_os·(R_inj + R_f∥R_g)/(R_f∥R_g).</summary>
    /// <remarks>A meter of the input stage's health: it shows the base current.</remarks>
    /// <param name="V_os">The offset at the input; of either sign.</param>
    /// <param name="R_f">From the output to the inverting input; greater than 0 Ω.</param>
    /// <param name="R_g">From the inverting input to ground; greater than 0 Ω.</param>
    /// <param name="R_inj">From the servo to the inverting input; greater than 0 Ω.</param>
    /// <returns>At the servo's output, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A resistance is not positive.</exception>
    [Formula(Source, Symbol = "V_sv")]
    [RecordName("dc-servo.output-for")]
    public static ElectricPotential OutputFor(ElectricPotential V_os, ElectricResistance R_f, ElectricResistance R_g, ElectricResistance R_inj)
    {
        Guard.InReach(V_os);
        Guard.Positive(R_inj);
        var R_p = Parallel(R_f, R_g);
        return V_os * ((R_inj + R_p) / R_p);
    }

    /// <summary>The dc that a burst with a mean leaves at the output when it ends: V_m·t/(R_i·C_i)·R_f/R_inj.</summary>
    /// <remarks>For a burst short against the corner's time constant, and a servo that does not reach its limit.</remarks>
    /// <param name="V_m">Mean of the output during the burst; of either sign.</param>
    /// <param name="t">How long it lasts; 0 s or more.</param>
    /// <param name="R_i">Resistor of the integrator; greater than 0 Ω.</param>
    /// <param name="C_i">Capacitor of the integrator; greater than 0 F.</param>
    /// <param name="R_f">From the output to the inverting input; greater than 0 Ω.</param>
    /// <param name="R_inj">From the servo to the inverting input; greater than 0 Ω.</param>
    /// <returns>The offset at the output, which decays with the corner, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>DcServo.WindUp(1.V, 100.ms, 1.MOhm, 220.nF, 2.24.kOhm, 10.kOhm)   // 101.8 mV</code></example>
    [Formula(Source, Symbol = "V_wind")]
    [RecordName("dc-servo.wind-up")]
    public static ElectricPotential WindUp(ElectricPotential V_m, Duration t, ElectricResistance R_i, ElectricCapacitance C_i, ElectricResistance R_f, ElectricResistance R_inj)
    {
        Guard.InReach(V_m);
        Guard.NotNegative(t);
        Guard.Positive(R_i);
        Guard.Positive(C_i);
        Guard.Positive(R_f);
        Guard.Positive(R_inj);
        return t / (R_i * C_i) * (R_f / R_inj) * V_m;
    }

    /// <summary>What stays at the output with the servo: its own offset and what its bias current makes in its resistor, V_os + I_b·R_i.</summary>
    /// <param name="V_os">Offset voltage of the servo's amplifier, as a magnitude; 0 V or more.</param>
    /// <param name="I_b">Its input current; 0 A or more.</param>
    /// <param name="R_i">Resistor of the integrator; greater than 0 Ω.</param>
    /// <returns>At the amplifier's output, as a magnitude, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("S. Franco, Design with Operational Amplifiers and Analog Integrated Circuits, 3rd ed., ch. 5", Symbol = "V_rest")]
    [RecordName("dc-servo.left-at-output")]
    public static ElectricPotential LeftAtOutput(ElectricPotential V_os, ElectricCurrent I_b, ElectricResistance R_i)
    {
        Guard.NotNegative(V_os);
        Guard.NotNegative(I_b);
        Guard.Positive(R_i);
        return V_os + I_b * R_i;
    }

    /// <summary>The servo's noise at the input: √(e_op²·(1 + x²) + 4·k·T·R_i·x²)·(R_f∥R_g)/(R_inj + R_f∥R_g), x = 1/(2π·f·R_i·C_i).</summary>
    /// <remarks>Above the corner, where the integrator's noise is not yet undone by the loop around it. The noise of R_inj is not in it: it stands in parallel with R_g and belongs to the divider.</remarks>
    /// <param name="f">Frequency, above the corner; greater than 0 Hz.</param>
    /// <param name="e_op">Voltage noise of the servo's amplifier; 0 V/√Hz or more.</param>
    /// <param name="T">Temperature of the resistor; above 0 K.</param>
    /// <param name="R_i">Resistor of the integrator; greater than 0 Ω.</param>
    /// <param name="C_i">Capacitor of the integrator; greater than 0 F.</param>
    /// <param name="R_f">From the output to the inverting input; greater than 0 Ω.</param>
    /// <param name="R_g">From the inverting input to ground; greater than 0 Ω.</param>
    /// <param name="R_inj">From the servo to the inverting input; greater than 0 Ω.</param>
    /// <returns>The density at the input, rms, in V/√Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("S. Franco, Design with Operational Amplifiers and Analog Integrated Circuits, 3rd ed., ch. 7: noise of an integrator, divided by the resistors at the inverting input", Symbol = "e_sv")]
    [RecordName("dc-servo.noise-at-input")]
    public static VoltageNoiseDensity NoiseAtInput(Frequency f, VoltageNoiseDensity e_op, Temperature T, ElectricResistance R_i, ElectricCapacitance C_i, ElectricResistance R_f, ElectricResistance R_g, ElectricResistance R_inj)
    {
        Guard.Positive(f);
        Guard.NotNegative(e_op);
        Guard.Positive(R_i);
        Guard.Positive(C_i);
        Guard.Positive(R_inj);
        var x = 1 / (2 * pi * f * (R_i * C_i));
        var R_p = Parallel(R_f, R_g);
        var e_R = x * ThermalNoise.VoltageDensity(R_i, T);
        var e_A = Sqrt(1 + x * x) * e_op;
        return R_p / (R_inj + R_p) * Sqrt(e_A * e_A + e_R * e_R);
    }
}
