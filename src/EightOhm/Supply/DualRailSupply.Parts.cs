using EightOhm.Devices;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Supply;

/// <content>The supply as its parts make it.</content>
public sealed partial class DualRailSupply
{
    /// <summary>A supply from the cards of its parts: the emf by the turns and the mains, the copper by the nameplate, drop and slope of the diode, capacitance and series resistance of the reservoirs.</summary>
    /// <param name="transformer">The transformer; at another voltage than its own the emf moves, the copper stays.</param>
    /// <param name="bridge">The one bridge of both rails.</param>
    /// <param name="reservoir">One reservoir capacitor.</param>
    /// <param name="perRail">How many of them stand in parallel on each rail; 1 or more.</param>
    /// <param name="line">Mains, rms; greater than 0 V.</param>
    /// <param name="mains">Mains frequency; greater than 0 Hz.</param>
    /// <param name="wiring">In series with each half-winding, beside the diode; 0 Ω or more.</param>
    /// <returns>The supply at this mains; of another deviation by <see cref="AtMains"/>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>var dual = DualRailSupply.Of(transformer, bridge, reservoir, n_res, V_line, f_mains, R_wire);</code></example>
    public static DualRailSupply Of(MainsTransformer transformer, RectifierBridge bridge, ReservoirCapacitor reservoir, int perRail, ElectricPotential line, Frequency mains, ElectricResistance wiring)
    {
        ArgumentNullException.ThrowIfNull(transformer);
        ArgumentNullException.ThrowIfNull(bridge);
        ArgumentNullException.ThrowIfNull(reservoir);
        Guard.AtLeast(perRail, 1);
        return new DualRailSupply(new DualWinding(transformer), mains, bridge.Threshold, perRail * reservoir.Capacitance)
        {
            DiodeResistance = bridge.SlopeResistance + Guard.NotNegative(wiring),
            CapacitorEsr = reservoir.SeriesResistance / perRail,
        }.AtMains(Ratio.FromDecimalFractions((Guard.Positive(line) / transformer.Primary) - 1));
    }

    /// <summary>The same supply with reservoirs off nominal.</summary>
    /// <param name="factor">Capacitance over that of this supply, such as 0.8; greater than 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The factor is not positive.</exception>
    public DualRailSupply WithReservoirs(double factor) => WithReservoirs(Guard.Positive(factor) * Reservoir);

    /// <summary>The same supply with other reservoirs: what their tolerance makes of the rails.</summary>
    /// <param name="reservoir">On each rail; greater than 0 F.</param>
    /// <exception cref="ArgumentOutOfRangeException">The capacitance is not positive.</exception>
    public DualRailSupply WithReservoirs(ElectricCapacitance reservoir) => new(Half, Mains, HalfResistance, SharedResistance, Drop, reservoir)
    {
        CapacitorEsr = CapacitorEsr,
        DiodeResistance = DiodeResistance,
    };
}
