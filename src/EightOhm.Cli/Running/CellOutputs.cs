using System.Text.Json.Nodes;
using EightOhm.Cli.Notebooks;
using Microsoft.DotNet.Interactive.Events;

namespace EightOhm.Cli.Running;

/// <summary>Turns what the host reports into a notebook's outputs. One for each run of a notebook: a later cell may update an earlier display.</summary>
internal sealed class CellOutputs
{
    private readonly Dictionary<string, JsonObject> displays = new(StringComparer.Ordinal);

    public JsonArray Collect(IEnumerable<KernelEvent> events, int executionCount)
    {
        var outputs = new JsonArray();
        foreach (var e in events)
        {
            // All of these derive from DisplayEvent: the special ones come first.
            switch (e)
            {
                case ErrorProduced:
                    break;
                case StandardOutputValueProduced text:
                    AddStream(outputs, "stdout", text);
                    break;
                case StandardErrorValueProduced text:
                    AddStream(outputs, "stderr", text);
                    break;
                case DisplayedValueUpdated update:
                    // As in a notebook program, an update of nothing shows nothing.
                    if (update.ValueId is { } id && displays.TryGetValue(id, out var shown))
                        shown["data"] = Data(update);
                    break;
                case ReturnValueProduced result when result.FormattedValues.Count > 0:
                    outputs.Add(new JsonObject
                    {
                        ["data"] = Data(result),
                        ["execution_count"] = executionCount,
                        ["metadata"] = new JsonObject(),
                        ["output_type"] = "execute_result",
                    });
                    break;
                case DisplayEvent display when display.FormattedValues.Count > 0:
                    var output = new JsonObject
                    {
                        ["data"] = Data(display),
                        ["metadata"] = new JsonObject(),
                        ["output_type"] = "display_data",
                    };
                    outputs.Add(output);
                    if (display.ValueId is { } valueId)
                        displays[valueId] = output;
                    break;
            }
        }

        // What was shown for a moment and emptied again leaves nothing behind.
        outputs.RemoveAll(o => o!["data"] is JsonObject data && data.All(v => v.Value is JsonArray { Count: 0 }));
        foreach (var stream in outputs.OfType<JsonObject>().Where(o => o["text"] is JsonValue))
            stream["text"] = NbFormat.Lines(NbFormat.Text(stream["text"]));

        return outputs;
    }

    /// <summary>Text arrives in pieces whose number depends on timing: neighbours become one output.</summary>
    private static void AddStream(JsonArray outputs, string name, DisplayEvent piece)
    {
        var text = string.Concat(piece.FormattedValues.Select(v => v.Value));
        if (outputs is [.., JsonObject last] && NbFormat.Text(last["name"]) == name)
        {
            last["text"] = NbFormat.Text(last["text"]) + text;
            return;
        }

        outputs.Add(new JsonObject { ["name"] = name, ["output_type"] = "stream", ["text"] = text });
    }

    private static JsonObject Data(DisplayEvent e) =>
        NbFormat.Bundle(e.FormattedValues.DistinctBy(v => v.MimeType).Select(v => KeyValuePair.Create(v.MimeType, v.Value)));
}
