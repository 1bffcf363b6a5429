using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Constants;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Devices;

/// <summary>The exponential base-emitter junction: thermal voltage, V_BE and saturation current, and how they move with temperature.</summary>
/// <remarks>Emission coefficient 1, current far above the saturation current, no series resistance in it. Source: Sedra &amp; Smith, Microelectronic Circuits, 5th ed., ch. 3 and 5.</remarks>
public static partial class Junction
{
    private const string Source = "Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 5";

    /// <summary>Thermal voltage: k·T/q.</summary>
    /// <param name="T">Junction temperature; above 0 K.</param>
    /// <returns>V; 25.7 mV at 25 °C.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is not above absolute zero.</exception>
    [Formula("Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 3", Symbol = "V_T")]
    [RecordName("emitter-bias.thermal-voltage")]
    public static ElectricPotential ThermalVoltage(Temperature T)
    {
        Guard.Positive(T);
        return k * T / q;
    }

    /// <summary>V_BE at a current: V_T·ln(I/I_s).</summary>
    /// <param name="I">Emitter (nearly collector) current of one device; greater than the saturation current.</param>
    /// <param name="V_T">Thermal voltage at the junction's temperature; greater than 0 V.</param>
    /// <param name="I_s">Saturation current at that temperature; greater than 0 A.</param>
    /// <returns>V, of the junction alone, without the drop in its series resistance.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source, Symbol = "V_BE")]
    [RecordName("junction.voltage")]
    public static ElectricPotential Voltage(ElectricCurrent I, ElectricPotential V_T, ElectricCurrent I_s)
    {
        Guard.Positive(I_s);
        Guard.Positive(V_T);
        Guard.Positive(I - I_s, nameof(I), "A conducting junction carries far more than its saturation current.");
        return V_T * Ln(I / I_s);
    }

    /// <summary>The voltage of n equal junctions in series: n·V_T·ln(I/I_s).</summary>
    /// <param name="n">Junctions; 1 or more.</param>
    /// <param name="I">Current through each; greater than the saturation current.</param>
    /// <param name="V_T">Thermal voltage; greater than 0 V.</param>
    /// <param name="I_s">Saturation current of each; greater than 0 A.</param>
    /// <returns>V, of all together.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source, Symbol = "V_BB")]
    [RecordName("junction.in-series")]
    public static ElectricPotential InSeries(int n, ElectricCurrent I, ElectricPotential V_T, ElectricCurrent I_s)
    {
        Guard.Positive(n);
        return n * Voltage(I, V_T, I_s);
    }

    /// <summary>The saturation current behind a V_BE read at a current: I·e^(−V_BE/V_T).</summary>
    /// <param name="V_BE">Read at that current; greater than 0 V.</param>
    /// <param name="I">The current; greater than 0 A.</param>
    /// <param name="T">Junction temperature of the reading; above 0 K.</param>
    /// <returns>A, at that temperature; it roughly doubles every 5 K.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Formula(Source, Symbol = "I_s")]
    [RecordName("junction.saturation-current")]
    public static ElectricCurrent SaturationCurrent(ElectricPotential V_BE, ElectricCurrent I, Temperature T)
    {
        Guard.Positive(V_BE);
        Guard.Positive(I);
        var V_T = ThermalVoltage(T);
        return I * Exp(-(V_BE / V_T));
    }

    /// <summary>V_BE at another current and temperature than it was read at: V_0 − tc·(T − T_0) + V_T·ln(I/I_0).</summary>
    /// <param name="V_0">V_BE as read; greater than 0 V.</param>
    /// <param name="I_0">The current of the reading; greater than 0 A.</param>
    /// <param name="T_0">The junction temperature of the reading; above 0 K.</param>
    /// <param name="tc">How much V_BE falls for a kelvin at I_0, as a positive value; greater than 0 V/K.</param>
    /// <param name="I">The current asked for; greater than 0 A.</param>
    /// <param name="T">The junction temperature asked for; above 0 K.</param>
    /// <returns>V, of the junction alone.</returns>
    /// <remarks>The fall is taken as straight at I_0, which silicon keeps within a few millivolts from 0 to 150 °C; at other currents it follows, see <see cref="Drift"/>.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Formula(Source + ": V_BE falls by about 2 mV/K at a constant current", Symbol = "V_BE")]
    [RecordName("junction.voltage-at")]
    public static ElectricPotential Voltage(ElectricPotential V_0, ElectricCurrent I_0, Temperature T_0, VoltageDrift tc, ElectricCurrent I, Temperature T)
    {
        Guard.Positive(V_0);
        Guard.Positive(I_0);
        Guard.Positive(T_0);
        Guard.Positive(tc);
        Guard.Positive(I);
        var V_T = ThermalVoltage(T);
        return V_0 - tc * (T - T_0) + V_T * Ln(I / I_0);
    }

    /// <summary>How much V_BE falls for a kelvin at another current than tc was read at: tc − (k/q)·ln(I/I_0).</summary>
    /// <param name="I">The current asked for; greater than 0 A.</param>
    /// <param name="tc">The fall at I_0, as a positive value; greater than 0 V/K.</param>
    /// <param name="I_0">The current of the reading; greater than 0 A.</param>
    /// <returns>V/K, as a positive value: 0.2 mV/K less for a tenfold current.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Formula("derived: the slope of V_BE over T at the current I", Symbol = "tc_I")]
    [RecordName("junction.drift")]
    public static VoltageDrift Drift(ElectricCurrent I, VoltageDrift tc, ElectricCurrent I_0)
    {
        Guard.Positive(I);
        Guard.Positive(tc);
        Guard.Positive(I_0);
        var V_1K = k * 1.K / q;
        return tc - Ln(I / I_0) * (V_1K / 1.K);
    }
}
