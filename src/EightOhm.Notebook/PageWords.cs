using System.Diagnostics;
using System.Net;
using System.Text.RegularExpressions;
using EightOhm.Display;
using Microsoft.DotNet.Interactive;
using Microsoft.DotNet.Interactive.Commands;
using Microsoft.DotNet.Interactive.Events;
using Microsoft.DotNet.Interactive.Formatting;

namespace EightOhm.Notebook;

/// <summary>What a notebook page is told of a cell: a refusal as one boxed sentence, completions as a page can type them, nothing of the host's styles.</summary>
internal static partial class PageWords
{
    /// <summary>What is told in place of an event.</summary>
    /// <param name="happened">The event.</param>
    /// <param name="page">Whether a page listens: the runner, which does not, puts failures in words itself.</param>
    public static IEnumerable<KernelEvent> Of(KernelEvent happened, bool page) => happened switch
    {
        CommandFailed { Exception: OperationCanceledException } failed when page => [new CommandFailed("Interrupted.", failed.Command)],
        CommandFailed { Exception: { } exception and not CodeSubmissionCompilationErrorException } failed when page => Failed(failed, FailureWords.Innermost(exception)),
        CompletionsProduced { Command: RequestCompletions asked } completions =>
            [new CompletionsProduced(Fitting(asked, completions.Completions), asked, completions.LinePositionSpan)],
        ReturnValueProduced { Value: var value } shown when HasStyle(shown) => [new ReturnValueProduced(value, shown.Command, Unstyled(shown), shown.ValueId)],
        DisplayedValueProduced { Value: var value } shown when HasStyle(shown) => [new DisplayedValueProduced(value, shown.Command, Unstyled(shown), shown.ValueId)],
        DisplayedValueUpdated { Value: var value } shown when HasStyle(shown) => [new DisplayedValueUpdated(value, shown.ValueId, shown.Command, Unstyled(shown))],
        _ => [happened],
    };

    private static IEnumerable<KernelEvent> Failed(CommandFailed failed, Exception exception)
    {
        var notice = new Notice(FailureWords.IsWithoutAnswer(exception) ? NoticeKind.NoAnswer : NoticeKind.Failed, FailureWords.Of(exception));
        var html = $"{notice.ToHtml()}<details><summary>where in the code</summary><pre>{WebUtility.HtmlEncode(Trace(exception))}</pre></details>";
        yield return new DisplayedValueProduced(notice, failed.Command, [new("text/html", html), new("text/plain", notice.ToString())]);
        // The page still has to know that the cell failed, else Run all would go on.
        yield return new CommandFailed($"{notice.Heading}: see the box above.", failed.Command);
    }

    // From where it was thrown down to the cell; below that there is the host alone.
    private static string Trace(Exception exception)
    {
        var lines = (exception.StackTrace ?? "").Split('\n', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).ToList();
        var cell = lines.FindLastIndex(l => l.Contains("Submission#", StringComparison.Ordinal));
        return $"{exception.GetType().Name}\n{string.Join('\n', cell < 0 ? lines : lines[..(cell + 1)])}";
    }

    // The host gives all names that could stand there and leaves it to the page to pick; the pages do not.
    private static List<CompletionItem> Fitting(RequestCompletions asked, IEnumerable<CompletionItem> items)
    {
        var line = asked.Code.Split('\n').ElementAtOrDefault(asked.LinePosition.Line) ?? "";
        var typed = Word().Match(line[..Math.Min(asked.LinePosition.Character, line.Length)]).Value;
        var plain = items.Select(Plain).DistinctBy(i => i.InsertText ?? i.DisplayText).ToList();
        var fitting = plain.Where(i => i.DisplayText.StartsWith(typed, StringComparison.OrdinalIgnoreCase))
            .OrderBy(i => !i.DisplayText.StartsWith(typed, StringComparison.Ordinal)).ToList();
        return fitting.Count > 0 ? fitting : plain;
    }

    // The host marks where the cursor is to stand by a code that a page would type as it is.
    private static CompletionItem Plain(CompletionItem item)
    {
        var insert = Stop().Replace(item.InsertText ?? "", "");
        return insert == item.InsertText ? item : new CompletionItem(item.DisplayText, item.Kind, item.FilterText, item.SortText, insert.Length == 0 ? item.DisplayText : insert, null, item.Documentation);
    }

    private static bool HasStyle(DisplayEvent shown) => shown.FormattedValues.Any(v => Style().IsMatch(v.Value));

    private static IReadOnlyCollection<FormattedValue> Unstyled(DisplayEvent shown) => [.. shown.FormattedValues.Select(v => new FormattedValue(v.MimeType, Style().Replace(v.Value, "")))];

    [GeneratedRegex(@"[(<]?\$(?:\d+|\{\d+[^}]*\})[)>]?")]
    private static partial Regex Stop();

    [GeneratedRegex(@"\w*$")]
    private static partial Regex Word();

    // The block that the host puts behind each value of a type that nobody registered, and its names, which nothing then styles.
    [GeneratedRegex(@"<style>[^<]*\.dni-[^<]*</style>| class=""dni-[\w -]*""")]
    private static partial Regex Style();
}
