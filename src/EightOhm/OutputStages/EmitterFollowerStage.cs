using EightOhm.Devices;
using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.OutputStages;

/// <summary>A class-AB output stage of complementary emitter followers: one, two or three followers a side, pairs in parallel, a resistive load.</summary>
/// <remarks>
/// <para>Exponential devices, solved exactly and without time: harmonics are a LOWER BOUND at high frequency, where the charge of the outputs
/// comes on top (<see cref="ChargeControl"/> says from which frequency on it decides). Parallel devices share the current equally. Rails do not limit.</para>
/// <para>The bias voltage stands between the two bases of the first stage, half above and half below the point that the source drives.</para>
/// </remarks>
public sealed partial record EmitterFollowerStage
{
    /// <summary>A stage of output pairs alone; give <see cref="Drivers"/> and <see cref="PreDrivers"/> for two or three followers a side.</summary>
    /// <param name="load">Load, resistive; greater than 0 Ω.</param>
    /// <param name="pairs">Output pairs in parallel; 1 or more.</param>
    /// <param name="R_E">Emitter resistor of one output device; 0 Ω or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range.</exception>
    public EmitterFollowerStage(ElectricResistance load, int pairs, ElectricResistance R_E)
    {
        Load = Guard.Positive(load);
        Pairs = Guard.Positive(pairs);
        EmitterResistor = Guard.NotNegative(R_E);
    }

    /// <summary>Load, resistive; greater than 0 Ω.</summary>
    public ElectricResistance Load { get; init => field = Guard.Positive(value); }

    /// <summary>Output pairs in parallel; 1 or more.</summary>
    public int Pairs { get; init => field = Guard.Positive(value); }

    /// <summary>Emitter resistor of one output device, outside it; 0 Ω or more.</summary>
    public ElectricResistance EmitterResistor { get; init => field = Guard.NotNegative(value); }

    /// <summary>Impedance of what drives the first bases, taken as a resistance; 0 Ω or more. With current gain that droops, this is the distortion of low loads.</summary>
    public ElectricResistance Source { get; init => field = Guard.NotNegative(value); }

    /// <summary>One upper output device.</summary>
    public LargeSignalModel Device { get; init; } = new();

    /// <summary>One lower output device; like the upper one when not given.</summary>
    public LargeSignalModel? Complement { get; init; }

    /// <summary>The drivers of the outputs; none when not given.</summary>
    public FollowerDrivers? Drivers { get; init; }

    /// <summary>The drivers of the drivers; none when not given.</summary>
    public FollowerDrivers? PreDrivers { get; init; }

    /// <summary>Transition frequency of the output devices at the peak current; greater than 0 Hz. Not given: no charge-control limit is told.</summary>
    public Frequency? TransitionFrequency { get; init => field = value is { } f ? Guard.Positive(f) : null; }

    /// <summary>The resistance inside one output device in series with its emitter, of <see cref="Device"/>; 0 Ω or more.</summary>
    public ElectricResistance InternalResistance
    {
        get => Device.InternalResistance;
        init => Device = Device with { InternalResistance = value };
    }

    /// <summary>The outputs' junction temperature, of <see cref="Device"/>; above 0 K.</summary>
    public Temperature Junction
    {
        get => Device.Junction;
        init => Device = Device with { Junction = value };
    }

    /// <summary>Emitter resistor and internal resistance of one upper output device together.</summary>
    public ElectricResistance TotalEmitterResistance => EmitterResistor + InternalResistance;

    /// <summary>The stage at an idle current.</summary>
    /// <param name="idle">What the emitter resistor of one output device carries while the output current is zero; greater than 0 A.</param>
    /// <exception cref="ArgumentOutOfRangeException">The current is not positive, or so small that the drivers would be off.</exception>
    [Worked("the bias voltage that makes each junction carry its idle current, from the exponential law")]
    public FollowerBias BiasedAt(ElectricCurrent idle)
    {
        Guard.Positive(idle);
        var sum = Equations().BiasVoltage(idle.Amperes);
        if (!double.IsFinite(sum))
            Guard.Refuse(nameof(idle), idle, "so large that the outputs' junctions keep the drivers on", "Raise the idle current.");
        return new FollowerBias(this, ElectricPotential.FromVolts(sum), idle);
    }

    /// <summary>The stage at a bias voltage.</summary>
    /// <param name="bias">The voltage between the two bases of the first stage; greater than 0 V.</param>
    /// <exception cref="ArgumentOutOfRangeException">The voltage is not positive, or gives an idle current below 1e-18 A or above 1 kA.</exception>
    [Worked("the currents at rest from the equations of all junctions, by Newton's method")]
    public FollowerBias BiasedBy(ElectricPotential bias)
    {
        Guard.Positive(bias);
        var idle = Equations().IdleCurrent(bias.Volts);
        if (!double.IsFinite(idle))
            Guard.Refuse(nameof(bias), bias, "such that the outputs idle between 1e-18 A and 1 kA", $"For 100 mA it is {QuantityFormat.Short(BiasedAt(ElectricCurrent.FromAmperes(0.1)).BiasVoltage)}.");
        return new FollowerBias(this, bias, ElectricCurrent.FromAmperes(idle));
    }

    internal FollowerEquations Equations()
    {
        if (PreDrivers is not null && Drivers is null)
            throw new ArgumentException("A stage with pre-drivers has drivers as well: give Drivers, or call the only ones Drivers.");
        return new FollowerEquations(this);
    }
}
