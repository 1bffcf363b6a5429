using EightOhm.Circuits;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Display.Tables;

/// <summary>What a circuit answers, as tables.</summary>
public static class CircuitTables
{
    private const int Digits = 4, MarginDigits = 3;

    /// <summary>An element in words: "R1, 1 kΩ, from in to out".</summary>
    /// <param name="element">The element.</param>
    [Shows]
    public static string Of(Element element)
    {
        ArgumentNullException.ThrowIfNull(element);
        return ValueText.Words(element);
    }

    /// <summary>A loop's crossovers and margins, and first whether the closed loop is stable.</summary>
    /// <param name="loop">The return ratio.</param>
    [Shows]
    public static Table Of(ReturnRatio loop)
    {
        ArgumentNullException.ThrowIfNull(loop);
        IEnumerable<IReadOnlyList<string>> rows =
        [
            ["closed loop", loop.IsStable switch { true => "stable", false => "UNSTABLE", null => "cannot tell" }, ""],
            .. loop.Unstable.Select(p => (IReadOnlyList<string>)["grows", $"{p}", ""]),
            .. loop.Crossovers.Select(c => (IReadOnlyList<string>)["crossover", Short(c.Frequency), c.PhaseMargin is { } m ? $"phase margin {QuantityFormat.Short(m, MarginDigits)}" : "–"]),
            .. loop.PhaseReversals.Select(c => (IReadOnlyList<string>)["phase −180°", Short(c.Frequency), c.GainMargin is { } g ? $"gain margin {QuantityFormat.Short(g.Decibels, MarginDigits)} dB" : "–"]),
        ];
        return new Table(["what", "where", "left"], [.. rows], [],
            $"Return ratio {loop.At}: {(loop.IsFirstStage ? "the outer loop" : "inner loops through it and the outer one together")}{(loop.IsStable == true ? "" : "; margins of a loop that is not known to be stable are not told")}");
    }

    /// <summary>The devices at an operating point.</summary>
    /// <param name="point">The operating point.</param>
    [Shows]
    public static Table Of(OperatingPoint point)
    {
        ArgumentNullException.ThrowIfNull(point);
        return Devices(point.Devices) with { Caption = $"{point}" };
    }

    /// <summary>Devices side by side.</summary>
    /// <param name="devices">The devices.</param>
    [Shows]
    public static Table Devices(IEnumerable<DevicePoint> devices)
    {
        ArgumentNullException.ThrowIfNull(devices);
        return new Table(
            ["device", "I_C", "I_B", "V_BE", "V_CE", "P_D", "state"],
            [.. devices.Select(d => (IReadOnlyList<string>)
            [
                d.Name, Short(d.Current), Short(d.BaseCurrent), Short(d.BaseEmitterVoltage), Short(d.CollectorEmitterVoltage), Short(d.Dissipation), $"{d.State}".ToLowerInvariant(),
            ])],
            [1, 2, 3, 4, 5],
            "Devices at the operating point; of a diode its current and voltage");
    }

    /// <summary>On what a gain hangs, the greatest influence first.</summary>
    /// <param name="sensitivities">The sensitivities.</param>
    [Shows]
    public static Table Sensitivities(IEnumerable<Sensitivity> sensitivities)
    {
        ArgumentNullException.ThrowIfNull(sensitivities);
        return new Table(
            ["value", "1 % more of it changes the magnitude by", "and the phase by"],
            [.. sensitivities.Select(s => (IReadOnlyList<string>)[s.Name, $"{QuantityFormat.Short(s.Magnitude, MarginDigits)} %", QuantityFormat.Short(s.Phase / 100, MarginDigits)])],
            [1, 2],
            "Sensitivities, for small changes");
    }

    /// <summary>Poles or zeros, the slowest first.</summary>
    /// <param name="roots">The roots.</param>
    [Shows]
    public static Table Roots(IEnumerable<ComplexRoot> roots)
    {
        ArgumentNullException.ThrowIfNull(roots);
        return new Table(
            ["frequency", "what", "quality", "half plane"],
            [.. roots.Select(r => (IReadOnlyList<string>)
                [Short(r.Frequency), r.IsPair ? "pair" : "real", r.Quality is { } q ? QuantityFormat.Short(q, MarginDigits) : "–", r.S == default ? "origin" : r.IsLeft ? "left" : r.S.Real > 0 ? "RIGHT" : "on the axis"])],
            [0, 2],
            "Roots");
    }

    /// <summary>What of each rail arrives, at three frequencies.</summary>
    /// <param name="rejections">The rejections, each over 100 Hz to 10 kHz at least.</param>
    [Shows]
    public static Table Rejections(IEnumerable<SupplyRejection> rejections)
    {
        ArgumentNullException.ThrowIfNull(rejections);
        Frequency[] at = [100.Hz, 1.kHz, 10.kHz];
        string Rejection(SupplyRejection r, Frequency f)
        {
            var (first, last) = (r.ToOutput.Hertz[0], r.ToOutput.Hertz[^1]);
            if (f.Hertz < first || f.Hertz > last)
                return "–";
            return r.ToOutput.MagnitudeAt(f).Ratio > 0 ? $"{QuantityFormat.Short(r.OutputReferred(f).Decibels, MarginDigits)} dB" : "nothing arrives";
        }

        return new Table(
            ["rail", "node", .. at.Select(f => QuantityFormat.Short(f))],
            [.. rejections.Select(r => (IReadOnlyList<string>)[r.Rail, r.Node, .. at.Select(f => Rejection(r, f))])],
            [2, 3, 4],
            "Supply rejection, output-referred: the rail's voltage over what of it is at the node");
    }

    private static string Short(object? value) => value is null ? "–" : QuantityFormat.Short(value, Digits);
}
