using EightOhm.Circuits;
using EightOhm.Display.Schematics;
using EightOhm.Quantities;

namespace EightOhm.Display.Tests.Schematics;

/// <summary>What a plan may say, and how one that does not fit is refused.</summary>
public class PlanTests
{
    private static Circuit Divider(string? plan = null)
    {
        var c = new Circuit();
        c.Resistor("R_1", "in", "out", 1.kOhm);
        c.Resistor("R_2", "out", "0", 2.kOhm);
        return plan is null ? c : c.Plan(plan);
    }

    [Theory]
    [InlineData("in R_1", "leaves out R_2")]
    [InlineData("in R_1 R_2 R_3", "\"R_3\" in row 1, column 4")]
    [InlineData("in R_1\nR_2 outt", "Did you mean \"out\"?")]
    [InlineData("in R_1 R_1\nR_2", "R_1 stands 2 times")]
    [InlineData("in R_1< out\n. R_2*", "no element and no node \"R_2\"")]
    public void A_plan_that_does_not_fit_is_refused_in_words(string plan, string words) =>
        Assert.Contains(words, Assert.Throws<ArgumentException>(() => Divider(plan).Draw().Svg).Message, StringComparison.Ordinal);

    [Fact]
    public void Two_parts_on_one_place_are_refused()
    {
        var c = Divider();
        c["R_1"].At(1, 0);
        c["R_2"].At(1, 0);
        Assert.Contains("R_1 and R_2 are wished at one place, column 1, row 0", Assert.Throws<ArgumentException>(() => c.Draw().Svg).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Places_given_to_the_parts_are_a_plan_too()
    {
        var c = Divider();
        c["R_1"].At(0, 0);
        c["R_2"].At(1, 1);
        Assert.Empty(new DrawnNetlist(c.Draw().Svg).Faults(c));
    }

    [Fact]
    public void A_hint_turns_a_part()
    {
        string Pins(string plan) => new DrawnNetlist(Divider(plan).Draw().Svg).Parts.Single(p => p.Name == "R_1").Pins is var pins && pins[0].At.X == pins[1].At.X ? "stands" : "lies";
        Assert.Equal("lies", Pins("in R_1- out\n. . R_2"));
        Assert.Equal("stands", Pins("in . out\n. R_1| .\n. R_2 ."));
    }

    [Fact]
    public void Without_a_plan_the_parts_are_listed()
    {
        var c = Divider();
        Assert.Contains("resistor R_1 (1 kΩ) from in to out", Show.Html(c), StringComparison.Ordinal);
        Assert.DoesNotContain("<img", Show.Html(c), StringComparison.Ordinal);
        Assert.Contains("no plan", Assert.Throws<ArgumentException>(() => c.Draw().Svg).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_circuit_with_a_plan_is_shown_as_its_drawing()
    {
        var c = Divider("in R_1- out\n. . R_2");
        Assert.Contains("<img src=\"data:image/svg+xml;base64,", Show.Html(c), StringComparison.Ordinal);
        Assert.Contains("alt=\"Schematic: resistor R_1 (1 kΩ) from in to out; resistor R_2 (2 kΩ) from out to ground.\"", WebText(Show.Html(c)), StringComparison.Ordinal);
        Assert.Equal(c.Draw().ToString(), Show.Text(c));
    }

    private static string WebText(string html) => html.Replace("&#937;", "Ω", StringComparison.Ordinal);
}
