using System.Reflection;
using PublicApiGenerator;

namespace EightOhm.Tests.House;

/// <summary>A library's public members as text, a file for each namespace, kept in the folder Api of its test project: compared here, or rewritten when EIGHTOHM_WRITE_DOCS is 1.</summary>
internal static class ApprovedApi
{
    private const int MostShown = 20;

    public static void Check(Assembly library)
    {
        var project = library.GetName().Name!;
        var folder = Directory.CreateDirectory(Path.Combine(Docs.WrittenTable.Root(), "tests", $"{project}.Tests", "Api"));
        var present = Files(library);
        var approved = folder.EnumerateFiles("*.txt").ToDictionary(f => f.Name, f => File.ReadAllText(f.FullName).ReplaceLineEndings("\n"), StringComparer.Ordinal);
        if (Environment.GetEnvironmentVariable("EIGHTOHM_WRITE_DOCS") == "1")
        {
            foreach (var gone in approved.Keys.Except(present.Keys))
                File.Delete(Path.Combine(folder.FullName, gone));
            foreach (var (name, text) in present.Where(p => approved.GetValueOrDefault(p.Key) != p.Value))
                File.WriteAllText(Path.Combine(folder.FullName, name), text);
            return;
        }

        var moved = Moved(approved, present);
        Assert.True(moved.Count == 0, $"The public members of {project} are not those approved in {Path.GetFileName(folder.Parent!.FullName)}/Api: {moved.Count} lines differ (- approved, + in the code). "
            + $"If that is meant, EIGHTOHM_WRITE_DOCS=1 dotnet test writes them.\n{string.Join("\n", moved.Take(MostShown))}{(moved.Count > MostShown ? "\n…" : "")}");
    }

    /// <summary>The lines that only one side has, by file; a line that stands there twice on one side and once on the other counts.</summary>
    public static IReadOnlyList<string> Moved(IReadOnlyDictionary<string, string> approved, IReadOnlyDictionary<string, string> present) =>
    [
        .. approved.Keys.Union(present.Keys).Order(StringComparer.Ordinal).SelectMany(file =>
        {
            var was = Lines(approved.GetValueOrDefault(file));
            var now = Lines(present.GetValueOrDefault(file));
            return was.Where(l => l.Value > now.GetValueOrDefault(l.Key)).Select(l => $"{file}: - {l.Key}")
                .Concat(now.Where(l => l.Value > was.GetValueOrDefault(l.Key)).Select(l => $"{file}: + {l.Key}"));
        }),
    ];

    private static Dictionary<string, int> Lines(string? text) =>
        (text ?? "").Split('\n').Select(l => l.Trim()).Where(l => l.Length > 0).GroupBy(l => l, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.Count(), StringComparer.Ordinal);

    // A file for each namespace: whoever changes one room meets only those who change the same.
    private static Dictionary<string, string> Files(Assembly library)
    {
        // What our own attributes say, sources and symbols, breaks nobody's code; names in records have a list of their own.
        var ours = new[] { library, typeof(EightOhm.Quantities.QuantityKinds).Assembly }.SelectMany(a => a.GetExportedTypes()).Where(t => t.IsSubclassOf(typeof(Attribute))).Select(t => t.FullName!);
        var options = new ApiGeneratorOptions { IncludeAssemblyAttributes = false, ExcludeAttributes = [.. ours.Distinct()] };
        return library.GetExportedTypes().Where(t => t.DeclaringType is null).GroupBy(t => t.Namespace ?? "global", StringComparer.Ordinal)
            .ToDictionary(g => g.Key + ".txt", g => ApiGenerator.GeneratePublicApi([.. g], options).ReplaceLineEndings("\n").TrimEnd() + "\n", StringComparer.Ordinal);
    }
}
