using System.Text.Json.Nodes;

namespace EightOhm.Cli.Live.Cells;

/// <summary>Helps with a cell's text while it is written, whatever runs meanwhile.</summary>
internal interface ICellAssistant
{
    /// <summary>Answers a question about a text.</summary>
    /// <param name="question">"complete", "signature", "hover" or "diagnose".</param>
    /// <param name="before">The code of the cells before it.</param>
    /// <param name="source">The cell's text as it is being written.</param>
    /// <param name="offset">Where the cursor is.</param>
    /// <param name="cancellation">Stops it, as nobody waits any longer.</param>
    /// <returns>The answer for the page; null where there is none.</returns>
    Task<JsonObject?> AnswerAsync(string question, IReadOnlyList<string> before, string source, int offset, CancellationToken cancellation);
}

/// <summary>Knows nothing: the editor is a plain text area then.</summary>
internal sealed class NoAssistant : ICellAssistant
{
    public Task<JsonObject?> AnswerAsync(string question, IReadOnlyList<string> before, string source, int offset, CancellationToken cancellation) => Task.FromResult<JsonObject?>(null);
}
