using System.Globalization;
using System.Net;
using System.Text;

namespace EightOhm.Display.Figures;

/// <summary>A figure as a piece of HTML.</summary>
public static class FigureHtml
{
    /// <summary>The static picture, complete by itself, and beside it what <see cref="PlotlyScript"/> needs to replace it
    /// where scripts run. A host that strips scripts shows the picture.</summary>
    /// <exception cref="ArgumentException">A value cannot be shown on its axis.</exception>
    public static string Render(Figure figure)
    {
        ArgumentNullException.ThrowIfNull(figure);
        return Render(figure, Scene.Both(figure));
    }

    /// <summary>The figures of a stack one under another, their frames in line.</summary>
    /// <exception cref="ArgumentException">A value cannot be shown on its axis.</exception>
    public static string Render(StackedFigures stack)
    {
        ArgumentNullException.ThrowIfNull(stack);
        return string.Join("\n", stack.Figures.Zip(Scene.InLine(stack.Figures), Render));
    }

    private static string Render(Figure figure, (Scene Wide, Scene Narrow) scenes)
    {
        var picture = Convert.ToBase64String(Encoding.UTF8.GetBytes(SvgWriter.Write(figure, scenes)));
        // Within a script element only "<" can end it or hide it.
        var spec = PlotlyFigure.Json(figure, scenes).Replace("<", "\\u003c", StringComparison.Ordinal);
        return string.Create(CultureInfo.InvariantCulture, $"""
            <figure class="eo-figure" id="{ContentId.Of(picture + spec)}" style="margin:1em 0;max-width:{scenes.Wide.Width}px">
            <img src="data:image/svg+xml;base64,{picture}" alt="{WebUtility.HtmlEncode(figure.AltText)}" width="{scenes.Wide.Width}" height="{scenes.Wide.Height}" style="max-width:100%;height:auto">
            <script type="application/json">{spec}</script>
            </figure>
            """);
    }
}
