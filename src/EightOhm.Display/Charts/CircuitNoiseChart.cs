using EightOhm.Circuits;
using EightOhm.Display.Figures;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Display;

public static partial class Charts
{
    /// <summary>The noise at a node over frequency, or referred to the input where one was named.</summary>
    /// <param name="noise">The noise of a circuit.</param>
    [Shows]
    public static Figure NoiseOver(CircuitNoise noise)
    {
        ArgumentNullException.ThrowIfNull(noise);
        var (title, curve) = noise.From is null ? ($"Noise at {noise.To}", noise.Output) : ($"Noise at {noise.To}, referred to {noise.From}", noise.InputReferred);
        return Figure.Line(title, Axis.LogOf<Frequency>("frequency"), Axis.Of<VoltageNoiseDensity>("noise density") with { Min = 0 }, LineSeries.Of("", curve));
    }
}
