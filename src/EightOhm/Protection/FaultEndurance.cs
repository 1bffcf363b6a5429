using EightOhm.Explaining;
using EightOhm.Numerics;
using EightOhm.Quantities;
using EightOhm.SafeAreas;
using EightOhm.Thermal;
using UnitsNet;

namespace EightOhm.Protection;

/// <summary>How long a transistor stands a voltage and a current together, such as a short circuit with the limiter at work, and so how soon something else must end it.</summary>
/// <remarks>Two bounds: the junction, warmed through its transient thermal impedance from the case's temperature; and the safe area, whose longest pulse line that still allows the point
/// counts, second breakdown included. The case is held: for events longer than some seconds give the case at their end. A limiter alone does not end a short: it holds
/// the current, and the power with it, for as long as the signal and the fuse allow.</remarks>
public sealed record FaultEndurance
{
    private FaultEndurance(ElectricPotential voltage, ElectricCurrent current, Temperature startsAt, Duration? byJunction, Duration? bySafeArea) =>
        (Voltage, Current, Case, ByJunction, BySafeArea) = (voltage, current, startsAt, byJunction, bySafeArea);

    /// <summary>Collector to emitter.</summary>
    [Symbol("V_CE")]
    public ElectricPotential Voltage { get; }

    /// <summary>Collector current of the one transistor.</summary>
    [Symbol("I_C")]
    public ElectricCurrent Current { get; }

    /// <summary>The case during the event.</summary>
    [Symbol("T_C")]
    public Temperature Case { get; }

    /// <summary>Until the junction reaches its limit; null when it never does, or when no impedance was given.</summary>
    [Symbol("t_J")]
    public Duration? ByJunction { get; }

    /// <summary>The longest pulse whose safe area allows the point; null when the dc line does; 0 s when not even the shortest pulse line does.</summary>
    [Symbol("t_SOA")]
    public Duration? BySafeArea { get; }

    /// <summary>The shorter of both; null when it may last for ever.</summary>
    [Symbol("t_max")]
    public Duration? Longest => (ByJunction, BySafeArea) switch
    {
        ({ } j, { } s) => j < s ? j : s,
        ({ } j, null) => j,
        (null, var s) => s,
    };

    /// <summary>Whether the point may last for ever at this case temperature.</summary>
    public bool ForEver => Longest is null;

    /// <summary>The longest action time for whatever ends the fault, with a margin: <see cref="Longest"/> over the margin; null when the point may last for ever.</summary>
    /// <param name="margin">How many times sooner than the transistor's end, such as 2 (common practice, no source); 1 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The margin is below 1.</exception>
    [Worked("the longest time over the margin")]
    public Duration? ActionTime(double margin = 2) => Guard.AtLeast(margin, 1) is var m && Longest is { } t ? t / m : null;

    /// <summary>Finds how long a transistor stands it.</summary>
    /// <param name="area">The safe area of its card.</param>
    /// <param name="V_CE">Collector to emitter: in a short the rail at high mains, from rest, less the emitter resistor's drop; greater than 0 V.</param>
    /// <param name="I_C">Collector current of the one transistor: the limiter's greatest over its spread, over the pairs; greater than 0 A.</param>
    /// <param name="T_C">Case temperature during the event; below the card's junction limit.</param>
    /// <param name="impedance">Transient thermal impedance from junction to case; the safe area alone when not given.</param>
    /// <returns>Both times; a shorter one than the circuit's action time means that nobody ends the fault soon enough.</returns>
    /// <example><code>var hold = FaultEndurance.Of(new SafeArea(npn), V_hi, I_lim / n, T_C); var t_max = hold.ActionTime();</code></example>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <exception cref="InvalidOperationException">A time was not found.</exception>
    [Worked("the time at which the junction reaches its limit, and the pulse whose derated line just allows the point: bracketed searches over the logarithm of the time")]
    public static FaultEndurance Of(SafeArea area, ElectricPotential V_CE, ElectricCurrent I_C, Temperature T_C, FosterImpedance? impedance = null)
    {
        ArgumentNullException.ThrowIfNull(area);
        Guard.Positive(V_CE);
        Guard.Positive(I_C);
        if (V_CE > area.Card.MaxCollectorEmitterVoltage)
            Guard.Refuse(nameof(V_CE), V_CE, $"at most {QuantityFormat.Short(area.Card.MaxCollectorEmitterVoltage)} (V_CEO of {area.Card.Name})", "Above it no current is allowed for any time.");
        var pulses = area.Card.SafeAreaLines.Select(l => l.Pulse).OfType<Duration>().Select(t => t.Seconds).ToArray();
        double Limit(double? seconds) => area.For(T_C, seconds is { } t ? Duration.FromSeconds(t) : SafeArea.Dc).LimitAt(V_CE).Amperes;
        Duration? byArea = Limit(null) >= I_C.Amperes ? null : Duration.FromSeconds(LongestPulse(pulses, t => Limit(t) >= I_C.Amperes));
        var byJunction = impedance?.TimeTo(area.Card.MaxJunctionTemperature - T_C, V_CE * I_C);
        return new(V_CE, I_C, T_C, byJunction, byArea);
    }

    /// <inheritdoc/>
    public override string ToString() => Longest is { } t
        ? $"{QuantityFormat.Short(Current)} at {QuantityFormat.Short(Voltage)}, case at {QuantityFormat.Short(Case)}: at most {QuantityFormat.Short(t)}"
        : $"{QuantityFormat.Short(Current)} at {QuantityFormat.Short(Voltage)}, case at {QuantityFormat.Short(Case)}: for ever";

    // Pulses fall from the longest line to the shortest; between two the line is read over the logarithm of time, and a longer pulse than all is dc.
    private static double LongestPulse(double[] pulses, Func<double, bool> allowed)
    {
        if (pulses.Length == 0 || !allowed(pulses[^1]))
            return 0;
        if (allowed(pulses[0]))
            return pulses[0];
        return Math.Exp(Halving.Narrowed(logarithm => allowed(Math.Exp(logarithm)), Math.Log(pulses[^1]), Math.Log(pulses[0]), 60, 1e-12).Low);
    }
}
