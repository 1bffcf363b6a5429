using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Loads;

/// <summary>What a load asks of an amplifier at its worst frequency from 10 Hz to 20 kHz: a row of a table of loads.</summary>
/// <param name="Name">The load in words.</param>
/// <param name="PeakVoltage">Peak voltage (not rms) at the load.</param>
/// <param name="Least">Its least impedance and equivalent resistors.</param>
/// <param name="WorstProgrammeCurrent">The worst programme current at that peak voltage; null where the load has no impulse response.</param>
public sealed record LoadDemand(string Name, ElectricPotential PeakVoltage, MinimumLoad Least, ElectricCurrent? WorstProgrammeCurrent)
{
    /// <summary>Peak current of a sine at the least impedance.</summary>
    public ElectricCurrent SineCurrent => OutputCurrent.Sine(PeakVoltage, Least.Impedance);

    /// <inheritdoc/>
    public override string ToString() => $"{Name} at {QuantityFormat.Short(PeakVoltage)} peak: {QuantityFormat.Short(SineCurrent)}, {QuantityFormat.Short(Least.PeakEquivalent)} to a transistor";
}
