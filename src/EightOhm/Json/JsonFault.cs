namespace EightOhm.Json;

/// <summary>A fault found while reading JSON, before the file's name is known: the line, the path inside the file, and a sentence.</summary>
internal sealed class JsonFault(int line, string place, string reason, Exception? inner = null) : Exception(reason, inner)
{
    /// <summary>The line, counted from 1.</summary>
    public int Line { get; } = line;

    /// <summary>The path inside the file, such as safeArea.lines[0]; empty for the whole.</summary>
    public string Place { get; } = place;
}
