using EightOhm.Devices;
using EightOhm.OutputStages;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Tests.OutputStages;

/// <summary>Sharing and drivers at the figures of a 100 W design.</summary>
public class DriversTests
{
    [Fact]
    public void Ten_millivolts_of_mismatch()
    {
        var (V_T, R) = (Junction.ThermalVoltage(55.degC), 272.5.mOhm);
        Assert.Equal(18.4e-3, CurrentSharing.Spread(10.mV, 103.8.mA, R, V_T).Amperes, 0.05e-3);
        Assert.Equal(35.5e-3, CurrentSharing.Spread(10.mV, 3.16.A, R, V_T).Amperes, 0.05e-3);
        Assert.Equal(18.4e-3, CurrentSharing.Difference(10.mV, 103.8.mA, R, V_T).Amperes, 0.1e-3);
        Assert.Equal(10e-3, CurrentSharing.Matching(CurrentSharing.Spread(10.mV, 1.A, R, V_T), 1.A, R, V_T).Volts, 1e-12);
        Assert.Equal(0.2725, CurrentSharing.LeastResistance(10.mV, CurrentSharing.Spread(10.mV, 1.A, R, V_T), 1.A, V_T).Ohms, 1e-9);
        Assert.Equal(0, CurrentSharing.LeastResistance(1.mV, 10.mA, 100.mA, V_T).Ohms);
    }

    [Fact]
    public void Drivers_of_three_pairs()
    {
        Assert.Equal(158e-3, Drivers.BaseCurrent(9.49.A, 60).Amperes, 0.5e-3);
        var I_D = Drivers.Standing(1.40.V, 47.Ohm);
        Assert.Equal(29.8e-3, I_D.Amperes, 0.05e-3);
        Assert.Equal(1.43, (double)Drivers.Heat(48.V, 0.V, 4.Ohm, 0.deg, 60, I_D).Watts, 0.005);
        var flat = Drivers.At(46.V, 30.V, 4.Ohm, 45.deg, 3, _ => 60, I_D);
        Assert.Equal((double)Drivers.Heat(46.V, 30.V, 4.Ohm, 45.deg, 60, I_D).Watts, (double)flat.Heat.Watts, 1e-9);
        var droop = Drivers.At(46.V, 30.V, 4.Ohm, 45.deg, 3, i => 60 / (1 + (i / 6.A)), I_D);
        Assert.True(droop.Heat > flat.Heat && droop.BaseCurrent > flat.BaseCurrent && droop.Gain < flat.Gain);
        Assert.Equal(I_D.Amperes + droop.BaseCurrent.Amperes, droop.PeakCurrent.Amperes, 1e-12);
        for (var level = 0; level <= 46; level++)
            Assert.True(Drivers.Heat(46.V, level.V, 4.Ohm, 45.deg, 60, I_D) <= Drivers.WorstHeat(46.V, 4.Ohm, 45.deg, 60, I_D));
    }

    [Fact]
    public void A_driver_s_driver_is_one_too()
    {
        // Pre-driver by its own sum, moment by moment, against the same formula with the gains multiplied.
        var (outputs, drivers, own, standing) = (60.0, 80.0, 9.5e-3, 29.8e-3);
        var sum = 0.0;
        const int N = 20_000;
        for (var k = 0; k < N; k++)
        {
            var (s, v) = (Math.Sin(Math.Tau * (k + 0.5) / N), 30.0);
            var driver = standing + (s > 0 ? v / 4 * s / outputs : 0);
            sum += (46 - (v * s)) * (own + (driver / drivers));
        }

        var ours = Drivers.Heat(46.V, 30.V, 4.Ohm, 0.deg, outputs * drivers, (own + (standing / drivers)).A);
        Assert.Equal(sum / N, (double)ours.Watts, 1e-6);
    }

    [Fact]
    public void Impossible_inputs_are_refused()
    {
        Assert.Throws<RefusedValueException>(() => Drivers.At(46.V, 30.V, 4.Ohm, 45.deg, 3, _ => 0, 30.mA));
        Assert.Throws<RefusedValueException>(() => Drivers.At(46.V, 50.V, 4.Ohm, 45.deg, 3, _ => 60, 30.mA));
        Assert.Throws<RefusedValueException>(() => Drivers.Heat(46.V, 30.V, 4.Ohm, 95.deg, 60, 30.mA));
        Assert.Throws<RefusedValueException>(() => CurrentSharing.Spread(10.mV, 0.A, 0.22.Ohm, 26.mV));
        Assert.Throws<RefusedValueException>(() => ChargeControl.Stored(1.A, 0.Hz));
    }
}
