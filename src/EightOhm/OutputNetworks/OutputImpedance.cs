using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.OutputNetworks;

/// <summary>Output impedance at one frequency, by where it comes from. Magnitudes: the parts stand at angles to each other and do not add up as numbers.</summary>
/// <param name="Frequency">The frequency.</param>
/// <param name="Loop">The followers, divided by the loop gain there.</param>
/// <param name="Coil">The coil with its resistor.</param>
/// <param name="Cable">The cable, there and back; 0 Ω where there is none.</param>
/// <param name="AtTerminals">Loop and coil together.</param>
/// <param name="AtLoudspeaker">The cable with them.</param>
/// <param name="DampingAtTerminals">The nominal load over that at the terminals.</param>
/// <param name="DampingAtLoudspeaker">The nominal load over that at the loudspeaker.</param>
public sealed record OutputImpedance(
    [property: Symbol("f")] Frequency Frequency,
    [property: Symbol("Z_loop")] ElectricResistance Loop,
    [property: Symbol("Z_coil")] ElectricResistance Coil,
    [property: Symbol("Z_cable")] ElectricResistance Cable,
    [property: Symbol("Z_o")] ElectricResistance AtTerminals,
    [property: Symbol("Z_sys")] ElectricResistance AtLoudspeaker,
    [property: Symbol("DF")] double DampingAtTerminals,
    [property: Symbol("DF_sys")] double DampingAtLoudspeaker);
