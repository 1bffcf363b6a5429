using System.Runtime.CompilerServices;
using EightOhm.Devices;
using EightOhm.Explaining;
using EightOhm.Quantities;
using EightOhm.Samples;
using UnitsNet;

namespace EightOhm.SafeAreas;

/// <summary>What sets the current allowed at a voltage.</summary>
public enum SafeAreaBound
{
    /// <summary>Bond wires and metal.</summary>
    Current,

    /// <summary>The junction's temperature.</summary>
    Dissipation,

    /// <summary>Hot spots.</summary>
    SecondBreakdown,

    /// <summary>V_CEO is passed.</summary>
    Voltage,
}

/// <summary>A safe operating area at one case temperature and for one pulse length: dissipation and second breakdown each derated by its own line.</summary>
public sealed class DeratedArea
{
    private readonly LogLine _longer;
    private readonly LogLine _shorter;
    private readonly double _share;
    private readonly double _lnHeat;
    private readonly double _lnBreak;
    private readonly double _most;

    internal DeratedArea(Transistor card, LogLine[] lines, Temperature T_C, Temperature start, Duration? pulse)
    {
        Card = card;
        CaseTemperature = T_C;
        StartTemperature = start;
        Pulse = pulse;
        PowerDeratingFactor = SafeAreaLimits.PowerDeratingFactor(card.MaxJunctionTemperature, start, card.ReferenceTemperature);
        SecondBreakdownLeft = SafeAreaLimits.SecondBreakdownLeft(PowerDeratingFactor, card.SecondBreakdownLeft.DecimalFractions);
        (_lnHeat, _lnBreak, _most) = (Math.Log(PowerDeratingFactor), Math.Log(SecondBreakdownLeft), card.MaxCollectorEmitterVoltage.Volts);
        (_longer, _shorter, _share) = Lines(lines, pulse);
    }

    /// <summary>The card.</summary>
    public Transistor Card { get; }

    /// <summary>The case.</summary>
    [Symbol("T_C")]
    public Temperature CaseTemperature { get; }

    /// <summary>Where the junction starts when the pulse comes: the case, or the junction that an average dissipation has warmed.</summary>
    [Symbol("T_start")]
    public Temperature StartTemperature { get; }

    /// <summary>The pulse; null for dc.</summary>
    public Duration? Pulse { get; }

    /// <summary>The share of the rated power dissipation that is left.</summary>
    [Symbol("k_th")]
    public double PowerDeratingFactor { get; }

    /// <summary>The share of the second-breakdown current that is left.</summary>
    [Symbol("k_2")]
    public double SecondBreakdownLeft { get; }

    /// <summary>The current allowed at a voltage; none above V_CEO.</summary>
    /// <param name="V_CE">Collector to emitter; greater than 0 V.</param>
    /// <exception cref="ArgumentOutOfRangeException">The voltage is not positive.</exception>
    [Worked("the least of the current, dissipation and second-breakdown lines at that voltage, derated to the case temperature")]
    public ElectricCurrent LimitAt(ElectricPotential V_CE) => ElectricCurrent.FromAmperes(Limit(Guard.Positive(V_CE).Volts));

    /// <summary>What sets the current allowed at a voltage.</summary>
    /// <param name="V_CE">Collector to emitter; greater than 0 V.</param>
    /// <exception cref="ArgumentOutOfRangeException">The voltage is not positive.</exception>
    [Worked("which of the lines of the safe area is the least at that voltage")]
    public SafeAreaBound BoundAt(ElectricPotential V_CE)
    {
        var v = Guard.Positive(V_CE).Volts;
        if (v > _most)
            return SafeAreaBound.Voltage;
        var (top, heat, broken) = Bounds(Math.Log(v));
        // At a corner of two the first named is named, whatever the last bit says.
        return top <= Math.Min(heat, broken) + 1e-12 ? SafeAreaBound.Current : heat <= broken + 1e-12 ? SafeAreaBound.Dissipation : SafeAreaBound.SecondBreakdown;
    }

    /// <summary>The line as a chart draws it: the current allowed over voltages in equal ratios, from a least voltage to V_CEO.</summary>
    /// <param name="from">The least voltage; greater than 0 V and below V_CEO.</param>
    /// <param name="points">How many points; 2 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Worked("the least of the lines of the safe area at voltages up to that one")]
    public Curve<ElectricPotential, ElectricCurrent> Curve(ElectricPotential from, int points = 121)
    {
        Guard.Positive(from);
        Guard.Between(points, 2, 100_000);
        Guard.Positive(Card.MaxCollectorEmitterVoltage - from, nameof(from), "The curve runs up to V_CEO.");
        var ratio = Math.Log(_most / from.Volts);
        double[] v = [.. Enumerable.Range(0, points).Select(i => i == points - 1 ? _most : from.Volts * Math.Exp(ratio * i / (points - 1)))];
        return new(v, [.. v.Select(Limit)]);
    }

    /// <inheritdoc/>
    public override string ToString() => $"{Card.Name}, {(Pulse is { } t ? QuantityFormat.Short(t) : "dc")}, case at {QuantityFormat.Short(CaseTemperature)}: {QuantityFormat.Short(PowerDeratingFactor)} of the power, {QuantityFormat.Short(SecondBreakdownLeft)} of the second-breakdown current";

    /// <summary>The current allowed, in amperes, at so many volts.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal double Limit(double v)
    {
        if (v > _most)
            return 0;
        var (top, heat, broken) = Bounds(Math.Log(v));
        return Math.Exp(Math.Min(top, Math.Min(heat, broken)));
    }

    private static (LogLine Longer, LogLine Shorter, double Share) Lines(LogLine[] lines, Duration? pulse)
    {
        var lnTime = pulse is { } t ? Math.Log(t.Seconds) : double.PositiveInfinity;
        // The dc line is first and has no time: a pulse longer than the longest pulse line is dc.
        if (lines.Length == 1 || lnTime > lines[1].LnTime)
            return (lines[0], lines[0], 0);
        var i = Array.FindIndex(lines, l => l.LnTime <= lnTime);
        if (i < 0)
            return (lines[^1], lines[^1], 0);
        return i == 1 ? (lines[1], lines[1], 0) : (lines[i - 1], lines[i], (lines[i - 1].LnTime - lnTime) / (lines[i - 1].LnTime - lines[i].LnTime));
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private (double Top, double Heat, double Broken) Bounds(double lnV)
    {
        // Of a dc line, or at a line of the card itself, there is no other to mix with.
        if (_longer == _shorter)
            return (_longer.LnTop, _longer.Heat(lnV) + _lnHeat, _longer.Breaks(lnV) ? _longer.SecondBreakdown(lnV) + _lnBreak : double.PositiveInfinity);
        var top = Mix(_longer.LnTop, _shorter.LnTop);
        var heat = Mix(_longer.Heat(lnV), _shorter.Heat(lnV)) + _lnHeat;
        var broken = _longer.Breaks(lnV) || _shorter.Breaks(lnV)
            ? Mix(_longer.SecondBreakdown(lnV), _shorter.SecondBreakdown(lnV)) + _lnBreak
            : double.PositiveInfinity;
        return (top, heat, broken);
    }

    private double Mix(double longer, double shorter) => longer + (_share * (shorter - longer));
}
