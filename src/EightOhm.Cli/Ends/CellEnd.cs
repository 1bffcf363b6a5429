using System.Globalization;
using System.Text.Json.Nodes;
using EightOhm.Cells;
using EightOhm.Cells.Running;
using EightOhm.Cli.Notebooks;
using EightOhm.Display;

namespace EightOhm.Cli.Ends;

/// <summary>A cell that gave nothing: what happened, and why.</summary>
/// <param name="Place">The cell.</param>
/// <param name="Kind">What happened.</param>
/// <param name="Says">Why, in a sentence.</param>
/// <param name="Line">The line that failed, from 1; null where nobody can tell or the cell never ran.</param>
/// <param name="Lost">The entries and requirements that it was to write and did not.</param>
/// <param name="First">The cell where it began: this one, or the one that a skipped cell needed.</param>
internal sealed record CellEnd(CellPlace Place, NoticeKind Kind, string Says, int? Line, LostNames Lost, CellEnd? First)
{
    /// <summary>Why, as the cells that hang on it say: "had no answer in chapter 05, cell 36: short by 3.2 V".</summary>
    public string Cause => First is { } first
        ? first.Cause
        : $"{(Kind == NoticeKind.NoAnswer ? "had no answer" : "failed")} in {Place.InBook}: {Says}";

    /// <summary>Why, as the record says it of an entry: "chapter 05, cell 36: short by 3.2 V".</summary>
    public string Reason => First is { } first
        ? first.Reason
        : $"{Place.InBook}{(Kind == NoticeKind.NoAnswer ? "" : " failed")}: {Says}";

    /// <summary>One paragraph for the console.</summary>
    public string OnConsole =>
        $"{Place.InFile}{(Line is { } n ? string.Create(CultureInfo.InvariantCulture, $", line {n}") : "")}: {Says}";

    /// <param name="place">The cell.</param>
    /// <param name="failure">Why it did not come to its end.</param>
    /// <param name="lost">What it did not write.</param>
    /// <param name="before">The cells that gave nothing before: what the record says that it has from them is no new cause.</param>
    public static CellEnd Of(CellPlace place, CellFailure failure, LostNames lost, IEnumerable<CellEnd> before) =>
        failure.Kind == FailureKind.NoAnswer && before.FirstOrDefault(b => failure.Message.Contains(b.Reason, StringComparison.Ordinal)) is { } cause
            ? new(place, NoticeKind.NotCalculated, failure.Message, failure.Line, lost, cause.First ?? cause)
            : new(place, failure.Kind == FailureKind.NoAnswer ? NoticeKind.NoAnswer : NoticeKind.Failed, failure.Message, failure.Line, lost, null);

    public static CellEnd Skipped(CellPlace place, CellNeed need, LostNames lost) =>
        new(place, NoticeKind.NotCalculated, $"it needs {need.Name}, which {need.Lost.Cause}", null, lost, need.Lost.First ?? need.Lost);

    /// <summary>The sentence in its box, as an output of the cell.</summary>
    public JsonObject Output()
    {
        var notice = new Notice(Kind, Says);
        return new JsonObject
        {
            ["data"] = NbFormat.Bundle([KeyValuePair.Create("text/html", notice.ToHtml()), KeyValuePair.Create("text/plain", notice.ToString())]),
            ["metadata"] = new JsonObject(),
            ["output_type"] = "display_data",
        };
    }
}
