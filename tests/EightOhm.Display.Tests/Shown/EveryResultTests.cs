using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using EightOhm.Display.Tables;
using EightOhm.Explaining;
using EightOhm.Quantities;
using EightOhm.Tests.Explaining;

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

    public static TheoryData<string> Tables => [.. Results.Where(t => DisplayRegister.Find(t)?.Table is not null && Things.Can(t)).Select(t => t.FullName!)];

    public static TheoryData<string> Others => [.. Results.Where(t => DisplayRegister.Find(t) is { Table: null } && Things.Can(t)).Select(t => t.FullName!)];

    [Fact]
    public void Every_result_has_a_table_a_figure_or_words() =>
        Assert.Empty(Results.Where(t => DisplayRegister.Find(t) is null).Select(t => t.FullName));

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
            Assert.Contains(Flat(Show.Text(value)), said.Select(Flat));
        }
    }

    [Fact]
    public void No_caption_and_no_row_is_a_name_of_the_code()
    {
        var names = Results.Where(t => Facts.Has(t)).SelectMany(t => t.GetProperties().Select(SpokenName.Of).Append(SpokenName.Of(t)));
        Assert.DoesNotContain(names, n => n.Split(' ').Any(w => w.Length > 1 && w.Any(char.IsLower) && w.Any(char.IsUpper) && !w.Contains('_', StringComparison.Ordinal)));
    }

    private static DisplayForm Form(string name) => DisplayRegister.Find(Type(name))!;

    private static Type Type(string name) => Results.Single(t => t.FullName == name);

    private static object Sample(string name, int draw) => Things.Make(Type(name), "this", new Random(draw))!;

    private static string Words(IEnumerable<string> texts) => Flat(string.Join(' ', texts));

    private static string Flat(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
