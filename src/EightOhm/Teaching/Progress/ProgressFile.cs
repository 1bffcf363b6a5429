using System.Text;
using System.Text.Json;
using EightOhm.Record;

namespace EightOhm.Teaching;

/// <summary>The small file beside the notebooks that keeps which exercises were tried and which are right.</summary>
/// <remarks>Only a check with an answer writes it; reading, blank checks, hints and solutions do not. It holds no name and no time.</remarks>
internal sealed class ProgressFile(string path, IFileLayer files)
{
    public const string Name = "course-progress.json";

    private const int Version = 1;

    /// <summary>That of the folder in which the notebook works.</summary>
    public static ProgressFile Here => In(RecordFolder.Progress);

    /// <summary>That of another folder.</summary>
    public static ProgressFile In(string folder) => new(Path.Combine(folder, Name), new DiskFiles());

    /// <summary>What is kept, for reading only: a damaged file is left and said.</summary>
    public CourseProgress Read()
    {
        try
        {
            var (kept, damaged) = Load();
            return CourseProgress.Of(kept, damaged is null ? "" : $"{Name} cannot be read ({damaged}); it is set aside at the next answer.");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return CourseProgress.Of(new SortedDictionary<string, ExerciseProgress>(), $"{Name} cannot be read: {e.Message}");
        }
    }

    /// <summary>Adds an answer; a sentence where something is to be said, empty otherwise. Never throws for the disk: an answer is judged all the same.</summary>
    /// <param name="id">The exercise.</param>
    /// <param name="right">Whether the answer is right.</param>
    /// <param name="aided">Whether the solution was looked at before.</param>
    public string Keep(string id, bool right, bool aided)
    {
        try
        {
            var (kept, damaged) = Load();
            var note = damaged is null ? "" : SetAside();
            var before = kept.GetValueOrDefault(id) ?? new ExerciseProgress(0, Right: false, First: false);
            if (before.Right)
                return note;
            kept[id] = new ExerciseProgress(before.Tries + 1, right, right && before.Tries == 0 && !aided);
            files.Discard(path + ".part");
            files.Write(path + ".part", Bytes(kept));
            files.Rename(path + ".part", path);
            return note;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return $"The progress could not be kept: {e.Message}";
        }
    }

    private (SortedDictionary<string, ExerciseProgress> Kept, string? Damaged) Load()
    {
        var kept = new SortedDictionary<string, ExerciseProgress>(StringComparer.Ordinal);
        if (files.Read(path) is not { } bytes)
            return (kept, null);
        try
        {
            using var json = JsonDocument.Parse(bytes);
            var version = json.RootElement.GetProperty("version").GetInt32();
            if (version != Version)
                return (kept, FormattableString.Invariant($"it is of version {version}, this is version {Version}"));
            foreach (var entry in json.RootElement.GetProperty("exercises").EnumerateObject())
            {
                var tries = entry.Value.GetProperty("tries").GetInt32();
                if (!ExerciseId.Is(entry.Name) || tries < 1)
                    return (new(), $"'{entry.Name}' is no exercise that was tried");
                kept[entry.Name] = new ExerciseProgress(tries, entry.Value.GetProperty("right").GetBoolean(), entry.Value.GetProperty("first").GetBoolean());
            }

            return (kept, null);
        }
        catch (JsonException)
        {
            return (new(), "it is not JSON");
        }
        catch (Exception e) when (e is KeyNotFoundException or InvalidOperationException or FormatException)
        {
            return (new(), "something is missing in it or of another kind");
        }
    }

    // Beside it, under a name that is free, so that nothing is lost.
    private string SetAside()
    {
        for (var n = 1; ; n++)
        {
            var aside = Path.Combine(Path.GetDirectoryName(path)!, n == 1 ? "course-progress.damaged.json" : FormattableString.Invariant($"course-progress.damaged-{n}.json"));
            if (files.Read(aside) is not null)
                continue;
            files.Rename(path, aside);
            return $"{Name} could not be read; it is now {Path.GetFileName(aside)}, and a new one was begun.";
        }
    }

    private static byte[] Bytes(SortedDictionary<string, ExerciseProgress> kept)
    {
        var text = new StringBuilder();
        text.Append(FormattableString.Invariant($"{{\n  \"version\": {Version},\n  \"exercises\": {{\n"));
        text.AppendJoin(",\n", kept.Select(k => FormattableString.Invariant(
            $"    \"{k.Key}\": {{ \"tries\": {k.Value.Tries}, \"right\": {Word(k.Value.Right)}, \"first\": {Word(k.Value.First)} }}")));
        return Encoding.UTF8.GetBytes(text.Append("\n  }\n}\n").ToString());
    }

    private static string Word(bool yes) => yes ? "true" : "false";
}

/// <summary>What is kept of an exercise.</summary>
internal sealed record ExerciseProgress(int Tries, bool Right, bool First);
