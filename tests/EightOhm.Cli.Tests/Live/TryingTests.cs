using System.Text.Json.Nodes;
using EightOhm.Cli.Live;

namespace EightOhm.Cli.Tests.Live;

/// <summary>What is tried is answered by the record alone, then by the cells that hang on it; nothing is saved by itself.</summary>
public sealed class TryingTests : IAsyncLifetime, IDisposable
{
    private readonly LiveShop shop = new();

    public Task InitializeAsync() => shop.SavedAsync();

    public Task DisposeAsync() => Task.CompletedTask;

    public void Dispose() => shop.Dispose();

    [Fact]
    public async Task Opened_as_it_was_saved_everything_is_current_and_nothing_runs()
    {
        await using var bench = shop.OpenScripted();

        Assert.All((JsonArray)bench.All()[0]["chapters"]!, c => Assert.Equal("current", (string)c!["state"]!));
        Assert.Empty(shop.Scripted);
        var sheet = LiveShop.Sheet(bench);
        Assert.Equal(2, (int)sheet["tally"]!["met"]!);
        Assert.Equal(["met", "met"], sheet["requirements"]!.AsArray().Select(r => (string)r!["state"]!));
        Assert.Equal("01-targets", (string)sheet["requirements"]!.AsArray().First(r => (string)r!["key"]! == "swing")!["chapter"]!);
    }

    [Fact]
    public async Task While_the_hand_drags_the_record_alone_answers()
    {
        await using var bench = shop.OpenScripted();

        bench.Try("", "P", "200 W", null, isDragging: true);

        var sheet = (JsonObject)shop.Last("sheet")["designs"]![0]!;
        Assert.True((bool)shop.Last("sheet")["preview"]!);
        Assert.Equal(1, (int)sheet["tally"]!["notMet"]!);
        // What only a cell can compute is not known yet.
        Assert.Equal(1, (int)sheet["tally"]!["stale"]!);
        Assert.Equal("swing", (string)sheet["requirements"]![0]!["key"]!);
        Assert.Contains(sheet["moved"]!.AsArray(), m => (string)m!["name"]! == "V_pk" && m["chain"]!.AsArray().Select(c => (string)c!).SequenceEqual(["P", "V_pk"]));
        Assert.Empty(shop.Scripted);
        Assert.Equal("current", LiveShop.State(bench, "01-targets", 3));
    }

    [Fact]
    public async Task At_rest_the_cells_that_hang_on_it_run_those_of_the_chapter_in_hand_first()
    {
        await using var bench = shop.OpenScripted();
        bench.Chapter("02-later");

        bench.Try("", "P", "120 W", null, isDragging: false);
        await bench.IdleAsync();

        var ran = Assert.Single(shop.Scripted).Ran;
        Assert.DoesNotContain(LiveShop.Input, ran);
        Assert.Contains(LiveShop.Later, ran);
        Assert.True(ran.IndexOf(LiveShop.Later) < (ran.IndexOf(LiveShop.Peak) is >= 0 and var at ? at : int.MaxValue), string.Join("\n---\n", ran));
        Assert.Equal("current", LiveShop.State(bench, "02-later", 2));
    }

    [Fact]
    public async Task What_one_cell_uses_runs_that_cell_with_what_it_needs_and_no_more()
    {
        await using var bench = shop.OpenScripted();
        bench.Chapter("01-targets");
        bench.Try("", "R_in", "22 kΩ", null, isDragging: false);
        await bench.IdleAsync();
        var cells = Assert.Single(shop.Scripted);
        cells.Ran.Clear();

        bench.Try("", "R_in", "33 kΩ", null, isDragging: false);
        await bench.IdleAsync();

        Assert.Contains(LiveShop.Input, cells.Ran);
        Assert.DoesNotContain(LiveShop.Peak, cells.Ran);
        Assert.DoesNotContain(LiveShop.Later, cells.Ran);
    }

    [Theory]
    [InlineData("P", "120 V", "P is Power, but 120 V is ElectricPotential")]
    [InlineData("P", "-5 W", "P")]
    [InlineData("Q", "1 W", "The record has no Q to set")]
    [InlineData("V_pk", "1 V", "V_pk is derived from P and R_L; set one of those")]
    public async Task A_value_that_cannot_be_is_refused_in_words_and_moves_nothing(string name, string value, string words)
    {
        await using var bench = shop.OpenScripted();

        var refusal = Assert.Throws<LiveRefusal>(() => bench.Try("", name, value, null, isDragging: false));

        Assert.Contains(words, refusal.Message, StringComparison.Ordinal);
        Assert.Empty(LiveShop.Sheet(bench)["tried"]!.AsArray());
        Assert.Empty(shop.Scripted);
    }

    [Fact]
    public async Task A_tried_value_is_not_saved_until_it_is_kept()
    {
        await using var bench = shop.OpenScripted();
        var before = File.ReadAllText(shop.Record);
        bench.Try("", "P", "81 W", null, isDragging: false);
        await bench.IdleAsync();

        var refusal = await Assert.ThrowsAsync<LiveRefusal>(bench.SaveAsync);
        Assert.Contains("P = 81 W is tried and not kept", refusal.Message, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllText(shop.Record));

        bench.Keep();
        await bench.SaveAsync();

        Assert.Contains("81 W", File.ReadAllText(shop.Record), StringComparison.Ordinal);
        Assert.Empty(LiveShop.Sheet(bench)["tried"]!.AsArray());
        Assert.True((bool)LiveShop.Row(bench, "P")["moved"]!);
    }

    [Fact]
    public async Task Put_back_the_design_is_as_it_was_saved()
    {
        await using var bench = shop.OpenScripted();
        bench.Try("", "P", "200 W", null, isDragging: false);
        bench.Try("", "V_rail", "60 V", null, isDragging: false);
        await bench.IdleAsync();
        Assert.Equal(2, LiveShop.Sheet(bench)["tried"]!.AsArray().Count);

        bench.PutBack("", "P");
        await bench.IdleAsync();
        Assert.Equal("V_rail", (string)Assert.Single(LiveShop.Sheet(bench)["tried"]!.AsArray())!["name"]!);

        bench.PutBack("", null);
        await bench.IdleAsync();
        Assert.Empty(LiveShop.Sheet(bench)["tried"]!.AsArray());
    }

    [Fact]
    public async Task Sliders_take_preferred_values_with_the_one_in_force_among_them()
    {
        await using var bench = shop.OpenScripted();

        var power = LiveShop.Row(bench, "P")["slider"]!;
        Assert.Equal("100 W", (string)power["values"]![(int)power["at"]!]!);
        Assert.Contains("120 W", power["values"]!.AsArray().Select(v => (string)v!));
        var input = LiveShop.Row(bench, "R_in")["slider"]!;
        Assert.Contains("33 kΩ", input["values"]!.AsArray().Select(v => (string)v!));
        var rail = LiveShop.Row(bench, "V_rail")["slider"]!;
        Assert.True((bool)rail["log"]!);
        // Half a decade either way in three digits: from 14.2 V to 142 V.
        Assert.Equal(Math.Log10(45 / 14.2), (double)rail["at"]!, 6);

        var value = bench.Try("", "V_rail", null, 0.75, isDragging: true);
        Assert.Equal("79.9 V", value);
        Assert.Equal((string)rail["least"]!, (string)LiveShop.Row(bench, "V_rail")["slider"]!["least"]!);
    }

    [Fact]
    public async Task Before_the_folder_is_trusted_the_record_answers_and_no_cell_runs()
    {
        string[] Graphs() => Directory.GetFiles(shop.Shop.Notebooks, "*.graph", SearchOption.AllDirectories);
        // The run that saved the folder has left what it read: as if it were another's folder.
        Array.ForEach(Graphs(), File.Delete);
        await using var bench = shop.OpenScripted(isTrusted: false);

        bench.Try("", "P", "120 W", null, isDragging: false);
        Assert.Contains("trust", Assert.Throws<LiveRefusal>(() => bench.Calculate("01-targets", "chapter", null)).Message, StringComparison.Ordinal);
        Assert.Empty(shop.Scripted);
        // Nor does what was read of them lie in the folder.
        await bench.IdleAsync();
        Assert.Empty(Graphs());

        bench.Trust();
        await bench.IdleAsync();

        Assert.NotEmpty(Assert.Single(shop.Scripted).Ran);
        Assert.Equal(2, Graphs().Length);
    }

    [Fact]
    public async Task A_running_cell_is_dropped_when_something_moves_again_and_stop_leaves_the_rest_visibly_undone()
    {
        await using var bench = shop.OpenScripted();
        bench.Chapter("01-targets");
        bench.Try("", "R_in", "22 kΩ", null, isDragging: false);
        await bench.IdleAsync();
        var cells = shop.Scripted[0];
        var begun = new TaskCompletionSource();
        cells.OnRun = async (text, stop) =>
        {
            if (text != LiveShop.Later)
                return null;
            begun.TrySetResult();
            await Task.WhenAny(Task.Delay(Timeout.Infinite, stop));
            return new EightOhm.Cells.Running.CellFailure(EightOhm.Cells.Running.FailureKind.Cancelled, null, null, "stopped");
        };

        bench.Try("", "P", "120 W", null, isDragging: false);
        await begun.Task;
        Assert.Equal("running", LiveShop.State(bench, "02-later", 2));
        bench.Stop();
        await bench.IdleAsync();

        Assert.Equal("stale", LiveShop.State(bench, "02-later", 2));
        Assert.Equal("stale", (string)bench.All()[0]["chapters"]![1]!["state"]!);
    }
}
