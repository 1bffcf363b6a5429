using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Loads;

/// <summary>A load over frequency in columns of plain numbers, as a chart takes them.</summary>
public sealed class LoadSweep
{
    internal LoadSweep(Load load, Frequency from, Frequency to, int points)
    {
        var (low, high) = Load.Band(from, to);
        Guard.NotNegative(points - 2, "points − 2", "A curve has at least two points.");
        (From, To, Points) = (from, to, points);
        double[] hertz = new double[points], ohms = new double[points], degrees = new double[points], average = new double[points], peak = new double[points];
        for (var i = 0; i < points; i++)
        {
            if (i % 256 == 0)
                Work.Checkpoint();
            hertz[i] = i == 0 ? low : i == points - 1 ? high : low * Math.Pow(high / low, (double)i / (points - 1));
            var (z, phase) = load.Polar(hertz[i]);
            ohms[i] = z;
            degrees[i] = phase * (180 / Math.PI);
            average[i] = z * EquivalentResistor.AverageFactor(phase);
            peak[i] = z * EquivalentResistor.PeakFactor(phase);
        }

        (Hertz, Ohms, Degrees, AverageOhms, PeakOhms) = (hertz, ohms, degrees, average, peak);
    }

    /// <summary>Lowest frequency.</summary>
    [Called("lowest frequency")]
    public Frequency From { get; }

    /// <summary>Highest frequency.</summary>
    [Called("highest frequency")]
    public Frequency To { get; }

    /// <summary>How many points each column has.</summary>
    public int Points { get; }

    /// <summary>Frequencies in hertz, rising.</summary>
    public IReadOnlyList<double> Hertz { get; }

    /// <summary>Magnitude of the impedance in ohms.</summary>
    public IReadOnlyList<double> Ohms { get; }

    /// <summary>Phase of the impedance in degrees; positive where the current lags.</summary>
    public IReadOnlyList<double> Degrees { get; }

    /// <summary>Average-equivalent resistor in ohms.</summary>
    public IReadOnlyList<double> AverageOhms { get; }

    /// <summary>Peak-equivalent resistor in ohms.</summary>
    public IReadOnlyList<double> PeakOhms { get; }
}
