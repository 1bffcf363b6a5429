using System.Text.Json;
using System.Text.Json.Nodes;
using EightOhm.Cells.Editing;
using EightOhm.Cells.Sources;

namespace EightOhm.Cli.Live.Cells;

/// <summary>What the compiler knows of a cell's text, asked in this process: a cell that runs keeps it from nothing.</summary>
/// <param name="folder">The folder from which cells name files.</param>
internal sealed class WritingHelp(string folder) : ICellAssistant, IDisposable
{
    private readonly CellAssistant assistant = new(CellReferences.OfThisProcess().In(folder));

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
            "signature" => Json(await assistant.SignaturesAsync(before, source, place, cancellation)),
            "hover" => Json(await assistant.HoverAsync(before, source, place, cancellation)),
            _ => new JsonObject { ["faults"] = new JsonArray([.. (await assistant.DiagnoseAsync(before, source, cancellation)).Select(Json)]) },
        };
    }

    public void Dispose() => assistant.Dispose();

    // The answers' members are named as the page reads them.
    private static JsonObject? Json<T>(T answer) => JsonSerializer.SerializeToNode(answer, JsonSerializerOptions.Web) as JsonObject;

    private static JsonNode Json(Fault fault) => new JsonObject
    {
        ["from"] = fault.From,
        ["to"] = fault.To,
        ["line"] = fault.Line,
        ["words"] = fault.Words,
        ["severity"] = fault.IsError ? "error" : "warning",
    };
}
