using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Circuits;

/// <summary>What the value of an element may be.</summary>
internal static class ElementValues
{
    /// <exception cref="ArgumentOutOfRangeException">It may not be this.</exception>
    public static void Check(ElementKind kind, string name, object value)
    {
        var what = $"the value of {name}";
        switch (value)
        {
            case ElectricResistance r when kind is ElementKind.CurrentControlledVoltage:
                Guard.InReach(r, what);
                break;
            case ElectricResistance r:
                Guard.Positive(r, what, "For a short circuit join the nodes; for an open one leave the resistor out.");
                break;
            case ElectricCapacitance c:
                Guard.Positive(c, what, "Leave a capacitor of nothing out.");
                break;
            case ElectricInductance l:
                Guard.Positive(l, what, "For a short circuit join the nodes.");
                break;
            case ElectricPotential v when kind is ElementKind.Zener:
                Guard.Positive(v, what);
                break;
            case ElectricPotential v:
                Guard.InReach(v, what);
                break;
            case ElectricCurrent i when kind is ElementKind.Fuse:
                Guard.Positive(i, what);
                break;
            case ElectricCurrent i:
                Guard.InReach(i, what);
                break;
            case ElectricConductance g:
                Guard.InReach(g, what);
                break;
            case Duration t:
                Guard.NotNegative(t, what);
                break;
            case ThermalResistance theta:
                Guard.Positive(theta, what);
                break;
            case HeatCapacity c:
                Guard.Positive(c, what);
                break;
            case Gain a:
                Guard.InReach(a, what);
                break;
            case double a when kind is ElementKind.Coupling:
                Guard.Between(a, -MostCoupling, MostCoupling, what, "A coupling of one would be an ideal transformer.");
                break;
            case double a:
                Guard.InReach(a, what);
                break;
        }
    }

    /// <summary>The tightest coupling solved: beyond it the two coils' equations are one.</summary>
    private const double MostCoupling = 0.999999;
}
