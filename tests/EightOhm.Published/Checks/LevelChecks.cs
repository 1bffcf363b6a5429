using EightOhm.Published.Machine;
using EightOhm.Quantities;
using EightOhm.Ratings;
using UnitsNet;
using static EightOhm.Published.Checks.Books;
using Check = EightOhm.Published.Machine.Published;

namespace EightOhm.Published.Checks;

[Checks]
public class LevelChecks
{
    private static readonly Source Weblog = Source.Secondhand("A weblog on +4 dBu and -10 dBV", "jeffvautin.com/2009/06/4-dbu-10-dbv");
    private static readonly Source Glossary = Source.Secondhand("A glossary on line level", "cinema8.com/glossary/line-level");
    private static readonly Source Oeaw = Source.Secondhand("Acoustics Research Institute, STx manual, levels", "kfs.oeaw.ac.at/stx/manual/html/461.htm");
    private static readonly Source CrestExamples = Source.Secondhand("Crest factor, examples", "liquisearch.com/crest_factor/examples");

    [Fact]
    public void Levels_of_voltage()
    {
        ElectricPotential two = 2.V, ten = 0.31622776601683794.V, one = 1.V;
        Check.Against(() => Levels.InDbV(two), 10 * Math.Log10(2), "ten times the logarithm for twenty", "6.02", Fiore("ch. 1, p. 14-19"));
        Check.Check(() => Levels.VoltageOfDbV(-10), "0.316 V", Glossary);
        Check.Check(() => Levels.InDbU(ten), "-7.78", Glossary);
        Check.Check(() => Levels.DbUReference, "0.7746 V", Oeaw);
        Check.Check(() => Levels.VoltageOfDbU(4), "1.228 V", Weblog);
        Check.TradeFact(() => Levels.InDbU(one), "2.2");
    }

    [Fact]
    public void The_gap_between_studio_and_home_follows_from_the_exact_reference()
    {
        var studio = Levels.VoltageOfDbU(4);
        var gap = ElectricPotential.FromVolts(studio / Levels.VoltageOfDbV(-10));
        Check.Check(() => Levels.InDbV(studio), "1.78", Weblog, "+4 dBu in dBV");
        Check.Disagrees(() => Levels.InDbV(gap), "11.79", "11.7815", Weblog,
            "The source works with the rounded 0.775 V; with √0.6 V the gap between +4 dBu and −10 dBV is 11.78 dB.");
    }

    [Fact]
    public void Levels_of_power()
    {
        Power big = 120.W, fifth = 0.2.W;
        Check.Check(() => Levels.InDbW(big), "20.8", Fiore("ch. 1, p. 14-19"));
        Check.Check(() => Levels.InDbW(fifth), "-7", Fiore("ch. 1, p. 14-19"));
        Check.Check(() => Levels.InDbM(fifth), "23", Fiore("ch. 1, p. 14-19"));
        Check.Against(() => Levels.PowerOfDbM(12), Power.FromWatts(Math.Pow(10, 12 / 20.0) / 1e3), "decibels of voltage for decibels of power", "15.8 mW", Fiore("ch. 1, p. 14-19"));
        Check.Check(() => Levels.PowerOfDbW(20.8), "120 W", Fiore("ch. 1, p. 14-19"), "the example read backwards");
    }

    [Fact]
    public void Crest_factors()
    {
        ElectricPotential rms = 1.V, peak = Math.Sqrt(2).V, triangle = Math.Sqrt(3).V, half = 2.V;
        ElectricPotential saw = 10.V, sawRms = (10 / Math.Sqrt(3)).V;
        Check.Check(() => Crest.Factor(peak, rms), "3.01 dB", CrestExamples, "a sine");
        Check.Check(() => Crest.OfSine, "3.01 dB", CrestExamples);
        Check.Check(() => Crest.Factor(triangle, rms), "4.77 dB", CrestExamples, "a triangle");
        Check.Check(() => Crest.Factor(half, rms), "6.02 dB", CrestExamples, "a sine rectified by half: rms is half of the peak");
        Check.Check(() => Crest.Factor(saw, sawRms), "1.732", Source.Companion("Kulshreshtha, as the Scilab textbook companion names him", "Ex 9.14, p. 253"));
        var sine = Crest.OfSine;
        var (hundred, forty) = (28.284271247461902.V, 40.V);
        Check.TradeFact(() => Crest.Peak(hundred, sine), "40 V");
        Check.TradeFact(() => Crest.Rms(forty, sine), "28.28 V");
    }

    [Fact]
    public void Dynamic_headroom_of_two_decibels()
    {
        var two = 2.dB;
        Power burst = 158.489.W, rated = 100.W;
        Check.TradeFact(() => DynamicHeadroom.VoltageRise(two), "26 %");
        Check.TradeFact(() => DynamicHeadroom.PowerRise(two), "58 %");
        Check.TradeFact(() => DynamicHeadroom.BurstPower(rated, two), "158 W");
        Check.TradeFact(() => DynamicHeadroom.Of(burst, rated), "2.00 dB");
    }

    [Fact]
    public void Ratios_against_another_reference()
    {
        Gain ninety = 90.dB, none = 0.dB;
        var (one, full) = (1.W, 150.W);
        var (volt, tern) = (1.V, 1.2.V);
        Check.TradeFact(() => SnrReference.AtPower(none, one, full), "22 dB");
        Check.TradeFact(() => SnrReference.AtPower(ninety, one, full), "111.76 dB");
        Check.TradeFact(() => SnrReference.AtVoltage(none, volt, tern), "1.58 dB");
    }

    [Fact]
    public void Rejection_by_its_reference()
    {
        Gain hundred = 100.dB, gain = 23.6.ratio, none = 0.dB;
        var ripple = 1.V;
        Check.TradeFact(() => Rejection.InputReferred(none, gain), "27.5 dB");
        Check.TradeFact(() => Rejection.OutputReferred(hundred, gain), "72.5 dB");
        Check.TradeFact(() => Rejection.LeftAtOutput(ripple, hundred), "10 uV");
        Check.TradeFact(() => Rejection.LeftAtOutput(ripple, Rejection.OutputReferred(hundred, gain)), "236 uV");
    }

    [Fact]
    public void Power_to_listen()
    {
        Length one = 1.m, two = 2.m;
        Gain sine = Crest.OfSine, programme = 13.0103.dB;
        Check.TradeFact(() => ListeningPower.Average(90, 90, one), "1 W");
        Check.TradeFact(() => ListeningPower.Average(90, 90, two), "4 W");
        Check.TradeFact(() => ListeningPower.Average(100, 90, one), "10 W");
        Check.TradeFact(() => ListeningPower.Rated(90, 90, two, sine), "4 W");
        Check.TradeFact(() => ListeningPower.Rated(90, 90, one, programme), "10 W");
    }

    [Fact]
    public void The_trade_s_volts_for_watts()
    {
        OutputRating fifty = new(50.W, 8.Ohm), four = new(400.W, 8.Ohm), low = new(50.W, 2.Ohm), lower = new(400.W, 2.Ohm);
        Check.TradeFact(() => fifty.RmsVoltage, "20 V");
        Check.TradeFact(() => four.RmsVoltage, "57 V");
        Check.TradeFact(() => low.RmsVoltage, "10 V");
        Check.TradeFact(() => lower.RmsVoltage, "28 V");
    }

    [Fact]
    public void The_trade_s_gain_of_20_to_40()
    {
        // From 50 W and a volt to 400 W and 1.4 V, the ends of what is usual into 8 Ω.
        OutputRating fifty = new(50.W, 8.Ohm), four = new(400.W, 8.Ohm);
        ElectricPotential one = 1.V, more = 1.4142135623730951.V;
        Check.TradeFact(() => fifty.GainFrom(one), "20");
        Check.TradeFact(() => four.GainFrom(more), "40");
    }

    [Fact]
    public void The_trade_s_warning_of_60_volts_either_side()
    {
        // Common practice, no source, and no limit of ours: 120 V across both rails, 0.12 A in 1 kΩ, can kill; from one rail it is half.
        var across = 60.V - -60.V;
        Assert.Equal(120, across.Volts);
        Assert.Equal(0.12, (across / 1.kOhm).Amperes, 1e-12);
        Assert.Equal(0.06, (60.V / 1.kOhm).Amperes, 1e-12);
    }

    [Fact]
    public void Ratios_from_their_definitions()
    {
        var reference = Reference.Read("levels.csv");
        var one = 1.W;
        var (volt, tern) = (1.V, 1.2.V);
        Check.Computed(reference, r => DynamicHeadroom.Of(Power.FromWatts(r["P_burst"]), Power.FromWatts(r["P_rated"])), "H");
        Check.Computed(reference, r => DynamicHeadroom.BurstPower(Power.FromWatts(r["P_rated"]), Gain.FromDecibels(r["H_dB"])), "P_burst");
        Check.Computed(reference, r => DynamicHeadroom.VoltageRise(Gain.FromDecibels(r["H_dB"])), "rise_V");
        Check.Computed(reference, r => DynamicHeadroom.PowerRise(Gain.FromDecibels(r["H_dB"])), "rise_P");
        Check.Computed(reference, r => SnrReference.AtPower(Gain.FromRatio(r["snr_1W"]), one, Power.FromWatts(r["P_rated"])), "snr_rated");
        Check.Computed(reference, r => SnrReference.AtVoltage(Gain.FromRatio(r["snr_1V"]), volt, tern), "snr_1_2V");
        Check.Computed(reference, r => Rejection.InputReferred(Gain.FromRatio(r["R_out"]), Gain.FromRatio(r["V_pk"])), "R_in");
        Check.Computed(reference, r => Rejection.OutputReferred(Gain.FromRatio(r["R_in"]), Gain.FromRatio(r["V_pk"])), "R_out");
        Check.Computed(reference, r => Rejection.LeftAtOutput(volt, Gain.FromRatio(r["R_out"])), "left");
    }

    [Fact]
    public void Peaks_by_integration_and_sound_through_a_sphere()
    {
        var reference = Reference.Read("levels.csv");
        Check.Computed(reference, r => Crest.Peak(ElectricPotential.FromVolts(r["V_rms"]), Gain.FromRatio(r["V_pk"] / r["V_rms"])), "V_pk");
        Check.Computed(reference, r => Crest.Rms(ElectricPotential.FromVolts(r["V_pk"]), Gain.FromRatio(r["V_pk"] / r["V_rms"])), "V_rms");
        Check.Computed(reference, r => ListeningPower.Average(96, 90, Length.FromMeters(r["d"])), "P_avg");
        Check.Computed(reference, r => ListeningPower.Rated(96, 90, Length.FromMeters(r["d"]), Gain.FromRatio(r["V_pk"] / r["V_rms"])), "P_sine");
    }
}
