using EightOhm.Devices;
using EightOhm.Explaining;
using EightOhm.Feedback;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.SecondStages;

/// <summary>The stages of an amplifier as they are built, and the small signals that they make at any corner of parts, temperature and idle current.</summary>
/// <remarks>The second stage's transistors have their f_T and C_ob from one card: its follower, itself, its cascode. The inner loop crosses where these count. Not in it: the base
/// resistances, which take a little margin, and the excess phase of the transistors beyond one pole each. What the input stage is late by must lie within the delay that a corner is given.</remarks>
public sealed record AmplifierStages
{
    /// <summary>Tail current of the input pair, which has a mirror; greater than 0 A.</summary>
    [Symbol("I_tail")]
    public required ElectricCurrent TailCurrent { get; init => field = Guard.Positive(value); }

    /// <summary>Resistor in each emitter of the pair; 0 Ω or more.</summary>
    [Symbol("R_deg")]
    public required ElectricResistance Degeneration { get; init => field = Guard.NotNegative(value); }

    /// <summary>The transistor of the second stage, of its follower and of its cascode.</summary>
    public required Transistor Transistor { get; init => field = value ?? throw new ArgumentNullException(nameof(value)); }

    /// <summary>Standing current of the second stage; greater than 0 A.</summary>
    [Symbol("I_2")]
    public required ElectricCurrent Current { get; init => field = Guard.Positive(value); }

    /// <summary>Emitter resistor of the second stage; greater than 0 Ω.</summary>
    [Symbol("R_E2")]
    public required ElectricResistance EmitterResistor { get; init => field = Guard.Positive(value); }

    /// <summary>Junction temperature of the second stage; above 0 K.</summary>
    [Symbol("T_2")]
    public required Temperature Temperature { get; init; }

    /// <summary>Standing current of a follower in front of it; none where there is no follower.</summary>
    [Symbol("I_f")]
    public ElectricCurrent? FollowerCurrent { get; init => field = value is { } i ? Guard.Positive(i, nameof(FollowerCurrent)) : null; }

    /// <summary>Current gain of that follower; 100 when not given.</summary>
    [Symbol("h_FEf")]
    public double FollowerGain { get; init => field = Guard.Positive(value); } = 100;

    /// <summary>Whether a cascode stands on it: one pole more, and its collector hardly moves.</summary>
    public bool IsCascoded { get; init; }

    /// <summary>Collector to base of the cascoded transistor; 1 V when not given. Its capacitance is greater there than on the sheet.</summary>
    [Symbol("V_CB")]
    public ElectricPotential CollectorVoltage { get; init => field = Guard.NotNegative(value); } = ElectricPotential.FromVolts(1);

    /// <summary>The compensation capacitor; greater than 0 F.</summary>
    [Symbol("C_dom")]
    public required ElectricCapacitance Capacitor { get; init => field = Guard.Positive(value); }

    /// <summary>At the second stage's input, beside its transistors' own: the pair's and mirror's collectors, wiring, a capacitor to the rail; 0 F or more.</summary>
    [Symbol("C_in")]
    public required ElectricCapacitance InputCapacitance { get; init => field = Guard.NotNegative(value); }

    /// <summary>At its output, to ground: its own, its source's, the followers'; greater than 0 Ω.</summary>
    [Symbol("R_2")]
    public required ElectricResistance OutputResistance { get; init => field = Guard.Positive(value); }

    /// <summary>At its output, beside the compensation; 0 F or more.</summary>
    [Symbol("C_2")]
    public required ElectricCapacitance OutputCapacitance { get; init => field = Guard.NotNegative(value); }

    /// <summary>Pole of the output transistors at the idle current; greater than 0 Hz.</summary>
    [Symbol("f_p1")]
    public required Frequency OutputPole { get; init => field = Guard.Positive(value); }

    /// <summary>Idle current at which that is; greater than 0 A.</summary>
    [Symbol("I_q")]
    public required ElectricCurrent IdleCurrent { get; init => field = Guard.Positive(value); }

    /// <summary>Pole of the drivers; greater than 0 Hz.</summary>
    [Symbol("f_p2")]
    public required Frequency DriverPole { get; init => field = Guard.Positive(value); }

    /// <summary>What is fed back of the output; greater than 0, at most 1.</summary>
    [Symbol("B_fb")]
    public required double Feedback { get; init => field = Guard.Between(Guard.Positive(value), 0, 1, nameof(Feedback)); }

    /// <summary>The small signals of these stages at a corner.</summary>
    /// <param name="x_C">How far the compensation capacitor is off; above −100 %.</param>
    /// <param name="x_p">How far the transistors' poles are off: the outputs', and f_T of the second stage; above −100 %.</param>
    /// <param name="T_pair">Temperature of the pair; above 0 K.</param>
    /// <param name="I_q">Idle current of the outputs, whose pole goes with it; greater than 0 A.</param>
    /// <param name="t_d">Delay of all that has no pole of its own here: pair, cascode and mirror (<c>InputDelay</c>), pre-drivers, wiring; 0 s or more.</param>
    /// <returns>The amplifier, for both its loops.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Worked("C_π = 1/(2π·f_T·r_e), less by the emitter resistor; a pole of the follower with r_e and that load, of the transistor at f_T·(1 + r_e/R_E), of a cascode at f_T; f_p1 with the idle current")]
    public MillerAmplifier At(Ratio x_C, Ratio x_p, Temperature T_pair, ElectricCurrent I_q, Duration t_d)
    {
        double c = Guard.Positive(1 + x_C.DecimalFractions, nameof(x_C), "Above −100 %."), p = Guard.Positive(1 + x_p.DecimalFractions, nameof(x_p), "Above −100 %."), w = 2 * Math.PI * p * Transistor.TransitionFrequency.Hertz;
        double pair = Junction.ThermalVoltage(T_pair).Volts / (TailCurrent.Amperes / 2), r = Junction.ThermalVoltage(Temperature).Volts / Current.Amperes;
        var h = Transistor.GainAt(Current);
        var into = StageGain.InputResistance(Current, h, EmitterResistor, Junction.ThermalVoltage(Temperature));
        var (poles, atInput) = Second(p, w, r);
        return new()
        {
            FirstTransconductance = ElectricConductance.FromSiemens(1 / (pair + Degeneration.Ohms)),
            SecondTransconductance = StageGain.Transconductance(Current, EmitterResistor, Temperature),
            SecondStagePoles = poles,
            Capacitor = c * Capacitor,
            InputResistance = FollowerCurrent is null ? into : (1 + FollowerGain) * into,
            InputCapacitance = InputCapacitance + ElectricCapacitance.FromFarads(atInput),
            OutputResistance = OutputResistance,
            OutputCapacitance = OutputCapacitance,
            Followers = TransferFunction.Pole(p * (Guard.Positive(I_q) / IdleCurrent) * OutputPole) * TransferFunction.Pole(DriverPole) * TransferFunction.Delayed(Guard.NotNegative(t_d)),
            Feedback = TransferFunction.Constant(Feedback),
        };
    }

    // The poles on the way to the collector current, and what the transistors put at the input. Without a cascode C_ob lies beside the compensation capacitor.
    private (TransferFunction Poles, double AtInput) Second(double p, double w, double r)
    {
        var emitter = EmitterResistor.Ohms;
        var atBase = 1 / (w * (r + emitter));
        var poles = TransferFunction.Pole(p * (1 + (r / emitter)) * Transistor.TransitionFrequency);
        if (IsCascoded)
        {
            var ob = SummingNode.Capacitance(Transistor.OutputCapacitance, ElectricPotential.FromVolts(10), CollectorVoltage, ElectricPotential.FromVolts(0.75), 0.33).Farads;
            atBase += ob * (1 + (r / (r + emitter)));
            poles *= TransferFunction.Pole(p * Transistor.TransitionFrequency);
        }

        if (FollowerCurrent is not { } i)
            return (poles, atBase);
        var follower = Junction.ThermalVoltage(Temperature).Volts / i.Amperes;
        return (poles * TransferFunction.Pole(Frequency.FromHertz(1 / (2 * Math.PI * follower * ((1 / (w * follower)) + atBase)))), Transistor.OutputCapacitance.Farads);
    }
}
