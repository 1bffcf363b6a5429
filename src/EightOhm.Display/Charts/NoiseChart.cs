using EightOhm.Display.Figures;
using EightOhm.Noise;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Display;

public static partial class Charts
{
    /// <summary>The noises of a circuit over frequency: all together, and the loudest sources of the band, each by its density.</summary>
    /// <param name="spectrum">The sources.</param>
    /// <param name="f_L">The lowest frequency; greater than 0 Hz.</param>
    /// <param name="f_H">The highest; greater than f_L.</param>
    /// <param name="title">What the figure shows.</param>
    /// <param name="sources">How many of the loudest to draw beside the total; 0 to 6.</param>
    /// <exception cref="ArgumentOutOfRangeException">The band is upside down, or more sources are asked for than can be told apart.</exception>
    public static Figure NoiseOver(NoiseSpectrum spectrum, Frequency f_L, Frequency f_H, string title = "Noise density over frequency", int sources = 4)
    {
        ArgumentNullException.ThrowIfNull(spectrum);
        Guard.Between(sources, 0, 6);
        Frequency[] f = [.. spectrum.Total(f_L, f_H).X.Select(hertz => hertz.Hz)];
        NoiseBudget[] budgets = [.. f.Select(spectrum.At)];
        IEnumerable<VoltageNoiseDensity> Of(string name) => budgets.Select(b => b.Ranked.First(p => p.Name == name).Density);
        var loudest = spectrum.Sources.OrderByDescending(s => Of(s.Name).Max(e => e.Si)).Take(sources);
        return Figure.Line(title, Axis.LogOf<Frequency>("frequency"), Axis.LogOf<VoltageNoiseDensity>("noise density"),
            [LineSeries.Of("all together", f, budgets.Select(b => b.Total)), .. loudest.Select(s => LineSeries.Of(s.Name, f, Of(s.Name)))]);
    }
}
