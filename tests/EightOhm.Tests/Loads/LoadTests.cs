using System.Numerics;
using CsCheck;
using EightOhm.Loads;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Tests.Loads;

/// <summary>Loads over frequency: what they are, how they scale, where they are hardest, what is refused.</summary>
public class LoadTests
{
    private static readonly Gen<BoxedDriver> Drivers =
        from R in Gen.Double[1, 16]
        from L in Gen.Double[-6, -2]
        from f in Gen.Double[20, 500]
        from ms in Gen.Double[-0.7, 1.3]
        from es in Gen.Double[-1, 1]
        select new BoxedDriver(R.Ohm, Math.Pow(10, L).H, f.Hz, Math.Pow(10, ms), Math.Pow(10, es));

    [Fact]
    public void A_driver_is_its_coil_at_dc_its_peak_at_resonance_and_its_inductance_far_up()
    {
        var box = new BoxedDriver(5.8.Ohm, 0.5.mH, 45.Hz, 3, 0.6);
        Assert.Equal(5.8, box.Magnitude(0.001.Hz).Ohms, 1e-6);
        Assert.Equal(5.8 + box.R_es.Ohms, box.Magnitude(45.Hz).Ohms, 1e-3);
        Assert.Equal(2 * Math.PI * 1e6 * 0.5e-3, box.Magnitude(1.MHz).Ohms, 0.01);
        Assert.True(box.Phase(40.Hz).Degrees > 0 && box.Phase(55.Hz).Degrees < 0 && box.Phase(5.kHz).Degrees > 45, "inductive, capacitive, inductive");
        Assert.Equal(2 * Math.PI * 45, 1 / Math.Sqrt(box.C_mes.Farads * box.L_ces.Henries), 1e-9);
    }

    [Fact]
    public void A_magnitude_at_a_phase_keeps_both_at_every_frequency_even_at_a_quarter_turn()
    {
        foreach (var degrees in new[] { -90.0, -45, 0, 30, 90 })
        {
            var load = new PhaseLoad(4.Ohm, degrees.deg);
            Assert.Equal(4, load.Magnitude(20.Hz).Ohms, 1e-12);
            Assert.Equal(degrees, load.Phase(20.kHz).Degrees, 1e-12);
            Assert.Equal(EquivalentResistor.Peak(4.Ohm, degrees.deg).Ohms, load.PeakEquivalent(1.kHz).Ohms, 1e-12);
        }
    }

    [Fact]
    public void A_resistor_is_its_own_equivalent()
    {
        var least = new ResistiveLoad(8.Ohm).Least();
        Assert.Equal((8, 8, 8), (least.Impedance.Ohms, Math.Round(least.AverageEquivalent.Ohms, 12), Math.Round(least.PeakEquivalent.Ohms, 12)));
        Assert.Equal(5, new ResistiveLoad(8.Ohm).WorstProgrammeCurrent(40.V).Amperes, 1e-12);
    }

    [Fact]
    public void Every_driver_is_passive() => Gen.Select(Drivers, Gen.Double[0, 5]).Sample((d, f) =>
    {
        var z = d.Impedance(Math.Pow(10, f));
        return z.Real > 0 && Math.Abs(d.Phase(Math.Pow(10, f).Hz).Degrees) <= 90;
    });

    [Fact]
    public void Twice_the_impedance_is_twice_every_resistor_and_half_every_current() => Drivers.Sample(d =>
    {
        var twice = new BoxedDriver(2 * d.R_vc, 2 * d.L, d.f_s, d.Q_ms, d.Q_es);
        var (one, two) = (d.Least(), twice.Least());
        Close(2 * one.Impedance.Ohms, two.Impedance.Ohms);
        Close(2 * one.AverageEquivalent.Ohms, two.AverageEquivalent.Ohms);
        Close(2 * one.PeakEquivalent.Ohms, two.PeakEquivalent.Ohms);
        Close(d.WorstProgrammeCurrent(40.V).Amperes / 2, twice.WorstProgrammeCurrent(40.V).Amperes);
    }, iter: 30);

    [Fact]
    public void No_denser_scan_finds_a_harder_frequency() => Drivers.Sample(d =>
    {
        var least = d.Least(20.Hz, 5.kHz);
        for (var i = 0; i <= 20_000; i++)
        {
            var (z, phase) = d.Polar(20 * Math.Pow(250, i / 20_000.0));
            Assert.True(z >= least.Impedance.Ohms * (1 - 1e-9));
            Assert.True(z * EquivalentResistor.AverageFactor(phase) >= least.AverageEquivalent.Ohms * (1 - 1e-9));
            Assert.True(z * EquivalentResistor.PeakFactor(phase) >= least.PeakEquivalent.Ohms * (1 - 1e-9));
        }
    }, iter: 20);

    [Fact]
    public void The_least_lies_at_an_end_of_the_band_where_it_does()
    {
        var box = new BoxedDriver(5.8.Ohm, 0.5.mH, 45.Hz, 3, 0.6);
        Assert.Equal(10_000, box.Least(10.kHz, 20.kHz).ImpedanceAt.Hertz, 1e-6);
        Assert.Equal(300, box.Least(100.Hz, 300.Hz).ImpedanceAt.Hertz, 1e-6);
    }

    [Fact]
    public void A_cable_is_in_series_whether_the_load_is_a_network_or_not()
    {
        var cable = Cable.Iec(10.m, 2.5.mm2);
        var box = new BoxedDriver(5.8.Ohm, 0.5.mH, 45.Hz, 3, 0.6);
        foreach (Load load in new Load[] { box, new ResistiveLoad(8.Ohm), new PhaseLoad(4.Ohm, 60.deg) })
        {
            var expected = load.Impedance(1e3) + cable.LoopResistance.Ohms + (new Complex(0, 2 * Math.PI * 1e3) * cable.LoopInductance.Henries);
            Assert.Equal(0, (load.Through(cable).Impedance(1e3) - expected).Magnitude, 1e-12);
        }

        Assert.Equal(0.1596, cable.LoopResistance.Ohms, 1e-9);
        Assert.True(box.Through(cable).WorstProgrammeCurrent(40.V) < box.WorstProgrammeCurrent(40.V));
    }

    [Fact]
    public void A_sweep_has_its_ends_and_its_columns()
    {
        var box = new BoxedDriver(5.8.Ohm, 0.5.mH, 45.Hz, 3, 0.6);
        var sweep = box.Sweep(10.Hz, 20.kHz, 101);
        Assert.Equal((10, 20_000, 101), (sweep.Hertz[0], sweep.Hertz[^1], sweep.Hertz.Count));
        Assert.Equal(box.Magnitude(sweep.Hertz[50].Hz).Ohms, sweep.Ohms[50], 1e-12);
        Assert.Equal(box.Phase(sweep.Hertz[50].Hz).Degrees, sweep.Degrees[50], 1e-12);
        Assert.Equal(box.AverageEquivalent(sweep.Hertz[50].Hz).Ohms, sweep.AverageOhms[50], 1e-12);
        Assert.Equal(box.PeakEquivalent(sweep.Hertz[50].Hz).Ohms, sweep.PeakOhms[50], 1e-12);
    }

    [Fact]
    public void What_is_no_load_is_refused_with_what_is_allowed()
    {
        Assert.Contains("a short is a fault", Refused(() => new ResistiveLoad(0.Ohm)), StringComparison.Ordinal);
        Assert.Contains("from −90° to 90° (was 91°)", Refused(() => new PhaseLoad(4.Ohm, 91.deg)), StringComparison.Ordinal);
        Refused(() => new PhaseLoad(4.Ohm, (-90.1).deg));
        Refused(() => new PhaseLoad(0.Ohm, 45.deg));
        Refused(() => EquivalentResistor.Average(4.Ohm, 100.deg));
        Refused(() => EquivalentResistor.Peak(0.Ohm, 45.deg));
        Assert.Contains("Q_es must be greater than 0", Refused(() => new BoxedDriver(5.8.Ohm, 0.5.mH, 45.Hz, 3, -0.6)), StringComparison.Ordinal);
        Refused(() => new BoxedDriver(5.8.Ohm, 0.5.mH, 45.Hz, 0, 0.6));
        Refused(() => new BoxedDriver(0.Ohm, 0.5.mH, 45.Hz, 3, 0.6));
        Refused(() => new BoxedDriver(5.8.Ohm, (-0.5).mH, 45.Hz, 3, 0.6));
        Refused(() => new BoxedDriver(5.8.Ohm, 0.5.mH, 0.Hz, 3, 0.6));
        var load = new ResistiveLoad(8.Ohm);
        Refused(() => load.Magnitude(0.Hz));
        Assert.Contains("above where it begins", Refused(() => load.Sweep(1.kHz, 1.kHz)), StringComparison.Ordinal);
        Refused(() => load.Sweep(10.Hz, 1.kHz, 1));
        Refused(() => load.Least(1.kHz, 10.Hz));
        Refused(() => load.WorstProgrammeCurrent((-1).V));
        Refused(() => Cable.Awg(0.m, 14));
    }

    [Fact]
    public void A_load_of_ones_own_that_is_active_or_shorted_says_so()
    {
        Assert.Contains("no passive impedance at 1.0 kHz", Assert.Throws<InvalidOperationException>(() => new Odd(new(-1, 2)).Magnitude(1.kHz)).Message.Replace("1 kHz", "1.0 kHz", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Throws<InvalidOperationException>(() => new Odd(0).Least());
        Assert.Throws<InvalidOperationException>(() => new Odd(double.NaN).Sweep(10.Hz, 1.kHz));
        Assert.Equal(3, new Odd(3).Magnitude(1.kHz).Ohms);
    }

    private static string Refused(Func<object> make) => Assert.Throws<RefusedValueException>(() => make()).Message;

    private static void Close(double expected, double actual) => Assert.Equal(1, actual / expected, 1e-8);

    private sealed class Odd(Complex z) : Load
    {
        protected internal override Complex Impedance(double hertz) => z;
    }
}
