using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Thermal;

/// <summary>Heat that still air carries off: dimensionless numbers and published correlations, each with its range.</summary>
/// <remarks>Properties of air at the film temperature, see <see cref="Air"/>.</remarks>
public static partial class NaturalConvection
{
    private const string BarCohen = "A. Bar-Cohen & W. M. Rohsenow, Thermally optimum spacing of vertical, natural convection cooled, parallel plates, J. Heat Transfer 106 (1984)";

    /// <summary>Acceleration of free fall, 9.81 m/s², as the textbooks of heat transfer take it.</summary>
    [RecordName("natural-convection.g")]
    public static Acceleration g { get; } = Acceleration.FromMetersPerSecondSquared(9.81);

    /// <summary>Rayleigh number of a height: g·L/(ν/L)²·ΔT/T_f·Pr, which is g·ΔT·L³·Pr/(T_f·ν²).</summary>
    /// <param name="dT">Surface less air; greater than 0 K.</param>
    /// <param name="T_f">Film temperature, midway between both (its inverse is the expansion of an ideal gas); above 0 K.</param>
    /// <param name="L">Height; greater than 0 m.</param>
    /// <param name="nu">Kinematic viscosity of the air at that temperature; greater than 0 m²/s.</param>
    /// <param name="Pr">Prandtl number; greater than 0.</param>
    /// <returns>The Rayleigh number, a plain number.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Formula("Y. A. Çengel, Heat and Mass Transfer, sec. 9-2", Symbol = "Ra")]
    [RecordName("natural-convection.rayleigh")]
    public static double Rayleigh(TemperatureDelta dT, Temperature T_f, Length L, KinematicViscosity nu, double Pr)
    {
        Guard.Positive(dT);
        Guard.Positive(T_f);
        Guard.Positive(L);
        Guard.Positive(nu);
        Guard.Positive(Pr);
        var v = nu / L;
        return g * L / (v * v) * (dT / T_f) * Pr;
    }

    /// <summary>Nusselt number of a vertical plate, mean over its height: (0.825 + 0.387·Ra^(1/6)/(1 + (0.492/Pr)^(9/16))^(8/27))².</summary>
    /// <param name="Ra">Rayleigh number of the height; from 0.1 to 10¹².</param>
    /// <param name="Pr">Prandtl number; from 0.001 to 10⁴.</param>
    /// <returns>The Nusselt number, a plain number.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("S. W. Churchill & H. H. S. Chu (1975), in Y. A. Çengel, Heat and Mass Transfer, sec. 9-2", Symbol = "Nu")]
    [RecordName("natural-convection.vertical-plate")]
    public static double VerticalPlate(double Ra, double Pr)
    {
        Guard.Between(Ra, 0.1, 1e12, hint: "The correlation was fitted there.");
        Guard.Between(Pr, 1e-3, 1e4, hint: "That of air is 0.7, of water 7.");
        var c = Pow(1 + Pow(0.492 / Pr, 9.0 / 16), 8.0 / 27);
        var root = 0.825 + 0.387 * Pow(Ra, 1.0 / 6) / c;
        return root * root;
    }

    /// <summary>Channel number of the space between two plates: Ra_L·(S/L)⁴, which is Ra_S·S/L.</summary>
    /// <param name="Ra">Rayleigh number of the height L; greater than 0.</param>
    /// <param name="S">Clear space between the plates; greater than 0 m.</param>
    /// <param name="L">Height of the channel; greater than 0 m.</param>
    /// <returns>The channel number, a plain number.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Formula("W. Elenbaas, Heat dissipation of parallel plates by free convection, Physica 9 (1942)", Symbol = "El")]
    [RecordName("natural-convection.channel")]
    public static double Channel(double Ra, Length S, Length L)
    {
        Guard.Positive(Ra);
        Guard.Positive(S);
        Guard.Positive(L);
        var s = S / L;
        return Ra * (s * s * s * s);
    }

    /// <summary>Nusselt number of the space between two vertical plates of one temperature: (576/El² + 2.873/√El)^(−1/2).</summary>
    /// <remarks>Referred to the space S and to surface less inlet air. Between it meets the two limits: fully developed flow in narrow channels, plates by
    /// themselves in wide ones. The channel is taken as open at both edges; fins on a base are closed at one.</remarks>
    /// <param name="El">Channel number; from 0.1 to 10⁵.</param>
    /// <returns>The Nusselt number, a plain number.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The channel number is out of range.</exception>
    [Formula(BarCohen, Symbol = "Nu_S")]
    [RecordName("natural-convection.between-plates")]
    public static double BetweenPlates(double El)
    {
        Guard.Between(El, 0.1, 1e5, hint: "Below, the fins are so near that nearly no air passes: use fewer. Above, they are single plates: use more.");
        return Pow(576 / (El * El) + 2.873 / Sqrt(El), -0.5);
    }

    /// <summary>The space between plates of one temperature that carries off most heat from a given width: 2.714·L/Ra^(1/4).</summary>
    /// <remarks>For thin plates; radiation, fins of finite thickness and efficiency move it.</remarks>
    /// <param name="L">Height; greater than 0 m.</param>
    /// <param name="Ra">Rayleigh number of the height; from 10⁴ to 10⁹ (laminar).</param>
    /// <returns>The spacing between the fins, in m.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(BarCohen, Symbol = "S_opt")]
    [RecordName("natural-convection.optimum-spacing")]
    public static Length OptimumSpacing(Length L, double Ra)
    {
        Guard.Positive(L);
        Guard.Between(Ra, 1e4, 1e9, hint: "The flow must be laminar.");
        return 2.714 * L / Pow(Ra, 0.25);
    }
}
