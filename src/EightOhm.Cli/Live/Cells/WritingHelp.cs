using System.Text.Json.Nodes;
using EightOhm.Cells.Editing;
using EightOhm.Cells.Sources;

namespace EightOhm.Cli.Live.Cells;

/// <summary>Help with a cell's text, from the compiler: names, calls, what a name is, what is wrong.</summary>
internal sealed class WritingHelp : ICellAssistant, IDisposable
{
    private readonly CellAssistant assistant = new(CellReferences.OfThisProcess());

    /// <summary>Reads the library in the background: the first question is answered as quickly as the next.</summary>
    public void Begin(CancellationToken cancellation) => _ = Task.Run(
        async () =>
        {
            try
            {
                await assistant.PrepareAsync([], cancellation);
            }
            catch (Exception e) when (e is OperationCanceledException or ObjectDisposedException)
            {
                // The program ends.
            }
        },
        CancellationToken.None);

    public async Task<JsonObject?> AnswerAsync(string question, IReadOnlyList<string> before, string source, int offset, CancellationToken cancellation)
    {
        var place = Math.Clamp(offset, 0, source.Length);
        return question switch
        {
            "complete" => Json(await assistant.CompleteAsync(before, source, place, cancellation)),
            "signature" => await assistant.SignaturesAsync(before, source, place, cancellation) is { } signatures ? Json(signatures) : null,
            "hover" => await assistant.HoverAsync(before, source, place, cancellation) is { } hover ? new JsonObject { ["html"] = hover.Html, ["from"] = hover.From, ["to"] = hover.To } : null,
            _ => new JsonObject { ["faults"] = new JsonArray([.. (await assistant.DiagnoseAsync(before, source, cancellation)).Select(Json)]) },
        };
    }

    public void Dispose() => assistant.Dispose();

    private static JsonObject Json(CompletionAnswer answer) => new()
    {
        ["items"] = new JsonArray([.. answer.Items.Select(i => new JsonObject { ["label"] = i.Label, ["insert"] = i.Insert, ["detail"] = i.Detail, ["documentation"] = i.Documentation, ["kind"] = i.Kind })]),
        ["from"] = answer.From,
        ["to"] = answer.To,
    };

    private static JsonObject Json(SignatureAnswer answer) => new()
    {
        ["signatures"] = new JsonArray([.. answer.Signatures.Select(s => new JsonObject
        {
            ["label"] = s.Label,
            ["parameters"] = new JsonArray([.. s.Parameters.Select(p => new JsonObject { ["label"] = p.Label, ["documentation"] = p.Documentation })]),
            ["documentation"] = s.Documentation,
        })]),
        ["active"] = answer.Active,
        ["parameter"] = answer.Parameter,
    };

    private static JsonNode Json(Fault fault) => new JsonObject
    {
        ["from"] = fault.From,
        ["to"] = fault.To,
        ["line"] = fault.Line,
        ["words"] = fault.Words,
        ["severity"] = fault.IsError ? "error" : "warning",
    };
}
