using System.Text.Json.Nodes;
using EightOhm.Cells;

namespace EightOhm.Cli.Notebooks;

/// <summary>One cell of a notebook file; a view of its JSON.</summary>
/// <param name="json">The cell's object, edited in place when outputs are set.</param>
/// <param name="number">Place in the file, from 1, all kinds of cell counted.</param>
internal sealed class NotebookCell(JsonObject json, int number)
{
    public int Number { get; } = number;

    /// <summary>The cell's object in its file.</summary>
    public JsonObject Json => json;

    public bool IsCode => Kind == "code";

    public bool IsMarkdown => Kind == "markdown";

    public string Source { get; } = NbFormat.Text(json["source"]);

    public JsonArray Outputs => json["outputs"] as JsonArray ?? [];

    private string Kind { get; } = NbFormat.Text(json["cell_type"]);

    /// <summary>The cell's language where the file names one for this cell, else null.</summary>
    public string? Language =>
        ((Metadata?["polyglot_notebook"] as JsonObject)?["kernelName"] ?? (Metadata?["dotnet_interactive"] as JsonObject)?["language"]) is { } name
            ? NbFormat.Text(name)
            : null;

    /// <summary>Whether the cell carries a tag, as notebook programs write them.</summary>
    public bool HasTag(string tag) => Metadata?["tags"] is JsonArray tags && tags.Any(t => NbFormat.Text(t) == tag);

    /// <summary>A picture that the cell carries, as a data URI; null when it carries none of that name.</summary>
    public string? Attachment(string name) =>
        ((json["attachments"] as JsonObject)?[name] as JsonObject)?.FirstOrDefault() is { Value: { } data } picture
            ? $"data:{picture.Key};base64,{NbFormat.Text(data).ReplaceLineEndings("")}"
            : null;

    private JsonObject? Metadata => json["metadata"] as JsonObject;

    public void SetOutputs(int executionCount, JsonArray outputs)
    {
        json["execution_count"] = executionCount;
        json["outputs"] = outputs;
    }

    /// <summary>Removes what an earlier run left, so that a cell that shows nothing now shows nothing.</summary>
    public void ClearOutputs()
    {
        json["execution_count"] = null;
        json["outputs"] = new JsonArray();
    }
}
