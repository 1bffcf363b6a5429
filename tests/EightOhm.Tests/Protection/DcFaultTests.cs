using CsCheck;
using EightOhm.Protection;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Tests.Protection;

/// <summary>Detectors, relays and the table of faults.</summary>
public class DcFaultTests
{
    [Fact]
    public void A_note_that_begins_passes_more_than_one_that_lasts()
    {
        ElectricPotential music = 40.V, V_th = 0.65.V;
        Duration one = DcDetector.OnePoleTau(music, 10.Hz, V_th), two = DcDetector.TwoPoleTau(music, 10.Hz, V_th);
        Assert.Equal(1.95, DcDetectorFromRest.Peak(music, 10.Hz, one, 1) / V_th, 0.01);
        Assert.Equal(3.77, DcDetectorFromRest.Peak(music, 10.Hz, two, 2) / V_th, 0.01);

        Duration safe1 = DcDetectorFromRest.LeastTau(music, 10.Hz, V_th, 1), safe2 = DcDetectorFromRest.LeastTau(music, 10.Hz, V_th, 2);
        Assert.Equal(V_th.Volts, DcDetectorFromRest.Peak(music, 10.Hz, safe1, 1).Volts, 1e-7);
        Assert.Equal(V_th.Volts, DcDetectorFromRest.Peak(music, 10.Hz, safe2, 2).Volts, 1e-7);

        // By this measure one pole trips sooner on a rail than two.
        Assert.True(DcDetector.OnePoleTrip(46.V, V_th, safe1) < DcDetector.TwoPoleTrip(46.V, V_th, safe2));
    }

    [Fact]
    public void Two_poles_trip_where_their_step_response_meets_the_threshold_from_a_millionth_to_nearly_all() =>
        Gen.Select(Gen.Double[-6, -0.0001], Gen.Double[-3, 1]).Sample((share, tau) =>
        {
            double fraction = Math.Pow(10, share), seconds = Math.Pow(10, tau);
            var u = DcDetector.TwoPoleTrip(46.V, fraction * 46.V, seconds.s).Seconds / seconds;
            var passed = u < 1e-2 ? u * u * (0.5 - (u / 3) + (u * u / 8) - (u * u * u / 30)) : 1 - ((1 + u) * Math.Exp(-u));
            Assert.Equal(1, passed / fraction, 1e-6);
        });

    [Fact]
    public void A_step_below_the_threshold_is_refused()
    {
        Assert.Throws<RefusedValueException>(() => DcDetector.OnePoleTrip(0.5.V, 0.65.V, 1.s));
        Assert.Throws<RefusedValueException>(() => DcDetector.TwoPoleTrip(0.5.V, 0.65.V, 1.s));
        Assert.Throws<RefusedValueException>(() => DcDetector.OnePoleTau(0.5.V, 10.Hz, 0.65.V));
    }

    [Fact]
    public void A_relay_of_30_V_dc_does_not_break_a_rail()
    {
        var relay = RelayVerdict.Judge(46.V, 5.8.Ohm, 30.V, 10.A);
        Assert.Equal(7.93, relay.Current.Amperes, 0.005);
        Assert.False(relay.Breaks);
        Assert.Contains("may not break: 46 V", relay.ToString(), StringComparison.Ordinal);
        Assert.True(RelayVerdict.Judge(46.V, 5.8.Ohm, 60.V, 10.A).Breaks);
        Assert.False(RelayVerdict.Judge(46.V, 5.8.Ohm, 60.V, 5.A).Breaks);
        Assert.Equal(8.06, LoudspeakerFault.Heat(46.V, 5.8.Ohm, 22.1.ms).Joules, 0.005);
    }

    [Fact]
    public void A_table_of_faults_says_what_nobody_answers_for()
    {
        var table = FaultTable.Empty
            .When("dc at the output", "detector opens the relay", 22.1.ms, "mains off, find the cause")
            .When("over-current", "limiter holds the current", "at once", "by itself")
            .When("mains lost", "relay opens", Mute.HoldUp(30.mF, 47.V, 20.V, 3.2.A), "by itself after the start delay", "rails hold longer");
        Assert.Equal(5, table.Missing.Count);
        Assert.Contains("bias open", table.Missing);
        Assert.Contains("sustained short", table.Missing);
        Assert.Throws<ArgumentException>(() => table.When("Over-current", "fuse", "later", "new fuse"));
        Assert.Throws<ArgumentException>(() => table.When(" ", "fuse", "later", "new fuse"));
    }
}
