using EightOhm.Samples;
using UnitsNet;

namespace EightOhm.Thermal;

/// <summary>How far a junction is above the far end of its impedance while a power repeats.</summary>
public sealed class JunctionRise
{
    internal JunctionRise(double[] seconds, double[] kelvins, TemperatureDelta mean, TemperatureDelta bound) =>
        (Rise, Mean, PeakPowerForEver) = (new(seconds, kelvins), mean, bound);

    /// <summary>The rise at the ends of the pieces of the period.</summary>
    public Waveform<TemperatureDelta> Rise { get; }

    /// <summary>The highest rise in the period.</summary>
    [Explaining.Symbol("dT_p")]
    public TemperatureDelta Peak => Rise.Max;

    /// <summary>When, after the begin of the period.</summary>
    public Duration PeakAt => Rise.MaxAt;

    /// <summary>The lowest rise in the period.</summary>
    public TemperatureDelta Minimum => Rise.Min;

    /// <summary>The mean rise: what the mean power gives. Too low for the junction's limit.</summary>
    public TemperatureDelta Mean { get; }

    /// <summary>The rise if the peak power lasted for ever. Too high.</summary>
    public TemperatureDelta PeakPowerForEver { get; }
}
