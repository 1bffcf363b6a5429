using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Protection;

/// <summary>The peak current that an output stage can give: up to its limiters, and up to what its drivers command.</summary>
public static partial class AvailableCurrent
{
    private const string Sedra = "Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 5: collector current from base current";

    /// <summary>What the drivers command: h_FE·I_B.</summary>
    /// <param name="I_B">The greatest base current that the driver of a side can give to all outputs of that side; 0 A or more.</param>
    /// <param name="h_FE">Current gain of the outputs at that peak current and V_CE, not at idle; greater than 0.</param>
    /// <returns>Peak current of all transistors of a side together, in A.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Sedra, Symbol = "I_cmd")]
    [RecordName("available-current.commanded")]
    public static ElectricCurrent Commanded(ElectricCurrent I_B, double h_FE)
    {
        Guard.NotNegative(I_B);
        Guard.Positive(h_FE);
        return h_FE * I_B;
    }

    /// <summary>What the stage gives: n·I_lim, or h_FE·I_B where that is less.</summary>
    /// <param name="n">Pairs in parallel that share equally; 1 or more.</param>
    /// <param name="I_lim">Limit of one transistor at the V_CE that counts and its hottest sense junction (<see cref="VoltageCurrentLimiter.CurrentAtTransistor"/>); 0 A or more.</param>
    /// <param name="I_B">The greatest base current that the driver of a side can give; 0 A or more.</param>
    /// <param name="h_FE">Current gain of the outputs at that peak current; greater than 0.</param>
    /// <returns>Peak current of a side, in A.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("derived: whichever acts first; " + Sedra, Symbol = "I_avail")]
    [RecordName("available-current.of")]
    public static ElectricCurrent Of(int n, ElectricCurrent I_lim, ElectricCurrent I_B, double h_FE)
    {
        Guard.Positive(n);
        Guard.NotNegative(I_lim);
        var I_cmd = Commanded(I_B, h_FE);
        var I_n = n * I_lim;
        if (I_n <= I_cmd)
            return I_n;
        return I_cmd;
    }
}
