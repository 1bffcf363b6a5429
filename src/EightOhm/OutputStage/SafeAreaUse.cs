using EightOhm.Quantities;
using EightOhm.Working;
using UnitsNet;

namespace EightOhm.OutputStage;

/// <summary>How much of its safe area a transistor uses at the worst point of all half-waves up to full level.</summary>
/// <remarks>Lower levels are searched and not assumed away. On one rail they fill the inside of the full half-wave and are never worse (into a resistor the worst
/// point is passed at many levels, and full level is named); but a supply's rail rises at a lower level, so ask again with that rail and that peak.</remarks>
/// <param name="Use">Current over the current allowed at that voltage: at most 1 is inside.</param>
/// <param name="Voltage">Collector to emitter there.</param>
/// <param name="Current">The transistor's current there.</param>
/// <param name="Allowed">The current allowed there.</param>
/// <param name="Output">The output's voltage there: seldom its peak.</param>
/// <param name="Level">The peak at which it happens over the greatest peak.</param>
/// <param name="SetBy">What sets the current allowed there.</param>
public sealed record SafeAreaUse(
    [property: Symbol("u")] double Use,
    [property: Symbol("V_CE")] ElectricPotential Voltage,
    [property: Symbol("I_C")] ElectricCurrent Current,
    [property: Symbol("I_max")] ElectricCurrent Allowed,
    [property: Symbol("V_o")] ElectricPotential Output,
    Ratio Level,
    SafeAreaBound SetBy)
{
    /// <summary>Whether the whole ellipse is inside.</summary>
    public bool Inside => Use <= 1;

    /// <summary>The worst point of a load's half-waves at every level up to full.</summary>
    /// <param name="area">The area, derated.</param>
    /// <param name="load">The load.</param>
    /// <exception cref="ArgumentOutOfRangeException">The transistor sees more than V_CEO.</exception>
    public static SafeAreaUse Of(DeratedArea area, LoadEllipse load)
    {
        ArgumentNullException.ThrowIfNull(area);
        ArgumentNullException.ThrowIfNull(load);
        if (load.MostVoltage > area.Card.MostVoltage)
            Guard.Refuse(nameof(load), load.MostVoltage, $"at most {Face.Of(area.Card.MostVoltage)} (V_CEO of {area.Card.Name}) between collector and emitter", "The rail and the other side's peak stand on the transistor that does not conduct: lower the rail or take another transistor.");
        var (use, level, angle) = WorstPoint.Of((l, a) => load.Current(l, a) / area.Limit(Math.Max(load.Voltage(l, a), LeastVoltage)));
        var v = ElectricPotential.FromVolts(Math.Max(load.Voltage(level, angle), LeastVoltage));
        return new(use, v, ElectricCurrent.FromAmperes(load.Current(level, angle)), area.LimitAt(v), ElectricPotential.FromVolts(load.Output(level, angle)), Ratio.FromDecimalFractions(level), area.BoundAt(v));
    }

    /// <inheritdoc/>
    public override string ToString() =>
        $"{Face.Of(Use, 3)} of the safe area, {(Inside ? "inside" : "outside: it does not pass")}: {Face.Of(Current, 3)} at {Face.Of(Voltage, 3)}, allowed {Face.Of(Allowed, 3)}, with the output at {Face.Of(Output, 3)} and {Face.Of(Level, 3)} of full level.";

    // At the rail the voltage left is none, and its logarithm is not a number; down there the limit is the top current anyway.
    private const double LeastVoltage = 1e-3;
}
