using System.ComponentModel;

namespace EightOhm.Ratings;

/// <summary>What the amplifier is doing while a figure must hold: it fixes which rail, which level and which sink temperature belong together.</summary>
/// <remarks>The same load is another case under another duty: a lasting sine has pulled the rails down and warmed the sink, a burst finds the rails
/// as the pause or the music left them, and its heat has no time to reach the sink.</remarks>
public enum Duty
{
    /// <summary>No signal for hours: the idle current alone. The rails are at their highest, the sink at its idle temperature.</summary>
    Rest,

    /// <summary>For hours, a steady sine that gives the load an eighth of the rated power: the mean rectified current is 0.900 of the rms. Rails at
    /// that mean current, sink in equilibrium.</summary>
    /// <remarks>An eighth of the power for music with peaks just short of clipping is common practice, no source.</remarks>
    [Description("sine at 1/8 power")]
    MusicEighthSine,

    /// <summary>For hours, Gaussian noise of the same mean power in the load: the mean rectified current is 0.798 of the rms, so the supply gives,
    /// and the stage dissipates, less than with the sine. Rails at that mean current, sink in equilibrium.</summary>
    [Description("noise at 1/8 power")]
    MusicEighthNoise,

    /// <summary>For hours, the sine of that level at which the transistors dissipate most: 2/π of the rail in an ideal class-B stage into a
    /// resistor, higher into a phase, and found on the rail that this level itself leaves. Sink in equilibrium.</summary>
    SineOfMaximumDissipation,

    /// <summary>Full level all at once after a silence: the reservoirs are at the rail without signal, the sink at its idle temperature; for the
    /// milliseconds of a safe-area pulse, so neither the rail sags nor the case warms.</summary>
    BurstFromRest,

    /// <summary>Full level all at once out of music: the rails and the sink are those of music at an eighth of the power, and stay so for the
    /// milliseconds of the burst.</summary>
    BurstFromMusic,

    /// <summary>A short circuit at the output, driven until the protection ends it: the limiter's current at no load voltage, the rails at what the
    /// supply gives at that mean current, the sink rising from where it was.</summary>
    SustainedShort,
}
