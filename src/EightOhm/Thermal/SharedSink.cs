using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Thermal;

/// <summary>Equal devices on one sink, which other heat may warm as well.</summary>
/// <remarks>The sink carries all the heat; junction to case and case to sink carry one device's share each. The sink is taken
/// as one temperature: devices in its middle run warmer than that.</remarks>
public static partial class SharedSink
{
    private const string Source = "Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 14, one chain a device onto a common sink";

    /// <summary>Junction temperature of each device: T_a + (P + P_other)·θ_SA + P/n·(θ_JC + θ_CS).</summary>
    /// <param name="T_a">Air at the sink; above 0 K.</param>
    /// <param name="P">Heat of the n devices together; 0 W or more.</param>
    /// <param name="n">Number of devices that share P equally; 1 or more.</param>
    /// <param name="P_other">All other heat on the same sink; 0 W or more.</param>
    /// <param name="theta_JC">Junction to case of one device; 0 K/W or more.</param>
    /// <param name="theta_CS">Case to sink of one device, its insulator; 0 K/W or more.</param>
    /// <param name="theta_SA">Sink to air; 0 K/W or more.</param>
    /// <returns>The junction temperature of each device, in °C.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>SharedSink.Junction(40.degC, 80.W, 4, 10.W, 0.83.K_per_W, 0.5.K_per_W, 0.5.K_per_W)   // 111.6 °C</code></example>
    [Formula(Source, Symbol = "T_J")]
    [RecordName("shared-sink.junction")]
    public static Temperature Junction(Temperature T_a, Power P, int n, Power P_other, ThermalResistance theta_JC, ThermalResistance theta_CS, ThermalResistance theta_SA)
    {
        Guard.Positive(T_a);
        Guard.NotNegative(P);
        Guard.Positive(n);
        Guard.NotNegative(P_other);
        Guard.NotNegative(theta_JC);
        Guard.NotNegative(theta_CS);
        Guard.NotNegative(theta_SA);
        var rise_sink = (P + P_other) * theta_SA;
        var rise_device = P / n * (theta_JC + theta_CS);
        return T_a + rise_sink + rise_device;
    }

    /// <summary>The sink that a junction limit allows: (T_J − T_a − P/n·(θ_JC + θ_CS))/(P + P_other).</summary>
    /// <param name="T_J">Junction limit.</param>
    /// <param name="T_a">Air at the sink; below the limit.</param>
    /// <param name="P">Heat of the n devices together; greater than 0 W.</param>
    /// <param name="n">Number of devices that share P equally; 1 or more.</param>
    /// <param name="P_other">All other heat on the same sink; 0 W or more.</param>
    /// <param name="theta_JC">Junction to case of one device; 0 K/W or more.</param>
    /// <param name="theta_CS">Case to sink of one device, its insulator; 0 K/W or more.</param>
    /// <returns>The largest resistance, sink to ambient, in K/W.</returns>
    /// <exception cref="ArgumentOutOfRangeException">No sink can do it, or an input is out of range.</exception>
    /// <example><code>SharedSink.AllowedSink(125.degC, 40.degC, 80.W, 4, 10.W, 0.83.K_per_W, 0.5.K_per_W)   // 0.6489 K/W</code></example>
    [Formula(Source, Symbol = "theta_SA")]
    [RecordName("shared-sink.allowed-sink")]
    public static ThermalResistance AllowedSink(Temperature T_J, Temperature T_a, Power P, int n, Power P_other, ThermalResistance theta_JC, ThermalResistance theta_CS)
    {
        Guard.Positive(P);
        Guard.Positive(n);
        Guard.NotNegative(P_other);
        Guard.NotNegative(theta_JC);
        Guard.NotNegative(theta_CS);
        Guard.Between(T_a, default, T_J, hint: "The air must be cooler than the junction limit.");
        Guard.NotNegative(T_J - T_a - P / n * (theta_JC + theta_CS), "the rise left for the sink", "No sink can be this good: spread the heat over more devices, or use devices or insulators of a lower resistance.");
        var rise_device = P / n * (theta_JC + theta_CS);
        return (T_J - T_a - rise_device) / (P + P_other);
    }
}
