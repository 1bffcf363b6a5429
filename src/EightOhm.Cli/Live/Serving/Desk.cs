using System.Text.Json.Nodes;
using EightOhm.Cli.Live.Cells;

namespace EightOhm.Cli.Live.Serving;

/// <summary>Takes a wish of a page to the workbench, and brings the answer.</summary>
/// <param name="bench">The workbench.</param>
/// <param name="assistant">Helps with texts.</param>
/// <param name="trust">Remembers that the folder's cells may run.</param>
/// <param name="address">A fresh address for another window.</param>
internal sealed class Desk(Workbench bench, ICellAssistant assistant, Action trust, Func<string> address)
{
    /// <summary>Does what is wished.</summary>
    /// <param name="wish">The wish as it came.</param>
    /// <param name="cancellation">Cancelled when the window is gone.</param>
    /// <returns>What the reply says beside its number.</returns>
    /// <exception cref="LiveRefusal">It is not to be done.</exception>
    public async Task<JsonObject> DoAsync(JsonObject wish, CancellationToken cancellation)
    {
        switch (Needed(wish, "do"))
        {
            case "chapter":
                return new JsonObject { ["news"] = bench.Chapter(Needed(wish, "chapter")) };
            case "try":
                return new JsonObject { ["value"] = bench.Try(Text(wish, "design") ?? "", Needed(wish, "name"), Text(wish, "value"), Number(wish, "fraction"), IsTrue(wish, "dragging")) };
            case "put-back":
                bench.PutBack(Text(wish, "design") ?? "", Text(wish, "name"));
                break;
            case "keep":
                bench.Keep();
                break;
            case "save":
                await bench.SaveAsync();
                break;
            case "as-saved":
                await bench.AsSavedAsync();
                break;
            case "take-file":
                await bench.TakeFileAsync(Text(wish, "chapter"));
                break;
            case "keep-mine":
                bench.KeepMine(Text(wish, "chapter"));
                break;
            case "calculate":
                bench.Calculate(Needed(wish, "chapter"), Text(wish, "what") ?? "cell", Text(wish, "cell"));
                break;
            case "stop":
                bench.Stop();
                break;
            case "edit":
                bench.Edit(Needed(wish, "chapter"), Needed(wish, "cell"), Needed(wish, "source"));
                break;
            case "add":
                return new JsonObject { ["cell"] = bench.Add(Needed(wish, "chapter"), Text(wish, "after"), Needed(wish, "kind")) };
            case "move":
                bench.Move(Needed(wish, "chapter"), Needed(wish, "cell"), Text(wish, "before"));
                break;
            case "delete":
                bench.Delete(Needed(wish, "chapter"), Needed(wish, "cell"));
                break;
            case "split":
                return new JsonObject { ["cell"] = bench.Split(Needed(wish, "chapter"), Needed(wish, "cell"), (int)(Number(wish, "at") ?? throw Lacks("at"))) };
            case "undo":
                return new JsonObject { ["words"] = "Undone: " + bench.Undo(Needed(wish, "chapter")) };
            case "redo":
                return new JsonObject { ["words"] = "Done again: " + bench.Redo(Needed(wish, "chapter")) };
            case "complete" or "signature" or "hover" or "diagnose":
                var answer = await assistant.AnswerAsync(Needed(wish, "do"), bench.CodeBefore(Needed(wish, "chapter"), Needed(wish, "cell")), Needed(wish, "source"), (int)(Number(wish, "offset") ?? 0), cancellation);
                return answer ?? new JsonObject { ["none"] = true };
            case "trust":
                trust();
                bench.Trust();
                break;
            case "another-window":
                return new JsonObject { ["address"] = address() };
            case var other:
                throw new LiveRefusal($"This server does not know the wish '{other}'. The page is of another version: load it again.");
        }

        return [];
    }

    private static string Needed(JsonObject wish, string name) => Text(wish, name) ?? throw Lacks(name);

    private static LiveRefusal Lacks(string name) => new($"The wish lacks its '{name}'. The page is of another version: load it again.");

    private static string? Text(JsonObject wish, string name) => wish[name] is JsonValue value && value.TryGetValue<string>(out var text) ? text : null;

    private static double? Number(JsonObject wish, string name) => wish[name] is JsonValue value && value.TryGetValue<double>(out var number) && double.IsFinite(number) ? number : null;

    private static bool IsTrue(JsonObject wish, string name) => wish[name] is JsonValue value && value.TryGetValue<bool>(out var flag) && flag;
}
