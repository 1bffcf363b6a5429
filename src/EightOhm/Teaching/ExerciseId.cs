using System.Text.RegularExpressions;

namespace EightOhm.Teaching;

/// <summary>The name of an exercise: two digits of the chapter, a dash, words with dashes.</summary>
internal static partial class ExerciseId
{
    public static string Checked(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        return Form().IsMatch(id) ? id : throw new ArgumentException($"'{id}' is not a name of an exercise; write the chapter's two digits, a dash and words of small letters, such as 05-ripple.", nameof(id));
    }

    public static bool Is(string id) => Form().IsMatch(id);

    public static string Chapter(string id) => id[..2];

    [GeneratedRegex(@"^\d\d-[a-z0-9]+(-[a-z0-9]+)*\z")]
    private static partial Regex Form();
}
