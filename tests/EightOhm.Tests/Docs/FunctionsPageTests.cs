using EightOhm.Finding;

namespace EightOhm.Tests.Docs;

public class FunctionsPageTests
{
    [Fact]
    public void The_functions_page_is_what_the_code_says()
    {
        WrittenTable.Check("functions.md", "questions", [
            "| question | functions |", "|---|---|",
            .. Questions.All.Select(q => $"| {q.Question} | {string.Join(", ", q.Functions.Select(f => $"`{f}`"))} |")]);
        WrittenTable.Check("functions.md", "rooms", Rooms.All.SelectMany(OfRoom));
    }

    private static IEnumerable<string> OfRoom(RoomAttribute room)
    {
        var functions = FunctionIndex.All.Where(f => f.Room == room.Name).ToList();
        return functions.Count == 0 ? [] :
        [
            $"## {room.Name}", "", "| function | what it is | unit | example |", "|---|---|---|---|",
            .. functions.Select(f => $"| `{f.Signature}` | {Cell(f.Summary)} | {Cell(f.Unit)} | {(f.Example.Contains("   // ", StringComparison.Ordinal) ? $"`{Cell(f.Example)}`" : "")} |"),
            "",
        ];
    }

    private static string Cell(string text) => text.Replace("|", "\\|", StringComparison.Ordinal).Replace('\n', ' ');
}
