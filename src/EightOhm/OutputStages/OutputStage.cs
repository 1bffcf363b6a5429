using EightOhm.Devices;
using EightOhm.Explaining;
using EightOhm.Quantities;
using EightOhm.Supply;
using UnitsNet;

namespace EightOhm.OutputStages;

/// <summary>One output stage of one channel: complementary pairs by their cards, emitter resistors, a supply, and what drives it. Dissipation, transfer and tracking are views of it.</summary>
/// <remarks>The npn and the pnp card need not be alike: where they differ the transfer has even harmonics. The dissipation is that of both sides on their mean r_int.</remarks>
/// <example><code>
/// var stage = new OutputStage(npn, pnp, n, R_E, dual.Line().OfOne(n_ch, I_small))
/// {
///     IdleCurrent = I_q, Drivers = new(driverNpn, driverPnp, R_drv),
/// };
/// stage.AtMains(10.percent).Dissipation.Maximum(R_4, phi_L)
/// stage.Transfer(R_L, V_pk).LeastDistortionBias(V_pk)
/// </code></example>
public sealed partial record OutputStage
{
    /// <summary>A stage of output pairs alone; give <see cref="Drivers"/> and <see cref="PreDrivers"/> for two or three followers a side.</summary>
    /// <param name="npn">The upper output transistor.</param>
    /// <param name="pnp">Its complement.</param>
    /// <param name="pairs">Output pairs in parallel; 1 or more.</param>
    /// <param name="R_E">Emitter resistor of one output transistor; 0 Ω or more.</param>
    /// <param name="rails">One rail over the mean current that this channel takes from it, at nominal mains.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range.</exception>
    /// <exception cref="ArgumentException">A card is of the other polarity.</exception>
    public OutputStage(Transistor npn, Transistor pnp, int pairs, ElectricResistance R_E, RailLine rails)
    {
        ArgumentNullException.ThrowIfNull(rails);
        (Npn, Pnp) = StageDrivers.Complements(npn, pnp);
        (Pairs, EmitterResistor, Rails) = (Guard.Positive(pairs), Guard.NotNegative(R_E), rails);
    }

    /// <summary>The upper output transistor.</summary>
    public Transistor Npn { get; }

    /// <summary>The lower output transistor.</summary>
    public Transistor Pnp { get; }

    /// <summary>Output pairs in parallel.</summary>
    [Symbol("n")]
    public int Pairs { get; init => field = Guard.Positive(value, nameof(Pairs)); }

    /// <summary>Emitter resistor of one output transistor.</summary>
    [Symbol("R_E")]
    public ElectricResistance EmitterResistor { get; init => field = Guard.NotNegative(value, nameof(EmitterResistor)); }

    /// <summary>One rail over the mean current that this channel takes from it, at nominal mains.</summary>
    public RailLine Rails { get; init; }

    /// <summary>How far the mains is from nominal.</summary>
    [Symbol("x")]
    public Ratio Mains { get; private init; }

    /// <summary>Idle current of one pair; 0 A, class B, if not given.</summary>
    [Symbol("I_q")]
    public ElectricCurrent IdleCurrent { get; init => field = Guard.NotNegative(value, nameof(IdleCurrent)); }

    /// <summary>Junction temperature of the outputs; 55 °C if not given.</summary>
    [Symbol("T_j")]
    public Temperature Junction { get; init => field = Guard.Positive(value, nameof(Junction)); } = 55.degC;

    /// <summary>The drivers of the outputs; none if not given.</summary>
    public StageDrivers? Drivers { get; init; }

    /// <summary>The drivers of the drivers; none if not given.</summary>
    public StageDrivers? PreDrivers { get; init; }

    /// <summary>Impedance of what drives the first bases, taken as a resistance; 0 Ω if not given.</summary>
    public ElectricResistance SourceImpedance { get; init => field = Guard.NotNegative(value, nameof(SourceImpedance)); }

    /// <summary>Series resistance inside an output transistor at its emitter: the mean of both cards.</summary>
    [Symbol("r_int")]
    public ElectricResistance InternalResistance => (Npn.InternalEmitterResistance + Pnp.InternalEmitterResistance) / 2;

    /// <summary>Thermal voltage of the outputs.</summary>
    [Symbol("V_T")]
    public ElectricPotential ThermalVoltage => Devices.Junction.ThermalVoltage(Junction);

    /// <summary>The idle current of one pair that makes the gain at zero and at large output equal: V_T/(R_E + r_int).</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no resistance in the emitters.</exception>
    [Symbol("I_eq")]
    public ElectricCurrent EqualGainCurrent => Crossover.EqualGainCurrent(ThermalVoltage, EmitterResistor, InternalResistance);

    /// <summary>Transition frequency of the slower of the two cards.</summary>
    [Symbol("f_T")]
    public Frequency TransitionFrequency => UnitMath.Min(Npn.TransitionFrequency, Pnp.TransitionFrequency);

    /// <summary>Power dissipation over level, load and phase.</summary>
    public StageDissipation Dissipation => new(Rails, Pairs, EmitterResistor) { IdleCurrent = IdleCurrent, InternalResistance = InternalResistance, Junction = Junction, Mains = Mains };

    /// <summary>The same stage while the mains is off its nominal value: the supply's emf moves, its copper does not.</summary>
    /// <param name="deviation">Mains over nominal, less one: 10.percent, (−10).percent.</param>
    /// <exception cref="ArgumentOutOfRangeException">No rail would be left.</exception>
    public OutputStage AtMains(Ratio deviation)
    {
        _ = Rails.AtMains(deviation); // refuses what leaves no rail
        return this with { Mains = deviation };
    }

    /// <summary>One line: the pairs and the rail.</summary>
    public override string ToString() =>
        $"{Pairs} {(Pairs == 1 ? "pair" : "pairs")} of {Npn.Name} and {Pnp.Name} with {QuantityFormat.Short(EmitterResistor)}, {QuantityFormat.Short(Dissipation.Rail)} without signal";
}
