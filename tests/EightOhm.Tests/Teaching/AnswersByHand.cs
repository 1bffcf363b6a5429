using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Tests.Teaching;

/// <summary>What a student would type, worked out apart from the library (tests/references/exercises.py), for the book's own numbers.</summary>
/// <param name="Right">A right answer in another unit than the one the library shows, or of two digits.</param>
/// <param name="Wrong">A usual wrong answer.</param>
/// <param name="Says">How the sentence on it begins.</param>
/// <param name="OtherWrong">Another.</param>
/// <param name="OtherSays">How the sentence on that begins.</param>
internal sealed record ByHand(object Right, object Wrong, string Says, object OtherWrong, string OtherSays)
{
    public static IReadOnlyDictionary<string, ByHand> All { get; } = new Dictionary<string, ByHand>
    {
        ["00-peak-current"] = new(3540.mA, 2.5.A, "That is the rms current", 7.07.A, "That is from peak to peak"),
        ["00-rms-voltage"] = new(20000.mV, 28.3.V, "That is the peak", 56.6.V, "That is from peak to peak"),
        ["00-decibels"] = new(23.6.ratio, 13.73.dB, "That is 10 times the logarithm", 23.62.dB, "That reads the ratio itself"),
        ["00-output-power"] = new(29900.mW, 14.9.W, "That takes the output for a peak", 11.9.kW, "That reads the decibels as 10"),
        ["01-peak-current"] = new(9490.mA, 6.71.A, "That is the rms current", 10.A, "That is the current at the peak voltage of 100 W"),
        ["01-headroom-voltage"] = new(259000.ppm, 58.5.percent, "That is the rise in power", 2.percent, "A decibel is not a percent"),
        ["01-burst-power"] = new(47800.mV, 37.9.V, "That is the peak of the steady rating", 33.8.V, "That is the rms voltage of the burst"),
        ["01-noise-volts"] = new(0.1.mV, 0.142.mV, "That starts from the peak", 3.98.uV, "That starts from 1 V"),
        ["02-slew-rate"] = new(ElectricPotentialChangeRate.FromVoltsPerSeconds(4.4e6), 0.7.V_per_us, "2π is missing", 3.11.V_per_us, "That takes the rms voltage"),
        ["02-full-power-bandwidth"] = new(0.168.MHz, 237.kHz, "That takes the rms voltage", 1.054.MHz, "2π is missing"),
        ["02-third-harmonic"] = new(0.0054.percent, 18.ppm, "That is the loop gain at 20 kHz", 51.3.ppm, "Nearly: above the pole"),
        ["02-hum-at-the-input"] = new(0.0236.V, 0.125.uV, "That divides it by 1 + T", 1.mV, "It is beside the signal"),
        ["03-noise-of-a-resistor"] = new(1815.nV, 257.uV, "The root of the bandwidth is forgotten", 2.27.uV, "That takes the bandwidth for a corner"),
        ["03-one-pole"] = new(0.585.uV, 467.nV, "That takes the corner for the noise bandwidth", 733.nV, "The factor π/2 belongs to the bandwidth"),
        ["03-two-sources"] = new(5230.0.pV_rtHz, 7.36.nV_rtHz, "Noises that know nothing", 4.06.nV_rtHz, "That is the resistor alone"),
        ["03-snr-at-one-watt"] = new(100000.ratio, 80.dB, "That is 20 times the logarithm", 140.dB, "A smaller signal"),
        ["04-cable-resistance"] = new(0.16.Ohm, 79.8.mOhm, "That is one way", 39.9.mOhm, "The conductors are in series"),
        ["04-average-equivalent"] = new(2097.mOhm, 2.Ohm, "|Z|·cos φ ends at 50.46°", 1.112.Ohm, "That is the peak-equivalent one"),
        ["04-peak-equivalent"] = new(2120.mOhm, 4.24.Ohm, "That is the average-equivalent one", 6.Ohm, "That is the magnitude"),
        ["04-damping"] = new(40, 200.0, "That is at the amplifier's terminals", 66.8, "The cable goes there and back"),
        ["05-ripple"] = new(3000.mV, 6.V, "That is I/(f·C), half-wave", 1.5.V, "That is the peak about the mean"),
        ["05-stored-energy"] = new(18750.mJ, 37.5.J, "The half is forgotten", 0.75.J, "That is the charge"),
        ["05-bleeder-time"] = new(104900.ms, 66.s, "That is one time constant", 45.6.s, "That is the logarithm to base 10"),
        ["05-half-winding"] = new(7030.mA, 3.2.A, "That is the factor 1 of a centre tap", 5.12.A, "That is a maker's 1.6"),
        ["06-worst-level"] = new(80.W, 100.W, "Near, but", 127.W, "2/π is the share of the voltage"),
        ["06-music-efficiency"] = new(278000.ppm, 78.5.percent, "That is at full swing", 9.8.percent, "It goes with the voltage"),
        ["06-each-transistor"] = new(30400.mW, 60.8.W, "That is a pair", 31.7.W, "The emitter resistors are forgotten"),
        ["06-current-at-zero"] = new(833.mA, 1.67.A, "That is its peak current", 2.5.A, "That is the side's current"),
        ["07-emitter-resistance"] = new(0.359.Ohm, 321.mOhm, "That is the thermal voltage of the room", 8.125.Ohm, "That is V_BE over the current"),
        ["07-meter-reading"] = new(0.0242.V, 26.mV, "That is the rule", 20.74.mV, "That is the thermal voltage of the room"),
        ["07-output-resistance"] = new(0.186.Ohm, 372.mOhm, "That is one side", 68.1.mOhm, "r_e is forgotten"),
        ["07-larger-resistor"] = new(0.0575.A, 51.95.mA, "Not quite half", 103.9.mA, "The voltage across"),
        ["07-multiplier"] = new(1570.Ohm, 1.88.kOhm, "That is both resistors", 310.Ohm, "That is the one from base to emitter"),
        ["07-charge-limit"] = new(0.0316.MHz, 44.7.kHz, "That takes the rms current", 5.03.kHz, "The 2π of the charge"),
        ["08-sink-temperature"] = new(Temperature.FromDegreesFahrenheit(140), 30.degC, "That is the rise above the air", 150.degC, "A thermal resistance multiplies"),
        ["08-junction-rise"] = new(TemperatureDelta.FromDegreesFahrenheit(113.4), 153.K, "That sends all the heat through one junction", 25.5.K, "That gives the sink one device's heat"),
        ["08-sink-at-high-mains"] = new(544.mK_per_W, 618.mK_per_W, "That takes 1.1 times the heat", 3.26.K_per_W, "That is a sink for one of them"),
        ["08-idle-shift"] = new(0.0179.A, 35.7.mA, "r_e is forgotten", 45.5.mA, "Only R_E is in that"),
        ["08-one-multiplier"] = new(VoltageDrift.FromSi(12.7e-3), 4.2.mV_per_K, "That is what the two hot", 2.1.mV_per_K, "That is its own V_BE alone"),
        ["08-runaway-current"] = new(386.mA, 225.mA, "r_int is forgotten", 104.mA, "That is the current of equal gain"),
        ["09-limit-at-zero"] = new(4650.mA, 3.79.A, "That is a sense junction at 85 °C", 2.95.A, "That leaves the divider out"),
        ["09-limit-warm"] = new(1692.mA, 2.31.A, "The sign", 1.54.A, "That counts from 0 °C"),
        ["09-limit-at-the-rail"] = new(2560.mA, 1.70.A, "That is a sense junction at 85 °C", 4.62.A, "The branch of R_3 is forgotten"),
        ["09-detector-tau"] = new(979.ms, 15.9.ms, "That puts the corner at 10 Hz", 692.ms, "That takes the rms voltage"),
        ["09-trip-time"] = new(0.0139.s, 226.us, "So quick is a corner at 10 Hz", 22.1.ms, "That is two poles"),
        ["10-transconductance"] = new(0.0167.S, 8.35.mS, "That is one half alone", 77.8.mS, "That leaves out the resistors in the emitters"),
        ["10-base-current"] = new(66000.uV, 132.mV, "Each transistor carries half", 19.8.V, "That is the collector current"),
        ["10-slew-at-crossover"] = new(ElectricPotentialChangeRate.FromVoltsPerSeconds(36.1e6), 7.75.V_per_us, "That is the slew rate without the resistors", 18.05.V_per_us, "With a mirror the whole tail current"),
        ["10-third-harmonic"] = new(0.000516.percent, 1316.ppm, "That is the distortion of the hyperbolic tangent", 0.215.ppm, "It stands at the summing node"),
        ["10-servo-authority"] = new(0.1137.V, 2.64.V, "That is what it moves at the output", 227.mV, "One way, not both"),
        ["13-base-current"] = new(1462.fA_rtHz, 2.07.pA_rtHz, "r_π is a slope", 25.3.pA_rtHz, "That is the noise of the collector current"),
        ["13-bare-mirror"] = new(2140.0.pV_rtHz, 3.03.nV_rtHz, "That takes r_e for a resistor", 1.515.nV_rtHz, "That is one of its two transistors"),
        ["13-best-current"] = new(617.uA, 445.uA, "That is for a single transistor", 1.234.mA, "That is the tail current"),
        ["13-low-end"] = new(1620.0.pV_rtHz, 1.277.nV_rtHz, "That takes the capacitor for a short", 3.61.nV_rtHz, "A capacitor is silent"),
        ["11-standing-current"] = new(4900.uA, 4.mA, "That charges the compensation alone", 4.1.mA, "The 20 pF at the output"),
        ["11-limited-fault"] = new(1655.mW, 3.31.W, "That is rail to rail", 19.2.mW, "That is in the emitter resistor"),
        ["11-unlimited-fault"] = new(18880.mW, 0.224.W, "That is the tail current itself", 10.32.W, "With a mirror"),
        ["11-early-effect"] = new(0.00983.percent, 1.756.ppm, "It is at the summing node", 4.167.ppm, "The error at the input"),
        ["11-sticking"] = new(2303.ns, 1.us, "That is the logarithm", 10.us, "Charge does not fall"),
        ["12-crossover"] = new(1124.kHz, 26.5.MHz, "That is where the open-loop gain", 562.kHz, "A mirror gives both halves"),
        ["12-slew-of-crossover"] = new(ElectricPotentialChangeRate.FromVoltsPerSeconds(39.1e6), 19.6.V_per_us, "A mirror makes all", 1.659.V_per_us, "The gain is forgotten"),
        ["12-phase-margin"] = new(Angle.FromRadians(1.277), 79.55.deg, "The delay is forgotten", 83.52.deg, "The pole is forgotten"),
        ["12-inner-loop"] = new(77640.kHz, 63.7.MHz, "That is the zero in the right half-plane", 212.MHz, "At its output"),
        ["12-two-pole-zero"] = new(0.1447.MHz, 1.592.MHz, "That takes the small capacitor alone", 1.751.MHz, "That takes them in series"),
        ["12-two-pole-gain"] = new(7.30.ratio, 38.0.dB, "That is with the zero of the small", 34.54.dB, "Below the zero"),
        ["14-zobel-heat"] = new(1243.mW, 80.W, "That is the resistor alone", 2.487.W, "That takes the rms"),
        ["14-damping-of-a-coil"] = new(63.7, 400.0, "2π is missing", 0.8, "At 20 kHz"),
        ["14-output-inductance"] = new(0.0217.uH, 136.4.nH, "2π is missing", 1.157.uH, "That is the load's"),
        ["14-coil"] = new(1055.nH, 75.4.nH, "It goes with the square", 26.81.uH, "The formula wants inches"),
        ["14-resonance"] = new(0.1073.MHz, 674.2.kHz, "That is the angular", 3.393.MHz, "A decade or three off"),
    };
}
