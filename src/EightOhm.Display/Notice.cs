using System.Net;

namespace EightOhm.Display;

/// <summary>One boxed sentence in place of what a cell could not show: a word that says what happened, then why.</summary>
/// <param name="Kind">What happened.</param>
/// <param name="Says">Why, in full sentences; line breaks are kept.</param>
public sealed record Notice(NoticeKind Kind, string Says)
{
    /// <summary>What happened, as the box begins.</summary>
    public string Heading => Kind switch
    {
        NoticeKind.NoAnswer => "No answer",
        NoticeKind.NotCalculated => "Not calculated",
        _ => "This cell failed",
    };

    /// <summary>The box as HTML; its frame is in the element itself, so that it survives in a saved notebook.</summary>
    public string ToHtml() =>
        $"<div class=\"eo-notice\" role=\"note\" style=\"border:1px solid;border-left-width:4px;padding:.4em .8em;white-space:pre-line\"><strong>{Heading}:</strong> {WebUtility.HtmlEncode(Says)}</div>";

    /// <summary>The sentence as text.</summary>
    public override string ToString() => $"{Heading}: {Says}";
}
