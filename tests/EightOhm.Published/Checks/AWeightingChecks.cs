using EightOhm.Noise;
using EightOhm.Published.Machine;
using EightOhm.Quantities;
using UnitsNet;
using Check = EightOhm.Published.Machine.Published;

namespace EightOhm.Published.Checks;

/// <summary>Frequency weighting A against the standard's table.</summary>
[Checks]
public class AWeightingChecks
{
    private static readonly Source Iec = Source.Secondhand("IEC 61672-1, frequency weightings", "as tabulated at lichtbeeldgeluid.nl/geluid/tabellen");

    // From nominal 10 Hz, exactly 1 kHz·10^(−20/10), in thirds of an octave to nominal 20 kHz.
    private static readonly string[] Table =
    [
        "-70.4", "-63.4", "-56.7", "-50.5", "-44.7", "-39.4", "-34.6", "-30.2", "-26.2", "-22.5", "-19.1", "-16.1",
        "-13.4", "-10.9", "-8.6", "-6.6", "-4.8", "-3.2", "-1.9", "-0.8", "0.0", "+0.6", "+1.0", "+1.2",
        "+1.3", "+1.2", "+1.0", "+0.5", "-0.1", "-1.1", "-2.5", "-4.3", "-6.6", "-9.3",
    ];

    [Fact]
    public void All_thirds_of_an_octave_at_their_exact_frequencies()
    {
        Assert.Equal(34, Table.Length);
        var rows = Table.Select((text, i) => (Frequency: Exact(i - 20), Printed: text + " dB")).ToArray();
        Check.Table(rows, r => AWeighting.Response(r.Frequency), r => r.Printed, Iec, "at the exact frequencies 1 kHz·10^(n/10)");
    }

    [Fact]
    public void The_nominal_frequencies_are_not_meant()
    {
        Frequency exact = Exact(-19), nominal = 12.5.Hz, exactHigh = Exact(12), nominalHigh = 16.kHz;
        Check.Against(() => AWeighting.Response(exact), AWeighting.Response(nominal), "the nominal frequency for the exact one", "-63.4 dB", Iec);
        Check.Against(() => AWeighting.Response(exactHigh), AWeighting.Response(nominalHigh), "the nominal frequency for the exact one", "-6.6 dB", Iec);
        Check.Against(() => AWeighting.Response(exact), Gain.FromPowerRatio(AWeighting.Response(exact).Ratio), "10·log for 20·log", "-63.4 dB", Iec);
    }

    [Fact]
    public void What_the_poles_make_of_a_kilohertz()
    {
        var f = 1.kHz;
        Check.Check(() => AWeighting.Poles(f), "0.794", Iec);
    }

    [Fact]
    public void The_response_and_the_white_noise_behind_it_by_zeros_and_poles()
    {
        var reference = Reference.Read("a-weighting.csv");
        Check.Computed(reference, r => AWeighting.Poles(Frequency.FromHertz(r["f"])), "R_A");
        Check.Computed(reference, r => AWeighting.Response(Frequency.FromHertz(r["f"])), "A");
        var e_n = 1.nV_rtHz;
        Check.Computed(Reference.Read("a-weighted-noise.csv"), r => AWeighting.WhiteNoise(e_n, Frequency.FromHertz(r["f_L"]), Frequency.FromHertz(r["f_H"])), "E_per_nV");
    }

    private static Frequency Exact(int n) => Frequency.FromHertz(1000 * Math.Pow(10, n / 10.0));
}
