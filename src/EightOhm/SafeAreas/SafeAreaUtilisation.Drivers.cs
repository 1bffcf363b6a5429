using EightOhm.Explaining;
using EightOhm.Numerics;
using EightOhm.OutputStages;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.SafeAreas;

/// <content>Drivers and pre-drivers.</content>
public sealed partial record SafeAreaUtilisation
{
    /// <summary>The worst point of a driver through the whole cycle at every level up to full swing, each level on the rail that the supply gives then, and at the stage's mains.</summary>
    /// <remarks>A driver conducts over the whole cycle: its standing current alone while the other side has the load, with the rail and the other side's peak across it.
    /// The drops of the outputs after it, a few volts, are left on it, which is cautious. A pair is judged by its own card: call it for each of both.</remarks>
    /// <param name="area">The area of the driver's card, derated.</param>
    /// <param name="stage">The stage with its drivers.</param>
    /// <param name="which">1 for the drivers of the outputs, 2 for their pre-drivers.</param>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <param name="phi">Phase of the load, −90° to 90°.</param>
    /// <param name="most">The greatest peak at the load that is played; full swing when not given.</param>
    /// <example><code>SafeAreaUtilisation.OfDriver(new SafeArea(driver).For(80.degC, SafeArea.Dc), stage.AtMains(10.percent), 1, R_Lmin, phi_L)</code></example>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range, there are no such drivers, or the transistor sees more than V_CEO.</exception>
    /// <exception cref="InvalidOperationException">Full swing was not found.</exception>
    [Worked("the greatest share of the driver's allowed current over levels and instants: a scan, then golden section, of each")]
    public static SafeAreaUtilisation OfDriver(DeratedArea area, OutputStage stage, int which, ElectricResistance Z, Angle phi, ElectricPotential? most = null)
    {
        ArgumentNullException.ThrowIfNull(area);
        ArgumentNullException.ThrowIfNull(stage);
        var stages = stage.DriverStages;
        if (stages == 0)
            Guard.Refuse(nameof(stage), stages, "a stage with drivers", "Give the stage its Drivers.");
        Guard.Between(which, 1, stages);
        var full = stage.Dissipation.FullSwing(Z, phi);
        var top = most is { } given ? Guard.Positive(given, nameof(most)) : full;
        if (top > full * (1 + Rounding))
            Guard.Refuse(nameof(most), top, $"at most {QuantityFormat.Short(full)}", "The rail is used up there: leave it out for full swing.");
        var peak = Math.Min(top.Volts, full.Volts * (1 - Rounding));
        // Refuses a table of current gain that does not reach so far.
        _ = stage.Driving(ElectricPotential.FromVolts(peak), Z, phi);
        var (own, ohms, lag) = (stage.DriverCurrent(which - 1), Z.Ohms, phi.Radians);
        double Rail(double level) => stage.Dissipation.RailAt(ElectricPotential.FromVolts(level), Z).Volts;
        double Across(double rail, double level, double angle) => Math.Max(rail - (level * Math.Sin(angle + lag)), LeastVoltage);
        double Current(double level, double angle) => own(Math.Max(0, level / ohms * Math.Sin(angle)));
        if (ElectricPotential.FromVolts(Rail(peak) + peak) is var seen && seen > area.Card.MaxCollectorEmitterVoltage)
            Guard.Refuse(nameof(stage), seen, $"at most {QuantityFormat.Short(area.Card.MaxCollectorEmitterVoltage)} (V_CEO of {area.Card.Name}) between collector and emitter", "The rail and the other side's peak stand on the driver as well.");
        (double X, double Value) Over(double level)
        {
            var rail = Rail(level);
            return Scan.Highest(a => Current(level, a) / area.Limit(Across(rail, level, a)), 0, 2 * Math.PI, 2 * AngleSteps, 1e-6 * Math.PI);
        }

        var worst = Scan.Highest(level => Over(level).Value, LeastLevel * peak, peak, LevelSteps, 1e-6 * peak).X;
        var (angle, use) = Over(worst);
        var v = ElectricPotential.FromVolts(Across(Rail(worst), worst, angle));
        return new(use, v, ElectricCurrent.FromAmperes(Current(worst, angle)), area.LimitAt(v), ElectricPotential.FromVolts(worst * Math.Sin(angle + lag)), Ratio.FromDecimalFractions(worst / peak), area.BoundAt(v));
    }
}
