using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Thermal;

/// <summary>A bought sink whose datasheet tells its resistance at one rise: in still air it is better at a higher rise and worse at a lower one.</summary>
/// <remarks>Natural convection takes heat as the 1.25th power of the rise, so the resistance goes as the rise to −1/4 and as the power to −1/5. A sheet that tells 0.40 K/W at 75 K has 0.47 K/W at 40 K.
/// Not for forced air, whose resistance stays the same. Vertical fins, free air around: a case or a stack is worse.</remarks>
public static partial class RatedSink
{
    private const string Source = "Aavid Thermalloy, temperature correction considerations: factors for extrusions in natural convection, 75 K to 30 K";

    /// <summary>Its resistance at another rise: θ_0·(ΔT_0/ΔT)^(1/4).</summary>
    /// <param name="theta_0">Resistance as told, sink to air; greater than 0 K/W.</param>
    /// <param name="dT_0">The rise for which it is told, often 75 K; from 10 K to 120 K.</param>
    /// <param name="dT">The rise asked for; from 10 K to 120 K.</param>
    /// <returns>The resistance at that rise, in K/W.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source + "; the quarter-power law of laminar natural convection", Symbol = "theta_SA")]
    [RecordName("rated-sink.at-rise")]
    public static ThermalResistance AtRise(ThermalResistance theta_0, TemperatureDelta dT_0, TemperatureDelta dT)
    {
        Guard.Positive(theta_0);
        Guard.Between(dT_0, 10.K, 120.K, hint: "Outside the law is not known to hold.");
        Guard.Between(dT, 10.K, 120.K, hint: "Outside the law is not known to hold.");
        return Pow(dT_0 / dT, 0.25) * theta_0;
    }

    /// <summary>Its rise at a power: ΔT_0·(P·θ_0/ΔT_0)^(4/5).</summary>
    /// <param name="theta_0">Resistance as told, sink to air; greater than 0 K/W.</param>
    /// <param name="dT_0">The rise for which it is told; from 10 K to 120 K.</param>
    /// <param name="P">All heat on the sink; greater than 0 W, and such that the rise is from 10 K to 120 K.</param>
    /// <returns>The temperature rise, in K.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source + "; solved for the rise", Symbol = "dT_s")]
    [RecordName("rated-sink.rise")]
    public static TemperatureDelta Rise(ThermalResistance theta_0, TemperatureDelta dT_0, Power P)
    {
        Guard.Positive(theta_0);
        Guard.Between(dT_0, 10.K, 120.K, hint: "Outside the law is not known to hold.");
        Guard.Positive(P);
        Guard.Between(Pow(P * theta_0 / dT_0, 0.8) * dT_0, 10.K, 120.K, "the rise of the sink", "Outside the law is not known to hold: take another sink, or a plate-fin one from its dimensions.");
        var x = P * theta_0 / dT_0;
        return Pow(x, 0.8) * dT_0;
    }

    /// <summary>Its resistance at a power: θ_0·(ΔT_0/(P·θ_0))^(1/5).</summary>
    /// <param name="theta_0">Resistance as told, sink to air; greater than 0 K/W.</param>
    /// <param name="dT_0">The rise for which it is told; from 10 K to 120 K.</param>
    /// <param name="P">All heat on the sink; greater than 0 W, and such that the rise is from 10 K to 120 K.</param>
    /// <returns>The resistance at that power, in K/W.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>RatedSink.AtPower(0.5.K_per_W, 60.K, 30.W)   // 0.6598 K/W</code></example>
    [Formula(Source + "; solved for the rise, over the power", Symbol = "theta_SA")]
    [RecordName("rated-sink.at-power")]
    public static ThermalResistance AtPower(ThermalResistance theta_0, TemperatureDelta dT_0, Power P) => Rise(theta_0, dT_0, P) / P;
}
