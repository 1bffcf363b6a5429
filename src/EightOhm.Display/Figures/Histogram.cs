namespace EightOhm.Display.Figures;

/// <summary>Values counted in equal steps.</summary>
internal static class Histogram
{
    private const int Fewest = 5, Most = 60;

    public static Figure Of(string title, Axis axis, IReadOnlyList<double> values)
    {
        double[] sorted = [.. values.Order()];
        if (sorted.Length < 2 || sorted[0] == sorted[^1])
            throw new ArgumentException($"\"{title}\" needs two different values or more, to count how they are spread. A single value is best said in words.");
        var (from, step, count) = Steps(sorted);
        var counts = new int[count];
        foreach (var value in sorted) counts[Math.Clamp((int)((value - from) / step), 0, count - 1)]++;
        var (xs, ys) = (new List<double>(), new List<double>());
        for (var i = 0; i < count; i++)
            foreach (var edge in (int[])[i, i + 1])
            {
                xs.Add(from + edge * step);
                ys.Add(100.0 * counts[i] / sorted.Length);
            }
        // The outline comes down to zero at both ends.
        xs = [xs[0], .. xs, xs[^1]];
        ys = [0, .. ys, 0];
        return Figure.Line(title, axis, new Axis("share of the values", "%") { Min = 0 }, new LineSeries("", xs, ys) { FilledTo = new double[xs.Count] });
    }

    // Freedman and Diaconis, Probability Theory and Related Fields 57, 1981: twice the middle half over the cube root of how many.
    private static (double From, double Step, int Count) Steps(double[] sorted)
    {
        var half = sorted[(int)(0.75 * (sorted.Length - 1))] - sorted[(int)(0.25 * (sorted.Length - 1))];
        var whole = sorted[^1] - sorted[0];
        var wanted = half > 0 ? 2 * half / Math.Cbrt(sorted.Length) : whole / Fewest;
        var step = RulerMaker.NiceStep(Math.Clamp(wanted, whole / Most, whole / Fewest));
        var from = Math.Floor(sorted[0] / step) * step;
        return (from, step, Math.Max(1, (int)Math.Ceiling((sorted[^1] - from) / step + 1e-9)));
    }
}
