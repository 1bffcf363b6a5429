using Deque.AxeCore.Commons;
using Microsoft.Playwright;

namespace EightOhm.Browser.Tests.Browsing;

/// <summary>What keeps somebody out of a page, as axe judges it.</summary>
internal static class Judge
{
    private static readonly string Axe = new BundledAxeScriptProvider().GetScript();

    /// <summary>What is serious or critical, a sentence each.</summary>
    /// <param name="page">The page as it is open now.</param>
    /// <param name="context">An expression of what is judged; <c>parts</c> may be named in it.</param>
    /// <param name="rules">Which rules, as an option of axe; empty for all.</param>
    /// <param name="parts">Handed to the page.</param>
    public static async Task<IEnumerable<string>> Faults(IPage page, string context = "document", string rules = "", IReadOnlyList<string>? parts = null)
    {
        // Through the debugger: the page itself forbids scripts that are not its own.
        if (!await page.EvaluateAsync<bool>("'axe' in window"))
            await page.EvaluateAsync(Axe);
        // Style sheets and media are not fetched for it: the pages have them within, and no sound. On a ground that changes its colour words are not judged at all:
        // the shade at the edge of what scrolls is taken away for it, and whatever else words stand on must be of one colour.
        return await page.EvaluateAsync<string[]>(
            $$"""
            async parts => {
                const context = {{context}};
                if (context.length === 0)
                    return [];
                const shaded = [...document.querySelectorAll('*')].filter(e => getComputedStyle(e).backgroundImage.includes('gradient'));
                shaded.forEach(e => e.style.backgroundImage = 'none');
                const judged = await axe.run(context, { resultTypes: ['violations', 'incomplete'], preload: false, {{rules}} });
                shaded.forEach(e => e.style.removeProperty('background-image'));
                const ground = judged.incomplete.map(v => ({ ...v, help: 'no ground of one colour', nodes: v.nodes.filter(n => n.any.some(c => ['bgGradient', 'bgImage'].includes(c.data?.messageKey))) }));
                return [...judged.violations.filter(v => v.impact === 'serious' || v.impact === 'critical'), ...ground].filter(v => v.nodes.length > 0)
                    .map(v => v.id + ': ' + v.help + ' at ' + v.nodes.slice(0, 3).map(n => n.target.join(' ')).join('; '));
            }
            """,
            parts ?? []);
    }
}
