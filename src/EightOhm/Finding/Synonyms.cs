using System.Collections.Frozen;

namespace EightOhm.Finding;

/// <summary>What people say for what the library calls otherwise.</summary>
internal static class Synonyms
{
    // Each line: words that find each other's functions.
    private static readonly string[][] Groups =
    [
        ["ripple", "hum", "reservoir", "smoothing"],
        ["sag", "droop", "regulation", "loaded"],
        ["sink", "heatsink", "cooling", "cooler", "fins", "fin"],
        ["dissipation", "heat", "watts", "loss"],
        ["junction", "temperature", "hot", "thermal"],
        ["fuse", "fusing", "melting"],
        ["inrush", "soft", "start", "switch-on", "thermistor", "ntc"],
        ["bleeder", "discharge", "stored"],
        ["noise", "hiss", "density"],
        ["snr", "signal-to-noise"],
        ["thd", "harmonic", "harmonics", "distortion"],
        ["bias", "idle", "quiescent", "standing", "crossover"],
        ["spreader", "multiplier", "vbe", "v_be"],
        ["soa", "safe", "breakdown"],
        ["limiter", "short", "overcurrent", "vi"],
        ["loudspeaker", "speaker", "driver", "woofer", "coil"],
        ["load", "impedance"],
        ["cable", "wire", "copper", "awg"],
        ["dc", "offset", "relay"],
        ["slew", "slope"],
        ["bandwidth", "corner", "pole"],
        ["transformer", "winding", "va", "secondary", "primary"],
        ["rectifier", "diode", "diodes", "bridge"],
        ["bridged", "btl"],
        ["beta", "hfe", "h_fe", "current gain"],
        ["level", "dbu", "dbv", "dbw", "dbm", "decibel", "decibels"],
        ["headroom", "burst"],
        ["clip", "clipping", "swing"],
        ["feedback", "nfb", "loop"],
        ["damping", "output resistance"],
        ["rejection", "psrr"],
        ["mains", "line", "voltage"],
        ["pairs", "parallel", "sharing"],
        ["insulator", "pad", "washer", "mica"],
        ["snubber", "ringing", "rings"],
        ["mute", "thump"],
        ["music", "programme", "crest"],
    ];

    private static readonly FrozenDictionary<string, string[]> Known = Groups
        .SelectMany(g => g.Select(w => (Word: w, Group: g))).GroupBy(w => w.Word, StringComparer.Ordinal)
        .ToFrozenDictionary(g => g.Key, g => g.SelectMany(w => w.Group).Where(w => w != g.Key).Distinct().ToArray(), StringComparer.Ordinal);

    /// <summary>The other words for one.</summary>
    public static IReadOnlyList<string> Of(string word) => Known.GetValueOrDefault(word) ?? Known.GetValueOrDefault(word.TrimEnd('s')) ?? [];
}
