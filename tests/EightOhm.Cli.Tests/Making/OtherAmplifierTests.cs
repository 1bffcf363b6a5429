using System.Text.RegularExpressions;
using EightOhm.Cells.Compiling;
using EightOhm.Record;

namespace EightOhm.Cli.Tests.Making;

/// <summary>Amplifiers that are not the one the notebooks were written for, from one command to the end of their run.</summary>
public sealed partial class OtherAmplifierTests(OtherAmplifierTests.Kept kept) : IClassFixture<OtherAmplifierTests.Kept>, IDisposable
{
    private readonly string place = Directory.CreateTempSubdirectory("eightohm-others-").FullName;

    public void Dispose() => Directory.Delete(place, recursive: true);

    [Theory]
    [InlineData("mono 60 W 4 Ω 120 V", new[] { "P=60 W", "R_L=4 Ohm", "n_ch=1", "V_line=120 V", "f_mains=60 Hz" })]
    [InlineData("stereo 25 W 8 Ω 100 V", new[] { "P=25 W", "R_L=8 Ohm", "V_line=100 V", "f_mains=50 Hz" })]
    [InlineData("stereo 250 W 4 Ω 230 V", new[] { "P=250 W", "R_L=4 Ohm" })]
    public async Task It_runs_to_the_end_and_meets_what_is_asked(string name, string[] targets)
    {
        var (record, book) = await MadeAsync(name, targets);
        var rows = record.Compliance();
        Assert.Equal([], rows.Where(r => r.State != RequirementState.Met).Select(r => $"{r.Label}: {r.Value}, {r.Limit}"));
        Assert.Equal(name, record.Name);
        Assert.DoesNotMatch(Tern(), book);
    }

    [Fact]
    public async Task A_promise_that_no_loop_keeps_is_told_before_the_run_and_alone_not_met_by_it()
    {
        // Noise to signal grows as the signal falls, and the slope of the largest sine does not.
        var (record, told) = await MadeAsync("mono, less at the input", ["P=60 W", "R_L=4 Ohm", "n_ch=1", "V_line=120 V", "f_mains=60 Hz", "V_in=0.775 V"]);
        Assert.Contains("Signal to noise over the whole band asks for less than pair and divider make", told, StringComparison.Ordinal);
        Assert.Equal(["signal to noise at 775 mV, whole stage, full band"], record.Compliance().Where(r => r.State != RequirementState.Met).Select(r => r.Label));
    }

    [Fact]
    public async Task Targets_beyond_every_part_are_answered_row_by_row()
    {
        var (record, book) = await MadeAsync("far too much", ["P=5 kW", "R_L=2 Ohm"]);
        var rows = record.Compliance();
        // As many as any design has: what a run did not come to is a row all the same.
        Assert.True(rows.Count > 60, $"{rows.Count} rows");
        Assert.DoesNotContain(rows, r => r.State == RequirementState.CannotTell && string.IsNullOrEmpty(r.Reason));
        // The nearest parts get as far as the supply, which is far too low; then no output transistor bears it.
        Assert.Contains(rows, r => r is { Label: "rail above the voltage-swing budget, all channels driven", State: RequirementState.NotMet });
        Assert.Contains(rows, r => r.State == RequirementState.CannotTell && r.Reason!.Contains("V_CEO", StringComparison.Ordinal));
        Assert.Contains("cannot be told", book, StringComparison.Ordinal);
        // One reason for many rows is told once.
        Assert.Matches(@"take another transistor\.</strong> \d{2,3} requirements: ", book);
    }

    private async Task<(DesignRecord Record, string Book)> MadeAsync(string name, string[] targets)
    {
        var folder = Path.Combine(place, "other-amp");
        var made = await InvokeAsync(["new", folder, "--name", name, .. targets.SelectMany(t => new[] { "--set", t })]);
        Assert.True(made.Code == ExitCode.Done, made.Error);
        var book = Path.Combine(place, "book");
        kept.LendTo(folder);
        var ran = await InvokeAsync(["run", folder, "--save", "--limit", "900", "--out", book]);
        Assert.True(ran.Code is ExitCode.Done or ExitCode.NotMet, ran.Output + ran.Error);
        kept.TakeFrom(folder);
        var pages = string.Concat(Directory.GetFiles(book, "*.html", SearchOption.AllDirectories).Select(File.ReadAllText));
        return (DesignRecord.Load(Path.Combine(folder, "record.json")), made.Output + ran.Output + pages);
    }

    private static async Task<Ran> InvokeAsync(string[] args)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        var code = await CommandLine.InvokeAsync(args, output, error, live: false);
        return new Ran(code, output.ToString(), error.ToString());
    }

    [GeneratedRegex(@"\bTern\b")]
    private static partial Regex Tern();

    /// <summary>The compiled cells of the amplifier before: only those that the next one writes otherwise are compiled anew.</summary>
    public sealed class Kept : IDisposable
    {
        private readonly string place = Directory.CreateTempSubdirectory("eightohm-kept-").FullName;

        public void LendTo(string folder) => Repository.Copy(place, Path.Combine(folder, KeptImages.Folder), _ => true);

        public void TakeFrom(string folder) => Repository.Copy(Path.Combine(folder, KeptImages.Folder), place, _ => true);

        public void Dispose() => Directory.Delete(place, recursive: true);
    }
}
