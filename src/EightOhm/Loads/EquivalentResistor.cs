using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Constants;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Loads;

/// <summary>The resistor that stresses a class-B pair as much as a load of magnitude |Z| and phase φ: two figures, for two stresses.</summary>
/// <remarks>Ideal class B: no bias, no emitter resistors, a rail that does not sag. A lower resistor is the harder load. The sign of the phase
/// does not matter: leading and lagging current trace the same ellipse in opposite senses.</remarks>
public static partial class EquivalentResistor
{
    internal const string NotPassive = "A passive load takes power, so its phase is within a quarter turn; check whether radians were taken for degrees.";
    private const string AverageSource = "derived: the maximum mean dissipation over all levels of a class-B pair set equal to that of a resistor, 2·V²/(π²·R); resistive case: Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 14";
    private const string PeakSource = "derived: (V − V·sin θ)·(V/|Z|)·sin(θ − φ) is greatest at θ = 150° + 2·φ/3; set equal to a resistor's V²/(4·R)";

    /// <summary>The resistor that makes the pair dissipate as much on average, each at its sine of maximum dissipation: |Z|·cos φ up to 50.46°, less beyond.</summary>
    /// <remarks>Beyond the phase whose cosine is 2/π the level of maximum dissipation would be above full swing, so full swing is the worst.</remarks>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <param name="phi">Phase of the load, from −90° (a capacitor) to 90° (an inductor).</param>
    /// <returns>The resistor of equal average dissipation, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(AverageSource, Symbol = "R_avg")]
    [RecordName("equivalent-resistor.average")]
    public static ElectricResistance Average(ElectricResistance Z, Angle phi)
    {
        Guard.Positive(Z);
        Guard.Between(phi, (-90).deg, 90.deg, hint: NotPassive);
        var c = Cos(phi);
        if (c >= 2 / pi)
            return c * Z;
        return 4 / (pi * pi * (4 / pi - c)) * Z;
    }

    /// <summary>The resistor with the same peak instantaneous dissipation in one device, at full swing: |Z|/(4·(1 − sin(30° − 2·|φ|/3))·sin(30° + |φ|/3)).</summary>
    /// <remarks>Full swing is the worst level for every phase. 1·|Z| at 0°, 0.354·|Z| at 45°, 0.192·|Z| at 90°.</remarks>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <param name="phi">Phase of the load, from −90° (a capacitor) to 90° (an inductor).</param>
    /// <returns>The resistor of equal peak dissipation, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(PeakSource, Symbol = "R_pk")]
    [RecordName("equivalent-resistor.peak")]
    public static ElectricResistance Peak(ElectricResistance Z, Angle phi)
    {
        Guard.Positive(Z);
        Guard.Between(phi, (-90).deg, 90.deg, hint: NotPassive);
        var delta = phi >= 0.deg ? phi : -phi;
        var m = (1 - Sin(30.deg - 2 * delta / 3)) * Sin(30.deg + delta / 3);
        return Z / (4 * m);
    }

    // The same two in plain numbers, for scans over frequency (a test compares).

    /// <summary>Average-equivalent resistor over |Z|.</summary>
    internal static double AverageFactor(double radians) =>
        Math.Cos(radians) is var c && c >= 2 / Math.PI ? c : 4 / (Math.PI * Math.PI * ((4 / Math.PI) - c));

    /// <summary>Peak-equivalent resistor over |Z|.</summary>
    internal static double PeakFactor(double radians)
    {
        var third = Math.Abs(radians) / 3;
        return 0.25 / ((1 - Math.Sin((Math.PI / 6) - (2 * third))) * Math.Sin((Math.PI / 6) + third));
    }
}
