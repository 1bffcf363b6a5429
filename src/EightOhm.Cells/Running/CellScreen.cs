using System.Text.Json.Nodes;

namespace EightOhm.Cells.Running;

/// <summary>Where a running cell shows and prints: its outputs so far. Its own threads find it too.</summary>
internal sealed class CellScreen
{
    private static readonly AsyncLocal<CellScreen?> Here = new();

    private readonly Lock gate = new();
    private readonly CellOutputs outputs = new();

    /// <summary>The screen of the cell at work; null where none is.</summary>
    public static CellScreen? Current
    {
        get => Here.Value;
        set => Here.Value = value;
    }

    public JsonObject? Show(IEnumerable<KeyValuePair<string, string>> forms)
    {
        lock (gate)
            return outputs.Show(forms);
    }

    /// <summary>Shows something else in the place of an output; a later cell may do that too.</summary>
    public void Replace(JsonObject output, IEnumerable<KeyValuePair<string, string>> forms)
    {
        lock (gate)
            output["data"] = NbFormat.Bundle(forms);
    }

    public void Return(IEnumerable<KeyValuePair<string, string>> forms, int executionCount)
    {
        lock (gate)
            outputs.Return(forms, executionCount);
    }

    public void Print(string stream, ReadOnlySpan<char> text)
    {
        lock (gate)
            outputs.Print(stream, text);
    }

    /// <summary>What there is so far, for a reader who waits.</summary>
    public JsonArray SoFar()
    {
        lock (gate)
            return outputs.SoFar();
    }

    /// <summary>What there is when the cell has ended; what comes later, from a thread left behind, is lost.</summary>
    public JsonArray End()
    {
        lock (gate)
            return outputs.End();
    }
}
