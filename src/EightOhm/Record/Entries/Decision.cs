namespace EightOhm.Record;

/// <summary>A choice with its reason: a line of the list of decisions.</summary>
/// <param name="Name">The symbol.</param>
/// <param name="Value">The value in force as it reads.</param>
/// <param name="Because">The reason, or null when none was given.</param>
/// <param name="Considered">What else was considered, or null.</param>
/// <param name="State">Whether it is as chosen or set from outside.</param>
/// <param name="Reason">What the chapter says where it was set.</param>
public sealed record Decision(string Name, string Value, string? Because, string? Considered, EntryState State, string? Reason);

/// <summary>A guess that nothing has confirmed yet: a line of the list of assumptions.</summary>
/// <param name="Name">The symbol.</param>
/// <param name="Value">The value in force as it reads.</param>
/// <param name="Basis">What it rests on, or null when nothing was said.</param>
/// <param name="Carries">The requirements that hang on it, by their labels: what falls if the guess is wrong.</param>
/// <param name="State">Whether it is as assumed or set from outside.</param>
/// <param name="Reason">What the chapter says where it was set.</param>
public sealed record Assumption(string Name, string Value, string? Basis, IReadOnlyList<string> Carries, EntryState State, string? Reason);
