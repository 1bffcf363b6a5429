using EightOhm.Explaining;
using EightOhm.Numerics;
using EightOhm.Quantities;
using MathNet.Numerics.RootFinding;
using UnitsNet;

namespace EightOhm.Supply;

/// <summary>How long a limiter must stay, and how large it may be, when the amplifier draws its idle current meanwhile.</summary>
/// <remarks>With an idle current the rails do not reach their peak through the limiter, however long one waits: they stop where it just feeds the idle current, and the bypass brings a second
/// surge. A larger resistor lowers the first surge and raises the second, so it has a largest value as well as a least one. Take the highest mains.
/// The mains side of an amplifier kills: local codes and licensed practice come first.</remarks>
public static class SoftStartDesign
{
    // A soft start of more than ten seconds is none. A resistor is known to a tenth of a percent at best.
    private const double MostSeconds = 10, Settled = 1e-4, NearlySettled = 1e-2, Accuracy = 1e-3;
    private const int LeastHalfCycles = 20;
    private const double LeastOhms = 0.01, MostOhms = 1e5;

    /// <summary>The switch-on with the bypass so late that waiting longer changes nothing: the rails rise no more than 0.01 % in half of the time, or 1 % in the last 5 s of 10 s.</summary>
    /// <param name="on">What is switched on; its own bypass time is not used.</param>
    /// <returns>The switch-on, followed; its <see cref="SoftStart.BypassPeak"/> is the least that waiting can make it.</returns>
    /// <exception cref="ShortfallException">The rails still rise by more than that after 10 s.</exception>
    [Worked("the bypass put off until the rails no longer rise")]
    public static SoftStart AfterSettling(SwitchOn on)
    {
        ArgumentNullException.ThrowIfNull(on);
        // Without an idle current the rails creep towards their peak ever more slowly: there the last ten seconds must do.
        bool Still(IReadOnlyList<double> rails, double share) => rails.Count >= LeastHalfCycles && rails[^1] - rails[rails.Count / 2] <= share * rails[^1];
        var run = SoftStart.Of(on.With(on.Limiter, Duration.FromSeconds(MostSeconds)), rails => Still(rails, Settled));
        if (Still(run.HalfCycleRails, NearlySettled))
            return run;
        throw new ShortfallException("Settling of the rails through the limiter", Duration.FromSeconds(MostSeconds), "they still rise after that time", "Take a smaller limiter.");
    }

    /// <summary>The least time after which the bypass may close so that its surge stays within a peak.</summary>
    /// <param name="on">What is switched on; its own bypass time is not used.</param>
    /// <param name="most">The greatest primary current allowed at the bypass, peak; greater than 0 A.</param>
    /// <returns>A whole number of half-cycles after the switch closed; add what the relay's timer is uncertain by.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The peak is not positive.</exception>
    /// <exception cref="ShortfallException">The surge is larger however long one waits: a smaller limiter, or no idle current until the bypass.</exception>
    [Worked("the half-cycle from which on the followed bypass surge stays within the peak, by bisection")]
    public static Duration LeastDelay(SwitchOn on, ElectricCurrent most)
    {
        Guard.Positive(most);
        var settled = AfterSettling(on);
        if (settled.BypassPeak > most)
            throw new ShortfallException("The surge at the bypass", settled.BypassPeak - most, $"it is {QuantityFormat.Short(settled.BypassPeak)} however long one waits, {QuantityFormat.Short(most)} are allowed", "Take a smaller limiter, or keep the idle current off until the bypass.");
        var half = 0.5 / on.Mains.Hertz;
        bool Enough(int halves) => SoftStart.Of(on.With(on.Limiter, Duration.FromSeconds(halves * half))).BypassPeak <= most;
        var tooSoon = Halving.Last(halves => !Enough(halves), 0, settled.HalfCycleRails.Count);
        return Duration.FromSeconds((tooSoon + 1) * half);
    }

    /// <summary>The resistors that keep both surges within a peak: the first at switch-on, and the second at a bypass after settling.</summary>
    /// <param name="on">What is switched on, at the highest mains; its own limiter and bypass time are not used.</param>
    /// <param name="most">The greatest primary current allowed, peak; greater than 0 A.</param>
    /// <returns>The window, to 0.1 %; empty where the first surge asks for more than the second allows.</returns>
    /// <example><code>SoftStartDesign.Resistors(on.AtMains(10.percent), 12.A)</code></example>
    /// <exception cref="ArgumentOutOfRangeException">The peak is not positive, or so small that not even 100 kΩ keeps it.</exception>
    [Worked("the resistance at which each surge is just the peak: bracketed root searches over the logarithm of the resistance, each a followed switch-on")]
    public static LimiterWindow Resistors(SwitchOn on, ElectricCurrent most)
    {
        ArgumentNullException.ThrowIfNull(on);
        var amperes = Guard.Positive(most).Amperes;
        SwitchOn With(double log) => on.With(InrushLimiter.Resistor(ElectricResistance.FromOhms(Math.Exp(log))), Duration.FromSeconds(1 / on.Mains.Hertz));
        double First(double log) => Math.Log(SoftStart.Of(With(log)).Peak.Amperes / amperes);
        double low = Math.Log(LeastOhms), high = Math.Log(MostOhms);
        if (First(high) > 0)
            Guard.Refuse(nameof(most), most, $"more than {QuantityFormat.Short(SoftStart.Of(With(high)).Peak)}", "Not even 100 kΩ keeps such a peak.");
        var least = First(low) <= 0 ? low : Root(First, low, high);
        if (on.Idle.Amperes == 0)
            return new(ElectricResistance.FromOhms(Math.Exp(least)), null, most);

        // With the rails still rising after ten seconds the resistor is far too large: above any peak.
        double Second(double log)
        {
            try
            {
                return Math.Log(AfterSettling(With(log)).BypassPeak.Amperes / amperes);
            }
            catch (ShortfallException)
            {
                return 10;
            }
        }

        // Up to where the idle current alone would take the whole of the winding's voltage.
        var top = Math.Log(Math.Clamp(on.HalfWinding.Volts * on.Turns * on.Turns / (2 * on.Idle.Amperes), 2 * LeastOhms, MostOhms));
        if (Second(low) > 0)
            return new(ElectricResistance.FromOhms(Math.Exp(least)), default(ElectricResistance), most);
        return new(ElectricResistance.FromOhms(Math.Exp(least)), Second(top) <= 0 ? null : ElectricResistance.FromOhms(Math.Exp(Root(Second, low, top))), most);
    }

    private static double Root(Func<double, double> over, double low, double high) =>
        Brent.TryFindRoot(over, low, high, Accuracy, 100, out var root)
            ? root
            : throw new InvalidOperationException(FormattableString.Invariant($"No resistance was found between {Math.Exp(low):G3} Ω and {Math.Exp(high):G3} Ω."));
}

/// <summary>The resistors that keep both surges of a soft start within a peak.</summary>
/// <param name="Least">The least, for the first surge.</param>
/// <param name="Largest">The largest, for the surge at the bypass; null where nothing is drawn meanwhile, so that there is none; 0 Ω where even without a limiter it is too much.</param>
/// <param name="Peak">The peak allowed in the primary.</param>
public sealed record LimiterWindow(
    [property: Symbol("R_min")] ElectricResistance Least,
    [property: Symbol("R_max")] ElectricResistance? Largest,
    [property: Symbol("I_pk")] ElectricCurrent Peak)
{
    /// <summary>Whether there is such a resistor.</summary>
    public bool Open => Largest is not { } largest || Least <= largest;

    /// <summary>What the window lacks: the least above the largest; 0 Ω when it is open.</summary>
    public ElectricResistance Short => Largest is { } largest && Least > largest ? Least - largest : default;

    /// <inheritdoc/>
    public override string ToString() => Open
        ? Largest is { } largest ? $"from {QuantityFormat.Short(Least)} to {QuantityFormat.Short(largest)} for {QuantityFormat.Short(Peak)} peak" : $"{QuantityFormat.Short(Least)} or more for {QuantityFormat.Short(Peak)} peak"
        : $"none for {QuantityFormat.Short(Peak)} peak: the first surge asks for {QuantityFormat.Short(Least)} or more, the bypass for {QuantityFormat.Short(Largest!.Value)} or less; keep the idle current off until the bypass, or allow a higher peak";
}
