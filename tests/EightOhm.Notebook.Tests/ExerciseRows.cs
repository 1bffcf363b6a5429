namespace EightOhm.Notebook.Tests;

/// <summary>What each exercise of each notebook must answer: one row an exercise. A notebook's exercise without a row fails a test.</summary>
/// <remarks>The answers are what a student would type, worked out by hand and not by the notebook's own line.</remarks>
internal static class ExerciseRows
{
    /// <summary>Notebook, variable; a wrong answer and how the sentence on it begins, twice; a right answer in another unit than the notebook's.</summary>
    public static TheoryData<string, string, string, string, string, string, string> All => new()
    {
        { "00-start-here", "example", "2.5.A", "That is the rms current", "7.07.A", "That is from peak to peak", "3540.mA" },
        { "00-start-here", "volts", "28.3.V", "That is the peak", "56.6.V", "That is from peak to peak", "20000.mV" },
        { "00-start-here", "decibels", "13.73.dB", "That is 10 times the logarithm", "23.62.dB", "That reads the ratio itself", "23.6.ratio" },
        { "01-the-sheet", "current", "6.71.A", "That is the rms current", "10.A", "That is the current at the peak voltage of 100 W", "9490.mA" },
        { "01-the-sheet", "rise", "58.5.percent", "That is the rise in power", "2.percent", "A decibel is not a percent", "259000.ppm" },
        { "02-a-large-op-amp", "full", "237.kHz", "That takes the rms voltage", "1.054.MHz", "2π is missing", "0.168.MHz" },
        { "02-a-large-op-amp", "third", "18.ppm", "That is the loop gain at 20 kHz", "51.3.ppm", "Nearly: above the pole", "0.0054.percent" },
        { "02-a-large-op-amp", "hum", "0.125.uV", "That divides it by 1 + T", "1.mV", "It is beside the signal", "0.0236.V" },
        { "03-noise-first-look", "hiss", "257.uV", "The root of the bandwidth is forgotten", "2.27.uV", "That takes 20 kHz for a corner", "1815.nV" },
        { "03-noise-first-look", "pole", "467.nV", "That takes the corner for the noise bandwidth", "733.nV", "The factor π/2 belongs to the bandwidth", "585.nV" },
        { "03-noise-first-look", "watt", "80.dB", "That is 20 times the logarithm", "140.dB", "A smaller signal", "100000.ratio" },
        { "06-output-stage", "each", "60.8.W", "That is a pair", "31.7.W", "The emitter resistors are forgotten", "30400.mW" },
        { "06-output-stage", "hottest", "100.W", "Near, but", "127.W", "2/π is the share of the voltage", "81100.mW" },
        { "06-output-stage", "music", "78.5.percent", "That is at full swing", "9.8.percent", "It goes with the voltage", "278000.ppm" },
        { "06-output-stage", "passing", "1.67.A", "That is its peak current", "3.54.A", "That is the side's current", "1180.mA" },
        { "07-crossover-and-bias", "meter", "26.mV", "That is the rule", "20.74.mV", "That is the thermal voltage of the room", "0.0242.V" },
        { "07-crossover-and-bias", "middle", "372.mOhm", "That is one side", "68.1.mOhm", "r_e is forgotten", "0.186.Ohm" },
        { "07-crossover-and-bias", "doubled", "51.95.mA", "Not quite half", "103.9.mA", "The voltage across", "0.0575.A" },
        { "08-heat-and-tracking", "rise", "153.K", "That sends all the heat through one junction", "25.5.K", "That gives the sink one device's heat", "TemperatureDelta.FromDegreesFahrenheit(113.4)" },
        { "08-heat-and-tracking", "buy", "618.mK_per_W", "That takes 1.1 times the heat", "3.26.K_per_W", "That is a sink for one of the six", "544.mK_per_W" },
        { "08-heat-and-tracking", "drift", "35.7.mA", "r_e is forgotten", "45.5.mA", "Only R_E is in that", "0.0179.A" },
        { "09-protection", "near", "3.79.A", "That is a sense junction at 85 °C", "2.95.A", "That leaves the divider out", "4650.mA" },
        { "09-protection", "shorted", "1.70.A", "That is a sense junction at 85 °C", "4.62.A", "The branch of R_3 is forgotten", "2560.mA" },
        { "09-protection", "warm", "2.31.A", "The sign", "1.54.A", "That counts 75 K", "1692.mA" },
        { "09-protection", "tau_note", "15.9.ms", "That puts the corner at 10 Hz", "692.ms", "That takes the rms voltage", "979.ms" },
        { "09-protection", "trip", "226.us", "So quick is a corner at 10 Hz", "22.1.ms", "That is two poles", "0.0139.s" },
        { "04-the-load", "average", "2.Ohm", "|Z|·cos φ ends at 50.46°", "1.112.Ohm", "That is the peak-equivalent one", "2097.mOhm" },
        { "04-the-load", "instant", "4.24.Ohm", "That is 0.707·|Z|", "6.Ohm", "That is the magnitude", "2120.mOhm" },
        { "04-the-load", "copper", "79.8.mOhm", "That is one way", "39.9.mOhm", "The conductors are in series", "0.16.Ohm" },
        { "05-rails-and-supply", "ripple", "6.V", "That is I/(f·C), half-wave", "1.5.V", "That is the peak about the mean", "3000.mV" },
        { "05-rails-and-supply", "copper", "3.23.A", "That is the factor 1 of a centre tap", "5.21.A", "That is a maker's 1.6", "7100.mA" },
        { "05-rails-and-supply", "wait", "66.s", "That is one time constant", "45.6.s", "That is the logarithm to base 10", "104900.ms" },
    };
}
