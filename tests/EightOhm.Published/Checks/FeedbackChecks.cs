using EightOhm.Feedback;
using EightOhm.Published.Machine;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Published.Checks.Books;
using static EightOhm.Quantities.Maths;
using Check = EightOhm.Published.Machine.Published;

namespace EightOhm.Published.Checks;

[Checks]
public class FeedbackChecks
{
    private static readonly Source Sedra21 = Sedra("Ex 2.1, p. 72");
    private static readonly Source Malvino19 = Malvino("Ex 19-1 to 19-4, p. 709-714");

    [Fact]
    public void An_inverting_stage_of_gain_100()
    {
        ElectricResistance R_g = 1.kOhm, R_f = 100.kOhm;
        (Gain A, string Gain, string Error)[] rows = [(1e3.ratio, "-90.83", "-9.17 %"), (1e4.ratio, "-99.00", "-1.00 %"), (1e5.ratio, "-99.90", "-0.10 %")];
        Check.Table(rows, r => FeedbackLoop.InvertingGain(r.A, R_g, R_f), r => r.Gain, Sedra21);
        Check.Table(rows, r => FeedbackLoop.GainError(FeedbackLoop.LoopGain(r.A, FeedbackLoop.Fraction(R_g, R_f))), r => r.Error, Sedra21);
        var thousand = 1e3.ratio;
        Check.Against(() => FeedbackLoop.InvertingGain(thousand, R_g, R_f), Gain.FromRatio(-1000 / (1 + (1000 / 100.0))), "1/100 taken for the fraction fed back", "-90.83", Sedra21);
        var fifty = 5e4.ratio;
        Check.Check(() => FeedbackLoop.InvertingGain(fifty, R_g, R_f), "-99.80", Sedra21);
    }

    [Fact]
    public void A_non_inverting_stage_of_gain_40()
    {
        ElectricResistance R_g = 100.Ohm, R_f = 3.9.kOhm, r_i = 2.MOhm, common = 200.MOhm, r_o = 75.Ohm;
        var A = 1e5.ratio;
        var d = 7.5.percent;
        Check.Check(() => FeedbackLoop.Fraction(R_g, R_f), "0.025", Malvino19);
        Check.Check(() => FeedbackLoop.ClosedLoopGain(A, FeedbackLoop.Fraction(R_g, R_f)), "39.984", Malvino19);
        Check.Check(() => -FeedbackLoop.GainError(FeedbackLoop.LoopGain(A, 0.025)), "0.04 %", Malvino19);
        Check.Check(() => Parallel(LoopResistance.Input(r_i, FeedbackLoop.LoopGain(A, 0.025)), common), "192 Mohm", Malvino19, "the common-mode 200 MΩ in parallel");
        Check.Check(() => LoopResistance.Output(r_o, FeedbackLoop.LoopGain(A, 0.025)), "0.03 ohm", Malvino19);
        Check.Check(() => LoopErrors.AfterGain(d, FeedbackLoop.LoopGain(A, 0.025)), "0.003 %", Malvino19);
    }

    [Fact]
    public void Loops_of_books()
    {
        Gain A = 200.ratio, inverting = (-100).ratio;
        ElectricResistance r_i = 10.kOhm, r_o = 20.kOhm, hundred = 100.Ohm, three = 300.kOhm;
        var fiore = Fiore("Ex 3.1");
        Check.Check(() => FeedbackLoop.ClosedLoopGain(A, 0.04), "22.22", fiore);
        Check.Check(() => 1 / FeedbackLoop.Sensitivity(FeedbackLoop.LoopGain(A, 0.04)), "9", fiore, "the book's S is 1 + T");
        Check.Check(() => LoopResistance.Input(three, 499), "150 Mohm", Fiore("Ex 3.3"));
        Check.Check(() => LoopResistance.Output(hundred, 499), "0.2 ohm", Fiore("Ex 3.3"));
        Check.Check(() => LoopResistance.Output(hundred, 1e4), "10 mohm", Franco("Ex 6.5, p. 272"));

        var boylestad = Boylestad("Ex 14.1");
        (double B, string Gain, string In, string Out)[] rows = [(-0.1, "-9.09", "110 kohm", "1.82 kohm"), (-0.5, "-1.96", "510 kohm", "392 ohm")];
        Check.Table(rows, r => FeedbackLoop.ClosedLoopGain(inverting, r.B), r => r.Gain, boylestad);
        Check.Table(rows, r => LoopResistance.Input(r_i, FeedbackLoop.LoopGain(inverting, r.B)), r => r.In, boylestad);
        Check.Table(rows, r => LoopResistance.Output(r_o, FeedbackLoop.LoopGain(inverting, r.B)), r => r.Out, boylestad);
    }

    [Fact]
    public void What_a_change_of_the_open_loop_leaves()
    {
        Gain thousand = 1e3.ratio, inverting = (-1e3).ratio;
        Ratio fifth = 20.percent, down = (-12).percent, ten = 10.percent;
        Check.Check(() => FeedbackLoop.Sensitivity(FeedbackLoop.LoopGain(inverting, -0.1)) * fifth, "0.2 %", Boylestad("Ex 14.2"));
        Check.Check(() => FeedbackLoop.Sensitivity(FeedbackLoop.LoopGain(thousand, 0.005)) * down, "-2.0 %", Source.Companion("Kulshreshtha, textbook of electronics", "Ex 10.8"));
        Check.Check(() => Gain.FromRatio(FeedbackLoop.Sensitivity(9)), "-20 dB", Source.Companion("P. Raja, textbook of electronics", "Ex 5.22"));
        var gupta = Source.Companion("J. B. Gupta, textbook of electronics", "Ex 6.16");
        Check.Check(() => LoopErrors.AfterGain(ten, 9), "1 %", gupta);
        Check.Check(() => FeedbackLoop.ClosedLoopGain(Gain.FromRatio(90), 0.1), "9", gupta);
    }

    [Fact]
    public void Bandwidth_of_one_pole_loops()
    {
        Frequency ten = 10.kHz, lf411 = 160.Hz, lm12 = 14.Hz;
        Check.Check(() => FeedbackLoop.Bandwidth(ten, 8), "90 kHz", Fiore("Ex 3.1"));
        Check.Against(() => FeedbackLoop.Bandwidth(ten, 8), 80.kHz, "T taken for 1 + T", "90 kHz", Fiore("Ex 3.1"));
        Check.Check(() => FeedbackLoop.Bandwidth(lf411, 999), "160 kHz", Malvino("Ex 19-9"));
        Check.Check(() => FeedbackLoop.Bandwidth(lm12, 50000), "700 kHz", Malvino("Ex 19-11"));
        Check.Computed(Reference.Read("one-pole-loop.csv"), r => FeedbackLoop.Bandwidth(Frequency.FromHertz(r["f_pole"]), r["T_0"]), "bandwidth");
        Check.Computed(Reference.Read("one-pole-gain.csv"), r => FeedbackLoop.OnePoleLoopGain(r["T_0"], Frequency.FromHertz(r["f_pole"]), Frequency.FromHertz(r["f"])), "T");
    }

    [Fact]
    public void A_loop_solved_by_its_node_equations()
    {
        var rows = Reference.Read("feedback.csv");
        var (whole, e) = (100.percent, 1.mV);
        Check.Computed(rows, r => FeedbackLoop.Fraction(ElectricResistance.FromOhms(r["R_g"]), ElectricResistance.FromOhms(r["R_f"])), "B_fb");
        Check.Computed(rows, r => FeedbackLoop.LoopGain(Gain.FromRatio(r["A"]), r["B_fb"]), "T");
        Check.Computed(rows, r => FeedbackLoop.ClosedLoopGain(Gain.FromRatio(r["A"]), r["B_fb"]), "A_CL");
        Check.Computed(rows, r => FeedbackLoop.GainError(r["T"]), "error");
        Check.Computed(rows, r => FeedbackLoop.Sensitivity(r["T"]), "sensitivity");
        Check.Computed(rows, r => LoopErrors.AfterGain(whole, r["T"]), "after_gain");
        Check.Computed(rows, r => LoopErrors.AtSummingNode(e, FeedbackLoop.ClosedLoopGain(Gain.FromRatio(r["A"]), r["B_fb"])), "at_node_1mV");
    }

    [Fact]
    public void Harmonics_each_by_the_loop_gain_at_its_own_frequency() => Check.Computed(
        Reference.Read("loop-harmonics.csv"),
        r => LoopErrors.AfterGainAbovePole(Ratio.FromDecimalFractions(r["d"]), r["T"]),
        "left");
}
