namespace EightOhm.Cli.Book;

/// <summary>The texts that the program carries: style, script, glossary.</summary>
internal static class Embedded
{
    public static string Text(string name)
    {
        using var stream = typeof(Embedded).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"This build of EightOhm lacks its part \"{name}\".");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
