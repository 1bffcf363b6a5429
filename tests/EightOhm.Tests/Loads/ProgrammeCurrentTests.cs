using EightOhm.Loads;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Tests.Loads;

/// <summary>The worst programme current where its poles are awkward, and what it can never be.</summary>
public class ProgrammeCurrentTests
{
    [Fact]
    public void It_is_never_below_the_worst_sine_nor_below_dc()
    {
        var random = new Random(4);
        for (var i = 0; i < 100; i++)
        {
            var box = Draw(random);
            var area = box.AbsoluteArea.Siemens;
            Assert.True(area >= (1 - 1e-7) / box.R_vc.Ohms, $"{area} S is below dc, 1/{box.R_vc.Ohms} S");
            for (var f = 1.0; f < 1e5; f *= 1.03)
                Assert.True(area >= (1 - 1e-7) / box.Magnitude(f.Hz).Ohms, $"{area} S is below a sine of {f} Hz");
        }
    }

    [Fact]
    public void A_march_through_time_reaches_the_same_current()
    {
        var random = new Random(7);
        for (var i = 0; i < 20; i++)
        {
            var box = Draw(random, leastCoil: -3.5);
            Assert.Equal(1, box.AbsoluteArea.Siemens / March(box), 2e-3);
        }
    }

    [Fact]
    public void The_climbs_and_falls_of_the_step_add_up_to_it()
    {
        foreach (var box in new[] { new BoxedDriver(5.8.Ohm, 0.5.mH, 45.Hz, 3, 0.6), new BoxedDriver(6.Ohm, 0.H, 45.Hz, 3, 0.6) })
        {
            var last = box.StepCurrent(40.V, 0.s).Amperes;
            var total = Math.Abs(last); // without a coil the current begins with a jump
            for (var k = 0; k <= 4000; k++)
            {
                var now = box.StepCurrent(40.V, (1e-6 * Math.Pow(3e5, k / 4000.0)).s).Amperes;
                total += Math.Abs(now - last);
                last = now;
            }

            Assert.Equal(1, total / box.WorstProgrammeCurrent(40.V).Amperes, 1e-4);
        }
    }

    [Fact]
    public void A_step_begins_at_nothing_behind_a_coil_and_ends_at_the_dc_current()
    {
        var box = new BoxedDriver(5.8.Ohm, 0.5.mH, 45.Hz, 3, 0.6);
        Assert.Equal(0, box.StepCurrent(40.V, 0.s).Amperes, 1e-9);
        Assert.Equal(-40 / 5.8, box.StepCurrent((-40).V, 10.s).Amperes, 1e-9);
        Assert.Equal(40 / 5.8, new BoxedDriver(5.8.Ohm, 0.H, 45.Hz, 3, 0.6).StepCurrent(40.V, 0.s).Amperes, 1e-9);
        Assert.Equal(5, new ResistiveLoad(8.Ohm).StepCurrent(40.V, 0.s).Amperes);
        var cabled = new ResistiveLoad(8.Ohm).Through(Cable.Iec(10.m, 2.5.mm2));
        Assert.Equal(0, cabled.StepCurrent(40.V, 0.s).Amperes);
        double R = cabled.Magnitude(1e-3.Hz).Ohms, tau = Cable.Iec(10.m, 2.5.mm2).LoopInductance.Henries / R;
        Assert.Equal(40 / R * (1 - Math.Exp(-1)), cabled.StepCurrent(40.V, tau.s).Amperes, 1e-9);
        Assert.Throws<RefusedValueException>(() => box.StepCurrent(40.V, (-1).us));
    }

    [Fact]
    public void A_load_says_what_it_asks()
    {
        var box = new BoxedDriver(5.8.Ohm, 0.5.mH, 45.Hz, 3, 0.6);
        var asks = box.Asks("a box", 40.V);
        Assert.Equal("a box at 40 V peak: 6.845 A, 2.901 Ω to a transistor", asks.ToString());
        Assert.Equal(box.WorstProgrammeCurrent(40.V), asks.WorstProgrammeCurrent);
        Assert.Null(new PhaseLoad(4.Ohm, 45.deg).Asks("4 Ω", 38.V).WorstProgrammeCurrent);
        Assert.Throws<RefusedValueException>(() => box.Asks("a box", 0.V));
    }

    [Fact]
    public void Two_or_three_equal_poles_are_nothing_special()
    {
        // With ω = 1 and R = 1: three poles at −a need τ = 1/a³, 1/Q_ms = 3a − a³, 1/Q_es = 3/a − 1/a³ − 3a + a³.
        const double a = 1.2;
        double tau = 1 / (a * a * a), b = (3 * a) - (a * a * a), g = (3 / a) - tau - (3 * a) + (a * a * a);
        double Area(double inverse) => ImpulseArea.PerVolt(new SeriesNetwork(1, tau, 1, inverse, g));
        var apart = (Area(b * 1.001) + Area(b * 0.999)) / 2;
        Assert.Equal(apart, Area(b), 1e-5);
        for (var near = 1e-4; near > 1e-16; near /= 3)
            Assert.Equal(apart, Area(b * (1 + near)), 1e-4);

        // A pair of equal poles: no coil, 1/Q_ms + 1/Q_es = 2, so h = (1 − t)·exp(−t), whose absolute area is 2/e.
        var pair = ImpulseArea.PerVolt(new SeriesNetwork(1, 0, 1, 1.5, 0.5));
        Assert.Equal(1 + (0.5 * 2 / Math.E), pair, 1e-9);
        foreach (var off in new[] { 1e-14, 1e-10, 1e-7, 1e-4 })
            Assert.Equal(pair, ImpulseArea.PerVolt(new SeriesNetwork(1, 0, 1, 1.5 + off, 0.5)), 2 * off + 1e-9);
    }

    [Fact]
    public void A_coil_that_vanishes_leaves_the_current_of_none()
    {
        var none = new BoxedDriver(5.8.Ohm, 0.H, 45.Hz, 3, 0.6).AbsoluteArea.Siemens;
        // What a small coil saves goes with τ·ln(1/τ): 8 parts in 100 000 for 0.1 µH.
        foreach (var henries in new[] { 1e-7, 1e-9, 1e-11, 1e-12, 1e-13 })
            Assert.Equal(1, new BoxedDriver(5.8.Ohm, henries.H, 45.Hz, 3, 0.6).AbsoluteArea.Siemens / none, 1e-8 + (henries * 1.5e3));
        Assert.True(none > 2 / 5.8, "the impulse of 1/R and the motional current together");
    }

    [Fact]
    public void A_resistor_at_the_end_of_a_cable_never_passes_ohms_law()
    {
        var cable = Cable.Awg(10.m, 14);
        Assert.Equal(40 / (8 + cable.LoopResistance.Ohms), new ResistiveLoad(8.Ohm).Through(cable).WorstProgrammeCurrent(40.V).Amperes, 1e-12);
    }

    private static BoxedDriver Draw(Random random, double leastCoil = -5) => new(
        (1 + (15 * random.NextDouble())).Ohm, Math.Pow(10, leastCoil + ((-2 - leastCoil) * random.NextDouble())).H, (20 + (300 * random.NextDouble())).Hz,
        Math.Pow(10, -0.7 + (2 * random.NextDouble())), Math.Pow(10, -1 + (2 * random.NextDouble())));

    // Another way: the network stepped by the classical Runge-Kutta rule from a unit impulse, the magnitude summed.
    private static double March(BoxedDriver d)
    {
        double R = d.R_vc.Ohms, L = d.L.Henries, r = d.R_es.Ohms, C = d.C_mes.Farads, M = d.L_ces.Henries;
        (double, double, double) Slope(double i, double v, double m) => ((-(R * i) - v) / L, (i - (v / r) - m) / C, v / M);
        double i = 1 / L, v = 0, m = 0, t = 0, area = 0;
        var slow = Math.Min(R / L, Math.Min(2 * Math.PI * d.f_s.Hertz, 1 / (2 * r * C)));
        var h = Math.Min(L / R, Math.Min(1 / (2 * Math.PI * d.f_s.Hertz), Math.Min(r, R) * C)) / 40;
        // The motional inductance empties through both resistances, which may be slower than all else.
        var life = 20 / Math.Min(slow, 1 / ((M / r) + (M / R) + (1 / slow)));
        while (t < life)
        {
            var (a1, b1, c1) = Slope(i, v, m);
            var (a2, b2, c2) = Slope(i + (h / 2 * a1), v + (h / 2 * b1), m + (h / 2 * c1));
            var (a3, b3, c3) = Slope(i + (h / 2 * a2), v + (h / 2 * b2), m + (h / 2 * c2));
            var (a4, b4, c4) = Slope(i + (h * a3), v + (h * b3), m + (h * c3));
            var next = i + (h / 6 * (a1 + (2 * a2) + (2 * a3) + a4));
            v += h / 6 * (b1 + (2 * b2) + (2 * b3) + b4);
            m += h / 6 * (c1 + (2 * c2) + (2 * c3) + c4);
            area += h / 2 * (Math.Abs(i) + Math.Abs(next));
            (i, t) = (next, t + h);
        }

        return area;
    }
}
