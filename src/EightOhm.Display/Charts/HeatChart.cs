using System.Globalization;
using EightOhm.Display.Figures;
using EightOhm.OutputStages;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Display;

/// <summary>Charts ready made, each from one line in a cell.</summary>
public static partial class Charts
{
    private const int HeatPoints = 121;

    /// <summary>The heat of an output stage's transistors over the level, for loads of one magnitude at 0°, 30°, 45° and 60°.</summary>
    /// <param name="stage">The stage, with the rail that its supply gives at each level.</param>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <exception cref="ArgumentOutOfRangeException">The load is not positive.</exception>
    public static Figure Heat(ClassBStage stage, ElectricResistance Z) => Heat(stage, Z, 0.deg, 30.deg, 45.deg, 60.deg);

    /// <summary>The heat of an output stage's transistors over the level, a line for each phase of the load, the worst of each marked.</summary>
    /// <param name="stage">The stage, with the rail that its supply gives at each level.</param>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <param name="phases">Phases of the load, each −90° to 90°; at least one.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <exception cref="ArgumentException">There is no phase.</exception>
    public static Figure Heat(ClassBStage stage, ElectricResistance Z, params Angle[] phases)
    {
        ArgumentNullException.ThrowIfNull(stage);
        ArgumentNullException.ThrowIfNull(phases);
        if (phases.Length == 0)
            throw new ArgumentException("The chart needs at least one phase, for example 0.deg.", nameof(phases));
        var rail = stage.Rail.Volts;
        var lines = phases.Select(phi => stage.Sweep(Z, phi, HeatPoints) is var heat
            ? new LineSeries(QuantityFormat.Short(phi), heat.Select(h => h.Level.Volts / rail), heat.Select(h => (double)h.Total.Watts))
            : null!).ToArray();
        var worst = phases.Select(phi => stage.Worst(Z, phi)).ToArray();
        var (hottest, at) = worst.Zip(phases).MaxBy(h => h.First.Total.Watts);
        var most = $"{QuantityFormat.Short(hottest.Total)} at worst, at {QuantityFormat.Short(at)}: {QuantityFormat.Short(hottest.PerDevice)} a transistor";
        return Figure.Line($"Heat into {QuantityFormat.Short(Z)}: {most}", new Axis("peak output over the rail without signal"), new Axis("heat of all transistors", "W"), lines) with
        {
            Subtitle = Conditions(stage),
            Marks = [.. worst.Select(h => new Mark(h.Level.Volts / rail, (double)h.Total.Watts, QuantityFormat.Short(h.Total)))],
            Note = "A line ends where the rail is used up. From about 50° on, full output is the worst; a resistor is at its worst near 40 % of its power.",
        };
    }

    private static string Conditions(ClassBStage stage) => string.Create(CultureInfo.InvariantCulture,
        $"rail without signal {QuantityFormat.Short(stage.Rail)}, {stage.Pairs} {(stage.Pairs == 1 ? "pair" : "pairs")} with {QuantityFormat.Short(stage.EmitterResistor)}, {(stage.Idle.Amperes > 0 ? $"{QuantityFormat.Short(stage.Idle)} idle a pair" : "no idle current")}");
}
