using EightOhm.Display.Figures;
using EightOhm.Loads;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Display;

/// <summary>Charts ready made, each from one line in a cell.</summary>
public static partial class Charts
{
    /// <summary>A load over the audio band: its impedance, and beneath it the resistors that stress a class-B stage as much.</summary>
    /// <param name="load">The load.</param>
    /// <param name="V_p">Peak voltage (not rms) for the currents in the subtitle; 0 V or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The voltage is negative.</exception>
    public static Figure Load(Load load, ElectricPotential V_p) => Load(load, V_p, 10.Hz, 20.kHz);

    /// <summary>A load over a band: its impedance, and beneath it the resistors that stress a class-B stage as much.</summary>
    /// <param name="load">The load.</param>
    /// <param name="V_p">Peak voltage (not rms) for the currents in the subtitle; 0 V or more.</param>
    /// <param name="from">Lowest frequency; greater than 0 Hz.</param>
    /// <param name="to">Highest frequency; above the lowest.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public static Figure Load(Load load, ElectricPotential V_p, Frequency from, Frequency to)
    {
        ArgumentNullException.ThrowIfNull(load);
        Guard.NotNegative(V_p);
        var sweep = load.Sweep(from, to);
        var least = load.Least(from, to);
        var currents = $"{QuantityFormat.Short(V_p)} peak asks for {QuantityFormat.Short(load.SineCurrent(V_p, least.ImpedanceAt))} with a sine at worst";
        if (load is NetworkLoad network)
            currents += $", {QuantityFormat.Short(network.WorstProgrammeCurrent(V_p))} with the worst programme";
        var figure = Figure.Line(
            $"{QuantityFormat.Short(least.Impedance)} at least, but {QuantityFormat.Short(least.PeakEquivalent)} to a transistor",
            Axis.Log("frequency", "Hz"),
            Axis.Log("resistance", "Ω"),
            new LineSeries("impedance", sweep.Hertz, sweep.Ohms),
            new LineSeries("average-equivalent resistor", sweep.Hertz, sweep.AverageOhms),
            new LineSeries("peak-equivalent resistor", sweep.Hertz, sweep.PeakOhms));
        return figure with
        {
            Title = least.PeakEquivalent < 0.999 * least.Impedance ? figure.Title : $"{QuantityFormat.Short(least.Impedance)}, to a transistor as well",
            Subtitle = currents,
            // A load that is the same at every frequency has no frequency to point at.
            Marks = sweep.Ohms.Max() < 1.001 * sweep.Ohms.Min() ? [] :
            [
                new Mark(least.ImpedanceAt.Hertz, least.Impedance.Ohms, $"{QuantityFormat.Short(least.Impedance)} at {QuantityFormat.Short(least.ImpedanceAt)}"),
                new Mark(least.PeakEquivalentAt.Hertz, least.PeakEquivalent.Ohms, $"{QuantityFormat.Short(least.PeakEquivalent)} at {QuantityFormat.Short(least.PeakEquivalentAt)}"),
            ],
            Note = "The equivalent resistors heat an ideal class-B pair as much: on average at the worst level, and one device at its peak instantaneous dissipation at full swing.",
        };
    }
}
