using System.Text;
using EightOhm.Json;

namespace EightOhm.Record;

/// <summary>Rules of the first version: an operator had its name and its method, a function its full name in the code.</summary>
internal static class VersionOneRules
{
    private static readonly Dictionary<string, string> Signs = new(StringComparer.Ordinal)
    {
        ["Add"] = "+",
        ["Subtract"] = "-",
        ["Multiply"] = "*",
        ["Divide"] = "/",
        ["Modulo"] = "%",
        ["LessThan"] = "<",
        ["LessThanOrEqual"] = "<=",
        ["GreaterThan"] = ">",
        ["GreaterThanOrEqual"] = ">=",
        ["Equal"] = "==",
        ["NotEqual"] = "!=",
        ["AndAlso"] = "&&",
        ["OrElse"] = "||",
        ["Negate"] = "-",
        ["UnaryPlus"] = "+",
        ["Not"] = "!",
    };

    // What had been renamed in the code when names of their own came; all else is called after its class and its own name then.
    private static readonly Dictionary<string, string> Renamed = new(StringComparer.Ordinal)
    {
        ["SafeAreaLimits.HeatLeft"] = "safe-area-limits.power-derating-factor",
        ["Crossover.GainFarOut"] = "crossover.large-signal-gain",
        ["Crossover.DropOutside"] = "crossover.emitter-resistor-drop",
        ["ClassB.LoadCurrent"] = "class-b.rail-current",
        ["Programme.RmsCurrent"] = "music-dissipation.rms-current",
        ["Programme.SineHeat"] = "music-dissipation.sine-heat",
        ["Programme.NoiseHeat"] = "music-dissipation.noise-heat",
        ["Programme.PowerOf"] = "music-dissipation.power-of",
        ["Programme.CrestFactor"] = "music-dissipation.crest-factor",
        ["Programme.ClippedShare"] = "music-dissipation.clipped-share",
        ["SeenLoad.Magnitude"] = "load-with-emitter-resistor.magnitude",
        ["SeenLoad.Phase"] = "load-with-emitter-resistor.phase",
        ["SpreaderSplit.DriftInOne"] = "spreader-split.drift-with-single-multiplier",
        ["Runaway.CurrentOfGainOne"] = "runaway.unity-loop-gain-current",
        ["Runaway.NoReturn"] = "runaway.runaway-threshold-current",
        ["BiasDrift.Small"] = "bias-drift.idle-current-shift-linear",
        ["OutputCurrent.Programme"] = "output-current.music-dissipation",
    };

    /// <exception cref="JsonFault">It is not such a rule.</exception>
    public static JsonPart Expression(JsonPart part)
    {
        var of = part.Optional("of") is { } operands ? operands.NewList(operands.Items.Select(Expression)) : null;
        switch (part.Members.Keys.FirstOrDefault())
        {
            case "do":
                part.Allow("do", "by", "of");
                var sign = Signs.GetValueOrDefault(part["do"].Text) ?? throw part["do"].Fault($"\"{part["do"].Text}\" is not an operator of a rule.");
                return part.NewObject(("do", part["do"].NewText(sign)), ("of", of));
            case "convert":
                part.Allow("convert", "by", "of");
                return part.NewObject(("convert", part["convert"]), ("of", of));
            case ("call" or "read" or "new") and var word:
                part.Allow(word, "of");
                return part.NewObject(("call", part[word].NewText(Name(part[word].Text))), ("of", of));
            case "number" when part["kind"].Text == "Double":
                part.Allow("number", "kind");
                return part.NewObject(("number", part["number"]));
            default:
                return part;
        }
    }

    /// <summary>The present name of what a version-1 file calls by namespace, class and signature; itself when it was never one of ours.</summary>
    public static string Name(string old)
    {
        var name = old.IndexOf('(', StringComparison.Ordinal) is > 0 and var end ? old[..end] : old;
        if (!name.StartsWith("EightOhm.", StringComparison.Ordinal))
            return name;
        var words = name.Split('.')[2..];
        if (words is ["Literals", var literal] && literal.StartsWith("get_", StringComparison.Ordinal))
            return $"literal.{literal[4..]}";
        if (Renamed.TryGetValue(string.Join('.', words), out var renamed))
            return renamed;
        return words is ["Maths" or "Constants", var plain] ? Kebab(plain) : string.Join('.', words.Select(Kebab));
    }

    /// <summary>SlewRate → slew-rate; a run of capitals is one word.</summary>
    private static string Kebab(string name)
    {
        var kebab = new StringBuilder();
        for (var i = 0; i < name.Length; i++)
        {
            var starts = i > 0 && char.IsUpper(name[i]) && (!char.IsUpper(name[i - 1]) || (i + 1 < name.Length && char.IsLower(name[i + 1])));
            kebab.Append(starts ? "-" : "").Append(char.ToLowerInvariant(name[i]));
        }

        return kebab.ToString();
    }
}
