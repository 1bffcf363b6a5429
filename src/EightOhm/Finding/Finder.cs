using System.Collections.Frozen;
using System.Linq.Expressions;
using System.Reflection;

namespace EightOhm.Finding;

/// <summary>Functions by a word, and what there is to know of one: <c>LookUp("ripple")</c>, <c>About(SharedSink.AllowedSink)</c>.</summary>
public static class Finder
{
    private static readonly FrozenSet<string> Small = new[] { "a", "an", "the", "of", "at", "in", "to", "for", "is", "are", "how", "what", "which", "does", "do", "much", "many", "large", "my", "into", "and", "or", "with", "must", "be", "i", "need" }.ToFrozenSet(StringComparer.Ordinal);

    private static readonly Lazy<IReadOnlyList<(FunctionDescription Function, HashSet<string> Name, HashSet<string> Asked, HashSet<string> Summary, HashSet<string> More)>> Indexed = new(() =>
        [.. FunctionIndex.All.Select(f => (f, Set(FunctionWords.Spaced(f.Name)), Set(string.Join(' ', Questions.AnsweredBy(f.Name))), Set(f.Summary), Set($"{f.Room} {FunctionWords.Spaced(f.Room)} {f.Remarks} {f.Returns} {string.Join(' ', f.Parameters.Select(p => p.Text))}")))]);

    /// <summary>The functions that speak of what you look for, the best first; words of the trade find each other (hum finds ripple).</summary>
    /// <param name="words">A word or a question: "ripple", "how large a heat sink". Nothing finds all.</param>
    /// <param name="most">At most so many; 1 or more.</param>
    /// <returns>A list that is shown as a table; it may be empty, and then says what to try.</returns>
    /// <exception cref="ArgumentOutOfRangeException">No function is asked for.</exception>
    /// <example><code>LookUp("ripple")
    /// LookUp("how large a heat sink")</code></example>
    public static FunctionList LookUp(string words, int most = 15)
    {
        ArgumentNullException.ThrowIfNull(words);
        if (most < 1)
            throw new ArgumentOutOfRangeException(nameof(most), $"Ask for one function or more (was {most}).");
        // Figures of a question, "10 mF at 3 A", say nothing of the function.
        string[] asked = [.. Words(words).Where(w => !Small.Contains(w) && !char.IsAsciiDigit(w[0]))];
        if (asked.Length == 0)
            return new(words, words.Trim().Length == 0 ? FunctionIndex.All : []);
        var scored = Indexed.Value.Select(f => (f.Function, Scores: asked.Select(w => Score(w, f)).ToArray())).ToList();
        var all = scored.Where(s => s.Scores.All(x => x > 0)).ToList();
        var ranked = (all.Count > 0 ? all : scored.Where(s => s.Scores.Any(x => x > 0)))
            .OrderByDescending(s => s.Scores.Count(x => x > 0)).ThenByDescending(s => s.Scores.Sum()).ThenBy(s => s.Function.Name, StringComparer.Ordinal);
        return new(words, [.. ranked.Take(most).Select(s => s.Function)]);
    }

    /// <summary>What there is to know of a function, named without its brackets: signature, units, range, source, example.</summary>
    /// <param name="function">The function: <c>SharedSink.AllowedSink</c>, <c>stage.Worst</c>; one with several forms by its name in quotes.</param>
    /// <returns>Its description.</returns>
    /// <example><code>About(SharedSink.AllowedSink)</code></example>
    public static FunctionDescription About(Delegate function)
    {
        ArgumentNullException.ThrowIfNull(function);
        return FunctionIndex.Describe(function.Method);
    }

    /// <summary>What there is to know of the function that an expression calls.</summary>
    /// <param name="call">A call, a property or a construction: <c>() => ClassB.Efficiency(V, V_p, phi)</c>.</param>
    /// <returns>Its description.</returns>
    /// <exception cref="ArgumentException">The expression calls no function.</exception>
    public static FunctionDescription About(Expression<Func<object?>> call)
    {
        ArgumentNullException.ThrowIfNull(call);
        var body = call.Body is UnaryExpression { NodeType: ExpressionType.Convert } convert ? convert.Operand : call.Body;
        return body switch
        {
            MethodCallExpression m => FunctionIndex.Describe(m.Method),
            MemberExpression { Member: PropertyInfo p } => FunctionIndex.Describe(p),
            NewExpression { Constructor: { } c } => FunctionIndex.Describe(c),
            _ => throw new ArgumentException($"{body} calls no function: write About(SharedSink.AllowedSink) or About(\"SharedSink.AllowedSink\").", nameof(call)),
        };
    }

    /// <summary>What there is to know of a function by its name: of several forms the one that takes most.</summary>
    /// <param name="name">The name, such as "SharedSink.AllowedSink", "OutputRating" or "AllowedSink".</param>
    /// <returns>Its description.</returns>
    /// <exception cref="ArgumentException">There is no such function; the message names the nearest.</exception>
    /// <example><code>About("SharedSink.AllowedSink")</code></example>
    public static FunctionDescription About(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        var wanted = name.Split('(')[0].Trim();
        var found = FunctionIndex.All.Where(f => f.Name.Equals(wanted, StringComparison.OrdinalIgnoreCase)).MaxBy(f => f.Parameters.Count)
            ?? FunctionIndex.All.Where(f => f.Name.EndsWith("." + wanted, StringComparison.OrdinalIgnoreCase)).MaxBy(f => f.Parameters.Count);
        if (found is not null)
            return found;
        var near = LookUp(FunctionWords.Spaced(wanted.Replace('.', ' ')), 3);
        throw new ArgumentException($"There is no function \"{wanted}\".{(near.Count > 0 ? $" Near it are {string.Join(", ", near.Select(f => f.Name).Distinct())}." : "")} LookUp(\"a word\") finds functions by what they are for.", nameof(name));
    }

    private static double Score(string word, (FunctionDescription Function, HashSet<string> Name, HashSet<string> Asked, HashSet<string> Summary, HashSet<string> More) f)
    {
        double Of(string w, double weight) => weight * ((f.Name.Contains(w) ? 5 : 0) + (f.Asked.Contains(w) ? 4 : 0) + (f.Summary.Contains(w) ? 3 : 0) + (f.More.Contains(w) ? 1 : 0));
        return Of(word, 1) + Synonyms.Of(word).Sum(other => Of(Stem(other), 0.4));
    }

    private static HashSet<string> Set(string text) => [.. Words(text)];

    private static IEnumerable<string> Words(string text) =>
        text.ToLowerInvariant().Split([' ', ',', '.', ';', ':', '(', ')', '·', '/', '+', '=', '\n', '"', '?', '!', '−', '√', '²'], StringSplitOptions.RemoveEmptyEntries).Select(Stem);

    // One and many find each other.
    private static string Stem(string word) => word.Length > 3 && word.EndsWith('s') && !word.EndsWith("ss", StringComparison.Ordinal) ? word[..^1] : word;
}
