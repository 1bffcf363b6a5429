using EightOhm.Numerics;
using EightOhm.OutputStages;

namespace EightOhm.Tests.OutputStages;

/// <summary>Averages of both sides' currents, several nodes at once, against sums over a fine grid of currents found by halving.</summary>
public class SideCurrentLawTests
{
    private const double Thermal = 0.0283;

    [Theory]
    [InlineData(0.1, 0.22, 5)]
    [InlineData(0.9, 0.03, 2)]
    [InlineData(0.02, 0.5, 9)]
    [InlineData(0.3, 0, 4)]
    public void Over_a_sine_they_are_those_of_a_fine_grid(double idle, double resistance, double peak)
    {
        var law = new SideCurrentLaw(idle, resistance, Thermal);
        // A quarter of a turn: of a periodic curve midpoints sum as well as anything does.
        var (sum, squares) = OverGrid(law, 20_000, part => (peak * Math.Sin(Math.PI / 2 * part), 1));
        var fine = law.OverSine(peak);
        Assert.Equal(sum, fine.Sum, 1e-9 * sum);
        Assert.Equal(squares, fine.Squares, 1e-9 * squares);
        var coarse = law.OverSine(peak, coarse: true);
        Assert.Equal(sum, coarse.Sum, 1e-5 * sum);
        Assert.Equal(squares, coarse.Squares, 1e-5 * squares);
    }

    [Theory]
    [InlineData(0.1, 0.22, 1.5)]
    [InlineData(0.02, 0.5, 3)]
    public void Over_noise_they_are_those_of_a_fine_grid(double idle, double resistance, double rms)
    {
        var law = new SideCurrentLaw(idle, resistance, Thermal);
        const double Sigmas = 8;
        var (sum, squares) = OverGrid(law, 40_000, part => (rms * Sigmas * part, Math.Sqrt(2 / Math.PI) * Math.Exp(-Math.Pow(Sigmas * part, 2) / 2) * Sigmas));
        var found = law.OverNoise(rms);
        // What lies beyond eight sigma is left out of the grid, and its steps are what they are.
        Assert.Equal(sum, found.Sum, 1e-7 * sum);
        Assert.Equal(squares, found.Squares, 1e-7 * squares);
    }

    // The load's current and its density at the midpoints of equal parts of one.
    private static (double Sum, double Squares) OverGrid(SideCurrentLaw law, int points, Func<double, (double Load, double Density)> at)
    {
        var (sum, squares) = (0.0, 0.0);
        for (var i = 0; i < points; i++)
        {
            var (load, density) = at((i + 0.5) / points);
            var off = Off(law, load);
            sum += density / points * (load + (2 * off));
            squares += density / points * ((off * off) + ((off + load) * (off + load)));
        }

        return (sum, squares);
    }

    // V_T·ln(i_on·i_off/I_q²) + R·(i_on + i_off − 2·I_q) = 0, rising in i_off, which is never above I_q.
    private static double Off(SideCurrentLaw law, double load)
    {
        double Balance(double off) => (law.Thermal * (Math.Log(off) + Math.Log(off + load) - (2 * Math.Log(law.Idle)))) + (law.Resistance * (load + (2 * off) - (2 * law.Idle)));
        var top = Math.Log(law.Idle);
        var (low, high) = Halving.Narrowed(u => Balance(Math.Exp(u)) < 0, top - 700, top, 80);
        return Math.Exp((low + high) / 2);
    }
}
