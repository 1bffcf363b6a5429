using System.Text.Json.Nodes;
using EightOhm.Cli.Notebooks;
using Microsoft.DotNet.Interactive.Events;

namespace EightOhm.Cli.Running;

/// <summary>Turns what the host reports into a notebook's outputs. One for each run of a notebook: a later cell may update an earlier display.</summary>
internal sealed class CellOutputs
{
    /// <summary>The longest text that a cell's outputs may have together, in characters. A figure has some hundred thousand.</summary>
    public const int Most = 8_000_000;

    private readonly Dictionary<string, JsonObject> displays = new(StringComparer.Ordinal);

    public JsonArray Collect(IEnumerable<KernelEvent> events, int executionCount)
    {
        var outputs = new JsonArray();
        var printed = new PrintedText(outputs);
        var room = Most;
        foreach (var e in events)
        {
            if (e is DisplayEvent shownNow and not (StandardOutputValueProduced or StandardErrorValueProduced or ErrorProduced)
                && (room -= shownNow.FormattedValues.Sum(v => v.Value.Length)) < 0)
            {
                continue;
            }

            // All of these derive from DisplayEvent: the special ones come first.
            switch (e)
            {
                case ErrorProduced:
                    break;
                case StandardOutputValueProduced text:
                    printed.Add("stdout", text);
                    break;
                case StandardErrorValueProduced text:
                    printed.Add("stderr", text);
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

        printed.End();
        // What was shown for a moment and emptied again leaves nothing behind.
        outputs.RemoveAll(o => o!["data"] is JsonObject data && data.All(v => v.Value is JsonArray { Count: 0 }));
        if (room < 0)
            PrintedText.Put(outputs, "stderr", FormattableString.Invariant($"What this cell showed further is left out: it is more than {Most / 1_000_000} million characters.\n"));
        return outputs;
    }

    private static JsonObject Data(DisplayEvent e) =>
        NbFormat.Bundle(e.FormattedValues.DistinctBy(v => v.MimeType).Select(v => KeyValuePair.Create(v.MimeType, v.Value)));
}
