using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Constants;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Thermal;

/// <summary>What a sink's base adds because the heat enters it over a small area: the base under the device is hotter than its mean.</summary>
/// <remarks>A device in the middle of a plate of its own, both taken as circles of their areas, heat entering evenly. It comes on top of the sink's own resistance, which is told
/// for heat spread evenly. For several devices give each its share of the base and n times the sink's resistance. Within 9 % of the exact series over the range that is enforced.</remarks>
public static partial class SpreadingResistance
{
    private const string Source = "S. Lee, S. Song, V. Au & K. P. Moran, Constriction/spreading resistance model for electronic packaging, Proc. 4th ASME/JSME Thermal Engineering Joint Conf., vol. 4 (1995), pp. 199–206";

    /// <summary>From the hottest place under the device to the mean of the base: (1 − √(A_s/A_p))·φ/(k·√(π·A_s)), φ = (tanh(t/δ) + B)/(1 + B·tanh(t/δ)).</summary>
    /// <param name="A_s">Area over which the heat enters, the device's metal; from 1 % to 25 % of A_p.</param>
    /// <param name="t">Thickness of the base; at least a tenth of the radius of a circle of area A_p.</param>
    /// <param name="A_p">Area of the base that serves this device; greater than 0 m².</param>
    /// <param name="k">Conductivity of the base; greater than 0 W/(m·K).</param>
    /// <param name="R_0">From the base's other side to the air, for this area; greater than 0 K/W, and no less than the base's own 1/(k·√(π·A_p)).</param>
    /// <returns>K/W, to be added to the sink's.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is outside the range that was compared with the exact series.</exception>
    [Formula(Source, Symbol = "theta_sp")]
    [RecordName("spreading-resistance.of")]
    public static ThermalResistance Of(Area A_s, Length t, Area A_p, ThermalConductivity k, ThermalResistance R_0)
    {
        Guard.Positive(A_p);
        Guard.Positive(k);
        Guard.Between(A_s / A_p, 0.01, 0.25, "the device's share of the base's area, A_s/A_p", "A smaller share needs a plate of its own in between; a larger one spreads hardly at all.");
        Guard.Between(t / Sqrt(A_p), 0.1 / Sqrt(pi), 1e3, "the thickness of the base over the root of its area, t/√A_p", "A thinner base is a fin of its own: the formula does not hold for it.");
        Guard.Between(R_0 / (Sqrt(A_p) / k / A_p), 1 / Sqrt(pi), 1e9, "the sink's resistance over the base's own, R_0·k·√A_p", "A sink as good as that is not air-cooled.");
        var a_s = Sqrt(A_s);
        var a_p = Sqrt(A_p);
        var delta = a_p / (a_p / a_s + pi * Sqrt(pi));
        var B = R_0 / (delta / k / A_p);
        var e = Exp(-(2 * (t / delta)));
        var T_h = (1 - e) / (1 + e);
        var phi = (T_h + B) / (1 + B * T_h);
        return (1 - a_s / a_p) * phi / Sqrt(pi) * (a_s / k / A_s);
    }
}
