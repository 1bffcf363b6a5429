using EightOhm.Explaining;
using EightOhm.Numerics;
using EightOhm.OutputStages;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.SafeAreas;

/// <summary>The safe-area utilisation of a transistor: how much of what it allows is used at the worst point of all half-waves up to full level.</summary>
/// <remarks>Lower levels are searched and not assumed away. On one rail they fill the inside of the full half-wave and are never worse (into a resistor the worst
/// point is passed at many levels, and full level is named); but a supply's rail rises at a lower level: give the stage with its rails where that counts.</remarks>
/// <param name="Use">Current over the current allowed at that voltage: at most 1 is inside.</param>
/// <param name="Voltage">Collector to emitter there.</param>
/// <param name="Current">The transistor's current there.</param>
/// <param name="Allowed">The current allowed there.</param>
/// <param name="Output">The output's voltage there: seldom its peak.</param>
/// <param name="Level">The peak at which it happens over the greatest peak.</param>
/// <param name="SetBy">What sets the current allowed there.</param>
public sealed partial record SafeAreaUtilisation(
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
    [Worked("the greatest share of the allowed current over levels and instants: a scan, then golden section, of each")]
    public static SafeAreaUtilisation Of(DeratedArea area, LoadEllipse load)
    {
        ArgumentNullException.ThrowIfNull(area);
        ArgumentNullException.ThrowIfNull(load);
        if (load.MaxCollectorEmitterVoltage > area.Card.MaxCollectorEmitterVoltage)
            Guard.Refuse(nameof(load), load.MaxCollectorEmitterVoltage, $"at most {QuantityFormat.Short(area.Card.MaxCollectorEmitterVoltage)} (V_CEO of {area.Card.Name}) between collector and emitter", "The rail and the other side's peak stand on the transistor that does not conduct: lower the rail or take another transistor.");
        var (use, level, angle) = WorstPoint.Of<UseOfArea, EllipseInstant>(new(area, load));
        var at = load.At(angle);
        var v = ElectricPotential.FromVolts(Math.Max(load.Voltage(level, at), LeastVoltage));
        return new(use, v, ElectricCurrent.FromAmperes(load.Current(level, at)), area.LimitAt(v), ElectricPotential.FromVolts(load.Output(level, at)), Ratio.FromDecimalFractions(level), area.BoundAt(v));
    }

    /// <summary>The worst point of a stage's half-waves at every level up to full swing, each level on the rail that the supply gives then, and at the stage's mains.</summary>
    /// <remarks>The half-waves are those of class B: idle current is left out, and so are saturation voltages, which would end the swing a little earlier.</remarks>
    /// <param name="area">The area, derated.</param>
    /// <param name="stage">The stage with its rails.</param>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <param name="phi">Phase of the load, −90° to 90°.</param>
    /// <param name="most">The greatest peak at the load that is played; full swing when not given.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range, the greatest peak is above full swing, or the transistor sees more than V_CEO.</exception>
    /// <exception cref="InvalidOperationException">Full swing was not found.</exception>
    [Worked("the greatest share of the allowed current over levels and instants: a scan, then golden section, of each")]
    public static SafeAreaUtilisation Of(DeratedArea area, OutputStage stage, ElectricResistance Z, Angle phi, ElectricPotential? most = null)
    {
        ArgumentNullException.ThrowIfNull(area);
        ArgumentNullException.ThrowIfNull(stage);
        return Of(area, stage.Dissipation, Z, phi, most);
    }

    /// <inheritdoc cref="Of(DeratedArea, OutputStage, ElectricResistance, Angle, ElectricPotential?)"/>
    [Worked("the greatest share of the allowed current over levels and instants: a scan, then golden section, of each")]
    public static SafeAreaUtilisation Of(DeratedArea area, StageDissipation stage, ElectricResistance Z, Angle phi, ElectricPotential? most = null)
    {
        ArgumentNullException.ThrowIfNull(area);
        ArgumentNullException.ThrowIfNull(stage);
        var full = stage.FullSwing(Z, phi);
        var top = most is { } given ? Guard.Positive(given, nameof(most)) : full;
        if (top > full * (1 + Rounding))
            Guard.Refuse(nameof(most), top, $"at most {QuantityFormat.Short(full)}", "The rail is used up there: leave it out for full swing.");
        // Full swing was found by a root: a hair below it the rail is surely enough.
        var peak = Math.Min(top.Volts, full.Volts * (1 - Rounding));
        LoadEllipse At(double level) => new(stage.RailAt(ElectricPotential.FromVolts(level), Z), ElectricPotential.FromVolts(level), Z, phi, stage.EmitterResistor, stage.Pairs);
        (double X, double Value) Over(LoadEllipse load) => Scan.Highest(a => new UseOfArea(area, load).At(1, load.At(a)), 1e-9, Math.PI - 1e-9, AngleSteps, 1e-6 * Math.PI);
        var worst = Scan.Highest(level => Over(At(level)).Value, LeastLevel * peak, peak, LevelSteps, 1e-6 * peak).X;
        var there = Of(area, At(worst));
        return there with { Level = Ratio.FromDecimalFractions(there.Level.DecimalFractions * worst / peak) };
    }

    /// <inheritdoc/>
    public override string ToString() =>
        $"{QuantityFormat.Short(Use, 3)} of the safe area, {(Inside ? "inside" : "outside: it does not pass")}: {QuantityFormat.Short(Current, 3)} at {QuantityFormat.Short(Voltage, 3)}, allowed {QuantityFormat.Short(Allowed, 3)}, with the output at {QuantityFormat.Short(Output, 3)} and {QuantityFormat.Short(Level, 3)} of full level.";

    // The share of the allowed current.
    private readonly struct UseOfArea(DeratedArea area, LoadEllipse load) : IHalfWaveFigure<EllipseInstant>
    {
        public EllipseInstant Instant(double angle) => load.At(angle);

        public double At(double level, in EllipseInstant at) => load.Current(level, at) / area.Limit(Math.Max(load.Voltage(level, at), LeastVoltage));
    }

    // At the rail the voltage left is none, and its logarithm is not a number; down there the limit is the top current anyway.
    private const double LeastVoltage = 1e-3;
    private const double LeastLevel = 0.01;
    private const double Rounding = 1e-9;
    private const int LevelSteps = 32;
    private const int AngleSteps = 120;
}
