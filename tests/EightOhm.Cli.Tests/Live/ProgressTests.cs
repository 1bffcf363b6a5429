using System.Text.Json.Nodes;
using EightOhm.Cli.Live;

namespace EightOhm.Cli.Tests.Live;

/// <summary>How far a student is: kept at once beside the notebooks, and told with the folder.</summary>
public sealed class ProgressTests : IDisposable
{
    private readonly LiveShop shop = new();

    public void Dispose() => shop.Dispose();

    [Fact]
    public async Task An_answer_is_kept_at_once_and_told_with_the_folder()
    {
        shop.Shop.Notebook("05-ripple", "var ripple = Exercise.Of(\"05-ripple\"); ripple", "ripple.Check(6.V)");
        await using (var bench = shop.OpenReal())
        {
            Assert.Equal(0, (int)Of(bench)!["solved"]!);
            var of = (int)Of(bench)!["of"]!;
            Assert.True(of > 0);

            bench.Calculate("05-ripple", "chapter", null);
            await bench.IdleAsync();
            Assert.Equal(0, (int)Of(bench)!["solved"]!);

            var answer = LiveShop.Id(bench, "05-ripple", 3);
            bench.Edit("05-ripple", answer, "ripple.Check(3.V)");
            bench.Calculate("05-ripple", "cell", answer);
            await bench.IdleAsync();

            Assert.Equal(1, (int)shop.Last("folder")["progress"]!["solved"]!);
            Assert.Equal(of, (int)Of(bench)!["of"]!);
            Assert.Null(Of(bench)!["words"]);
            // Nothing else was saved.
            Assert.True(File.Exists(KeptIn));
            Assert.True((bool)bench.All()[0]["unsaved"]!);
        }

        await using (var again = shop.OpenScripted())
            Assert.Equal(1, (int)Of(again)!["solved"]!);

        File.WriteAllText(KeptIn, "cut o");
        await using var damaged = shop.OpenScripted();
        Assert.Contains("course-progress.json", (string)Of(damaged)!["words"]!, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Where_nothing_is_asked_nothing_is_told()
    {
        shop.Shop.Notebook("a", "1");
        await using var bench = shop.OpenScripted();
        Assert.Null(Of(bench));
    }

    private string KeptIn => Path.Combine(shop.Shop.Notebooks, "course-progress.json");

    private static JsonObject? Of(Workbench bench) => bench.All()[0]["progress"] as JsonObject;
}
