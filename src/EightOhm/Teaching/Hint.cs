namespace EightOhm.Teaching;

/// <summary>One of the hints of an exercise, from a nudge to nearly there.</summary>
/// <param name="Number">Which it is, from 1; 0 where the exercise has none.</param>
/// <param name="Of">How many there are.</param>
/// <param name="Text">The hint.</param>
public sealed record Hint(int Number, int Of, string Text)
{
    /// <summary>What comes next: another hint, or the solution.</summary>
    public string Next => Number < Of ? "Hint() again gives the next one." : "That is the last; Solution() shows the working.";

    /// <summary>The hint as text.</summary>
    public override string ToString() => Of == 0 ? Text : FormattableString.Invariant($"Hint {Number} of {Of}: {Text}\n{Next}");
}
