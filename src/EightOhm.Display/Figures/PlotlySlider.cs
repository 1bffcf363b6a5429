namespace EightOhm.Display.Figures;

/// <summary>The slider of an interactive figure, as Plotly takes it.</summary>
internal static class PlotlySlider
{
    /// <summary>How much room it takes below the picture, in pixels.</summary>
    public const double Height = 92;

    private const double Faint = 0.4;

    /// <summary>How strongly each series is drawn at a step, in the order of the series.</summary>
    public static double[] Opacities(Figure figure, FigureSlider slider, int step) =>
        [.. figure.Series.Select((_, i) => i == step || i >= slider.Steps.Count ? 1 : Faint)];

    /// <summary>The slider; the series' traces begin at <paramref name="first"/>.</summary>
    public static object[] Of(Figure figure, FigureSlider slider, Scene scene, int first, Func<string, string> escape)
    {
        int[] traces = [.. Enumerable.Range(first, figure.Series.Count)];
        return
        [
            new
            {
                active = slider.Start,
                x = 0,
                y = 0,
                xanchor = "left",
                yanchor = "top",
                len = 1,
                pad = new { t = Math.Round(scene.Height - scene.Frame.Bottom, 1), b = 0, l = 6, r = 6 },
                currentvalue = new { prefix = escape(slider.Label) + ": ", xanchor = "left", font = new { size = scene.Font, color = Palette.Ink.Light } },
                font = new { size = scene.Font - 1, color = Palette.Soft.Light },
                bgcolor = Palette.Grid.Light,
                activebgcolor = Palette.Soft.Light,
                bordercolor = Palette.Soft.Light,
                tickcolor = Palette.Soft.Light,
                ticklen = 4,
                minorticklen = 0,
                transition = new { duration = 0 },
                steps = slider.Steps.Select((label, step) => new
                {
                    label = escape(label),
                    method = "restyle",
                    args = new object[] { new { opacity = Opacities(figure, slider, step) }, traces },
                }).ToArray(),
            },
        ];
    }
}
