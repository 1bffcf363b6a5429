using EightOhm.Published.Machine;
using EightOhm.Quantities;
using EightOhm.Ratings;
using UnitsNet;
using static EightOhm.Published.Checks.Books;
using Check = EightOhm.Published.Machine.Published;

namespace EightOhm.Published.Checks;

[Checks]
public class RatingChecks
{
    [Fact]
    public void Sensitivity_from_gain()
    {
        var rating = new OutputRating(40.W, 8.Ohm);
        (Gain Gain, string Printed)[] rows = [(20.ratio, "894 mV"), (200.ratio, "89 mV")];
        Check.Table(rows, r => rating.SensitivityFor(r.Gain), r => r.Printed, Lm3876);
        Check.Against(() => rating.SensitivityFor(rows[0].Gain), rating.PeakVoltage / rows[0].Gain, "the peak taken for the rms", "894 mV", Lm3876);
    }

    [Fact]
    public void Gain_from_sensitivity()
    {
        OutputRating one = new(1.W, 8.Ohm), tenth = new(100.mW, 16.Ohm);
        var V = 1.V;
        Check.Check(() => one.GainFrom(V), "2.83", Source.Datasheet("National Semiconductor, LM4836 datasheet", "design example, 1 W into 8 Ω"));
        Check.Disagrees(() => tenth.GainFrom(V), "1.27", "1.2649", Source.Datasheet("Texas Instruments, LM4818 datasheet, SNAS163B", "p. 12"),
            "√(100 mW·16 Ω)/1 V is 1.26491; the sheet rounds the least gain up, or rounds twice.");
    }

    [Fact]
    public void Peaks_of_a_sine()
    {
        OutputRating twenty = new(20.W, 8.Ohm), most = new(28.125.W, 16.Ohm), single = new(6.25.W, 8.Ohm);
        Check.Check(() => twenty.PeakVoltage, "17.9 V", Sedra("Ex 14.1, p. 1239"));
        Check.Check(() => twenty.PeakCurrent, "2.24 A", Sedra("Ex 14.1, p. 1239"));
        Check.Check(() => most.PeakVoltage, "30 V", new Source(BoylestadTitle, "Ex 12.8, p. 699", Seen.Page), "28.125 W is the most that rails of 30 V can give");
        Check.Check(() => single.PeakVoltage, "10 V", Malvino("Ex 12-8, p. 397"), "half of the single supply of 20 V");
    }

    [Fact]
    public void Levels_are_a_milliwatt_into_a_line()
    {
        OutputRating line = new(1.mW, 600.Ohm), fifty = new(1.mW, 50.Ohm);
        var four = 4.dB;
        var oeaw = Source.Secondhand("Acoustics Research Institute, STx manual, levels", "kfs.oeaw.ac.at/stx/manual/html/461.htm");
        Check.Check(() => line.RmsVoltage, "0.7746 V", oeaw);
        Check.TradeFact(() => fifty.RmsVoltage, "0.224 V");
        Check.Against(() => line.RmsVoltage * four, line.RmsVoltage * Gain.FromRatio(Math.Pow(10, 0.4)), "decibels of power (10·log) for decibels of voltage (20·log)", "1.228 V", Source.Secondhand("A weblog on +4 dBu and -10 dBV", "jeffvautin.com/2009/06/4-dbu-10-dbv"));
        Check.Disagrees(() => line.RmsVoltage * four, "1.2276 V", "1.22765 V", oeaw,
            "The source works with the rounded 0.7746 V, cuts 1.22766 off after four decimals, and prints the exponent as 4/10, which would give 1.946 V; √0.6 V·10^(4/20) is 1.227653 V.");
    }

    [Fact]
    public void The_trade_s_hundred_watts()
    {
        var rating = new OutputRating(100.W, 8.Ohm);
        Check.TradeFact(() => rating.RmsVoltage, "28.28 V");
        Check.TradeFact(() => rating.PeakVoltage, "40 V");
    }

    [Fact]
    public void The_sine_that_makes_the_power_by_integration()
    {
        var reference = Reference.Read("ratings.csv");
        Check.Computed(reference, r => new OutputRating(Power.FromWatts(r["P"]), ElectricResistance.FromOhms(r["R_L"])).RmsVoltage, "V_rms");
        Check.Computed(reference, r => new OutputRating(Power.FromWatts(r["P"]), ElectricResistance.FromOhms(r["R_L"])).PeakVoltage, "V_pk");
        Check.Computed(reference, r => new OutputRating(Power.FromWatts(r["P"]), ElectricResistance.FromOhms(r["R_L"])).RmsCurrent, "I_rms");
        Check.Computed(reference, r => new OutputRating(Power.FromWatts(r["P"]), ElectricResistance.FromOhms(r["R_L"])).PeakCurrent, "I_pk");
    }
}
