namespace EightOhm.Browser.Tests.Browsing;

/// <summary>What Chromium itself measures of the words in drawings: the layout reckons with widths, the browser has its font.</summary>
internal static class DrawnWords
{
    /// <summary>A script: for each drawing (an inline SVG in an element with an id) the words that stand on other words, on a wire or on a part.</summary>
    /// <remarks>A word's box is as wide as its font makes it, and from a capital's top to a descender's foot. Ink is looked at every pixel along its line.
    /// Words inside a block or an amplifier belong to it; a sign inside a symbol is a part of that symbol.</remarks>
    public const string Faults = """
        () => [...document.querySelectorAll('svg')].flatMap(svg => {
          const name = svg.parentElement.id, faults = [];
          const words = [...svg.children].filter(e => e.tagName === 'text').map(e => {
            const b = e.getBBox(), y = +e.getAttribute('y'), size = +e.getAttribute('font-size');
            return { text: e.textContent, of: e.dataset.of, left: b.x, right: b.x + b.width, top: y - 0.75 * size, bottom: y + 0.2 * size };
          });
          words.forEach((a, i) => words.slice(0, i).forEach(b => {
            if (a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom)
              faults.push(`${name}: "${a.text}" stands on "${b.text}"`);
          }));
          for (const ink of svg.querySelectorAll('path, circle')) {
            const part = ink.closest('g[data-is]'), own = part && ['Block', 'OpAmp', 'Amplifier', 'Delay'].includes(part.dataset.is);
            const near = words.filter(w => !(own && w.of === part.dataset.name)), b = ink.getBBox();
            const reached = near.filter(w => w.left < b.x + b.width + 1 && b.x - 1 < w.right && w.top < b.y + b.height + 1 && b.y - 1 < w.bottom);
            if (reached.length === 0) continue;
            for (let at = 0, end = ink.getTotalLength(); at <= end; at++) {
              const p = ink.getPointAtLength(at), on = reached.find(w => w.left < p.x && p.x < w.right && w.top < p.y && p.y < w.bottom);
              if (on) { faults.push(`${name}: "${on.text}" stands on ${part ? part.dataset.name : 'a wire'}`); break; }
            }
          }
          return faults;
        })
        """;
}
