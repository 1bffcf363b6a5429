using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Thermal;

/// <summary>A straight fin of constant thickness, cooled on both sides.</summary>
public static partial class Fin
{
    private const string Source = "J. P. Holman, Heat Transfer, sec. 2-9";

    /// <summary>How long the fin is thermally, m·L: √(2·(h·L_c/k)·(L_c/t)).</summary>
    /// <param name="h">Heat transfer coefficient; greater than 0 W/(m²·K).</param>
    /// <param name="t">Thickness; greater than 0 m.</param>
    /// <param name="k">Conductivity of the fin; greater than 0 W/(m·K).</param>
    /// <param name="L_c">Length from the base plus half the thickness, which stands for the tip; greater than 0 m.</param>
    /// <returns>The thermal length m·L, a plain number.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Formula(Source, Symbol = "m_L")]
    [RecordName("fin.reach")]
    public static double Reach(HeatTransferCoefficient h, Length t, ThermalConductivity k, Length L_c)
    {
        Guard.Positive(h);
        Guard.Positive(t);
        Guard.Positive(k);
        Guard.Positive(L_c);
        return Sqrt(2 * (h * L_c / k) * (L_c / t));
    }

    /// <summary>Heat of the fin over that of a fin all at the base's temperature: tanh(m·L)/(m·L).</summary>
    /// <param name="m_L">How long the fin is thermally; greater than 0.</param>
    /// <returns>The efficiency, 0 to 1, a plain number.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The input is not positive.</exception>
    [Formula(Source, Symbol = "eta_f")]
    [RecordName("fin.efficiency")]
    public static double Efficiency(double m_L)
    {
        Guard.Positive(m_L);
        var e = Exp(-(2 * m_L));
        return (1 - e) / (1 + e) / m_L;
    }
}

/// <summary>Heat that a surface radiates to surroundings far larger than itself. SI numbers.</summary>
public static partial class Radiation
{
    /// <summary>Stefan–Boltzmann constant, 5.670374419×10⁻⁸ W/(m²·K⁴) (exact by the SI of 2019, rounded).</summary>
    [RecordName("radiation.sigma")]
    public static double sigma => 5.670374419e-8;

    /// <summary>Heat per area: ε·σ·(T_s⁴ − T_w⁴), W/m².</summary>
    /// <param name="epsilon">Emissivity of the surface; from 0 to 1.</param>
    /// <param name="T_s">Surface, K; greater than 0.</param>
    /// <param name="T_w">Surroundings (walls), K; greater than 0.</param>
    /// <returns>The flux in W/m², a plain number.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("J. P. Holman, Heat Transfer, sec. 1-4", Symbol = "q_r")]
    [RecordName("radiation.flux")]
    public static double Flux(double epsilon, double T_s, double T_w)
    {
        Guard.Between(epsilon, 0.0, 1.0, hint: "Bare aluminium radiates little, an anodised or painted surface nearly as a black one.");
        Guard.Positive(T_s);
        Guard.Positive(T_w);
        return epsilon * sigma * (T_s * T_s * T_s * T_s - T_w * T_w * T_w * T_w);
    }
}
