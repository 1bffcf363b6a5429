using System.Text;
using System.Text.Json.Nodes;

namespace EightOhm.Cells.Running;

/// <summary>What a cell prints. It arrives in pieces whose number depends on timing: neighbours become one output, and what is too much is left out with a word.</summary>
/// <param name="outputs">The cell's outputs.</param>
internal sealed class PrintedText(JsonArray outputs)
{
    /// <summary>The longest text that a cell may print, in characters.</summary>
    public const int Most = 1_000_000;

    private readonly StringBuilder text = new();
    private JsonObject? open;
    private string name = "";
    private int room = Most;
    private bool isCut;

    public void Add(string stream, ReadOnlySpan<char> piece)
    {
        if (stream != name)
            Flush();
        name = stream;
        text.Append(piece[..Math.Min(room, piece.Length)]);
        isCut |= piece.Length > room;
        room -= Math.Min(room, piece.Length);
    }

    /// <summary>Puts what was printed among the outputs. Text that follows on it without another output between becomes part of it.</summary>
    public void Flush()
    {
        if (text.Length == 0)
            return;
        // Half of a pair is no text yet.
        var half = char.IsHighSurrogate(text[^1]) ? 1 : 0;
        var whole = text.ToString(0, text.Length - half);
        text.Remove(0, whole.Length);
        if (open is not null && outputs.Count > 0 && outputs[^1] == open && NbFormat.Text(open["name"]) == name)
            whole = NbFormat.Text(open["text"]) + whole;
        else
            outputs.Add((JsonNode)(open = new JsonObject { ["name"] = name, ["output_type"] = "stream" }));
        open["text"] = NbFormat.Lines(whole);
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
}
