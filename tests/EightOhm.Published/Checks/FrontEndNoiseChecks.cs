using EightOhm.InputStages;
using EightOhm.Noise;
using EightOhm.Published.Machine;
using EightOhm.Quantities;
using UnitsNet;
using Check = EightOhm.Published.Machine.Published;

namespace EightOhm.Published.Checks;

/// <summary>Parts of an input stage's noise that are chosen or read at one frequency.</summary>
[Checks]
public class FrontEndNoiseChecks
{
    // A solved circuit has a micro-ohm where the formula has none.
    private const double Solved = 1e-6;

    [Fact]
    public void A_field_effect_transistor_s_slope() =>
        Check.Computed(Reference.Read("fet-slope.csv"), r => FieldEffectNoise.Transconductance(Amperes(r["I_DSS"]), Volts(r["V_P"]), Amperes(r["I_D"])), "g_m");

    [Fact]
    public void A_field_effect_pair_for_a_density() =>
        Check.Computed(Reference.Read("fet-transconductance.csv"), r => FieldEffectNoise.TransconductanceFor(Density(r["e"]), Celsius(r["celsius"])), "g_m", Solved);

    [Fact]
    public void The_source_at_which_two_amplifiers_are_even() =>
        Check.Computed(Reference.Read("break-even.csv"), r => FieldEffectNoise.BreakEvenSource(Density(r["e_F"]), Density(r["e_B"]), CurrentNoiseDensity.FromSi(r["i_B"])), "R", Solved);

    [Fact]
    public void The_density_below_a_corner()
    {
        var reference = Reference.Read("flicker-density.csv");
        Check.Computed(reference, r => FlickerNoise.Density(Density(r["e_w"]), Cycles(r["f_c"]), Cycles(r["f"])), "e");
        Check.Computed(reference, r => FlickerNoise.CurrentDensity(CurrentNoiseDensity.FromSi(r["i_w"]), Cycles(r["f_c"]), Cycles(r["f"])), "i");
    }

    [Fact]
    public void Bases_and_their_resistances()
    {
        var reference = Reference.Read("pair-parts.csv");
        Check.Computed(reference, r => PairNoise.BaseCurrent(Amperes(r["I_C"]), r["h_FE"]), "i_B", 1e-8);
        Check.Computed(reference, r => PairNoise.OfBoth(Ohms(r["R"]), Celsius(r["celsius"])), "both", Solved);
    }

    [Fact]
    public void The_mirror_s_resistor_for_a_density() => Check.Computed(
        Reference.Read("mirror-resistor.csv"),
        r => MirrorNoise.ResistorFor(Density(r["e"]), Celsius(r["celsius"]), Ohms(r["r_bm"]), Ohms(r["r_e"]), Ohms(r["r_e"]), Ohms(r["R_deg"])),
        "R_m",
        10 * Solved); // what the circuit's small resistors do to the density, a resistor for a density does twice

    [Fact]
    public void A_second_stage_s_voltage_with_and_without_a_follower()
    {
        var reference = Reference.Read("second-stage-voltage.csv");
        // What a base takes of a signal is counted once, not of what it takes itself.
        Check.Computed(reference, r => SecondStageNoise.Voltage(Celsius(r["celsius"]), Amperes(r["I"]), r["h_FE"], Ohms(r["R_E"]), Amperes(r["I_f"]), Ohms(r["R_B"])), "behind", 1e-3);
        Check.Computed(reference, r => SecondStageNoise.Alone(Celsius(r["celsius"]), Amperes(r["I"]), r["h_FE"], Ohms(r["R_E"])), "alone", Solved);
    }

    [Fact]
    public void A_mirror_s_bases() => Check.Computed(
        Reference.Read("mirror-bases.csv"),
        r => SecondStageNoise.OfMirrorBases(Amperes(r["I"]), r["h_FE"], Ohms(r["R_m"]), Ohms(r["r_m"])),
        "i",
        1e-3); // the circuit's gains are ten thousand, the formula's without end

    [Fact]
    public void A_second_stage_at_the_bases_of_its_pair() => Check.Computed(
        Reference.Read("second-stage-input.csv"),
        r => SecondStageNoise.AtInput(Cycles(r["f"]), CurrentNoiseDensity.FromSi(r["i"]), Density(r["e_2"]), Farads(r["C"]), Ohms(r["r_e"]), Ohms(r["R_deg"])),
        "e",
        Solved);
}
