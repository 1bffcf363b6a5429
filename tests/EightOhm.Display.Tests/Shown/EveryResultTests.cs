using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using EightOhm.Display.Tables;
using EightOhm.Explaining;
using EightOhm.Quantities;

namespace EightOhm.Display.Tests.Shown;

/// <summary>Results of every room, made by their own constructors: a console shows what a page shows, under a caption in words and a heading.</summary>
public class EveryResultTests
{
    // What a person may be handed: no function, no static class, no kind of quantity, which has a form as such.
    private static readonly Type[] Results =
    [
        .. Rooms.Types.Where(t => !t.IsAbstract && !t.IsEnum && QuantityKinds.Find(t) is null
            && !new[] { typeof(Delegate), typeof(Attribute), typeof(Exception) }.Any(b => b.IsAssignableFrom(t))),
    ];

    public static TheoryData<string> Tables => [.. Results.Where(t => DisplayRegister.Find(t)?.Table is not null && SampleResults.Can(t)).Select(t => t.FullName!)];

    public static TheoryData<string> Others => [.. Results.Where(t => DisplayRegister.Find(t) is { Table: null } && SampleResults.Can(t)).Select(t => t.FullName!)];

    [Fact]
    public void Every_result_has_a_table_a_figure_or_words() =>
        Assert.Empty(Results.Where(t => DisplayRegister.Find(t) is null).Select(t => t.FullName));

    // Each is tried below: none is shown that no test has seen.
    [Fact]
    public void Every_result_can_be_made()
    {
        var not = string.Join(", ", Results.Where(t => !t.IsGenericTypeDefinition && !SampleResults.Can(t)).Select(t => t.Name));
        Assert.True(not.Length == 0, $"No sample, so no test of how it is shown: {not}. SampleResults may take one made by hand.");
    }

    [Theory]
    [MemberData(nameof(Tables))]
    public void A_table_says_the_same_on_a_console_as_on_a_page(string name)
    {
        var form = Form(name);
        for (var draw = 0; draw < 5; draw++)
        {
            var value = Sample(name, draw);
            var table = form.Table!(value);
            var page = new HtmlParser().ParseDocument(Show.Html(value)).QuerySelector("table")!;
            var lines = Show.Text(value).Split('\n');

            Assert.NotEmpty(table.Caption);
            Assert.Equal(table.Caption, page.QuerySelector("caption")!.TextContent);
            Assert.Equal(table.Caption, string.Join('\n', lines[..^(table.Rows.Count + 1)]));
            Assert.Equal(Words(table.Headings), Words([lines[^(table.Rows.Count + 1)]]));
            Assert.Equal(Words([Show.Text(value)]), Words(page.QuerySelectorAll("caption, th, td").Select(c => c.TextContent)));
            Assert.DoesNotContain("NaN", Show.Text(value), StringComparison.Ordinal);
        }
    }

    [Theory]
    [MemberData(nameof(Others))]
    public void Words_and_figures_say_the_same_on_a_console_as_on_a_page(string name)
    {
        for (var draw = 0; draw < 5; draw++)
        {
            var value = Sample(name, draw);
            var page = new HtmlParser().ParseDocument(Show.Html(value));
            var said = page.QuerySelectorAll(".eo-words, .eo-value, .eo-verdict").Select(c => c.TextContent).Concat(page.QuerySelectorAll("img").Select(i => i.GetAttribute("alt")!));
            Assert.Equal(Flat(Show.Text(value)), Words(said));
        }
    }

    // A figure named by its symbol alone ("R_vc", "Z") needs words of its own.
    [Fact]
    public void Captions_and_rows_are_words_and_no_names_of_the_code()
    {
        var shown = Results.Where(t => DisplayRegister.Find(t)?.Table is not null).SelectMany(t => Facts.Figures(t).Append<System.Reflection.MemberInfo>(t));
        Assert.Empty(shown.Where(m => !SpokenName.Of(m).Split(' ').Any(w => w.Length > 1 && w.All(char.IsLetter)) || (m.Name.Contains('_', StringComparison.Ordinal) && SpokenName.Of(m).Contains('_', StringComparison.Ordinal)))
            .Select(m => $"{m.DeclaringType?.Name}.{m.Name}"));
    }

    [Theory]
    [InlineData(typeof(Supply.DualSteadySupply), "dual steady supply")]
    [InlineData(typeof(Thermal.PlateFinSink), "plate-fin heat sink")]
    [InlineData(typeof(OutputStages.VbeMultiplier), "V_BE multiplier")]
    [InlineData(typeof(OutputStages.ClassAB), "class AB")]
    [InlineData(typeof(Samples.Curve<,>), "curve")]
    public void A_type_reads_in_words(Type type, string words) => Assert.Equal(words, SpokenName.Of(type));

    private static DisplayForm Form(string name) => DisplayRegister.Find(Type(name))!;

    private static Type Type(string name) => Results.Single(t => t.FullName == name);

    private static object Sample(string name, int draw) => SampleResults.Make(Type(name), draw);

    private static string Words(IEnumerable<string> texts) => Flat(string.Join(' ', texts));

    private static string Flat(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
