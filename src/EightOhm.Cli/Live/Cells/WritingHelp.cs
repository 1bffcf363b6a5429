using System.Text.Json;
using System.Text.Json.Nodes;
using EightOhm.Cells.Editing;
using EightOhm.Cells.Sources;

namespace EightOhm.Cli.Live.Cells;

/// <summary>What the compiler knows of a text that is being written. It starts when it is first asked, in this process: a cell that runs keeps it from nothing.</summary>
/// <param name="folder">The notebooks' folder, from which cells name files.</param>
internal sealed class WritingHelp(string folder) : ICellAssistant, IDisposable
{
    private readonly Lazy<CellAssistant> help = new(() => new CellAssistant(CellReferences.OfThisProcess().In(folder)));

    public async Task<JsonObject?> AnswerAsync(string question, IReadOnlyList<string> before, string source, int offset, CancellationToken cancellation) => question switch
    {
        "complete" => Node(await help.Value.CompleteAsync(before, source, offset, cancellation)),
        "signature" => Node(await help.Value.SignaturesAsync(before, source, offset, cancellation)),
        "hover" => Node(await help.Value.HoverAsync(before, source, offset, cancellation)),
        "diagnose" => new JsonObject
        {
            ["faults"] = new JsonArray([.. (await help.Value.DiagnoseAsync(before, source, cancellation)).Select(f => new JsonObject
            {
                ["from"] = f.From,
                ["to"] = f.To,
                ["line"] = f.Line,
                ["words"] = f.Words,
                ["severity"] = f.IsError ? "error" : "warning",
            })]),
        },
        _ => null,
    };

    public void Dispose()
    {
        if (help.IsValueCreated)
            help.Value.Dispose();
    }

    private static JsonObject? Node<T>(T answer) => JsonSerializer.SerializeToNode(answer, JsonSerializerOptions.Web) as JsonObject;
}
