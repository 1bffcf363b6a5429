using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Constants;

namespace EightOhm.Supply;

/// <summary>What a rail gives away: a constant current, a resistor, or the half-waves of a playing class-B amplifier.</summary>
/// <remarks>Of one rail. Two channels on the same rail in phase draw twice the peak and twice the idle current of one.</remarks>
public sealed partial record RailCurrent
{
    private RailCurrent()
    {
    }

    /// <summary>The part that flows always, A.</summary>
    public ElectricCurrent Idle { get; private init; }

    /// <summary>Peak of the half-waves; 0 A when nothing plays.</summary>
    public ElectricCurrent Peak { get; private init; }

    /// <summary>Frequency of the signal; 0 Hz when nothing plays.</summary>
    public Frequency Signal { get; private init; }

    /// <summary>Phase of the signal's sine when the mains crosses zero.</summary>
    public Angle Phase { get; private init; }

    /// <summary>The resistor; 0 Ω when there is none.</summary>
    public ElectricResistance Resistance { get; private init; }

    /// <summary>Whether it is the current of a playing amplifier.</summary>
    public bool Plays => Peak > default(ElectricCurrent);

    /// <summary>The mean of a current that does not depend on the rail: idle + peak/π.</summary>
    public ElectricCurrent Mean => Idle + (Peak / Math.PI);

    /// <summary>The mean current of a rail while several channels play a sine in class B: n_ch·I_p/π + I.</summary>
    /// <param name="n_ch">How many channels; 1 or more.</param>
    /// <param name="I_p">Peak current of one channel into its load (not rms); 0 A or more.</param>
    /// <param name="I">What flows besides, always, of all channels together; 0 A or more.</param>
    /// <returns>The mean of one rail, in A.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 14: a half-sine's mean is its peak over π", Symbol = "I_rail")]
    [RecordName("rail-current.mean-of")]
    public static ElectricCurrent MeanOf(int n_ch, ElectricCurrent I_p, ElectricCurrent I)
    {
        Guard.Positive(n_ch);
        Guard.NotNegative(I_p);
        Guard.NotNegative(I);
        return n_ch * I_p / pi + I;
    }

    /// <summary>A current that never changes.</summary>
    /// <param name="current">0 A or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The current is negative.</exception>
    public static RailCurrent Constant(ElectricCurrent current) => new() { Idle = Guard.NotNegative(current, nameof(current)) };

    /// <summary>A resistor across the rail.</summary>
    /// <param name="resistance">Greater than 0 Ω.</param>
    /// <exception cref="ArgumentOutOfRangeException">The resistance is not positive.</exception>
    public static RailCurrent Resistive(ElectricResistance resistance) => new() { Resistance = Guard.Positive(resistance, nameof(resistance)) };

    /// <summary>The current of a playing class-B amplifier: idle + peak·max(0, sin), the positive half for a positive rail, the negative for the other.</summary>
    /// <param name="peak">Peak of the half-waves; 0 A or more.</param>
    /// <param name="signal">Frequency of the sine; greater than 0 Hz.</param>
    /// <param name="idle">What flows besides, always; 0 A or more.</param>
    /// <param name="phase">Phase of the signal's sine when the mains crosses zero; any angle.</param>
    /// <exception cref="ArgumentOutOfRangeException">A current is negative or the frequency is not positive.</exception>
    public static RailCurrent HalfWaves(ElectricCurrent peak, Frequency signal, ElectricCurrent idle = default, Angle phase = default) => new()
    {
        Peak = Guard.NotNegative(peak, nameof(peak)),
        Signal = Guard.Positive(signal, nameof(signal)),
        Idle = Guard.NotNegative(idle, nameof(idle)),
        Phase = phase,
    };

    /// <summary>The same half-waves of several channels that play in phase on one rail.</summary>
    /// <param name="channels">How many channels; 1 or more.</param>
    /// <param name="peak">Peak of the half-waves of one channel; 0 A or more.</param>
    /// <param name="signal">Frequency of the sine; greater than 0 Hz.</param>
    /// <param name="besides">What flows besides, always, of all channels together; 0 A or more.</param>
    /// <returns>The current of the rail.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public static RailCurrent Playing(int channels, ElectricCurrent peak, Frequency signal, ElectricCurrent besides = default) =>
        HalfWaves(Guard.Positive(channels) * peak, signal, besides);

    /// <summary>The constant current of the same mean.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The load is a resistor: its current depends on the rail.</exception>
    public RailCurrent AsMean()
    {
        if (Resistance > default(ElectricResistance))
            Guard.Refuse("load", Resistance, "a current", "The current of a resistor depends on the rail; solve it as it is.");
        return Constant(Mean);
    }

    /// <summary>The same at another phase.</summary>
    /// <param name="phase">Any angle.</param>
    public RailCurrent AtPhase(Angle phase) => this with { Phase = phase };

    /// <summary>The load in words.</summary>
    public override string ToString() => Plays
        ? $"half-waves of {QuantityFormat.Short(Peak)} peak at {QuantityFormat.Short(Signal)}, idle {QuantityFormat.Short(Idle)}"
        : Resistance > default(ElectricResistance) ? $"a resistor of {QuantityFormat.Short(Resistance)}" : $"a constant {QuantityFormat.Short(Idle)}";

    /// <summary>In plain numbers, for the rail of a sign.</summary>
    internal RailLoad OnRail(int sign) => new(Idle.Amperes, Peak.Amperes, Resistance.Ohms > 0 ? 1 / Resistance.Ohms : 0, sign);
}
