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
        { "05-rails-and-supply", "ripple", "6.V", "That is I/(f·C), half-wave", "1.5.V", "That is the peak about the mean", "3000.mV" },
        { "05-rails-and-supply", "copper", "3.23.A", "That is the factor 1 of a centre tap", "5.21.A", "That is a maker's 1.6", "7100.mA" },
        { "05-rails-and-supply", "wait", "66.s", "That is one time constant", "45.6.s", "That is the logarithm to base 10", "104900.ms" },
    };
}
