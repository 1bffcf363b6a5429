using EightOhm.Display.Figures;
using EightOhm.OutputStages;
using EightOhm.Quantities;

namespace EightOhm.Display;

/// <summary>Charts of the trade, each from the values of a calculation.</summary>
public static partial class Charts
{
    /// <summary>Incremental gain over output voltage for a family of biases, with a slider over the idle current.</summary>
    /// <param name="family">The curves, best in the order of their idle currents, as <see cref="EmitterFollowerStage.GainFamily"/> gives them; one or more.</param>
    /// <param name="start">Which curve is in front at first, from 0; the middle one when not given.</param>
    /// <exception cref="ArgumentException">There is no curve.</exception>
    public static Figure GainFamily(IReadOnlyList<GainCurve> family, int? start = null)
    {
        ArgumentNullException.ThrowIfNull(family);
        if (family.Count == 0)
            throw new ArgumentException("A family needs at least one curve: EmitterFollowerStage.GainFamily makes them.");
        var lines = family.Select(c => new LineSeries(QuantityFormat.Short(c.IdleCurrent), c.Gain.X, c.Gain.Y)).ToArray();
        var figure = Figure.Line("Incremental gain over output voltage", new Axis("output voltage", "V"), new Axis("incremental gain"), lines) with
        {
            Subtitle = family.Count > 1 ? "each line an idle current of one output device" : $"idle current {lines[0].Name}",
            Note = "Static: without the charge of the outputs, so at high frequency the stage is worse than this.",
        };
        return family.Count < 2 ? figure : figure with { Slider = new FigureSlider("idle current", lines.Select(l => l.Name)) { Start = start ?? family.Count / 2 } };
    }

    /// <summary>Incremental gain over output voltage at one bias.</summary>
    /// <param name="curve">As <see cref="FollowerBias.Transfer"/> gives it.</param>
    public static Figure GainFamily(GainCurve curve) => GainFamily([curve]);

    /// <summary>Static distortion over the idle current, at one output level: what a bias error costs.</summary>
    /// <param name="over">As <see cref="EmitterFollowerStage.DistortionAt(IReadOnlyList{UnitsNet.ElectricCurrent}, UnitsNet.ElectricPotential, int, int)"/> gives it; in the order of the idle currents.</param>
    /// <param name="best">A bias to mark, such as that of least distortion.</param>
    public static Figure DistortionOverBias(DistortionOverBias over, BiasChoice? best = null)
    {
        ArgumentNullException.ThrowIfNull(over);
        return OverBias(("", over)) with
        {
            Marks = best is null ? [] : [new(best.IdleCurrent.Amperes, best.StaticThd.PartsPerMillion, $"{QuantityFormat.Short(best.IdleCurrent)}, {QuantityFormat.Short(best.StaticThd)}")],
        };
    }

    /// <summary>Static distortion over the idle current for several levels or loads: their leasts do not lie at one current.</summary>
    /// <param name="cases">Each with its name, such as "40 V into 8 Ω", and as <see cref="EmitterFollowerStage.DistortionAt(IReadOnlyList{UnitsNet.ElectricCurrent}, UnitsNet.ElectricPotential, int, int)"/> gives it; in the order of the idle currents.</param>
    /// <exception cref="ArgumentException">There is no case.</exception>
    public static Figure DistortionOverBias(params (string Name, DistortionOverBias Over)[] cases)
    {
        ArgumentNullException.ThrowIfNull(cases);
        return OverBias([.. cases.Select(c => (c.Name, c.Over))]);
    }

    private static Figure OverBias(params (string Name, DistortionOverBias Over)[] cases) => Figure.Line(
        "Static distortion over idle current", Axis.Log("idle current of one output device", "A"), Axis.Log("static THD, ppm"),
        [.. cases.Select(c => new LineSeries(c.Name, c.Over.Thd.X, c.Over.Thd.Y.Select(t => 1e6 * t)))]) with
    {
        Note = "Static: a lower bound at high frequency.",
    };
}
