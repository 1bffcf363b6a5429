using EightOhm.InputStages;
using EightOhm.Published.Machine;
using EightOhm.Quantities;
using UnitsNet;
using Check = EightOhm.Published.Machine.Published;

namespace EightOhm.Published.Checks;

/// <summary>Mirrors and current sources as exponentials and as solved circuits.</summary>
[Checks]
public class SourceAndMirrorChecks
{
    // What the first order leaves out at errors of a percent.
    private const double FirstOrder = 1e-3;

    [Fact]
    public void A_tail_source_for_a_rejection_by_the_solved_pair() => Check.Computed(
        Reference.Read("tail-resistance.csv"), r => CommonMode.TailResistanceFor(Gain.FromDecibels(r["CMRR_dB"]), r["h_FE"], Amperes(r["I"]), Volts(r["V_T"])), "R_EE");

    [Fact]
    public void A_mirror_whose_base_currents_come_through_a_follower() =>
        Check.Computed(Reference.Read("mirror-with-follower.csv"), r => CurrentMirror.TransferWithFollower(r["h_FE"]), "k");

    [Fact]
    public void A_mirror_of_unlike_junctions() => Check.Computed(
        Reference.Read("mirror-mismatch.csv"), r => CurrentMirror.ErrorOfMismatch(Volts(r["V_T"]), Ratio.FromDecimalFractions(r["x"]), Amperes(r["I"]), Ohms(r["R_m"])), "junctions", FirstOrder);

    [Fact]
    public void A_mirror_of_unlike_resistors() => Check.Computed(
        Reference.Read("mirror-resistors.csv"), r => CurrentMirror.ErrorOfResistors(Volts(r["V_T"]), Ratio.FromDecimalFractions(r["y"]), Amperes(r["I"]), Ohms(r["R_m"])), "resistors", FirstOrder);

    [Fact]
    public void What_pair_cascode_and_mirror_are_late_by()
    {
        var reference = Reference.Read("input-delay.csv");
        // The solved circuit has a micro-ohm where the formula has none, and a frequency where the formula has next to none.
        const double Far = 1e-4;
        Check.Computed(reference, r => InputDelay.OfPair(Cycles(r["f_T"]), Ohms(r["r_e"]), Ohms(r["R_deg"])), "pair", Far);
        Check.Computed(reference, r => InputDelay.OfCascode(Cycles(r["f_T"])), "cascode", Far);
        Check.Computed(reference, r => InputDelay.OfMirror(Cycles(r["f_m"]), Farads(r["C_m"]), Ohms(r["r_e"]), Ohms(r["R_m"])), "mirror", Far);
        // One behind the other they add.
        Check.Computed(reference, r => InputDelay.OfPair(Cycles(r["f_T"]), Ohms(r["r_e"]), Ohms(r["R_deg"])) + InputDelay.OfCascode(Cycles(r["f_T"])) + InputDelay.OfMirror(Cycles(r["f_m"]), Farads(r["C_m"]), Ohms(r["r_e"]), Ohms(r["R_m"])), "all", Far);
    }

    [Fact]
    public void A_source_behind_a_reference() =>
        Check.Computed(Reference.Read("source-from-reference.csv"), r => CurrentSource.FromReference(Volts(r["V_ref"]), Volts(r["V_BE"]), Ohms(r["R_E"])), "I_O");

    [Fact]
    public void A_cascode_is_h_FE_for_h_FE_and_one_more() =>
        Check.Computed(Reference.Read("cascode.csv"), r => CurrentSource.OutputResistanceCascoded(Ohms(r["r_o"]), r["h_FE"]), "R_o", 6e-3);

    [Fact]
    public void A_ripple_on_what_feeds_the_reference() => Check.Computed(
        Reference.Read("source-ripple.csv"), r => CurrentSource.Ripple(Volts(r["V_r"]), Ohms(r["r_ref"]), Ohms(r["R_ref"]), Ohms(r["R_E"]), Ohms(r["r_e"])), "I_r");

    [Fact]
    public void The_balance_of_a_Widlar_source()
    {
        var (V_T, I_ref, I_O, R_W) = (26.mV, 1.mA, 12.uA, 9.58.kOhm);
        var neamen = Source.Companion("D. A. Neamen, Electronic Circuit Analysis and Design", "Ex 10.4, p. 591");
        Check.Check(() => CurrentSource.Widlar(I_O, V_T, I_ref, R_W).Left, "0.11 V", neamen, "the difference of the two V_BE");
        Check.Computed(
            Reference.Read("widlar.csv"),
            r => Volts(r["V_T"]) * (CurrentSource.Widlar(Amperes(r["I_O"]), Volts(r["V_T"]), Amperes(r["I_ref"]), Ohms(r["R"])).Left / CurrentSource.Widlar(Amperes(r["I_O"]), Volts(r["V_T"]), Amperes(r["I_ref"]), Ohms(r["R"])).Right),
            "V_T");
    }
}
