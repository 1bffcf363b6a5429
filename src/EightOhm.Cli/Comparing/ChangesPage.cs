using EightOhm.Cli.Book;
using EightOhm.Display.Tables;

namespace EightOhm.Cli.Comparing;

/// <summary>What differs between two records as a page that stands alone.</summary>
internal static class ChangesPage
{
    public static string Of(string title, IReadOnlyList<Table> tables) => PageTemplate.Alone(
        $"What differs: {title}",
        $"<h1>What differs</h1>\n<p>Between {PageTemplate.Escape(title)}.</p>\n"
        + (tables.Count == 0 ? "<p>Nothing.</p>" : string.Join("\n", tables.Select(t => $"<div class=\"output sheet\">{t.ToHtml()}</div>"))));
}
