using EightOhm.OutputStages;
using EightOhm.Quantities;

namespace EightOhm.Tests.Saver;

/// <summary>Figures of a follower stage, to be compared between processes that have and have not vector instructions.</summary>
public static class FollowerFigures
{
    /// <summary>Distortions over the bias, harmonics and gains, of one and of three stages.</summary>
    public static IReadOnlyList<double> All()
    {
        var one = new EmitterFollowerStage(8.Ohm, 3, 0.22.Ohm) { InternalResistance = 52.5.mOhm, Junction = 55.degC };
        var three = one with
        {
            Device = one.Device with { CurrentGain = 100, KneeCurrent = 5.A },
            Drivers = new(47.Ohm) { Device = new() { CurrentGain = 100 } },
            PreDrivers = new(150.Ohm) { Device = new() { CurrentGain = 150 } },
            Source = 1.kOhm,
        };
        var figures = new List<double>();
        foreach (var stage in new[] { one, three })
        {
            var over = stage.DistortionAt([30.mA, 31.mA, 33.mA, 103.8.mA, 300.mA], 40.V, 10, 1000);
            figures.AddRange(over.Thd.Y);
            figures.AddRange(over.Fundamental.Y);
            figures.AddRange(stage.BiasedAt(103.8.mA).Transfer(40.V, 33).Gain.Y);
        }

        return figures;
    }
}
