using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Protection;

/// <summary>How close a limiter's locus comes to one thing: the safe area that it must stay below, or a load that it must stay above.</summary>
/// <param name="To">The safe area, or the load in words.</param>
/// <param name="Margin">Area over locus, or locus over load: at least 1 passes.</param>
/// <param name="Voltage">Collector to emitter where it is tightest.</param>
/// <param name="Locus">The limiter's current there, of one transistor.</param>
/// <param name="Other">The current that the area allows, or that the load needs, there.</param>
/// <param name="Sense">The sense junction's temperature at which it is tightest.</param>
public sealed record LimiterMargin(
    string To,
    [property: Symbol("m")] double Margin,
    [property: Symbol("V_CE")] ElectricPotential Voltage,
    [property: Symbol("I_lim")] ElectricCurrent Locus,
    ElectricCurrent Other,
    [property: Symbol("T")] Temperature Sense)
{
    /// <summary>The margin that stands for "far away", where a limiter allows a thousandth of the area or less.</summary>
    public const double Most = 1000;

    /// <summary>Whether it passes.</summary>
    public bool Passes => Margin >= 1;

    /// <summary>The current of one transistor that is missing where it is tightest: area less locus, or locus less load; 0 A when it passes.</summary>
    public ElectricCurrent Short => Passes ? default : ElectricCurrent.FromAmperes(Math.Abs(Locus.Amperes - Other.Amperes));

    internal static LimiterMargin Of(string to, double use, ElectricPotential at, ElectricCurrent locus, ElectricCurrent other, Temperature T) => new(to, use > 1 / Most ? 1 / use : Most, at, locus, other, T);

    /// <inheritdoc/>
    public override string ToString() =>
        $"{To}: {(Passes ? "passes" : $"does not pass, short by {QuantityFormat.Short(Short, 3)}")}, {QuantityFormat.Short(Margin, 3)} at {QuantityFormat.Short(Voltage, 3)} ({QuantityFormat.Short(Locus, 3)} against {QuantityFormat.Short(Other, 3)}, sense junction at {QuantityFormat.Short(Sense)})";
}
