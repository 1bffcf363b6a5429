using EightOhm.Feedback;
using EightOhm.InputStages;
using EightOhm.Published.Machine;
using EightOhm.Quantities;
using UnitsNet;
using Check = EightOhm.Published.Machine.Published;

namespace EightOhm.Published.Checks;

/// <summary>What an exponential pair gives: its slopes, its range, its slew rate, the capacitor that it drives.</summary>
[Checks]
public class PairCurrentChecks
{
    [Fact]
    public void The_slopes_of_an_exponential_pair()
    {
        var reference = Reference.Read("pair-currents.csv");
        Check.Computed(reference, r => InputPair.Transconductance(Ohms(r["r_e"]), Ohms(r["R_deg"])), "whole");
        Check.Computed(reference, r => InputPair.TransconductanceOfHalf(Ohms(r["r_e"]), Ohms(r["R_deg"])), "half");
    }

    [Fact]
    public void The_input_that_turns_a_share_of_the_tail_current_over() => Check.Computed(
        Reference.Read("pair-currents.csv"), r => InputPair.Range(Ratio.FromDecimalFractions(r["a"]), Volts(r["V_T"]), Amperes(r["I_tail"]), Ohms(r["R_deg"])), "v_d");

    [Fact]
    public void A_starved_half_into_a_capacitor() =>
        Check.Computed(Reference.Read("pair-currents.csv"), r => InputPair.SlewRateOfHalf(Amperes(r["I_tail"]), Farads(r["C"])), "slew");

    [Fact]
    public void The_capacitor_for_a_crossover() =>
        Check.Computed(Reference.Read("pair-capacitor.csv"), r => MillerLoop.CapacitorFor(InputPair.Transconductance(Ohms(r["r_e"]), Ohms(r["R_deg"])), Cycles(r["f_x"]), Gain.FromRatio(1 / r["B_fb"])), "C", 1e-6);

    [Fact]
    public void The_share_of_the_tail_current_that_a_sine_takes() =>
        Check.Computed(Reference.Read("pair-share.csv"), r => PairDistortion.Share(Cycles(r["f"]), Volts(r["V_p"]), Farads(r["C"]), Amperes(r["I"])), "u", 1e-8);
}
