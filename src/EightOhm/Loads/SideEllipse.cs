using EightOhm.Quantities;
using EightOhm.Working;
using UnitsNet;

namespace EightOhm.Loads;

/// <summary>The path of one side of a class-B stage in the plane of its safe area: the half cycle in which it conducts.</summary>
/// <remarks>v_CE = V − V_p·sin(α + φ), i = V_p/|Z|·sin α, α from 0° to 180°. The other side's is the same. All the devices of the side together:
/// with n in parallel, each carries the n-th part of the current. No bias, no emitter resistors.</remarks>
public sealed class SideEllipse
{
    private SideEllipse(double[] volts, double[] amperes, ElectricCurrent peak, (double V, double I) hottest)
    {
        (Volts, Amperes, PeakCurrent) = (volts, amperes, peak);
        (HottestVoltage, HottestCurrent) = (hottest.V.V, hottest.I.A);
        PeakHeat = (hottest.V * hottest.I).W;
    }

    /// <summary>The ellipse of a load of magnitude |Z| and phase φ.</summary>
    /// <param name="V">One rail (not rail to rail); greater than 0 V.</param>
    /// <param name="V_p">Peak output voltage; greater than 0 V, at most the rail.</param>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <param name="phi">Phase of the load, from −90° to 90°.</param>
    /// <param name="points">How many points the curve has; 3 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public static SideEllipse Of(ElectricPotential V, ElectricPotential V_p, ElectricResistance Z, Angle phi, int points = 181)
    {
        double rail = Guard.Positive(V).Volts, level = Guard.Positive(Guard.Between(V_p, default, V, hint: "The output cannot swing past its rail.")).Volts;
        double ohms = Guard.Positive(Z).Ohms, phase = Guard.Between(phi, (-90).deg, 90.deg, hint: EquivalentResistor.NotPassive).Radians;
        Guard.NotNegative(points - 3, "points − 3", "A curve has at least three points.");
        (double V, double I) At(double angle) => (rail - (level * Math.Sin(angle + phase)), level / ohms * Math.Sin(angle));
        double Heat(double angle) => At(angle) is var (v, i) ? v * i : 0;

        double[] volts = new double[points], amperes = new double[points];
        for (var k = 0; k < points; k++)
            (volts[k], amperes[k]) = At(Math.PI * k / (points - 1));
        amperes[^1] = 0; // sin π is not quite

        // There may be a hot instant on either side of the peak; a degree is fine enough to tell which is hotter.
        var hot = Enumerable.Range(1, 179).MaxBy(k => Heat(Math.PI * k / 180));
        var (angle, _) = LogScan.Golden(a => -Heat(a), Math.PI * (hot - 1) / 180, Math.PI * (hot + 1) / 180);
        return new(volts, amperes, OutputCurrent.Sine(V_p, Z), At(angle));
    }

    /// <summary>Voltages across the side, in volts, in the order of time.</summary>
    public IReadOnlyList<double> Volts { get; }

    /// <summary>Currents through it, in amperes, in the order of time.</summary>
    public IReadOnlyList<double> Amperes { get; }

    /// <summary>Peak current.</summary>
    [Symbol("I_p")]
    public ElectricCurrent PeakCurrent { get; }

    /// <summary>Heat at the hottest instant, all devices of the side together.</summary>
    [Symbol("P_pk")]
    public Power PeakHeat { get; }

    /// <summary>Voltage across the side at that instant.</summary>
    [Symbol("V_hot")]
    public ElectricPotential HottestVoltage { get; }

    /// <summary>Current at that instant.</summary>
    [Symbol("I_hot")]
    public ElectricCurrent HottestCurrent { get; }
}
