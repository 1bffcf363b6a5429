using EightOhm.Explaining;
using UnitsNet;

namespace EightOhm.Devices;

/// <summary>One corner of a safe-area line, at the card's reference case temperature.</summary>
/// <param name="Voltage">Collector to emitter.</param>
/// <param name="Current">Collector current allowed there.</param>
public readonly record struct SafeAreaPoint([property: Symbol("V_CE")] ElectricPotential Voltage, [property: Symbol("I_C")] ElectricCurrent Current);

/// <summary>One point of a card's current-gain table.</summary>
/// <param name="Current">Collector current.</param>
/// <param name="Gain">h_FE there: the least that the card promises.</param>
public readonly record struct GainPoint([property: Symbol("I_C")] ElectricCurrent Current, [property: Symbol("h_FE")] double Gain);
