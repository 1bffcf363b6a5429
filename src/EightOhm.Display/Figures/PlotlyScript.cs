using System.Text.Json;
using System.Text.RegularExpressions;

namespace EightOhm.Display.Figures;

/// <summary>The script that makes figures interactive. It comes with the package: nothing is fetched.</summary>
public static partial class PlotlyScript
{
    private static readonly Lazy<string> Bundle = new(() => Resource("plotly-basic.min.js"));
    private static readonly Lazy<string> Whole = new(Compose);

    /// <summary>The version of the plotly.js bundle.</summary>
    public static string Version => VersionLine().Match(Bundle.Value, 0, 200).Groups[1].Value;

    /// <summary>JavaScript for a file beside a page or for a script element in it: defines <c>Plotly</c> unless the page has
    /// one, then makes every figure of ours interactive, those already in the page and those that come later. May run twice.</summary>
    public static string Text => Whole.Value;

    /// <summary>A script element that holds <see cref="Text"/>, to be put into a page once and never into a saved file.</summary>
    public static string LoadHtml() => $"<script>{Text}</script>";

    private static string Compose()
    {
        var live = Resource("live-figures.js")
            .Replace("/*BY_NIGHT*/{}", JsonSerializer.Serialize(Palette.ByNight), StringComparison.Ordinal)
            .Replace("/*BREAKPOINT*/0", JsonSerializer.Serialize(Scene.Breakpoint), StringComparison.Ordinal);
        // A page with an AMD loader has a define of its own, under which the bundle would hide itself from us.
        var text = $"if (!window.Plotly) (function (define, exports, module) {{\n{Bundle.Value}\n}}).call(window);\n{live}";
        return text.Replace("</script", "<\\/script", StringComparison.OrdinalIgnoreCase);
    }

    private static string Resource(string name)
    {
        using var stream = typeof(PlotlyScript).Assembly.GetManifestResourceStream(typeof(PlotlyScript), name)
            ?? throw new InvalidOperationException($"This build of EightOhm.Display lacks its part \"{name}\".");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }

    [GeneratedRegex(@"plotly\.js \(basic - minified\) v([0-9.]+)")]
    private static partial Regex VersionLine();
}
