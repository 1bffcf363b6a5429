using EightOhm.Quantities;
using EightOhm.Supply;

namespace EightOhm.Tests.Supply;

/// <summary>Rails that are charged for an instant alone, lightly or very unequally loaded ones or those of a high note: a march must not pass it by.</summary>
public sealed class ShortPulseTests
{
    // Own and shared resistance, capacitance, loads, emf (rms), mains.
    [Theory]
    // A halved step of Newton's method came to rest on an edge of the map.
    [InlineData(0.0209503306, 4.9092922072, 4.903716e-3, 1.306620e-4, 0.245266181, 10.1114513, 50)]
    [InlineData(0.0681531853, 9.1555127478, 6.337738e-4, 0.28431489, 5.776577e-4, 10.8793735, 50)]
    // A rail stood at zero to within rounding, and its diode switched without end.
    [InlineData(0.04744534457360626, 0.4143155408423666, 0.0026520187505730338, 0.0001537687939126687, 0.002802896756903595, 16.061176811462445, 50)]
    [InlineData(0.06650635941684227, 0.08326554271021216, 0.007072706631362382, 0.012377432652725295, 3.133958546689439E-06, 54.6314433520933, 60)]
    // The one's pulse stood shortly before the end of the other's, and was not seen where it first fell.
    [InlineData(0.024236263381644575, 1.678925701628689, 0.0001473530205249658, 1.2078863594683451E-06, 0.0034979922358976644, 24.375397318989233, 50)]
    [InlineData(0.028176860544659, 4.930860990515897, 2.1073340631998e-4, 1.31393142061575e-6, 0.004759425971312, 52.4449693028092, 50)]
    public void A_period_brings_the_rails_back(double own, double shared, double farads, double first, double second, double volts, double hertz)
    {
        var network = Network(own, shared, farads, first, second, volts, hertz);
        var (u1, u2) = PeriodicState.Find(network, network.Half, out _);

        // Marched in small steps by another method, which knows of no events.
        var (end1, end2) = InSmallSteps(network, u1, u2);
        Assert.Equal(u1, end1, 1e-3 * first * network.Half / farads + 1e-8);
        Assert.Equal(u2, end2, 1e-3 * second * network.Half / farads + 1e-8);
        // Which rail is called the first tells nothing.
        var (v2, v1) = PeriodicState.Find(Network(own, shared, farads, second, first, volts, hertz), network.Half, out _);
        Assert.Equal(u1, v1, 1e-9);
        Assert.Equal(u2, v2, 1e-9);
    }

    // Half-waves of 20 kHz let the rail fall at once by what the capacitor's resistance takes: the diodes conduct in each of them, long before the mains' peak
    // and where they had been off by more than the mains can rise meanwhile.
    [Theory]
    [InlineData(0.074, 0.025865101923940894, 0.0592507179550409, 0.0116060866464955, 8.51997212206382, 0.00968019502934308, 12.416196709806545)]
    [InlineData(0.60322620056, 0.096950744443410, 0.0928349381444035, 0.03233256257436804, 5.314579565734039, 0.21482225006933922, 26.249386630256126)]
    [InlineData(0.18, 0.05, 0.03, 0.0047, 6, 0.3, 30)]
    public void Half_waves_of_a_high_note_charge_in_each_of_them(double own, double shared, double esr, double farads, double peak, double idle, double volts)
    {
        var network = new RailNetwork
        {
            Rails = 2,
            Peak = volts * Math.Sqrt(2),
            Omega = 2 * Math.PI * 50,
            Drop = 0.9,
            Own = own,
            Shared = shared,
            C = farads,
            Esr = esr,
            Load1 = new RailLoad(idle, peak, 0, 1),
            Load2 = new RailLoad(idle, peak, 0, -1),
            SignalOmega = 2 * Math.PI * 20e3,
        };
        var (u1, u2) = PeriodicState.Find(network, network.Half, out _);
        var (end1, end2) = InSmallSteps(network, u1, u2);
        var taken = network.Half * (idle + (peak / Math.PI)) / farads;
        Assert.Equal(u1, end1, 1e-4 * taken);
        Assert.Equal(u2, end2, 1e-4 * taken);
    }

    [Fact]
    public void No_pair_of_light_loads_is_without_a_steady_state()
    {
        var random = new Random(1);
        for (var i = 0; i < 5000; i++)
        {
            var network = Network(Between(0.02, 1), Between(1, 10), Between(1e-4, 0.1), Between(1e-6, 0.3), Between(1e-6, 0.3), Between(10, 60), i % 2 == 0 ? 50 : 60);
            var (u1, u2) = PeriodicState.Find(network, network.Half, out _);
            Assert.InRange(Math.Max(u1, u2), 0, network.Peak - network.Drop);
        }

        double Between(double low, double high) => low * Math.Pow(high / low, random.NextDouble());
    }

    [Fact]
    public void No_supply_that_plays_is_without_an_answer()
    {
        var random = new Random(3);
        double[] notes = [20, 33, 50, 100, 777, 1000, 10_000, 20_000];
        var told = 0;
        for (var i = 0; i < 400; i++)
        {
            var supply = new DualRailSupply(Between(10, 60).V, (i % 2 == 0 ? 50 : 60).Hz, Between(0.02, 1).Ohm, Between(0.01, 2).Ohm, 0.9.V, Between(0.5, 50).mF)
            {
                CapacitorEsr = Between(1, 100).mOhm,
                DiodeResistance = Between(5, 100).mOhm,
            };
            try
            {
                var rails = supply.SteadyState(RailCurrent.HalfWaves(Between(0.1, 15).A, notes[i % notes.Length].Hz, Between(1e-3, 0.5).A));
                Assert.InRange(rails.PositiveMinimum.Volts, 0, supply.Half.Volts * Math.Sqrt(2));
                told++;
            }
            catch (ShortfallException)
            {
                // More than that winding can carry, which is an answer.
            }
        }

        Assert.InRange(told, 350, 400);

        double Between(double low, double high) => low * Math.Pow(high / low, random.NextDouble());
    }

    private static RailNetwork Network(double own, double shared, double farads, double first, double second, double volts, double hertz) => new()
    {
        Rails = 2,
        Peak = volts * Math.Sqrt(2),
        Omega = 2 * Math.PI * hertz,
        Drop = 0.9,
        Own = own,
        Shared = shared,
        C = farads,
        Esr = 0,
        Load1 = new RailLoad(first, 0, 0, 1),
        Load2 = new RailLoad(second, 0, 0, -1),
    };

    // The midpoint rule; which diodes conduct is asked at each step.
    private static (double U1, double U2) InSmallSteps(RailNetwork n, double u1, double u2)
    {
        const int Steps = 400_000;
        var step = n.Half / Steps;
        for (var i = 0; i < Steps; i++)
        {
            var (a, b) = Slopes(i * step, u1, u2);
            var (c, d) = Slopes((i + 0.5) * step, u1 + (a * step / 2), u2 + (b * step / 2));
            (u1, u2) = (u1 + (c * step), u2 + (d * step));
        }

        return (u1, u2);

        (double First, double Second) Slopes(double t, double first, double second)
        {
            double load1 = n.Load1.At(Math.Sin(n.SignalOmega * t)), load2 = n.Load2.At(Math.Sin(n.SignalOmega * t));
            double e = (n.Peak * Math.Abs(Math.Sin(n.Omega * t))) - n.Drop, over1 = e - first + (n.Esr * load1), over2 = e - second + (n.Esr * load2);
            double own = n.Own + n.Esr + n.Shared, det = (own * own) - (n.Shared * n.Shared);
            double i1 = ((own * over1) - (n.Shared * over2)) / det, i2 = ((own * over2) - (n.Shared * over1)) / det;
            if (Math.Min(i1, i2) < 0)
                (i1, i2) = over1 > over2 ? (Math.Max(0, over1 / own), 0.0) : (0.0, Math.Max(0, over2 / own));
            return ((i1 - load1) / n.C, (i2 - load2) / n.C);
        }
    }
}
