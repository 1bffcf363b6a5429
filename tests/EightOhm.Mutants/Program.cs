// How well a room's own tests and the published checks notice a wrong letter in it: dotnet run --project tests/EightOhm.Mutants -- ROOM [COUNT] [SEED]
// Not a test: minutes for a room. The scores are kept in docs/mutants.md.
using System.Diagnostics;
using System.Globalization;
using EightOhm.Mutants;

var room = args.ElementAtOrDefault(0) ?? throw new ArgumentException("Which room? The name of a folder in src/EightOhm, such as Supply.");
var count = int.Parse(args.ElementAtOrDefault(1) ?? "40", CultureInfo.InvariantCulture);
var seed = int.Parse(args.ElementAtOrDefault(2) ?? "8", CultureInfo.InvariantCulture);

var root = AppContext.BaseDirectory;
while (!File.Exists(Path.Combine(root, "EightOhm.slnx")))
    root = Path.GetDirectoryName(root) ?? throw new InvalidOperationException("No EightOhm.slnx above this program.");

// What it changes and what should notice were built as this program was.
var configuration = Path.GetFileName(Path.TrimEndingDirectorySeparator(AppContext.BaseDirectory));

// Below the repository, where the tests look for its cards and tables.
var work = Path.Combine(root, "artifacts", $"mutants-{Environment.ProcessId}");
string own = Path.Combine(work, "EightOhm.Tests"), published = Path.Combine(work, "EightOhm.Published");
foreach (var tests in new[] { own, published })
    Copy(Path.Combine(root, "artifacts", "bin", Path.GetFileName(tests), configuration), tests);
try
{
    var library = new Library(root, configuration, own);
    Write(library, null);
    if (Fail(out var why))
        throw new InvalidOperationException($"The tests of {room} fail without any mutant: {why}");

    var all = library.Mutants(room).ToArray();
    new Random(seed).Shuffle(all);
    int tried = 0, caught = 0;
    foreach (var mutant in all.TakeWhile(_ => tried < count))
    {
        if (!Write(library, mutant))
            continue;
        tried++;
        if (Fail(out _))
            caught++;
        else
            Console.WriteLine($"survives: {Path.GetRelativePath(root, mutant.File)}:{mutant.Line}: {mutant.Was} -> {mutant.Is}");
    }
    Console.WriteLine($"{room}: {caught} of {tried} caught by the room's own tests and the published checks (of {all.Length} that could be tried, seed {seed})");
}
finally
{
    Directory.Delete(work, recursive: true);
}

bool Write(Library library, Mutant? mutant)
{
    var written = Path.Combine(own, "EightOhm.dll");
    if (!library.Write(mutant, written))
        return false;
    File.Copy(written, Path.Combine(published, "EightOhm.dll"), overwrite: true);
    return true;
}

bool Fail(out string why) => Fails(own, $"--TestCaseFilter:FullyQualifiedName~EightOhm.Tests.{room}", out why) || Fails(published, "--TestCaseFilter:FullyQualifiedName~Published", out why);

// A mutant that never ends is caught too: whoever runs the tests would notice.
static bool Fails(string tests, string which, out string why)
{
    var start = new ProcessStartInfo("dotnet", ["vstest", Path.Combine(tests, Path.GetFileName(tests) + ".dll"), which])
    {
        RedirectStandardOutput = true,
        RedirectStandardError = true,
        WorkingDirectory = tests,
    };
    using var run = Process.Start(start)!;
    var output = run.StandardOutput.ReadToEndAsync();
    var errors = run.StandardError.ReadToEndAsync();
    if (!run.WaitForExit(TimeSpan.FromSeconds(180)))
    {
        run.Kill(entireProcessTree: true);
        why = "no end within three minutes";
        return true;
    }
    why = output.Result + errors.Result;
    return run.ExitCode != 0;
}

static void Copy(string from, string to)
{
    Directory.CreateDirectory(to);
    foreach (var file in Directory.EnumerateFiles(from))
        File.Copy(file, Path.Combine(to, Path.GetFileName(file)));
    foreach (var folder in Directory.EnumerateDirectories(from))
        Copy(folder, Path.Combine(to, Path.GetFileName(folder)));
}
