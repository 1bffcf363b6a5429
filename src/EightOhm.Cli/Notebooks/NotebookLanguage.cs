namespace EightOhm.Cli.Notebooks;

/// <summary>The names of languages in notebook files.</summary>
internal static class NotebookLanguage
{
    public static bool IsCSharp(string language) =>
        language.Equals("C#", StringComparison.OrdinalIgnoreCase) || language.Equals("csharp", StringComparison.OrdinalIgnoreCase);
}
