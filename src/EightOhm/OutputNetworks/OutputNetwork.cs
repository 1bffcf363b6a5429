using System.Numerics;
using EightOhm.Explaining;
using EightOhm.Feedback;
using EightOhm.Loads;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.OutputNetworks;

/// <summary>What lies between the followers and the loudspeaker: the loop's own output resistance, the Zobel network, the coil with its resistor, the cable.</summary>
/// <remarks>The damping factor of a sheet is mostly the loop's, and small resistance it is; from a few kilohertz on the coil decides, and the cable everywhere.</remarks>
public sealed record OutputNetwork
{
    /// <summary>Inductance of the coil; greater than 0 H.</summary>
    [Symbol("L_o")]
    public required ElectricInductance Inductance { get; init => field = Guard.Positive(value); }

    /// <summary>Resistance of its wire; 0 Ω or more.</summary>
    [Symbol("R_coil")]
    public ElectricResistance CoilResistance { get; init => field = Guard.NotNegative(value); }

    /// <summary>The resistor across the coil; greater than 0 Ω.</summary>
    [Symbol("R_damp")]
    public required ElectricResistance DampingResistor { get; init => field = Guard.Positive(value); }

    /// <summary>Resistor of the Zobel network, from the output to ground before the coil; 10 Ω when not given.</summary>
    [Symbol("R_Z")]
    public ElectricResistance ZobelResistor { get; init => field = Guard.Positive(value); } = ElectricResistance.FromOhms(10);

    /// <summary>Capacitor of the Zobel network; 100 nF when not given.</summary>
    [Symbol("C_Z")]
    public ElectricCapacitance ZobelCapacitor { get; init => field = Guard.Positive(value); } = ElectricCapacitance.FromFarads(100e-9);

    /// <summary>Output resistance of the followers without feedback; 0 Ω or more.</summary>
    [Symbol("r_o")]
    public ElectricResistance OpenLoopResistance { get; init => field = Guard.NotNegative(value); }

    /// <summary>The loop gain of the amplifier without a load; none for an amplifier whose output is ideal.</summary>
    public TransferFunction? Loop { get; init; }

    /// <summary>The cable to the loudspeaker; none where there is none.</summary>
    public Cable? Cable { get; init; }

    /// <summary>The output impedance at a frequency, in its parts.</summary>
    /// <param name="f">Frequency; greater than 0 Hz.</param>
    /// <param name="R_L">The load that damping is told of, nominal; greater than 0 Ω.</param>
    /// <returns>What loop, coil and cable have, and what it comes to at the terminals and at the loudspeaker.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    /// <exception cref="InvalidOperationException">The loop is unstable: it has no output impedance.</exception>
    [Worked("r_o/(1 + T), with the Zobel network beside it, then the coil with its resistor, then the cable: complex impedances in series")]
    public OutputImpedance ImpedanceAt(Frequency f, ElectricResistance R_L)
    {
        Guard.Positive(R_L);
        var (loop, coil, cable) = Parts(2 * Math.PI * Guard.Positive(f).Hertz);
        return new(f, Ohms(loop), Ohms(coil), Ohms(cable), Ohms(loop + coil), Ohms(loop + coil + cable), Over(R_L, loop + coil), Over(R_L, loop + coil + cable));
    }

    /// <summary>The output impedance over frequency.</summary>
    /// <param name="frequencies">Each greater than 0 Hz.</param>
    /// <param name="R_L">The load that damping is told of, nominal; greater than 0 Ω.</param>
    /// <returns>The impedance at each, in their order.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Worked("the impedance at each frequency, by its parts in series")]
    public IReadOnlyList<OutputImpedance> ImpedanceOver(IReadOnlyList<Frequency> frequencies, ElectricResistance R_L)
    {
        ArgumentNullException.ThrowIfNull(frequencies);
        return [.. frequencies.Select(f => ImpedanceAt(f, R_L))];
    }

    /// <summary>What is left of the level at a resistive loudspeaker.</summary>
    /// <param name="f">Frequency; greater than 0 Hz.</param>
    /// <param name="R_L">The load; greater than 0 Ω.</param>
    /// <returns>The gain of the divider that the whole output impedance makes with it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Worked("the load over the load and the output impedance, complex")]
    public Gain Level(Frequency f, ElectricResistance R_L)
    {
        var (loop, coil, cable) = Parts(2 * Math.PI * Guard.Positive(f).Hertz);
        Complex load = Guard.Positive(R_L).Ohms;
        return Gain.FromRatio((load / (load + loop + coil + cable)).Magnitude);
    }

    /// <summary>This network with capacitors of many sizes at its terminals, and the worst of them.</summary>
    /// <param name="R_L">Resistive load beside the capacitor, greater than 0 Ω; none for the capacitor alone.</param>
    /// <param name="capacitors">The capacitors, each greater than 0 F; 48 from 100 pF to 2.2 µF when not given.</param>
    /// <returns>For each: whether it is stable, margin, sensitivity and the peak at the terminals; the worst named.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <exception cref="ArgumentException">There is no capacitor.</exception>
    [Worked("the loop gain over 1 + r_o·(the network's admittance with that capacitor), its closed-loop poles, its margins, and the highest gain at the terminals")]
    public CapacitiveLoads WithCapacitors(ElectricResistance? R_L = null, IReadOnlyList<ElectricCapacitance>? capacitors = null) => CapacitiveLoads.Of(this, R_L, capacitors);

    private (Complex Loop, Complex Coil, Complex Cable) Parts(double w)
    {
        Complex coil = new(CoilResistance.Ohms, w * Inductance.Henries), damped = coil * DampingResistor.Ohms / (coil + DampingResistor.Ohms);
        Complex loop = OpenLoopResistance.Ohms;
        if (Loop is { } T)
        {
            if (!T.Sensitivity().IsStable)
                throw new InvalidOperationException($"The loop is {LoopStability.Of(T)}: an oscillator has no output impedance.");
            loop /= 1 + T.At(w);
        }

        var zobel = ZobelResistor.Ohms + (1 / new Complex(0, w * ZobelCapacitor.Farads));
        var beside = loop == Complex.Zero ? loop : loop * zobel / (loop + zobel);
        return (beside, damped, Cable is { } c ? new Complex(c.LoopResistance.Ohms, w * c.LoopInductance.Henries) : Complex.Zero);
    }

    private static ElectricResistance Ohms(Complex z) => ElectricResistance.FromOhms(z.Magnitude);

    private static double Over(ElectricResistance load, Complex z) => load.Ohms / z.Magnitude;
}
