using EightOhm.OutputStages;

namespace EightOhm.Tests.OutputStages;

/// <summary>Averages of both sides' currents, several nodes at once, against sums over a fine grid of currents found by halving.</summary>
public class SideCurrentLawTests
{
    [Theory]
    [InlineData(0.1, 0.22, 5)]
    [InlineData(0.9, 0.03, 2)]
    [InlineData(0.02, 0.5, 9)]
    [InlineData(0.3, 0, 4)]
    public void Over_a_sine_they_are_those_of_a_fine_grid(double idle, double resistance, double peak)
    {
        var law = new SideCurrentLaw(idle, resistance, Thermal);
        var (sum, squares) = (0.0, 0.0);
        const int Points = 20_000;
        // Midpoints of a whole turn's quarter: of a periodic curve they sum as well as anything does.
        for (var i = 0; i < Points; i++)
            Add(law, peak * Math.Sin(Math.PI / 2 * (i + 0.5) / Points), 1.0 / Points, ref sum, ref squares);
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
        var (sum, squares) = (0.0, 0.0);
        const int Points = 40_000;
        const double Sigmas = 8;
        for (var i = 0; i < Points; i++)
        {
            var u = Sigmas * (i + 0.5) / Points;
            Add(law, rms * u, Math.Sqrt(2 / Math.PI) * Math.Exp(-u * u / 2) * Sigmas / Points, ref sum, ref squares);
        }

        var found = law.OverNoise(rms);
        // What lies beyond eight sigma is left out of the grid, and its steps are what they are.
        Assert.Equal(sum, found.Sum, 1e-7 * sum);
        Assert.Equal(squares, found.Squares, 1e-7 * squares);
    }

    private const double Thermal = 0.0283;

    private static void Add(SideCurrentLaw law, double load, double weight, ref double sum, ref double squares)
    {
        var off = Halved(law, load);
        sum += weight * (load + (2 * off));
        squares += weight * ((off * off) + ((off + load) * (off + load)));
    }

    // V_T·ln(i_on·i_off/I_q²) + R·(i_on + i_off − 2·I_q) = 0, rising in i_off: without a resistor it would be more, so that is where it begins.
    private static double Halved(SideCurrentLaw law, double load)
    {
        double low = Math.Log(law.Idle) - 2000, high = Math.Log(law.Idle);
        for (var i = 0; i < 80; i++)
        {
            var u = (low + high) / 2;
            var off = Math.Exp(u);
            var balance = (law.Thermal * (u + Math.Log(off + load) - (2 * Math.Log(law.Idle)))) + (law.Resistance * (load + (2 * off) - (2 * law.Idle)));
            (low, high) = balance < 0 ? (u, high) : (low, u);
        }

        return Math.Exp((low + high) / 2);
    }
}
