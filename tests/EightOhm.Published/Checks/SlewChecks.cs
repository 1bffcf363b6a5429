using EightOhm.Feedback;
using EightOhm.Published.Machine;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Published.Checks.Books;
using Check = EightOhm.Published.Machine.Published;

namespace EightOhm.Published.Checks;

[Checks]
public class SlewChecks
{
    [Fact]
    public void Full_power_bandwidth_of_op_amps()
    {
        Bandwidth(0.5.V_per_us, 12.V, "6631 Hz", Fiore("Ex 5.7, p. 148"));
        Bandwidth(15.V_per_us, 10.V, "239 kHz", Malvino("Ex 18-5, p. 673"));
        Bandwidth(0.5.V_per_us, 0.795.V, "100 kHz", Malvino("Ex 19-13, p. 724"));
        Bandwidth(0.5.V_per_us, 0.75.V, "106 kHz", Boylestad("Ex 10.19"));
        Bandwidth(0.5.V_per_us, 5.V, "16 kHz", Franco("Ex 6.8, p. 279"));
    }

    [Fact]
    public void Full_power_bandwidth_at_two_swings()
    {
        var SR = 6.V_per_us;
        (ElectricPotential Peak, string Printed)[] rows = [(1.V, "0.955 MHz"), (10.V, "95.5 kHz")];
        Check.Table(rows, r => SlewRate.FullPowerBandwidth(SR, r.Peak), r => r.Printed, Source.Companion("Scilab textbook companion 2621 (linear integrated circuits)", "Ex 2.13"));
    }

    [Fact]
    public void A_row_of_rounded_bandwidths()
    {
        var V_p = 8.V;
        ElectricPotentialChangeRate slow = 0.5.V_per_us, middle = 5.V_per_us, fast = 50.V_per_us;
        var source = Malvino("Ex 18-6, p. 673");
        Check.Check(() => SlewRate.FullPowerBandwidth(slow, V_p), "10 kHz", source);
        Check.Check(() => SlewRate.FullPowerBandwidth(fast, V_p), "1 MHz", source);
        Check.Disagrees(() => SlewRate.FullPowerBandwidth(middle, V_p), "100 kHz", "99.47 kHz", source,
            "The book rounds 9.947, 99.47 and 994.7 kHz to 10 kHz, 100 kHz and 1 MHz: its zeros are not digits.");
    }

    [Fact]
    public void Slew_rate_that_a_sine_needs()
    {
        var (f, V_p) = (20.kHz, 10.V);
        var source = Fiore("Ex 5.8, p. 149");
        Check.Check(() => SlewRate.Needed(f, V_p), "1.257 V/us", source);
        Check.Against(() => SlewRate.Needed(f, V_p), SlewRate.Needed(f, V_p / Math.Sqrt(2)), "the rms taken for the peak", "1.257 V/us", source);
        var (tenKilohertz, swing) = (10.kHz, 7.96.V);
        Check.Check(() => SlewRate.Needed(tenKilohertz, swing), "0.5 V/us", Franco("Ex 6.8, p. 279"), "0.796 V in, gain 10");
    }

    [Fact]
    public void The_steepest_slope_of_a_sine_by_maximisation()
    {
        var reference = Reference.Read("ratings.csv");
        var f = 10.kHz;
        Check.Computed(reference, r => SlewRate.Needed(f, ElectricPotential.FromVolts(r["V_pk"])), "slope_at_10_kHz");
    }

    private static void Bandwidth(ElectricPotentialChangeRate SR, ElectricPotential V_p, string printed, Source source) =>
        Check.Check(() => SlewRate.FullPowerBandwidth(SR, V_p), printed, source);
}
