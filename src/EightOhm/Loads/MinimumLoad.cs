using EightOhm.Explaining;
using EightOhm.Numerics;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Loads;

/// <summary>How hard a load is in a band: its least impedance and least equivalent resistors, each with its own frequency.</summary>
/// <param name="Impedance">Least magnitude of the impedance.</param>
/// <param name="ImpedanceAt">Where that is.</param>
/// <param name="AverageEquivalent">Least average-equivalent resistor: what decides the power dissipation.</param>
/// <param name="AverageEquivalentAt">Where that is.</param>
/// <param name="PeakEquivalent">Least peak-equivalent resistor: what decides the safe area.</param>
/// <param name="PeakEquivalentAt">Where that is.</param>
public sealed record MinimumLoad(
    [property: Symbol("Z_min")] ElectricResistance Impedance,
    [property: Symbol("f_Z")] Frequency ImpedanceAt,
    [property: Symbol("R_avg")] ElectricResistance AverageEquivalent,
    [property: Symbol("f_avg")] Frequency AverageEquivalentAt,
    [property: Symbol("R_pk")] ElectricResistance PeakEquivalent,
    [property: Symbol("f_pk")] Frequency PeakEquivalentAt)
{
    internal static MinimumLoad Of(Load load, Frequency from, Frequency to)
    {
        var (low, high) = Load.Band(from, to);
        var (f_Z, Z) = LogScan.Least(f => load.Polar(f).Ohms, low, high);
        var (f_avg, average) = LogScan.Least(f => load.Polar(f) is var (z, phase) ? z * EquivalentResistor.AverageFactor(phase) : 0, low, high);
        var (f_pk, peak) = LogScan.Least(f => load.Polar(f) is var (z, phase) ? z * EquivalentResistor.PeakFactor(phase) : 0, low, high);
        return new(Z.Ohm, f_Z.Hz, average.Ohm, f_avg.Hz, peak.Ohm, f_pk.Hz);
    }
}
