using EightOhm.Loads;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Constants;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Teaching.Chapters;

/// <summary>The loudspeaker and its cable.</summary>
internal static class Chapter04
{
    public static CourseChapter Of { get; } = new("04", "the load",
    [
        new("04-cable-resistance", ExerciseLevel.WarmUp, CableResistance),
        new("04-average-equivalent", ExerciseLevel.WarmUp, Average),
        new("04-peak-equivalent", ExerciseLevel.WarmUp, Peak),
        new("04-damping", ExerciseLevel.Steps, Damping),
        new("04-cable", ExerciseLevel.Design, Cable),
    ]);

    private static Exercise CableResistance(Numbers n)
    {
        var l = n.Pick(10.m, 8.m, 15.m, 25.m);
        var R_km = n.Pick(7.98.Ohm, 13.3.Ohm, 4.95.Ohm);
        var T = 20.degC;
        return Exercise.Ask($"A loudspeaker cable is {l} long; each of its two conductors has {R_km} for each kilometre at {T}. What resistance lies in series with the loudspeaker?", () => CopperWire.LoopResistance(l, R_km, T))
            .Slip(CopperWire.LoopResistance(l / 2, R_km, T), "That is one way; the current also comes back.")
            .Slip(CopperWire.LoopResistance(l / 4, R_km, T), "The conductors are in series, there and back, not in parallel.")
            .Hints(
                "How far does the current go until it is back?",
                "Twice the length of the cable, in kilometres, times the resistance for each kilometre.");
    }

    private static Exercise Average(Numbers n)
    {
        var Z = n.Pick(4.Ohm, 5.Ohm, 6.Ohm);
        var phi = n.Pick(60.deg, 55.deg, 65.deg);
        return Exercise.Ask($"What resistor heats the output stage, on average and at the worst level, as much as {Z} at {phi}?", () => EquivalentResistor.Average(Z, phi))
            .Slip(Z * Cos(phi), "|Z|·cos φ ends at 50.46°; beyond, full swing is the worst level.")
            .Slip(EquivalentResistor.Peak(Z, phi), "That is the peak-equivalent one, for the hottest instant.")
            .Slip(Z, "That is the magnitude, as if the angle cost nothing.")
            .Hints(
                "On which side of 50.46° is the angle?",
                "Beyond it the worst level is full swing: compare the dissipation there with the worst of a resistor.");
    }

    private static Exercise Peak(Numbers n)
    {
        var Z = n.Pick(6.Ohm, 4.Ohm, 5.Ohm);
        var phi = n.Pick(45.deg, 40.deg, 35.deg);
        return Exercise.Ask($"What resistor gives a transistor the same hottest instant as {Z} at {phi}?", () => EquivalentResistor.Peak(Z, phi))
            .Slip(EquivalentResistor.Average(Z, phi), "That is the average-equivalent one; an instant is harder.")
            .Slip(Z, "That is the magnitude, as if the angle cost nothing.")
            .Hints(
                "The hottest instant is a product of voltage and current in a moment, not a mean.",
                "With V·(1 − sin) across the transistor and the current shifted by φ, look for the greatest product.");
    }

    private static Exercise Damping(Numbers n)
    {
        var R_L = n.Pick(8.Ohm, 4.Ohm, 6.Ohm);
        var R_out = n.Pick(40.mOhm, 22.mOhm, 33.mOhm);
        var l = n.Pick(10.m, 6.m, 15.m);
        var R_km = 7.98.Ohm;
        var T = 20.degC;
        var R_c = CopperWire.LoopResistance(l, R_km, T);
        return Exercise.Ask($"An amplifier with {R_out} of output resistance, {l} of cable with {R_km} for each kilometre of conductor ({T}), a loudspeaker of {R_L}. What is the damping factor at the loudspeaker's terminals?", () => R_L / (R_out + R_c))
            .Slip(R_L / R_out, "That is at the amplifier's terminals; the cable is forgotten.")
            .Slip(R_L / (R_out + (R_c / 2)), "The cable goes there and back.")
            .Slip(R_L / R_c, "The amplifier's own resistance is forgotten.")
            .Hints(
                "What does the loudspeaker see looking back?",
                "The output resistance and both conductors of the cable, in series.",
                $"The cable has {R_c:3}, there and back.")
            .Step(() => CopperWire.LoopResistance(l, R_km, T));
    }

    private static Exercise Cable(Numbers n)
    {
        var l = n.Pick(15.m, 12.m, 18.m);
        var R_L = n.Pick(8.Ohm, 6.Ohm);
        var R_out = 40.mOhm;
        var T = 20.degC;
        var DF = n.Pick(30.0, 35.0);
        var A_most = Area.FromSquareMillimeters(4);
        return Exercise.Choose<Length>(
            $"Choose the diameter d of the copper in each conductor of a cable of {l} to a loudspeaker of {R_L}, from an amplifier of {R_out}. At {T} the damping factor at the loudspeaker is to be {DF} at least, at most 2 % of the power may be lost in the cable, and the terminals take a conductor of 4 mm² at most.",
            "d",
            d =>
            {
                Guard.Positive(d);
                var R_c = CopperWire.LoopResistance(l, CopperWire.PerKilometre(d), T);
                return
                [
                    Criterion.AtLeast("damping factor at the loudspeaker", R_L / (R_out + R_c), DF, "A thicker conductor, or the amplifier nearer to the loudspeaker."),
                    Criterion.AtMost("power lost in the cable", Ratio.FromDecimalFractions(R_c / (R_c + R_L)), 2.percent, "A thicker conductor: the loss is the cable's share of the whole resistance."),
                    Criterion.AtMost("cross-section", Area.FromSquareMeters(pi / 4 * d.Meters * d.Meters), A_most, "It does not go into the terminal."),
                ];
            })
            .Hints(
                "Which of the two, damping or loss, leaves the cable less resistance?",
                "The resistance goes with 1/d², the cross-section with d².",
                "4 mm² are a diameter of about 2.26 mm; begin a little below.")
            .Step($"The damping factor leaves the cable {(R_L / DF) - R_out:3}, the loss {0.02 / 0.98 * R_L:3}.")
            .Example(2.2.mm)
            .Pitfall("cross-section", 2.6.mm)
            .Pitfall("damping factor at the loudspeaker", 1.38.mm);
    }
}
