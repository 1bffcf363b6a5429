using System.Reflection;
using System.Text.RegularExpressions;

namespace EightOhm.Explaining;

/// <summary>Types and figures in words, for captions and rows: <c>DualSteadySupply</c> is a dual steady supply.</summary>
public static partial class SpokenName
{
    // What the trade writes in capitals or as a symbol, whatever the code makes of it.
    private static readonly Dictionary<string, string> Written = new(StringComparer.Ordinal) { ["Thd"] = "THD", ["Snr"] = "SNR", ["Vbe"] = "V_BE" };

    /// <summary>A type or a property in words: what it is said to be called, else its name taken apart.</summary>
    /// <param name="member">The type or property.</param>
    /// <returns>Words in lower case; capitals that stand alone or together keep their case: "class AB".</returns>
    public static string Of(MemberInfo member)
    {
        ArgumentNullException.ThrowIfNull(member);
        return member.GetCustomAttribute<CalledAttribute>()?.Words ?? Apart(member.Name);
    }

    // "RmsVoltage" as "rms voltage", "TimeTo90Percent" as "time to 90 percent".
    private static string Apart(string name) =>
        string.Join(' ', Humps().Split(Plain(name)).Select(w => w.All(char.IsUpper) ? w : Written.GetValueOrDefault(w, w.ToLowerInvariant())));

    // A generic type's number of parameters is no part of its name.
    private static string Plain(string name) => name.IndexOf('`', StringComparison.Ordinal) is > 0 and var at ? name[..at] : name;

    [GeneratedRegex("(?<=[a-z0-9])(?=[A-Z])|(?<=[A-Z])(?=[A-Z][a-z])|(?<=[a-z])(?=[0-9])")]
    private static partial Regex Humps();
}
