using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Protection;

/// <summary>A dc detector as it is built: its threshold a warm or cold junction, its filter off by its parts' tolerance; held against the note that it must pass and the
/// fault that it must end.</summary>
/// <remarks>A hot junction has the lower threshold and trips on music sooner; a cold one is slower on a fault. So each side has its own worst temperature.</remarks>
public sealed record DcProtection
{
    /// <summary>Describes a detector.</summary>
    /// <param name="V_th">Threshold at the filter's output with the junction at 25 °C; greater than 0 V.</param>
    /// <param name="tau">Time constant of each pole; greater than 0 s.</param>
    /// <param name="poles">1, or 2 equal ones.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public DcProtection(ElectricPotential V_th, Duration tau, int poles)
    {
        ThresholdAtRoom = Guard.Positive(V_th);
        Tau = Guard.Positive(tau);
        Poles = Guard.Between(poles, 1, 2);
    }

    /// <summary>Threshold with the junction at 25 °C.</summary>
    [Symbol("V_th")]
    public ElectricPotential ThresholdAtRoom { get; private init; }

    /// <summary>Time constant of each pole.</summary>
    [Symbol("tau")]
    public Duration Tau { get; private init; }

    /// <summary>How many equal poles.</summary>
    public int Poles { get; }

    /// <summary>Change of the threshold with its junction's temperature; −2 mV/K when not given, 0 for a comparator on a reference.</summary>
    [Symbol("tc")]
    public VoltageDrift Drift { get; init; } = new(-2e-3);

    /// <summary>The same detector as its parts may come out.</summary>
    /// <param name="tau">How far the time constant is off, resistor and capacitor together; above −100 %.</param>
    /// <param name="V_th">How far the threshold is off, such as (−20).mV.</param>
    /// <returns>The detector with that time constant and threshold.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Nothing is left of the time constant or the threshold.</exception>
    public DcProtection WithSpread(Ratio tau = default, ElectricPotential V_th = default) => this with
    {
        Tau = Guard.Positive((1 + tau.DecimalFractions) * Tau, nameof(tau)),
        ThresholdAtRoom = Guard.Positive(ThresholdAtRoom + V_th, nameof(V_th)),
    };

    /// <summary>The threshold at a junction temperature.</summary>
    /// <param name="T">The detector's own junction; 25 °C when not given.</param>
    /// <returns>The voltage at the filter's output that trips.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The junction is so hot that no threshold is left.</exception>
    [Worked("LimiterLocus.SenseVoltage at that junction temperature")]
    public ElectricPotential Threshold(Temperature? T = null) => Guard.Positive(
        LimiterLocus.SenseVoltage(ThresholdAtRoom, Drift, T ?? VoltageCurrentLimiter.RoomTemperature, VoltageCurrentLimiter.RoomTemperature), nameof(T), "So hot a junction conducts by itself: keep it off the heat.");

    /// <summary>Threshold over the filter's greatest output while a note begins: 1 or more does not trip.</summary>
    /// <param name="V_p">Peak of the loudest note: the stage's clip level at high mains, not rated power; greater than 0 V.</param>
    /// <param name="f">Lowest frequency at that level; greater than 0 Hz.</param>
    /// <param name="T">The detector's junction at its hottest; 25 °C when not given.</param>
    /// <returns>The margin.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Worked("the threshold over DcDetectorFromRest.Peak of the note")]
    public double NoteMargin(ElectricPotential V_p, Frequency f, Temperature? T = null) => Threshold(T) / DcDetectorFromRest.Peak(V_p, f, Tau, Poles);

    /// <summary>The lowest frequency of a square that begins without a trip: what a note driven on into clipping comes to.</summary>
    /// <param name="V_p">Height of the square: the rail; above the threshold.</param>
    /// <param name="T">The detector's junction at its hottest; 25 °C when not given.</param>
    /// <returns>The frequency, in Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range, or the detector has two poles, for which a later half-wave may be the worst.</exception>
    [Worked("DcDetectorFromRest.LowestSquare at the threshold of that temperature")]
    public Frequency LowestSquare(ElectricPotential V_p, Temperature? T = null)
    {
        Guard.Between(Poles, 1, 1, nameof(Poles), "Of two poles NoteMargin tells for a sine.");
        return DcDetectorFromRest.LowestSquare(V_p, Threshold(T), Tau);
    }

    /// <summary>When it trips on a step of dc, from an empty filter.</summary>
    /// <param name="V">The step: a rail as the fault finds it, or the least offset that must be ended; above the threshold.</param>
    /// <param name="T">The detector's junction at its coldest; 25 °C when not given.</param>
    /// <returns>The time without the relay's own.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <exception cref="ShortfallException">The step is at or below the threshold: it never trips.</exception>
    [Worked("DcDetector.OnePoleTrip or DcDetector.TwoPoleTrip at the threshold of that temperature")]
    public Duration Trip(ElectricPotential V, Temperature? T = null)
    {
        var threshold = Threshold(T);
        Guard.Positive(V);
        if (V <= threshold)
            throw new ShortfallException("The dc at the output", ElectricPotential.FromVolts((threshold - V).Volts), $"{QuantityFormat.Short(V)} never trips a threshold of {QuantityFormat.Short(threshold)}", "Lower the threshold, or show that the loudspeaker bears it for ever.");
        return Poles == 1 ? DcDetector.OnePoleTrip(V, threshold, Tau) : DcDetector.TwoPoleTrip(V, threshold, Tau);
    }

    /// <summary>The energy in the voice coils until the relay has opened.</summary>
    /// <param name="V">The dc at the output, a rail at high mains; above the threshold.</param>
    /// <param name="R_vc">Dc resistance of all voice coils at the output (<see cref="LoudspeakerFault.VoiceCoil"/>); greater than 0 Ω.</param>
    /// <param name="relay">The relay's release, with its arc; 0 s or more.</param>
    /// <param name="T">The detector's junction at its coldest; 25 °C when not given.</param>
    /// <returns>The energy of all coils together.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <exception cref="ShortfallException">The dc is at or below the threshold.</exception>
    [Worked("LoudspeakerFault.Heat until the detector has tripped and the relay opened")]
    public Energy CoilEnergy(ElectricPotential V, ElectricResistance R_vc, Duration relay, Temperature? T = null) =>
        LoudspeakerFault.Heat(V, R_vc, Trip(V, T) + Guard.NotNegative(relay));

    /// <summary>Holds the detector against the note that it must pass and the fault that it must end.</summary>
    /// <param name="V_p">Peak of the loudest note: the clip level; greater than 0 V.</param>
    /// <param name="f">Lowest frequency at that level; greater than 0 Hz.</param>
    /// <param name="V">The dc of the fault, a rail; above the threshold.</param>
    /// <param name="R_vc">Dc resistance of all voice coils at the output; greater than 0 Ω.</param>
    /// <param name="relay">The relay's release, with its arc; 0 s or more.</param>
    /// <param name="mostTime">Longest time allowed until the relay has opened; greater than 0 s.</param>
    /// <param name="mostEnergy">Most energy that the voice coils bear; greater than 0 J.</param>
    /// <param name="coldest">The detector's junction at its coldest, for the fault.</param>
    /// <param name="hottest">At its hottest, for the note; not below the coldest.</param>
    /// <returns>The verdict, with what is missing on each side.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <exception cref="ShortfallException">The dc is at or below the threshold.</exception>
    [Worked("the note held against the threshold at its hottest, the fault at its coldest")]
    public DcVerdict Against(ElectricPotential V_p, Frequency f, ElectricPotential V, ElectricResistance R_vc, Duration relay, Duration mostTime, Energy mostEnergy, Temperature coldest, Temperature hottest)
    {
        if (!(hottest >= coldest))
            Guard.Refuse(nameof(hottest), hottest, $"{QuantityFormat.Short(coldest)} or more, the coldest");
        Guard.Positive(mostTime);
        Guard.Positive(mostEnergy);
        return new(Threshold(hottest), DcDetectorFromRest.Peak(V_p, f, Tau, Poles), Trip(V, coldest) + Guard.NotNegative(relay), mostTime, CoilEnergy(V, R_vc, relay, coldest), mostEnergy);
    }
}
