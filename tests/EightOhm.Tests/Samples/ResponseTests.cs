using System.Numerics;
using EightOhm.Circuits;
using EightOhm.Quantities;
using EightOhm.Samples;
using UnitsNet;

namespace EightOhm.Tests.Samples;

/// <summary>A complex value over frequency: read, unwrapped, crossed.</summary>
public class ResponseTests
{
    private static readonly Frequency[] Decades = [1.Hz, 10.Hz, 100.Hz];

    [Fact]
    public void Between_points_magnitude_and_phase_run_straight_over_the_logarithm()
    {
        var r = new Response<Gain>(Decades, [1, 0.1 * Complex.FromPolarCoordinates(1, -1), 0.01 * Complex.FromPolarCoordinates(1, -2)]);
        Assert.Equal(1 / Math.Sqrt(10), r.MagnitudeAt(Frequency.FromHertz(Math.Sqrt(10))).Ratio, 1e-12);
        Assert.Equal(-0.5 * 180 / Math.PI, r.PhaseAt(Frequency.FromHertz(Math.Sqrt(10))).Degrees, 1e-9);
        Assert.Equal([0, -20, -40], r.Decibels.Select(d => Math.Round(d, 9)));
        Assert.Equal(Math.Pow(10, 0.5), Assert.Single(r.Crossings(Gain.FromRatio(Math.Pow(10, -0.5)))).Hertz, 1e-9);
        Assert.Empty(r.Crossings(Gain.FromRatio(2)));
        Assert.Equal("response from 1 Hz to 100 Hz, 3 points", r.ToString());
        Assert.Equal(1, r.Magnitude.Max.Ratio);
    }

    [Fact]
    public void The_phase_has_no_jumps()
    {
        var f = Sweep.Log(1.Hz, 1.kHz, 40);
        var r = new Response<Gain>(f, [.. f.Select(x => Complex.Exp(new Complex(0, -Math.Tau * x.Hertz * 0.001)))]);
        Assert.Equal(-360, r.PhaseAt(1.kHz).Degrees, 1e-9);
        for (var i = 1; i < r.Count; i++)
            Assert.True(r.Phase.Y[i] < r.Phase.Y[i - 1]);
    }

    [Fact]
    public void A_response_of_a_circuit_finds_turns_between_coarse_points()
    {
        // Five turns between two points: read from the points alone they would be lost.
        var c = Networks();
        var r = c.Response("in", "late", [1.kHz, 5.MHz]);
        Assert.Equal(-1800, r.PhaseAt(5.MHz).Degrees, 1e-6);

        static Circuit Networks()
        {
            var c = new Circuit();
            c.VoltageSource("V1", "in");
            c.Resistor("R1", "in", "out", 1.kOhm);
            c.Resistor("R2", "out", "0", 1.kOhm);
            c.Delay("D1", "out", "late", 1.us);
            c.Resistor("R3", "late", "0", 1.kOhm);
            return c;
        }
    }

    [Fact]
    public void Corners_are_where_the_magnitude_has_changed_by_three_decibels()
    {
        var c = new Circuit();
        c.VoltageSource("V1", "in");
        c.Capacitor("C1", "in", "a", 1.uF);
        c.Resistor("R1", "a", "0", 10.kOhm);
        c.VoltageControlledVoltage("E1", "b", "0", "a", "0", Gain.FromRatio(1));
        c.Resistor("R2", "b", "out", 1.kOhm);
        c.Capacitor("C2", "out", "0", 1.nF);
        var r = c.Response("in", "out");
        Assert.Equal(15.9155, r.LowerCorner(1.kHz).Hertz, 0.02);
        Assert.Equal(159155, r.UpperCorner(1.kHz).Hertz, 20);
        Assert.Contains("wider range", Assert.Throws<InvalidOperationException>(() => c.Response("in", "out", [100.Hz, 1.kHz]).UpperCorner(1.kHz)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_out_of_order_or_outside_is_refused()
    {
        Assert.Contains("rising order", Assert.Throws<RefusedValueException>(() => new Response<Gain>([2.Hz, 1.Hz], [1, 1])).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => new Response<Gain>(Decades, [1, 1]));
        Assert.Throws<ArgumentException>(() => new Response<Gain>(Decades, [1, double.NaN, 1]));
        var r = new Response<ElectricResistance>(Decades, [8, 8, 8]);
        Assert.Equal(8.Ohm, r.MagnitudeAt(5.Hz));
        Assert.Throws<RefusedValueException>(() => r.MagnitudeAt(1.kHz));
        Assert.Throws<RefusedValueException>(() => r.Crossings(0.Ohm));
    }
}
