using System.Globalization;
using EightOhm.Display.Figures;
using EightOhm.OutputStages;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Display;

/// <summary>Charts ready made, each from one line in a cell.</summary>
public static partial class Charts
{
    private const int DissipationPoints = 121;

    /// <summary>The power dissipation of an output stage's transistors over the level, for loads of one magnitude at 0°, 30°, 45° and 60°.</summary>
    /// <param name="stage">The stage on its supply.</param>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <exception cref="ArgumentOutOfRangeException">The load is not positive.</exception>
    public static Figure Dissipation(OutputStage stage, ElectricResistance Z) => Dissipation(stage?.Dissipation!, Z);

    /// <inheritdoc cref="Dissipation(OutputStage, ElectricResistance)"/>
    public static Figure Dissipation(StageDissipation stage, ElectricResistance Z) => Dissipation(stage, Z, 0.deg, 30.deg, 45.deg, 60.deg);

    /// <summary>The power dissipation of an output stage's transistors over the level, a line for each phase of the load, the maximum of each marked.</summary>
    /// <param name="stage">The stage on its supply.</param>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <param name="phases">Phases of the load, each −90° to 90°; at least one.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <exception cref="ArgumentException">There is no phase.</exception>
    public static Figure Dissipation(OutputStage stage, ElectricResistance Z, params Angle[] phases) => Dissipation(stage?.Dissipation!, Z, phases);

    /// <inheritdoc cref="Dissipation(OutputStage, ElectricResistance, Angle[])"/>
    public static Figure Dissipation(StageDissipation stage, ElectricResistance Z, params Angle[] phases)
    {
        ArgumentNullException.ThrowIfNull(stage);
        ArgumentNullException.ThrowIfNull(phases);
        if (phases.Length == 0)
            throw new ArgumentException("The chart needs at least one phase, for example 0.deg.", nameof(phases));
        var rail = stage.Rail.Volts;
        var lines = phases.Select(phi => stage.Sweep(Z, phi, DissipationPoints) is var powers
            ? new LineSeries(QuantityFormat.Short(phi), powers.Select(p => p.Level.Volts / rail), powers.Select(p => (double)p.Total.Watts))
            : null!).ToArray();
        var maxima = phases.Select(phi => stage.Maximum(Z, phi)).ToArray();
        var (most, at) = maxima.Zip(phases).MaxBy(p => p.First.Total.Watts);
        var words = $"at most {QuantityFormat.Short(most.Total)}, at {QuantityFormat.Short(at)}: {QuantityFormat.Short(most.PerDevice)} a transistor";
        return Figure.Line($"Dissipation into {QuantityFormat.Short(Z)}: {words}", new Axis("peak output over the rail without signal"), new Axis("dissipation of all transistors", "W"), lines) with
        {
            Subtitle = Conditions(stage),
            Marks = [.. maxima.Select(p => new Mark(p.Level.Volts / rail, (double)p.Total.Watts, QuantityFormat.Short(p.Total)))],
            Note = "A line ends where the rail is used up. From about 50° on, full output is the maximum; a resistor has its maximum near 40 % of its power.",
        };
    }

    private static string Conditions(StageDissipation stage) => string.Create(CultureInfo.InvariantCulture,
        $"rail without signal {QuantityFormat.Short(stage.Rail)}, {stage.Pairs} {(stage.Pairs == 1 ? "pair" : "pairs")} with {QuantityFormat.Short(stage.EmitterResistor)}, {(stage.IdleCurrent.Amperes > 0 ? $"{QuantityFormat.Short(stage.IdleCurrent)} idle a pair" : "no idle current")}");
}
