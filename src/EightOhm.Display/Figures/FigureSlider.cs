namespace EightOhm.Display.Figures;

/// <summary>A slider below an interactive figure that brings one series at a time to the front, the others faint behind it.</summary>
/// <remarks>The static picture has no script: it shows the whole family, each series with its name.</remarks>
public sealed record FigureSlider
{
    /// <summary>A slider whose first step belongs to the figure's first series, the second to the second; series beyond the last step are always in front.</summary>
    /// <param name="label">What it moves, such as "idle current".</param>
    /// <param name="steps">What stands at each step, such as "104 mA"; two or more.</param>
    /// <exception cref="ArgumentException">There are fewer than two steps.</exception>
    public FigureSlider(string label, IEnumerable<string> steps)
    {
        ArgumentNullException.ThrowIfNull(steps);
        (Label, Steps) = (label, Array.AsReadOnly(steps.ToArray()));
        if (Steps.Count < 2)
            throw new ArgumentException($"The slider \"{label}\" needs at least two steps (had {Steps.Count}).");
    }

    /// <summary>What it moves.</summary>
    public string Label { get; }

    /// <summary>What stands at each step.</summary>
    public IReadOnlyList<string> Steps { get; }

    /// <summary>The step at which it begins, from 0.</summary>
    public int Start
    {
        get;
        init => field = value >= 0 && value < Steps.Count ? value
            : throw new ArgumentException($"The slider \"{Label}\" has the steps 0 to {Steps.Count - 1} and cannot begin at {value}.");
    }
}
