namespace EightOhm.Cells.Running;

/// <summary>What a cell can call in a host of ours as in a notebook kernel: <c>display(x)</c>, <c>x.Display()</c>, <c>"…".DisplayAs("text/html")</c>, <c>HTML("…")</c>.</summary>
public static class CellHelpers
{
    /// <summary>Shows a value at once, above what the cell ends in.</summary>
    /// <param name="value">Any value.</param>
    /// <returns>What is shown, to show another in its place.</returns>
#pragma warning disable IDE1006 // As notebook kernels write it.
    public static ShownValue display(object? value) => new(CellScreen.Current, ShownForms.Of(value));
#pragma warning restore IDE1006

    /// <summary>Shows a value at once, above what the cell ends in.</summary>
    /// <param name="value">Any value.</param>
    /// <returns>What is shown, to show another in its place.</returns>
    public static ShownValue Display(this object? value) => display(value);

    /// <summary>Shows a text of a kind at once, above what the cell ends in.</summary>
    /// <param name="text">The text.</param>
    /// <param name="mimeType">Its kind, such as <c>text/html</c>.</param>
    /// <returns>What is shown, to show another in its place.</returns>
    public static ShownValue DisplayAs(this string text, string mimeType) => new(CellScreen.Current, [new(mimeType, text)]);

    /// <summary>A piece of HTML to end a cell in.</summary>
    /// <param name="text">A fragment.</param>
    /// <returns>What is shown as it stands.</returns>
    public static RawHtml HTML(string text) => new(text);
}
