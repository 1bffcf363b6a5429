using System.Numerics;
using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Loads;

/// <summary>What an amplifier drives: an impedance over frequency, and what it asks of a class-B stage.</summary>
/// <remarks>Linear and passive. The phase is that of the impedance: positive where the current lags, as in an inductor. A load of one's own,
/// measured perhaps, is a class that gives <see cref="Impedance"/>.</remarks>
public abstract class Load
{
    // Rounding may carry a pure reactance past a quarter turn by a hair.
    private const double Hair = 1e-9;

    /// <summary>The impedance in ohms, its real part 0 or more.</summary>
    /// <param name="hertz">Frequency in hertz; greater than 0.</param>
    protected internal abstract Complex Impedance(double hertz);

    /// <summary>Magnitude of the impedance.</summary>
    /// <param name="f">Frequency; greater than 0 Hz.</param>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is not positive.</exception>
    [Worked("the size of the complex impedance at that frequency")]
    public ElectricResistance Magnitude(Frequency f) => Polar(Guard.Positive(f).Hertz).Ohms.Ohm;

    /// <summary>Phase of the impedance, from −90° to 90°; positive where the current lags.</summary>
    /// <param name="f">Frequency; greater than 0 Hz.</param>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is not positive.</exception>
    [Worked("the angle of the complex impedance at that frequency")]
    public Angle Phase(Frequency f) => (Polar(Guard.Positive(f).Hertz).Radians * (180 / Math.PI)).deg;

    /// <summary>The resistor that makes a class-B pair dissipate as much on average, each at its level of maximum dissipation.</summary>
    /// <param name="f">Frequency; greater than 0 Hz.</param>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is not positive.</exception>
    [Worked("EquivalentResistor.Average of the magnitude and phase at that frequency")]
    public ElectricResistance AverageEquivalent(Frequency f) => EquivalentResistor.Average(Magnitude(f), Phase(f));

    /// <summary>The resistor with the same peak instantaneous dissipation in one device, at full swing.</summary>
    /// <param name="f">Frequency; greater than 0 Hz.</param>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is not positive.</exception>
    [Worked("EquivalentResistor.Peak of the magnitude and phase at that frequency")]
    public ElectricResistance PeakEquivalent(Frequency f) => EquivalentResistor.Peak(Magnitude(f), Phase(f));

    /// <summary>Peak current of a sine of that frequency.</summary>
    /// <param name="V_p">Peak voltage (not rms); 0 V or more.</param>
    /// <param name="f">Frequency; greater than 0 Hz.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Worked("OutputCurrent.Sine with the magnitude at that frequency")]
    public ElectricCurrent SineCurrent(ElectricPotential V_p, Frequency f) => OutputCurrent.Sine(V_p, Magnitude(f));

    /// <summary>Impedance and both equivalent resistors over frequency, as columns to draw.</summary>
    /// <param name="from">Lowest frequency; greater than 0 Hz.</param>
    /// <param name="to">Highest frequency; above the lowest.</param>
    /// <param name="points">How many points, equally far apart on a logarithmic axis; 2 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Worked("the load at frequencies evenly spaced in their logarithm")]
    public LoadSweep Sweep(Frequency from, Frequency to, int points = 400) => new(this, from, to, points);

    /// <summary>The least impedance and the least equivalent resistors of the audio band, 10 Hz to 20 kHz, and where they are.</summary>
    [Worked("the least of each figure over the band: a scan over the logarithm of frequency, then golden section")]
    public MinimumLoad Least() => Least(10.Hz, 20.kHz);

    /// <summary>The least impedance and the least equivalent resistors of a band, and where they are.</summary>
    /// <remarks>A thousand points a decade, then a search around the lowest: finds resonances up to a Q of about 100.</remarks>
    /// <param name="from">Lowest frequency; greater than 0 Hz.</param>
    /// <param name="to">Highest frequency; above the lowest.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Worked("the least of each figure over the band: a scan over the logarithm of frequency, then golden section")]
    public MinimumLoad Least(Frequency from, Frequency to) => MinimumLoad.Of(this, from, to);

    /// <summary>What this load asks at its worst, as a row of a table of loads: a list of them is shown as one.</summary>
    /// <param name="name">The load in words.</param>
    /// <param name="V_p">Peak voltage (not rms); greater than 0 V.</param>
    /// <exception cref="ArgumentOutOfRangeException">The voltage is not positive.</exception>
    [Worked("the least figures of the audio band, and the currents at that peak voltage")]
    public LoadDemand Asks(string name, ElectricPotential V_p) =>
        new(name, Guard.Positive(V_p), Least(), (this as NetworkLoad)?.WorstProgrammeCurrent(V_p));

    /// <summary>This load at the end of a cable.</summary>
    /// <param name="cable">The cable.</param>
    public virtual Load Through(Cable cable) => new CabledLoad(this, cable);

    /// <summary>Magnitude and phase in plain numbers, refused where they are not those of a passive load.</summary>
    /// <exception cref="InvalidOperationException">The load is shorted, open or active at this frequency.</exception>
    internal (double Ohms, double Radians) Polar(double hertz)
    {
        var z = Impedance(hertz);
        var ohms = z.Magnitude;
        if (!(ohms > 0) || !double.IsFinite(ohms) || z.Real < -Hair * ohms)
            throw new InvalidOperationException($"{GetType().Name} has no passive impedance at {QuantityFormat.Short(hertz.Hz)}: its real part must be 0 Ω or more and its magnitude above 0 Ω.");
        return (ohms, Math.Clamp(z.Phase, -Math.PI / 2, Math.PI / 2));
    }

    internal static (double From, double To) Band(Frequency from, Frequency to)
    {
        Guard.Positive(from);
        Guard.Positive((to - from).Hertz, "to − from", "The band ends above where it begins.");
        return (from.Hertz, to.Hertz);
    }
}
