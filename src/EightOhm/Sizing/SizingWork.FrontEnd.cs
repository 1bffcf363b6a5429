using EightOhm.Protection;
using EightOhm.Quantities;
using EightOhm.Supply;
using UnitsNet;

namespace EightOhm.Sizing;

/// <content>What follows from the level: feedback, slew rate, and the limits of protection.</content>
internal sealed partial class SizingWork
{
    // Feedback's lower arm with the servo in parallel, as the design has it.
    private const double LowerArm = 100, ServoArm = 10_000;
    private const double SlewMargin = 6;

    private void TellFrontEnd()
    {
        var gain = targets.Rated.RmsVoltage / targets.Sensitivity;
        var low = 1 / ((1 / LowerArm) + (1 / ServoArm));
        if (gain > 1)
            Choose("R_f", PreferredValues.NearestOf192(low * (gain - 1)).Ohm, "feedback for rated power at the sensitivity");
        else
            Miss("The sensitivity is more than rated power needs: the amplifier would have to attenuate.");
        var need = Feedback.SlewRate.Needed(targets.Highest, targets.Rated.PeakVoltage);
        Choose("SR", ElectricPotentialChangeRate.FromVoltsPerSeconds(PreferredValues.Up(need.VoltsPerSeconds * SlewMargin * 1.1, 2)), "room above the highest frequency at full power");
        // An amplifier of another level has another gain: half to twice what it needs is still a line-level amplifier's.
        Choose("A_lo", Gain.FromRatio(PreferredValues.Down(gain * 0.8, 2)), "a fifth below what rated power needs at the sensitivity");
        Choose("A_hi", Gain.FromRatio(PreferredValues.Up(gain * 1.25, 2)), "a quarter above it");
    }

    private void TellLimits()
    {
        if (supply is not { } s)
            return;
        var rail = s.NoLoad;
        var least = DcDetectorFromRest.LeastTau(rail, LowestNote, Threshold, 1);
        Choose("tau_dc", PreferredValues.Up(least.Seconds * 1.05, 2).s, "lets the lowest note at full level begin without a trip");
    }

    private static readonly Frequency LowestNote = 10.Hz;

    // A junction at its warmest.
    private static readonly ElectricPotential Threshold = 590.mV;
}
