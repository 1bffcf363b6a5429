using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Ratings;

/// <summary>A rated power into a rated load, a sine: what it is in volts and amperes.</summary>
/// <remarks>Equality is by value. Power is the average of a sine (rms volts times rms amperes), the load resistive.</remarks>
[RecordName("output-rating")]
public sealed partial record OutputRating
{
    /// <summary>Makes a rating.</summary>
    /// <param name="power">Average power of a sine, per channel; greater than 0 W.</param>
    /// <param name="load">Rated load, resistive; greater than 0 Ω.</param>
    /// <exception cref="ArgumentOutOfRangeException">Power or load is zero or negative.</exception>
    public OutputRating(Power power, ElectricResistance load)
    {
        Power = Guard.Positive(power, hint: "Give the average power of one channel, for example 100.W.");
        Load = Guard.Positive(load, hint: "Give the rated load, for example 8.Ohm.");
    }

    /// <summary>Rated power: the average of a sine, per channel.</summary>
    [Symbol("P")]
    public Power Power { get; }

    /// <summary>Rated load.</summary>
    [Symbol("R_L")]
    public ElectricResistance Load { get; }

    /// <summary>Output voltage, rms: √(P·R).</summary>
    /// <example><code>new OutputRating(100.W, 8.Ohm).RmsVoltage   // 28.28 V</code></example>
    [Formula("Joule's law for rms values; Boylestad & Nashelsky, Electronic Devices and Circuit Theory, 11th ed., ch. 12", Symbol = "V_rms")]
    [RecordName("output-rating.rms-voltage")]
    public ElectricPotential RmsVoltage => Sqrt(Power * Load);

    /// <summary>Output voltage, peak: √(2·P·R), √2 times the rms of a sine.</summary>
    [Formula("Boylestad & Nashelsky, Electronic Devices and Circuit Theory, 11th ed., ch. 12", Symbol = "V_pk")]
    [RecordName("output-rating.peak-voltage")]
    public ElectricPotential PeakVoltage => Sqrt(2 * Power * Load);

    /// <summary>Output current, rms: √(P/R).</summary>
    [Formula("Joule's law for rms values; Boylestad & Nashelsky, Electronic Devices and Circuit Theory, 11th ed., ch. 12", Symbol = "I_rms")]
    [RecordName("output-rating.rms-current")]
    public ElectricCurrent RmsCurrent => Sqrt(Power / Load);

    /// <summary>Output current, peak: √(2·P/R).</summary>
    /// <example><code>new OutputRating(100.W, 8.Ohm).PeakCurrent   // 5 A</code></example>
    [Formula("Boylestad & Nashelsky, Electronic Devices and Circuit Theory, 11th ed., ch. 12", Symbol = "I_pk")]
    [RecordName("output-rating.peak-current")]
    public ElectricCurrent PeakCurrent => Sqrt(2 * Power / Load);

    /// <summary>The gain that gives rated power from a sensitivity: V_rms over V_in.</summary>
    /// <param name="sensitivity">Input voltage for rated power, rms; greater than 0 V.</param>
    /// <returns>The voltage gain.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The sensitivity is zero or negative.</exception>
    /// <example><code>new OutputRating(100.W, 8.Ohm).GainFrom(1.2.V)   // 23.57</code></example>
    [Formula("National Semiconductor, LM3876 datasheet, application section: gain from sensitivity", Symbol = "A")]
    [RecordName("output-rating.gain-from")]
    public Gain GainFrom(ElectricPotential sensitivity)
    {
        Guard.Positive(sensitivity, hint: "Give the rms input voltage for rated power, for example 1.2.V.");
        return Gain.FromRatio(RmsVoltage / sensitivity);
    }

    /// <summary>The input voltage that gives rated power, rms: V_rms over the gain.</summary>
    /// <param name="gain">Voltage gain; greater than 0.</param>
    /// <returns>The input voltage, rms, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The gain is zero or negative.</exception>
    [Formula("National Semiconductor, LM3876 datasheet, application section: sensitivity from gain", Symbol = "V_in")]
    [RecordName("output-rating.sensitivity-for")]
    public ElectricPotential SensitivityFor(Gain gain)
    {
        Guard.Positive(gain, hint: "Give the voltage gain, for example 27.4.dB.");
        return RmsVoltage / gain;
    }
}
