using System.Text.Json.Nodes;

namespace EightOhm.Cells.Running;

/// <summary>A value that a cell shows, which can be replaced where it stands.</summary>
public sealed class ShownValue
{
    private readonly CellScreen? screen;
    private readonly string? mimeType;
    private readonly JsonObject? output;

    internal ShownValue(CellScreen? screen, IReadOnlyList<KeyValuePair<string, string>> forms)
    {
        this.screen = screen;
        mimeType = forms is [{ Key: var only }] ? only : null;
        output = screen?.Show(forms);
    }

    /// <summary>Shows another value in its place.</summary>
    /// <param name="value">The value. A text keeps the kind of the text that was there.</param>
    public void Update(object? value)
    {
        if (output is not null)
            screen!.Replace(output, value is string text && mimeType is not null ? [new(mimeType, text)] : ShownForms.Of(value));
    }
}
