using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Devices;

/// <summary>The leakage current of a reverse-biased junction, I_CBO, and how it grows with temperature.</summary>
/// <remarks>Hole and electron pairs made by heat. A sheet's value is often its test limit: the device may leak a hundred times less.</remarks>
public static partial class Leakage
{
    private const string Source = "Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 3 and 5: the reverse current doubles for every 10 °C";

    /// <summary>The leakage at a junction temperature: I_0·2^((T − T_0)/ΔT_2).</summary>
    /// <param name="I_0">The leakage that is known; greater than 0 A, in A.</param>
    /// <param name="T_0">The junction temperature at which it is.</param>
    /// <param name="dT_2">The rise that doubles it; greater than 0 K. The rule for silicon is 10 K, see <see cref="Doubling"/> for two values of a sheet.</param>
    /// <param name="T">The junction temperature asked for.</param>
    /// <returns>A.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Formula(Source, Symbol = "I_CBO")]
    [RecordName("leakage.at")]
    public static ElectricCurrent At(ElectricCurrent I_0, Temperature T_0, TemperatureDelta dT_2, Temperature T)
    {
        Guard.Positive(I_0);
        Guard.Positive(T_0);
        Guard.Positive(dT_2);
        Guard.Positive(T);
        return Pow(2, (T - T_0) / dT_2) * I_0;
    }

    /// <summary>The rise that doubles a leakage of which a sheet gives two values: (T_2 − T_1)·ln 2/ln(I_2/I_1).</summary>
    /// <param name="I_1">The lower leakage; greater than 0 A.</param>
    /// <param name="T_1">Its junction temperature.</param>
    /// <param name="I_2">The higher leakage; greater than I_1.</param>
    /// <param name="T_2">Its junction temperature; above T_1.</param>
    /// <returns>K.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The leakage does not grow with the temperature.</exception>
    [Formula("derived from the doubling", Symbol = "dT_2")]
    [RecordName("leakage.doubling")]
    public static TemperatureDelta Doubling(ElectricCurrent I_1, Temperature T_1, ElectricCurrent I_2, Temperature T_2)
    {
        Guard.Positive(I_1);
        Guard.Positive(I_2 - I_1, nameof(I_2), "A leakage grows with the temperature.");
        Guard.Positive(T_2 - T_1, nameof(T_2), "Give the cooler reading first.");
        return (T_2 - T_1) * (Ln(2.0) / Ln(I_2 / I_1));
    }

    /// <summary>The share of a standing current that the leakage of what it drives takes: n·I_CBO/I_D.</summary>
    /// <remarks>The leakage of an output transistor leaves by its base and flows in the resistor between the drivers' emitters. As long as it is a small share, the drivers
    /// hold the bias; near 100 % they are off, the outputs hold themselves on, h_FE + 1 times their leakage flows, and a hot stage runs away. Keep it below 10 % at the hottest
    /// junction (common practice, no source).</remarks>
    /// <param name="n">Output transistors of a side in parallel; 1 or more.</param>
    /// <param name="I_CBO">Leakage of one at its hottest junction, <see cref="At"/>; 0 A or more.</param>
    /// <param name="I_D">Standing current of the driver; greater than 0 A.</param>
    /// <returns>The share, 0 when nothing leaks, as a fraction.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("Kirchhoff's current law at the outputs' bases", Symbol = "k_L")]
    [RecordName("leakage.share-of-standing")]
    public static Ratio ShareOfStanding(int n, ElectricCurrent I_CBO, ElectricCurrent I_D)
    {
        Guard.Positive(n);
        Guard.NotNegative(I_CBO);
        Guard.Positive(I_D);
        return Ratio.FromDecimalFractions(n * (I_CBO / I_D));
    }
}
