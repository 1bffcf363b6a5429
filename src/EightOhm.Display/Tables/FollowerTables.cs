using EightOhm.OutputStages;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Display.Tables;

/// <summary>Families over the bias as tables.</summary>
public static class FollowerTables
{
    /// <summary>Each bias with its gain at the middle, its least and greatest gain and its ripple.</summary>
    /// <param name="curves">The curves.</param>
    [Shows]
    public static Table Gains(IEnumerable<GainCurve> curves)
    {
        ArgumentNullException.ThrowIfNull(curves);
        return new Table(["idle current", "gain at zero", "least gain", "greatest gain", "ripple"],
            [.. curves.Select(IReadOnlyList<string> (c) => [QuantityFormat.Short(c.IdleCurrent), Number(c.Gain.Y[c.Gain.Count / 2]), Number(c.Gain.Y.Min()), Number(c.Gain.Y.Max()), QuantityFormat.Short(c.Ripple)])],
            [0, 1, 2, 3, 4], "incremental gain over the bias");
    }

    /// <summary>Each bias with its static distortion.</summary>
    /// <param name="over">Distortion over the bias.</param>
    [Shows]
    public static Table Distortion(DistortionOverBias over)
    {
        ArgumentNullException.ThrowIfNull(over);
        return new Table(["idle current", "bias voltage", "static THD"],
            [.. Enumerable.Range(0, over.Thd.Count).Select(IReadOnlyList<string> (k) => [QuantityFormat.Short(over.Thd[k].X), QuantityFormat.Short(over.BiasVoltage[k].Y), QuantityFormat.Short(over.Thd[k].Y)])],
            [0, 1, 2], "static distortion over the bias");
    }

    private static string Number(double gain) => QuantityFormat.Short(gain, 5);
}
