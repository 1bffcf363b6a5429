using System.Text;
using System.Text.Json.Nodes;
using EightOhm.Cli.Notebooks;
using Microsoft.DotNet.Interactive.Events;

namespace EightOhm.Cli.Running;

/// <summary>What a cell prints. It arrives in pieces whose number depends on timing: neighbours become one output, and what is too much is left out with a word.</summary>
/// <param name="outputs">The cell's outputs.</param>
internal sealed class PrintedText(JsonArray outputs)
{
    /// <summary>The longest text that a cell may print, in characters.</summary>
    public const int Most = 1_000_000;

    private readonly StringBuilder text = new();
    private string name = "";
    private int after;
    private int room = Most;
    private bool isCut;

    public void Add(string stream, DisplayEvent piece)
    {
        // Another output in between parts the text.
        if (stream != name || outputs.Count != after)
            Flush();
        (name, after) = (stream, outputs.Count);
        foreach (var value in piece.FormattedValues)
        {
            text.Append(value.Value.AsSpan(0, Math.Min(room, value.Value.Length)));
            isCut |= value.Value.Length > room;
            room -= Math.Min(room, value.Value.Length);
        }
    }

    /// <summary>Tells that there is no more.</summary>
    public void End()
    {
        Flush();
        if (isCut)
            Put(outputs, "stderr", FormattableString.Invariant($"What this cell printed further is left out: it is more than {Most / 1_000_000} million characters.\n"));
    }

    public static void Put(JsonArray outputs, string stream, string text) =>
        outputs.Add((JsonNode)new JsonObject { ["name"] = stream, ["output_type"] = "stream", ["text"] = NbFormat.Lines(text) });

    private void Flush()
    {
        if (text.Length == 0)
            return;
        // Half of a pair is no text.
        if (char.IsHighSurrogate(text[^1]))
            text.Length--;
        var stream = new JsonObject { ["name"] = name, ["output_type"] = "stream", ["text"] = NbFormat.Lines(text.ToString()) };
        outputs.Insert(after, stream);
        text.Clear();
    }
}
