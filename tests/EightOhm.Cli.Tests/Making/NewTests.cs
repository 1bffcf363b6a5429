using System.Text.RegularExpressions;
using EightOhm.Cli.Making;
using EightOhm.Record;

namespace EightOhm.Cli.Tests.Making;

/// <summary>eightohm new: what is made, what is refused, and that nothing is half made.</summary>
public sealed class NewTests : IDisposable
{
    private readonly string place = Directory.CreateTempSubdirectory("eightohm-new-").FullName;

    public void Dispose() => Directory.Delete(place, recursive: true);

    [Fact]
    public async Task A_design_is_made_with_its_targets_cards_and_name()
    {
        var ran = await NewAsync("my-amp", "--name", "Größe <1> & \"co\"", "--set", "P=60 W", "R_L=4 Ohm", "n_ch=1", "V_line=120 V", "f_mains=60 Hz", "V_in=0.775 V", "n=4");
        Assert.Equal((ExitCode.Done, ""), (ran.Code, ran.Error));
        Assert.Contains("one channel of 60 W into 4 Ω", ran.Output, StringComparison.Ordinal);
        Assert.Contains("driver npn: Driver 50 W npn, larger than it must be for what it bears", ran.Output, StringComparison.Ordinal);
        Assert.Contains("eightohm run", ran.Output, StringComparison.Ordinal);

        var folder = Path.Combine(place, "my-amp");
        var inputs = Inputs(folder);
        Assert.Equal("60.W", Code(inputs, "P"));
        Assert.Equal("60.W", Code(inputs, "P_Lmin"));
        Assert.Equal("4.Ohm", Code(inputs, "R_Lmin"));
        Assert.Equal("60.Hz", Code(inputs, "f_mains"));
        Assert.Equal("4", Code(inputs, "n")); // asked for: the sizing's own is left
        // What it is, and why, without a number.
        var because = inputs.First(i => i.Name == "R_f").Words!.Value.Text;
        Assert.Matches("^feedback.*: feedback for rated power at the sensitivity, the loss of the input network made up for$", because);
        Assert.All(inputs.Where(i => i.IsPart), i => Assert.True(File.Exists(Path.Combine(folder, (string)i.Value)), (string)i.Value));
        Assert.Equal("Größe <1> & \"co\"", DesignRecord.Load(Path.Combine(folder, "record.json")).Name);
        // A reason stands where the old one stood, on lines of its own or behind the value: no line is left empty or ends in a blank.
        Assert.All(Directory.GetFiles(folder, "*.ipynb"), f => Assert.DoesNotContain(" \\n\"", File.ReadAllText(f), StringComparison.Ordinal));
        // The name stands in the record and nowhere else; the design that was copied is nowhere.
        var files = Directory.GetFiles(folder, "*", SearchOption.AllDirectories);
        Assert.All(files.Where(f => !f.EndsWith("record.json", StringComparison.Ordinal)), f => Assert.DoesNotContain("Größe", File.ReadAllText(f), StringComparison.Ordinal));
        Assert.All(files, f => Assert.DoesNotMatch(@"\bTern\b", File.ReadAllText(f)));
        Assert.Single(Directory.GetFileSystemEntries(place));
    }

    [Theory]
    [InlineData("no card", "--devices", "none", "there is no such folder of cards")]
    [InlineData("unknown", "--set", "P_Lmn=60 W", "the design has no P_Lmn. Did you mean P_Lmin? What can be set: P, R_L")]
    [InlineData("unit", "--set", "P=60 V", "P")]
    [InlineData("form", "--set", "P", "must be \"name=value with unit\", for example --set \"P=60 W\"")]
    [InlineData("negative", "--set", "P=-60 W", "P")]
    [InlineData("load", "--set", "R_Lmin=16 Ohm", "R_Lmin must be at most R_L, 8 Ω (was 16 Ω)")]
    [InlineData("power", "--set", "P_Lmin=1 kW", "P_Lmin must be at most")]
    [InlineData("none", "--set", "n_ch=0", "must be from 1 to 100")]
    [InlineData("card", "--set", "bridge=nowhere.json", "there is no such file")]
    [InlineData("empty name", "--name", " ", "--name must not be empty")]
    public async Task What_cannot_be_is_refused_in_words_and_nothing_is_written(string what, string option, string value, string says)
    {
        var ran = await NewAsync("amp", option, value);
        Assert.True(ran.Code == ExitCode.BadInput, what);
        Assert.Contains(says, ran.Error, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFileSystemEntries(place));
    }

    [Fact]
    public async Task What_distortion_costs_is_told_and_heat_at_idle_may_be_bounded()
    {
        var free = await NewAsync("warm", "--set", "P=25 W");
        Assert.Contains("What it costs:\n  One pair of outputs would bear load and heat", free.Output, StringComparison.Ordinal);
        var bounded = await NewAsync("cool", "--set", "P=25 W", "P_idlemax=20 W");
        Assert.Contains("P_idlemax = 20 W: as asked for", bounded.Output, StringComparison.Ordinal);
        Assert.Contains("more dissipation at idle, for more pairs, or a gentler promise", bounded.Output, StringComparison.Ordinal);
        Assert.Contains("\"P_idlemax\", 20.W", string.Concat(Directory.GetFiles(Path.Combine(place, "cool"), "07*.ipynb").Select(File.ReadAllText)).Replace("\\\"", "\"", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_value_set_twice_is_refused()
    {
        var ran = await NewAsync("amp", "--set", "P=60 W", "--set", "P=70 W");
        Assert.Equal(ExitCode.BadInput, ran.Code);
        Assert.Contains("P is set twice", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_folder_with_something_in_it_is_left_alone()
    {
        Directory.CreateDirectory(Path.Combine(place, "amp"));
        File.WriteAllText(Path.Combine(place, "amp", "mine.txt"), "mine");
        var ran = await NewAsync("amp");
        Assert.Equal(ExitCode.BadInput, ran.Code);
        Assert.Contains("is not empty", ran.Error, StringComparison.Ordinal);
        Assert.Equal("mine", File.ReadAllText(Path.Combine(place, "amp", "mine.txt")));
        Assert.Single(Directory.GetFileSystemEntries(place));
        Assert.Contains("is a file", (await NewAsync(Path.Combine("amp", "mine.txt"))).Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_place_that_fails_on_the_way_keeps_nothing()
    {
        var folder = Path.Combine(place, "amp");
        var failure = Assert.Throws<RunFailure>(() => NewFolder.Make(folder, at =>
        {
            NewFolder.Write(at, "one.txt", [1]);
            throw new IOException("No space left on device.");
        }));
        Assert.Contains("cannot be made: No space left on device. Choose a place that can be written to.", failure.Message, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFileSystemEntries(place));
    }

    [Fact]
    public void An_empty_folder_is_filled()
    {
        var folder = Path.Combine(place, "amp");
        Directory.CreateDirectory(folder);
        NewFolder.Make(NewFolder.Check(folder), at => NewFolder.Write(at, Path.Combine("cards", "one.txt"), [1]));
        Assert.True(File.Exists(Path.Combine(folder, "cards", "one.txt")));
    }

    [Fact]
    public void Every_name_that_the_sizing_gives_is_an_input_of_the_design()
    {
        var names = DesignTemplate.Shipped().Inputs.Select(i => i.Name).ToHashSet();
        string[] targets = ["P", "R_L", "R_Lmin", "P_Lmin", "phi_L", "n_ch", "V_in", "V_line", "f_mains", "m_tol", "T_a", "f_min", "f_max"];
        Assert.All(targets, name => Assert.Contains(name, names));
    }

    private static IReadOnlyList<DesignInput> Inputs(string folder) =>
        DesignTemplate.Of(Directory.GetFiles(folder, "*.ipynb").Select(f => (Path.GetFileName(f), File.ReadAllText(f)))).Inputs;

    private static string Code(IReadOnlyList<DesignInput> inputs, string name) => inputs.First(i => i.Name == name) is var input ? input.Code!.Write(input.Value) : "";

    private async Task<Ran> NewAsync(string folder, params string[] more)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        var code = await CommandLine.InvokeAsync(["new", Path.Combine(place, folder), .. more], output, error, live: false);
        return new Ran(code, output.ToString(), error.ToString());
    }
}
