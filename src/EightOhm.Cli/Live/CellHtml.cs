using System.Runtime.CompilerServices;
using System.Text.Json.Nodes;
using AngleSharp.Html.Parser;
using EightOhm.Cli.Book;
using EightOhm.Cli.Notebooks;
using EightOhm.Display;

namespace EightOhm.Cli.Live;

/// <summary>Cells as the page shows them: text rendered as in the book, outputs cleaned.</summary>
internal sealed class CellHtml
{
    // An output is shown many times and changes never: it is replaced.
    private readonly ConditionalWeakTable<JsonArray, JsonArray> rendered = [];

    /// <summary>A cell for the page.</summary>
    /// <param name="chapter">Its chapter.</param>
    /// <param name="cell">The cell.</param>
    /// <param name="state">How it stands.</param>
    public JsonObject Of(LiveChapter chapter, LiveCell cell, CellState state)
    {
        var news = new JsonObject
        {
            ["id"] = cell.Id,
            ["kind"] = cell.IsText ? CellKinds.Text : CellKinds.Code,
            ["source"] = cell.Source,
            ["outputs"] = cell.IsCode ? Outputs(cell).DeepClone() : new JsonArray(),
            ["state"] = Word(state),
            ["ms"] = cell.Milliseconds,
            ["error"] = cell.End is { } end && !cell.IsEdited ? new JsonObject { ["line"] = end.Line, ["words"] = PlainText.Of(end.Says) } : null,
        };
        if (cell.IsCode && CodeCell.IsOpen(new NotebookCell(cell.Json, 1), chapter.IsPaper))
            news["open"] = true;
        if (!cell.IsCode)
            news["html"] = cell.IsText ? Text(chapter, cell) : $"<pre>{PageTemplate.Escape(cell.Source)}</pre>";
        if (cell.End is { } ended)
            news["outcome"] = ended.Kind switch { NoticeKind.NoAnswer => "noAnswer", NoticeKind.NotCalculated => "notCalculated", _ => "failed" };
        return news;
    }

    /// <summary>The page's word for a state.</summary>
    public static string Word(CellState state) => state switch
    {
        CellState.Current => "current",
        CellState.Stale => "stale",
        CellState.Edited => "edited",
        CellState.Running => "running",
        CellState.Waiting => "waiting",
        CellState.Failed => "failed",
        _ => "never",
    };

    /// <summary>What a running cell has shown so far.</summary>
    public static string SoFar(JsonArray outputs) => string.Concat(OutputHtml.Each(outputs, "").Select(CleanOutput.Of));

    private static string Text(LiveChapter chapter, LiveCell cell)
    {
        try
        {
            return new MarkdownText(Path.GetDirectoryName(chapter.File.Path)!).ToHtml(new NotebookCell(cell.Json, 1));
        }
        catch (ArgumentException)
        {
            return $"<p>Quotes, lists, links or elements of HTML stand too deep in each other. Make the text flatter.</p><pre>{PageTemplate.Escape(cell.Source)}</pre>";
        }
    }

    private JsonArray Outputs(LiveCell cell) =>
        cell.Json["outputs"] is JsonArray outputs
            ? rendered.GetValue(outputs, o => new JsonArray([.. OutputHtml.Each(o, cell.Calculated).Select(html => JsonValue.Create(Finish(CleanOutput.Of(html))))]))
            : [];

    // Short captions, as the book has them.
    private static string Finish(string html)
    {
        if (!html.Contains("eo-table", StringComparison.Ordinal))
            return html;
        var body = new HtmlParser().ParseDocument($"<!doctype html><body>{html}</body>").Body!;
        TableCaptions.Write(body);
        return body.InnerHtml;
    }
}
