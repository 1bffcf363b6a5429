using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace EightOhm.Published.Machine;

/// <summary>The ledger as a page and as data.</summary>
internal static class LedgerPage
{
    private static readonly JsonSerializerOptions Options = new()
    {
        WriteIndented = true,
        NewLine = "\n",
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase) },
    };

    /// <summary>Pairs of a function and a source: what counts as one check.</summary>
    public static int Pairs(IEnumerable<Entry> entries, Func<Entry, string> source) =>
        entries.SelectMany(e => e.Functions.Select(f => (f, source(e)))).Distinct().Count();

    public static string Json(IReadOnlyList<Entry> entries) => JsonSerializer.Serialize(
        new
        {
            Published = Pairs(entries.Where(e => e.Counts), e => e.Source),
            PublishedByWork = Pairs(entries.Where(e => e.Counts), e => e.Work),
            Disagreements = Pairs(entries.Where(e => e.Verdict == Verdict.Disagrees), e => e.Source),
            Computed = Pairs(entries.Where(e => e.Verdict == Verdict.Computed), e => e.Source),
            Entries = entries,
        },
        Options) + "\n";

    public static string Markdown(IReadOnlyList<Entry> entries)
    {
        var counted = entries.Where(e => e.Counts).ToArray();
        var page = new StringBuilder();
        void Line(string text = "") => page.Append(text).Append('\n');
        Line("# Checks against published values");
        Line();
        Line("Written by the tests of `tests/EightOhm.Published`; `EIGHTOHM_WRITE_DOCS=1 dotnet test tests/EightOhm.Published` writes it anew.");
        Line();
        Line("A printed value claims every value that rounds to it: half a unit of its last printed digit either way. *Ours* is what the formulas");
        Line("say for the source's inputs. A check counts once for a function and a source, a table once with all its rows. *Page*: the page itself");
        Line("was read (of makers' documents often a mirror's copy). *Transcription*: a copy of it was (for textbooks, the FOSSEE textbook companions). *Secondary*: a lecture, a glossary, a forum.");
        Line("*Memory*: nobody looked; it does not count.");
        Line();
        Line("| | number |");
        Line("|---|---:|");
        Line($"| published checks that agree, by function and source | {Pairs(counted, e => e.Source)} |");
        foreach (var seen in counted.GroupBy(e => e.Seen).OrderBy(g => g.Key, StringComparer.Ordinal))
            Line($"| … seen as {seen.Key} | {Pairs(seen, e => e.Source)} |");
        Line($"| the same by function and book or document | {Pairs(counted, e => e.Work)} |");
        Line($"| disagreements, each with its reason | {Pairs(entries.Where(e => e.Verdict == Verdict.Disagrees), e => e.Source)} |");
        Line($"| columns computed by an independent program | {Pairs(entries.Where(e => e.Verdict == Verdict.Computed), e => e.Source)} |");
        Line($"| formulas and balances checked, of {Covered.All.Count} | {Checked(entries).Intersect(Covered.All).Count()} |");
        Line();
        Line("## All checks");
        Line();
        Line("| function | source | printed | ours | how seen | verdict |");
        Line("|---|---|---|---|---|---|");
        foreach (var e in entries)
            Line($"| {string.Join(", ", e.Functions.Select(f => $"`{f}`"))} | {Cell(e.Source)} | {Cell(e.Printed)} | {Cell(e.Ours)} | {e.Seen} | {Words(e)} |");
        Line();
        Line("## Where we disagree, and why");
        Line();
        foreach (var e in entries.Where(e => e.Verdict == Verdict.Disagrees))
            Line($"- {e.Source}: printed {e.Printed}, ours {e.Ours} (`{string.Join("`, `", e.Functions)}`). {e.Note}");
        return page.ToString();
    }

    /// <summary>The functions that something outside the project vouches for.</summary>
    public static IReadOnlyCollection<string> Checked(IEnumerable<Entry> entries) =>
        entries.Where(e => e.Counts || e.Verdict == Verdict.Computed).SelectMany(e => e.Functions).ToHashSet();

    private static string Words(Entry e) => e.Verdict switch
    {
        Verdict.Agrees when !e.Counts => "agrees, not counted",
        Verdict.Agrees => e.Note.Length > 0 ? $"agrees; {Cell(e.Note)}" : "agrees",
        Verdict.Disagrees => "disagrees (below)",
        Verdict.Computed => "agrees with the computed values",
        Verdict.TradeFact => "fits, not counted",
        _ => $"FAILED: {Cell(e.Note)}",
    };

    private static string Cell(string text) => text.ReplaceLineEndings(" ").Replace("|", "\\|", StringComparison.Ordinal);
}
