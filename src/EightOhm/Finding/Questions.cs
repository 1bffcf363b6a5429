namespace EightOhm.Finding;

/// <summary>Questions as a designer asks them, each with the functions that answer it.</summary>
public static class Questions
{
    /// <summary>The questions in the order of a design.</summary>
    public static IReadOnlyList<(string Question, IReadOnlyList<string> Functions)> All { get; } =
    [
        ("what voltage and current is 100 W into 8 Ω", ["OutputRating"]),
        ("how much gain for a sensitivity of 1.2 V", ["OutputRating.GainFrom"]),
        ("what is 4 dBu in volts", ["Levels.VoltageOfDbU"]),
        ("how much power for a sound level at a distance", ["ListeningPower.Average", "ListeningPower.Rated"]),
        ("how much slew rate does a sine need", ["SlewRate.Needed"]),
        ("what full-power bandwidth does a slew rate give", ["SlewRate.FullPowerBandwidth"]),
        ("how much loop gain and what error is left", ["FeedbackLoop.LoopGain", "LoopErrors.AfterGain"]),
        ("what damping factor is left behind a cable", ["DampingFactor.WithCable"]),
        ("how thick a loudspeaker cable", ["CopperWire.LoopResistance", "CableLoss.Share"]),
        ("how much current does a loudspeaker draw", ["OutputCurrent.Sine", "OutputCurrent.WorstProgramme"]),
        ("ripple of 10 mF at 3 A", ["ReservoirEstimates.RippleFullWave", "ReservoirEstimates.RippleRms"]),
        ("what rail does a transformer give", ["ReservoirEstimates.Peak", "ReservoirEstimates.Mean", "Transformer.NoLoadRail"]),
        ("how far does the rail sag under load", ["Transformer.Regulation", "SourceResistance.OfRail"]),
        ("how large a transformer", ["WindingGuides.BridgeRating", "WindingGuides.BridgeLow"]),
        ("what reverse voltage must the diodes bear", ["PeakInverse.DualRail", "PeakInverse.Bridge"]),
        ("how large is the inrush current at switch-on", ["Inrush.CapacitorPeak", "Inrush.CoreBound"]),
        ("what fuse in the mains", ["Fuse.Rating", "Fuse.LeastMelting"]),
        ("how long until the reservoirs are safe to touch", ["Discharge.TimeTo", "Discharge.Bleeder", "Discharge.StoredEnergy"]),
        ("how large a snubber for the winding", ["Snubber.RingFrequency", "Snubber.Resistance", "Snubber.WhatRings"]),
        ("how much power do the output transistors dissipate", ["ClassB.Worst", "ClassB.WorstOfOne", "ClassB.Efficiency"]),
        ("how much heat with music instead of a sine", ["MusicDissipation.NoiseHeat", "MusicDissipation.PowerOf"]),
        ("how much standing current, and how much bias", ["Crossover.EqualGainCurrent", "Crossover.EmitterResistorDrop"]),
        ("which resistors for the V_BE multiplier", ["VbeMultiplier.LowerResistor", "VbeMultiplier.UpperResistor"]),
        ("how well do parallel pairs share the current", ["CurrentSharing.Spread", "CurrentSharing.LeastResistance"]),
        ("what do the drivers carry and dissipate", ["Drivers.BaseCurrent", "Drivers.WorstHeat"]),
        ("how much does current gain fall at high current", ["BetaDroop.CurrentGain"]),
        ("how large a heat sink, what heatsink or cooling", ["SharedSink.AllowedSink", "HeatPath.AllowedSink"]),
        ("how hot does the junction get", ["SharedSink.Junction", "HeatPath.Junction"]),
        ("what may a transistor dissipate when its case is warm", ["Derating.AllowedPower"]),
        ("what is a sink of a catalogue worth at another power", ["RatedSink.AtPower", "RatedSink.AtRise"]),
        ("does the idle current run away", ["Runaway.LoopGain", "Runaway.UnityLoopGainCurrent"]),
        ("at what temperature must the thermostat trip", ["Thermostat.SinkLimit"]),
        ("is the load within the safe area", ["SafeAreaLimits.ByDissipation", "SafeAreaLimits.PowerDeratingFactor"]),
        ("which resistors for the current limiter", ["LimiterDesign.EmitterResistor", "LimiterDesign.SlopeResistor", "LimiterLocus.SingleSlope"]),
        ("how fast must the dc detector be", ["DcDetector.TwoPoleTau", "DcDetector.OnePoleTrip", "LoudspeakerFault.Heat"]),
        ("how much noise does a resistor make", ["ThermalNoise.VoltageDensity", "ThermalNoise.Voltage"]),
        ("what signal-to-noise ratio does a density give", ["Snr.OfDensity", "SnrReference.AtPower"]),
        ("what noise bandwidth has a filter", ["NoiseBandwidth.OfButterworth", "NoiseBandwidth.OfUnequalPoles"]),
        ("what is the total harmonic distortion of these harmonics", ["HarmonicDistortion.OfRatios", "HarmonicDistortion.OfDecibels"]),
        ("where does the loop cross over, and what slew rate goes with it", ["MillerLoop.Crossover", "SlewRate.OfCrossover"]),
        ("what capacitor for the compensation", ["MillerLoop.CapacitorFor", "SlewRate.Available"]),
        ("what does two-pole compensation give", ["TwoPole.MoreGain", "TwoPole.ZeroFrequency"]),
        ("what phase margin belongs to an overshoot", ["SecondOrder.PhaseMargin", "SecondOrder.DampingOf"]),
        ("how much standing current for the second stage", ["StageCurrent.Needed"]),
        ("what does the second stage dissipate in a fault", ["StageHeat.LimitedFault", "StageHeat.UnlimitedFault"]),
        ("how long does the second stage stick after clipping", ["Recovery.Time"]),
        ("what inductance has an output coil", ["AirCoil.Inductance"]),
        ("what does the Zobel resistor dissipate", ["Zobel.Dissipation"]),
        ("what damping factor does an output coil leave", ["DampedCoil.DampingFactor"]),
    ];

    /// <summary>The questions that a function answers.</summary>
    internal static IEnumerable<string> AnsweredBy(string name) => All.Where(q => q.Functions.Contains(name)).Select(q => q.Question);
}
