namespace EightOhm.Browser.Tests.Browsing;

/// <summary>The parts that pages have shown in a look: what a style sheet tells apart, and the ink that an element brings itself.</summary>
/// <typeparam name="TLook">A look.</typeparam>
internal sealed class SeenParts<TLook>
    where TLook : notnull
{
    // A drawing's elements have names of their own, made anew for each: of those only the ink of words counts.
    private const string Parts = """
        () => {
            const part = e => e.tagName + '.' + [...e.classList].sort().join('.') + (e.style.color + e.style.backgroundColor + e.style.fill);
            const parts = [...document.body.querySelectorAll('*')].map(e =>
                !e.closest('svg') ? part(e.parentElement) + ' ' + part(e) : e.tagName === 'text' ? 'text ' + getComputedStyle(e).fill : '');
            return [...new Set(parts)];
        }
        """;

    private readonly Lock gate = new();
    private readonly Dictionary<TLook, HashSet<string>> seen = [];

    /// <summary>Whether the page shows a part that none before it has shown in this look.</summary>
    public async Task<bool> IsNew(TLook look, WatchedPage page)
    {
        var parts = await page.Page.EvaluateAsync<string[]>(Parts);
        lock (gate)
        {
            if (!seen.TryGetValue(look, out var known))
                seen.Add(look, known = new(StringComparer.Ordinal));
            var before = known.Count;
            known.UnionWith(parts);
            return known.Count > before;
        }
    }
}
