using EightOhm.Quantities;
using EightOhm.Supply;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Teaching.Chapters;

/// <summary>Mains, rectifier, reservoirs and rails.</summary>
internal static class Chapter05
{
    public static CourseChapter Of { get; } = new("05", "rails and supply",
    [
        new("05-ripple", ExerciseLevel.WarmUp, Ripple),
        new("05-stored-energy", ExerciseLevel.WarmUp, StoredEnergy),
        new("05-bleeder-time", ExerciseLevel.Steps, BleederTime),
        new("05-half-winding", ExerciseLevel.Steps, HalfWinding),
        new("05-reservoir", ExerciseLevel.Design, Reservoir),
    ]);

    private static Exercise Ripple(Numbers n)
    {
        var I = n.Pick(3.A, 2.A, 4.A, 5.A);
        var f = n.Pick(50.Hz, 60.Hz);
        var C = n.Pick(10.mF, 6.8.mF, 15.mF, 22.mF);
        return Exercise.Ask($"A bridge at {f} charges {C}, which feeds {I}. What does the usual estimate give for the ripple, peak to peak?", () => ReservoirEstimates.RippleFullWave(I, f, C))
            .Slip(ReservoirEstimates.RippleHalfWave(I, f, C), "That is I/(f·C), half-wave: a bridge charges twice a cycle.")
            .Slip(ReservoirEstimates.RippleFullWave(I, f, C) / 2, "That is the peak about the mean; peak to peak was asked.")
            .Slip(ReservoirEstimates.RippleRms(I, f, C), "That is the rms of the sawtooth; peak to peak was asked.")
            .Hints(
                "The reservoir alone feeds the load between two charges: how long is that at the most?",
                "A charge I·t taken from C lowers it by I·t/C.",
                $"A bridge charges twice in each cycle of {f}.");
    }

    private static Exercise StoredEnergy(Numbers n)
    {
        var C = n.Pick(15.mF, 10.mF, 22.mF);
        var V = n.Pick(50.V, 45.V, 63.V);
        return Exercise.Ask($"{C} stand at {V}. What energy is stored, waiting for whoever touches it?", () => Discharge.StoredEnergy(C, V))
            .Slip(2 * Discharge.StoredEnergy(C, V), "The half is forgotten: the voltage rises while the charge comes in.")
            .Slip(Energy.FromJoules(Discharge.StoredCharge(C, V).Coulombs), "That is the charge, C·V, in other units; energy goes with V².")
            .Hints(
                "Energy goes with the square of the voltage.",
                "½·C·V².");
    }

    private static Exercise BleederTime(Numbers n)
    {
        var V_0 = n.Pick(49.V, 42.V, 56.V);
        var V = 10.V;
        var R = n.Pick(2.2.kOhm, 3.3.kOhm, 1.5.kOhm);
        var C = n.Pick(30.mF, 20.mF, 44.mF);
        return Exercise.Ask($"Each rail has {C} and a bleeder of {R}. How long from {V_0} down to {V}?", () => Discharge.TimeTo(V_0, V, R, C))
            .Slip(R * C, "That is one time constant; there 37 % of the voltage is left.")
            .Slip(R * C * Log10(V_0 / V), "That is the logarithm to base 10; discharge goes with base e.")
            .Slip(Discharge.TimeTo(2 * V_0, V, R, C), "Each reservoir has its own bleeder: one rail, not rail to rail.")
            .Hints(
                "A discharge is an exponential: V falls by the factor e in each R·C.",
                "How many time constants is it? The natural logarithm of the ratio of the two voltages.",
                $"One time constant is {R * C}.");
    }

    private static Exercise HalfWinding(Numbers n)
    {
        var I = n.Pick(3.2.A, 2.5.A, 4.A);
        var C = n.Pick(30.mF, 22.mF, 20.mF);
        var half = 37.1.V;
        var R_half = 102.mOhm;
        var R_shared = 51.mOhm;
        var V_d = 0.9.V;
        var f = 50.Hz;
        var supply = new DualRailSupply(half, f, R_half, R_shared, V_d, C).SteadyState(RailCurrent.Constant(I));
        return Exercise.Ask(
                $"A centre-tapped winding (twice {half} without load, {R_half} each half, {R_shared} shared, one diode of {V_d} in each path, {f}) charges {C} on each rail, and each rail feeds {I}. What is the rms current of each half-winding? (DualRailSupply computes it.)",
                () => supply.HalfWindingRms)
            .Slip(I, "That is the factor 1 of a centre tap that feeds one rail; here each half works in every half-cycle.")
            .Slip(WindingGuides.BridgeLow(I), "That is a maker's 1.6, too low for a supply as stiff as this.")
            .Slip(WindingGuides.BridgeHigh(I), "That is another maker's 1.8, still low for a supply so stiff.")
            .Hints(
                "The mean of the pulses is the rail's current, but it is the rms that heats the copper.",
                "A rule of thumb is for a softer supply. Let the computation in time tell it.",
                "new DualRailSupply(…).SteadyState(RailCurrent.Constant(…)).HalfWindingRms, with the values of the question.")
            .Step($"The mean of what a half-winding gives is {I}; its rms is {supply.HalfWindingRms / I:3} times that, because it comes in short pulses.");
    }

    private static Exercise Reservoir(Numbers n)
    {
        var I = n.Pick(3.A, 2.5.A, 3.5.A);
        var f = 50.Hz;
        var V_0 = n.Pick(45.V, 42.V, 48.V);
        var V_r = n.Pick(2.V, 2.2.V);
        var V_safe = 10.V;
        var t = Duration.FromSeconds(90);
        var P = 1.5.W;
        return Exercise.Choose<ElectricCapacitance, ElectricResistance>(
            $"A rail of {V_0} feeds {I} from a bridge at {f}. Choose its reservoir C and its bleeder R: by the usual estimate a ripple of {V_r} peak to peak at most; from {V_0} to {V_safe} in {t} at most; at most {P} in the bleeder.",
            "C",
            "R",
            (C, R) =>
            [
                Criterion.AtMost("ripple", ReservoirEstimates.RippleFullWave(I, f, C), V_r, "A larger reservoir."),
                Criterion.AtMost($"time to {QuantityFormat.Short(V_safe)}", Discharge.TimeTo(V_0, V_safe, R, C), t, "A smaller bleeder resistance, or a smaller reservoir."),
                Criterion.AtMost("dissipation of the bleeder", Discharge.PowerDissipation(V_0, R), P, "A larger bleeder resistance."),
            ])
            .Hints(
                "The ripple sets the least C; with it the time sets the most R; the dissipation sets the least R.",
                "I/(2·f·C) is the ripple of a bridge.",
                $"The bleeder has {V_0 * V_0 / P:3} at least.")
            .Step($"The ripple asks for {I / (2 * f * V_r):3} at least, the dissipation for {V_0 * V_0 / P:3} at least.")
            .Step("Between them the time to a safe voltage leaves room. Measure before touching all the same: a bleeder can be open.")
            .Example(22.mF, 2.2.kOhm)
            .Pitfall("ripple", 10.mF, 2.2.kOhm)
            .Pitfall($"time to {QuantityFormat.Short(V_safe)}", 22.mF, 10.kOhm)
            .Pitfall("dissipation of the bleeder", 22.mF, 470.Ohm);
    }
}
