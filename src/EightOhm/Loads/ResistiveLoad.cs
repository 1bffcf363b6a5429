using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Loads;

/// <summary>A resistor, such as the dummy load of the bench.</summary>
public sealed class ResistiveLoad : NetworkLoad
{
    /// <summary>Makes the load.</summary>
    /// <param name="R_L">Resistance; greater than 0 Ω.</param>
    /// <exception cref="ArgumentOutOfRangeException">The resistance is not positive.</exception>
    public ResistiveLoad(ElectricResistance R_L)
        : base(new(Guard.Positive(R_L, hint: "Give the load, for example 8.Ohm; a short is a fault and not a load.").Ohms, 0, 1, 1, 0)) => this.R_L = R_L;

    /// <summary>Resistance.</summary>
    [Symbol("R_L")]
    [Called("resistance")]
    public ElectricResistance R_L { get; }
}
