using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Supply;

/// <summary>A mains fuse: its rating from the current it carries, and what it must survive at each switch-on.</summary>
/// <remarks>
/// A fuse protects the wiring and the transformer from burning, not the transistors. Caveats:
/// the rms current counts, and that of a rectifier is far above its mean; a fuse in warm air is worth less than its rating, by its maker's curve; an inrush
/// needs a time-lag (slow-blow) type and enough melting I²t; each surge ages it, so the pulse may be only a share of the melting I²t
/// (a maker's chart: 22 % for 100 000 pulses, 29 % for 10 000, 38 % for 1000, 48 % for 100, ten seconds between them); its breaking capacity and voltage must
/// fit the mains; ratings under UL and IEC differ. The apparatus standard and local codes decide. Replace like with like, never larger.
/// </remarks>
public static partial class Fuse
{
    private const string Pulses = "Littelfuse, Circuit Protection Products, fuse selection guide, chart 1: waveshapes";

    /// <summary>The least rating: I/(a·k_T).</summary>
    /// <param name="I">Greatest continuous current, rms; 0 A or more.</param>
    /// <param name="a">Share of its rating that the fuse shall carry, 75 % by some makers, 70 % by others; greater than 0, at most 100 %.</param>
    /// <param name="k_T">Share of its rating left at the ambient, from the maker's curve; greater than 0 (above 100 % in the cold).</param>
    /// <returns>The least rated current, rms, in A.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>Fuse.Rating(1.5.A, 75.percent, 90.percent)   // 2.222 A</code></example>
    [Formula("Littelfuse, fuse selection guide: 75 % of the rating at 25 °C, re-rated for temperature", Symbol = "I_F")]
    [RecordName("fuse.rating")]
    public static ElectricCurrent Rating(ElectricCurrent I, Ratio a, Ratio k_T)
    {
        Guard.NotNegative(I);
        Guard.Positive(a);
        Guard.Between(a, 0.percent, 100.percent);
        Guard.Positive(k_T);
        return I / (a.DecimalFractions * k_T.DecimalFractions);
    }

    /// <summary>I²t of a half sine: I_p²·t/2.</summary>
    /// <param name="I_p">Peak of the pulse; 0 A or more.</param>
    /// <param name="t">Its duration; 0 s or more.</param>
    /// <returns>The I²t of the pulse, in A²·s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is negative.</exception>
    [Formula(Pulses, Symbol = "W_F")]
    [RecordName("fuse.half-sine")]
    public static JouleIntegral HalfSine(ElectricCurrent I_p, Duration t)
    {
        Guard.NotNegative(I_p);
        Guard.NotNegative(t);
        return I_p * I_p * t / 2;
    }

    /// <summary>I²t of a triangle: I_p²·t/3.</summary>
    /// <param name="I_p">Peak of the pulse; 0 A or more.</param>
    /// <param name="t">Its duration; 0 s or more.</param>
    /// <returns>The I²t of the pulse, in A²·s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is negative.</exception>
    [Formula(Pulses, Symbol = "W_F")]
    [RecordName("fuse.triangle")]
    public static JouleIntegral Triangle(ElectricCurrent I_p, Duration t)
    {
        Guard.NotNegative(I_p);
        Guard.NotNegative(t);
        return I_p * I_p * t / 3;
    }

    /// <summary>I²t of an exponential decay: I_p²·τ/2. The shape of a capacitor that charges through a resistor.</summary>
    /// <param name="I_p">Peak of the pulse; 0 A or more.</param>
    /// <param name="tau">Its time constant (not its length); 0 s or more.</param>
    /// <returns>The I²t of the pulse, in A²·s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is negative.</exception>
    [Formula(Pulses, Symbol = "W_F")]
    [RecordName("fuse.decay")]
    public static JouleIntegral Decay(ElectricCurrent I_p, Duration tau)
    {
        Guard.NotNegative(I_p);
        Guard.NotNegative(tau);
        return I_p * I_p * tau / 2;
    }

    /// <summary>The least melting I²t of the fuse: that of the pulse over the share allowed.</summary>
    /// <param name="W_p">I²t of one pulse; 0 A²s or more.</param>
    /// <param name="a">Share of the melting I²t that one pulse may have, such as 22.percent for 100 000 pulses; greater than 0, at most 100 %.</param>
    /// <returns>The least melting I²t, in A²·s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("Littelfuse, Circuit Protection Products, fuse selection guide, chart 2: pulse cycles withstood", Symbol = "W_F")]
    [RecordName("fuse.least-melting")]
    public static JouleIntegral LeastMelting(JouleIntegral W_p, Ratio a)
    {
        Guard.NotNegative(W_p);
        Guard.Positive(a);
        Guard.Between(a, 0.percent, 100.percent);
        return W_p / a.DecimalFractions;
    }
}
