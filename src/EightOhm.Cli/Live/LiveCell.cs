using System.Text.Json.Nodes;
using EightOhm.Cells;
using EightOhm.Cli.Ends;
using EightOhm.Cli.Notebooks;
using EightOhm.Cli.WhatIf;

namespace EightOhm.Cli.Live;

/// <summary>A cell that is open on the page: its part of the file, and what is known of its outputs.</summary>
/// <param name="id">Its name within the chapter.</param>
/// <param name="json">Its object in the file, changed in place.</param>
internal sealed class LiveCell(string id, JsonObject json)
{
    public string Id { get; } = id;

    /// <summary>Its object in the file.</summary>
    public JsonObject Json { get; } = json;

    /// <summary>Its text.</summary>
    public string Source { get; private set; } = NbFormat.Text(json["source"]);

    public bool IsCode { get; } = NbFormat.Text(json["cell_type"]) == "code";

    public bool IsText { get; } = NbFormat.Text(json["cell_type"]) == "markdown";

    /// <summary>Whether it has code to be calculated.</summary>
    public bool HasCode => IsCode && !string.IsNullOrWhiteSpace(Source);

    /// <summary>The text that its outputs came from.</summary>
    public string Calculated { get; private set; } = NbFormat.Text(json["source"]);

    /// <summary>The last text that ran to its end, which is run again when a process is gone.</summary>
    public string Good { get; private set; } = NbFormat.Text(json["source"]);

    /// <summary>Whether its outputs belong to the design as it stands.</summary>
    public bool IsCurrent { get; set; }

    /// <summary>What it found in the records when its outputs were made: where it finds the same again, they are still right. Null where nobody knows.</summary>
    public FoundWords? Found { get; set; }

    /// <summary>Whether it was ever calculated.</summary>
    public bool WasCalculated { get; set; } = json["execution_count"] is JsonValue || json["outputs"] is JsonArray { Count: > 0 };

    /// <summary>Why it gave nothing; null where it ran to its end, or nobody has run it here.</summary>
    public CellEnd? End { get; private set; }

    /// <summary>How long it took, in milliseconds; null where it did not run here.</summary>
    public int? Milliseconds { get; private set; }

    /// <summary>Tells its outputs from any others.</summary>
    public string Fingerprint { get; private set; } = PrintOf(json["outputs"]);

    /// <summary>Whether its text was changed since it was calculated.</summary>
    public bool IsEdited => IsCode && Source != Calculated;

    /// <summary>Changes its text; nothing runs.</summary>
    public void Write(string source)
    {
        Source = source;
        Json["source"] = NbFormat.Lines(source);
    }

    /// <summary>Takes what a calculation gave.</summary>
    /// <param name="text">The text that ran.</param>
    /// <param name="count">Its number among the cells that hold code, from 1.</param>
    /// <param name="outputs">What it showed.</param>
    /// <param name="end">Why it gave nothing; null when it ran to its end.</param>
    /// <param name="took">How long it took; null when it did not run.</param>
    public void Take(string text, int count, JsonArray outputs, CellEnd? end, TimeSpan? took)
    {
        Json["execution_count"] = count;
        Json["outputs"] = outputs;
        Fingerprint = PrintOf(outputs);
        Calculated = text;
        if (end is null)
            Good = text;
        (End, IsCurrent, WasCalculated, Found) = (end, true, true, null);
        Milliseconds = took is { } time ? (int)Math.Ceiling(time.TotalMilliseconds) : null;
    }

    private static string PrintOf(JsonNode? outputs) => outputs is null ? "" : NotebookStamp.Fingerprint([outputs.ToJsonString()]);

    /// <summary>How it stands, unless it is at work.</summary>
    public CellState State =>
        !IsCode ? CellState.Current
        : IsEdited ? CellState.Edited
        : !WasCalculated && HasCode ? CellState.Never
        : !IsCurrent && HasCode ? CellState.Stale
        : End is not null ? CellState.Failed
        : CellState.Current;
}
