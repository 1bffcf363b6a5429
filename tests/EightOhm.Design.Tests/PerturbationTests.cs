using System.Globalization;
using EightOhm.Design.Tests.Running;
using Xunit.Abstractions;

namespace EightOhm.Design.Tests;

/// <summary>The promise of the record: what it vouches for is so, whatever was moved. Held against a full run of every chapter.</summary>
public class PerturbationTests(ITestOutputHelper output)
{
    /// <summary>How many inputs a usual run of the tests moves; EIGHTOHM_MOVES=all moves every one.</summary>
    private const int Usual = 12;

    [Fact]
    public async Task What_a_full_run_changes_the_record_called_stale_before_it()
    {
        using var settled = DesignFolder.Copy();
        Assert.Empty(await settled.RunAsync());

        var all = Move.All(settled);
        var chosen = Environment.GetEnvironmentVariable("EIGHTOHM_MOVES") is { Length: > 0 } wish
            ? wish == "all" ? all : [.. all.Where(m => m.Name.StartsWith(wish, StringComparison.Ordinal))]
            // A stride that shares no factor with the count walks through roles and cards alike.
            : [.. Enumerable.Range(0, Usual).Select(i => all[(int)((i * 7919L) % all.Count)])];
        var wrong = new List<string>();
        var moved = 0;
        var values = 0;
        foreach (var move in chosen)
        {
            using var folder = DesignFolder.CopyOf(settled);
            var still = Snapshot.Of(folder.Record());
            string refused;
            try
            {
                move.Apply(folder);
                refused = "";
            }
            catch (Exception e) when (e is Record.RecordException or ArgumentException)
            {
                refused = e.Message;
            }

            if (refused.Length > 0)
            {
                output.WriteLine($"{move.Name} × {move.Factor}: refused, {refused}");
                continue;
            }

            var before = Snapshot.Of(folder.Record());
            var failures = await folder.RunAsync();
            var after = Snapshot.Of(folder.Record());
            moved++;
            values += after.Entries.Count(e => still.Entries.TryGetValue(e.Key, out var old) && old.Value != e.Value.Value);
            wrong.AddRange(before.ToldWrongly(after).Select(w => string.Create(CultureInfo.InvariantCulture, $"{move.Name} × {move.Factor}: {w}")));
            output.WriteLine($"{move.Name} × {move.Factor}: {failures.Count} without an answer, {wrong.Count} wrong so far");
        }

        output.WriteLine($"{moved} of {chosen.Count} moves run, {values} values changed, {wrong.Count} told wrongly");
        Assert.True(moved > 0);
        Assert.True(values > 0);
        Assert.Empty(wrong);
    }
}
