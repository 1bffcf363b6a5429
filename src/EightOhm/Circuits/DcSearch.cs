namespace EightOhm.Circuits;

/// <summary>The ways to an operating point, tried in turn.</summary>
internal static class DcSearch
{
    private const int Steps = 100, Stages = 400;

    /// <summary>Finds it; the equations then hold it.</summary>
    /// <returns>How it was found; null where it was not.</returns>
    public static string? Find(DcEquations equations, IReadOnlyList<int> hold)
    {
        equations.Start();
        if (equations.Solve(Steps) is { } direct)
            return $"Newton's method from conducting junctions, {direct} steps";
        if (Raise(equations) is { } raised)
            return $"the sources raised in {raised} stages";
        return Release(equations, hold) is { } released ? $"nodes held and let go in {released} stages" : null;
    }

    private static int? Raise(DcEquations equations)
    {
        equations.Start();
        double reached = 0, stride = 0.1;
        var kept = (double[])equations.X.Clone();
        for (var stage = 1; stage <= Stages; stage++)
        {
            Work.Checkpoint();
            equations.Share = Math.Min(1, reached + stride);
            if (equations.Solve(Steps) is not null)
            {
                if (equations.Share >= 1)
                    return stage;
                (reached, stride) = (equations.Share, Math.Min(0.25, stride * 2));
                kept = (double[])equations.X.Clone();
                continue;
            }

            stride /= 4;
            if (stride < 1e-6)
                break;
            // From the last that settled; where none has, from the start.
            if (reached == 0)
                equations.Start();
            else
                equations.From(kept);
        }

        equations.Share = 1;
        return null;
    }

    private static int? Release(DcEquations equations, IReadOnlyList<int> hold)
    {
        equations.Share = 1;
        equations.Start();
        double conductance = 1, factor = 10;
        double[]? kept = null;
        for (var stage = 1; stage <= Stages; stage++)
        {
            Work.Checkpoint();
            equations.Hold = (hold, conductance);
            if (equations.Solve(Steps) is not null)
            {
                if (conductance == 0)
                    return stage;
                kept = (double[])equations.X.Clone();
                conductance = conductance < 1e-13 ? 0 : conductance / factor;
                factor = Math.Min(10, factor * 1.5);
                continue;
            }

            if (kept is null || factor < 1.01)
                break;
            var last = conductance == 0 ? 1e-13 : conductance * factor;
            factor = Math.Sqrt(factor);
            conductance = last / factor;
            equations.From(kept);
        }

        equations.Hold = ([], 0);
        return null;
    }
}
