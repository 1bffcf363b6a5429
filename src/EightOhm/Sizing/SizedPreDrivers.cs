using EightOhm.Devices;
using EightOhm.OutputStages;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Sizing;

/// <summary>A choice of pre-drivers: small and fast, without a sink, since what they have of collector capacitance hangs on the second stage.</summary>
/// <param name="Npn">Of the positive side.</param>
/// <param name="Pnp">Of the negative.</param>
/// <param name="AreEnough">Whether both bear the rails, and their heat in the air of the case.</param>
internal sealed record SizedPreDrivers(Transistor Npn, Transistor Pnp, bool AreEnough)
{
    /// <summary>The resistor between their emitters, as the design has it.</summary>
    internal static readonly ElectricResistance Between = 300.Ohm;

    /// <summary>Their standing current: what lies between their emitters is two junctions of drivers and two of outputs.</summary>
    internal static readonly ElectricCurrent Standing = Drivers.Standing(2.85.V, Between);

    // As the design has it: case to air. Of the worst sine, what its crests add to the heat at idle.
    private static readonly ThermalResistance ToAir = 60.K_per_W;
    private const double Crests = 1.2;

    /// <summary>The least collector capacitance of the set, of those that bear it.</summary>
    public static SizedPreDrivers Of(DeviceSet set, ElectricPotential noLoad, AmplifierTargets targets, SizingBasis basis)
    {
        var heat = Crests * (noLoad * Standing);
        bool Bears(Transistor t) => basis.VoltageUse.DecimalFractions * t.MaxCollectorEmitterVoltage.Volts >= 2 * noLoad.Volts
            && t.GainTable[0].Current <= Standing && 2 * Standing <= t.GainTable[^1].Current
            && basis.InsideAir(targets) + (heat * (t.JunctionToCase + ToAir)) <= basis.Junction;
        var all = set.Of<Transistor>().OrderBy(t => !Bears(t)).ThenBy(t => t.OutputCapacitance.Farads).ToList();
        var (npn, pnp) = (all.First(t => t.Polarity == Polarity.Npn), all.First(t => t.Polarity == Polarity.Pnp));
        return new(npn, pnp, Bears(npn) && Bears(pnp));
    }
}
