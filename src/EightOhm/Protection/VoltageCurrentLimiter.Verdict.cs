using EightOhm.Explaining;
using EightOhm.Numerics;
using EightOhm.Quantities;
using EightOhm.SafeAreas;
using UnitsNet;

namespace EightOhm.Protection;

/// <content>Against silicon and loads.</content>
public sealed partial record VoltageCurrentLimiter
{
    private const int Looks = 4000;
    private const double LeastVoltage = 0.1;

    /// <summary>Holds the locus against a safe area and against loads.</summary>
    /// <remarks>The area is held against the coldest sense junction, which allows most, at every voltage up to the one given; loads against the hottest,
    /// at every level up to full. Each load must have this limiter's (nominal) emitter resistor. Parts are as they are: see <see cref="WithSpread"/>.</remarks>
    /// <param name="area">The safe area of one transistor, derated.</param>
    /// <param name="loads">The loads that the stage must drive, with the number of pairs.</param>
    /// <param name="coldest">Coldest sense junction.</param>
    /// <param name="hottest">Hottest sense junction; not below the coldest.</param>
    /// <param name="upTo">Highest collector-emitter voltage at which the transistor may conduct: with an inductive load it is rail to rail. V_CEO when not given.</param>
    /// <returns>All margins, with what is missing in <see cref="LimiterVerdict.Short"/>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A load has another emitter resistor, or a value is out of range.</exception>
    [Worked("the locus held against the safe area at each voltage, and against each load over its half-wave")]
    public LimiterVerdict Against(DeratedArea area, IReadOnlyList<LoadEllipse> loads, Temperature coldest, Temperature hottest, ElectricPotential? upTo = null)
    {
        ArgumentNullException.ThrowIfNull(loads);
        if (!(hottest >= coldest))
            Guard.Refuse(nameof(hottest), hottest, $"{QuantityFormat.Short(coldest)} or more, the coldest");
        return new(MarginTo(area, coldest, upTo), [.. loads.Select(load => MarginTo(load, hottest))]);
    }

    /// <summary>How far the locus stays below a safe area, at the voltage where it is tightest: area over locus.</summary>
    /// <param name="area">The safe area of one transistor, derated.</param>
    /// <param name="T">The sense junction's temperature: the coldest allows most.</param>
    /// <param name="upTo">Highest collector-emitter voltage at which the transistor may conduct; V_CEO when not given.</param>
    /// <returns>The margin; <see cref="LimiterMargin.Most"/> where the limiter allows no current to speak of.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range.</exception>
    [Worked("the least quotient of the two, over the voltages or over levels and instants: a scan, then golden section")]
    public LimiterMargin MarginTo(DeratedArea area, Temperature T, ElectricPotential? upTo = null)
    {
        ArgumentNullException.ThrowIfNull(area);
        var top = Guard.Between(Guard.Positive(upTo ?? area.Card.MaxCollectorEmitterVoltage, nameof(upTo)), ElectricPotential.FromVolts(LeastVoltage), area.Card.MaxCollectorEmitterVoltage, nameof(upTo), "Above V_CEO the area allows nothing.").Volts;
        var locus = Locus(T);
        var (at, use) = Scan.Highest(v => locus.ByTransistor(v) / area.Limit(v), top, LeastVoltage, Looks, 1e-9 * top);
        var volts = ElectricPotential.FromVolts(at);
        return LimiterMargin.Of("the safe area", use, volts, ElectricCurrent.FromAmperes(locus.ByTransistor(at)), area.LimitAt(volts), T);
    }

    /// <summary>How far the locus stays above a load at every level up to full, where it is tightest: locus over load.</summary>
    /// <param name="load">The load, with the number of pairs and this limiter's nominal emitter resistor.</param>
    /// <param name="T">The sense junction's temperature: the hottest allows least.</param>
    /// <returns>The margin; 0 where the limiter blocks altogether.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The load has another emitter resistor.</exception>
    [Worked("the least quotient of the two, over the voltages or over levels and instants: a scan, then golden section")]
    public LimiterMargin MarginTo(LoadEllipse load, Temperature T)
    {
        ArgumentNullException.ThrowIfNull(load);
        if (Math.Abs((load.EmitterResistor.Ohms / nominal.Ohms) - 1) > 1e-6)
            Guard.Refuse(nameof(load), load.EmitterResistor, $"the limiter's, {QuantityFormat.Short(nominal)}, as emitter resistor of {load.Name}");
        var locus = Locus(T);
        var rail = load.Rail.Volts;
        var (negative, level, angle) = WorstPoint.Of<ShareOfLocus, EllipseInstant>(new(locus, rail, load));
        var at = load.At(angle);
        return new(
            load.Name,
            -negative,
            ElectricPotential.FromVolts(load.Voltage(level, at)),
            ElectricCurrent.FromAmperes(locus.ByRail(rail - load.Output(level, at))),
            ElectricCurrent.FromAmperes(load.Current(level, at)),
            T);
    }

    /// <summary>What a shorted output leaves of a safe area: the output at 0 V, the whole rail on transistor and emitter resistor, the current at the limit.</summary>
    /// <remarks>For a short that lasts give the dc area: the limiter alone does not end it.</remarks>
    /// <param name="area">The safe area of one transistor, derated, for as long as the short lasts.</param>
    /// <param name="rail">One rail as the short finds it or leaves it; greater than 0 V, at most V_CEO.</param>
    /// <param name="T">The sense junction's temperature: the coldest allows most.</param>
    /// <returns>The margin, area over limit; <see cref="LimiterMargin.Most"/> where the limiter blocks.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range.</exception>
    [Worked("the current of the locus on the whole rail, held against the safe area")]
    public LimiterMargin MarginShorted(DeratedArea area, ElectricPotential rail, Temperature T)
    {
        ArgumentNullException.ThrowIfNull(area);
        Guard.Between(Guard.Positive(rail), default, area.Card.MaxCollectorEmitterVoltage, hint: "Above V_CEO the area allows nothing.");
        var I = CurrentAt(rail, T);
        // At the rail itself the drop of the emitter resistor cannot be more than the rail.
        var V_CE = ElectricPotential.FromVolts(Math.Max(LeastVoltage, (rail - (I * EmitterResistor)).Volts));
        var allowed = area.LimitAt(V_CE);
        return LimiterMargin.Of("the safe area, output shorted", I / allowed, V_CE, I, allowed, T);
    }

    // Locus over load, negative: where it is greatest the margin is least.
    private readonly struct ShareOfLocus(LocusLine locus, double rail, LoadEllipse load) : IHalfWaveFigure<EllipseInstant>
    {
        public EllipseInstant Instant(double angle) => load.At(angle);

        public double At(double level, in EllipseInstant at) => -locus.ByRail(rail - load.Output(level, at)) / load.Current(level, at);
    }
}
