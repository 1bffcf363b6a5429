using System.Text.RegularExpressions;

namespace EightOhm.Record;

/// <summary>What an entry may be called: a symbol that can also be the parameter of a rule.</summary>
internal static partial class EntryNames
{
    public const string Rule = "a symbol is of letters, digits and underscores and does not start with a digit, such as V_rms.";

    public static bool IsGood(string name) => Symbol().IsMatch(name) && name.IsNormalized();

    /// <summary>The name as the compiler would write it (the ohm sign as a Greek letter).</summary>
    /// <exception cref="RecordException">It is not a symbol.</exception>
    public static string Check(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        var normal = name.Normalize();
        return IsGood(normal) ? normal : throw new RecordException($"\"{name}\" cannot be the name of an entry: {Rule}");
    }

    [GeneratedRegex(@"^[\p{L}_][\p{L}\p{Nd}_]*\z")]
    private static partial Regex Symbol();
}
