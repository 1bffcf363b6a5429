using EightOhm.Explaining;
using EightOhm.Numerics;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Devices;

/// <content>What the rooms need of a transistor, derived from its card in one place.</content>
public sealed partial class Transistor
{
    private (double[] LnCurrents, double[] Gains)? gainLine;

    /// <summary>The average power dissipation that a case temperature allows: (T_j − T_C)/θ_JC, and never more than the rating.</summary>
    /// <param name="T_C">Case temperature; at most the junction limit.</param>
    /// <param name="T_j">Junction limit of the design; the maximum rated one when not given, and never above it.</param>
    /// <returns>W, of one device.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The case is hotter than the junction may be, or the limit is above the rating.</exception>
    [Worked("Derating.AllowedPower with the ratings of the device data")]
    public Power AllowedPower(Temperature T_C, Temperature? T_j = null)
    {
        var limit = Guard.Between(T_j ?? MaxJunctionTemperature, default, MaxJunctionTemperature, nameof(T_j), $"{Name} is rated to {QuantityFormat.Short(MaxJunctionTemperature)}.");
        return Derating.AllowedPower(MaxPowerDissipation, limit, T_C, JunctionToCase);
    }

    /// <summary>Base-emitter voltage at a current and a junction temperature, the drop in <see cref="InternalEmitterResistance"/> not in it.</summary>
    /// <param name="I">Collector current of one device; greater than 0 A.</param>
    /// <param name="T_j">Junction temperature; above 0 K.</param>
    /// <returns>V, a magnitude for either polarity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Worked("Junction.Voltage from the point and the drift in the device data")]
    public ElectricPotential BaseEmitterVoltageAt(ElectricCurrent I, Temperature T_j) =>
        Junction.Voltage(BaseEmitterVoltage, BaseEmitterCurrent, ReferenceTemperature, BaseEmitterDrift, I, T_j);

    /// <summary>Saturation current at a junction temperature.</summary>
    /// <param name="T_j">Junction temperature; above 0 K.</param>
    /// <returns>A, of one device.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is not above absolute zero, or so hot that nothing is left of V_BE.</exception>
    [Worked("Junction.SaturationCurrent from the point in the device data")]
    public ElectricCurrent SaturationCurrentAt(Temperature T_j) =>
        Junction.SaturationCurrent(BaseEmitterVoltageAt(BaseEmitterCurrent, T_j), BaseEmitterCurrent, T_j);

    /// <summary>How much the base-emitter voltage falls for a kelvin at a current, as a positive value.</summary>
    /// <param name="I">Collector current of one device; greater than 0 A.</param>
    /// <returns>V/K, a positive value.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The current is not positive.</exception>
    [Worked("Junction.Drift from the point in the device data")]
    public VoltageDrift DriftAt(ElectricCurrent I) => Junction.Drift(I, BaseEmitterDrift, BaseEmitterCurrent);

    /// <summary>The current gain at a current: straight between the table's points over the logarithm of the current.</summary>
    /// <param name="I_C">Collector current; within the table.</param>
    /// <returns>h_FE, the least that the card promises.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The table does not reach there.</exception>
    [Worked("read from the current-gain table of the device data: straight lines over the logarithm of the current")]
    public double GainAt(ElectricCurrent I_C)
    {
        Guard.Between(I_C, GainTable[0].Current, GainTable[^1].Current, hint: "The card's table of h_FE does not reach there.");
        return GainFrom(I_C.Amperes);
    }

    /// <summary>The static large-signal model at a junction temperature, its current gain fitted up to a current.</summary>
    /// <remarks>h_FE0/(1 + I/I_k) takes the greatest gain of the table up to that current for h_FE0 and passes through the table's gain at it. Where the gain does not fall up to there, it is constant.</remarks>
    /// <param name="T_j">Junction temperature; above 0 K.</param>
    /// <param name="upTo">The greatest collector current of one device that will flow; within the table, its end when not given.</param>
    /// <returns>Saturation current, series resistance, gain and its droop.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The table does not reach there, or a temperature is impossible.</exception>
    [Worked("the exponential law through the point in the device data, current gain fitted to its table")]
    public LargeSignalModel LargeSignal(Temperature T_j, ElectricCurrent? upTo = null)
    {
        var top = UnitMath.Max(upTo ?? GainTable[^1].Current, GainTable[0].Current);
        var there = GainAt(top);
        var most = GainTable.Where(p => p.Current < top).Select(p => p.Gain).Append(there).Max();
        return new LargeSignalModel
        {
            SaturationCurrent = SaturationCurrentAt(T_j),
            InternalResistance = InternalEmitterResistance,
            Junction = T_j,
            CurrentGain = most,
            KneeCurrent = most > there ? top * (there / (most - there)) : null,
        };
    }

    // Below the table its first gain holds: so little base current flows there that it decides nothing.
    internal double GainFrom(double amperes)
    {
        var (currents, gains) = gainLine ??= ([.. GainTable.Select(p => Math.Log(p.Current.Amperes))], [.. GainTable.Select(p => p.Gain)]);
        return amperes > GainTable[0].Current.Amperes ? Interpolation.Linear(currents, gains, Math.Log(amperes)) : gains[0];
    }
}
