using System.Reflection;
using EightOhm.Explaining;
using EightOhm.Record;

namespace EightOhm.Cli.Book;

/// <summary>A symbol and what it stands for.</summary>
/// <param name="Symbol">As it is typed: "V_CEO".</param>
/// <param name="Name">As the code writes it.</param>
/// <param name="Meaning">In words.</param>
/// <param name="Of">The design whose record holds it; empty for the library's own.</param>
internal sealed record SymbolMeaning(string Symbol, string Name, string Meaning, string Of)
{
    private const BindingFlags Own = BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    /// <summary>The entries of a record: what a chapter says of an input, what a result comes from.</summary>
    public static IEnumerable<SymbolMeaning> OfRecord(DesignRecord record) =>
        from entry in record.Entries
        where entry.Role != EntryRole.Part
        select new SymbolMeaning(MathText.Name(entry.Name), entry.Name, entry.Note ?? From(entry), record.Name);

    /// <summary>The symbols that the library's results and formulas bear.</summary>
    public static IEnumerable<SymbolMeaning> OfLibrary() =>
        from type in typeof(DesignRecord).Assembly.GetExportedTypes()
        from member in type.GetMembers(Own)
        let symbol = member.GetCustomAttribute<SymbolAttribute>()?.Text ?? member.GetCustomAttribute<FormulaAttribute>()?.Symbol
        where !string.IsNullOrEmpty(symbol)
        select new SymbolMeaning(MathText.Name(symbol), symbol, $"{SpokenName.Of(member)} ({SpokenName.Of(type)})", "");

    /// <summary>Whether a chapter shows the symbol: an entry where its name stands in the code, one of the library as a word of its own.</summary>
    /// <param name="text">All words of the chapter.</param>
    public bool IsIn(string text)
    {
        if (Of.Length > 0 && text.Contains($"\"{Name}\"", StringComparison.Ordinal))
            return true;
        // A single letter may be any word's: "A" begins a sentence.
        if (Symbol.Length < 2)
            return false;
        for (var at = text.IndexOf(Symbol, StringComparison.Ordinal); at >= 0; at = text.IndexOf(Symbol, at + 1, StringComparison.Ordinal))
        {
            if (!IsLetter(text, at - 1) && !IsLetter(text, at + Symbol.Length))
                return true;
        }

        return false;
    }

    private static bool IsLetter(string text, int at) => at >= 0 && at < text.Length && (char.IsLetterOrDigit(text[at]) || text[at] == '_');

    private static string From(Entry entry) => entry.From.Count == 0 || entry.HangsOnAll
        ? "computed"
        : $"{(entry.Role == EntryRole.Derived ? "derived" : "computed")} from {string.Join(", ", entry.From.Select(MathText.Name))}";
}
