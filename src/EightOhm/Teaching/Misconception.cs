namespace EightOhm.Teaching;

/// <summary>A usual wrong answer and what is said of it.</summary>
/// <param name="Given">The wrong answer, as text.</param>
/// <param name="Says">The sentence that helps.</param>
public sealed record Misconception(string Given, string Says);
