using EightOhm.Display.Figures;
using EightOhm.Explaining;
using EightOhm.Quantities;
using EightOhm.Samples;
using UnitsNet;

namespace EightOhm.Display;

public static partial class Charts
{
    /// <summary>Any sampled curve or waveform as it is, its axes named by its quantities; a room's own figure says more where there is one.</summary>
    /// <typeparam name="TX">The quantity along the curve.</typeparam>
    /// <typeparam name="TY">The quantity that is told.</typeparam>
    /// <param name="curve">The curve.</param>
    [Shows]
    public static Figure Sampled<TX, TY>(Curve<TX, TY> curve)
        where TX : struct
        where TY : struct
    {
        ArgumentNullException.ThrowIfNull(curve);
        Axis x = AxisOf(typeof(TX)), y = AxisOf(typeof(TY));
        return Figure.Line($"{char.ToUpperInvariant(y.Label[0])}{y.Label[1..]} over {x.Label}", x, y, new LineSeries(y.Label, curve.X, curve.Y));
    }

    private static Axis AxisOf(Type type) => new(Named(type), QuantityKinds.Of(type).Symbol);

    // As the trade says it, where UnitsNet's class says it longer.
    private static string Named(Type type) =>
        type == typeof(ElectricPotential) ? "voltage"
        : type == typeof(ElectricCurrent) ? "current"
        : type == typeof(ElectricResistance) ? "resistance"
        : type == typeof(Duration) ? "time"
        : type == typeof(double) || type == typeof(int) ? "number"
        : SpokenName.Of(type);
}
