using EightOhm.Quantities;

namespace EightOhm.Teaching;

/// <summary>One of the limits that a choice in a design task must keep.</summary>
/// <param name="Name">What is looked at: "ripple at full load".</param>
/// <param name="Comes">What the choice makes of it, as text: "2.4 V".</param>
/// <param name="Bound">The limit, as text: "at most 3 V".</param>
/// <param name="Met">Whether the choice keeps it.</param>
/// <param name="Helps">The sentence for a choice that does not.</param>
public sealed record Criterion(string Name, string Comes, string Bound, bool Met, string Helps)
{
    /// <summary>A figure that must not be above its limit.</summary>
    /// <typeparam name="T">A quantity or a number.</typeparam>
    /// <param name="name">What is looked at.</param>
    /// <param name="value">What the choice makes of it.</param>
    /// <param name="limit">The most that is allowed.</param>
    /// <param name="helps">The sentence for a choice that is above.</param>
    public static Criterion AtMost<T>(string name, T value, T limit, ExerciseText helps)
        where T : struct => new(name, QuantityFormat.Short(value, 3), $"at most {QuantityFormat.Short(limit)}", Si(value) <= Si(limit), helps.ToString());

    /// <summary>A figure that must not be below its limit.</summary>
    /// <typeparam name="T">A quantity or a number.</typeparam>
    /// <param name="name">What is looked at.</param>
    /// <param name="value">What the choice makes of it.</param>
    /// <param name="limit">The least that is allowed.</param>
    /// <param name="helps">The sentence for a choice that is below.</param>
    public static Criterion AtLeast<T>(string name, T value, T limit, ExerciseText helps)
        where T : struct => new(name, QuantityFormat.Short(value, 3), $"at least {QuantityFormat.Short(limit)}", Si(value) >= Si(limit), helps.ToString());

    /// <summary>The criterion in a line.</summary>
    public override string ToString() => Met ? $"{Name}: {Comes}, {Bound}: met" : $"{Name}: {Comes}, {Bound}: not met. {Helps}";

    private static double Si<T>(T value)
        where T : struct => QuantityKinds.Of(typeof(T)).ToSi(value);
}
