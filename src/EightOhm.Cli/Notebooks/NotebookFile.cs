using System.Text.Json;
using System.Text.Json.Nodes;

namespace EightOhm.Cli.Notebooks;

/// <summary>A notebook read from disk. Outputs are replaced in its JSON and everything else is kept as it was.</summary>
/// <remarks>
/// The host's own document reader is not used: measured on 1.0.0-beta.26120.1 it drops attachments and turns raw cells into code,
/// so that saving through it would damage a notebook.
/// </remarks>
internal sealed class NotebookFile
{
    private readonly JsonObject json;

    private NotebookFile(string path, byte[] read, JsonObject json, IReadOnlyList<NotebookCell> cells)
    {
        Path = path;
        Read = read;
        this.json = json;
        Cells = cells;
    }

    // Some editors put it before the text; JSON has no place for it.
    private static ReadOnlySpan<byte> ByteOrderMark => [0xEF, 0xBB, 0xBF];

    /// <summary>Full path of the file.</summary>
    public string Path { get; }

    /// <summary>The file's bytes as they were read.</summary>
    public byte[] Read { get; }

    public string FileName => System.IO.Path.GetFileName(Path);

    /// <summary>The file's name without its ending, which names the chapter in messages and pages.</summary>
    public string Name => System.IO.Path.GetFileNameWithoutExtension(Path);

    public IReadOnlyList<NotebookCell> Cells { get; }

    /// <summary>The notebook's language where the file names one, else null.</summary>
    public string? Language => json["metadata"]?["kernelspec"]?["language"] is { } name ? NbFormat.Text(name) : null;

    /// <summary>What the notebook says of the run that made its outputs; null where it says nothing.</summary>
    public NotebookStamp? Stamp => json["metadata"] is JsonObject metadata ? NotebookStamp.Read(metadata) : null;

    /// <summary>Says of which run the outputs are, or with null that they are of no run to be relied on. A notebook without code says nothing.</summary>
    public void SetStamp(NotebookStamp? stamp)
    {
        var metadata = json["metadata"] as JsonObject;
        if (stamp is null || !Cells.Any(c => c.IsCode))
            metadata?.Remove(NotebookStamp.Key);
        else if (metadata is not null || json["metadata"] is null)
            stamp.Write(metadata ?? (JsonObject)(json["metadata"] = new JsonObject()));
    }

    public byte[] ToBytes() => NbFormat.ToBytes(json);

    public static NotebookFile Open(string path)
    {
        var name = System.IO.Path.GetFileName(path);
        try
        {
            var bytes = File.ReadAllBytes(path);
            if (JsonNode.Parse(bytes.AsSpan(bytes.AsSpan().StartsWith(ByteOrderMark) ? ByteOrderMark.Length : 0)) is not JsonObject json || json["cells"] is not JsonArray array)
                throw RunFailure.BadInput($"{name} is JSON but not a notebook: it has no list of \"cells\". A notebook (.ipynb, nbformat 4) is needed.");
            if (json["nbformat"] is not JsonValue format || !format.TryGetValue<int>(out var major) || major != 4)
                throw RunFailure.BadInput($"{name} is of nbformat {json["nbformat"]?.ToJsonString() ?? "(none)"}; nbformat 4 is needed. Open and save it in a notebook program.");

            var cells = array.Select((cell, i) => cell is JsonObject o
                ? new NotebookCell(o, i + 1)
                : throw RunFailure.BadInput($"{name}, cell {i + 1} is not a JSON object. Open and save the notebook in a notebook program."));
            return new NotebookFile(path, bytes, json, [.. cells]);
        }
        catch (JsonException e)
        {
            throw RunFailure.BadInput($"{name} is not JSON (line {e.LineNumber + 1}): a notebook (.ipynb, nbformat 4) is needed.");
        }
        catch (ArgumentException e)
        {
            // The parser finds a key that stands twice only when the object is first looked into.
            throw RunFailure.BadInput($"{name} is not sound JSON: {e.Message}");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw RunFailure.BadInput($"{name} cannot be read: {e.Message}");
        }
    }
}
