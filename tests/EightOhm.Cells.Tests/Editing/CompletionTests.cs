using EightOhm.Cells.Editing;

namespace EightOhm.Cells.Tests.Editing;

public sealed class CompletionTests(Asked asked) : IClassFixture<Asked>
{
    private static List<string> Labels(CompletionAnswer answer) => [.. answer.Items.Select(i => i.Label)];

    private static CompletionEntry The(CompletionAnswer answer, string label) => Assert.Single(answer.Items, i => i.Label == label);

    [Theory]
    [InlineData("var P = 100.|")]
    [InlineData("var P = 4.7.|")]
    [InlineData("Explain(() => Sqrt(100.|W * 8.Ohm))")]
    public async Task Behind_a_number_stand_the_units(string cell)
    {
        var labels = Labels(await asked.Completed(cell));
        Assert.Empty(new[] { "W", "V", "Ohm", "kOhm", "degC", "nV_rtHz" }.Except(labels));
        Assert.True(labels.IndexOf("W") < labels.IndexOf("CompareTo"), "The house's own stand before what every number has.");
    }

    [Fact]
    public async Task A_unit_tells_of_what_kind_its_value_is()
    {
        var watts = The(await asked.Completed("var P = 100.W|"), "W");
        Assert.Equal(("W", "property", "Power"), (watts.Insert, watts.Kind, watts.Detail));
        Assert.Contains("So many watts.", watts.Documentation, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_typed_is_replaced()
    {
        var answer = await asked.Completed("var R = 8.5.kO| * 2;");
        Assert.Equal((12, 14), (answer.From, answer.To));
        Assert.Equal("kOhm", answer.Items[0].Label);
    }

    [Fact]
    public async Task A_variable_of_an_earlier_cell_comes_first_with_its_type()
    {
        var first = (await asked.Completed("bri|", asked.Supply)).Items[0];
        Assert.Equal(("bridge", "variable", "RectifierBridge"), (first.Label, first.Kind, first.Detail));
    }

    [Fact]
    public async Task Of_a_variable_of_an_earlier_cell_its_members_stand_there()
    {
        var answer = await asked.Completed("bridge.|", asked.Supply);
        var drop = The(answer, "DropAt");
        Assert.Equal(("method", "(ElectricCurrent I) → ElectricPotential"), (drop.Kind, drop.Detail));
        Assert.Contains("The drop of one diode at a current", drop.Documentation, StringComparison.Ordinal);
        Assert.Contains("MaxReverseVoltage", Labels(answer));
        // What every value has stands behind what this one has.
        Assert.Equal("SlopeResistance", Labels(answer).Where(l => l is "Display" or "GetType" or "SlopeResistance").First());
    }

    [Fact]
    public async Task The_record_has_its_verbs()
    {
        var labels = Labels(await asked.Completed("design.|", asked.Supply));
        Assert.Empty(new[] { "Choose", "Assume", "Derive", "Compute", "Require", "Part" }.Except(labels));
    }

    [Fact]
    public async Task A_function_of_an_earlier_cell_is_one()
    {
        var budget = The(await asked.Completed("Budg|", asked.Supply), "Budget");
        Assert.Equal(("function", "(OutputRating r) → SwingBudget"), (budget.Kind, budget.Detail));
    }

    [Fact]
    public async Task Members_of_a_record_declared_in_a_cell_stand_there()
    {
        string[] before = ["/// <summary>A pair.</summary>\n/// <param name=\"Beta\">Its current gain.</param>\nrecord Pair(double Beta, Power Loss);", "var pair = new Pair(120, 2.W);"];
        var answer = await asked.Completed("pair.|", before);
        Assert.Equal(["Beta", "Deconstruct", "Loss"], Labels(answer).Take(3));
        Assert.Equal("Power", The(answer, "Loss").Detail);
        Assert.Contains("Its current gain.", The(answer, "Beta").Documentation, StringComparison.Ordinal);
    }

    [Fact]
    public async Task In_a_call_the_names_of_its_parameters_stand_there()
    {
        var first = await asked.Completed("ThermalNoise.VoltageDensity(|");
        var named = The(first, "R:");
        Assert.Equal(("R:", "argument", "ElectricResistance"), (named.Insert, named.Kind, named.Detail));
        Assert.Contains("The resistance; 0 Ω or more.", named.Documentation, StringComparison.Ordinal);
        Assert.Contains("T:", Labels(await asked.Completed("ThermalNoise.VoltageDensity(R: 1.kOhm, |)")));
    }

    [Theory]
    [InlineData("var p = new Pair { Lo| };")]
    [InlineData("var q = pair with { Lo| };")]
    public async Task Between_braces_what_may_be_set_stands_with_its_type(string cell)
    {
        string[] before = ["record Pair { /// <summary>What it burns.</summary>\n public Power Loss { get; init; } public int Count => 2; }", "var pair = new Pair();"];
        var loss = The(await asked.Completed(cell, before), "Loss");
        Assert.Equal(("property", "Power"), (loss.Kind, loss.Detail));
        Assert.Contains("What it burns.", loss.Documentation, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_quantity_is_one_of_the_house() =>
        Assert.Equal("Power", (await asked.Completed("design.Recall(out Powe|", asked.Supply)).Items[0].Label);

    [Theory]
    [InlineData("ThermalNoise.vd|", "VoltageDensity")]
    [InlineData("ThermalNoise.dens|", "VoltageDensity")]
    [InlineData("thermaln|", "ThermalNoise")]
    [InlineData("new outputr|", "OutputRating")]
    public async Task Letters_fit_in_any_case_at_the_start_of_words_and_within(string cell, string name) =>
        Assert.Contains(name, Labels(await asked.Completed(cell)));

    [Fact]
    public async Task A_beginning_stands_before_letters_within()
    {
        var labels = Labels(await asked.Completed("new Trans|"));
        Assert.True(labels.IndexOf("Transistor") < labels.IndexOf("MainsTransformer"));
        Assert.DoesNotContain("Circuit", labels);
    }

    [Fact]
    public async Task At_an_empty_place_the_notebooks_own_come_first_and_there_are_at_most_two_hundred()
    {
        var answer = await asked.Completed("|", asked.Supply);
        Assert.Equal(200, answer.Items.Count);
        Assert.All(answer.Items.Take(10), i => Assert.True(i.Kind is "variable" or "function", $"{i.Label} is a {i.Kind}."));
        Assert.All(answer.Items.Take(20), i => Assert.NotNull(i.Documentation));
        Assert.Null(answer.Items[100].Documentation);
    }

    [Fact]
    public async Task A_name_far_down_is_described_when_asked()
    {
        var answer = await asked.Completed("|", asked.Supply);
        var later = answer.Items.Skip(20).First(i => i.Kind == "class");
        Assert.StartsWith("<div class=\"eo-about\">", await asked.Assistant.DescribeAsync(asked.Supply, "", 0, later.Label), StringComparison.Ordinal);
        Assert.Equal("", await asked.Assistant.DescribeAsync(asked.Supply, "", 0, "no such name"));
    }

    [Fact]
    public async Task What_is_put_in_is_plain_text()
    {
        foreach (var cell in new[] { "|", "new Lis|", "design.|", "var x = new List<Power>().|" })
        {
            var answer = await asked.Completed(cell, asked.Supply);
            Assert.NotEmpty(answer.Items);
            Assert.All(answer.Items, i => Assert.DoesNotMatch("[<>$()\n]", i.Insert));
            Assert.Equal(answer.Items.Count, answer.Items.Select(i => i.Label).Distinct().Count());
        }
    }

    [Theory]
    [InlineData("// a rema|")]
    [InlineData("var s = \"te|xt\";")]
    [InlineData("var n = 100|")]
    [InlineData("#!python\npri|")]
    public async Task Where_no_name_may_stand_there_is_none(string cell) =>
        Assert.Empty((await asked.Completed(cell)).Items);

    [Fact]
    public async Task In_an_interpolated_text_names_stand()
    {
        Assert.Equal("V_pk", (await asked.Completed("Say($\"{V_pk|}\");", asked.Supply)).Items[0].Label);
    }

    [Fact]
    public async Task A_changed_cell_is_read_anew_and_a_shorter_notebook_forgets()
    {
        Assert.Equal("Power", The(await asked.Completed("alpha|", "var alpha = 1.W;", "var beta = alpha;"), "alpha").Detail);
        Assert.Equal("ElectricPotential", The(await asked.Completed("beta|", "var alpha = 1.V;", "var beta = alpha;"), "beta").Detail);
        Assert.DoesNotContain("beta", Labels(await asked.Completed("bet|", "var alpha = 1.V;")));
        Assert.Contains("beta", Labels(await asked.Completed("bet|", "var alpha = 1.V;", "var beta = alpha;")));
    }

    [Fact]
    public async Task A_cell_that_does_not_compile_keeps_no_name_away()
    {
        string[] before = ["var broken = ;", "int wrong = \"x\"; var fine = 3;", "#r \"nuget: EightOhm.Notebook, 0.1.0\"\nvar later = fine * 2.V;"];
        Assert.Equal("ElectricPotential", The(await asked.Completed("lat|", before), "later").Detail);
    }

    [Fact]
    public async Task A_place_outside_the_cell_is_refused()
    {
        var refused = await Assert.ThrowsAsync<ArgumentOutOfRangeException>(() => asked.Assistant.CompleteAsync([], "abc", 4));
        Assert.Contains("0 to 3", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_question_can_be_stopped()
    {
        using var stop = new CancellationTokenSource();
        await stop.CancelAsync();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => asked.Assistant.CompleteAsync(asked.Supply, "V_", 2, stop.Token));
    }

    [Fact]
    public async Task Many_may_ask_at_once_each_of_another_state()
    {
        var answers = await Task.WhenAll(Enumerable.Range(0, 24).Select(i => asked.Completed($"only{i % 8}|", $"var only{i % 8} = {i % 8}.V;", "var more = 1;")));
        for (var i = 0; i < answers.Length; i++)
            Assert.Equal("ElectricPotential", The(answers[i], $"only{i % 8}").Detail);
    }
}
