using System.Globalization;
using EightOhm.Design.Tests.Running;
using Xunit.Abstractions;

namespace EightOhm.Design.Tests;

/// <summary>The promise of the record: what it vouches for is so, whatever was moved. Held against a full run of every chapter.</summary>
public class PerturbationTests(ITestOutputHelper output)
{
    /// <summary>How many inputs of a design a usual run moves; EIGHTOHM_ALL_MOVES=1 moves every one.</summary>
    private const int Usual = 3;

    public static TheoryData<string> Designs => TestedDesign.Names;

    [Theory]
    [MemberData(nameof(Designs))]
    public async Task What_a_full_run_changes_the_record_called_stale_before_it(string design)
    {
        var (settled, failures) = await DesignFolder.Settled(TestedDesign.Of(design));
        Assert.Empty(failures);

        var all = Move.All(settled);
        var chosen = Environment.GetEnvironmentVariable("EIGHTOHM_ALL_MOVES") == "1" ? all : Some(all);
        var sum = new Tally();
        foreach (var move in chosen)
            await Try(move, settled, sum);

        output.WriteLine($"{design}: {all.Select(m => m.Name).Distinct().Count()} inputs, {chosen.Count} moves, {sum.Refused} refused in words, {sum.Compared} values compared, {sum.Changed} changed, {sum.Wrong.Count} told wrongly");
        Say($"{design}: done, {sum.Compared} compared, {sum.Changed} changed, {sum.Refused} refused, {sum.Wrong.Count} wrong");
        Assert.True(sum.Compared > 0);
        Assert.True(sum.Changed > 0);
        Assert.Empty(sum.Wrong);
    }

    private async Task Try(Move move, DesignFolder settled, Tally sum)
    {
        using var folder = DesignFolder.CopyOf(settled);
        var still = Snapshot.Of(folder.Record());
        try
        {
            move.Apply(folder);
        }
        catch (Exception e) when (e is Record.RecordException or ArgumentException)
        {
            sum.Refused++;
            output.WriteLine($"{move.Name} × {move.Factor}: refused, {e.Message}");
            return;
        }

        var before = Snapshot.Of(folder.Record());
        var failures = await folder.RunAsync();
        var after = Snapshot.Of(folder.Record());
        var changed = still.ChangedIn(after);
        var wrong = before.ToldWrongly(after).Select(w => string.Create(CultureInfo.InvariantCulture, $"{move.Name} × {move.Factor}: {w}")).ToList();
        sum.Compared += after.Entries.Count + after.Requirements.Count;
        sum.Changed += changed;
        sum.Wrong.AddRange(wrong);
        Say($"{move.Name} × {move.Factor}: {changed} changed, {failures.Count} cells without an answer, {wrong.Count} told wrongly {string.Join("; ", wrong)}");
    }

    private void Say(string line)
    {
        output.WriteLine(line);
        // All moves take hours: what was found so far can be read while they run.
        if (Environment.GetEnvironmentVariable("EIGHTOHM_MOVES_LOG") is { Length: > 0 } log)
            File.AppendAllText(log, line + Environment.NewLine);
    }

    // The same few every time, picked from all over: inputs of every role and figures of cards.
    private static List<Move> Some(IReadOnlyList<Move> all)
    {
        var random = new Random(8);
        return [.. Enumerable.Range(0, Usual).Select(i => all[(i * all.Count / Usual) + random.Next(all.Count / Usual)])];
    }

    private sealed class Tally
    {
        public int Refused { get; set; }

        public int Compared { get; set; }

        public int Changed { get; set; }

        public List<string> Wrong { get; } = [];
    }
}
