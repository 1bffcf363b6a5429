using System.Text.Json.Nodes;
using EightOhm.Cli.Live;
using EightOhm.Cli.Output;

namespace EightOhm.Cli.Tests.Live;

/// <summary>Notebooks and record are saved together, and nothing is lost or written over.</summary>
public sealed class SavingTests : IAsyncLifetime, IDisposable
{
    private readonly LiveShop shop = new();

    public Task InitializeAsync() => shop.SavedAsync();

    public Task DisposeAsync() => Task.CompletedTask;

    public void Dispose() => shop.Dispose();

    [Fact]
    public async Task Unknown_parts_of_the_file_are_kept_and_only_what_was_edited_differs()
    {
        var path = shop.File("01-targets");
        var before = JsonNode.Parse(File.ReadAllText(path))!.AsObject();
        before["metadata"]!["theirs"] = new JsonObject { ["a"] = 1 };
        before["cells"]![0]!["metadata"]!["mine"] = true;
        before["cells"]![0]!["attachments"] = new JsonObject();
        before["zuletzt"] = "kept";
        File.WriteAllText(path, before.ToJsonString());
        await using var bench = shop.OpenScripted();

        bench.Edit("01-targets", LiveShop.Id(bench, "01-targets", 0), "# Another heading");
        Assert.True((bool)bench.All()[0]["unsaved"]!);
        await bench.SaveAsync();

        var after = JsonNode.Parse(File.ReadAllText(path))!.AsObject();
        Assert.Equal("# Another heading", string.Concat(after["cells"]![0]!["source"]!.AsArray().Select(l => (string)l!)));
        after["cells"]![0]!["source"] = before["cells"]![0]!["source"]!.DeepClone();
        after["metadata"]!.AsObject().Remove("eightohm");
        before["metadata"]!.AsObject().Remove("eightohm");
        Assert.True(JsonNode.DeepEquals(before, after), after.ToJsonString());
        Assert.Equal(before.Select(p => p.Key), after.Select(p => p.Key));
        Assert.False((bool)bench.All()[0]["unsaved"]!);
    }

    [Fact]
    public async Task Saved_without_a_change_nothing_is_written()
    {
        await using var bench = shop.OpenScripted();
        var before = shop.Shop.Everything();
        await bench.SaveAsync();
        Assert.Equal(before, shop.Shop.Everything());
    }

    [Fact]
    public async Task A_file_changed_on_the_disk_is_told_once_and_not_written_over()
    {
        await using var bench = shop.OpenScripted();
        bench.Edit("01-targets", LiveShop.Id(bench, "01-targets", 0), "# Mine");
        var theirs = File.ReadAllText(shop.File("01-targets")).Replace("# Chapter 01-targets", "# Theirs", StringComparison.Ordinal);
        File.WriteAllText(shop.File("01-targets"), theirs);

        bench.LookAtDisk();
        bench.LookAtDisk();
        var refusal = await Assert.ThrowsAsync<LiveRefusal>(bench.SaveAsync);

        Assert.Single(shop.News, n => (string?)n["type"] == "disk");
        Assert.Equal("01-targets", (string)shop.Last("disk")["chapter"]!);
        Assert.Contains("was changed by another program; nothing was saved", refusal.Message, StringComparison.Ordinal);
        Assert.Equal(theirs, File.ReadAllText(shop.File("01-targets")));

        bench.KeepMine("01-targets");
        await bench.SaveAsync();
        Assert.Contains("# Mine", File.ReadAllText(shop.File("01-targets")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_glance_tells_by_stamp_and_length_and_a_save_reads_all()
    {
        await using var bench = shop.OpenScripted();
        bench.LookAtDisk();
        var stamp = File.GetLastWriteTimeUtc(shop.File("01-targets"));
        File.WriteAllText(shop.File("01-targets"), File.ReadAllText(shop.File("01-targets")).Replace("# Chapter 01-targets", "# Chapter 10-targets", StringComparison.Ordinal));
        File.SetLastWriteTimeUtc(shop.File("01-targets"), stamp);

        bench.LookAtDisk();
        Assert.DoesNotContain(shop.News, n => (string?)n["type"] == "disk");
        bench.Edit("01-targets", LiveShop.Id(bench, "01-targets", 0), "# Mine");
        await Assert.ThrowsAsync<LiveRefusal>(bench.SaveAsync);
        Assert.Single(shop.News, n => (string?)n["type"] == "disk");

        File.SetLastWriteTimeUtc(shop.File("02-later"), stamp.AddSeconds(5));
        bench.LookAtDisk();
        Assert.Single(shop.News, n => (string?)n["type"] == "disk");
        File.AppendAllText(shop.File("02-later"), "\n");
        bench.LookAtDisk();
        Assert.Equal("02-later", (string)shop.Last("disk")["chapter"]!);
    }

    [Fact]
    public async Task A_save_that_waits_for_a_running_cell_is_told_to_wait()
    {
        await using var bench = shop.OpenScripted();
        bench.Calculate("02-later", "chapter", null);
        await bench.IdleAsync();
        var (begun, ends) = (new TaskCompletionSource(), new TaskCompletionSource());
        shop.Scripted[0].OnRun = async (_, _) =>
        {
            begun.TrySetResult();
            await ends.Task;
            return null;
        };
        bench.Edit("01-targets", LiveShop.Id(bench, "01-targets", 0), "# Mine");
        bench.Calculate("02-later", "cell", LiveShop.Id(bench, "02-later", 2));
        await begun.Task;

        var told = new TaskCompletionSource();
        bench.News += n =>
        {
            if ((string?)n["type"] == "kernel" && ((string)n["words"]!).Contains("the save waits for the cell that is running", StringComparison.Ordinal))
                told.TrySetResult();
        };
        var saving = bench.SaveAsync();
        await told.Task;
        Assert.False(saving.IsCompleted);
        Assert.DoesNotContain("# Mine", File.ReadAllText(shop.File("01-targets")), StringComparison.Ordinal);

        ends.SetResult();
        await saving;
        Assert.Contains("# Mine", File.ReadAllText(shop.File("01-targets")), StringComparison.Ordinal);
        Assert.Equal("ready", (string)shop.Last("kernel")["state"]!);
    }

    [Fact]
    public async Task The_files_version_is_taken_where_the_person_says_so()
    {
        await using var bench = shop.OpenScripted();
        bench.Edit("01-targets", LiveShop.Id(bench, "01-targets", 0), "# Mine");
        File.WriteAllText(shop.File("01-targets"), File.ReadAllText(shop.File("01-targets")).Replace("# Chapter 01-targets", "# Theirs", StringComparison.Ordinal));
        bench.LookAtDisk();

        await bench.TakeFileAsync("01-targets");

        Assert.Equal("# Theirs", (string)LiveShop.Cell(bench, "01-targets", 0)["source"]!);
        Assert.False((bool)bench.All()[0]["unsaved"]!);
    }

    [Fact]
    public async Task A_record_changed_on_the_disk_is_not_written_over()
    {
        await using var bench = shop.OpenScripted();
        bench.Try("", "P", "90 W", null, isDragging: false);
        await bench.IdleAsync();
        bench.Keep();
        var theirs = File.ReadAllText(shop.Record).Replace("47000", "22000", StringComparison.Ordinal).Replace("rated load", "their load", StringComparison.Ordinal);
        File.WriteAllText(shop.Record, theirs);

        var refusal = await Assert.ThrowsAsync<LiveRefusal>(bench.SaveAsync);

        Assert.Contains("record.json was changed by another program", refusal.Message, StringComparison.Ordinal);
        Assert.Equal(theirs, File.ReadAllText(shop.Record));
    }

    [Fact]
    public async Task A_disk_that_refuses_is_told_and_everything_stays()
    {
        shop.Disk = new FullDisk();
        await using var bench = shop.OpenScripted();
        var before = shop.Shop.Everything();
        bench.Edit("02-later", LiveShop.Id(bench, "02-later", 0), "# Mine");

        var refusal = await Assert.ThrowsAsync<LiveRefusal>(bench.SaveAsync);

        Assert.Contains("There is not enough space. Nothing was saved, and nothing here is lost.", refusal.Message, StringComparison.Ordinal);
        Assert.Equal(before, shop.Shop.Everything());
        Assert.Equal("# Mine", (string)LiveShop.Cell(bench, "02-later", 0)["source"]!);
        Assert.True((bool)bench.All()[0]["unsaved"]!);
    }

    [Fact]
    public async Task As_saved_drops_what_was_edited_and_tried()
    {
        await using var bench = shop.OpenScripted();
        bench.Edit("01-targets", LiveShop.Id(bench, "01-targets", 0), "# Mine");
        bench.Try("", "P", "200 W", null, isDragging: false);
        await bench.IdleAsync();

        await bench.AsSavedAsync();

        Assert.Equal("# Chapter 01-targets", (string)LiveShop.Cell(bench, "01-targets", 0)["source"]!);
        Assert.Empty(LiveShop.Sheet(bench)["tried"]!.AsArray());
        Assert.False((bool)bench.All()[0]["unsaved"]!);
        Assert.Equal("current", (string)bench.All()[0]["chapters"]![0]!["state"]!);
    }

    [Fact]
    public async Task Structure_is_changed_undone_and_done_again()
    {
        await using var bench = shop.OpenScripted();
        string[] Sources() => [.. bench.Chapter("01-targets")["cells"]!.AsArray().Select(c => (string)c!["source"]!)];
        var before = Sources();

        var added = bench.Add("01-targets", LiveShop.Id(bench, "01-targets", 0), "text");
        bench.Edit("01-targets", added, "Some words.");
        var split = bench.Split("01-targets", added, 4);
        Assert.Equal(["Some", " words."], Sources()[1..3]);
        bench.Move("01-targets", split, added);
        Assert.Equal([" words.", "Some"], Sources()[1..3]);
        bench.Delete("01-targets", added);
        Assert.Equal(before.Length + 1, Sources().Length);

        for (var i = 0; i < 3; i++)
            bench.Undo("01-targets");
        Assert.Equal("Some words.", Sources()[1]);
        bench.Undo("01-targets");
        Assert.Equal(before, Sources());
        Assert.False((bool)bench.All()[0]["unsaved"]!);
        Assert.Throws<LiveRefusal>(() => bench.Undo("01-targets"));
        bench.Redo("01-targets");
        Assert.Equal("Some words.", Sources()[1]);
    }

    [Fact]
    public async Task An_edited_cell_is_visibly_not_calculated_and_what_uses_it_after_it_is()
    {
        await using var bench = shop.OpenScripted();
        var cell = LiveShop.Id(bench, "01-targets", 2);

        bench.Edit("01-targets", cell, LiveShop.Targets.Replace("100.W", "90.W", StringComparison.Ordinal));
        Assert.Equal("edited", LiveShop.State(bench, "01-targets", 2));
        Assert.Equal("current", LiveShop.State(bench, "01-targets", 3));

        bench.Calculate("01-targets", "cell", cell);
        await bench.IdleAsync();

        Assert.Equal("current", LiveShop.State(bench, "01-targets", 2));
        Assert.Equal("stale", LiveShop.State(bench, "01-targets", 3));
        Assert.Equal("stale", LiveShop.State(bench, "02-later", 2));
    }

    private sealed class FullDisk : Disk
    {
        public override void Write(string path, ReadOnlySpan<byte> bytes) => throw new IOException("There is not enough space.");
    }
}
