using EightOhm.InputStages;
using EightOhm.Published.Machine;
using EightOhm.Quantities;
using UnitsNet;
using Check = EightOhm.Published.Machine.Published;

namespace EightOhm.Published.Checks;

/// <summary>Offsets of an exponential pair and their drift, the servo's loop in time, low and high corners at the input.</summary>
[Checks]
public class OffsetAndServoChecks
{
    [Fact]
    public void Offsets_of_an_exponential_pair()
    {
        var reference = Reference.Read("pair-offsets.csv");
        Check.Computed(reference, r => OffsetVoltage.FromResistors(Amperes(r["I_C"]), Ohms(r["R_deg"]), Ratio.FromDecimalFractions(r["x"])), "resistors");
        // Small errors: the exponentials bend by the square of the error.
        Check.Computed(reference, r => OffsetVoltage.FromMirror(Amperes(r["I_C"]), Ratio.FromDecimalFractions(r["x"]), Ohms(r["r_e"]), Ohms(r["R_deg"])), "mirror", 5e-5);
    }

    [Fact]
    public void Drift_of_offsets_by_differences_over_temperature()
    {
        var reference = Reference.Read("offset-drifts.csv");
        Check.Computed(reference, r => OffsetVoltage.DriftOfMismatch(Volts(r["V_os"]), Celsius(r["celsius"])), "drift", 1e-7);
        Check.Computed(reference, r => OffsetVoltage.DriftOfBaseCurrent(Volts(r["V_IB"]), Ratio.FromDecimalFractions(r["k_h"])), "fall", 1e-7);
    }

    [Fact]
    public void A_servo_s_loop_in_time()
    {
        var reference = Reference.Read("servo-in-time.csv");
        Check.Computed(reference, r => DcServo.LeftAtOutput(Volts(r["V_os"]), Amperes(r["I_b"]), Ohms(r["R_i"])), "left");
        // The burst is short against the servo's time constant, not infinitely short: its servo lowers the mean a little while it lasts.
        Check.Computed(reference, r => DcServo.WindUp(Volts(r["V_m"]), Duration.FromSeconds(r["t"]), Ohms(r["R_i"]), Farads(r["C_i"]), Ohms(r["R_f"]), Ohms(r["R_inj"])), "wound", 3e-3);
    }

    [Fact]
    public void The_servo_s_capacitor_for_the_corner_of_a_solved_response() =>
        Check.Computed(Reference.Read("servo.csv"), r => DcServo.CapacitorFor(Cycles(r["corner"]), Ohms(r["R_i"]), Ohms(r["R_f"]), Ohms(r["R_inj"])), "C_i");

    [Fact]
    public void The_corner_of_a_capacitor_in_the_divider()
    {
        // The current through R_g, so the signal's gain above one, has half its power there.
        var reference = Reference.Read("corners.csv");
        Check.Computed(reference, r => FeedbackCapacitor.Corner(Ohms(r["R"]), Farads(r["C"])), "across");
        Check.Computed(reference, r => FeedbackCapacitor.ForCorner(Ohms(r["R"]), Cycles(r["across"])), "C");
    }

    [Fact]
    public void The_source_resistance_that_an_input_filter_bears() =>
        Check.Computed(Reference.Read("highest-source.csv"), r => InputNetwork.HighestSource(Cycles(r["f"]), Ohms(r["R_in"]), Farads(r["C_in"])), "R_src");
}
