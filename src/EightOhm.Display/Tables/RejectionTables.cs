using EightOhm.Quantities;
using EightOhm.SupplyPaths;

namespace EightOhm.Display.Tables;

/// <summary>What a rail leaves at the output, as tables.</summary>
public static class RejectionTables
{
    // The rest is in the sum.
    private const int Lines = 8;

    /// <summary>Hum line by line, the strongest lines at the output, and all lines together.</summary>
    /// <param name="hum">The spectrum.</param>
    [Shows]
    public static Table Hum(HumSpectrum hum)
    {
        ArgumentNullException.ThrowIfNull(hum);
        var strongest = hum.Lines.OrderByDescending(l => l.AtOutput.Volts).Take(Lines).OrderBy(l => l.Frequency.Hertz);
        return new Table(
            ["frequency", "on the rail, rms", "rejection, output-referred", "at the output, rms"],
            [.. strongest.Select(IReadOnlyList<string> (l) => [QuantityFormat.Short(l.Frequency), QuantityFormat.Short(l.Ripple), $"{Engineering.Number(l.Rejection.Decibels, 4)} dB", QuantityFormat.Short(l.AtOutput)]),
                ["all lines", QuantityFormat.Short(hum.RippleRms), "", QuantityFormat.Short(hum.Total)]],
            [0, 1, 2, 3],
            "Ripple of a rail and what is left of it");
    }
}
