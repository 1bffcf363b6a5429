using EightOhm.Noise;
using EightOhm.Published.Machine;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Published.Checks.Books;
using Check = EightOhm.Published.Machine.Published;

namespace EightOhm.Published.Checks;

/// <summary>Noise bandwidths, each kind against its own definition.</summary>
[Checks]
public class NoiseBandwidthChecks
{
    private static readonly Source Series = Source.Secondhand("Renesas, application note R13AN0010", "noise bandwidth against order, as a university's notebook copies it");

    [Fact]
    public void The_series_that_is_for_identical_poles()
    {
        var f = 1.Hz;
        (int Order, string Printed)[] rows = [(1, "1.57 Hz"), (2, "1.22 Hz"), (3, "1.16 Hz"), (4, "1.13 Hz")];
        Check.Table(rows, r => NoiseBandwidth.OfIdenticalPolesByCorner(f, r.Order), r => r.Printed, Series, "printed as ratios to the −3 dB frequency of the whole");
        Check.Disagrees(() => NoiseBandwidth.OfIdenticalPolesByCorner(f, 5), "1.12 Hz", "1.1138 Hz", Series,
            "Five identical poles have 1.1138 times their common −3 dB frequency, by integration of the squared response; the table rounds it to 1.12.");
    }

    [Fact]
    public void Identical_poles_are_no_Butterworth()
    {
        var f = 1.Hz;
        Check.Against(() => NoiseBandwidth.OfIdenticalPolesByCorner(f, 2), NoiseBandwidth.OfButterworth(f, 2), "a Butterworth taken for identical poles", "1.22 Hz", Series);
        Check.Against(() => NoiseBandwidth.OfIdenticalPolesByCorner(f, 2), NoiseBandwidth.OfIdenticalPolesByPole(f, 2), "the corner of the whole taken for one pole's", "1.22 Hz", Series);
    }

    [Fact]
    public void The_one_pole_of_an_op_amp()
    {
        var corner = 100.kHz;
        var source = Fiore("Ex 5.14, p. 167");
        Check.Against(() => NoiseBandwidth.OfIdenticalPolesByPole(corner, 1), corner, "the corner taken for the noise bandwidth", "157 kHz", source);
        Check.Check(() => NoiseBandwidth.OfButterworth(corner, 1), "157 kHz", source, "the first order, where all kinds are one");
    }

    [Fact]
    public void Every_order_by_integration_of_the_squared_response()
    {
        var f = 1.Hz;
        var reference = Reference.Read("noise-bandwidth.csv");
        Check.Computed(reference, r => NoiseBandwidth.OfIdenticalPolesByPole(f, (int)r["n"]), "by_pole");
        Check.Computed(reference, r => NoiseBandwidth.OfIdenticalPolesByCorner(f, (int)r["n"]), "by_corner");
        Check.Computed(reference, r => NoiseBandwidth.OfButterworth(f, (int)r["n"]), "butterworth");
    }
}
