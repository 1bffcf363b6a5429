using EightOhm.Devices;
using EightOhm.OutputStages;
using EightOhm.Published.Machine;
using EightOhm.Quantities;
using EightOhm.SafeAreas;
using EightOhm.Thermal;
using UnitsNet;
using Check = EightOhm.Published.Machine.Published;

namespace EightOhm.Published.Checks;

[Checks]
public class SafeAreaChecks
{
    private static readonly Source Mj15003 = Source.Datasheet("onsemi, MJ15003/MJ15004 datasheet, Rev. 16", "p. 1: safe operating area, maximum ratings, thermal characteristics");
    private static readonly Source Mj15022 = Source.Datasheet("onsemi, MJ15022/MJ15024 datasheet, Rev. 12", "p. 1-2: maximum ratings, second breakdown");
    private static readonly Source Mjl3281 = Source.Datasheet("onsemi, MJL3281A/MJL1302A datasheet", "p. 1-2: maximum ratings, thermal characteristics, second breakdown");
    private static readonly Source Mjl4281 = Source.Datasheet("onsemi, MJL4281A/MJL4302A datasheet", "p. 1: maximum ratings, thermal characteristics");
    private static readonly Source Mj2955 = Source.Datasheet("onsemi, 2N3055/MJ2955 datasheet", "p. 1-2: total dissipation, second breakdown");

    /// <summary>Up to these voltages the makers test the rated heat itself: second breakdown sets in beyond them.</summary>
    [Fact]
    public void Tested_currents_at_the_end_of_the_part_set_by_heat()
    {
        Heat(250, 50, "5.0 A", Mj15003);
        Heat(250, 50, "5 A", Mj15022);
        Heat(200, 50, "4 A", Mjl3281);
        Heat(115, 40, "2.87 A", Mj2955);
        Heat(50, 10, "5 A", Source.Secondhand("Revista Antenna, O pequeno notável, part I, revistaantenna.com.br", "p. 8, Fig. 11"));
    }

    /// <summary>Not a check of ours but of the makers' sheets: what they test at the higher voltages is well below the rated heat.</summary>
    [Fact]
    public void Beyond_it_heat_alone_would_allow_too_much()
    {
        Assert.True(SafeAreaLimits.ByDissipation(200.W, 100.V) > 1.9.A); // MJL3281A: 1 A at 100 V
        Assert.True(SafeAreaLimits.ByDissipation(250.W, 80.V) > 3.1.A); // MJ15022: 2 A at 80 V
    }

    [Fact]
    public void Resistances_that_the_ratings_imply()
    {
        Implied(250, 200, "0.70 K/W", Mj15003);
        Implied(250, 200, "0.70 K/W", Mj15022);
        Implied(200, 150, "0.625 K/W", Mjl3281);
        Implied(230, 150, "0.54 K/W", Mjl4281);
    }

    [Fact]
    public void What_a_warm_case_leaves()
    {
        // 1.43 W lost for each degree from 25 °C: what is left at 75 °C is (250 − 50·1.43)/250.
        Temperature limit = 200.degC, room = 25.degC, warm = 26.degC;
        var rated = 250.W;
        Check.Check(() => rated * (1 - SafeAreaLimits.PowerDeratingFactor(limit, warm, room)), "1.43 W", Mj15003, "derated above 25 °C, for one degree");
        Check.Check(() => rated * (1 - SafeAreaLimits.PowerDeratingFactor(limit, warm, room)), "1.43 W", Mj15022, "derated above 25 °C, for one degree");
        Temperature plastic = 150.degC;
        var large = 230.W;
        Check.Check(() => large * (1 - SafeAreaLimits.PowerDeratingFactor(plastic, warm, room)), "1.84 W", Mjl4281, "derated above 25 °C, for one degree");
        var two = 200.W;
        Check.Disagrees(() => two * (1 - SafeAreaLimits.PowerDeratingFactor(plastic, warm, room)), "1.43 W", "1.60 W", Mjl3281, "200 W over the 125 K from 25 °C to 150 °C is 1.60 W/K, as the sheet's own 0.625 K/W says; the printed 1.43 W/K belongs to a junction limit of 165 °C.");
    }

    [Fact]
    public void Pieces_by_interpolation()
    {
        var rows = Reference.Read("safe-area-pieces.csv");
        Check.Computed(rows, r => SafeAreaLimits.Between(Volts(r["V"]), Volts(r["V_1"]), Amperes(r["I_1"]), Volts(r["V_2"]), Amperes(r["I_2"])), "between");
        Check.Computed(rows, r => SafeAreaLimits.ByDissipation(Power.FromWatts(r["P"]), Volts(r["V"])), "by_heat");
        Check.Computed(rows, r => SafeAreaLimits.PowerDeratingFactor(Celsius(r["T_J"]), Celsius(r["T_C"]), Celsius(r["T_ref"])), "k_th");
        Check.Computed(rows, r => SafeAreaLimits.SecondBreakdownLeft(SafeAreaLimits.PowerDeratingFactor(Celsius(r["T_J"]), Celsius(r["T_C"]), Celsius(r["T_ref"])), r["k_SB"]), "k_2");
        Check.Computed(rows, r => SafeAreaLimits.HalfPeriod(Frequency.FromHertz(r["f"])), "half");
    }

    private static void Heat(double watts, double volts, string printed, Source source)
    {
        var P = watts.W;
        var V_CE = volts.V;
        Check.Check(() => SafeAreaLimits.ByDissipation(P, V_CE), printed, source, $"{QuantityFormat.Short(P)} at {QuantityFormat.Short(V_CE)}");
    }

    private static void Implied(double watts, double limit, string printed, Source source)
    {
        var P = watts.W;
        Temperature T_J = limit.degC, room = 25.degC;
        Check.Check(() => Derating.Resistance(P, T_J, room), printed, source);
    }
}
