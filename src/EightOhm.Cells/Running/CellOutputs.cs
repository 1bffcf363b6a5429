using System.Text.Json.Nodes;

namespace EightOhm.Cells.Running;

/// <summary>What a cell shows and prints, as a notebook file holds it, up to a length.</summary>
internal sealed class CellOutputs
{
    /// <summary>The longest text that a cell's outputs may have together, in characters. A figure has some hundred thousand.</summary>
    public const int Most = 8_000_000;

    private readonly JsonArray outputs = [];
    private readonly PrintedText printed;
    private int room = Most;
    private bool hasEnded;

    public CellOutputs() => printed = new(outputs);

    public JsonObject? Show(IEnumerable<KeyValuePair<string, string>> forms) => Add(forms, data => new JsonObject
    {
        ["data"] = data,
        ["metadata"] = new JsonObject(),
        ["output_type"] = "display_data",
    });

    public void Return(IEnumerable<KeyValuePair<string, string>> forms, int executionCount) => Add(forms, data => new JsonObject
    {
        ["data"] = data,
        ["execution_count"] = executionCount,
        ["metadata"] = new JsonObject(),
        ["output_type"] = "execute_result",
    });

    public void Print(string stream, ReadOnlySpan<char> text)
    {
        if (!hasEnded)
            printed.Add(stream, text);
    }

    public JsonArray SoFar()
    {
        printed.Flush();
        return (JsonArray)outputs.DeepClone();
    }

    public JsonArray End()
    {
        hasEnded = true;
        printed.End();
        if (room < 0)
            PrintedText.Put(outputs, "stderr", FormattableString.Invariant($"What this cell showed further is left out: it is more than {Most / 1_000_000} million characters.\n"));
        return outputs;
    }

    private JsonObject? Add(IEnumerable<KeyValuePair<string, string>> forms, Func<JsonObject, JsonObject> output)
    {
        var shown = forms.ToList();
        if (hasEnded || (room -= shown.Sum(f => f.Value.Length)) < 0)
            return null;
        printed.Flush();
        var added = output(NbFormat.Bundle(shown));
        outputs.Add((JsonNode)added);
        return added;
    }
}
