using System.Net;

namespace EightOhm.Cli.Tests;

/// <summary>A design without an answer: the run goes on, says so, and judges nothing by an older value.</summary>
public sealed class AnswerTests : IDisposable
{
    private const string Open = "var amp = DesignRecord.Open(\"amp.json\");";

    private const string Inputs = Open + "\nvar P = amp.Target(\"P\", 100.W);\nvar V_max = amp.Target(\"V_max\", 60.V);";

    // A solver that reaches its target up to 150 W.
    private const string Solve =
        "ElectricPotential Rail(Power P) => P < 150.W ? Sqrt(P * 8.Ohm) : throw new ShortfallException(\"The rail\", 3.2.V, \"it sags\", \"Take a larger transformer.\");\n" +
        "amp.Derive(\"before\", (Power P) => 2.0 * P);\n" +
        "var V_rail = amp.Compute(\"V_rail\", Rail(P));\n" +
        "amp.Require(\"the rail\", \"V_rail\").AtMost(\"V_max\");";

    private readonly Workshop shop = new();

    public void Dispose() => shop.Dispose();

    [Fact]
    public async Task A_shortfall_is_one_boxed_sentence_and_what_hangs_on_it_is_not_calculated()
    {
        shop.Notebook("05-rails", Inputs, Solve, "Console.Write($\"rail {V_rail}\");", "Console.Write(\"another matter\");");
        shop.Notebook("06-output", Open, "var V = amp.Get<ElectricPotential>(\"V_rail\");", "Console.Write($\"twice {2 * V}\");", "Console.Write(\"independent\");");
        Assert.Equal(0, (await shop.RunAsync(shop.Notebooks, "--save")).Code);

        var ran = await shop.RunAsync(shop.Notebooks, "--set", "P=200 W");

        Assert.Equal("", ran.Error);
        Assert.Equal(1, ran.Code);
        const string Says = "The rail is short by 3.2 V: it sags. Take a larger transformer.";
        Assert.Contains($"No answer in 05-rails.ipynb, cell 4, line 1: {Says} (With it 3 cells were not calculated.)", ran.Output, StringComparison.Ordinal);
        Assert.Matches("the rail .*cannot tell", ran.Output);
        var rails = Page("05-rails");
        Assert.Contains($"<strong>No answer:</strong> {Says}</div>", rails, StringComparison.Ordinal);
        Assert.Contains($"<strong>Not calculated:</strong> it needs V_rail, which had no answer in chapter 05, cell 4: {Says}</div>", rails, StringComparison.Ordinal);
        Assert.Contains("another matter", rails, StringComparison.Ordinal);
        var output = Page("06-output");
        Assert.Contains("<strong>Not calculated:</strong> it needs V_rail, which had no answer in chapter 05, cell 4:", output, StringComparison.Ordinal);
        Assert.Contains("<strong>Not calculated:</strong> it needs V, which had no answer in chapter 05, cell 4:", output, StringComparison.Ordinal);
        Assert.Contains("independent", output, StringComparison.Ordinal);
        Assert.Contains("<a href=\"05-rails.html#cell-4\">chapter 05, cell 4</a>", Page("index"), StringComparison.Ordinal);
        Assert.Contains("1 cannot be told.", Page("index"), StringComparison.Ordinal);
        Assert.DoesNotContain("..", Page("index"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_the_cell_wrote_before_it_failed_keeps_its_value()
    {
        shop.Notebook("05-rails", Inputs, Solve);
        await shop.RunAsync(shop.Notebooks, "--save");

        await shop.RunAsync(shop.Notebooks, "--save", "--set", "P=200 W");

        var record = EightOhm.Record.DesignRecord.Load(Path.Combine(shop.Notebooks, "amp.json"));
        Assert.Equal(EightOhm.Record.EntryState.NoAnswer, record.EntryOf("V_rail").State);
        Assert.NotEqual(EightOhm.Record.EntryState.NoAnswer, record.EntryOf("before").State);
        Assert.Contains("chapter 05, cell 4", record.EntryOf("V_rail").Reason, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("var x = SlewRate.Needed(-1.kHz, 1.V);")] // the library refuses
    [InlineData("var x = amp.Get<ElectricPotentialChangeRate>(\"SR\");")] // the record has no value
    public async Task A_refusal_of_the_library_is_no_answer(string code)
    {
        shop.Notebook("a", Inputs, "try { amp.Derive(\"SR\", (ElectricPotential V_max) => SlewRate.Needed(-1.0 * 1.kHz, V_max)); } catch (Exception) { }", code, "x");

        var ran = await shop.RunAsync(shop.Notebooks);

        Assert.Equal("", ran.Error);
        Assert.Equal(1, ran.Code);
        Assert.Contains("<strong>No answer:</strong>", Page("a"), StringComparison.Ordinal);
        Assert.Contains("it needs x, which had no answer in a.ipynb, cell 5", Page("a"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_fresh_record_judges_what_it_was_never_asked()
    {
        shop.Notebook("05-rails", Inputs, Solve.Replace("150.W", "50.W", StringComparison.Ordinal), "Console.Write(amp.Verdict(\"V_rail\"));");
        shop.Notebook("06-output", Open, "amp.Recall(out Power P, out ElectricPotential V_rail);", "Console.Write($\"twice {2 * V_rail}\");");

        var ran = await shop.RunAsync(shop.Notebooks, "--save");

        Assert.Equal("", ran.Error);
        Assert.Equal(1, ran.Code);
        Assert.Matches("the rail .*cannot tell", ran.Output);
        Assert.Contains("undecided: chapter 05, cell 4: The rail is short by 3.2 V", Page("05-rails"), StringComparison.Ordinal);
        Assert.Contains("<strong>Not calculated:</strong> it needs V_rail, which had no answer in chapter 05, cell 4:", Page("06-output"), StringComparison.Ordinal);
        var row = Assert.Single(EightOhm.Record.DesignRecord.Load(Path.Combine(shop.Notebooks, "amp.json")).Compliance());
        Assert.Equal(("V_rail", EightOhm.Record.RequirementState.CannotTell), (row.Entry, row.State));
    }

    [Theory]
    [InlineData("SlewRate.Needed(1.kHz, x.DecimalFractions * 1.V)", 1)] // the library refuses one of the cases
    [InlineData("x > 2.percent ? 1.V_per_us : throw new NullReferenceException()", 3)] // the cell's own code is wrong
    public async Task The_worst_of_what_is_refused_is_no_answer_and_of_what_is_wrong_a_failure(string rule, int code)
    {
        shop.Notebook("a", Inputs, $"amp.Compute(\"SR\", amp.Conditions().Range(\"x\", -(1.percent), 1.percent).Highest((Ratio x) => {rule}));");

        Assert.Equal(code, (await shop.RunAsync(shop.Notebooks)).Code);
    }

    [Theory]
    [InlineData("throw new ArgumentOutOfRangeException(\"n\");")] // the cell's own
    [InlineData("new List<int>()[3]")] // the framework's
    [InlineData("amp.Get<Power>(\"none\")")] // an entry that is not there
    public async Task A_fault_of_the_cells_own_code_is_a_failure(string code)
    {
        shop.Notebook("a", Inputs, code);

        var ran = await shop.RunAsync(shop.Notebooks);

        Assert.Equal(3, ran.Code);
        Assert.StartsWith("a.ipynb, cell 4", ran.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("x = Fail();")] // assigned
    [InlineData("list.Add(Fail());")] // changed by a call
    [InlineData("list[0] += Fail();")] // changed in place
    [InlineData("Change(ref x); Fail();")] // passed by reference
    [InlineData("(x, list) = (Fail(), null);")] // taken apart
    public async Task What_a_failed_cell_may_have_changed_is_not_used_again(string code)
    {
        shop.Notebook(
            "a",
            "int x = 1; var list = new List<int> { 1 };\nint Fail() => x < 0 ? 1 : throw new InvalidOperationException(\"no\");\nvoid Change(ref int y) => y++;",
            code,
            "Console.Write($\"used {x} {list.Count}\");");

        Assert.Equal(3, (await shop.RunAsync(shop.Notebooks)).Code);

        Assert.Contains("Not calculated:", Page("a"), StringComparison.Ordinal);
        Assert.DoesNotContain("used 1", Page("a"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_a_cell_showed_before_it_failed_stays()
    {
        shop.Notebook("a", "Console.WriteLine(\"so far\");\nthrow new InvalidOperationException(\"no\");");

        await shop.RunAsync(shop.Notebooks);

        Assert.Matches("so far(.|\n)*This cell failed:", Page("a"));
    }

    private string Page(string name) => WebUtility.HtmlDecode(File.ReadAllText(Path.Combine(shop.Book, name + ".html")));
}
