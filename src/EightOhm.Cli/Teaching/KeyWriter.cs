using EightOhm.Cli.Output;
using EightOhm.Teaching;
using Spectre.Console;

namespace EightOhm.Cli.Teaching;

/// <summary>Writes the key and the questions of a seed, each a page that stands alone.</summary>
internal sealed class KeyWriter(IAnsiConsole console)
{
    public int Run(KeyRequest request)
    {
        if (SaveRecovery.Unfinished(request.Folder) is { } unfinished)
            console.WriteLine(unfinished);
        var key = TeacherKey.Of(request.Seed);
        foreach (var (name, page) in new[] { ("key", KeyPage.Of(key)), ("questions", KeyPage.Questions(key)) })
        {
            var file = Path.Combine(request.Folder, FormattableString.Invariant($"{name}-seed-{key.Seed}.html"));
            OwnFile.Write(file, KeyPage.Mark, page);
            console.WriteLine($"Written: {file}");
        }

        return ExitCode.Done;
    }
}
