using EightOhm.Quantities;

namespace EightOhm.Supply;

/// <summary>The period that the rectified mains and a signal share.</summary>
internal static class CommonPeriod
{
    private const int MostHalfCycles = 1000, MostSignalCycles = 2000;

    // Well above the ripple of 100 or 120 Hz the reservoir sees the mean current and little else.
    private const double MeanAbove = 500;

    /// <summary>Half-cycles of the mains in the shared period; 0 when there is none of reasonable length and the mean current serves.</summary>
    /// <param name="mains">Mains frequency, Hz.</param>
    /// <param name="signal">Signal frequency, Hz; 0 for none.</param>
    /// <exception cref="ArgumentOutOfRangeException">A low signal shares no reasonable period with the mains.</exception>
    public static int HalfCycles(double mains, double signal)
    {
        if (signal == 0)
            return 1;
        for (var a = 1; a <= MostHalfCycles; a++)
        {
            var cycles = a * signal / (2 * mains);
            if (cycles > MostSignalCycles)
                break;
            var whole = Math.Round(cycles);
            if (whole >= 1 && Math.Abs(cycles - whole) < 1e-9 * cycles)
                return a;
        }

        if (signal < MeanAbove)
            Guard.Refuse("signal", UnitsNet.Frequency.FromHertz(signal), $"a frequency that shares a period of at most {QuantityFormat.Short(UnitsNet.Duration.FromSeconds(MostHalfCycles / (2 * mains)))} with the mains", $"Try {QuantityFormat.Short(UnitsNet.Frequency.FromHertz(Math.Max(1, Math.Round(signal))))}; from 500 Hz up the mean current serves.");
        return 0;
    }
}
