using EightOhm.Explaining;
using UnitsNet;

namespace EightOhm.OutputStages;

/// <summary>The powers of an output stage at one level of a sine.</summary>
/// <param name="Level">Peak voltage at the load.</param>
/// <param name="Rail">One rail at this level.</param>
/// <param name="SupplyPower">What both rails deliver together.</param>
/// <param name="LoadPower">What the load takes.</param>
/// <param name="Resistors">The dissipation of all emitter resistors together.</param>
/// <param name="Total">The power dissipation of all transistors together.</param>
/// <param name="PerDevice">The power dissipation of one transistor.</param>
/// <param name="Efficiency">Load's over supply's power.</param>
public sealed record StagePowers(
    [property: Symbol("V_p")] ElectricPotential Level,
    [property: Symbol("V")] ElectricPotential Rail,
    [property: Symbol("P_S")] Power SupplyPower,
    [property: Symbol("P_L")] Power LoadPower,
    [property: Symbol("P_R")] Power Resistors,
    [property: Symbol("P_D")] Power Total,
    [property: Symbol("P_one")] Power PerDevice,
    [property: Symbol("eta")] Ratio Efficiency)
{
    /// <summary>The mean current of one rail.</summary>
    [Symbol("I_rail")]
    public ElectricCurrent RailCurrent => ElectricCurrent.FromAmperes((double)SupplyPower.Watts / 2 / Rail.Volts);
}

/// <summary>The powers of an output stage on noise-like music: the load's current is Gaussian.</summary>
/// <param name="Rms">Rms voltage at the load.</param>
/// <param name="Room">The crest factor that the swing allows: full swing over rms; above it, peaks clip.</param>
/// <param name="Clipped">The share of time that a Gaussian spends beyond full swing.</param>
/// <param name="Rail">One rail, at the mean current.</param>
/// <param name="SupplyPower">What both rails deliver together.</param>
/// <param name="LoadPower">What the load takes.</param>
/// <param name="Resistors">The dissipation of all emitter resistors together.</param>
/// <param name="Total">The power dissipation of all transistors together.</param>
/// <param name="PerDevice">The power dissipation of one transistor.</param>
public sealed record NoisePowers(
    [property: Symbol("V_rms")] ElectricPotential Rms,
    [property: Symbol("C_f")] EightOhm.Quantities.Gain Room,
    Ratio Clipped,
    [property: Symbol("V")] ElectricPotential Rail,
    [property: Symbol("P_S")] Power SupplyPower,
    [property: Symbol("P_L")] Power LoadPower,
    [property: Symbol("P_R")] Power Resistors,
    [property: Symbol("P_D")] Power Total,
    [property: Symbol("P_one")] Power PerDevice);

/// <summary>The peak instantaneous dissipation of one side of an output stage, and where on the waveform it happens.</summary>
/// <param name="Level">Peak voltage at the load of the sine that makes it.</param>
/// <param name="Side">The dissipation of all transistors of the side together, at that moment.</param>
/// <param name="PerDevice">The power dissipation of one transistor, at that moment.</param>
/// <param name="Output">The load's voltage then, towards the side's own rail; negative past the middle.</param>
/// <param name="Across">The voltage across the transistors then.</param>
/// <param name="Current">The current of the side then.</param>
public sealed record PeakDissipation(
    [property: Symbol("V_p")] ElectricPotential Level,
    [property: Symbol("p_max")] Power Side,
    [property: Symbol("p_one")] Power PerDevice,
    [property: Symbol("v_o")] ElectricPotential Output,
    [property: Symbol("V_CE")] ElectricPotential Across,
    [property: Symbol("I_C")] ElectricCurrent Current);
