using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using EightOhm.Cli.Sheets;
using EightOhm.Display.Formulas;
using EightOhm.Record;
using static EightOhm.Cli.Book.PageTemplate;

namespace EightOhm.Cli.Book;

/// <summary>How one design stands, for the first page: the verdict in a line, each failure in words, then the whole sheet.</summary>
internal static partial class DesignPart
{
    public static void Write(StringBuilder body, DesignSheet design)
    {
        var sheet = design.Compliance;
        body.Append("<section class=\"text\">\n<h2>").Append(Escape(design.Name)).Append(": compliance</h2>\n");
        if (sheet.Table.Rows.Count == 0)
        {
            body.Append("<p>").Append(Escape(sheet.Tally)).Append("</p>\n</section>\n");
            return;
        }

        body.Append("<p class=\"verdict ").Append(sheet.AllMet ? "met" : "not-met").Append("\"><strong>").Append(Verdict(sheet)).Append("</strong> ").Append(Escape(sheet.Tally)).Append("</p>\n");
        if (!sheet.AllMet)
        {
            body.Append("<ul class=\"failures\">\n");
            // One cell without an answer can leave many requirements undecided: its reason is told once.
            foreach (var alike in sheet.Open.GroupBy(r => (r.State, r.State == RequirementState.NotMet ? r.Key : r.Reason)))
                body.Append("<li>").Append(alike.Count() > 1 ? Words([.. alike]) : Words(alike.First())).Append("</li>\n");
            body.Append("</ul>\n");
        }

        body.Append("</section>\n<div class=\"output sheet\">").Append(sheet.Table.ToHtml()).Append("</div>\n");
        if (design.Moved is { } moved)
            Moved(body, moved);
        body.Append("<p class=\"quiet\">The design record: <a href=\"").Append(Address(design.Record)).Append("\">").Append(Escape(design.Record)).Append("</a></p>\n");
    }

    private static string Verdict(ComplianceSheet sheet) =>
        sheet.AllMet ? "Every requirement is met."
        : sheet.Open.Any(r => r.State == RequirementState.NotMet) ? "Not met by this design."
        : "Not shown to be met by this design.";

    // By how much and where stand in the reason and in the conditions found.
    private static string Words(Requirement r)
    {
        var where = r.Where is { Length: > 0 } conditions ? $" at {conditions}" : "";
        var found = r.State == RequirementState.NotMet ? $": {r.Value}{where}; asked is {r.Limit}" : "";
        return $"<strong>{Typeset(State(r))}.</strong> {Typeset($"{r.Label}{found}")}.";
    }

    private static string Words(IReadOnlyList<Requirement> alike) =>
        string.Create(CultureInfo.InvariantCulture, $"<strong>{Typeset(State(alike[0]))}.</strong> {alike.Count} requirements: {Typeset(string.Join("; ", alike.Select(r => r.Label)))}.");

    private static string State(Requirement r)
    {
        var state = r.State switch { RequirementState.NotMet => "Not met", RequirementState.Stale => "Stale", _ => "Cannot be told" };
        return r.Reason is { Length: > 0 } reason ? $"{state}, {reason.TrimEnd('.')}" : state;
    }

    // A number and its unit stay on one line.
    private static string Typeset(string text) => SymbolHtml.Write(Unit().Replace(text, "\u00A0"));

    [GeneratedRegex(@"(?<=[0-9]) (?=[%°ΩVAWKHJFkmµnpM])")]
    private static partial Regex Unit();

    private static void Moved(StringBuilder body, IReadOnlyList<Display.Tables.Table> moved)
    {
        body.Append("<h3>What moved</h3>\n").Append(moved.Count == 0 ? "<p>Nothing moved with it.</p>\n" : "");
        foreach (var table in moved)
            body.Append("<div class=\"output sheet\">").Append(table.ToHtml()).Append("</div>\n");
    }
}
