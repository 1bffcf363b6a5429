using CsCheck;
using EightOhm.Quantities;
using EightOhm.Supply;
using UnitsNet;

namespace EightOhm.Tests.Supply;

public class RectifierSupplyTests
{
    private static readonly RectifierSupply Small = new(35.V, 50.Hz, 0.5.Ohm, 1.6.V, 10.mF);

    [Fact]
    public void Three_amperes_from_35_volts_and_half_an_ohm()
    {
        var at = Small.SteadyState(RailCurrent.Constant(3.A));
        Assert.Equal(41.108, at.Mean.Volts, 5e-4);
        Assert.Equal(2.050, at.Ripple.Volts, 5e-4);
        Assert.Equal(5.672, at.WindingRms.Amperes, 5e-4);
        Assert.Equal(13.439, at.WindingPeak.Amperes, 5e-4);
        Assert.Equal(60.6, at.ConductionAngle.Degrees, 0.05);
        // Not the textbook's, which knows no source resistance.
        Assert.True(Math.Abs(at.Mean.Volts - 46.40) > 5 && Math.Abs(at.Ripple.Volts - 3.00) > 0.9);
    }

    [Fact]
    public void A_winding_of_a_stiff_dual_supply_carries_more_than_twice_the_load_current()
    {
        var at = new RectifierSupply(37.1.V, 50.Hz, 0.2037.Ohm, 0.9.V, 30.mF).SteadyState(RailCurrent.Constant(3.233.A));
        Assert.Equal(7.10, at.WindingRms.Amperes, 5e-3);
        Assert.Equal(2.195, at.RmsOverDc, 5e-3);
        Assert.Equal(526.5, 2 * at.ApparentPower.Voltamperes, 0.1);
        // Not the centre-tap factor 1.00, nor the makers' 1.61 and 1.8.
        Assert.True(at.RmsOverDc > 1.9);
    }

    [Fact]
    public void It_agrees_with_a_plain_march_of_200_cycles()
    {
        const int perCycle = 40_000;
        const double h = 0.02 / perCycle, rs = 0.5, c = 10e-3, load = 3;
        double v = 40, sum = 0, square = 0, low = 99, high = 0, most = 0;
        for (var n = 0; n < 200 * perCycle; n++)
        {
            // Backward Euler; the sine's half-cycle is repeated, so a table is not needed for speed.
            var e = Math.Abs(35 * Math.Sqrt(2) * Math.Sin(Math.PI * (n % perCycle + 1) * 2 / perCycle)) - 1.6;
            double off = v - (h / c * load), i = 0;
            v = e > off ? (v + (h / c * ((e / rs) - load))) / (1 + (h / (rs * c))) : off;
            if (e > off)
                i = (e - v) / rs;
            if (n < 199 * perCycle)
                continue;
            (sum, square, low, high, most) = (sum + v, square + (i * i), Math.Min(low, v), Math.Max(high, v), Math.Max(most, i));
        }

        var at = Small.SteadyState(RailCurrent.Constant(3.A));
        // The march's own error goes with its step: 0.15 mV at half a microsecond.
        Assert.Equal(sum / perCycle, at.Mean.Volts, 2e-4);
        Assert.Equal(high - low, at.Ripple.Volts, 2e-4);
        Assert.Equal(Math.Sqrt(square / perCycle), at.WindingRms.Amperes, 1e-3);
        Assert.Equal(most, at.WindingPeak.Amperes, 1e-3);
    }

    [Fact]
    public void Charge_and_energy_balance()
    {
        Gen.Select(Gen.Double[8, 60], Gen.Double[0.05, 1.5], Gen.Double[0, 2], Gen.Double[0.01, 0.3], Gen.Double[0, 0.05], Gen.Double[0.02, 0.12]).Sample((emf, rs, drop, sag, esr, part) =>
        {
            // A part of what the winding gives into a short.
            var current = part * emf / rs * 0.5;
            var mF = 1e3 * current / (100 * sag * emf);
            var supply = new RectifierSupply(emf.V, 50.Hz, rs.Ohm, drop.V, mF.mF) { CapacitorEsr = esr.Ohm };
            var at = supply.SteadyState(RailCurrent.Constant(current.A));
            var wave = at.OverOneCycle(20_001);
            double charge = 0, given = 0, lost = 0, taken = 0;
            for (var k = 0; k < wave.Time.Count - 1; k++)
            {
                double i = wave.Winding[k], e = emf * Math.Sqrt(2) * Math.Abs(Math.Sin(2 * Math.PI * 50 * wave.Time[k]));
                charge += i;
                given += e * i;
                lost += (drop * i) + (rs * i * i) + (esr * Math.Pow(i - current, 2));
                taken += wave.Rail[k] * current;
            }

            Assert.Equal(current, charge / (wave.Time.Count - 1), 1e-4 * current);
            Assert.Equal(1, (lost + taken) / given, 1e-4);
            Assert.Equal(current, at.LoadMean.Amperes, 1e-9 * current);
            Assert.True(at.Minimum < at.Mean && at.Mean < at.Maximum);
            Assert.InRange(at.Maximum.Volts, 0, (emf * Math.Sqrt(2)) - drop);
        }, iter: 100);
    }

    [Fact]
    public void Exponential_diodes_approach_a_constant_drop_as_their_slope_vanishes()
    {
        // At 25 K the knee is a few millivolts; the saturation current places it at 0.7 V.
        var cold = new ExponentialDiode(ElectricCurrent.FromAmperes(1e-140), 1, Temperature.FromKelvins(25));
        var drop = cold.At(8.A).Volts;
        foreach (var load in new[] { RailCurrent.Constant(3.A), RailCurrent.Resistive(14.Ohm), RailCurrent.HalfWaves(8.A, 20.Hz, 0.5.A, 40.deg) })
        {
            var sharp = new RectifierSupply(35.V, 50.Hz, 0.5.Ohm, cold, 10.mF) { CapacitorEsr = 50.mOhm }.SteadyState(load);
            var flat = new RectifierSupply(35.V, 50.Hz, 0.5.Ohm, drop.V, 10.mF) { CapacitorEsr = 50.mOhm }.SteadyState(load);
            Assert.Equal(flat.Mean.Volts, sharp.Mean.Volts, 5e-3);
            Assert.Equal(flat.Minimum.Volts, sharp.Minimum.Volts, 5e-3);
            Assert.Equal(flat.VoltageAtLoadPeak.Volts, sharp.VoltageAtLoadPeak.Volts, 1e-2);
            Assert.Equal(flat.WindingRms.Amperes, sharp.WindingRms.Amperes, 5e-3);
        }
    }

    [Fact]
    public void A_nearly_empty_circuit_and_a_nearly_rigid_one()
    {
        Assert.Equal((35 * Math.Sqrt(2)) - 1.6, Small.SteadyState(RailCurrent.Constant(0.A)).Mean.Volts, 1e-8);
        var rigid = new RectifierSupply(35.V, 50.Hz, 1.mOhm, 1.6.V, 30.mF).SteadyState(RailCurrent.Constant(0.1.A));
        Assert.Equal(ReservoirEstimates.RippleFullWave(0.1.A, 50.Hz, 30.mF).Volts, rigid.Ripple.Volts, 0.1 * rigid.Ripple.Volts);
        // A reservoir so small that the winding charges nearly all the time.
        var bare = new RectifierSupply(35.V, 50.Hz, 0.5.Ohm, 1.6.V, 10.uF).SteadyState(RailCurrent.Resistive(10.Ohm));
        Assert.InRange(bare.ConductionAngle.Degrees, 160, 180);
        Assert.InRange(bare.WindingPeak.Amperes, 4.3, (49.5 - 1.6) / 10.5 * 1.01);
    }

    [Fact]
    public void A_high_signal_that_shares_no_period_is_taken_by_its_mean_and_says_so()
    {
        var load = RailCurrent.HalfWaves(10.A, 997.13.Hz, 0.7.A);
        var at = Small.SteadyState(load);
        Assert.True(at.ByMeanCurrent);
        Assert.Equal(Small.SteadyState(RailCurrent.Constant(load.Mean)).Mean.Volts, at.Mean.Volts, 1e-12);
        Assert.False(Small.SteadyState(RailCurrent.HalfWaves(5.A, 1.kHz, 0.7.A)).ByMeanCurrent);
    }

    [Fact]
    public void The_estimates_stand_beside_with_their_errors()
    {
        var rows = Small.SteadyState(RailCurrent.Constant(3.A)).BesideTextbook().Rows;
        Assert.Equal(3.00, ((ElectricPotential)rows.Single(r => r.What == "ripple, peak to peak").Estimated).Volts, 1e-9);
        Assert.Equal(46.40, ((ElectricPotential)rows.Single(r => r.What == "mean").Estimated).Volts, 5e-3);
        Assert.Equal((46.397 / 41.108) - 1, rows.Single(r => r.What == "mean").Error.DecimalFractions, 1e-4);
        Assert.All(rows.Where(r => r.What.StartsWith("winding current, rms", StringComparison.Ordinal)), r => Assert.True(r.Error.DecimalFractions < 0));
    }
}
