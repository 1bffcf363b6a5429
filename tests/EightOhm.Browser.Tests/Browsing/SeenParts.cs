namespace EightOhm.Browser.Tests.Browsing;

/// <summary>The parts that pages have shown in a look: what a style sheet tells apart, and the ink that an element brings itself.</summary>
/// <typeparam name="TLook">A look.</typeparam>
internal sealed class SeenParts<TLook>
    where TLook : notnull
{
    /// <summary>A script's function from an element to its part.</summary>
    /// <remarks>A drawing's elements have names of their own, made anew for each: of those only the ink of words counts.</remarks>
    public const string Part = """
        e => {
            const part = e => e.tagName + '.' + [...e.classList].sort().join('.') + (e.style.color + e.style.backgroundColor + e.style.fill);
            return !e.closest('svg') ? part(e.parentElement) + ' ' + part(e) : e.tagName === 'text' ? 'text ' + getComputedStyle(e).fill : '';
        }
        """;

    private readonly Lock gate = new();
    private readonly Dictionary<TLook, HashSet<string>> seen = [];

    /// <summary>The parts of a page that none before it has shown in this look.</summary>
    public async Task<IReadOnlyList<string>> New(TLook look, WatchedPage page)
    {
        var parts = await page.Page.EvaluateAsync<string[]>($"() => [...new Set([...document.body.querySelectorAll('*')].map({Part}))]");
        lock (gate)
        {
            if (!seen.TryGetValue(look, out var known))
                seen.Add(look, known = new(StringComparer.Ordinal));
            return [.. parts.Where(known.Add)];
        }
    }
}
