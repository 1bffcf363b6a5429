using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Thermal;

/// <content>What the base adds under its devices.</content>
public sealed partial record PlateFinSink
{
    /// <summary>From the hottest place under one of n equal devices to the mean of the base, in addition to the sink's own resistance at this heat.</summary>
    /// <remarks>Each device is taken in the middle of its n-th part of the base, and with n times the sink's resistance behind it. At an edge it is hotter. A base with
    /// a thickness below its correlation's range is refused: use a spreader plate.</remarks>
    /// <param name="A_s">Area over which one device's heat enters, its metal; from 1 % to 25 % of its part of the base.</param>
    /// <param name="n">Equal devices on the base; 1 or more.</param>
    /// <param name="t">Thickness of the base; greater than 0 m.</param>
    /// <param name="P">All heat on the sink; greater than 0 W.</param>
    /// <param name="T_air">The air and the walls around; above 0 K.</param>
    /// <returns>K/W of one device: it multiplies one device's heat, as θ_CS does.</returns>
    /// <example><code>var theta_sp = sink.SpreadingUnder(3.cm2, 6, 10.mm, 120.W, 35.degC);</code></example>
    /// <exception cref="ArgumentOutOfRangeException">An input is outside the correlations' range.</exception>
    [Worked("SpreadingResistance.Of with the n-th part of the base and n times the sink's resistance at this heat")]
    public ThermalResistance SpreadingUnder(Area A_s, int n, Length t, Power P, Temperature T_air)
    {
        Guard.Positive(n);
        Guard.Positive(t);
        return SpreadingResistance.Of(A_s, t, Area.FromSquareMeters(Width.Meters * Height.Meters / n), Conductivity, n * At(P, T_air).Resistance);
    }
}
