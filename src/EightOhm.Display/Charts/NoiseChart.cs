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
    public static Figure Noise(NoiseSpectrum spectrum, Frequency f_L, Frequency f_H, string title = "Noise density over frequency", int sources = 4)
    {
        ArgumentNullException.ThrowIfNull(spectrum);
        Guard.Between(sources, 0, 6);
        const int Points = 121;
        var f = spectrum.Total(f_L, f_H, Points).X;
        NoiseBudget[] budgets = [.. f.Select(hertz => spectrum.At(hertz.Hz))];
        double[] Of(string name) => [.. budgets.Select(b => 1e9 * b.Ranked.First(p => p.Name == name).Density.Si)];
        var loudest = spectrum.Sources.OrderByDescending(s => Of(s.Name).Max()).Take(sources);
        return Figure.Line(title, Axis.Log("frequency", "Hz"), Axis.Log("noise density at the input", "nV/√Hz"),
            [new LineSeries("all together", f, [.. budgets.Select(b => 1e9 * b.Total.Si)]), .. loudest.Select(s => new LineSeries(s.Name, f, Of(s.Name)))]);
    }
}
