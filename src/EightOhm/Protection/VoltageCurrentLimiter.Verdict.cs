using EightOhm.OutputStages;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Protection;

/// <content>Against silicon and loads.</content>
public sealed partial record VoltageCurrentLimiter
{
    private const int Scan = 4001;
    private const double LeastVoltage = 0.1;

    /// <summary>Holds the locus against a safe area and against loads.</summary>
    /// <remarks>The area is held against the coldest sense junction, which allows most, at every voltage up to the one given; loads against the hottest,
    /// at every level up to full. Each load must have this limiter's emitter resistor.</remarks>
    /// <param name="area">The safe area of one transistor, derated.</param>
    /// <param name="loads">The loads that the stage must drive, with the number of pairs.</param>
    /// <param name="coldest">Coldest sense junction.</param>
    /// <param name="hottest">Hottest sense junction; not below the coldest.</param>
    /// <param name="upTo">Highest collector-emitter voltage at which the transistor may conduct: with an inductive load it is rail to rail. V_CEO when not given.</param>
    /// <exception cref="ArgumentOutOfRangeException">A load has another emitter resistor, or a value is out of range.</exception>
    public LimiterVerdict Against(DeratedArea area, IReadOnlyList<LoadEllipse> loads, Temperature coldest, Temperature hottest, ElectricPotential? upTo = null)
    {
        ArgumentNullException.ThrowIfNull(area);
        ArgumentNullException.ThrowIfNull(loads);
        if (!(hottest >= coldest))
            Guard.Refuse(nameof(hottest), hottest, $"{QuantityFormat.Short(coldest)} or more, the coldest");
        var top = Guard.Between(Guard.Positive(upTo ?? area.Card.MaxCollectorEmitterVoltage, nameof(upTo)), ElectricPotential.FromVolts(LeastVoltage), area.Card.MaxCollectorEmitterVoltage, nameof(upTo), "Above V_CEO the area allows nothing.");
        return new(AgainstArea(area, coldest, top.Volts), [.. loads.Select(load => AgainstLoad(load, hottest))]);
    }

    private LimiterMargin AgainstArea(DeratedArea area, Temperature T, double top)
    {
        var locus = Locus(T);
        double Use(double v) => locus.ByTransistor(v) / area.Limit(v);
        var (worst, at) = (double.NegativeInfinity, 0.0);
        var (low, high) = (LeastVoltage, top);
        // Three passes, each over the neighbourhood of the last best: 4001 points, then 4001 in two of their intervals.
        for (var pass = 0; pass < 3; pass++)
        {
            Work.Checkpoint();
            var step = (high - low) / (Scan - 1);
            for (var i = 0; i < Scan; i++)
            {
                var v = Math.Min(low + (i * step), top);
                if (Use(v) is var use && use > worst)
                    (worst, at) = (use, v);
            }

            (low, high) = (Math.Max(LeastVoltage, at - step), Math.Min(top, at + step));
        }

        if (!(worst > 0))
            throw new InvalidOperationException($"The limiter allows no current from {QuantityFormat.Short(ElectricPotential.FromVolts(LeastVoltage))} to {QuantityFormat.Short(ElectricPotential.FromVolts(top))}: there is nothing to hold against the area. Look at R_1, R_2 and the sense voltage.");
        var volts = ElectricPotential.FromVolts(at);
        return new("the safe area", 1 / worst, volts, ElectricCurrent.FromAmperes(locus.ByTransistor(at)), area.LimitAt(volts), T);
    }

    private LimiterMargin AgainstLoad(LoadEllipse load, Temperature T)
    {
        if (Math.Abs((load.EmitterResistor.Ohms / EmitterResistor.Ohms) - 1) > 1e-6)
            Guard.Refuse(nameof(load), load.EmitterResistor, $"the limiter's, {QuantityFormat.Short(EmitterResistor)}, as emitter resistor of {load.Name}");
        var locus = Locus(T);
        var rail = load.Rail.Volts;
        var (negative, level, angle) = WorstPoint.Of((l, a) => -locus.ByRail(rail - load.Output(l, a)) / load.Current(l, a));
        return new(
            load.Name,
            -negative,
            ElectricPotential.FromVolts(load.Voltage(level, angle)),
            ElectricCurrent.FromAmperes(locus.ByRail(rail - load.Output(level, angle))),
            ElectricCurrent.FromAmperes(load.Current(level, angle)),
            T);
    }
}
