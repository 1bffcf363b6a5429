using System.Text.Json;
using System.Text.Json.Nodes;
using EightOhm.Cells;

namespace EightOhm.Cli.Notebooks;

/// <summary>A notebook read from disk. Outputs are replaced in its JSON and everything else is kept as it was.</summary>
/// <remarks>
/// The host's own document reader is not used: measured on 1.0.0-beta.26120.1 it drops attachments and turns raw cells into code,
/// so that saving through it would damage a notebook.
/// </remarks>
internal sealed class NotebookFile
{
    private readonly JsonObject json;

    private NotebookFile(string path, string folder, byte[] read, JsonObject json, IReadOnlyList<NotebookCell> cells)
    {
        Path = path;
        Folder = folder;
        Read = read;
        this.json = json;
        Cells = cells;
    }

    // Some editors put it before the text; JSON has no place for it.
    private static ReadOnlySpan<byte> ByteOrderMark => [0xEF, 0xBB, 0xBF];

    // Else a key that stands twice is found only when its object is first looked into, by whoever that is.
    private static JsonDocumentOptions OneOfEachKey => new() { AllowDuplicateProperties = false };

    /// <summary>Full path of the file.</summary>
    public string Path { get; }

    /// <summary>The name of its folder within the book; empty where the run was asked for its folder itself.</summary>
    public string Folder { get; }

    /// <summary>The file's bytes as they were read.</summary>
    public byte[] Read { get; }

    public string FileName => System.IO.Path.GetFileName(Path);

    /// <summary>The file's name without its ending, which names the chapter in messages and pages.</summary>
    public string Name => System.IO.Path.GetFileNameWithoutExtension(Path);

    /// <summary>The folder in the book and the name: "tern-100/05-supply".</summary>
    public string Label => Folder.Length > 0 ? $"{Folder}/{Name}" : Name;

    /// <summary>The same with the file's ending, as the console names it.</summary>
    public string FileLabel => Folder.Length > 0 ? $"{Folder}/{FileName}" : FileName;

    public IReadOnlyList<NotebookCell> Cells { get; }

    /// <summary>The notebook's language where the file names one, else null.</summary>
    public string? Language
    {
        get
        {
            var metadata = json["metadata"] as JsonObject;
            var kernel = metadata?["kernelspec"] as JsonObject;
            var names = new[] { kernel?["language"], (metadata?["language_info"] as JsonObject)?["name"] }.Select(NbFormat.Text).Where(n => n.Length > 0);
            // Older files name the kernel alone.
            return names.FirstOrDefault() ?? (NbFormat.Text(kernel?["name"]).StartsWith("python", StringComparison.OrdinalIgnoreCase) ? "Python" : null);
        }
    }

    /// <summary>Whether it is in C#, or says nothing of its language.</summary>
    public bool IsCSharp => Language is not { } language || NotebookLanguage.IsCSharp(language);

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

    /// <summary>The same file with other cells, and all else that it holds.</summary>
    /// <param name="cells">The cells, each of no other file; they are not copied, so that outputs set later stand in both.</param>
    /// <param name="read">What stands on the disk.</param>
    public NotebookFile With(IReadOnlyList<JsonObject> cells, byte[] read)
    {
        var root = new JsonObject();
        foreach (var (key, value) in json.Where(p => p.Key != "cells"))
            root[key] = value?.DeepClone();
        foreach (var cell in cells)
            (cell.Parent as JsonArray)?.Remove(cell);
        // Where it stood: a saved notebook differs only where it was changed.
        var at = json.Select(p => p.Key).TakeWhile(k => k != "cells").Count();
        root.Insert(Math.Min(at, root.Count), "cells", new JsonArray([.. cells]));
        return new NotebookFile(Path, Folder, read, root, [.. cells.Select((c, i) => new NotebookCell(c, i + 1))]);
    }

    /// <summary>Whether the file's cells bear names, as they do from minor version 5 on.</summary>
    public bool NamesCells => json["nbformat_minor"] is JsonValue minor && minor.TryGetValue<int>(out var number) && number >= 5;

    /// <param name="path">The file.</param>
    /// <param name="folder">The name of its folder within the book, or empty.</param>
    public static NotebookFile Open(string path, string folder = "")
    {
        var name = System.IO.Path.GetFileName(path);
        try
        {
            var bytes = OrdinaryFile.Read(path);
            if (JsonNode.Parse(bytes.AsSpan(bytes.AsSpan().StartsWith(ByteOrderMark) ? ByteOrderMark.Length : 0), documentOptions: OneOfEachKey) is not JsonObject json || json["cells"] is not JsonArray array)
                throw RunFailure.BadInput($"{name} is JSON but not a notebook: it has no list of \"cells\". A notebook (.ipynb, nbformat 4) is needed.");
            if (json["nbformat"] is not JsonValue format || !format.TryGetValue<int>(out var major) || major != 4)
                throw RunFailure.BadInput($"{name} is of nbformat {json["nbformat"]?.ToJsonString() ?? "(none)"}; nbformat 4 is needed. Open and save it in a notebook program.");

            var cells = array.Select((cell, i) => cell is JsonObject o
                ? new NotebookCell(o, i + 1)
                : throw RunFailure.BadInput($"{name}, cell {i + 1} is not a JSON object. Open and save the notebook in a notebook program."));
            return new NotebookFile(path, folder, bytes, json, [.. cells]);
        }
        catch (JsonException e) when (e.Message.Contains("maximum configured depth", StringComparison.Ordinal))
        {
            throw RunFailure.BadInput($"{name}, line {e.LineNumber + 1}: lists and objects stand deeper in each other than in any notebook (.ipynb, nbformat 4).");
        }
        catch (JsonException e) when (e.LineNumber is null)
        {
            throw RunFailure.BadInput($"{name} is not sound JSON: an object holds the same key twice ({e.Message.TrimEnd('.')}). Open and save the notebook in a notebook program.");
        }
        catch (JsonException e)
        {
            throw RunFailure.BadInput($"{name} is not JSON (line {e.LineNumber + 1}): a notebook (.ipynb, nbformat 4) is needed.");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw RunFailure.BadInput($"{name} cannot be read: {e.Message}");
        }
    }
}
