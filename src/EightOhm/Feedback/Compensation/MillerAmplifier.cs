using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Feedback;

/// <summary>An amplifier of three stages by its small signals: pair, second stage with its compensation, followers, and what is fed back. Both its loops.</summary>
/// <remarks>
/// Two return ratios have the same transistor in them and are easily mistaken. At the first stage (<see cref="OuterLoop"/>) it is the loop of
/// which margins and distortion are told; at the second stage (<see cref="InnerLoop"/>) the way through the capacitor is added, and it is tens of dB higher and
/// crosses tens of times later. Both must be stable. The currents are those of the linear circuit; slewing is <see cref="SlewRate"/>'s.
/// </remarks>
public sealed record MillerAmplifier
{
    /// <summary>Transconductance of the first stage, degeneration and mirror included; greater than 0 S.</summary>
    [Symbol("g_m1")]
    public required ElectricConductance FirstTransconductance { get; init => field = Guard.Positive(value); }

    /// <summary>Transconductance of the second stage, degeneration included; greater than 0 S.</summary>
    [Symbol("g_m2")]
    public required ElectricConductance SecondTransconductance { get; init => field = Guard.Positive(value); }

    /// <summary>What the second stage's own transistors lose on the way from its input to its collector current: a gain of one at 0 Hz with the poles of a follower, of the transistor and of
    /// a cascode; ideal when not given.</summary>
    /// <remarks>The inner loop crosses at tens of MHz. With an ideal second stage it has nothing there but capacitors, and a quarter turn of margin, whatever the amplifier.</remarks>
    public TransferFunction SecondStagePoles { get; init => field = value ?? throw new ArgumentNullException(nameof(value)); } = TransferFunction.Constant(1);

    /// <summary>The compensation capacitor; with <see cref="SecondCapacitor"/> the one at the second stage's output. Greater than 0 F.</summary>
    [Symbol("C")]
    public required ElectricCapacitance Capacitor { get; init => field = Guard.Positive(value); }

    /// <summary>Two-pole compensation: the second capacitor, at the second stage's input; none for one pole.</summary>
    [Symbol("C_b")]
    public ElectricCapacitance? SecondCapacitor { get; init => field = value is { } c ? Guard.Positive(c, nameof(SecondCapacitor)) : null; }

    /// <summary>Two-pole compensation: from the middle of both capacitors to ground; 1 kΩ when not given.</summary>
    [Symbol("R_b")]
    public ElectricResistance MiddleResistor { get; init => field = Guard.Positive(value); } = ElectricResistance.FromOhms(1000);

    /// <summary>Whether the compensation is taken from the output, behind the followers, and not from the second stage: output-inclusive.</summary>
    /// <remarks>The followers' errors are then inside the inner loop too; so are their poles, which decide whether that loop is stable.</remarks>
    public bool IsOutputInclusive { get; init; }

    /// <summary>All resistance to ground at the second stage's input; 1 MΩ when not given.</summary>
    [Symbol("R_1")]
    public ElectricResistance InputResistance { get; init => field = Guard.Positive(value); } = ElectricResistance.FromOhms(1e6);

    /// <summary>All capacitance to ground there, the transistor's own included; 10 pF when not given.</summary>
    [Symbol("C_1")]
    public ElectricCapacitance InputCapacitance { get; init => field = Guard.NotNegative(value); } = ElectricCapacitance.FromFarads(10e-12);

    /// <summary>All resistance to ground at the second stage's output, the followers' input included; 100 kΩ when not given.</summary>
    [Symbol("R_2")]
    public ElectricResistance OutputResistance { get; init => field = Guard.Positive(value); } = ElectricResistance.FromOhms(1e5);

    /// <summary>All capacitance to ground there; 20 pF when not given.</summary>
    [Symbol("C_2")]
    public ElectricCapacitance OutputCapacitance { get; init => field = Guard.NotNegative(value); } = ElectricCapacitance.FromFarads(20e-12);

    /// <summary>The followers from the second stage to the output: a gain of about one with poles, and a delay if one is known; ideal when not given.</summary>
    public TransferFunction Followers { get; init => field = value ?? throw new ArgumentNullException(nameof(value)); } = TransferFunction.Constant(1);

    /// <summary>What is fed back of the output: <c>TransferFunction.Constant(B_fb)</c>, or <see cref="LeadNetwork.Divider"/>.</summary>
    public required TransferFunction Feedback { get; init => field = value ?? throw new ArgumentNullException(nameof(value)); }

    /// <summary>The gain from the difference at the input to the output, without the outer feedback.</summary>
    /// <returns>The open-loop gain over frequency.</returns>
    [Worked("the node equations of the second stage's input and output, with the compensation's admittances")]
    public TransferFunction OpenLoop() => MillerNodes.Of(this).OpenLoop;

    /// <summary>The loop gain as seen from the first stage: open-loop gain times what is fed back.</summary>
    /// <returns>The return ratio at g_m1 over frequency.</returns>
    [Worked("the open-loop gain by the node equations, times what is fed back")]
    public TransferFunction OuterLoop() => OpenLoop() * Feedback;

    /// <summary>The loop gain as seen from the second stage: through the compensation and through the outer loop together.</summary>
    /// <returns>The return ratio at g_m2 over frequency.</returns>
    [Worked("the node equations with the second stage's own source replaced by a test current, the outer loop closed")]
    public TransferFunction InnerLoop() => MillerNodes.Of(this).InnerLoop;

    /// <summary>The gain from the input to the output with the loop closed.</summary>
    /// <returns>The closed-loop gain over frequency.</returns>
    [Worked("A/(1 + A·B) of the open-loop gain and what is fed back")]
    public TransferFunction ClosedLoop() => OpenLoop().ClosedWith(Feedback);
}
