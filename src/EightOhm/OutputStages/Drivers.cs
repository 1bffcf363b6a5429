using EightOhm.Explaining;
using EightOhm.Quantities;
using MathNet.Numerics.Integration;
using UnitsNet;

namespace EightOhm.OutputStages;

/// <summary>What the drivers of an output stage give and how warm they get: a resistor between their emitters keeps both conducting.</summary>
/// <remarks>Heat is that of one driver, on the rail of the outputs, its own base-emitter drops of about 2 V out of tens neglected (they make it
/// cooler). A pre-driver is a driver too: its gain is h_FE of outputs and drivers multiplied, its standing current its own and the drivers' over
/// their gain.</remarks>
public static partial class Drivers
{
    private const string Source = "Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 14: supply less load, of one side, with the base current of the outputs";

    /// <summary>Base current of all outputs of a side together: I/h_FE.</summary>
    /// <param name="I">Their current together, peak for the peak; 0 A or more.</param>
    /// <param name="h_FE">Their current gain at that current, droop included; greater than 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 5: i_B = i_C/β", Symbol = "I_B")]
    [RecordName("drivers.base-current")]
    public static ElectricCurrent BaseCurrent(ElectricCurrent I, double h_FE)
    {
        Guard.NotNegative(I);
        Guard.Positive(h_FE);
        return I / h_FE;
    }

    /// <summary>Standing current of both drivers: the bias of the outputs over the resistor between the drivers' emitters.</summary>
    /// <param name="V">Voltage between the drivers' emitters: two base-emitter drops of the outputs and their emitter resistors' at idle; greater than 0 V.</param>
    /// <param name="R">Resistor between the drivers' emitters; greater than 0 Ω.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Formula("C. K. Alexander & M. N. O. Sadiku, Fundamentals of Electric Circuits, 5th ed., ch. 2: Ohm's law", Symbol = "I_D")]
    [RecordName("drivers.standing")]
    public static ElectricCurrent Standing(ElectricPotential V, ElectricResistance R)
    {
        Guard.Positive(V);
        Guard.Positive(R);
        return V / R;
    }

    /// <summary>Mean heat of one driver over a sine: V·I_D, and one side's share of the outputs' heat over h_FE.</summary>
    /// <param name="V">One rail (not rail to rail) at this level; greater than 0 V.</param>
    /// <param name="V_p">Peak voltage at the load; from 0 V to the rail.</param>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <param name="phi">Phase of the load, −90° to 90°.</param>
    /// <param name="h_FE">Current gain of the outputs, taken as constant; greater than 0. With droop: <see cref="At"/>.</param>
    /// <param name="I_D">Standing current of the driver; 0 A or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source, Symbol = "P_drv")]
    [RecordName("drivers.heat")]
    public static Power Heat(ElectricPotential V, ElectricPotential V_p, ElectricResistance Z, Angle phi, double h_FE, ElectricCurrent I_D)
    {
        Guard.Positive(h_FE);
        Guard.NotNegative(I_D);
        var P_S = ClassB.SupplyPower(V, V_p, Z);
        var P_L = ClassB.LoadPower(V_p, Z, phi);
        return V * I_D + (P_S - P_L) / (2 * h_FE);
    }

    /// <summary>The worst mean heat of one driver over all sine levels.</summary>
    /// <param name="V">One rail (not rail to rail), at high mains if that is what counts; greater than 0 V.</param>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <param name="phi">Phase of the load, −90° to 90°.</param>
    /// <param name="h_FE">Current gain of the outputs, taken as constant: the least; greater than 0.</param>
    /// <param name="I_D">Standing current of the driver; 0 A or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source + ", maximised over the level", Symbol = "P_drv")]
    [RecordName("drivers.worst-heat")]
    public static Power WorstHeat(ElectricPotential V, ElectricResistance Z, Angle phi, double h_FE, ElectricCurrent I_D)
    {
        Guard.InReach(V);
        Guard.Positive(h_FE);
        Guard.NotNegative(I_D);
        return V * I_D + ClassB.Worst(V, Z, phi) / (2 * h_FE);
    }

    /// <summary>What the outputs ask of a driver at a level when their gain droops with current.</summary>
    /// <param name="V">One rail (not rail to rail) at this level; at least the swing.</param>
    /// <param name="V_p">Peak voltage at the load; 0 V or more.</param>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <param name="phi">Phase of the load, −90° to 90°.</param>
    /// <param name="n">Pairs in parallel; 1 or more.</param>
    /// <param name="h_FE">Current gain of an output transistor at its own collector current, above 0 everywhere.</param>
    /// <param name="I_D">Standing current of the driver; 0 A or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range, or the gain not above 0 at some current.</exception>
    [Worked("the base currents of the output devices over a half-wave by Gauss-Legendre quadrature, gain drooping with current")]
    public static DriverLoad At(ElectricPotential V, ElectricPotential V_p, ElectricResistance Z, Angle phi, int n, Func<ElectricCurrent, double> h_FE, ElectricCurrent I_D)
    {
        ArgumentNullException.ThrowIfNull(h_FE);
        Guard.Between(V_p, default, Guard.Positive(V), hint: "The output cannot swing past its rail.");
        Guard.Positive(n);
        Guard.NotNegative(I_D);
        Guard.Between(phi, -90.deg, 90.deg, hint: LoadWithEmitterResistor.Phase90);
        Guard.Positive(Z);
        double Base(double current) => current / Guard.Positive(h_FE(ElectricCurrent.FromAmperes(current / n)), nameof(h_FE));
        return Of(V, V_p, Z, phi, Base, I_D) is var load && V_p > default(ElectricPotential) ? load : load with { Gain = h_FE(default) };
    }

    /// <summary>The same from the base current of a side over its collector current, in A.</summary>
    internal static DriverLoad Of(ElectricPotential V, ElectricPotential V_p, ElectricResistance Z, Angle phi, Func<double, double> bases, ElectricCurrent I_D)
    {
        double rail = V.Volts, volts = V_p.Volts, peak = volts / Z.Ohms, lag = phi.Radians;

        // Over the conducting half-wave, where the integrand is smooth.
        var sum = GaussLegendreRule.Integrate(a => (rail - (volts * Math.Sin(a + lag))) * bases(peak * Math.Sin(a)), 0, Math.PI, 64);
        var most = bases(peak);
        var dissipation = (rail * I_D.Amperes) + (sum / (2 * Math.PI));
        return new DriverLoad(ElectricCurrent.FromAmperes(most), peak > 0 ? peak / most : double.PositiveInfinity, I_D + ElectricCurrent.FromAmperes(most), Power.FromWatts(dissipation));
    }
}

/// <summary>What a driver has to do at a level.</summary>
/// <param name="BaseCurrent">Peak base current of all outputs of its side.</param>
/// <param name="Gain">Their current gain at the peak.</param>
/// <param name="PeakCurrent">The driver's own peak current, standing current included.</param>
/// <param name="Heat">The driver's mean heat over the sine.</param>
public sealed record DriverLoad(
    [property: Symbol("I_B")] ElectricCurrent BaseCurrent,
    [property: Symbol("h_FE")] double Gain,
    [property: Symbol("I_pk")] ElectricCurrent PeakCurrent,
    [property: Symbol("P_drv")] Power Heat);
