using AngleSharp.Html.Parser;
using EightOhm.Display.Tables;
using EightOhm.Quantities;
using EightOhm.Teaching;

namespace EightOhm.Display.Tests.Tables;

/// <summary>Exercises say the same on a page as on a console, and a right answer is told from a wrong one by more than a colour.</summary>
public class ExerciseHtmlTests
{
    private static Exercise Own => Exercise.Ask("V_CEO < 50 V & more", 3.V).Slip(6.V, "Twice.").Hints("First.", "Then.").Step("Half of it.");

    [Fact]
    public void A_question_is_escaped_its_symbols_are_typeset()
    {
        Assert.Equal("V_CEO < 50 V & more Answer with Check(…): a voltage, written like 1.23.V or 1230.mV.", Words(Own));
        Assert.Contains("<sub>", Show.Html(Own), StringComparison.Ordinal);
        Assert.StartsWith("Exercise 05-ripple, warm-up", Words(Exercise.Of("05-ripple", 0)), StringComparison.Ordinal);
    }

    [Fact]
    public void A_verdict_has_a_sign_and_words()
    {
        Assert.Contains("✓\u00A0" + "3 V: Right: 3 V.", Words(Own.Check(3.V)), StringComparison.Ordinal);
        Assert.Contains("✗\u00A0" + "6 V: Twice.", Words(Own.Check(6.V)), StringComparison.Ordinal);
        Assert.DoesNotMatch("[✓✗]", Words(Own.Check()));
        Assert.Equal("V_CEO < 50 V & more\n6 V: Twice.", Show.Text(Own.Check(6.V)));
    }

    [Fact]
    public void The_limits_of_a_choice_are_a_list()
    {
        var task = Exercise.Choose<UnitsNet.ElectricPotential>("Choose V.", "V", V => [Criterion.AtLeast("floor", V, 1.V, "More."), Criterion.AtMost("ceiling", V, 2.V, "Less.")]);
        var page = new HtmlParser().ParseDocument(Show.Html(task.Check(3.V)));
        Assert.Equal(["✓\u00A0floor: 3 V, at least 1 V: met", "✗\u00A0ceiling: 3 V, at most 2 V: not met. Less."], page.QuerySelectorAll("li").Select(i => i.TextContent.Replace("\u200B", "", StringComparison.Ordinal)));
        Assert.Contains("ceiling: 3 V, at most 2 V: not met. Less.", Show.Text(task.Check(3.V)), StringComparison.Ordinal);
    }

    [Fact]
    public void Hints_and_solutions_are_shown()
    {
        var own = Own;
        Assert.StartsWith("Hint 1 of 2: First.", Words(own.Hint()), StringComparison.Ordinal);
        Assert.Equal("There is no hint; Solution() shows the working.", Words(Exercise.Ask("?", 3.V).Hint()));
        Assert.Equal("V_CEO < 50 V & more Half of it. Answer: 3 V.", string.Join(' ', new HtmlParser().ParseDocument(Show.Html(own.Solution())).QuerySelectorAll("p").Select(p => p.TextContent)));
        Assert.Contains("<math", Show.Html(Exercise.Of("05-ripple", 0).Solution()), StringComparison.Ordinal);
    }

    [Fact]
    public void The_progress_is_a_table_with_a_sum()
    {
        var table = ProgressTables.Of(new CourseProgress([new("00 start here", 5, 1, 3), new("01 more", 4, 0, 0)], "Damaged."));
        Assert.Equal(["chapter", "asked", "right at first try", "right", "open"], table.Headings);
        Assert.Equal(["00 start here", "5", "1", "3", "2"], table.Rows[0]);
        Assert.Equal(["all chapters", "9", "1", "3", "6"], table.Rows[2]);
        Assert.Equal("progress over the course. Damaged.", table.Caption);
        Assert.Contains("progress over the course", Show.Text(new CourseProgress([])), StringComparison.Ordinal);
    }

    private static string Words(object value)
    {
        var html = Show.Html(value).Replace("<br>", " ", StringComparison.Ordinal);
        return new HtmlParser().ParseDocument(html).Body!.TextContent.Replace("\u200B", "", StringComparison.Ordinal);
    }
}
